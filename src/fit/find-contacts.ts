import type { Point } from '../geom/point.ts';
import { boundariesOf, type Region } from '../geom/region.ts';
import { nearestOnSegment } from '../geom/segment-distance.ts';
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
  const gaps = [...gapsFrom(placed, walls, true), ...gapsFrom(walls, placed, false)];
  gaps.sort((a, b) => a.square - b.square);
  const contacts: Contact[] = [];
  for (const gap of gaps) {
    if (contacts.length === MOST || Math.sqrt(gap.square) > Math.sqrt(gaps[0].square) + ALSO_NARROW) break;
    const contact = contactOf(gap, opening, heightOf);
    const told = contacts.some((c) => c.side === contact.side && Math.abs(c.height - contact.height) < SAME_PLACE);
    if (!told) contacts.push(contact);
  }
  return contacts;
}

/** For each corner of the loops the nearest place on the other ones. */
function gapsFrom(
  loops: readonly (readonly Point[])[],
  others: readonly (readonly Point[])[],
  fromBlank: boolean,
): Gap[] {
  const walls = fromBlank ? [] : loops.flatMap((loop) => loop.map((_, i) => outwardsAtCorner(loop, i)));
  return loops.flat().map((p, corner) => {
    let best: Gap = {
      onBlank: p,
      onOpening: p,
      square: Infinity,
      corner,
      across: { kind: 'edge', index: 0 },
      fromBlank,
      wall: walls[corner] ?? [0, 0],
    };
    let first = 0;
    for (const loop of others) {
      for (let i = 0; i < loop.length; i++) {
        const next = (i + 1) % loop.length;
        const q = nearestOnSegment(p, loop[i], loop[next]);
        const square = (q.x - p.x) ** 2 + (q.y - p.y) ** 2;
        if (square >= best.square) continue;
        const across = featureAt(q, loop, i, next, first);
        best = fromBlank
          ? { ...best, onOpening: q, square, across, wall: outwards(loop, i) }
          : { ...best, onBlank: q, square, across };
      }
      first += loop.length;
    }
    return best;
  });
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
