import type { Units } from '../../../family/length-text.ts';
import type { Collision } from '../../../fit/fit.ts';
import type { Box } from '../../../geom/point.ts';
import { toPixels } from '../../tools/drawing-view.ts';
import { NM_OF_UNIT, rulerSteps } from '../../tools/ruler-steps.ts';
import type { DrawingSheet } from '../drawing-sheet.ts';
import { Group, Line, Rect, Text } from '../konva-parts.ts';
import { TYPE } from '../palette.ts';

const STRIP = 62;
const NUMBER_SPACING = 44;
/** Pixels between the ruler and the keyway, enough for a dimension's arrow. */
const BESIDE = 52;

interface HeightRulerProps {
  readonly blankBox: Box;
  readonly openingBox: Box;
  readonly collisions: readonly Collision[];
  readonly units: Units;
  readonly sheet: DrawingSheet;
}

/**
 * A ruler beside the keyway that measures heights above its floor, as the words do; stretches that collide are
 * barred on it. In a close view it stands at the edge of the canvas on a strip of its own.
 */
export function HeightRuler({ blankBox, openingBox, collisions, units, sheet }: HeightRulerProps) {
  const { view, palette, size } = sheet;
  const wanted = toPixels(view, { x: Math.min(openingBox.minX, blankBox.minX), y: 0 }).px - BESIDE;
  const right = Math.max(STRIP + 6, wanted);
  const yOf = (height: number) => view.y - (openingBox.minY + height) * view.scale;
  const tall = openingBox.maxY - openingBox.minY;
  const steps = rulerSteps(view.scale, NM_OF_UNIT[units], NUMBER_SPACING);
  const decimals = Math.max(0, Math.ceil(-Math.log10(steps.major / NM_OF_UNIT[units]) - 1e-9));
  const top = Math.max(-20, yOf(tall));
  const unitY = Math.max(4, top - 24);
  const bottom = Math.min(size.height + 20, yOf(0));
  return (
    <Group>
      {right > wanted && (
        <Rect x={0} y={0} width={right + 6} height={size.height} fill={palette.paperLit} opacity={0.88} />
      )}
      {collisions.map((c) => (
        <Rect
          key={`${c.from} ${c.side}`}
          x={right - 12}
          y={yOf(c.to)}
          width={12}
          height={Math.max(3, (c.to - c.from) * view.scale)}
          fill={palette.clash}
        />
      ))}
      <Line points={[right, top, right, bottom]} stroke={palette.ink} strokeWidth={2} />
      {heightsBetween(0, tall, steps.minor, yOf, size.height).map((height) => (
        <Line key={height} points={[right, yOf(height), right - 8, yOf(height)]} stroke={palette.ink} strokeWidth={1} />
      ))}
      {heightsBetween(0, tall, steps.major, yOf, size.height).map((height) => (
        <Group key={height}>
          <Line points={[right, yOf(height), right - 15, yOf(height)]} stroke={palette.ink} strokeWidth={2} />
          <Text
            visible={yOf(height) - 8 > unitY + 14}
            x={right - STRIP}
            y={yOf(height) - 8}
            width={STRIP - 19}
            align="right"
            text={(height / NM_OF_UNIT[units]).toFixed(decimals)}
            fontFamily={TYPE}
            fontSize={16}
            fill={palette.ink}
          />
        </Group>
      ))}
      <Text
        x={right - STRIP}
        y={unitY}
        width={STRIP - 4}
        align="right"
        text={units}
        fontFamily={TYPE}
        fontSize={15}
        fontStyle="bold"
        fill={palette.ink}
      />
    </Group>
  );
}

/** Multiples of `step` from `from` to `to` that fall on the canvas. */
function heightsBetween(
  from: number,
  to: number,
  step: number,
  yOf: (h: number) => number,
  canvasHeight: number,
): number[] {
  const heights: number[] = [];
  for (let i = Math.ceil(from / step); i * step <= to + 1; i++) {
    const y = yOf(i * step);
    if (y < -20) break;
    if (y < canvasHeight + 20) heights.push(i * step);
    if (heights.length > 400) break;
  }
  return heights;
}
