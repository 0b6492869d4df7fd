import type { Area, Plan } from '../family/plan.ts';
import type { AccessTable } from './access-table.ts';
import { type AreaTree, areaPath, FREE, MUST, NOT } from './area-tree.ts';
import type { AccessFault, PlannedSection } from './planned-access.ts';

/** What contradictions are looked for in. */
export interface PlanGround {
  readonly plan: Plan;
  readonly tree: AreaTree;
  readonly sections: readonly PlannedSection[];
  /** Place of the section of each leaf. */
  readonly places: readonly number[];
  /** What each holder has to do with each leaf, and with each section. */
  readonly ticks: readonly Uint8Array[];
  readonly wanted: readonly Uint8Array[];
  readonly table: AccessTable;
}

/**
 * What in a plan cannot be meant so, what is missing, and what is worth knowing; contradictions first.
 *
 * @check tests/unit/plan/contradictions.test.ts
 */
export function accessFaults(ground: PlanGround): AccessFault[] {
  return [
    ...tornSections(ground),
    ...bothTicks(ground),
    ...sameNames(ground),
    ...groupsWithSection(ground),
    ...nothingYet(ground),
    ...idleHolders(ground),
    ...notEntered(ground),
    ...sameHolders(ground),
    ...likeSections(ground),
    ...neverApart(ground),
  ];
}

function list(names: readonly string[]): string {
  if (names.length <= 2) return names.join(' and ');
  return names.length === 3
    ? `${names[0]}, ${names[1]} and ${names[2]}`
    : `${names[0]}, ${names[1]} and ${names.length - 2} more`;
}

/** A holder that must enter one area and must not enter another with the same section. */
function tornSections({ plan, tree, sections, places, ticks }: PlanGround): AccessFault[] {
  const shared = sections.flatMap(({ areas }, s) => (areas.length > 1 ? [s] : []));
  if (shared.length === 0) return [];
  const leavesOf = new Map(shared.map((s) => [s, places.flatMap((place, leaf) => (place === s ? [leaf] : []))]));
  return plan.holders.flatMap((holder, h) =>
    shared.flatMap((s): AccessFault[] => {
      const leaves = leavesOf.get(s) ?? [];
      const must = leaves.filter((leaf) => ticks[h][leaf] === MUST).map((leaf) => tree.leaves[leaf]);
      const not = leaves.filter((leaf) => ticks[h][leaf] === NOT).map((leaf) => tree.leaves[leaf]);
      if (must.length === 0 || not.length === 0) return [];
      const [ins, outs] = [must, not].map((areas) => list(areas.map(({ id }) => areaPath(tree, id))));
      return [
        {
          kind: 'contradiction',
          what: `${holder.name} must enter ${ins} and must not enter ${outs}, but they share the section ${sections[s].name}.`,
          cure: `Tick ${outs} as must or free for ${holder.name}, or give ${not.length > 1 ? 'them a section' : 'it a section'} of ${not.length > 1 ? 'their' : 'its'} own.`,
          areas: [...must, ...not].map(({ id }) => id),
          holders: [holder.id],
        },
      ];
    }),
  );
}

/** One area ticked as must and as free. */
function bothTicks({ plan, tree }: PlanGround): AccessFault[] {
  return plan.holders.flatMap(({ id, name, enters, free = [] }): AccessFault[] => {
    const must = new Set(enters);
    const both = [...new Set(free)].filter((area) => must.has(area));
    if (both.length === 0) return [];
    const areas = list(both.map((area) => areaPath(tree, area)));
    return [
      {
        kind: 'contradiction',
        what: `${name} has ${areas} both as must and as free.`,
        cure: 'Tick it anew as one of the two.',
        areas: both,
        holders: [id],
      },
    ];
  });
}

/** Areas that share a section only because they have one name, and others that are called alike. */
function sameNames({ tree }: PlanGround): AccessFault[] {
  const leaves = byName(tree.leaves, ({ name }) => name);
  return leaves.flatMap((areas): AccessFault[] => {
    const ids = areas.map(({ id }) => id);
    const silent = areas.filter(({ section }) => section === undefined);
    const name = areas[0].name.trim();
    const apart = areas.length === 2 ? 'one of them' : 'each';
    if (silent.length > 1)
      return [
        {
          kind: 'contradiction',
          what: `${silent.length} areas are called ${name} and none says its section, so they would share one.`,
          cure: `Give ${apart} another name, or write the section that each has.`,
          areas: silent.map(({ id }) => id),
          holders: [],
        },
      ];
    const what = `${areas.length} areas are called ${name}.`;
    return [{ kind: 'note', what, cure: `Nothing, or give ${apart} another name.`, areas: ids, holders: [] }];
  });
}

function byName<T>(things: readonly T[], nameOf: (thing: T) => string): T[][] {
  const alike = new Map<string, T[]>();
  for (const thing of things) {
    const key = nameOf(thing).trim().replace(/\s+/g, ' ').toLowerCase();
    const others = alike.get(key);
    if (others) others.push(thing);
    else alike.set(key, [thing]);
  }
  return [...alike.values()].filter((group) => group.length > 1);
}

function groupsWithSection({ tree }: PlanGround): AccessFault[] {
  return tree.rows.flatMap(({ area, isGroup }): AccessFault[] => {
    if (!isGroup || area.section === undefined) return [];
    return [
      {
        kind: 'contradiction',
        what: `${area.name} holds other areas and has the section ${area.section}; a group has no keyway.`,
        cure: 'Take the section off it, or give it to the areas in it.',
        areas: [area.id],
        holders: [],
      },
    ];
  });
}

function nothingYet({ plan, tree }: PlanGround): AccessFault[] {
  if (tree.leaves.length > 0) return [];
  const cure = plan.holders.length > 0 ? 'Add areas, then tick who enters them.' : 'Begin with an area.';
  return [{ kind: 'empty', what: 'There is no area yet.', cure, areas: [], holders: [] }];
}

function idleHolders({ plan, wanted }: PlanGround): AccessFault[] {
  return plan.holders.flatMap(({ id, name }, h): AccessFault[] => {
    if (wanted[h].includes(MUST)) return [];
    const what = wanted[h].includes(FREE)
      ? `${name} must enter nothing: all that is ticked is free.`
      : `${name} enters nothing yet.`;
    return [{ kind: 'empty', what, cure: 'Tick an area, or delete the holder.', areas: [], holders: [id] }];
  });
}

function notEntered({ plan, tree, ticks }: PlanGround): AccessFault[] {
  if (plan.holders.length === 0) return [];
  const areas = tree.leaves.filter((_, leaf) => !ticks.some((own) => own[leaf] === MUST));
  if (areas.length === 0) return [];
  const one = areas.length === 1;
  return [
    {
      kind: 'note',
      what: `Nobody is ticked to enter ${list(areas.map(({ id }) => areaPath(tree, id)))}.`,
      cure: `Tick who must enter ${one ? 'it' : 'them'}, or leave it so.`,
      areas: areas.map(({ id }) => id),
      holders: [],
    },
  ];
}

function sameHolders({ plan }: PlanGround): AccessFault[] {
  return byName(plan.holders, ({ name }) => name).map((holders) => ({
    kind: 'note',
    what: `${holders.length} holders are called ${holders[0].name.trim()}.`,
    cure: 'Give each a name of its own, or delete all but one.',
    areas: [],
    holders: holders.map(({ id }) => id),
  }));
}

/** Sections whose names differ in capitals only: perhaps one was meant. */
function likeSections({ sections, tree }: PlanGround): AccessFault[] {
  const byId = (id: string): Area | undefined => tree.byId.get(id)?.area;
  return byName(sections, ({ name }) => name).map((alike) => ({
    kind: 'note',
    what: `The sections ${list(alike.map(({ name }) => name))} differ in capitals only; they are taken for ${alike.length} sections.`,
    cure: 'Write them alike if one is meant.',
    areas: alike.flatMap(({ areas }) => areas).filter((id) => byId(id) !== undefined),
    holders: [],
  }));
}

/** Sections that every blank enters alike: nothing in the plan tells them apart. */
function neverApart({ sections, table, plan }: PlanGround): AccessFault[] {
  if (table.length < 2 || (table[0].length === 0 && plan.holders.length === 0)) return [];
  const rows = new Map<string, number[]>();
  for (const [s, row] of table.entries()) {
    const key = row.join();
    rows.set(key, [...(rows.get(key) ?? []), s]);
  }
  return [...rows.values()]
    .filter((alike) => alike.length > 1)
    .map((alike) => ({
      kind: 'note',
      what: `Every blank enters ${list(alike.map((s) => sections[s].name))} alike, so one section would do for them.`,
      cure: 'Ask for base blanks, tick somebody for one of them only, or let them share a section.',
      areas: alike.flatMap((s) => sections[s].areas),
      holders: [],
    }));
}
