import { entryMatrix } from '../../src/family/entry-matrix.ts';
import type { Family } from '../../src/family/family.ts';
import { knowFamily } from '../../src/names/know-family.ts';
import type { Knowledge } from '../../src/names/knowledge.ts';
import { demoFamily } from './demo-family.ts';

/** A family judged by its outlines, with lengths in millimetres. */
export function knowledgeOf(family: Family): Knowledge {
  const judging = entryMatrix(family);
  let step = judging.next();
  while (!step.done) step = judging.next();
  const { profiles, openings, fits } = step.value;
  const millimetres = (nm: number) => `${(Math.abs(nm) / 1e6).toFixed(3)} mm`;
  const band = (from: number, to: number) => `${(from / 1e6).toFixed(1)}-${(to / 1e6).toFixed(1)} mm`;
  const fitOf = (entrant: string, opening: string) => fits[profiles.indexOf(entrant)]?.[openings.indexOf(opening)];
  return knowFamily(family, fitOf, millimetres, band);
}

/** The demo family, judged. */
export function demoKnowledge(): Knowledge {
  return knowledgeOf(demoFamily());
}
