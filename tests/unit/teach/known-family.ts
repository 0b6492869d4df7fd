import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { entryMatrix } from '../../../src/family/entry-matrix.ts';
import type { Family } from '../../../src/family/family.ts';
import { explainPlacement } from '../../../src/fit/explain-placement.ts';
import { fitSentence } from '../../../src/fit/fit-sentence.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import type { TeachingKnowledge } from '../../../src/teach/teaching-knowledge.ts';
import { PROJECT_ROOT } from '../../kit/install-when-needed.mjs';

/** A family of profiles-demo. */
export function demoFamily(name: 'polderwick' | 'first-lesson'): Family {
  return familyOf(readFileSync(join(PROJECT_ROOT, 'profiles-demo', `${name}.json`), 'utf8'));
}

/** The family of a file's text, which must be sound. */
export function familyOf(text: string): Family {
  const read = readFamily(text);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.document.family;
}

/** All that can be known of a family, every pair judged by the core. */
export function knowledgeOf(family: Family): TeachingKnowledge {
  const judging = entryMatrix(family);
  let step = judging.next();
  while (!step.done) step = judging.next();
  const matrix = step.value;
  const fitOf: TeachingKnowledge['fitOf'] = (entrantId, openingId) =>
    matrix.fits[matrix.profiles.indexOf(entrantId)]?.[matrix.openings.indexOf(openingId)];
  const mm = (nm: number) => `${(nm / 1e6).toFixed(3)} mm`;
  const sentence = (entrantId: string, openingId: string) => {
    const entrant = family.profiles.find(({ id }) => id === entrantId);
    const opening = family.profiles.find(({ id }) => id === openingId);
    const fit = fitOf(entrantId, openingId);
    if (!entrant || !opening || !fit) return '';
    const explanation = explainPlacement(opening.ring, entrant.ring, fit.placement);
    return fitSentence(entrant.name, opening.name, fit, explanation, mm, (a, b) => `${mm(a)}-${mm(b)}`);
  };
  return { family, fitOf, sentence };
}
