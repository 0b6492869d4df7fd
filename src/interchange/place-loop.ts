import { boxOf, type Point } from '../geom/point.ts';
import { edgePoints, turnedRound, type Vertex } from '../geom/vertex.ts';
import type { DrawnLoop } from './take-outline.ts';

/** How a loop of a drawing becomes an outline. */
export interface Placing {
  /** From which end of the key the drawing shows its sections; from the tip, left and right change places. */
  readonly seenFrom: 'bow' | 'tip';
  /** Quarter turns to the left, 0 to 3, after that. */
  readonly quarters: number;
  /** Where the outline stands: its box on 0, 0, or where the drawing has it. */
  readonly place: 'origin' | 'drawing';
  /** Whether the lighter outline is taken where there is one. */
  readonly lighter: boolean;
}

/**
 * The outline that is taken of a loop: whole nanometres, counter-clockwise. Mirroring and quarter turns are exact.
 *
 * @check tests/unit/interchange/take-outline.test.ts
 */
export function placeLoop(loop: DrawnLoop, { seenFrom, quarters, place, lighter }: Placing): Vertex[] {
  const from = place === 'drawing' ? loop.corner : { x: 0, y: 0 };
  const taken = (lighter && loop.lighter) || loop.vertices;
  const stood = taken.map((v) => ({ ...v, x: v.x + from.x, y: v.y + from.y }));
  const seen = seenFrom === 'tip' ? mirrored(stood) : stood;
  const turned = seen.map((v) => ({ ...v, ...turnedBy(v, quarters) }));
  return place === 'drawing' ? turned : onOrigin(turned);
}

/** Left and right changed; run the other way round, so that it stays counter-clockwise. */
function mirrored(vertices: readonly Vertex[]): Vertex[] {
  const over = vertices.map(({ x, y, bulge }) => (bulge ? { x: -x + 0, y, bulge: -bulge } : { x: -x + 0, y }));
  return turnedRound(over);
}

function turnedBy({ x, y }: Point, quarters: number): Point {
  const turns: Point[] = [
    { x, y },
    { x: -y + 0, y: x },
    { x: -x + 0, y: -y + 0 },
    { x: y, y: -x + 0 },
  ];
  return turns[((quarters % 4) + 4) % 4];
}

function onOrigin(vertices: readonly Vertex[]): Vertex[] {
  const outline = vertices.flatMap((vertex, i) => edgePoints(vertex, vertices[(i + 1) % vertices.length]));
  const { minX, minY } = boxOf(outline);
  return vertices.map((v) => ({ ...v, x: v.x - minX, y: v.y - minY }));
}
