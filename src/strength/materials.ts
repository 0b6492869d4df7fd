import shared from '../../shared/materials.json';

/** From and to, with one unit. */
export type Range = readonly [low: number, high: number];

/** How the yield strength of a row was measured; lists of different kinds must not be mixed. */
export type YieldDefinition = '0.2 % offset' | '0.5 % extension' | 'not stated';

/** What a figure of a list promises. */
export type FigureKind = 'nominal' | 'range' | 'minimum' | 'at most' | 'about';

const DEFINITIONS: readonly string[] = ['0.2 % offset', '0.5 % extension', 'not stated'];
const KINDS: readonly string[] = ['nominal', 'range', 'minimum', 'at most', 'about'];
const FAMILIES = ['nickel silver', 'brass', 'steel', 'stainless steel'] as const;

/** Kinds of metal, in the order of the table. */
export type MetalFamily = (typeof FAMILIES)[number];

/** One alloy in one temper by one list. */
export interface Material {
  readonly id: string;
  /** Its open designation: "C77000". */
  readonly alloy: string;
  readonly name: string;
  readonly family: MetalFamily;
  readonly temper: string;
  readonly form: string;
  /** Tensile strength, MPa. */
  readonly tensile: Range;
  readonly tensileAs: FigureKind;
  /** Yield strength in tension, MPa; from 0 where the list states no least one. */
  readonly yield: Range;
  readonly yieldBy: YieldDefinition;
  readonly yieldAs: FigureKind;
  /** Young's modulus, GPa. */
  readonly E: Range;
  /** Shear modulus, GPa. */
  readonly G: Range;
  readonly hardness?: string;
  readonly source: string;
  /** Fields whose source text was not seen. */
  readonly fromMemory: readonly string[];
  readonly note?: string;
}

/** A torque that a key is asked to bear, and how sure that is. */
export interface UseTorque {
  readonly nm: number;
  readonly standard: string;
  readonly title: string;
  readonly meaning: string;
  readonly sure: string;
}

/** A table of materials, or what is wrong with its rows. */
export type MaterialTable =
  | { readonly ok: true; readonly materials: readonly Material[]; readonly useTorque: UseTorque }
  | { readonly ok: false; readonly faults: readonly string[] };

/** Poisson's ratios of brass and nickel silver, and of steel: G = E / 2(1 + nu). */
const POISSON: Readonly<Record<MetalFamily, Range>> = {
  'nickel silver': [0.31, 0.34],
  brass: [0.31, 0.34],
  steel: [0.27, 0.3],
  'stainless steel': [0.27, 0.3],
};

/** By how much G of a list may miss that, since both are rounded to two digits. */
const ROUNDING = 0.02;

/**
 * Reads a table of materials and holds each row against itself: ranges in order, yield no higher than tensile strength,
 * G as E and Poisson's ratio have it, a source and a definition of yield.
 *
 * @returns the rows in their order, or every fault in words that name the row.
 * @check tests/unit/strength/materials.test.ts
 */
export function readMaterials(json: unknown): MaterialTable {
  const { materials, useTorque } = isRecord(json) ? json : {};
  if (!Array.isArray(materials) || materials.length === 0)
    return { ok: false, faults: ['The table holds no materials'] };
  const rows: readonly unknown[] = materials;
  const faults = rows.flatMap((row, i) =>
    rowFaults(row).map((fault) => `materials[${i}] (${isRecord(row) ? String(row.id) : 'no row'}): ${fault}`),
  );
  const ids = rows.map((row) => (isRecord(row) ? row.id : undefined));
  for (const [i, id] of ids.entries()) if (ids.indexOf(id) < i) faults.push(`materials[${i}]: a second row "${id}"`);
  if (!isRecord(useTorque) || typeof useTorque.nm !== 'number' || !(useTorque.nm > 0))
    faults.push('useTorque.nm: must be a torque above 0');
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, materials: rows as readonly Material[], useTorque: useTorque as unknown as UseTorque };
}

function rowFaults(row: unknown): string[] {
  if (!isRecord(row)) return ['is no row'];
  const faults: string[] = [];
  for (const field of ['id', 'alloy', 'name', 'temper', 'form', 'source'])
    if (typeof row[field] !== 'string' || row[field] === '') faults.push(`${field} is missing`);
  if (!FAMILIES.some((family) => family === row.family)) faults.push(`family must be one of ${FAMILIES.join(', ')}`);
  if (!DEFINITIONS.includes(String(row.yieldBy))) faults.push(`yieldBy must be one of ${DEFINITIONS.join(', ')}`);
  for (const field of ['tensileAs', 'yieldAs'])
    if (!KINDS.includes(String(row[field]))) faults.push(`${field} must be one of ${KINDS.join(', ')}`);
  if (!Array.isArray(row.fromMemory)) faults.push('fromMemory must be a list of fields');
  const bad = ['tensile', 'yield', 'E', 'G'].filter((field) => !isRange(row[field]));
  faults.push(...bad.map((field) => `${field} must be a range [low, high]`));
  if (bad.length === 0 && faults.length === 0) faults.push(...clashes(row as unknown as Material));
  return faults;
}

/** Where the figures of a row contradict each other. */
function clashes({ tensile, yield: yields, E, G, family, yieldAs }: Material): string[] {
  const faults: string[] = [];
  if (yields[1] > tensile[1]) faults.push('yields above its tensile strength');
  if (yields[0] === 0 && yieldAs !== 'at most') faults.push('has no least yield, so yieldAs must be "at most"');
  const [low, high] = POISSON[family];
  const least = (E[0] / (2 * (1 + high))) * (1 - ROUNDING);
  const most = (E[1] / (2 * (1 + low))) * (1 + ROUNDING);
  if (G[1] < least || G[0] > most) faults.push(`G must be ${least.toFixed(1)} to ${most.toFixed(1)} GPa for its E`);
  return faults;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

function isRange(value: unknown): value is Range {
  if (!Array.isArray(value) || value.length !== 2) return false;
  const [low, high]: unknown[] = value;
  return typeof low === 'number' && typeof high === 'number' && low >= 0 && low <= high && high > 0;
}

function sharedTable(): Extract<MaterialTable, { ok: true }> {
  const read = readMaterials(shared);
  if (!read.ok) throw new Error(`shared/materials.json: ${read.faults.join('; ')}`);
  return read;
}

/** Every material of shared/materials.json, and the torque that keys are compared with. */
export const { materials: MATERIALS, useTorque: USE_TORQUE } = sharedTable();

/** The material that is taken until one is chosen: nickel silver 55-18, half hard. */
export const USUAL_MATERIAL: Material = MATERIALS[0];

/** The material with an id, or undefined. */
export function findMaterial(id: string): Material | undefined {
  return MATERIALS.find((material) => material.id === id);
}
