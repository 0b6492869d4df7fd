import { memo } from 'react';
import type { Profile } from '../../profile/profile.ts';
import { middleOf, type PlugFace, plugFacePath } from '../state/plug-face.ts';
import { toPixels } from '../tools/drawing-view.ts';
import { type DrawingSheet, pixelsOf } from './drawing-sheet.ts';
import { Layer, Line, Path } from './konva-parts.ts';

const NM_PER_MM = 1e6;

/** What stands still in Compare: the end of the plug and the keyway in it. */
export const KeywayLayer = memo(function KeywayLayer({
  opening,
  face,
  sheet,
}: {
  opening: Profile;
  face: PlugFace;
  sheet: DrawingSheet;
}) {
  const { view, palette } = sheet;
  const middle = middleOf(opening);
  const centre = toPixels(view, { x: middle.x * NM_PER_MM, y: middle.y * NM_PER_MM });
  const scale = view.scale * NM_PER_MM;
  return (
    <Layer listening={false}>
      <Path
        data={plugFacePath(face)}
        x={centre.px}
        y={centre.py}
        scaleX={scale}
        scaleY={-scale}
        strokeScaleEnabled={false}
        fill={palette.plug}
        stroke={palette.plugEdge}
        strokeWidth={2}
      />
      <Line
        points={pixelsOf(opening.ring, view)}
        closed
        fill={palette.voidFill}
        stroke={palette.voidEdge}
        strokeWidth={2}
        lineJoin="round"
      />
    </Layer>
  );
});
