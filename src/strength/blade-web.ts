import type { Point } from '../geom/point.ts';
import type { Ring } from '../geom/ring.ts';
import { measureWeb } from '../profile/measure-web.ts';
import type { Milled } from '../profile/profile.ts';
import { thinnestWeb } from '../profile/thinnest-web.ts';

/** Where a blade is thinnest. */
export interface BladeWeb {
  /** Nanometres. */
  readonly thickness: number;
  /** In any direction for a milled blade, level for a drawn one. */
  readonly way: 'any' | 'level';
  /** Both ends of it, where they are known. */
  readonly ends: readonly [Point, Point] | null;
}

/**
 * The thinnest web of a blade: in any direction where it is described by its grooves, along a level line where only its
 * outline is known.
 *
 * @check tests/unit/strength/blade-web.test.ts
 */
export function bladeWeb({ ring, milled }: { readonly ring: Ring; readonly milled?: Milled }): BladeWeb {
  const web = milled && thinnestWeb(milled);
  if (web) return { thickness: web.thickness, way: 'any', ends: [web.left, web.right] };
  return { thickness: measureWeb(ring).thickness, way: 'level', ends: null };
}
