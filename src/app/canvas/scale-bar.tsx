import type { Units } from '../../family/length-text.ts';
import { NM_OF_UNIT, scaleBarLength } from '../tools/ruler-steps.ts';
import type { DrawingSheet } from './drawing-sheet.ts';
import { Group, Rect, Text } from './konva-parts.ts';
import { TYPE } from './palette.ts';

const ROOM = 150;
const HEIGHT = 9;
const FIELDS = 4;

/** A bar of a round length at the foot of the drawing. */
export function ScaleBar({ units, sheet }: { units: Units; sheet: DrawingSheet }) {
  const { view, palette, size } = sheet;
  const unit = NM_OF_UNIT[units];
  const length = scaleBarLength(view.scale, unit, ROOM);
  const width = length * view.scale;
  const x = size.width - width - 18;
  const y = size.height - 22;
  return (
    <Group>
      <Rect x={x - 10} y={y - 26} width={width + 20} height={44} fill={palette.paperLit} opacity={0.86} />
      {Array.from({ length: FIELDS }, (_, i) => (
        <Rect
          // biome-ignore lint/suspicious/noArrayIndexKey: the fields of a bar never move
          key={i}
          x={x + (i * width) / FIELDS}
          y={y}
          width={width / FIELDS}
          height={HEIGHT}
          fill={i % 2 === 0 ? palette.ink : palette.paperLit}
          stroke={palette.ink}
          strokeWidth={1.5}
        />
      ))}
      <Text
        x={x - 8}
        y={y - 22}
        width={width + 16}
        align="center"
        text={`${Number((length / unit).toPrecision(3))} ${units}`}
        fontFamily={TYPE}
        fontSize={16}
        fill={palette.ink}
      />
    </Group>
  );
}
