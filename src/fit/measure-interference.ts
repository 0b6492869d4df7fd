import type { ConvexCell } from '../geom/convex-cell.ts';
import { boxOfCells } from '../geom/convex-cell.ts';
import { type BestPlacement, measureClearance } from './measure-clearance.ts';
import type { Blank } from './prepare-blank.ts';
import type { Opening } from './prepare-opening.ts';
import { subtractWindows } from './subtract-windows.ts';

/** Greatest width of the bracket round an interference, nanometres. */
export const INTERFERENCE_BRACKET = 800;

/** First growth that is tried, nanometres. */
const FIRST_STEP = 128_000;

/** A blank further out than this is not measured more closely, nanometres (about 94 mm). */
const MOST = 94_000_000;

/** Coordinates of a grown opening are whole nanometres, so it may fall short by this besides its arc tolerance. */
const ROUNDING = 2;

/** Finest arcs of a grown opening, nanometres: coarser on a larger growth, where they would have too many chords. */
function finestArc(growth: number): number {
  return Math.min(200, Math.max(40, growth / 20_000));
}

/** Where in the bracket the next growth is tried: below the middle, because going in raises the lower end as well. */
const LOWER_PART = 0.4;

/** Most steps; each leaves at most half of the bracket. */
const MOST_STEPS = 60;

/** A bracket of the interference and the placement that shows its upper end. Nanometres. */
export interface Interference {
  readonly above: number;
  readonly atMost: number;
  readonly x: number;
  readonly y: number;
}

/** A growth at which the blank goes in: its arcs, the region, and what the region tells. */
interface Entry {
  readonly growth: number;
  /** How far the grown opening may stand off, because it has very many vertices. */
  readonly off: number;
  /** The grown opening holds at least the true offset by this. */
  readonly holds: number;
  readonly cells: readonly ConvexCell[];
  readonly best: BestPlacement;
  /** No growth below this lets the blank in. */
  readonly least: number;
}

/**
 * The least depth by which the blank still collides, over all translations: the directed Hausdorff distance
 * from blank to opening under translation.
 *
 * The blank goes into the opening grown by d exactly when some placement leaves no point of it deeper than d. Where it
 * does with clearance r to spare, no growth below d - r lets it in (a blank that goes into the opening grown by less
 * goes, grown by the difference, into the opening grown by d), so the bracket closes from both sides at once. Points
 * inside closed pockets of the plug count, because the grown opening counts them.
 *
 * @returns `above` <= interference <= `atMost`, at most 0.8 um apart (more where the grown opening has
 * more than 1,500 vertices, up to 4 um where it is jagged all over).
 * @source Huttenlocher, Kedem & Sharir, Discrete Comput. Geom. 9 (1993) 267-291 (definition); the bracket is ours.
 * @check tests/outside, closed forms and a grid search by an independent library
 */
export function measureInterference(opening: Opening, blank: Blank): Interference {
  let { low, entry } = firstEntry(opening, blank);
  for (let step = 0; entry && !isNarrow(entry, low) && step < MOST_STEPS; step++) {
    const width: number = entry.growth - low;
    const arc = Math.max(finestArc(entry.growth), width / 20);
    const growth: number = low + Math.max(LOWER_PART * width, Math.min(width / 2, 2.5 * arc));
    const closer = enterAt(opening, blank, growth, arc, growth <= entry.holds ? entry.cells : null);
    low = Math.max(low, closer ? closer.least : growth - arc - offOf(opening, growth, arc) - ROUNDING);
    entry = closer ?? entry;
  }
  if (!entry) return { above: low, atMost: MOST, x: 0, y: 0 };
  return { above: Math.max(0, low), atMost: entry.growth + entry.off + ROUNDING, x: entry.best.x, y: entry.best.y };
}

/** Whether the bracket is as narrow as it is meant to be, or as a simplified opening lets it be. */
function isNarrow({ growth, off }: Entry, low: number): boolean {
  return growth - low <= Math.max(INTERFERENCE_BRACKET - off, 4 * off);
}

/** Doubles the growth until the blank goes in; null where it never does within reason. */
function firstEntry(opening: Opening, blank: Blank): { low: number; entry: Entry | null } {
  let low = 0;
  for (let growth = FIRST_STEP; growth <= 2 * MOST; growth *= 2) {
    const arc = growth / 20;
    const entry = enterAt(opening, blank, growth, arc, null);
    if (entry) return { low: Math.max(low, entry.least), entry };
    low = growth - arc - offOf(opening, growth, arc) - ROUNDING;
  }
  return { low, entry: null };
}

/** How far the opening grown so may stand off. */
function offOf(opening: Opening, growth: number, arc: number): number {
  return opening.roundGrown(growth, arc).within - opening.within;
}

/** The entry at a growth, or null where the blank does not go in. A known region that holds this one bounds the search. */
function enterAt(
  opening: Opening,
  blank: Blank,
  growth: number,
  arc: number,
  within: readonly ConvexCell[] | null,
): Entry | null {
  const grown = opening.roundGrown(growth, arc);
  const cells = subtractWindows(grown, blank, within ? boxOfCells(within) : null);
  if (cells.length === 0) return null;
  const best = measureClearance(grown, blank, cells, arc / 2, Infinity);
  const off = grown.within - opening.within;
  const holds = growth - arc - off - ROUNDING;
  return { growth, off, holds, cells, best, least: holds - best.bound };
}
