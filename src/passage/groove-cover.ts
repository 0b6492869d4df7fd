import { arcReach } from '../profile/groove-shape.ts';

/** A straight milling cutter; lengths in nanometres, the angle in radians. */
export interface Cutter {
  /** Lean of each flank from square. */
  readonly flank: number;
  /** Radius of the two corners at a groove's root. */
  readonly rootRadius: number;
  /** The narrowest groove on the face. */
  readonly leastWidth: number;
  /** Grooves are as deep as a whole number of these. */
  readonly depthStep: number;
}

/** A stretch of a face below which the blade must have no material; heights above the back. */
export interface Need {
  readonly low: number;
  readonly high: number;
  /** From the face. */
  readonly depth: number;
}

/** A groove as it is milled into a face; what runs out at an end of the blade is a step. */
export interface CoverGroove {
  readonly bottom: number;
  readonly top: number;
  readonly depth: number;
  /** What it takes off, square nanometres, corners of its root not counted. */
  readonly area: number;
}

/** The narrowest land between two grooves, nanometres. */
const LEAST_LAND = 50_000;

/** Sizes of grooves are whole micrometres. */
const GRAIN = 1_000;

/**
 * The grooves of a straight cutter that take all that is needed off a face, and as little else as can be.
 *
 * Where the needed depth falls and rises again a groove may end and another one begin; all ways to part the face there are
 * looked at (dynamic programming).
 *
 * @param needs from the back upwards, one after the other; depth 0 or less where nothing is needed.
 * @param height of the blade.
 * @returns null where no grooves do.
 * @check tests/unit/passage/groove-cover.test.ts
 */
export function coverNeeds(needs: readonly Need[], height: number, cutter: Cutter): CoverGroove[] | null {
  const groups = groupsOf(needs);
  // best[k]: the least area for the groups before k, with where the last groove ends.
  let best: ({ area: number; grooves: CoverGroove[] } | null)[] = [{ area: 0, grooves: [] }];
  for (let k = 1; k <= groups.length; k++) {
    let least: { area: number; grooves: CoverGroove[] } | null = null;
    for (let from = 0; from < k; from++) {
      const before = best[from];
      const groove = before && grooveOver(groups.slice(from, k).flat(), height, cutter);
      if (!before || !groove) continue;
      const last = before.grooves.at(-1);
      if (last && last.top + LEAST_LAND > groove.bottom) continue;
      const area = before.area + groove.area;
      if (!least || area < least.area) least = { area, grooves: [...before.grooves, groove] };
    }
    best = [...best, least];
  }
  return best[groups.length]?.grooves ?? null;
}

/** Needs in groups: a new one begins where nothing is needed between, or where the depth has fallen and rises again. */
function groupsOf(needs: readonly Need[]): Need[][] {
  const groups: Need[][] = [];
  let [rising, last] = [true, null as Need | null];
  for (const need of needs) {
    if (need.depth <= 0) {
      last = null;
      continue;
    }
    const rises = last !== null && need.depth > last.depth;
    const falls = last !== null && need.depth < last.depth;
    if (last === null || (rises && !rising)) groups.push([need]);
    else groups[groups.length - 1].push(need);
    if (last === null) rising = true;
    else if (rises || falls) rising = rises;
    last = need;
  }
  return groups;
}

/** The smallest groove that takes off all of some needs. */
function grooveOver(needs: readonly Need[], height: number, cutter: Cutter): CoverGroove | null {
  const { flank, rootRadius, leastWidth, depthStep } = cutter;
  const deepest = needs.reduce((most, { depth }) => Math.max(most, depth), 0);
  const depth = Math.ceil(deepest / depthStep) * depthStep;
  const lean = Math.tan(flank);
  let [bottom, top] = [height, 0];
  for (const need of needs) {
    const across = acrossAt(need.depth, depth, lean, rootRadius);
    bottom = Math.min(bottom, need.low - across);
    top = Math.max(top, need.high + across);
  }
  const least = Math.max(leastWidth, 2 * (depth * lean + arcReach(rootRadius, lean)) + GRAIN);
  const more = Math.max(0, least - (top - bottom)) / 2;
  bottom = Math.floor((bottom - more) / GRAIN) * GRAIN;
  top = Math.ceil((top + more) / GRAIN) * GRAIN;
  // What would leave a sliver at an end of the blade runs out there.
  if (bottom < LEAST_LAND) bottom = 0;
  if (top > height - LEAST_LAND) top = height;
  const flanks = (bottom === 0 ? 0 : 1) + (top === height ? 0 : 1);
  const area = depth * (top - bottom) - (flanks * depth * depth * lean) / 2;
  return { bottom, top, depth, area };
}

/** How far from the edge of its mouth a groove reaches a depth. */
function acrossAt(at: number, depth: number, lean: number, radius: number): number {
  const reach = arcReach(radius, lean);
  const straight = depth - reach / Math.hypot(lean, 1);
  if (at <= straight) return at * lean;
  const centre = depth * lean + reach;
  const up = Math.min(radius, Math.max(0, at - (depth - radius)));
  return centre - Math.sqrt(Math.max(0, radius * radius - up * up));
}
