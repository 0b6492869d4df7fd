import { asTrustedRing, type Ring } from '../geom/ring.ts';

/** An outline in a form that is cheap to copy to another thread, with a name for its content. */
export interface PackedOutline {
  /** Equal keys mean equal outlines. */
  readonly key: string;
  /** x0, y0, x1, y1, ..., nanometres. */
  readonly xy: Float64Array;
}

/** Packs a sound outline. */
export function packOutline(key: string, ring: Ring): PackedOutline {
  const xy = new Float64Array(ring.length * 2);
  ring.forEach((p, i) => {
    xy[2 * i] = p.x;
    xy[2 * i + 1] = p.y;
  });
  return { key, xy };
}

/** The outline that was packed. */
export function unpackOutline({ xy }: PackedOutline): Ring {
  return asTrustedRing(Array.from({ length: xy.length / 2 }, (_, i) => ({ x: xy[2 * i], y: xy[2 * i + 1] })));
}
