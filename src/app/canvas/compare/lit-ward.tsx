import type { Point } from '../../../geom/point.ts';
import { type DrawingSheet, pixelsOf } from '../drawing-sheet.ts';
import { Layer, Line } from '../konva-parts.ts';

/** A ward and the groove that is to let it by, in the frame of the keyway. */
export interface LitWardShapes {
  readonly ward: readonly Point[];
  /** Null where there is no groove for it. */
  readonly groove: readonly Point[] | null;
}

/** The ward that is pointed at in the list, drawn with a heavy line, and its groove with a dashed one. */
export function LitWard({ shapes, sheet }: { shapes: LitWardShapes; sheet: DrawingSheet }) {
  return (
    <Layer listening={false}>
      {shapes.groove && <Cased points={shapes.groove} dash={[12, 7]} sheet={sheet} />}
      <Cased points={shapes.ward} sheet={sheet} />
    </Layer>
  );
}

/** A line that stands out on metal and in the dark alike: a light core in a dark case. */
function Cased({ points, dash, sheet }: { points: readonly Point[]; dash?: number[]; sheet: DrawingSheet }) {
  const { palette, view } = sheet;
  const common = { points: pixelsOf(points, view), lineJoin: 'round', lineCap: 'round' } as const;
  return (
    <>
      <Line {...common} stroke={palette.ink} strokeWidth={9} />
      <Line {...common} stroke={palette.paperLit} strokeWidth={4.5} dash={dash} />
    </>
  );
}
