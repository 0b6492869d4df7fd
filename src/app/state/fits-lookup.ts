import type { KnownFits } from '../../family/known-fits.ts';
import type { Fit, Verdict } from '../../fit/fit.ts';
import type { ThreeWay } from '../../fit/judge-tolerance.ts';

/** How many keyways one blank enters, is tight in, is blocked by; `of` counts those that were judged. */
export type Tally = Readonly<Record<Verdict, number>> & { readonly of: number };

/** How many keyways all blanks as made enter, some do, none does; `of` counts those that are known. */
export type PartsTally = Readonly<Record<ThreeWay, number>> & { readonly of: number };

/** The fits of one blank or tool, by opening id, as far as they are known. */
export function rowOf(fits: KnownFits | null, entrantId: string | null): ReadonlyMap<string, Fit> {
  const row = fits && entrantId !== null ? fits.fits[fits.profiles.indexOf(entrantId)] : undefined;
  const known = new Map<string, Fit>();
  for (const [k, fit] of row?.entries() ?? []) if (fit && fits) known.set(fits.openings[k], fit);
  return known;
}

/** Counts the verdicts of one row. */
export function tallyOf(row: ReadonlyMap<string, Fit>): Tally {
  const tally = { enters: 0, tight: 0, blocked: 0, of: row.size };
  for (const fit of row.values()) tally[fit.verdict]++;
  return tally;
}

/** Counts the answers for all parts of one row. */
export function partsTallyOf(row: ReadonlyMap<string, ThreeWay>): PartsTally {
  const tally = { always: 0, depends: 0, never: 0, of: row.size };
  for (const answer of row.values()) tally[answer]++;
  return tally;
}

/**
 * The line over the wall that the back of the room reads: "Reed group blank enters 3 of 10 keyways". A tight
 * blank goes in too, but not with its running clearance, so it is counted by a word of its own.
 */
export function headlineOf(name: string, tally: Tally): string {
  const parts: string[] = [];
  if (tally.enters > 0 || tally.tight === 0) parts.push(`enters ${tally.enters}`);
  if (tally.tight > 0) parts.push(`is tight in ${tally.tight}`);
  return `${name} ${parts.join(' and ')} of ${tally.of} ${keyways(tally.of)}`;
}

/** The same for all parts within their tolerance: "Reed group blank always enters 3 of 10 keyways". */
export function partsHeadlineOf(name: string, { always, depends, of }: PartsTally): string {
  const more = depends > 0 ? `, depends on the parts in ${depends}` : '';
  return `${name} always enters ${always} of ${of} ${keyways(of)}${more}`;
}

function keyways(count: number): string {
  return count === 1 ? 'keyway' : 'keyways';
}

const LETTERS: Readonly<Record<Verdict, string>> = { enters: 'e', tight: 't', blocked: 'b' };
const combs = new WeakMap<readonly (Fit | undefined)[], string>();

/** One row's verdicts along the block as letters e, t, b, or a dot where unknown: equal rows give equal texts. */
export function combOf(row: readonly (Fit | undefined)[]): string {
  const known = combs.get(row);
  if (known !== undefined) return known;
  const comb = row.map((fit) => (fit ? LETTERS[fit.verdict] : '.')).join('');
  combs.set(row, comb);
  return comb;
}
