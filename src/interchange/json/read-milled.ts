import type { FileUnits } from '../../family/family.ts';
import { makeRing, type Ring } from '../../geom/ring.ts';
import { checkMilled, type MillFault } from '../../profile/check-milled.ts';
import { millOutline } from '../../profile/mill-outline.ts';
import type { Milled, ProfileKind } from '../../profile/profile.ts';
import { type FileFault, type FilePath, sayPath } from './file-fault.ts';
import { sayLength, sayLimit, toNanometres, withinLimit } from './file-units.ts';
import type { MilledFile } from './schema.ts';

/** A sound milled blade with its outline, or everything that is wrong with it. */
export type MilledRead =
  | { readonly ok: true; readonly milled: Milled; readonly ring: Ring }
  | { readonly ok: false; readonly faults: FileFault[] };

const RADIANS_PER_DEGREE = Math.PI / 180;

/**
 * Turns the milled description of a profile into the core's values and its outline.
 *
 * @param file sizes in the file's units; shape already checked.
 * @param place where the description stands in the file.
 * @param kind what it describes, in whose words faults are told.
 * @check tests/unit/interchange/read.test.ts
 */
export function readMilled(file: MilledFile, units: FileUnits, place: FilePath, kind: ProfileKind): MilledRead {
  const tooLarge = limitFaults(file, units, place);
  if (tooLarge.length > 0) return { ok: false, faults: tooLarge };
  const milled = toMilled(file, units);
  const faults = checkMilled(milled, (nm) => sayLength(nm, units), kind);
  if (faults.length > 0) return { ok: false, faults: faults.map((fault) => toFileFault(fault, place)) };
  return withRing(milled, place);
}

/** The description in nanometres and radians. */
function toMilled(file: MilledFile, units: FileUnits): Milled {
  const nm = (length: number | undefined) => toNanometres(length ?? 0, units);
  return {
    thickness: nm(file.thickness),
    height: nm(file.height),
    backRadius: nm(file.backRadius),
    grooves: file.grooves.map((g) => ({
      side: g.side,
      bottom: nm(g.bottom),
      width: nm(g.width),
      depth: nm(g.depth),
      flank: (g.flankDeg ?? 0) * RADIANS_PER_DEGREE,
      rootRadius: nm(g.rootRadius),
    })),
  };
}

/** The blade's outline; a description so fine that whole nanometres cannot draw it is a fault. */
function withRing(milled: Milled, place: FilePath): MilledRead {
  const points = millOutline(milled);
  const made = makeRing(Array.isArray(points) ? points : []);
  if (made.ok) return { ok: true, milled, ring: made.ring };
  const what = `does not make a sound outline: ${made.fault.message}`;
  return { ok: false, faults: [{ path: sayPath(place), what, cure: 'Leave more room between the grooves.' }] };
}

/** Sizes too large for the core. */
function limitFaults(file: MilledFile, units: FileUnits, place: FilePath): FileFault[] {
  const sizes: [FilePath, number | undefined][] = [
    [['thickness'], file.thickness],
    [['height'], file.height],
    [['backRadius'], file.backRadius],
    ...file.grooves.flatMap((g, i): [FilePath, number | undefined][] =>
      (['bottom', 'width', 'depth', 'rootRadius'] as const).map((field) => [['grooves', i, field], g[field]]),
    ),
  ];
  return sizes
    .filter(([, size]) => !withinLimit(toNanometres(size ?? 0, units)))
    .map(([path, size]) => ({
      path: sayPath([...place, ...path]),
      what: `is ${size} ${units}, more than ${sayLimit(units)}`,
      cure: 'Check the units.',
    }));
}

/** A fault of the description at its place in the file. */
function toFileFault(fault: MillFault, place: FilePath): FileFault {
  const field = fault.field === 'flank' ? 'flankDeg' : fault.field;
  const path = fault.grooves.length > 0 ? [...place, 'grooves', fault.grooves[0], field] : [...place, field];
  const other = fault.grooves.length > 1 ? ` (the other is ${sayPath([...place, 'grooves', fault.grooves[1]])})` : '';
  return { path: sayPath(path), what: fault.message + other, cure: fault.cure };
}
