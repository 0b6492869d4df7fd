import type { FileUnits } from '../../family/family.ts';
import { NM_PER_UNIT } from '../../family/file-length.ts';
import { MAX_COORDINATE } from '../../geom/point.ts';

/**
 * A length of a file in whole nanometres: the nearest to what was written, so that 2.1 mm is 2,100,000 nm although
 * 2.1 has no exact binary form.
 */
export function toNanometres(length: number, units: FileUnits): number {
  return Math.round(length * NM_PER_UNIT[units]) + 0;
}

/** A length in nanometres the way the file would write it, with its unit. */
export function sayLength(nm: number, units: FileUnits): string {
  return `${Number((nm / NM_PER_UNIT[units]).toFixed(units === 'mm' ? 4 : 6))} ${units}`;
}

/** The farthest a coordinate may lie from the origin, in words. */
export function sayLimit(units: FileUnits): string {
  return units === 'mm' ? '47.45 mm' : '1.868 in';
}

/**
 * Greatest tolerance, in nanometres: the coarsest class of general tolerances for sizes of a blade (very coarse, 1 mm).
 * A blade is hardly thicker than twice that.
 */
export const MAX_TOLERANCE = 1_000_000;

/** The greatest tolerance, in words. */
export function sayMaxTolerance(units: FileUnits): string {
  return units === 'mm' ? '1 mm' : '0.03937 in';
}

/** Whether a length in nanometres is small enough for the core. */
export function withinLimit(nm: number): boolean {
  return Math.abs(nm) <= MAX_COORDINATE;
}
