import { entrantsOf, type Family, openingsOf } from '../../../family/family.ts';
import type { Units } from '../../../family/length-text.ts';
import { outlineBox } from '../../../profile/outline-box.ts';
import type { Profile, ProfileKind } from '../../../profile/profile.ts';
import { FIRST_BLADE } from './section-editing.ts';

/** Thickness and height of a blade or slot, nanometres. */
export interface BladeSize {
  readonly width: number;
  readonly height: number;
}

/** Steps to which a size is rounded, so that it is short to read: a micrometre, a tenth of a thou. */
const ROUND = { mm: 1_000, in: 2_540 } as const;

/**
 * The size that a new plain section begins with: the one that most of its kind in the family have; where there is none of
 * it, what goes with the others by the running clearance; in an empty family a common small blade.
 *
 * @returns nanometres, rounded to a micrometre or a tenth of a thousandth of an inch.
 * @check tests/unit/app/usual-size.test.ts
 */
export function usualSize(family: Family, kind: ProfileKind, units: Units): BladeSize {
  const gap = 2 * family.runningClearance;
  const openings = openingsOf(family);
  const entrants = entrantsOf(family);
  const ofKind = kind === 'opening' ? openings : entrants.filter((one) => one.kind === kind);
  const alike = ofKind.length > 0 || kind === 'opening' ? ofKind : entrants;
  const own = mostCommon(alike, units);
  if (own) return own;
  const other = mostCommon(kind === 'opening' ? entrants : openings, units);
  const more = kind === 'opening' ? gap : -gap;
  if (other && other.width + more > 0 && other.height + more > 0) return grown(other, more, units);
  return grown(FIRST_BLADE, kind === 'opening' ? gap : 0, units);
}

/** Of sizes that are as common the one that comes first. */
function mostCommon(profiles: readonly Profile[], units: Units): BladeSize | null {
  const counts = new Map<string, { size: BladeSize; count: number }>();
  for (const { ring } of profiles) {
    const { minX, maxX, minY, maxY } = outlineBox(ring);
    const size = grown({ width: maxX - minX, height: maxY - minY }, 0, units);
    const key = `${size.width} ${size.height}`;
    counts.set(key, { size, count: (counts.get(key)?.count ?? 0) + 1 });
  }
  return [...counts.values()].sort((a, b) => b.count - a.count)[0]?.size ?? null;
}

function grown({ width, height }: BladeSize, more: number, units: Units): BladeSize {
  const round = (nm: number) => Math.round((nm + more) / ROUND[units]) * ROUND[units];
  return { width: round(width), height: round(height) };
}
