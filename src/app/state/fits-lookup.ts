import type { EntryMatrix } from '../../family/entry-matrix.ts';
import type { Fit, Verdict } from '../../fit/fit.ts';

/** How many keyways one blank enters, is tight in, is blocked by. */
export type Tally = Readonly<Record<Verdict, number>> & { readonly of: number };

/** The fits of one blank or tool, by opening id; empty when it has not been judged. */
export function rowOf(fits: EntryMatrix | null, entrantId: string | null): ReadonlyMap<string, Fit> {
  const row = fits && entrantId !== null ? fits.fits[fits.profiles.indexOf(entrantId)] : undefined;
  if (!fits || !row) return new Map();
  return new Map(fits.openings.map((id, i) => [id, row[i]]));
}

/** Counts the verdicts of one row. */
export function tallyOf(row: ReadonlyMap<string, Fit>): Tally {
  const tally = { enters: 0, tight: 0, blocked: 0, of: row.size };
  for (const fit of row.values()) tally[fit.verdict]++;
  return tally;
}

/**
 * The line over the wall that the back of the room reads: "Reed group blank enters 3 of 10 keyways". A tight
 * blank goes in too, but not with its running clearance, so it is counted by a word of its own.
 */
export function headlineOf(name: string, tally: Tally): string {
  const keyways = tally.of === 1 ? 'keyway' : 'keyways';
  const parts: string[] = [];
  if (tally.enters > 0 || tally.tight === 0) parts.push(`enters ${tally.enters}`);
  if (tally.tight > 0) parts.push(`is tight in ${tally.tight}`);
  return `${name} ${parts.join(' and ')} of ${tally.of} ${keyways}`;
}
