import { entrantsOf, type Family, openingsOf } from '../../family/family.ts';
import { type FitCache, isMeasured } from '../../family/fit-cache.ts';
import type { KnownFits } from '../../family/known-fits.ts';
import type { Conditions } from '../../fit/conditions.ts';
import type { Fit } from '../../fit/fit.ts';
import type { Profile } from '../../profile/profile.ts';

type Row = readonly (Fit | undefined)[];

/** What is known of the pairs of one family under one set of conditions, while more of it comes in. */
export class FitTable {
  readonly entrants: readonly Profile[];
  readonly openings: readonly Profile[];
  private shown: KnownFits;
  /** Rows that changed since they were last shown. */
  private readonly changed = new Map<number, (Fit | undefined)[]>();

  private constructor(
    readonly family: Family,
    readonly conditions: Conditions,
    rows: (entrants: readonly Profile[], openings: readonly Profile[]) => readonly Row[],
  ) {
    this.entrants = entrantsOf(family);
    this.openings = openingsOf(family);
    this.shown = {
      openings: this.openings.map(({ id }) => id),
      profiles: this.entrants.map(({ id }) => id),
      fits: rows(this.entrants, this.openings),
    };
  }

  /**
   * The table of a family: what `before` knew of pairs whose outlines have not changed, and what the cache knows of
   * the others. A row that stays as it was stays the same value.
   */
  static following(before: FitTable | null, family: Family, conditions: Conditions, cache: FitCache): FitTable {
    const old = before && sameConditions(before.conditions, conditions) ? before : null;
    const rows = old?.known().fits;
    return new FitTable(family, conditions, (entrants, openings) => {
      const kept = openings.map(({ ring }, k) => old?.openings[k]?.ring === ring);
      const allKept = kept.every(Boolean) && openings.length === old?.openings.length;
      return entrants.map(({ ring }, i) => {
        const row = old?.entrants[i]?.ring === ring ? rows?.[i] : undefined;
        if (row && allKept) return row;
        return openings.map((o, k) => (row && kept[k] ? row[k] : cache.get(o.ring, ring, conditions)));
      });
    });
  }

  get(entrant: number, opening: number): Fit | undefined {
    return (this.changed.get(entrant) ?? this.shown.fits[entrant])?.[opening];
  }

  /** Takes a fit in; an unmeasured one never replaces a measured one. */
  put(entrant: number, opening: number, fit: Fit): void {
    const old = this.get(entrant, opening);
    if (old === fit || (old && isMeasured(old))) return;
    const row = this.changed.get(entrant) ?? [...this.shown.fits[entrant]];
    row[opening] = fit;
    this.changed.set(entrant, row);
  }

  /** Takes in what the cache has learned meanwhile. */
  refresh(cache: FitCache): void {
    for (const [i, { ring }] of this.entrants.entries())
      for (const [k, opening] of this.openings.entries()) {
        const fit = this.get(i, k);
        const known = fit && isMeasured(fit) ? undefined : cache.get(opening.ring, ring, this.conditions);
        if (known) this.put(i, k, known);
      }
  }

  /** All that is known; the same value until something is put in. */
  known(): KnownFits {
    if (this.changed.size === 0) return this.shown;
    const fits = this.shown.fits.map((row, i) => this.changed.get(i) ?? row);
    this.changed.clear();
    this.shown = { ...this.shown, fits };
    return this.shown;
  }
}

/** Whether pairs judged under the one are judged under the other. */
export function sameConditions(a: Conditions, b: Conditions): boolean {
  return a.runningClearance === b.runningClearance && a.tiltLimit === b.tiltLimit && a.wear === b.wear;
}
