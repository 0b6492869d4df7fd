import type { Point } from '../../../geom/point.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import { toPixels } from '../../tools/drawing-view.ts';
import { type DrawingSheet, pixelsOf } from '../drawing-sheet.ts';
import { Circle, Group, Line, Rect } from '../konva-parts.ts';
import { CrossingMarks } from './draw-refused.tsx';

/** The outline that the pen has begun. */
export interface PenScene {
  readonly vertices: readonly Vertex[];
  /** The line through them, its arcs as chords. */
  readonly line: readonly Point[];
  /** Where the next vertex would be; null while the pointer is elsewhere. */
  readonly next: Point | null;
  /** Whether a press there closes the outline. */
  readonly closing: boolean;
  readonly crossings: readonly Point[];
}

/** The pen's line with its vertices, the rubber line to the pointer, and what crosses. */
export function DrawPen({ pen, sheet }: { pen: PenScene; sheet: DrawingSheet }) {
  const { palette, view } = sheet;
  const { vertices, line, next, closing, crossings } = pen;
  const crossed = crossings.length > 0;
  const last = vertices.at(-1);
  const end = closing ? vertices[0] : next;
  const pixels = pixelsOf(line, view);
  return (
    <Group>
      {vertices.length > 2 && <Line points={pixels} closed fill={palette.brass} opacity={0.22} />}
      <Line points={pixels} stroke={palette.paperLit} strokeWidth={5} lineJoin="round" />
      <Line points={pixels} stroke={crossed ? palette.clash : palette.ink} strokeWidth={2.5} lineJoin="round" />
      {last && end && (
        <>
          <Line points={pixelsOf([last, end], view)} stroke={palette.paperLit} strokeWidth={4} />
          <Line
            points={pixelsOf([last, end], view)}
            stroke={crossed ? palette.clash : palette.ink}
            strokeWidth={2}
            dash={[7, 5]}
          />
        </>
      )}
      {vertices.map((vertex, i) => (
        <PenVertex key={`${vertex.x} ${vertex.y}`} at={vertex} first={i === 0} ready={closing} sheet={sheet} />
      ))}
      {next && !closing && <PenCross at={next} sheet={sheet} />}
      <CrossingMarks crossings={crossings} sheet={sheet} />
    </Group>
  );
}

/** The first vertex has a ring round it, which closes the outline; it grows when a press would. */
function PenVertex({ at, first, ready, sheet }: { at: Point; first: boolean; ready: boolean; sheet: DrawingSheet }) {
  const { palette, view } = sheet;
  const { px, py } = toPixels(view, at);
  return (
    <Group>
      {first && <Circle x={px} y={py} radius={ready ? 14 : 10} stroke={palette.ink} strokeWidth={ready ? 3.5 : 1.75} />}
      <Rect
        x={px - 4.5}
        y={py - 4.5}
        width={9}
        height={9}
        fill={palette.brass}
        stroke={palette.ink}
        strokeWidth={1.75}
      />
    </Group>
  );
}

function PenCross({ at, sheet }: { at: Point; sheet: DrawingSheet }) {
  const { palette, view } = sheet;
  const { px, py } = toPixels(view, at);
  const arms = [
    [px - 12, py, px - 3, py],
    [px + 3, py, px + 12, py],
    [px, py - 12, px, py - 3],
    [px, py + 3, px, py + 12],
  ];
  return (
    <Group>
      {arms.map((points) => (
        <Line key={points.join()} points={points} stroke={palette.paperLit} strokeWidth={5} />
      ))}
      {arms.map((points) => (
        <Line key={points.join()} points={points} stroke={palette.ink} strokeWidth={2} />
      ))}
    </Group>
  );
}
