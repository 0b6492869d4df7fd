import type { Holder, Plan } from '../../../../family/plan.ts';
import { type AreaTree, areaTree, leafTicks, type Tick, type TreeArea } from '../../../../plan/area-tree.ts';
import type { AccessTyping } from './access-state.ts';

/** A row of the grid: an area, or the place where the name of a new one is typed. */
export type AccessRow =
  | { readonly kind: 'area'; readonly key: string; readonly row: TreeArea; readonly isFolded: boolean }
  | { readonly kind: 'new'; readonly key: 'new'; readonly depth: number };

/** The rows that are shown: what lies in a folded group is not, a new area stands where it will come. */
export function accessRows(tree: AreaTree, folded: ReadonlySet<string>, typing: AccessTyping | null): AccessRow[] {
  const rows: AccessRow[] = [];
  let hiddenBelow = Number.POSITIVE_INFINITY;
  for (const row of tree.rows) {
    if (row.depth > hiddenBelow) continue;
    const isFolded = row.isGroup && folded.has(row.area.id);
    hiddenBelow = isFolded ? row.depth : Number.POSITIVE_INFINITY;
    rows.push({ kind: 'area', key: row.area.id, row, isFolded });
  }
  if (typing?.what === 'new area') putNew(rows, typing.place);
  return rows;
}

function putNew(rows: AccessRow[], { after, inside }: { readonly after?: string; readonly inside?: string }): void {
  const at = rows.findIndex(({ key }) => key === (inside ?? after));
  const beside = rows[at];
  if (!beside || beside.kind === 'new') {
    rows.push({ kind: 'new', key: 'new', depth: 0 });
    return;
  }
  const { depth } = beside.row;
  let end = at + 1;
  for (let next = rows[end]; next?.kind === 'area' && next.row.depth > depth; next = rows[end]) end++;
  rows.splice(end, 0, { kind: 'new', key: 'new', depth: inside === undefined ? depth : depth + 1 });
}

/** What a cell shows: the tick of its area; of a group whose areas differ, that some are ticked. */
export type ShownTick = Tick | 'some';

const known = new WeakMap<Holder, { readonly tree: AreaTree; readonly ticks: Uint8Array }>();

/** The ticks of a holder, a leaf each; the very same for the very same holder and areas. */
export function ticksOf(tree: AreaTree, holder: Holder): Uint8Array {
  const before = known.get(holder);
  if (before?.tree === tree) return before.ticks;
  const ticks = leafTicks(tree, holder);
  known.set(holder, { tree, ticks });
  return ticks;
}

/** What the cell of a holder and an area shows. */
export function tickShown(tree: AreaTree, holder: Holder, { from, to }: TreeArea): ShownTick {
  const ticks = ticksOf(tree, holder);
  const first = ticks[from] as Tick;
  for (let leaf = from + 1; leaf < to; leaf++) if (ticks[leaf] !== first) return 'some';
  return first;
}

const WORDS = { 0: 'must not enter', 1: 'must enter', 2: 'may enter or not', some: 'some of it' } as const;

/** What a cell says, in words. */
export function tickWords(tick: ShownTick): string {
  return WORDS[tick];
}

/** The next tick of a cell that is pressed: must, free, not, and round again. */
export function tickAfter(tick: ShownTick): Tick {
  if (tick === 1) return 2;
  return tick === 2 ? 0 : 1;
}

/** A plan of nothing, for a family that has none yet. Its blade is that of no size; nobody reckons with it. */
const NO_PLAN: Plan = {
  areas: [],
  holders: [],
  baseBlanks: true,
  allSection: true,
  reserve: 0,
  stops: 1,
  depths: 1,
  blade: {
    ...{ thickness: 0, height: 0, backRadius: 0, cutZone: 0, backZone: 0, grooveWidth: 0, heightStep: 0 },
    ...{ grooveDepth: 0, depthStep: 0, flank: 0, rootRadius: 0, sides: 'both' },
  },
};

/** The plan of a family as the sheet of areas and holders shows it. */
export function planForView(plan: Plan | undefined): Plan {
  return plan ?? NO_PLAN;
}

/** The tree of a plan's areas. */
export function treeOf(plan: Pick<Plan, 'areas'>): AreaTree {
  return areaTree(plan.areas);
}
