import { type AreaTree, areaTree, FREE, leafTicks, MUST, NOT, type Tick, type TreeArea } from '../../plan/area-tree.ts';
import { idsWithin } from './edit-areas.ts';
import { type HolderFile, planIn, withHolder } from './edit-plan.ts';
import type { FamilyFile } from './schema.ts';

/** What is said of areas, by their ids. */
type Said = Map<string, Tick>;

/**
 * The family with another tick of a holder for an area, or for a group and so for all in it, now and later. Where a group
 * above says otherwise of more than this area, it is said of the rest one by one, so that nothing else changes.
 *
 * @check tests/unit/interchange/edit-plan.test.ts, tests/laws/access.test.ts
 */
export function tickArea(file: FamilyFile, holderId: string, areaId: string, tick: Tick): FamilyFile {
  const { areas } = planIn(file);
  const tree = areaTree(areas);
  const row = tree.byId.get(areaId);
  if (!row) return file;
  return withHolder(file, holderId, (holder) => {
    const now = leafTicks(tree, holder).subarray(row.from, row.to);
    const isSaidTwice = holder.enters.includes(areaId) && holder.free?.includes(areaId) === true;
    if (!isSaidTwice && !row.isGroup && now[0] === tick) return holder;
    const said = saidBy(holder);
    for (const id of idsWithin(areas, areaId)) said.delete(id);
    splitAbove(tree, said, row, tick);
    return holderWith(holder, said);
  });
}

function saidBy({ enters, free = [] }: HolderFile): Said {
  return new Map([...free.map((id) => [id, FREE] as const), ...enters.map((id) => [id, MUST] as const)]);
}

/** Lets a tick hold for an area of which nothing is said itself, by what is said of it or of the groups above it. */
function splitAbove(tree: AreaTree, said: Said, row: TreeArea, tick: Tick): void {
  const above = groupsAbove(tree, row);
  const saying = () => above.find(({ area }) => said.has(area.id));
  let group = saying();
  if ((group ? said.get(group.area.id) : NOT) === tick) return;
  if (tick !== NOT) {
    said.set(row.area.id, tick);
    return;
  }
  for (; group; group = saying()) {
    const says = said.get(group.area.id) ?? NOT;
    said.delete(group.area.id);
    const between = above.slice(0, above.indexOf(group) + 1).map(({ area }) => area.id);
    const onTheWay = new Set([row.area.id, ...between]);
    for (const { area } of tree.rows)
      if (area.parent !== undefined && between.includes(area.parent) && !onTheWay.has(area.id) && !said.has(area.id))
        said.set(area.id, says);
  }
}

/** The groups that an area lies in, the nearest first. */
function groupsAbove(tree: AreaTree, { area }: TreeArea): TreeArea[] {
  const above: TreeArea[] = [];
  for (let id = area.parent; id !== undefined; ) {
    const group = tree.byId.get(id);
    if (!group) break;
    above.push(group);
    id = group.area.parent;
  }
  return above;
}

function holderWith(holder: HolderFile, said: Said): HolderFile {
  const { free: before, ...rest } = holder;
  const idsOf = (tick: Tick) => [...said].flatMap(([id, own]) => (own === tick ? [id] : []));
  const free = idsOf(FREE);
  return { ...rest, enters: idsOf(MUST), ...((free.length > 0 || before) && { free }) };
}
