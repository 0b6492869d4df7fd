import type { Point } from '../../../geom/point.ts';
import { toPixels } from '../../tools/drawing-view.ts';
import { type DrawingSheet, pixelsOf } from '../drawing-sheet.ts';
import { Circle, Group, Line, Rect } from '../konva-parts.ts';

/** The corners that can be moved, as they stand in the drawing. */
export interface ShownCorners {
  readonly points: readonly Point[];
  readonly chosen: number;
  /** Where the chosen corner was wanted but could not be taken; null else. */
  readonly refused: Point | null;
}

/** Corners nearer to each other than this get dots in place of squares, in pixels. */
const CROWDED = 11;

/** Handles on the corners of an outline: squares, a larger one for the chosen, and a cross where a move is refused. */
export function CornerHandles({ corners, sheet }: { corners: ShownCorners; sheet: DrawingSheet }) {
  const { palette, view } = sheet;
  const { points, chosen, refused } = corners;
  const pixels = points.map((point) => toPixels(view, point));
  const isCrowded = (i: number) => {
    const next = pixels[(i + 1) % pixels.length];
    const before = pixels.at(i - 1) ?? next;
    const { px, py } = pixels[i];
    return Math.min(Math.hypot(next.px - px, next.py - py), Math.hypot(before.px - px, before.py - py)) < CROWDED;
  };
  const halfOf = (i: number) => {
    if (i === chosen) return 8;
    return isCrowded(i) ? 2 : 4.5;
  };
  return (
    <Group>
      <Line points={pixelsOf(points, view)} closed stroke={palette.paperLit} strokeWidth={3.5} />
      <Line points={pixelsOf(points, view)} closed stroke={palette.ink} strokeWidth={1.5} />
      {pixels.map(({ px, py }, i) => (
        <Handle
          // biome-ignore lint/suspicious/noArrayIndexKey: a corner is its number
          key={i}
          x={px}
          y={py}
          half={halfOf(i)}
          fill={i === chosen ? palette.brass : palette.paperLit}
          stroke={palette.ink}
        />
      ))}
      {refused && <Refused points={points} chosen={chosen} at={refused} sheet={sheet} />}
    </Group>
  );
}

interface HandleProps {
  readonly x: number;
  readonly y: number;
  readonly half: number;
  readonly fill: string;
  readonly stroke: string;
}

function Handle({ x, y, half, fill, stroke }: HandleProps) {
  return (
    <Rect
      x={x - half}
      y={y - half}
      width={2 * half}
      height={2 * half}
      fill={fill}
      stroke={stroke}
      strokeWidth={half > 6 ? 3 : 1.5}
    />
  );
}

/** The two edges as they were wanted, in the colour of a collision, with a crossed handle. */
function Refused({
  points,
  chosen,
  at,
  sheet,
}: {
  points: readonly Point[];
  chosen: number;
  at: Point;
  sheet: DrawingSheet;
}) {
  const { palette, view } = sheet;
  const before = points.at(chosen - 1) ?? at;
  const after = points[(chosen + 1) % points.length];
  const { px, py } = toPixels(view, at);
  return (
    <Group>
      <Line points={pixelsOf([before, at, after], view)} stroke={palette.paperLit} strokeWidth={6} />
      <Line points={pixelsOf([before, at, after], view)} stroke={palette.clash} strokeWidth={3} dash={[8, 5]} />
      <Circle x={px} y={py} radius={11} fill={palette.paperLit} stroke={palette.clashEdge} strokeWidth={3} />
      <Line points={[px - 6, py - 6, px + 6, py + 6]} stroke={palette.clashEdge} strokeWidth={3} />
      <Line points={[px - 6, py + 6, px + 6, py - 6]} stroke={palette.clashEdge} strokeWidth={3} />
    </Group>
  );
}
