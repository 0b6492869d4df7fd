import { memo } from 'react';
import { middleOf, type PlugFace, plugFacePath } from '../../../family/plug-face.ts';
import type { Point } from '../../../geom/point.ts';
import type { Region } from '../../../geom/region.ts';
import type { Profile } from '../../../profile/profile.ts';
import { toPixels } from '../../tools/drawing-view.ts';
import { type DrawingSheet, pixelsOf } from '../drawing-sheet.ts';
import { Group, Layer, Line, Path } from '../konva-parts.ts';

const NM_PER_MM = 1e6;

/** What stands still in Compare: the end of the plug and the keyway in it. */
export const KeywayLayer = memo(function KeywayLayer({
  opening,
  region,
  face,
  sheet,
}: {
  opening: Profile;
  /** The keyway as it is judged: worn where there is wear. */
  region: Region;
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
      {region.map(({ outer, holes }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the patches of a keyway have no identity
        <Group key={i}>
          <Loop loop={outer} fill={palette.voidFill} sheet={sheet} />
          {holes.map((hole, k) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: nor have its islands
            <Loop key={k} loop={hole} fill={palette.plug} sheet={sheet} />
          ))}
        </Group>
      ))}
    </Layer>
  );
});

function Loop({ loop, fill, sheet }: { loop: readonly Point[]; fill: string; sheet: DrawingSheet }) {
  return (
    <Line
      points={pixelsOf(loop, sheet.view)}
      closed
      fill={fill}
      stroke={sheet.palette.voidEdge}
      strokeWidth={2}
      lineJoin="round"
    />
  );
}
