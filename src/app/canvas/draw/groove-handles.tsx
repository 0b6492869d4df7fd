import type { Point } from '../../../geom/point.ts';
import type { Region } from '../../../geom/region.ts';
import type { GrooveSide } from '../../../profile/profile.ts';
import type { MillHandle, MillPart } from '../../tools/draw/groove-under-pointer.ts';
import { toPixels } from '../../tools/drawing-view.ts';
import { type DrawingSheet, pixelsOf } from '../drawing-sheet.ts';
import { HatchedRegion } from '../hatched-region.tsx';
import { Circle, Group, Line, Rect, Text } from '../konva-parts.ts';
import { TYPE } from '../palette.ts';
import { DrawReadOut } from './draw-read-out.tsx';
import { type ShownWeb, WebMark } from './web-mark.tsx';

/** What the canvas shows of a milled blade, in the frame of its outline. */
export interface GrooveMarks {
  readonly handles: readonly MillHandle[];
  /** The chosen groove by its place in the list. */
  readonly chosen: number | null;
  /** The face of each groove and the height of its middle, to stand its number there. */
  readonly numbers: readonly { readonly side: GrooveSide; readonly at: number }[];
  readonly thickness: number;
  readonly web: ShownWeb | null;
  readonly readOut: { readonly at: Point; readonly lines: readonly string[] } | null;
  /** A drawn outline that was read as grooves: the milled outline, and where the two differ. */
  readonly read: { readonly ring: readonly Point[]; readonly unexplained: Region } | null;
}

/** Handles on the grooves and the sizes of a milled blade, its thinnest web, and what is read while it is dragged. */
export function GrooveHandles({ marks, sheet }: { marks: GrooveMarks; sheet: DrawingSheet }) {
  const { handles, chosen, numbers, web, readOut, read } = marks;
  return (
    <Group>
      {read && <ReadOutline read={read} sheet={sheet} />}
      {web && <WebMark web={web} sheet={sheet} />}
      {numbers.map(({ side, at }, i) => (
        <GrooveNumber
          // biome-ignore lint/suspicious/noArrayIndexKey: a groove is its number
          key={i}
          text={String(i + 1)}
          at={{ x: side === 'left' ? 0 : marks.thickness, y: at }}
          outwards={side === 'left' ? -1 : 1}
          clearOf={web}
          isChosen={i === chosen}
          sheet={sheet}
        />
      ))}
      {handles.map((handle) => (
        <Handle
          key={`${handle.groove} ${handle.part}`}
          handle={handle}
          isChosen={handle.groove !== null && handle.groove === chosen}
          sheet={sheet}
        />
      ))}
      {readOut && <DrawReadOut {...readOut} sheet={sheet} />}
    </Group>
  );
}

/** The outline that the read grooves make, dashed, and what they do not explain, hatched. */
function ReadOutline({ read, sheet }: { read: NonNullable<GrooveMarks['read']>; sheet: DrawingSheet }) {
  const { palette, view } = sheet;
  const points = pixelsOf(read.ring, view);
  return (
    <Group>
      <Line points={points} closed stroke={palette.paperLit} strokeWidth={5} />
      <Line points={points} closed stroke={palette.ink} strokeWidth={2} dash={[9, 5]} />
      {read.unexplained.length > 0 && <HatchedRegion region={read.unexplained} sheet={sheet} />}
    </Group>
  );
}

interface HandleProps {
  readonly handle: MillHandle;
  readonly isChosen: boolean;
  readonly sheet: DrawingSheet;
}

/** Bars lie along what they move across, a rhombus moves a whole groove, a ring a radius. */
function Handle({ handle, isChosen, sheet: { palette, view } }: HandleProps) {
  const { px, py } = toPixels(view, handle.at);
  const look = {
    x: px,
    y: py,
    fill: isChosen ? palette.brass : palette.paperLit,
    stroke: palette.ink,
    strokeWidth: isChosen ? 2.5 : 1.5,
  };
  const grow = isChosen ? 1.3 : 1;
  if (handle.part === 'backRadius') return <Circle {...look} radius={5.5} />;
  if (handle.part === 'place')
    return <Rect {...look} width={10 * grow} height={10 * grow} offsetX={5 * grow} offsetY={5 * grow} rotation={45} />;
  const [wide, tall] = barOf(handle.part, grow);
  return <Rect {...look} width={wide} height={tall} offsetX={wide / 2} offsetY={tall / 2} />;
}

function barOf(part: MillPart, grow: number): [number, number] {
  return part === 'root' || part === 'thickness' ? [6.5 * grow, 18 * grow] : [18 * grow, 6.5 * grow];
}

interface GrooveNumberProps {
  readonly text: string;
  readonly at: Point;
  readonly outwards: 1 | -1;
  /** The web, whose dimension the number must not hide. */
  readonly clearOf: ShownWeb | null;
  readonly isChosen: boolean;
  readonly sheet: DrawingSheet;
}

/** Room that the line of a dimension needs to either side of a number's middle, pixels. */
const CLEAR_PX = 17;

/** A height that is clear of a line across, on the side where it is already. */
function asideOf(py: number, line: number): number {
  if (Math.abs(py - line) >= CLEAR_PX) return py;
  return py < line ? line - CLEAR_PX : line + CLEAR_PX;
}

/** The number of a groove, as in the table, beside the mouth of the groove. */
function GrooveNumber({ text, at, outwards, clearOf, isChosen, sheet: { palette, view } }: GrooveNumberProps) {
  const { px, py: middle } = toPixels(view, at);
  const py = clearOf ? asideOf(middle, toPixels(view, outwards > 0 ? clearOf.right : clearOf.left).py) : middle;
  const x = px + outwards * 24;
  return (
    <Group>
      <Circle
        x={x}
        y={py}
        radius={11}
        fill={isChosen ? palette.brass : palette.paperLit}
        stroke={palette.ink}
        strokeWidth={isChosen ? 2.5 : 1.5}
      />
      <Text
        x={x - 11}
        y={py - 7}
        width={22}
        text={text}
        align="center"
        fontFamily={TYPE}
        fontSize={15}
        fontStyle="bold"
        fill={isChosen ? palette.brassEdge : palette.ink}
      />
    </Group>
  );
}
