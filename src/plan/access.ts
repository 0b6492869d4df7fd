import type { Area, Plan } from '../family/plan.ts';
import type { AccessTable } from './access-table.ts';
import { areaTree, FREE, leafTicks, MUST, NOT, type Tick } from './area-tree.ts';
import { accessFaults } from './contradictions.ts';
import { neededBlanks } from './needed-blanks.ts';
import type { Access, AccessFault, PlannedBlank, PlannedSection } from './planned-access.ts';

export type { Access, AccessFault, PlannedBlank, PlannedSection };

const known = new WeakMap<Plan, Access>();

/**
 * The sections and blanks that a plan asks for. Areas that name one section share it; a blank is needed for each
 * different set of sections that somebody must enter, and those that the plan asks for by itself. Of areas that share a
 * section, one that must be entered decides; then one that must not.
 *
 * @returns sections in the order of the tree; blanks from base to all-section. The very same for the very same plan.
 * @check tests/unit/plan/access.test.ts, tests/laws/access.test.ts
 */
export function accessOf(plan: Plan): Access {
  const before = known.get(plan);
  if (before) return before;
  const access = findAccess(plan);
  known.set(plan, access);
  return access;
}

function findAccess(plan: Plan): Access {
  const tree = areaTree(plan.areas);
  const sections = plannedSections(tree.leaves);
  const sectionAt = new Map(sections.flatMap(({ areas }, s) => areas.map((id) => [id, s] as const)));
  const places = tree.leaves.map(({ id }) => sectionAt.get(id) ?? 0);
  const ticks = plan.holders.map((holder) => leafTicks(tree, holder));
  const wanted = ticks.map((leaves) => sectionTicks(leaves, places, sections.length));
  const { blanks, notes } = neededBlanks(plan, tree, sections, wanted);
  const table = sections.map((_, s) => blanks.map(({ sections: must, free }) => cellOf(s, must, free)));
  const faults = [...accessFaults({ plan, tree, sections, places, ticks, wanted, table }), ...notes];
  return { sections, blanks, table, faults };
}

function cellOf(section: number, must: readonly number[], free: readonly number[]): 0 | 1 | null {
  if (must.includes(section)) return 1;
  return free.includes(section) ? null : 0;
}

/** The name of an area's section: what it says, else its own name; spaces at the ends do not count. */
export function sectionName({ section, name }: Area): string {
  return (section ?? name).trim().replace(/\s+/g, ' ');
}

function plannedSections(leaves: readonly Area[]): PlannedSection[] {
  const areas = new Map<string, string[]>();
  for (const leaf of leaves) {
    const name = sectionName(leaf);
    const shared = areas.get(name);
    if (shared) shared.push(leaf.id);
    else areas.set(name, [leaf.id]);
  }
  return [...areas].map(([name, ids]) => ({ name, areas: ids }));
}

/** What decides of areas that share a section: the later in this list the stronger. */
const BY_STRENGTH = [NOT, FREE, NOT, MUST] as const;
const STRENGTH = { [FREE]: 1, [NOT]: 2, [MUST]: 3 } as const;

/** What a blank has to do with each section, from what it has to do with each leaf. */
function sectionTicks(leaves: Uint8Array, places: readonly number[], count: number): Uint8Array {
  const strongest = new Uint8Array(count);
  for (const [leaf, place] of places.entries()) {
    const own = STRENGTH[leaves[leaf] as Tick];
    if (own > strongest[place]) strongest[place] = own;
  }
  return strongest.map((strength) => BY_STRENGTH[strength]);
}

/**
 * The table with rows for sections that are still to come. Each is entered by the all-section blank, if there is one, and
 * by a base blank of its own, whose column stands at the end.
 *
 * @param reserve how many sections are still to come, 0 or more.
 * @check tests/unit/plan/access.test.ts
 */
export function reservedTable({ table, blanks }: Access, reserve: number): AccessTable {
  const later = Array.from({ length: reserve }, (_, i) => i);
  const rows = table.map((row) => [...row, ...later.map((): 0 => 0)]);
  const reserved = later.map((i) => [
    ...blanks.map(({ rank }): 0 | 1 => (rank === 'all-section' ? 1 : 0)),
    ...later.map((k): 0 | 1 => (k === i ? 1 : 0)),
  ]);
  return [...rows, ...reserved];
}
