import type { Family, FileUnits } from '../../family/family.ts';
import type { Profile } from '../../profile/profile.ts';
import { type FileFault, type FilePath, sayPath, sayText, sayValue, valueAt } from './file-fault.ts';
import { MAX_TOLERANCE, sayLimit, sayMaxTolerance, toNanometres, withinLimit } from './file-units.ts';
import { MIGRATIONS, type Migration, migrate, type RawFile } from './migrate.ts';
import { parseText } from './parse-text.ts';
import { type MilledRead, readMilled } from './read-milled.ts';
import { type OutlineRead, readOutline } from './read-outline.ts';
import { planFaults, planOnce } from './read-plan.ts';
import { MAX_PROFILES } from './record-schema.ts';
import {
  DEFAULT_TILT_DEG,
  type FamilyFile,
  FORMAT,
  frameFaults,
  MAX_OUTLINE_POINTS,
  type ProfileFile,
  profileFaults,
  RECORD_NAMES,
  type RecordName,
  recordFaults,
} from './schema.ts';

import { sayShapeFault } from './shape-fault.ts';

/** A family file that was read: as written, and as the core understands it. */
export interface FamilyDocument {
  /** The JSON value in the file's units, unknown fields kept. */
  readonly file: FamilyFile;
  readonly family: Family;
}

/** A document, or what is wrong with the text (at most {@link MAX_FAULTS} faults, then a word that there are more). */
export type FamilyRead =
  | { readonly ok: true; readonly document: FamilyDocument }
  | { readonly ok: false; readonly faults: FileFault[] };

/** Most faults that are told one by one. */
export const MAX_FAULTS = 50;

/** A profile that was read, or its faults. */
type ProfileRead =
  | { readonly ok: true; readonly profile: Profile }
  | { readonly ok: false; readonly faults: FileFault[] };

/** An outline that was read, with the milled description where there is one, or the faults of either. */
type Drawing = (MilledRead & { readonly drawn?: undefined }) | (OutlineRead & { readonly milled?: undefined });

/**
 * Reads the text of a family file. Never throws: everything wrong with the text is a fault.
 *
 * Looks in this order, each only when the one before is sound: text, JSON, format and version, number of things,
 * shape, and then geometry and ids. Geometry of a profile is looked at even where another profile has no shape, so
 * that one reading tells as much as it can.
 *
 * @param text the whole text.
 * @param migrations steps from older versions; the built-in ones unless told otherwise.
 * @check tests/unit/interchange/read.test.ts, tests/unit/interchange/bad-files.test.ts
 */
export function readFamily(text: string, migrations: readonly Migration[] = MIGRATIONS): FamilyRead {
  const parsed = parseText(text);
  if (!parsed.ok) return refuse(parsed.faults);
  const { value } = parsed;
  if (!isObject(value)) return refuse([rootFault(value)]);
  if (value.format !== FORMAT) return refuse([formatFault(value.format)]);
  const migrated = migrate(value, migrations);
  if (!migrated.ok) return refuse([migrated.fault]);
  return readPresentVersion(migrated.file);
}

/**
 * Reads the value of a file that is known to be of the present format and version; stops soon after {@link MAX_FAULTS}.
 * A profile that was read before, the same value in the same units, is not read again: values of files never change,
 * so an edit costs what it touches.
 */
export function readPresentVersion(raw: RawFile): FamilyRead {
  const tooMuch = amountFaults(raw);
  if (tooMuch.length > 0) return refuse(tooMuch);
  const faults = frameFaults(raw).map((fault) => sayShapeFault(raw, [], fault));
  faults.push(...RECORD_NAMES.flatMap((name) => recordFaultsOnce(name, raw[name])));
  // Lengths mean nothing while the units are in doubt: then the profiles are looked at for their shape only.
  const units = faults.length === 0 ? (raw.units as FileUnits) : undefined;
  const profiles: Profile[] = [];
  for (const [i, profile] of (Array.isArray(raw.profiles) ? raw.profiles : []).entries()) {
    if (faults.length > MAX_FAULTS) break;
    const read = readOnce(profile, units, ['profiles', i]);
    if (read.ok) profiles.push(read.profile);
    else faults.push(...read.faults);
  }
  faults.push(...repeatedIdFaults(raw));
  if (!units) return refuse(faults);
  // Without a fault, frame and every profile have the shape of the format.
  const file = raw as FamilyFile;
  faults.push(...clearanceFaults(file), ...toleranceFaults(file.tolerance, units, ['tolerance']));
  if (file.plan) faults.push(...planFaults(file.plan, units));
  if (faults.length > 0) return refuse(faults);
  return { ok: true, document: { file, family: toFamily(file, profiles) } };
}

/** Records that were sound before: an edit of an outline does not look at them again. */
const soundRecords = new WeakSet<object>();

/** What is wrong with a record of the file; from memory where the very same value was sound before. */
function recordFaultsOnce(name: RecordName, value: unknown): FileFault[] {
  if (value === undefined || (isObject(value) && soundRecords.has(value))) return [];
  const faults = recordFaults(name, value);
  if (faults.length === 0 && typeof value === 'object' && value !== null) soundRecords.add(value);
  return faults.slice(0, MAX_FAULTS + 1).map((fault) => sayShapeFault(value, [name], fault));
}

/** A sound file in the core's terms. */
function toFamily({ name, units, ...file }: FamilyFile, profiles: Profile[]): Family {
  const runningClearance = toNanometres(file.runningClearance, units);
  const tolerance = toNanometres(file.tolerance ?? 0, units);
  const tiltLimit = ((file.tiltLimitDeg ?? DEFAULT_TILT_DEG) * Math.PI) / 180;
  const leastWeb = file.leastWeb === undefined ? {} : { leastWeb: toNanometres(file.leastWeb, units) };
  const { names, claims, lesson, plan } = file;
  const words = { ...(names && { names }), ...(claims && { claims }), ...(lesson && { lesson }) };
  const records = { ...words, ...(plan && { plan: planOnce(plan, units) }) };
  return { name, units, runningClearance, tolerance, tiltLimit, ...leastWeb, profiles, ...records };
}

/** Sound profiles by their value in the file, with the units they were read in. */
const soundProfiles = new WeakMap<object, { readonly units: FileUnits; readonly profile: Profile }>();

/** {@link readProfile}, from memory where the very same value was sound before. */
function readOnce(raw: unknown, units: FileUnits | undefined, place: FilePath): ProfileRead {
  const known = isObject(raw) ? soundProfiles.get(raw) : undefined;
  if (known && known.units === units) return { ok: true, profile: known.profile };
  const read = readProfile(raw, units, place);
  if (read.ok && units && isObject(raw)) soundProfiles.set(raw, { units, profile: read.profile });
  return read;
}

/** One profile in the core's terms; without units only its shape is looked at, and it counts as not read. */
function readProfile(raw: unknown, units: FileUnits | undefined, place: FilePath): ProfileRead {
  const shape = profileFaults(raw).map((fault) => sayShapeFault(raw, place, fault));
  if (shape.length > 0) return { ok: false, faults: shape };
  const file = raw as ProfileFile;
  if ((file.outline === undefined) === (file.milled === undefined))
    return { ok: false, faults: [drawnOnceFault(file, place)] };
  if (!units) return { ok: false, faults: [] };
  const read = readDrawing(file, units, place);
  const faults = toleranceFaults(file.tolerance, units, [...place, 'tolerance']).concat(read.ok ? [] : read.faults);
  if (!read.ok || faults.length > 0)
    return { ok: false, faults: faults.map((fault) => ({ ...fault, what: `${file.id}: ${fault.what}` })) };
  const { id, kind, name, section, chambers, inBetween } = file;
  const tolerance = file.tolerance === undefined ? undefined : toNanometres(file.tolerance, units);
  const { ring, drawn, milled } = read;
  return { ok: true, profile: { id, kind, name, section, chambers, inBetween, tolerance, ring, drawn, milled } };
}

/** The outline of a profile that has exactly one of the two ways to draw it. */
function readDrawing(file: ProfileFile, units: FileUnits, place: FilePath): Drawing {
  if (file.milled) return readMilled(file.milled, units, [...place, 'milled'], file.kind);
  return readOutline(file.outline ?? [], units, [...place, 'outline']);
}

/** Lists so long that looking at every entry would take long. */
function amountFaults(file: RawFile): FileFault[] {
  const { profiles } = file;
  if (!Array.isArray(profiles)) return [];
  if (profiles.length > MAX_PROFILES)
    return [tooMany(['profiles'], profiles.length, MAX_PROFILES, 'profiles', 'Split the family.')];
  return profiles.flatMap((profile: unknown, i) => {
    const outline = valueAt(profile, ['outline']);
    const points = Array.isArray(outline) ? outline.length : 0;
    const cure = 'Draw the outline with fewer points.';
    return points > MAX_OUTLINE_POINTS + 1
      ? [tooMany(['profiles', i, 'outline'], points, MAX_OUTLINE_POINTS, 'points', cure)]
      : [];
  });
}

function tooMany(path: FilePath, count: number, most: number, things: string, cure: string): FileFault {
  return { path: sayPath(path), what: `has ${count} ${things}, more than ${most}`, cure };
}

function rootFault(value: unknown): FileFault {
  return { path: 'file', what: `holds ${sayValue(value)}, must hold one object { … }`, cure: 'Choose a family file.' };
}

function formatFault(format: unknown): FileFault {
  return {
    path: 'format',
    what: `is ${sayValue(format)}, must be "${FORMAT}"`,
    cure: `Choose a family file; a family file starts with "format": "${FORMAT}".`,
  };
}

function drawnOnceFault(file: ProfileFile, place: FilePath): FileFault {
  const both = file.outline !== undefined;
  return {
    path: sayPath(place),
    what: `${file.id}: has ${both ? 'both' : 'neither'} "outline" ${both ? 'and' : 'nor'} "milled"`,
    cure: both ? 'Remove one of the two.' : 'Draw the section by one of the two.',
  };
}

function clearanceFaults({ runningClearance, units }: FamilyFile): FileFault[] {
  if (withinLimit(toNanometres(runningClearance, units))) return [];
  const what = `is ${runningClearance} ${units}, more than ${sayLimit(units)}`;
  return [{ path: 'runningClearance', what, cure: 'Give a gap such as 0.04 mm.' }];
}

/** A tolerance of a family or profile that is too large. */
function toleranceFaults(tolerance: number | undefined, units: FileUnits, path: FilePath): FileFault[] {
  if (toNanometres(tolerance ?? 0, units) <= MAX_TOLERANCE) return [];
  const what = `is ${tolerance} ${units}, more than ${sayMaxTolerance(units)}`;
  return [{ path: sayPath(path), what, cure: 'Give how far an outline may deviate to either side, such as 0.02 mm.' }];
}

/** Profiles whose id an earlier profile has already. */
function repeatedIdFaults({ profiles }: RawFile): FileFault[] {
  const seen = new Map<string, number>();
  return (Array.isArray(profiles) ? profiles : []).flatMap((profile: unknown, i) => {
    const id = valueAt(profile, ['id']);
    if (typeof id !== 'string') return [];
    const first = seen.get(id);
    if (first === undefined) {
      seen.set(id, i);
      return [];
    }
    const what = `the id ${sayText(id)} is taken by profiles[${first}]`;
    return [{ path: sayPath(['profiles', i, 'id']), what, cure: 'Give every profile an id of its own.' }];
  });
}

function refuse(faults: FileFault[]): FamilyRead {
  if (faults.length <= MAX_FAULTS) return { ok: false, faults };
  const rest = { path: 'file', what: 'has more faults than are told here', cure: 'Correct those above first.' };
  return { ok: false, faults: [...faults.slice(0, MAX_FAULTS), rest] };
}

function isObject(value: unknown): value is RawFile {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
