import { boxOfCells, type ConvexCell, verticesOf } from '../geom/convex-cell.ts';
import { boxOf, type Point } from '../geom/point.ts';
import { connectCorners } from './connect-corners.ts';
import { containsBlank, pointOf, type RationalPoint, rationalOf } from './contain-exactly.ts';
import { decideContact } from './decide-contact.ts';
import type { Fit, Placement, Play } from './fit.ts';
import { measureClearance } from './measure-clearance.ts';
import { measureInterference } from './measure-interference.ts';
import type { Blank } from './prepare-blank.ts';
import type { Opening } from './prepare-opening.ts';
import { subtractWindows } from './subtract-windows.ts';

/** Outlines are in whole nanometres: a clearance that falls short of the running clearance by less is equal to it. */
const ROUNDING = 1;

const ORIGIN: Placement = { x: 0, y: 0, tilt: 0 };

/** Blocked, by how much is not measured yet: the placement means nothing. */
export const UNMEASURED: Fit = {
  verdict: 'blocked',
  clearance: Number.NEGATIVE_INFINITY,
  accuracy: Number.POSITIVE_INFINITY,
  placement: ORIGIN,
  play: { lateral: 0, vertical: 0 },
  seated: ORIGIN,
};

/**
 * Whether, where and with what margin a blank goes into an opening.
 *
 * The ladder, cheap steps first: (1) the inner-fit region by window subtraction: where it has area the blank
 * goes in, and the largest circle in it is the clearance. (2) The same for the opening grown by 60 nm: nothing
 * left means blocked, strictly. (3) Exact arithmetic on the few candidates between: a placement that touches on
 * both sides is a contact, clearance 0. Only blocked pairs pay for the interference.
 *
 * @param runningClearance uniform gap below which a fit is tight, nanometres.
 * @returns lengths in nanometres; "does not fit" is a value, never an exception.
 * @accuracy `accuracy` says it: clearance within 50 nm, interference within 0.7 um, contact exact; up to 2 um more for
 * outlines of more than 600 vertices, which are simplified first.
 */
export function judgeFit(opening: Opening, blank: Blank, runningClearance: number): Fit {
  const fit = judgeEntry(opening, blank, runningClearance);
  return fit.verdict === 'blocked' ? fitOfBlocked(opening, blank) : fit;
}

/** {@link judgeFit} without the interference, which costs most of the time: {@link UNMEASURED} where blocked. */
export function judgeEntry(opening: Opening, blank: Blank, runningClearance: number): Fit {
  const cells = subtractWindows(opening, blank);
  if (cells.length > 0) return fitOfCells(opening, blank, cells, runningClearance);
  const corners = contactOf(opening, blank);
  return corners.length > 0 ? fitOfContact(opening, blank, corners) : UNMEASURED;
}

/** Whether the blank goes in at all, contact included: {@link judgeFit} without margins. */
export function goesIn(opening: Opening, blank: Blank): boolean {
  return subtractWindows(opening, blank).length > 0 || contactOf(opening, blank).length > 0;
}

/** Steps 2 and 3 of the ladder: the exact corners of an inner-fit region without area; empty means blocked. */
function contactOf(opening: Opening, blank: Blank): RationalPoint[] {
  const near = subtractWindows(opening.grown(), blank);
  return near.length === 0 ? [] : decideContact(opening, blank, near);
}

function fitOfCells(opening: Opening, blank: Blank, cells: readonly ConvexCell[], runningClearance: number): Fit {
  let best = measureClearance(opening, blank, cells);
  if (best.depth < runningClearance && best.bound >= runningClearance)
    best = measureClearance(opening, blank, cells, 0.5);
  const box = boxOfCells(best.home);
  return {
    verdict: best.depth + ROUNDING >= runningClearance ? 'enters' : 'tight',
    clearance: best.depth,
    accuracy: best.bound - best.depth + opening.within + blank.within,
    placement: { x: best.x, y: best.y, tilt: 0 },
    play: { lateral: box.maxX - box.minX, vertical: box.maxY - box.minY },
    seated: lowestOf(best.home.map(verticesOf), best.x),
  };
}

/**
 * The lowest of the translations spanned by each group of points; where a stretch is equally low its middle, and of
 * several stretches the one nearest to `x`.
 */
function lowestOf(groups: readonly (readonly Point[])[], x: number): Placement {
  const y = Math.min(...groups.flat().map((p) => p.y));
  const stretches = joinStretches(
    groups.flatMap((group) => {
      const xs = group.filter((p) => p.y - y < ROUNDING).map((p) => p.x);
      return xs.length > 0 ? [{ from: Math.min(...xs), to: Math.max(...xs) }] : [];
    }),
  );
  const away = ({ from, to }: Stretch) => Math.max(0, from - x, x - to);
  const { from, to } = stretches.reduce((a, b) => (away(b) < away(a) ? b : a));
  return { x: (from + to) / 2, y, tilt: 0 };
}

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Stretches that meet, as one. */
function joinStretches(stretches: readonly Stretch[]): Stretch[] {
  const joined: Stretch[] = [];
  for (const next of [...stretches].sort((a, b) => a.from - b.from)) {
    const last = joined.at(-1);
    if (last && next.from <= last.to + ROUNDING)
      joined.splice(-1, 1, { from: last.from, to: Math.max(last.to, next.to) });
    else joined.push(next);
  }
  return joined;
}

/** Contact on both sides: clearance exactly 0; the play is the length of the connected corners. */
function fitOfContact(opening: Opening, blank: Blank, corners: readonly RationalPoint[]): Fit {
  const group = connectCorners(opening, blank, corners)[0];
  const points = group.map(pointOf);
  const box = boxOf(points);
  const play: Play = { lateral: box.maxX - box.minX, vertical: box.maxY - box.minY };
  const middle = rationalOf({ x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 });
  const { x, y } = containsBlank(opening.boundaries, blank.rings, middle) ? pointOf(middle) : points[0];
  return {
    verdict: 'tight',
    clearance: 0,
    accuracy: opening.within + blank.within,
    placement: { x, y, tilt: 0 },
    play,
    seated: lowestOf(
      points.map((point) => [point]),
      x,
    ),
  };
}

function fitOfBlocked(opening: Opening, blank: Blank): Fit {
  const { above, atMost, x, y } = measureInterference(opening, blank);
  return {
    verdict: 'blocked',
    clearance: -(above + atMost) / 2,
    accuracy: (atMost - above) / 2 + opening.within + blank.within,
    placement: { x, y, tilt: 0 },
    play: { lateral: 0, vertical: 0 },
    seated: { x, y, tilt: 0 },
  };
}
