import type { Ring } from '../geom/ring.ts';
import type { Fit } from './fit.ts';
import { goesInTilted } from './judge-tilted.ts';
import { growOpening, OFFSET_ARC, shrinkRings } from './offset-shapes.ts';
import { prepareBlank } from './prepare-blank.ts';
import type { Opening } from './prepare-opening.ts';

/** What can be said of all parts within their tolerance bands. */
export type ThreeWay = 'always' | 'depends' | 'never';

/** Greatest deviation of the outline, to either side, of the parts as made; nanometres. */
export interface Bands {
  readonly blank: number;
  readonly opening: number;
}

/** The parts at the ends of their bands that go together most easily. */
export interface EasiestParts {
  /** The blank with its band taken off; empty where nothing is left. */
  leanest(blank: readonly Ring[], band: number): readonly Ring[];
  /** The opening with its band added; null where it is none any more. */
  widest(opening: Opening, band: number): Opening | null;
}

/** They are made anew for each pair; who asks about many pairs keeps them. */
const EASIEST_PARTS: EasiestParts = {
  leanest: (blank, band) => shrinkRings(blank, band + OFFSET_ARC),
  widest: ({ region }, band) => growOpening(region, band + OFFSET_ARC),
};

/** The parts at the ends of their bands, each made once. */
export function keptParts(): EasiestParts {
  const leanest = new Map<readonly Ring[], Map<number, readonly Ring[]>>();
  const widest = new Map<Opening, Map<number, Opening | null>>();
  return {
    leanest: (blank, band) => kept(leanest, blank, band, () => EASIEST_PARTS.leanest(blank, band)),
    widest: (opening, band) => kept(widest, opening, band, () => EASIEST_PARTS.widest(opening, band)),
  };
}

function kept<Of, Value>(all: Map<Of, Map<number, Value>>, of: Of, band: number, make: () => Value): Value {
  const own = all.get(of) ?? new Map<number, Value>();
  all.set(of, own);
  if (!own.has(band)) own.set(band, make());
  return own.get(band) as Value;
}

/**
 * Whether every blank within its band enters every opening within its band, none does, or it depends on the parts.
 *
 * Always: the fullest blank in the narrowest opening still goes in exactly when the nominal clearance is at least the
 * sum of the bands, because erosions compose. Never: even the leanest blank stays out of the widest opening.
 *
 * @param blank the outlines as they were judged.
 * @param fit of the nominal parts, within the same tilt limit.
 * @param tiltLimit radians; 0 means upright only.
 * @param easiest where the ends of the bands are kept over many pairs.
 * @accuracy 0.1 um upright, 1 um tilted; "always" and "never" are only said when certain.
 * @check tests/outside: ISO 286 limits of size, as slot and tongue
 */
export function judgeTolerance(
  opening: Opening,
  blank: readonly Ring[],
  fit: Fit,
  bands: Bands,
  tiltLimit = 0,
  easiest: EasiestParts = EASIEST_PARTS,
): ThreeWay {
  const off = opening.within + prepareBlank(blank).within;
  if (fit.clearance - off + ROUNDING >= bands.blank + bands.opening) return 'always';
  if (fit.verdict !== 'blocked') return 'depends';
  const leanest = easiest.leanest(blank, bands.blank);
  const widest = easiest.widest(opening, bands.opening);
  if (leanest.length === 0 || !widest) return 'depends';
  return goesInTilted(widest, leanest, tiltLimit) ? 'depends' : 'never';
}

/** Whole-nanometre outlines: a clearance that falls short of the bands by less is equal to them. */
const ROUNDING = 1;
