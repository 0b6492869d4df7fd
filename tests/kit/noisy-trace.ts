import type { Point } from '../../src/geom/point.ts';
import { makeRing, type Ring } from '../../src/geom/ring.ts';
import { simplifyOutline } from '../../src/geom/simplify.ts';
import { randomNumbers } from '../cases/random-numbers.ts';

/** How a trace is spoilt. */
export interface Spoiling {
  readonly seed: number;
  /** Each vertex is moved evenly by up to this much in both directions, nanometres. */
  readonly error: number;
  /** The vertices are about so far apart, nanometres. */
  readonly step: number;
}

/** A trace, and what was done to it. */
export interface NoisyTrace {
  readonly ring: Ring;
  readonly mirrored: boolean;
  /** Radians. */
  readonly turned: number;
}

/**
 * An outline as a careless trace of it would be: densified, every vertex off by chance, turned by any angle, moved by up
 * to 10 mm, mirrored where the seed is odd. Where the noise makes it cross itself it is drawn anew.
 */
export function noisyTrace(outline: readonly Point[], { seed, error, step }: Spoiling): NoisyTrace {
  const random = randomNumbers(seed);
  const mirrored = seed % 2 === 1;
  const turned = random.between(-Math.PI, Math.PI);
  const by = { x: random.between(-1e7, 1e7), y: random.between(-1e7, 1e7) };
  const [cos, sin] = [Math.cos(turned), Math.sin(turned)];
  const dense = densified(outline, step);
  for (let n = 0; n < 400; n++) {
    const made = makeRing(
      dense.map((p) => {
        const x = (mirrored ? -1 : 1) * (p.x + random.between(-error, error));
        const y = p.y + random.between(-error, error);
        return { x: x * cos - y * sin + by.x, y: x * sin + y * cos + by.y };
      }),
    );
    if (made.ok) return { ring: made.ring, mirrored, turned };
  }
  throw new Error('The noise makes every trace cross itself.');
}

/** Arcs with chords within 0.015 mm, and points between far corners. */
function densified(outline: readonly Point[], step: number): Point[] {
  const corners = simplifyOutline(outline, 15_000);
  return corners.flatMap((a, i) => {
    const b = corners[(i + 1) % corners.length];
    const count = Math.max(1, Math.round(Math.hypot(b.x - a.x, b.y - a.y) / step));
    return Array.from({ length: count }, (_, k) => ({
      x: a.x + ((b.x - a.x) * k) / count,
      y: a.y + ((b.y - a.y) * k) / count,
    }));
  });
}
