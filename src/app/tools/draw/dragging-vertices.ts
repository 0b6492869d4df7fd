import type { Point } from '../../../geom/point.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import { moveVertices } from '../../../profile/edit-vertices.ts';
import { type DrawingView, type PixelPoint, toDrawing } from '../drawing-view.ts';
import type { DraggingVertices } from './gesture.ts';
import { type Snapped, type SnapTargets, snapPoint } from './snap-point.ts';

/** What a drag wants of the outline, and to what it was drawn. */
export interface Dragged {
  readonly wanted: readonly Vertex[];
  readonly snapped: Snapped;
}

/**
 * The held vertex follows the pointer or is drawn to something near it, and all that are chosen move by as much.
 *
 * @param base the outline as it was when the drag began.
 * @param moving numbers of the vertices that move.
 * @param straight true to go only horizontally or vertically from where it was.
 * @check tests/unit/app/draw-gestures.test.ts
 */
export function dragVerticesTo(
  { lead, grip }: Pick<DraggingVertices, 'lead' | 'grip'>,
  at: PixelPoint,
  view: DrawingView,
  base: readonly Vertex[],
  moving: readonly number[],
  targets: SnapTargets,
  straight: boolean,
): Dragged {
  const place = toDrawing(view, { px: at.px - grip.px, py: at.py - grip.py });
  const from: Point = base[lead];
  const snapped = snapPoint(place, targets, view.scale, straight ? from : null);
  const by = { x: snapped.point.x - from.x, y: snapped.point.y - from.y };
  return { wanted: moveVertices(base, moving, by), snapped };
}
