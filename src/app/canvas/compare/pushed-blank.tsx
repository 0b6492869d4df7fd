import type { Point } from '../../../geom/point.ts';
import type { Pushed } from '../../tools/compare/pushing.ts';
import { middleOfAll } from '../../tools/placed-points.ts';
import { type DrawingSheet, pixelsOf } from '../drawing-sheet.ts';
import { Group, Line } from '../konva-parts.ts';

/** The size at which a blank sets out, and how much of it is seen then. */
const FAR = { size: 0.72, seen: 0.12 };
/** A blank that is in lies in the shade of the keyway. */
const SHADED = 0.34;

interface PushedBlankProps {
  readonly outlines: readonly (readonly Point[])[];
  readonly pushed: Pushed | null;
  readonly fill: string;
  readonly sheet: DrawingSheet;
}

/** The blank's section where it lies; on its way in it grows to its true size and is seen more and more. */
export function PushedBlank({ outlines, pushed, fill, sheet }: PushedBlankProps) {
  const { palette, view } = sheet;
  const near = pushed?.phase === 'coming' ? pushed.near : 1;
  const size = FAR.size + (1 - FAR.size) * near;
  const shown = size === 1 ? outlines : outlines.map((outline) => about(middleOfAll(outlines), outline, size));
  const shade = pushed?.phase === 'in' ? SHADED * pushed.down : 0;
  return (
    <Group opacity={FAR.seen + (1 - FAR.seen) * near}>
      {shown.map((outline, i) => {
        const line = { points: pixelsOf(outline, view), closed: true, lineJoin: 'round' } as const;
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: the parts of a blank have no identity
          <Group key={i}>
            <Line {...line} fill={fill} stroke={palette.brassEdge} strokeWidth={2.5} />
            {shade > 0 && <Line {...line} fill={palette.voidFill} opacity={shade} />}
          </Group>
        );
      })}
    </Group>
  );
}

function about(middle: Point, outline: readonly Point[], size: number): Point[] {
  return outline.map(({ x, y }) => ({ x: middle.x + (x - middle.x) * size, y: middle.y + (y - middle.y) * size }));
}
