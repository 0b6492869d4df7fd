import type { Point } from './point.ts';

/** A point or displacement turned to the left about the origin by quarter turns: exact, no coordinate is a negative 0. */
export function quarterTurn({ x, y }: Point, quarters: number): Point {
  const turns: Point[] = [
    { x, y },
    { x: 0 - y, y: x },
    { x: 0 - x, y: 0 - y },
    { x: y, y: 0 - x },
  ];
  return turns[((quarters % 4) + 4) % 4];
}
