import type { Placement } from '../../../fit/fit.ts';
import { type DrawingView, type PixelPoint, toDrawing } from '../drawing-view.ts';
import type { DraggingBlank, GestureStep } from './gesture.ts';
import { type Held, stopAtWall } from './stop-at-wall.ts';

/** Pixels that the hand must go on past a wall before the blank is pushed into it. */
const PUSH_THROUGH_PX = 14;

/**
 * The blank follows the pointer and stops where it first touches the wall, so that the hand feels it; a
 * pull of {@link PUSH_THROUGH_PX} past that place pushes it in, so that the overlap can be shown.
 *
 * @param gapAt least gap of a placement in nanometres, negative when colliding.
 */
export function dragTo(
  gesture: DraggingBlank,
  at: PixelPoint,
  view: DrawingView,
  from: Held,
  gapAt: (placement: Placement) => number,
): GestureStep {
  const under = toDrawing(view, at);
  const wanted = {
    ...from.placement,
    x: Math.round(under.x - gesture.grip.x),
    y: Math.round(under.y - gesture.grip.y),
  };
  return { gesture, placement: stopAtWall(from, wanted, PUSH_THROUGH_PX / view.scale, gapAt) };
}
