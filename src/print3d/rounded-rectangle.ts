import type { Loop } from './solids.ts';

/** Chords of a quarter turn. */
const CHORDS = 8;

/**
 * A rectangle with its corners rounded, counter-clockwise; millimetres.
 *
 * @param radius of the corners; less where the rectangle is too small for it.
 * @check tests/unit/print3d/plan-block.test.ts
 */
export function roundedRectangle(x: number, y: number, width: number, depth: number, radius: number): Loop {
  const round = Math.min(radius, width / 2.01, depth / 2.01);
  if (round <= 0)
    return [
      [x, y],
      [x + width, y],
      [x + width, y + depth],
      [x, y + depth],
    ];
  const centres = [
    [x + width - round, y + depth - round],
    [x + round, y + depth - round],
    [x + round, y + round],
    [x + width - round, y + round],
  ] as const;
  return centres.flatMap(([cx, cy], quarter) =>
    Array.from({ length: CHORDS + 1 }, (_, i): readonly [number, number] => {
      const angle = ((quarter + i / CHORDS) * Math.PI) / 2;
      return [cx + round * Math.cos(angle), cy + round * Math.sin(angle)];
    }),
  );
}
