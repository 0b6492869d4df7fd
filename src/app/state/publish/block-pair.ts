import type { Family } from '../../../family/family.ts';
import type { Fit } from '../../../fit/fit.ts';
import type { CouponFrame, DisplaySet, OpeningFrame } from '../../../print3d/display-set.ts';
import type { Profile } from '../../../profile/profile.ts';

/** A coupon before an opening of the block; what the set does not have is null. */
export interface BlockPair {
  readonly entrant: Profile;
  readonly opening: Profile;
  readonly coupon: CouponFrame | null;
  readonly frame: OpeningFrame | null;
}

/**
 * The picked pair as it is in a set. A blank that has no coupon is stood for by that of another with the same outline.
 *
 * @returns null where the family lacks one of the two.
 * @check tests/unit/app/block-pictures.test.ts
 */
export function blockPair(
  family: Family,
  set: DisplaySet,
  { entrantId, openingId }: { readonly entrantId: string | null; readonly openingId: string | null },
): BlockPair | null {
  const profile = (id: string | null) => family.profiles.find((one) => one.id === id);
  const [entrant, opening] = [profile(entrantId), profile(openingId)];
  if (!entrant || !opening) return null;
  const couponOf = (id: string) => set.couponFrames.find((one) => one.profile === id);
  const twin = () =>
    family.profiles.find(({ id, ring }) => couponOf(id) !== undefined && isSameOutline(ring, entrant.ring));
  const coupon = couponOf(entrant.id) ?? couponOf(twin()?.id ?? '');
  const frame = set.openingFrames.find((one) => one.opening === opening.id);
  return { entrant, opening, coupon: coupon ?? null, frame: frame ?? null };
}

function isSameOutline(a: Profile['ring'], b: Profile['ring']): boolean {
  return a.length === b.length && a.every(({ x, y }, i) => x === b[i].x && y === b[i].y);
}

/** How far before the block a coupon waits, as a part of its blade: so far that the opening behind it is seen. */
const BEFORE = 1;

/** How far the tip of a coupon may be past the front of the block, millimetres as printed; less than 0 is before it. */
export interface InsertionRange {
  readonly waits: number;
  /** Where it must stop. */
  readonly stops: number;
  /** Up to its shoulder. */
  readonly whole: number;
}

/** Where a coupon waits and where it must stop: at its shoulder where the blank goes in, else at the face of the block. */
export function insertionRange({ bladeLength }: CouponFrame, verdict: Fit['verdict']): InsertionRange {
  return { waits: -BEFORE * bladeLength, stops: verdict === 'blocked' ? 0 : bladeLength, whole: bladeLength };
}

/** A wished insertion as far as it goes; null is the wait before the block. */
export function insertedBy(range: InsertionRange, wished: number | null): number {
  return wished === null ? range.waits : Math.min(range.stops, Math.max(range.waits, wished));
}

/** What the fitting gap does to a pair: its least gap as printed, or by how much it is still too large; millimetres. */
export interface PrintedFit {
  /** Least gap of the real pair times the scale; less than 0 where blocked. */
  readonly scaled: number;
  readonly gap: number;
  /** Both together: what the printed pair has. */
  readonly printed: number;
}

/** See {@link PrintedFit}. `clearance` in nanometres, `gap` in millimetres as printed. */
export function printedFit(clearance: number, scale: number, gap: number): PrintedFit {
  const scaled = (clearance / 1e6) * scale;
  return { scaled, gap, printed: scaled + gap };
}
