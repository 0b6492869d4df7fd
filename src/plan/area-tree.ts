import type { Area, Holder, Plan } from '../family/plan.ts';

/** What a holder's blank has to do with an area: stay out, go in, or either. */
export type Tick = 0 | 1 | 2;

/** The blank must not enter. */
export const NOT: Tick = 0;
/** The blank must enter. */
export const MUST: Tick = 1;
/** The blank may enter or not. */
export const FREE: Tick = 2;

/** An area at its place in the tree. */
export interface TreeArea {
  readonly area: Area;
  /** How many groups it lies in. */
  readonly depth: number;
  readonly isGroup: boolean;
  /** The leaves in it, or it itself: `leaves[from]` up to, without, `leaves[to]`. */
  readonly from: number;
  readonly to: number;
}

/** The areas of a plan from the top down, each group before what lies in it. */
export interface AreaTree {
  readonly rows: readonly TreeArea[];
  readonly byId: ReadonlyMap<string, TreeArea>;
  /** The areas that hold no others, so have a keyway. */
  readonly leaves: readonly Area[];
}

const known = new WeakMap<readonly Area[], AreaTree>();

/** The tree of a plan's areas, siblings in the order of the plan; the very same for the very same areas. */
export function areaTree(areas: Plan['areas']): AreaTree {
  const before = known.get(areas);
  if (before) return before;
  const tree = makeTree(areas);
  known.set(areas, tree);
  return tree;
}

function makeTree(areas: Plan['areas']): AreaTree {
  const ids = new Set(areas.map(({ id }) => id));
  const within = new Map<string | undefined, Area[]>();
  for (const area of areas) {
    const parent = area.parent !== undefined && ids.has(area.parent) ? area.parent : undefined;
    const siblings = within.get(parent);
    if (siblings) siblings.push(area);
    else within.set(parent, [area]);
  }
  const rows: TreeArea[] = [];
  const leaves: Area[] = [];
  const place = (area: Area, depth: number) => {
    const children = within.get(area.id);
    const at = rows.length;
    const from = leaves.length;
    const row = { area, depth, isGroup: children !== undefined, from };
    rows.push({ ...row, to: from });
    if (children) for (const child of children) place(child, depth + 1);
    else leaves.push(area);
    rows[at] = { ...row, to: leaves.length };
  };
  for (const area of within.get(undefined) ?? []) place(area, 0);
  return { rows, byId: new Map(rows.map((row) => [row.area.id, row])), leaves };
}

/**
 * What a holder's blank has to do with each leaf. What is said of an area counts more than what is said of a group that it
 * lies in; of one area, that it must be entered counts more than that it is free.
 *
 * @returns one tick a leaf, in the order of the tree.
 */
export function leafTicks(tree: AreaTree, { enters, free = [] }: Pick<Holder, 'enters' | 'free'>): Uint8Array {
  const ticks = new Uint8Array(tree.leaves.length);
  const said: (readonly [TreeArea, Tick])[] = [];
  for (const [ids, tick] of [
    [free, FREE],
    [enters, MUST],
  ] as const) {
    for (const id of ids) {
      const row = tree.byId.get(id);
      if (row) said.push([row, tick]);
    }
  }
  said.sort(([a], [b]) => a.depth - b.depth);
  for (const [{ from, to }, tick] of said) ticks.fill(tick, from, to);
  return ticks;
}

/** The groups that an area lies in and the area, as people read it: "North / Hall". */
export function areaPath(tree: AreaTree, id: string): string {
  const names: string[] = [];
  for (
    let row = tree.byId.get(id);
    row;
    row = row.area.parent === undefined ? undefined : tree.byId.get(row.area.parent)
  )
    names.unshift(row.area.name.trim());
  return names.join(' / ');
}
