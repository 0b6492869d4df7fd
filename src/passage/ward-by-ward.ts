import { explainPlacement } from '../fit/explain-placement.ts';
import type { Collision, Placement } from '../fit/fit.ts';
import { placeBlank } from '../fit/place-blank.ts';
import { boxOf, type Point } from '../geom/point.ts';
import { isRegion, type Region } from '../geom/region.ts';
import { isRing, type Ring } from '../geom/ring.ts';
import { nearestOnSegment } from '../geom/segment-distance.ts';
import { isBeside } from './groove-causes.ts';
import { type Indent, type IndentSide, indentsOf } from './indents.ts';

/** What a groove falls short of where it does not let a ward by. */
export type GrooveFault = 'too-shallow' | 'too-high' | 'too-low' | 'too-narrow';

/**
 * How a blank gets by one ward. groove: the ward passes through a groove. clear: the blade ends short of the ward, no groove
 * is needed. short-groove: there is a groove, but the ward bites in it. no-groove: it bites where no groove is.
 */
export type WardPassing =
  | { readonly how: 'groove'; readonly groove: GrooveBand; readonly spare: number }
  | { readonly how: 'clear'; readonly spare: number }
  | { readonly how: 'short-groove'; readonly groove: GrooveBand; readonly fault: GrooveFault; readonly bite: number }
  | { readonly how: 'no-groove'; readonly bite: number };

/** A groove of the blank where it lies; heights above the back of the blank, nanometres. */
export interface GrooveBand {
  readonly side: IndentSide;
  readonly from: number;
  readonly to: number;
  readonly depth: number;
  /** Its outline in the frame of the keyway. */
  readonly line: readonly Point[];
}

/** One ward of a keyway, seen from a blank that lies in it. Heights above the back of the blank, nanometres. */
export interface WardAnswer {
  readonly side: IndentSide;
  readonly from: number;
  readonly to: number;
  /** How far it stands into the keyway. */
  readonly depth: number;
  /** Its outline in the frame of the keyway. */
  readonly line: readonly Point[];
  readonly passing: WardPassing;
}

/**
 * Ward by ward, why a blank goes into a keyway or not: which groove lets each ward by, or that none does, and how deep
 * it bites. Wards and grooves are found in the outlines, milled or drawn, from below, left before right.
 *
 * @param opening the keyway as it is judged; of several parts the wards of all are told.
 * @param blank in its own frame; several outlines where it is worn through.
 * @param collisions what collides at this placement, where it is known already.
 * @accuracy spare gaps to a nanometre of the polygons; a bite is the depth of the deepest collision at the ward.
 * @check tests/unit/passage/ward-by-ward.test.ts
 */
export function wardByWard(
  opening: Ring | Region,
  blank: Ring | readonly Ring[],
  placement: Placement,
  collisions: readonly Collision[] = explainPlacement(opening, blank, placement).collisions,
): readonly WardAnswer[] {
  const outers = isRegion(opening) ? opening.map(({ outer }) => outer) : [opening];
  const parts = (isRing(blank) ? [blank] : blank).map((part) => placeBlank(part, placement));
  const back = boxOf(parts.flat()).minY;
  const grooves = parts.flatMap(indentsOf);
  return outers
    .flatMap(indentsOf)
    .map((ward) => answerFor(ward, { parts, back, grooves, collisions }))
    .sort((a, b) => a.from - b.from || (a.side < b.side ? -1 : 1));
}

interface Scene {
  readonly parts: readonly Ring[];
  readonly back: number;
  readonly grooves: readonly Indent[];
  readonly collisions: readonly Collision[];
}

function answerFor(ward: Indent, scene: Scene): WardAnswer {
  const { side, from, to, depth, line } = ward;
  const groove = grooveFor(ward, scene.grooves);
  const band = groove && above(groove, scene.back);
  return {
    side,
    from: from - scene.back,
    to: to - scene.back,
    depth,
    line,
    passing: passingOf(ward, groove, band, scene),
  };
}

function above({ side, from, to, depth, line }: Indent, back: number): GrooveBand {
  return { side, from: from - back, to: to - back, depth, line };
}

function passingOf(ward: Indent, groove: Indent | null, band: GrooveBand | null, scene: Scene): WardPassing {
  const bite = biteOf(ward, scene.collisions);
  if (bite > 0 && groove && band) return { how: 'short-groove', groove: band, fault: faultOf(ward, groove), bite };
  if (bite > 0) return { how: 'no-groove', bite };
  const spare = distanceBetween(ward.line, scene.parts);
  return band ? { how: 'groove', groove: band, spare } : { how: 'clear', spare };
}

/** The groove on the ward's side that shares most of its height. */
function grooveFor(ward: Indent, grooves: readonly Indent[]): Indent | null {
  let [best, most] = [null as Indent | null, 0];
  for (const groove of grooves) {
    const shared = Math.min(ward.to, groove.to) - Math.max(ward.from, groove.from);
    if (shared > most && isBeside(ward, groove)) [best, most] = [groove, shared];
  }
  return best;
}

/** How deep the plug bites at a ward, nanometres; 0 where it does not. */
function biteOf(ward: Indent, collisions: readonly Collision[]): number {
  const box = boxOf(ward.line);
  const atWard = collisions.filter(({ side, region }) => {
    if (side !== ward.side) return false;
    const hit = boxOf(region.flatMap(({ outer }) => outer));
    return hit.minY < box.maxY && hit.maxY > box.minY && hit.minX < box.maxX && hit.maxX > box.minX;
  });
  return Math.max(0, ...atWard.map(({ depth }) => depth));
}

/** What a groove falls short of: the height that the ward reaches out of it, or else the depth. */
function faultOf(ward: Indent, groove: Indent): GrooveFault {
  const [below, over] = [groove.from - ward.from, ward.to - groove.to];
  if (below > 0 && over > 0) return 'too-narrow';
  if (below > 0) return 'too-high';
  return over > 0 ? 'too-low' : 'too-shallow';
}

/** The least distance of an open line from outlines. */
function distanceBetween(line: readonly Point[], outlines: readonly Ring[]): number {
  let least = Number.POSITIVE_INFINITY;
  const take = (p: Point, a: Point, b: Point) => {
    const near = nearestOnSegment(p, a, b);
    least = Math.min(least, Math.hypot(near.x - p.x, near.y - p.y));
  };
  for (const outline of outlines)
    for (const [k, c] of outline.entries()) {
      const d = outline[(k + 1) % outline.length];
      for (const [i, p] of line.entries()) {
        take(p, c, d);
        if (i > 0) take(c, line[i - 1], p);
      }
    }
  return least;
}
