import { areaPath, areaTree, FREE, MUST, NOT } from '../../plan/area-tree.ts';
import type { HoldersRead, NamedArea, SaidAccess } from '../csv/read-holders.ts';
import { addArea } from './edit-areas.ts';
import { addHolder, planIn } from './edit-plan.ts';
import { tickArea } from './edit-ticks.ts';
import type { FamilyFile } from './schema.ts';

/** The parts of a table that are taken. */
export type HoldersTable = Pick<HoldersRead & { ok: true }, 'form' | 'areas' | 'holders' | 'said'>;

const TICKS = { must: MUST, free: FREE, not: NOT } as const;

/**
 * The family with the areas, holders and ticks of a table. An area is known by its groups and name, or by its name where
 * only one has it; a holder by the name. What a matrix says of a known holder takes the place of what was said of those
 * areas; a list only adds.
 *
 * @param addAreas whether areas that are not known are added; what is said of them is left out else.
 * @check tests/unit/interchange/read-holders.test.ts
 */
export function takeHolders(file: FamilyFile, table: HoldersTable, addAreas: boolean): FamilyFile {
  const known = () => ({ file, ids: table.areas.map(({ path }) => knownArea(file, path)) });
  const { file: begun, ids } = addAreas ? withAreas(file, table.areas) : known();
  let next = begun;
  const said: SaidAccess[][] = table.holders.map(() => []);
  for (const one of table.said) said[one.holder].push(one);
  for (const [h, name] of table.holders.entries()) next = takeHolder(next, name, said[h], ids, table.form);
  return next;
}

/** The family with the areas of a table as far as they are not there, with their groups, and the id of each. */
export function withAreas(
  file: FamilyFile,
  areas: readonly NamedArea[],
): { readonly file: FamilyFile; readonly ids: readonly (string | null)[] } {
  let next = file;
  const ids: string[] = [];
  for (const area of areas) {
    const known = knownArea(next, area.path);
    const added = known === null ? addPath(next, area) : { file: next, id: known };
    next = added.file;
    ids.push(added.id);
  }
  return { file: next, ids };
}

/** The areas of a table that the plan does not have. */
export function unknownAreas(file: FamilyFile, areas: readonly NamedArea[]): NamedArea[] {
  return areas.filter(({ path }) => knownArea(file, path) === null);
}

function takeHolder(
  file: FamilyFile,
  name: string,
  said: readonly SaidAccess[],
  ids: readonly (string | null)[],
  form: HoldersTable['form'],
): FamilyFile {
  const known = planIn(file).holders.find((holder) => plain(holder.name) === plain(name));
  const of = (tick: SaidAccess['tick']) =>
    said.flatMap(({ area, tick: own }) => (own === tick ? (ids[area] ?? []) : []));
  let { file: next, id } = known
    ? { file, id: known.id }
    : addHolder(file, { name, enters: of('must'), free: of('free') });
  if (known && form === 'matrix') for (const area of ids) if (area !== null) next = tickArea(next, id, area, NOT);
  const tree = areaTree(planIn(next).areas);
  const depth = ({ area }: SaidAccess) => tree.byId.get(ids[area] ?? '')?.depth ?? 0;
  for (const one of [...said].sort((a, b) => depth(a) - depth(b))) {
    const row = tree.byId.get(ids[one.area] ?? '');
    // That a group is not ticked says nothing of the areas in it, which have marks of their own.
    if (row && !(one.tick === 'not' && row.isGroup) && (known || one.tick === 'not'))
      next = tickArea(next, id, row.area.id, TICKS[one.tick]);
  }
  return next;
}

function knownArea(file: FamilyFile, path: readonly string[]): string | null {
  const { areas } = planIn(file);
  const name = plain(path[path.length - 1]);
  const named = areas.filter((area) => plain(area.name) === name);
  const tree = areaTree(areas);
  const whole = named.find(({ id }) => plain(areaPath(tree, id)) === plain(path.join(' / ')));
  if (whole) return whole.id;
  return path.length === 1 && named.length === 1 ? named[0].id : null;
}

/** The family with an area and the groups that it lies in, as far as they are not there. */
function addPath(file: FamilyFile, { path, section }: NamedArea): { readonly file: FamilyFile; readonly id: string } {
  let next = file;
  let inside: string | undefined;
  for (const [i, name] of path.entries()) {
    const known = i < path.length - 1 ? knownGroup(next, inside, name) : undefined;
    if (known !== undefined) {
      inside = known;
      continue;
    }
    const isLast = i === path.length - 1;
    const own = isLast ? (section ?? sectionApart(next, path)) : undefined;
    const added = addArea(
      next,
      { name, ...(own !== undefined && { section: own }) },
      inside === undefined ? {} : { inside },
    );
    next = added.file;
    inside = added.id;
  }
  return { file: next, id: inside ?? '' };
}

function knownGroup(file: FamilyFile, parent: string | undefined, name: string): string | undefined {
  return planIn(file).areas.find((area) => area.parent === parent && plain(area.name) === plain(name))?.id;
}

/** The section of an area whose name another one has already: its groups with it, so that they do not share by chance. */
function sectionApart(file: FamilyFile, path: readonly string[]): string | undefined {
  const name = plain(path[path.length - 1]);
  const isTaken = planIn(file).areas.some((area) => plain(area.name) === name || plain(area.section ?? '') === name);
  return isTaken && path.length > 1 ? path.join(' ').slice(0, 200) : undefined;
}

function plain(text: string): string {
  return text.trim().replace(/\s+/g, ' ').toLowerCase();
}
