import type { Verdict } from '../../../fit/fit.ts';
import { straightTool } from '../../../gauge/straight-tool.ts';
import type { Strip } from '../../../gauge/thickness-curve.ts';
import { countEntered, countTight, type ToolCell, type ToolTable } from '../../../gauge/tool-table.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { ToolOrder } from './gauge-state.ts';
import { sizeOf } from './strip-in-hand.ts';

/** A tool with what every keyway says to it. */
export interface ShownTool {
  readonly tool: Profile;
  /** Size over all, nanometres. */
  readonly size: Strip;
  /** A straight strip is gauged by the curves; a shaped one is judged by the full fit. */
  readonly straight: boolean;
  /** By keyway, in chart order; empty until they are known. */
  readonly cells: readonly ToolCell[];
  readonly enters: number;
  /** In how many of those it is tight. */
  readonly tight: number;
  /** The worst of them; null until they are known. */
  readonly verdict: Verdict | null;
  /** Spare thickness in the tightest keyway, nanometres; null for a shaped one and until it is known. */
  readonly spare: number | null;
}

/**
 * Tools with their cells of a table; those that it does not have wait for them.
 *
 * @check tests/unit/app/gauge-tools.test.ts
 */
export function shownTools(tools: readonly Profile[], table: ToolTable | null): ShownTool[] {
  const rows = new Map(table?.rows.map((row) => [row.toolId, row]));
  return tools.map((tool) => {
    const row = rows.get(tool.id);
    const strip = straightTool(tool.ring);
    const cells = row?.cells ?? [];
    const spares = cells.flatMap(({ spare }) => (spare === null ? [] : [spare]));
    return {
      tool,
      size: strip ?? sizeOf(tool),
      straight: strip !== null,
      cells,
      enters: row ? countEntered(row) : 0,
      tight: row ? countTight(row) : 0,
      verdict: worstOf(cells),
      spare: strip && spares.length > 0 ? Math.min(...spares) : null,
    };
  });
}

function worstOf(cells: readonly ToolCell[]): Verdict | null {
  if (cells.length === 0) return null;
  return (['blocked', 'tight'] as const).find((v) => cells.some(({ verdict }) => verdict === v)) ?? 'enters';
}

/**
 * The rows in the wanted order; equal ones stay in chart order.
 *
 * @check tests/unit/app/gauge-tools.test.ts
 */
export function sortedTools(rows: readonly ShownTool[], order: ToolOrder): readonly ShownTool[] {
  if (order.by === 'family') return order.down ? [...rows].reverse() : rows;
  const way = order.down ? -1 : 1;
  return [...rows].sort((a, b) => way * compared(a, b, order));
}

function compared(a: ShownTool, b: ShownTool, order: ToolOrder): number {
  if (order.by === 'name') return a.tool.name.localeCompare(b.tool.name, 'en', { numeric: true });
  if (order.by === 'size') return a.size.thickness - b.size.thickness || a.size.height - b.size.height;
  if (order.by === 'count') return a.enters - b.enters;
  return order.by === 'opening' ? roomOf(a, order.openingId) - roomOf(b, order.openingId) : 0;
}

/** How much room a tool has in a keyway, for comparing: its gap all round, below 0 where it is blocked. */
function roomOf({ cells }: ShownTool, openingId: string): number {
  const cell = cells.find((one) => one.openingId === openingId);
  if (!cell) return -Number.MAX_VALUE;
  if (cell.verdict !== 'blocked') return cell.clearance;
  // Half of what is too much of a strip is what it collides by on either side.
  return cell.spare === null ? cell.clearance : cell.spare / 2;
}

/** The order after a press on a head: by it, and the other way round when it is pressed again. */
export function pressedOrder(now: ToolOrder, wanted: ToolOrder): ToolOrder {
  const same =
    now.by === wanted.by && (now.by !== 'opening' || wanted.by !== 'opening' || now.openingId === wanted.openingId);
  return same ? { ...now, down: !now.down } : wanted;
}

/** "enters 8 of 10, 2 tight". @check tests/unit/app/gauge-tools.test.ts */
export function countWords({ cells, enters, tight }: Pick<ShownTool, 'cells' | 'enters' | 'tight'>): string {
  return `enters ${enters} of ${cells.length}${tight > 0 ? `, ${tight} tight` : ''}`;
}
