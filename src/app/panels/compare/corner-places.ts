import type { Point } from '../../../geom/point.ts';
import { editedVertices } from '../../state/draw/draw-state.ts';
import { placed } from '../../tools/placed-points.ts';
import { type CornerPair, editedProfile } from './corner-editing.ts';
import type { CornerState } from './corner-state.ts';

/** The corners that can be moved, as they stand in the drawing; null while none are shown. */
export function shownCorners(pair: CornerPair, { on, part, chosen, refusedAt }: CornerState) {
  if (!on) return null;
  const stand = (points: readonly Point[]) => (part === 'entrant' ? placed(points, pair.placement) : points);
  const corners = editedVertices(editedProfile(pair, part));
  return {
    points: stand(corners),
    chosen: Math.min(chosen, corners.length - 1),
    refused: refusedAt && stand([refusedAt])[0],
  };
}
