import type { EntryMatrix } from '../../family/entry-matrix.ts';
import type { Family } from '../../family/family.ts';
import type { KnownFits } from '../../family/known-fits.ts';
import { readingText, type Units } from '../../family/length-text.ts';
import { ownBlankOf, seatOffset } from '../../family/seat-offset.ts';
import type { Fit } from '../../fit/fit.ts';
import type { Profile } from '../../profile/profile.ts';

/** How a seated blank rides beside the section's own: nanometres, above zero where it rides higher. */
export interface SeatReading {
  readonly own: Profile;
  readonly offset: number;
}

/** Heights that differ by less are the same, nanometres. */
const SAME_HEIGHT = 500;

/**
 * How the blank rides in the keyway beside the section's own blank; null where that means nothing: it does not go in,
 * is a tool or the own blank itself, there is none, or not all of the keyway's pairs have been judged.
 */
export function seatReading(
  family: Family,
  known: KnownFits | null,
  entrant: Profile,
  opening: Profile,
): SeatReading | null {
  const column = known && entrant.kind === 'blank' ? columnOf(known, opening.id) : null;
  if (!column) return null;
  const own = ownBlankOf(family, opening, column);
  const offset = seatOffset(family, column, entrant, opening);
  return own && own !== entrant && offset !== null ? { own, offset } : null;
}

/** One keyway's pairs as a matrix of its own; null while any of them is unknown. */
function columnOf({ openings, profiles, fits }: KnownFits, openingId: string): EntryMatrix | null {
  const k = openings.indexOf(openingId);
  const column = fits.map((row) => row[k]);
  const whole = k >= 0 && column.every((fit): fit is Fit => fit !== undefined);
  return whole ? { openings: [openingId], profiles, fits: column.map((fit) => [fit as Fit]) } : null;
}

/** "rides 0.012 mm lower than the Heron blank: every cut stands off by as much". */
export function seatText({ own, offset }: SeatReading, units: Units): string {
  const name = own.section ? `${own.section} blank` : own.name;
  if (Math.abs(offset) < SAME_HEIGHT) return `rides as high as the ${name}`;
  const way = offset > 0 ? 'higher' : 'lower';
  return `rides ${readingText(offset, units)} ${way} than the ${name}: every cut stands off by as much`;
}
