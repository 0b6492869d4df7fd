import { NM_PER_INCH, NM_PER_MM } from '../geom/point.ts';
import type { FileUnits } from './family.ts';

/** Nanometres in one unit of a family file. */
export const NM_PER_UNIT: Readonly<Record<FileUnits, number>> = { mm: NM_PER_MM, in: NM_PER_INCH };

/** Digits after the point that bring back the same whole nanometre in either unit. */
const DIGITS = 9;

/**
 * A length as a family file writes it: with no more digits than bring back the same whole nanometre.
 *
 * @check tests/unit/interchange/change-family.test.ts, tests/unit/interchange/replace-outline.test.ts
 */
export function toFileLength(nm: number, units: FileUnits): number {
  return Number((nm / NM_PER_UNIT[units]).toFixed(DIGITS));
}
