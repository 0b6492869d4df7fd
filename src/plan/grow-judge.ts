import { goesIn, judgeEntry } from '../fit/judge-fit.ts';
import { type Blank, prepareBlank } from '../fit/prepare-blank.ts';
import { type Opening, prepareOpening } from '../fit/prepare-opening.ts';
import { offset } from '../geom/clip.ts';
import { regionOf } from '../geom/region.ts';
import type { Ring } from '../geom/ring.ts';

/** A section with the tolerance that it is made to, nanometres. */
export interface Part {
  readonly id: string;
  readonly ring: Ring;
  readonly band: number;
}

/** How a blank goes into a keyway that it has to enter. */
export interface Entry {
  /** Enters with the running clearance, and whatever parts within their tolerance are taken. */
  readonly ok: boolean;
  /** Nanometres; -Infinity where blocked. */
  readonly clearance: number;
}

/**
 * Judges pairs by the fit core, new and upright, for all parts within their tolerance. What is prepared for an outline is
 * kept, since each is tried many times.
 */
export class GrowJudge {
  private readonly openings = new WeakMap<Ring, Opening>();
  private readonly blanks = new WeakMap<Ring, Blank>();
  private readonly widest = new WeakMap<Ring, Map<number, Opening | null>>();
  private readonly leanest = new WeakMap<Ring, Map<number, Blank | null>>();

  private readonly wornKeyways = new WeakMap<Ring, Map<number, Opening | null>>();
  private readonly wornBlanks = new WeakMap<Ring, Map<number, Blank | null>>();

  constructor(private readonly runningClearance: number) {}

  /** Whether no blank within its band goes into any keyway within its band; at worst it says no where 4 um are missing. */
  stops(keyway: Part, blank: Part): boolean {
    const wide = kept(this.widest, keyway, () => wornKeyway(keyway.ring, keyway.band + COARSE, COARSE));
    const lean = kept(this.leanest, blank, () => wornBlank(blank.ring, blank.band + COARSE, COARSE));
    return wide !== null && lean !== null && !goesIn(wide, lean);
  }

  /** How a blank goes in that has to. */
  enters(keyway: Part, blank: Part): Entry {
    const fit = judgeEntry(this.opening(keyway.ring), this.blank(blank.ring), this.runningClearance);
    const off = this.opening(keyway.ring).within + this.blank(blank.ring).within;
    const always = fit.clearance - off + ROUNDING >= keyway.band + blank.band;
    return { ok: fit.verdict === 'enters' && always, clearance: fit.clearance };
  }

  /** Whether the parts as drawn go together. */
  goesIn(keyway: Part, blank: Part): boolean {
    return goesIn(this.opening(keyway.ring), this.blank(blank.ring));
  }

  /** Where a blank stands in a keyway, as {@link judgeEntry} tells it. */
  fit(keyway: Part, blank: Part) {
    return judgeEntry(this.opening(keyway.ring), this.blank(blank.ring), this.runningClearance);
  }

  /**
   * The guard margin of a stopped pair: the least wear of both at which the blank first goes in, nanometres. Wear is tried
   * in whole micrometres, so that worn parts can be kept for other pairs.
   *
   * @param best what is known already: a pair with more is not measured.
   * @returns null where it is not less than the best, or no wear up to 4 mm lets the blank in.
   * @accuracy 1 um, never too little.
   */
  guard(keyway: Part, blank: Part, best: number): number | null {
    let [low, high] = [0, Math.min(MOST_WEAR, best) / WEAR_STEP];
    if (best < MOST_WEAR && !this.entersWorn(keyway, blank, high - 1)) return null;
    if (best < MOST_WEAR) high -= 1;
    else
      for (high = FIRST_WEAR; !this.entersWorn(keyway, blank, high); high *= 2) {
        if (high * WEAR_STEP >= MOST_WEAR) return null;
        low = high;
      }
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (this.entersWorn(keyway, blank, middle)) high = middle;
      else low = middle;
    }
    return high * WEAR_STEP;
  }

  /** Whether a stopped pair goes in with that guard margin of another one. */
  comesAsClose(keyway: Part, blank: Part, guard: number): boolean {
    return this.entersWorn(keyway, blank, guard / WEAR_STEP);
  }

  private entersWorn({ ring: keyway }: Part, { ring: blank }: Part, steps: number): boolean {
    const wear = steps * WEAR_STEP;
    const wide = kept(this.wornKeyways, { ring: keyway, band: wear }, () => wornKeyway(keyway, wear));
    const lean = kept(this.wornBlanks, { ring: blank, band: wear }, () => wornBlank(blank, wear));
    return wide !== null && lean !== null && goesIn(wide, lean);
  }

  private opening(ring: Ring): Opening {
    const known = this.openings.get(ring) ?? prepareOpening(ring);
    this.openings.set(ring, known);
    return known;
  }

  private blank(ring: Ring): Blank {
    const known = this.blanks.get(ring) ?? prepareBlank(ring);
    this.blanks.set(ring, known);
    return known;
  }
}

/** Steps of wear, the first one that is tried in steps, and the most wear; nanometres. */
const WEAR_STEP = 1_000;
const FIRST_WEAR = 64;
const MOST_WEAR = 4_000_000;

/** Chords of worn parts stand off their arcs by no more than this; of parts at the ends of their bands, which are taken by as much
 * leaner and wider. Nanometres. */
const FINE = 250;
const COARSE = 1_000;

function wornKeyway(ring: Ring, wear: number, arc = FINE): Opening | null {
  const grown = offset(regionOf(ring), wear, 'round', arc);
  return grown.length > 0 ? prepareOpening(grown) : null;
}

function wornBlank(ring: Ring, wear: number, arc = FINE): Blank | null {
  const left = offset(regionOf(ring), -wear, 'round', arc).map(({ outer }) => outer);
  return left.length > 0 ? prepareBlank(left) : null;
}

/** Whole-nanometre outlines: what falls short by less is equal. */
const ROUNDING = 1;

function kept<Value>(
  all: WeakMap<Ring, Map<number, Value>>,
  { ring, band }: Pick<Part, 'ring' | 'band'>,
  make: () => Value,
): Value {
  const bands = all.get(ring) ?? new Map<number, Value>();
  all.set(ring, bands);
  if (!bands.has(band)) bands.set(band, make());
  return bands.get(band) as Value;
}
