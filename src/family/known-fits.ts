import type { Conditions } from '../fit/conditions.ts';
import type { Fit } from '../fit/fit.ts';
import { entrantsOf, type Family, openingsOf } from './family.ts';
import { type FitCache, isMeasured } from './fit-cache.ts';

/** A matrix that may still have gaps: pairs that are not judged yet, and blocked ones not measured yet. */
export interface KnownFits {
  /** Ids of the openings: the columns. */
  readonly openings: readonly string[];
  /** Ids of the blanks and tools: the rows. */
  readonly profiles: readonly string[];
  /** `fits[profile][opening]`. */
  readonly fits: readonly (readonly (Fit | undefined)[])[];
}

/** What a cache knows of a family. */
export function knownFits(family: Family, cache: FitCache, conditions: Conditions): KnownFits {
  const openings = openingsOf(family);
  const entrants = entrantsOf(family);
  return {
    openings: openings.map(({ id }) => id),
    profiles: entrants.map(({ id }) => id),
    fits: entrants.map(({ ring }) => openings.map((opening) => cache.get(opening.ring, ring, conditions))),
  };
}

/**
 * The pairs still to be judged, as entrant and opening numbers, those of the entrant `first` before the others.
 *
 * @param measured true: also blocked pairs whose interference is not known; false: only pairs not judged at all.
 */
export function missingPairs({ fits, profiles }: KnownFits, measured: boolean, first: string | null): Uint32Array {
  const rows = profiles.map((_, i) => i);
  const leading = first === null ? -1 : profiles.indexOf(first);
  if (leading > 0) rows.unshift(...rows.splice(leading, 1));
  const pairs: number[] = [];
  for (const i of rows)
    for (const [k, fit] of fits[i].entries()) if (!fit || (measured && !isMeasured(fit))) pairs.push(i, k);
  return Uint32Array.from(pairs);
}

/** Parts of a list of pairs, one a thread, dealt out in turn so that each part starts with what is wanted first. */
export function dealPairs(pairs: Uint32Array, threads: number): Uint32Array[] {
  const parts = Array.from({ length: Math.max(1, threads) }, () => [] as number[]);
  for (let i = 0; i < pairs.length; i += 2) parts[(i / 2) % parts.length].push(pairs[i], pairs[i + 1]);
  return parts.filter((part) => part.length > 0).map((part) => Uint32Array.from(part));
}
