import type { FlatLoop } from './solid-picture.ts';

/** Each edge of a closed outline as a line of its own, in the plane z = 0; six numbers a line. */
export function loopLines(loop: FlatLoop): number[] {
  return loop.flatMap((p, i) => {
    const q = loop[(i + 1) % loop.length];
    return [p.x, p.y, 0, q.x, q.y, 0];
  });
}
