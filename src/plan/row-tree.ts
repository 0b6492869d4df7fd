import type { Kernel } from './reduce-table.ts';

/** A set of rows with a blank of its own, and the sets and single rows directly in it. */
export interface RowGroup {
  readonly rows: readonly number[];
  readonly groups: readonly RowGroup[];
  /** Rows that lie in this group and in none of its groups. */
  readonly single: readonly number[];
}

interface Growing {
  readonly rows: ReadonlySet<number>;
  readonly groups: Growing[];
}

/**
 * The rows as a tree: blanks that enter several rows, the widest first, as long as each lies wholly within or wholly
 * beside those taken before. What does not lie so is left to whoever uses the tree.
 */
export function rowTree({ rows, onesOf }: Kernel): RowGroup {
  const root: Growing = { rows: new Set(Array.from({ length: rows }, (_, i) => i)), groups: [] };
  const sets = onesOf.map((ones) => new Set(ones)).filter((ones) => ones.size > 1 && ones.size < rows);
  for (const set of sets.sort((a, b) => b.size - a.size)) place(root, set);
  return finished(root);
}

function place(group: Growing, set: ReadonlySet<number>): void {
  for (const inner of group.groups) {
    const shared = [...set].filter((row) => inner.rows.has(row)).length;
    if (shared === 0) continue;
    if (shared === set.size && set.size < inner.rows.size) place(inner, set);
    return;
  }
  group.groups.push({ rows: set, groups: [] });
}

function finished({ rows, groups }: Growing): RowGroup {
  const inside = new Set(groups.flatMap((group) => [...group.rows]));
  return {
    rows: [...rows],
    groups: groups.map(finished),
    single: [...rows].filter((row) => !inside.has(row)),
  };
}

/** How many levels of groups stand one in another; 0 for rows alone. */
export function levelsOf({ groups }: RowGroup): number {
  return Math.max(0, ...groups.map((group) => 1 + levelsOf(group)));
}
