import type { Point } from '../../../geom/point.ts';
import type { Snapped } from '../../tools/draw/snap-point.ts';
import { toPixels } from '../../tools/drawing-view.ts';
import { type DrawingSheet, pixelsOf } from '../drawing-sheet.ts';
import { Circle, Group, Label, Line, Rect, Tag, Text } from '../konva-parts.ts';
import { TYPE } from '../palette.ts';
import { RULER } from './draw-grid.tsx';

/** Room kept for a plate; it is as wide as its longest line. */
const WIDE = 310;
const LINE_TALL = 20;

/** A plate with what is read where the hand is; it stands on the side where there is room. */
export function DrawReadOut({ at, lines, sheet }: { at: Point; lines: readonly string[]; sheet: DrawingSheet }) {
  const { palette, view, size } = sheet;
  const { px, py } = toPixels(view, at);
  const tall = lines.length * LINE_TALL + 14;
  const x = px + 26 + WIDE < size.width ? px + 26 : px - 26 - WIDE;
  const y = py + 26 + tall < size.height - RULER.foot ? py + 26 : py - 26 - tall;
  return (
    <Label x={Math.max(RULER.left + 4, x)} y={Math.max(6, y)}>
      <Tag fill={palette.paperLit} stroke={palette.ink} strokeWidth={1.5} opacity={0.95} />
      <Text
        text={lines.map((line) => `${line}\u00a0`).join('\n')}
        padding={7}
        wrap="none"
        lineHeight={LINE_TALL / 15}
        fontFamily={TYPE}
        fontSize={15}
        fill={palette.ink}
      />
    </Label>
  );
}

/** What the hand was drawn to: guide lines, a ring on a vertex or an edge, a word beside it. */
export function SnapMark({ snapped, sheet }: { snapped: Snapped; sheet: DrawingSheet }) {
  const { palette, view } = sheet;
  const { px, py } = toPixels(view, snapped.point);
  return (
    <Group>
      {snapped.guides.map(([from, to]) => (
        <Line
          key={`${from.x} ${from.y}`}
          points={pixelsOf([from, to], view)}
          stroke={palette.ink}
          strokeWidth={1.5}
          dash={[2, 4]}
        />
      ))}
      {snapped.kind === 'vertex' && <Circle x={px} y={py} radius={12} stroke={palette.ink} strokeWidth={2.5} />}
      {snapped.kind === 'edge' && (
        <Rect x={px} y={py - 12} width={17} height={17} rotation={45} stroke={palette.ink} strokeWidth={2.5} />
      )}
    </Group>
  );
}

/** The box that is drawn round vertices. */
export function PickBox({ corner, to, sheet }: { corner: Point; to: Point; sheet: DrawingSheet }) {
  const { palette, view } = sheet;
  const [a, b] = [toPixels(view, corner), toPixels(view, to)];
  const box = {
    x: Math.min(a.px, b.px),
    y: Math.min(a.py, b.py),
    width: Math.abs(a.px - b.px),
    height: Math.abs(a.py - b.py),
  };
  return (
    <Group>
      <Rect {...box} fill={palette.brass} opacity={0.16} />
      <Rect {...box} stroke={palette.ink} strokeWidth={1.5} dash={[6, 4]} />
    </Group>
  );
}
