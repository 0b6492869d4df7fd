import type { AccessTable } from '../../src/plan/access-table.ts';

/** A cell for every pair of rows and columns. */
export function tableOf(rows: number, columns: number, enters: (i: number, j: number) => boolean | null): AccessTable {
  return Array.from({ length: rows }, (_, i) =>
    Array.from({ length: columns }, (_, j) => {
      const cell = enters(i, j);
      if (cell === null) return null;
      return cell ? 1 : 0;
    }),
  );
}

/** A section for each zone's areas, a base blank each, a blank for each zone, and one that enters all. */
export function campus(zones: readonly number[]): AccessTable {
  const zone = zones.flatMap((size, z) => new Array<number>(size).fill(z));
  const areas = zone.length;
  return tableOf(areas, areas + zones.length + 1, (i, j) => {
    if (j < areas) return i === j;
    return j === areas + zones.length || zone[i] === j - areas;
  });
}

/** Sections and blanks of an order on the same elements: the blank of x enters the section of y where `y <= x`. */
export function orderTable(size: number, below: (y: number, x: number) => boolean): AccessTable {
  return tableOf(size, size, below);
}

/** A tree in heap order with `arity` children a node: a blank enters its own section and all those beneath it. */
export function treeTable(nodes: number, arity: number): AccessTable {
  const isBeneath = (y: number, x: number): boolean => y === x || (y > 0 && isBeneath(Math.floor((y - 1) / arity), x));
  return orderTable(nodes, isBeneath);
}

/** A blank for each set of sections. */
export function blanksFor(sections: number, sets: readonly (readonly number[])[]): AccessTable {
  return tableOf(sections, sets.length, (i, j) => sets[j].includes(i));
}

/** All sets of `size` numbers below `count`. */
export function setsOf(count: number, size: number): number[][] {
  if (size === 0) return [[]];
  return setsOf(count, size - 1).flatMap((set) =>
    Array.from({ length: count }, (_, i) => i)
      .filter((i) => i > (set.at(-1) ?? -1))
      .map((i) => [...set, i]),
  );
}
