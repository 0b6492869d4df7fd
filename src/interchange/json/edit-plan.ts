import type { FileUnits } from '../../family/family.ts';
import { toFileLength } from '../../family/file-length.ts';
import { firstFree } from '../../family/first-free.ts';
import { idName } from '../../family/plain-name.ts';
import type { BladeLimits, Plan } from '../../family/plan.ts';
import { areaTree } from '../../plan/area-tree.ts';
import type { FamilyFile, PlanFile } from './schema.ts';

/** An area or a holder of a file. */
export type AreaFile = PlanFile['areas'][number];
export type HolderFile = PlanFile['holders'][number];

/** A family with one area or holder more, and the id that it was given. */
export interface AddedEntry {
  readonly file: FamilyFile;
  readonly id: string;
}

/**
 * What blades begin with, in round figures of either unit: a common small blade, grooves that a small cutter makes, the
 * upper third kept free for the cuts. Common practice, no source.
 */
const FIRST_BLADE: Readonly<Record<FileUnits, PlanFile['blade']>> = {
  mm: {
    thickness: 2,
    height: 8.4,
    backRadius: 0.4,
    cutZone: 3,
    backZone: 0.5,
    grooveWidth: 0.6,
    heightStep: 0.9,
    grooveDepth: 0.6,
    depthStep: 0.3,
    flankDeg: 10,
    rootRadius: 0.1,
    sides: 'both',
  },
  in: {
    thickness: 0.08,
    height: 0.33,
    backRadius: 0.016,
    cutZone: 0.12,
    backZone: 0.02,
    grooveWidth: 0.024,
    heightStep: 0.035,
    grooveDepth: 0.024,
    depthStep: 0.012,
    flankDeg: 10,
    rootRadius: 0.004,
    sides: 'both',
  },
};

/** A plan with nothing in it but blades that can be made. */
export function emptyPlan(units: FileUnits): PlanFile {
  return { areas: [], holders: [], blade: FIRST_BLADE[units] };
}

/** The plan of a file, or an empty one that is not in the file yet. */
export function planIn({ plan, units }: FamilyFile): PlanFile {
  return plan ?? emptyPlan(units);
}

/** The family with this plan in place of the one it has. */
export function putPlan(file: FamilyFile, plan: PlanFile): FamilyFile {
  return plan === file.plan ? file : { ...file, plan };
}

/** What a plan asks for besides its areas and holders. */
export type PlanOptions = Pick<Plan, 'baseBlanks' | 'allSection' | 'reserve' | 'stops' | 'depths'>;

/** The family with some options of its plan changed. */
export function setPlanOptions(file: FamilyFile, options: Partial<PlanOptions>): FamilyFile {
  return putPlan(file, { ...planIn(file), ...options });
}

/**
 * The family with some limits of its blades changed.
 *
 * @param limits lengths in nanometres, the flank in radians.
 */
export function setBladeLimits(file: FamilyFile, limits: Partial<BladeLimits>): FamilyFile {
  const plan = planIn(file);
  const { flank, sides, ...lengths } = limits;
  const inFile = Object.entries(lengths).map(([field, nm]) => [field, toFileLength(nm, file.units)] as const);
  const blade = {
    ...plan.blade,
    ...Object.fromEntries(inFile),
    ...(flank !== undefined && { flankDeg: Number(((flank * 180) / Math.PI).toFixed(9)) }),
    ...(sides !== undefined && { sides }),
  };
  return putPlan(file, { ...plan, blade });
}

/** An id that none of the entries has, made of a name. */
export function entryId(taken: Iterable<string>, name: string, otherwise: string): string {
  const stem = idName(name).slice(0, 60) || otherwise;
  return firstFree(taken, (n) => `${stem}${n === 1 ? '' : `-${n}`}`);
}

/**
 * The family with one holder more.
 *
 * @param afterId the holder that it comes after; at the end where there is none of that id.
 */
export function addHolder(
  file: FamilyFile,
  { name, enters = [], free = [] }: { name: string; enters?: readonly string[]; free?: readonly string[] },
  afterId?: string,
): AddedEntry {
  const plan = planIn(file);
  const id = entryId(
    plan.holders.map((holder) => holder.id),
    name,
    'holder',
  );
  const holder: HolderFile = { id, name, enters: [...enters], ...(free.length > 0 && { free: [...free] }) };
  const after = plan.holders.findIndex((other) => other.id === afterId);
  const holders = plan.holders.toSpliced(after < 0 ? plan.holders.length : after + 1, 0, holder);
  return { file: putPlan(file, { ...plan, holders }), id };
}

/** The family with another name for a holder. */
export function renameHolder(file: FamilyFile, id: string, name: string): FamilyFile {
  return withHolder(file, id, (holder) => (holder.name === name ? holder : { ...holder, name }));
}

/** The family without some holders. */
export function deleteHolders(file: FamilyFile, ids: Iterable<string>): FamilyFile {
  const plan = planIn(file);
  const gone = new Set(ids);
  return putPlan(file, { ...plan, holders: plan.holders.filter(({ id }) => !gone.has(id)) });
}

/** The family with a holder `steps` places on among the holders, no further than there are any. */
export function moveHolder(file: FamilyFile, id: string, steps: number): FamilyFile {
  const plan = planIn(file);
  const from = plan.holders.findIndex((holder) => holder.id === id);
  const to = Math.max(0, Math.min(plan.holders.length - 1, from + steps));
  if (from < 0 || to === from) return file;
  return putPlan(file, { ...plan, holders: plan.holders.toSpliced(from, 1).toSpliced(to, 0, plan.holders[from]) });
}

/** The family with one holder changed; the same file where nothing changes. */
export function withHolder(file: FamilyFile, id: string, change: (holder: HolderFile) => HolderFile): FamilyFile {
  const plan = planIn(file);
  const at = plan.holders.findIndex((holder) => holder.id === id);
  if (at < 0) return file;
  const holder = change(plan.holders[at]);
  return holder === plan.holders[at] ? file : putPlan(file, { ...plan, holders: plan.holders.with(at, holder) });
}

/** The areas in the order of their tree, as people read them; each keeps its identity. */
export function inTreeOrder(areas: readonly AreaFile[]): AreaFile[] {
  const byId = new Map(areas.map((area) => [area.id, area]));
  return areaTree(areas).rows.flatMap(({ area }) => byId.get(area.id) ?? []);
}
