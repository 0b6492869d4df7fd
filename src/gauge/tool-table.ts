import { plainConditions } from '../fit/conditions.ts';
import type { Fit, Verdict } from '../fit/fit.ts';
import { blankUnder, judgePair, judgePairEntry, openingUnder } from '../fit/judge-pair.ts';
import type { Profile } from '../profile/profile.ts';
import { straightTool } from './straight-tool.ts';
import { type Strip, spareOf, type ThicknessCurve } from './thickness-curve.ts';

/** A tool in one opening; lengths in nanometres. */
export interface ToolCell {
  readonly openingId: string;
  readonly verdict: Verdict;
  /**
   * The gap all round in the best placement. Where it is blocked: below 0 by the depth by which it still collides, or
   * -Infinity for a straight tool, whose `spare` tells how much is too much.
   */
  readonly clearance: number;
  /** By how much a straight tool could be thicker, below 0 where it is too thick; null for a tool of another shape. */
  readonly spare: number | null;
}

/** A tool in every opening. */
export interface ToolRow {
  readonly toolId: string;
  /** Its size where it is straight. */
  readonly strip: Strip | null;
  /** In the order of the openings. */
  readonly cells: readonly ToolCell[];
}

/** Tools by openings, both in the order given. */
export interface ToolTable {
  readonly openings: readonly string[];
  readonly rows: readonly ToolRow[];
}

/**
 * What each tool does in each opening. A straight tool is measured against the curve; all verdicts are those of the full
 * fit, as in every other view. Where the fit and a tilted curve differ, each within its accuracy, what one of them found
 * to go in goes in.
 *
 * @param curves of the openings, of any order; the limit of tilt is theirs. Openings without one are left out.
 * @yields how many pairs are done, of how many.
 * @check tests/unit/gauge/tool-table.test.ts, tests/laws/gauge.test.ts
 */
export function* tablingTools(
  tools: readonly Profile[],
  openings: readonly Profile[],
  curves: readonly ThicknessCurve[],
  runningClearance: number,
): Generator<{ done: number; total: number }, ToolTable, void> {
  const columns = openings.flatMap(({ id, ring }) => {
    const curve = curves.find(({ openingId }) => openingId === id);
    if (!curve) return [];
    const conditions = { ...plainConditions(runningClearance), tiltLimit: curve.tiltLimit };
    return [{ id, curve, conditions, shape: openingUnder(ring, conditions) }];
  });
  const total = tools.length * columns.length;
  const rows: ToolRow[] = [];
  for (const { id: toolId, ring } of tools) {
    const strip = straightTool(ring);
    const cells: ToolCell[] = [];
    for (const { id: openingId, curve, conditions, shape } of columns) {
      const judge = strip ? judgePairEntry : judgePair;
      const fit = judge(shape, blankUnder(ring, conditions), conditions);
      cells.push({ openingId, ...cellOf(fit, strip && spareOf(curve, strip)) });
      yield { done: rows.length * columns.length + cells.length, total };
    }
    rows.push({ toolId, strip, cells });
  }
  return { openings: columns.map(({ id }) => id), rows };
}

function cellOf({ verdict, clearance }: Fit, spare: number | null): Omit<ToolCell, 'openingId'> {
  if (spare === null) return { verdict, clearance, spare };
  if (verdict === 'blocked' && spare >= 0) return { verdict: 'tight', clearance: 0, spare };
  return { verdict, clearance, spare: verdict === 'blocked' ? spare : Math.max(0, spare) };
}

/** In how many openings a tool goes in. */
export function countEntered({ cells }: ToolRow): number {
  return cells.filter(({ verdict }) => verdict !== 'blocked').length;
}

/** In how many of them it is tight. */
export function countTight({ cells }: ToolRow): number {
  return cells.filter(({ verdict }) => verdict === 'tight').length;
}
