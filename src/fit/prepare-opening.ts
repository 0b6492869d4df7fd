import { offset } from '../geom/clip.ts';
import { type Box, boxOf, type Point } from '../geom/point.ts';
import { boundariesOf, isRegion, type Region, regionOf } from '../geom/region.ts';
import type { Ring } from '../geom/ring.ts';
import { lightenRegion } from '../geom/simplify.ts';
import { coarseOpening, MANY_EDGES, MOST_EDGES } from './coarse-edges.ts';
import { cornersOf, type EdgeIndex, indexEdges } from './edge-index.ts';

/** By how much {@link Opening.grown} is larger, nanometres: enough to turn a contact into an area well above rounding. */
export const GROWTH = 60;

/** Grown copies with more edges than this are simplified, where they can be: arcs have many chords, jagged outlines more. */
const MOST_GROWN_EDGES = 1_500;

/** Most grown copies that an opening keeps: those of the first steps, which every blank shares. */
const MOST_GROWN = 64;

/** A keyway made ready for many blanks. Coordinates in nanometres. */
export interface Opening {
  readonly region: Region;
  /** How far `region` may stand off the outline as given, nanometres: above 0 only where that has very many vertices. */
  readonly within: number;
  readonly boundaries: readonly (readonly Point[])[];
  readonly holes: readonly (readonly Point[])[];
  readonly box: Box;
  readonly index: EdgeIndex;
  /** Fewer edges that lie outside the opening, for a first look; the edges themselves where they are few. */
  coarse(): EdgeIndex;
  /** Corners where the plug sticks into the keyway (tips of wards), as {@link cornersOf} lists them. */
  reflex(): Float64Array;
  /** The same opening grown by {@link GROWTH} with mitred corners, made when first needed: contains every true offset by it. */
  grown(): Opening;
  /** The opening grown by `distance` with round corners: within the true offset, short of it by at most `arcTolerance` + 2 nm;
   * either way by `within` more than this opening's own, where it has very many vertices and was simplified. */
  roundGrown(distance: number, arcTolerance: number): Opening;
}

/** Makes an opening ready; about 0.1 ms for 60 vertices. */
export function prepareOpening(source: Ring | Region): Opening {
  const { region, within } = lightenRegion(isRegion(source) ? source : regionOf(source), MOST_EDGES);
  return readyOpening(region, within);
}

/** An opening of exactly this region: a grown copy is not simplified again, it must hold what it was grown for. */
function readyOpening(region: Region, within: number): Opening {
  const boundaries = boundariesOf(region);
  const index = indexEdges(boundaries);
  let coarse: EdgeIndex | null = null;
  let grown: Opening | null = null;
  let tips: Float64Array | null = null;
  const rounds = new Map<string, Opening>();
  return {
    region,
    within,
    boundaries,
    holes: region.flatMap((patch) => patch.holes),
    box: boxOf(boundaries.flat()),
    index,
    coarse: () => (coarse ??= index.minY.length > MANY_EDGES ? coarseOpening(region) : index),
    reflex: () => (tips ??= cornersOf(boundaries, -1)),
    grown: () => (grown ??= readyOpening(offset(region, GROWTH, 'mitre'), within)),
    roundGrown: (distance, arcTolerance) => {
      const key = `${distance} ${arcTolerance}`;
      const known = rounds.get(key);
      if (known) return known;
      const light = lightenRegion(offset(region, distance, 'round', arcTolerance), MOST_GROWN_EDGES);
      const made = readyOpening(light.region, within + light.within);
      if (rounds.size < MOST_GROWN) rounds.set(key, made);
      return made;
    },
  };
}
