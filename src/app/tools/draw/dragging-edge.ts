import type { Vertex } from '../../../geom/vertex.ts';
import type { DrawingView, PixelPoint } from '../drawing-view.ts';
import { type Dragged, dragVerticesTo } from './dragging-vertices.ts';
import type { DraggingEdge } from './gesture.ts';
import type { SnapTargets } from './snap-point.ts';

/** Numbers of the vertices that move with an edge: its two ends. */
export function endsOf({ edge }: Pick<DraggingEdge, 'edge'>, count: number): readonly number[] {
  return [edge, (edge + 1) % count];
}

/** The held edge follows the pointer with both its ends; its nearer end is what is drawn to the grid and to others. */
export function dragEdgeTo(
  gesture: DraggingEdge,
  at: PixelPoint,
  view: DrawingView,
  base: readonly Vertex[],
  targets: SnapTargets,
  straight: boolean,
): Dragged {
  return dragVerticesTo(gesture, at, view, base, endsOf(gesture, base.length), targets, straight);
}
