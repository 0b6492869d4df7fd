import type { FitCache } from '../../family/fit-cache.ts';
import type { Ring } from '../../geom/ring.ts';
import { type PackedOutline, packOutline } from '../../jobs/packed-outline.ts';

const packed = new WeakMap<Ring, PackedOutline>();

/** An outline packed for other threads under its content's name; packed once. A window has one cache to name it. */
export function packedOf(cache: FitCache, ring: Ring): PackedOutline {
  const known = packed.get(ring);
  const key = cache.nameOf(ring);
  if (known?.key === key) return known;
  const made = packOutline(key, ring);
  packed.set(ring, made);
  return made;
}
