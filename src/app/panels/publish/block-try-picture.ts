import type { Collision, Placement } from '../../../fit/fit.ts';
import type { Point } from '../../../geom/point.ts';
import type { CouponFrame, DisplaySet, OpeningFrame, Place } from '../../../print3d/display-set.ts';
import { type Pose, poseCoupon } from '../../../print3d/pose-coupon.ts';
import {
  boxCorners,
  type FlatLoop,
  movedBy,
  type ShownClash,
  type SolidPicture,
} from '../../canvas/solid/solid-picture.ts';

/** What is seen while a coupon is tried in an opening of the block. */
export interface TriedNow {
  readonly coupon: CouponFrame;
  readonly frame: OpeningFrame;
  /** Of the blank in the opening. */
  readonly placement: Placement;
  /** How far the tip is past the front, millimetres. */
  readonly inserted: number;
  /** Where the coupon waits, millimetres: less than 0. */
  readonly waits: number;
  /** Outline of the opening, as in the family: where the coupon is to go. */
  readonly opening: readonly Point[];
  /** What is in the way; empty where nothing is, or the coupon has not come to it. */
  readonly collisions: readonly Collision[];
  /** Whether the block is seen through. */
  readonly through: boolean;
}

/** The block stands up: what lay uppermost on the bed is its front. Its y becomes up, its z comes towards the viewer. */
const STANDING: Pose = [1, 0, 0, 0, 0, 0, 1, 0, 0, -1, 0, 0, 0, 0, 0, 1];

/** The way into the block, in the scene. */
export const INWARD: Place = [0, 1, 0];

/** Id of the coupon in the picture: it is taken hold of by it. */
export const COUPON = 'coupon';

const BLOCK = 'block';

/**
 * The block standing up, with a coupon before one of its openings, on its way or in.
 *
 * @check tests/unit/app/block-pictures.test.ts
 */
export function tryPicture({ parts, scale }: DisplaySet, now: TriedNow): SolidPicture {
  const { coupon, frame, placement, inserted, opening, collisions, through } = now;
  const [block, blade] = [parts[frame.part], parts[coupon.part]];
  const poseAt = (at: number) => product(STANDING, poseCoupon(coupon, frame, placement, scale, at));
  return {
    solids: [
      {
        ...{ id: BLOCK, mesh: block, pose: STANDING, fill: block.colour, letterFill: block.letterColour },
        faint: through,
      },
      { id: COUPON, mesh: blade, pose: poseAt(inserted), fill: blade.colour, letterFill: blade.letterColour },
    ],
    beds: [],
    clashes: collisions.length === 0 ? null : { pose: frontOf(frame), parts: clashesOf(collisions, scale) },
    target: { pose: frontOf(frame), loops: [printed(opening, scale)] },
    // The block and the coupon where it waits and where it ends, so that the picture stands still while it moves.
    room: [
      ...boxCorners(STANDING, block.size),
      ...[now.waits, coupon.bladeLength].flatMap((at) => boxCorners(poseAt(at), blade.size)),
    ],
  };
}

/** The plane of the front at an opening, a hair before it. */
function frontOf({ at }: OpeningFrame): Pose {
  return product(STANDING, movedBy([at[0], at[1], at[2] + 0.05]));
}

function clashesOf(collisions: readonly Collision[], scale: number): ShownClash[] {
  return collisions.flatMap(({ region }) =>
    region.map(({ outer, holes }) => ({
      outer: printed(outer, scale),
      holes: holes.map((hole) => printed(hole, scale)),
    })),
  );
}

/** Nanometres of a section as millimetres of the printed set. */
function printed(loop: readonly Point[], scale: number): FlatLoop {
  return loop.map(({ x, y }) => ({ x: (x / 1e6) * scale, y: (y / 1e6) * scale }));
}

/** One motion after another: first `second`, then `first`. */
function product(first: Pose, second: Pose): Pose {
  return Array.from({ length: 16 }, (_, n) => {
    const [row, column] = [n % 4, Math.floor(n / 4)];
    return [0, 1, 2, 3].reduce((sum, k) => sum + first[4 * k + row] * second[4 * column + k], 0);
  });
}
