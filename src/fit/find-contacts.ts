import type { Point } from '../geom/point.ts';
import { boundariesOf, type Region } from '../geom/region.ts';
import { nearestOnSegment } from '../geom/segment-distance.ts';
import type { Contact } from './fit.ts';
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
}

/**
 * The places where the placed blank comes nearest to the plug: the narrowest gap and all within 2 um of it,
 * one for each side and height.
 *
 * The distance between two outlines is reached at a vertex of one of them, so vertices of the blank are measured
 * against edges of the opening and the other way round.
 *
 * @param placed the blank in the opening's coordinates, not colliding, nanometres.
 * @param heightOf height of a point above the back of the blade, nanometres.
 */
export function findContacts(opening: Region, placed: readonly Point[], heightOf: (p: Point) => number): Contact[] {
  const gaps = [
    ...gapsFrom(placed, boundariesOf(opening), false),
    ...gapsFrom(boundariesOf(opening).flat(), [placed], true),
  ];
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

/** For each point the nearest place on the loops. */
function gapsFrom(points: readonly Point[], loops: readonly (readonly Point[])[], swapped: boolean): Gap[] {
  return points.map((p) => {
    let best: Gap = { onBlank: p, onOpening: p, square: Infinity };
    for (const loop of loops)
      for (let i = 0, j = loop.length - 1; i < loop.length; j = i++) {
        const q = nearestOnSegment(p, loop[j], loop[i]);
        const square = (q.x - p.x) ** 2 + (q.y - p.y) ** 2;
        if (square < best.square)
          best = swapped ? { onBlank: q, onOpening: p, square } : { onBlank: p, onOpening: q, square };
      }
    return best;
  });
}

function contactOf({ onBlank, onOpening, square }: Gap, opening: Region, heightOf: (p: Point) => number): Contact {
  const gap = Math.sqrt(square);
  return {
    onBlank,
    onOpening,
    gap,
    ...plugSideOf(opening, beyond(onBlank, onOpening, gap)),
    height: heightOf(onBlank),
  };
}

/** A point just inside the plug, straight on from the blank through the contact. */
function beyond(from: Point, to: Point, gap: number): Point {
  const step = 50;
  return gap === 0 ? to : { x: to.x + ((to.x - from.x) / gap) * step, y: to.y + ((to.y - from.y) / gap) * step };
}
