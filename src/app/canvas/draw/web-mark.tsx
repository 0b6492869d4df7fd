import type { Point } from '../../../geom/point.ts';
import { type PixelPoint, toPixels } from '../../tools/drawing-view.ts';
import type { DrawingSheet } from '../drawing-sheet.ts';
import { Arrow, Group, Line } from '../konva-parts.ts';
import { NumberPlate } from '../number-plate.tsx';

/** The thinnest place of a blade, with its dimension. */
export interface ShownWeb {
  readonly left: Point;
  readonly right: Point;
  readonly label: string;
  /** Where the right face is: the dimension stands beside it, clear of the grooves' numbers. */
  readonly face: number;
  /** Whether it is thinner than the family wants its webs. */
  readonly isThin: boolean;
}

const ARM = 30;

/** Two arrows at the thinnest place and its dimension on a plate; a thin one is barred across and its plate doubly ruled. */
export function WebMark({ web, sheet }: { web: ShownWeb; sheet: DrawingSheet }) {
  const { palette, view } = sheet;
  const [a, b] = [toPixels(view, web.left), toPixels(view, web.right)];
  const length = Math.hypot(b.px - a.px, b.py - a.py);
  const along = length > 0.5 ? { px: (b.px - a.px) / length, py: (b.py - a.py) / length } : { px: 1, py: 0 };
  const colour = web.isThin ? palette.clashEdge : palette.ink;
  const from = { px: a.px - along.px * ARM, py: a.py - along.py * ARM };
  const far = { px: b.px + along.px * ARM, py: b.py + along.py * ARM };
  return (
    <Group>
      <Line
        points={[a.px, a.py, b.px, b.py]}
        stroke={web.isThin ? palette.clash : palette.paperLit}
        strokeWidth={web.isThin ? 7 : 3}
        dash={web.isThin ? undefined : [5, 4]}
      />
      <Arm from={from} to={a} colour={colour} sheet={sheet} />
      <Arm from={far} to={b} colour={colour} sheet={sheet} />
      <Plate at={far} text={web.isThin ? `⚠ ${web.label}` : web.label} web={web} colour={colour} sheet={sheet} />
    </Group>
  );
}

interface ArmProps {
  readonly from: PixelPoint;
  readonly to: PixelPoint;
  readonly colour: string;
  readonly sheet: DrawingSheet;
}

function Arm({ from, to, colour, sheet: { palette } }: ArmProps) {
  const points = [from.px, from.py, to.px, to.py];
  return (
    <>
      <Line points={points} stroke={palette.paperLit} strokeWidth={6} lineCap="round" />
      <Arrow points={points} pointerLength={10} pointerWidth={8} stroke={colour} fill={colour} strokeWidth={2} />
    </>
  );
}

interface PlateProps {
  readonly at: PixelPoint;
  readonly text: string;
  readonly web: ShownWeb;
  readonly colour: string;
  readonly sheet: DrawingSheet;
}

function Plate({ at, text, web, colour, sheet: { palette, size, view } }: PlateProps) {
  const wide = text.length * 8.6 + 22;
  const clear = toPixels(view, { x: web.face, y: 0 }).px + 46;
  const x = Math.min(Math.max(at.px + 26, clear), size.width - wide - 8);
  const y = Math.max(6, Math.min(size.height - 40, at.py - 14));
  return (
    <Group>
      <Line points={[at.px, at.py, x, at.py]} stroke={palette.paperLit} strokeWidth={5} />
      <Line points={[at.px, at.py, x, at.py]} stroke={colour} strokeWidth={1.5} />
      <NumberPlate
        {...{ x, y, wide, text, palette }}
        fontSize={16}
        fill={web.isThin ? palette.clashGround : palette.paperLit}
        stroke={colour}
        strokeWidth={web.isThin ? 3 : 1.5}
      />
    </Group>
  );
}
