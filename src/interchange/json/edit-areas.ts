import { areaTree } from '../../plan/area-tree.ts';
import { type AddedEntry, type AreaFile, entryId, inTreeOrder, planIn, putPlan } from './edit-plan.ts';
import type { FamilyFile } from './schema.ts';

/** Where an area is put: after another one beside it, or inside it as the last; at the end of all where not given. */
export interface AreaPlace {
  readonly after?: string;
  readonly inside?: string;
}

/** The family with one area more. A group has no keyway, so an area that holds it loses the section that it stated. */
export function addArea(
  file: FamilyFile,
  { name, section }: { readonly name: string; readonly section?: string },
  { after, inside }: AreaPlace = {},
): AddedEntry {
  const { areas } = planIn(file);
  const id = entryId(
    areas.map((area) => area.id),
    name,
    'area',
  );
  const beside = areas.findIndex((area) => area.id === after);
  const parent = areas.some((area) => area.id === inside) ? inside : areas[beside]?.parent;
  const area: AreaFile = {
    id,
    name,
    ...(parent !== undefined && { parent }),
    ...(section !== undefined && { section }),
  };
  const place = beside < 0 || inside !== undefined ? areas.length : beside + 1;
  const held = areas.map((other) => (other.id === parent ? withoutSection(other) : other));
  return { file: putAreas(file, held.toSpliced(place, 0, area)), id };
}

/** The family with another name for an area. */
export function renameArea(file: FamilyFile, id: string, name: string): FamilyFile {
  return withArea(file, id, (area) => (area.name === name ? area : { ...area, name }));
}

/** The family with an area that names its section; null: the section has the area's own name. */
export function setAreaSection(file: FamilyFile, id: string, section: string | null): FamilyFile {
  return withArea(file, id, (area) => {
    if ((area.section ?? null) === section) return area;
    return section === null ? withoutSection(area) : { ...area, section };
  });
}

/** The family with an area `steps` places on among those in the same group, no further than there are any. */
export function moveArea(file: FamilyFile, id: string, steps: number): FamilyFile {
  const { areas } = planIn(file);
  const { siblings, at } = siblingsOf(areas, id);
  const to = Math.max(0, Math.min(siblings.length - 1, at + steps));
  if (at < 0 || to === at) return file;
  const moved = siblings.toSpliced(at, 1).toSpliced(to, 0, siblings[at]);
  const places = siblings.map((sibling) => areas.indexOf(sibling));
  const next = [...areas];
  for (const [i, place] of places.entries()) next[place] = moved[i];
  return putAreas(file, next);
}

/** The family with an area moved into the one before it, as the last there; as it was where none is before it. */
export function indentArea(file: FamilyFile, id: string): FamilyFile {
  const { areas } = planIn(file);
  const { siblings, at } = siblingsOf(areas, id);
  const group = siblings[at - 1];
  if (!group) return file;
  const others = areas.filter((area) => area.id !== id).map((area) => (area === group ? withoutSection(area) : area));
  return putAreas(file, [...others, { ...siblings[at], parent: group.id }]);
}

/** The family with an area moved out of its group, to the place after it; as it was where it is in none. */
export function outdentArea(file: FamilyFile, id: string): FamilyFile {
  const { areas } = planIn(file);
  const area = areas.find((other) => other.id === id);
  const group = areas.find((other) => other.id === area?.parent);
  if (!area || !group) return file;
  const { parent: _, ...rest } = area;
  const out: AreaFile = { ...rest, ...(group.parent !== undefined && { parent: group.parent }) };
  const others = areas.filter((other) => other.id !== id);
  return putAreas(file, others.toSpliced(others.indexOf(group) + 1, 0, out));
}

/** The family without an area and all that lies in it; no holder speaks of them any more. */
export function deleteArea(file: FamilyFile, id: string): FamilyFile {
  const plan = planIn(file);
  const gone = idsWithin(plan.areas, id);
  if (gone.size === 0) return file;
  const left = (ids: readonly string[]) => ids.filter((one) => !gone.has(one));
  const holders = plan.holders.map((holder) => {
    const { free, ...rest } = holder;
    if (![...rest.enters, ...(free ?? [])].some((one) => gone.has(one))) return holder;
    return { ...rest, enters: left(rest.enters), ...(free && { free: left(free) }) };
  });
  return putPlan(file, { ...plan, areas: plan.areas.filter((area) => !gone.has(area.id)), holders });
}

/** The ids of an area and of all that lies in it; none where there is no such area. */
export function idsWithin(areas: readonly AreaFile[], id: string): ReadonlySet<string> {
  const { rows } = areaTree(areas);
  const at = rows.findIndex(({ area }) => area.id === id);
  const ids = new Set<string>();
  for (let i = at; i >= 0 && i < rows.length && (i === at || rows[i].depth > rows[at].depth); i++)
    ids.add(rows[i].area.id);
  return ids;
}

function putAreas(file: FamilyFile, areas: readonly AreaFile[]): FamilyFile {
  return putPlan(file, { ...planIn(file), areas: inTreeOrder(areas) });
}

function withArea(file: FamilyFile, id: string, change: (area: AreaFile) => AreaFile): FamilyFile {
  const plan = planIn(file);
  const at = plan.areas.findIndex((area) => area.id === id);
  if (at < 0) return file;
  const area = change(plan.areas[at]);
  return area === plan.areas[at] ? file : putPlan(file, { ...plan, areas: plan.areas.with(at, area) });
}

function withoutSection(area: AreaFile): AreaFile {
  if (area.section === undefined) return area;
  const { section: _, ...rest } = area;
  return rest;
}

function siblingsOf(areas: readonly AreaFile[], id: string): { readonly siblings: AreaFile[]; readonly at: number } {
  const area = areas.find((other) => other.id === id);
  const siblings = area ? areas.filter(({ parent }) => parent === area.parent) : [];
  return { siblings, at: area ? siblings.indexOf(area) : -1 };
}
