import type { Family } from '../../../family/family.ts';
import type { KnownFits } from '../../../family/known-fits.ts';
import type { Knowledge } from '../../../names/knowledge.ts';
import { misleadingNames } from '../../../names/misleading.ts';
import type { MisleadingName } from '../../../names/misleading-name.ts';
import { combOf } from '../fits-lookup.ts';

/** With more names than this they are looked through once the verdicts are there, not each time some more come. */
const MANY = 1000;

interface Found {
  readonly family: Family;
  /** The verdicts that it goes by. */
  readonly verdicts: string;
  readonly found: readonly MisleadingName[];
}

let last: Found | null = null;

/**
 * The names that mislead as things stand: looked for anew when the family or a verdict changes, not when a figure does.
 *
 * @param judging whether more verdicts are on their way.
 * @check tests/unit/app/misleading-now.test.ts
 */
export function misleadingNow(
  knowledge: Knowledge,
  fits: KnownFits | null,
  judging: boolean,
): readonly MisleadingName[] {
  const { family, register } = knowledge;
  const verdicts = fits ? fits.fits.map(combOf).join(' ') : '';
  const waits = judging && register.senses.length > MANY;
  if (last?.family === family && (last.verdicts === verdicts || waits)) return last.found;
  last = { family, verdicts, found: misleadingNames(knowledge) };
  return last.found;
}
