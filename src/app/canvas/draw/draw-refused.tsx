import type { Point } from '../../../geom/point.ts';
import { toPixels } from '../../tools/drawing-view.ts';
import { type DrawingSheet, pixelsOf } from '../drawing-sheet.ts';
import { Circle, Group, Line } from '../konva-parts.ts';

interface DrawRefusedProps {
  /** The outline as it was wanted, its arcs as chords. */
  readonly outline: readonly Point[];
  /** Whether its last point is joined to its first. */
  readonly closed: boolean;
  readonly crossings: readonly Point[];
  readonly sheet: DrawingSheet;
}

/** An outline that is not taken: dashed in the colour of a collision, with a crossed ring at each place where it fails. */
export function DrawRefused({ outline, closed, crossings, sheet }: DrawRefusedProps) {
  const { palette, view } = sheet;
  const pixels = pixelsOf(outline, view);
  return (
    <Group>
      <Line points={pixels} closed={closed} stroke={palette.paperLit} strokeWidth={6} />
      <Line points={pixels} closed={closed} stroke={palette.clash} strokeWidth={3} dash={[8, 5]} />
      <CrossingMarks crossings={crossings} sheet={sheet} />
    </Group>
  );
}

/** A crossed ring at each place where an outline crosses or touches itself. */
export function CrossingMarks({ crossings, sheet }: { crossings: readonly Point[]; sheet: DrawingSheet }) {
  const { palette, view } = sheet;
  return (
    <Group>
      {crossings.map((place) => {
        const { px, py } = toPixels(view, place);
        return (
          <Group key={`${place.x} ${place.y}`}>
            <Circle x={px} y={py} radius={12} fill={palette.paperLit} stroke={palette.clashEdge} strokeWidth={3.5} />
            <Line points={[px - 6, py - 6, px + 6, py + 6]} stroke={palette.clashEdge} strokeWidth={3.5} />
            <Line points={[px - 6, py + 6, px + 6, py - 6]} stroke={palette.clashEdge} strokeWidth={3.5} />
          </Group>
        );
      })}
    </Group>
  );
}
