import { boxOf } from '../geom/point.ts';
import { quarterTurn } from '../geom/quarter-turn.ts';
import { edgePoints, type Vertex } from '../geom/vertex.ts';
import { mirrorAbout } from '../profile/mirror-outline.ts';
import { moveOutline } from '../profile/move-outline.ts';
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
  const stood = moveOutline(taken, from);
  const seen = seenFrom === 'tip' ? mirrorAbout(stood, 'left-right', 0) : stood;
  const turned = seen.map((v) => ({ ...v, ...quarterTurn(v, quarters) }));
  return place === 'drawing' ? turned : onOrigin(turned);
}

function onOrigin(vertices: readonly Vertex[]): Vertex[] {
  const outline = vertices.flatMap((vertex, i) => edgePoints(vertex, vertices[(i + 1) % vertices.length]));
  const { minX, minY } = boxOf(outline);
  return moveOutline(vertices, { x: -minX, y: -minY });
}
