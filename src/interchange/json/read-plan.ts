import type { FileUnits } from '../../family/family.ts';
import type { BladeLimits, Plan } from '../../family/plan.ts';
import { type FileFault, sayPath, sayText } from './file-fault.ts';
import { sayLimit, toNanometres, withinLimit } from './file-units.ts';
import type { PlanFile } from './schema.ts';

/** Plans in the core's terms by their value in the file, so that an edit elsewhere keeps them as they are. */
const known = new WeakMap<object, { readonly units: FileUnits; readonly plan: Plan }>();

/** A sound plan of a file in the core's terms; the very same for the very same value. */
export function planOnce(file: PlanFile, units: FileUnits): Plan {
  const before = known.get(file);
  if (before?.units === units) return before.plan;
  const plan = toPlan(file, units);
  known.set(file, { units, plan });
  return plan;
}

function toPlan(file: PlanFile, units: FileUnits): Plan {
  const { areas, holders, baseBlanks = true, allSection = true, reserve = 0, stops = 1, depths = 1, blade } = file;
  return { areas, holders, baseBlanks, allSection, reserve, stops, depths, blade: toBlade(blade, units) };
}

function toBlade(blade: PlanFile['blade'], units: FileUnits): BladeLimits {
  const nm = (length: number | undefined) => toNanometres(length ?? 0, units);
  return {
    thickness: nm(blade.thickness),
    height: nm(blade.height),
    backRadius: nm(blade.backRadius),
    cutZone: nm(blade.cutZone),
    backZone: nm(blade.backZone),
    grooveWidth: nm(blade.grooveWidth),
    heightStep: nm(blade.heightStep),
    grooveDepth: nm(blade.grooveDepth),
    depthStep: nm(blade.depthStep),
    flank: ((blade.flankDeg ?? 0) * Math.PI) / 180,
    rootRadius: nm(blade.rootRadius),
    sides: blade.sides ?? 'both',
  };
}

/**
 * What is wrong with a plan that has the shape of the format: ids given twice, areas that are not there, a group that
 * lies in itself, lengths beyond what the core can hold. Blades that cannot be made are told by the plan, not here.
 *
 * @check tests/unit/interchange/read-plan.test.ts
 */
export function planFaults(plan: PlanFile, units: FileUnits): FileFault[] {
  return [...repeatedIds(plan, 'areas'), ...repeatedIds(plan, 'holders'), ...lostAreas(plan), ...lengths(plan, units)];
}

function repeatedIds(plan: PlanFile, list: 'areas' | 'holders'): FileFault[] {
  const seen = new Map<string, number>();
  return plan[list].flatMap(({ id }, i) => {
    const first = seen.get(id);
    if (first === undefined) {
      seen.set(id, i);
      return [];
    }
    const what = `the id ${sayText(id)} is taken by ${sayPath(['plan', list, first])}`;
    return [{ path: sayPath(['plan', list, i, 'id']), what, cure: `Give each of the ${list} an id of its own.` }];
  });
}

function lostAreas({ areas, holders }: PlanFile): FileFault[] {
  const parents = new Map(areas.map(({ id, parent }) => [id, parent]));
  const faults: FileFault[] = [];
  const need = (id: string | undefined, path: readonly (string | number)[]) => {
    if (id === undefined || parents.has(id)) return;
    const cure = 'Name the id of an area of the plan, or take the entry out.';
    faults.push({ path: sayPath(path), what: `there is no area ${sayText(id)}`, cure });
  };
  for (const [i, { id, parent }] of areas.entries()) {
    need(parent, ['plan', 'areas', i, 'parent']);
    if (liesInItself(id, parents))
      faults.push({
        path: sayPath(['plan', 'areas', i, 'parent']),
        what: `${sayText(id)} lies in itself`,
        cure: 'Let it lie in another area, or leave the field out.',
      });
  }
  for (const [i, { enters, free = [] }] of holders.entries()) {
    for (const [k, id] of enters.entries()) need(id, ['plan', 'holders', i, 'enters', k]);
    for (const [k, id] of free.entries()) need(id, ['plan', 'holders', i, 'free', k]);
  }
  return faults;
}

/** Whether the way up from an area comes back to it. */
function liesInItself(id: string, parents: ReadonlyMap<string, string | undefined>): boolean {
  const seen = new Set<string>();
  for (let at = parents.get(id); at !== undefined && !seen.has(at); at = parents.get(at)) {
    if (at === id) return true;
    seen.add(at);
  }
  return false;
}

function lengths({ blade }: PlanFile, units: FileUnits): FileFault[] {
  return Object.entries(blade).flatMap(([field, value]) => {
    if (typeof value !== 'number' || field === 'flankDeg' || withinLimit(toNanometres(value, units))) return [];
    const what = `is ${value} ${units}, more than ${sayLimit(units)}`;
    return [{ path: sayPath(['plan', 'blade', field]), what, cure: 'Give the size of a blade, such as 2 mm.' }];
  });
}
