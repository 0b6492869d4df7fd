import type { Point } from '../geom/point.ts';
import { boundariesOf, type Region } from '../geom/region.ts';
import { nearestOnSegment, squaredDistance } from '../geom/segment-distance.ts';
import { edgesOf } from './edge-index.ts';
import type { Contact, Feature } from './fit.ts';
import { plugSideOf } from './plug-side.ts';

/** Most contacts that are told. */
const MOST = 8;

/** Two contacts on one side nearer than this in height are one, nanometres. */
const SAME_PLACE = 150_000;

/** A gap this much wider than the narrowest one does not limit the fit, nanometres. */
const ALSO_NARROW = 2_000;

interface Gap {
  readonly onBlank: Point;
  readonly onOpening: Point;
  readonly square: number;
  readonly corner: number;
  readonly across: Feature;
  readonly fromBlank: boolean;
  /** Direction out of the opening there. */
  readonly wall: readonly [number, number];
}

/**
 * The places where the placed blank comes nearest to the plug: the narrowest gap and all within 2 um of it,
 * one for each side and height.
 *
 * The distance between two outlines is reached at a vertex of one of them, so vertices of the blank are measured
 * against edges of the opening and the other way round.
 *
 * @param placed the outlines of the blank in the opening's coordinates, not colliding, nanometres.
 * @param heightOf height of a point above the back of the blade, nanometres.
 */
export function findContacts(
  opening: Region,
  placed: readonly (readonly Point[])[],
  heightOf: (p: Point) => number,
): Contact[] {
  const walls = boundariesOf(opening);
  const found = [...nearestEdges(placed, walls, true), ...nearestEdges(walls, placed, false)];
  const least = Math.sqrt(found.reduce((a, b) => Math.min(a, b.square), Infinity));
  const narrow = found.filter(({ square }) => Math.sqrt(square) <= least + ALSO_NARROW);
  const gaps = narrow.map((near) => gapOf(near, near.fromBlank ? [placed, walls] : [walls, placed]));
  gaps.sort((a, b) => a.square - b.square);
  const contacts: Contact[] = [];
  for (const gap of gaps) {
    if (contacts.length === MOST) break;
    const contact = contactOf(gap, opening, heightOf);
    const told = contacts.some((c) => c.side === contact.side && Math.abs(c.height - contact.height) < SAME_PLACE);
    if (!told) contacts.push(contact);
  }
  return contacts;
}

/** A corner of one outline, the edge of the other one nearest to it (both counted through all loops), and how near. */
interface NearestEdge {
  readonly corner: number;
  readonly edge: number;
  readonly square: number;
  readonly fromBlank: boolean;
}

type Loops = readonly (readonly Point[])[];

/** For each corner of the loops the nearest edge of the other ones. Plain numbers: this runs at every step of a drag. */
function nearestEdges(loops: Loops, others: Loops, fromBlank: boolean): NearestEdge[] {
  const edges = Float64Array.from(others.flatMap(edgesOf).flat());
  return loops.flat().map(({ x, y }, corner) => {
    let square = Infinity;
    let edge = -1;
    for (let i = 0; i < edges.length; i += 4) {
      const away = squaredDistance(x, y, edges[i], edges[i + 1], edges[i + 2], edges[i + 3]);
      if (away < square) {
        square = away;
        edge = i / 4;
      }
    }
    return { corner, edge, square, fromBlank };
  });
}

/** What there is to say of a corner and the edge nearest to it. */
function gapOf({ corner, edge, square, fromBlank }: NearestEdge, [own, others]: readonly [Loops, Loops]): Gap {
  const p = own.flat()[corner];
  const { loop, i, first } = placeOf(others, edge);
  const next = (i + 1) % loop.length;
  const q = nearestOnSegment(p, loop[i], loop[next]);
  const across = featureAt(q, loop, i, next, first);
  if (fromBlank) return { onBlank: p, onOpening: q, square, corner, across, fromBlank, wall: outwards(loop, i) };
  const at = placeOf(own, corner);
  return { onBlank: q, onOpening: p, square, corner, across, fromBlank, wall: outwardsAtCorner(at.loop, at.i) };
}

/** The loop and the place in it of a corner or edge counted through all loops. */
function placeOf(loops: Loops, index: number): { loop: readonly Point[]; i: number; first: number } {
  let first = 0;
  for (const loop of loops) {
    if (index < first + loop.length) return { loop, i: index - first, first };
    first += loop.length;
  }
  throw new RangeError('placeOf: no such corner');
}

/** Whether the nearest place on an edge is one of its ends or between them. */
function featureAt(q: Point, loop: readonly Point[], i: number, next: number, first: number): Feature {
  for (const k of [i, next])
    if (Math.hypot(q.x - loop[k].x, q.y - loop[k].y) < 1) return { kind: 'corner', index: first + k };
  return { kind: 'edge', index: first + i };
}

function contactOf(found: Gap, opening: Region, heightOf: (p: Point) => number): Contact {
  const { onBlank, onOpening, corner, across, fromBlank } = found;
  const gap = Math.sqrt(found.square);
  const own: Feature = { kind: 'corner', index: corner };
  return {
    onBlank,
    onOpening,
    blankFeature: fromBlank ? own : across,
    openingFeature: fromBlank ? across : own,
    gap,
    ...plugSideOf(opening, beyond(found, gap)),
    height: heightOf(onBlank),
  };
}

/** How far into the plug its side is looked for, nanometres. */
const STEP = 50;

/** A point just inside the plug, straight on from the blank through the contact; where they touch, straight off the opening's edge. */
function beyond({ onBlank, onOpening, wall }: Gap, gap: number): Point {
  const [dx, dy] = gap > 1 ? [onOpening.x - onBlank.x, onOpening.y - onBlank.y] : wall;
  const length = Math.hypot(dx, dy);
  return { x: onOpening.x + (dx / length) * STEP, y: onOpening.y + (dy / length) * STEP };
}

/** Direction out of the region at a corner: half way between those of its edges. */
function outwardsAtCorner(loop: readonly Point[], i: number): [number, number] {
  const before = outwards(loop, (i + loop.length - 1) % loop.length);
  const after = outwards(loop, i);
  const sum: [number, number] = [before[0] + after[0], before[1] + after[1]];
  return Math.hypot(...sum) > 1e-9 ? sum : after;
}

/** Direction out of the region at an edge of it. */
function outwards(loop: readonly Point[], i: number): [number, number] {
  const a = loop[i];
  const b = loop[(i + 1) % loop.length];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return [(b.y - a.y) / length, (a.x - b.x) / length];
}
