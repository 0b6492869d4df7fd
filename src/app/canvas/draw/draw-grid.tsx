import { memo } from 'react';
import type { Units } from '../../../family/length-text.ts';
import { toDrawing } from '../../tools/drawing-view.ts';
import { NM_OF_UNIT, rulerSteps } from '../../tools/ruler-steps.ts';
import type { DrawingSheet } from '../drawing-sheet.ts';
import { type DrawingContext, Group, Rect, Shape, Text } from '../konva-parts.ts';
import { TYPE } from '../palette.ts';

/** Pixels from number to number, and the least from one stroke or dot to the next. */
const NUMBER_SPACING = 76;
const DOT_SPACING = 9;

/** The strips at the left and at the foot that carry the numbers, in pixels. */
export const RULER = { left: 54, foot: 26 } as const;

interface DrawGridProps {
  readonly units: Units;
  /** Nanometres between places that the hand is drawn to; null where it is not. */
  readonly step: number | null;
  readonly sheet: DrawingSheet;
}

/** The ruled sheet: fine and strong lines by the zoom, dots where the hand is drawn to, axes through the origin. */
export const DrawGrid = memo(function DrawGrid({ units, step, sheet }: DrawGridProps) {
  const { view, palette } = sheet;
  const { minor, major } = rulerSteps(view.scale, NM_OF_UNIT[units], NUMBER_SPACING);
  const paint = (context: DrawingContext) => {
    context.setAttr('strokeStyle', palette.inkSoft);
    strokeLines(context, sheet, minor, 0.13, 1);
    strokeLines(context, sheet, major, 0.32, 1);
    strokeAxes(context, sheet);
    if (step && step * view.scale >= DOT_SPACING) paintDots(context, sheet, step);
  };
  return <Shape sceneFunc={paint} listening={false} />;
});

/** The numbers of the strong lines, on strips at the left and at the foot, over whatever is drawn there. */
export const DrawRuler = memo(function DrawRuler({ units, sheet }: { units: Units; sheet: DrawingSheet }) {
  const { view, size, palette } = sheet;
  const { major } = rulerSteps(view.scale, NM_OF_UNIT[units], NUMBER_SPACING);
  const foot = size.height - RULER.foot;
  const decimals = Math.max(0, Math.ceil(-Math.log10(major / NM_OF_UNIT[units]) - 1e-9));
  const xs = linesBetween(sheet, major, 'x').filter(({ px }) => px > RULER.left + 14 && px < size.width - 18);
  const ys = linesBetween(sheet, major, 'y').filter(({ px }) => px > 30 && px < foot - 10);
  const number = (value: number) => {
    const text = (value / NM_OF_UNIT[units]).toFixed(decimals);
    return Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−');
  };
  const upright = { ...lettering(palette.ink), x: 2, width: RULER.left - 8, align: 'right' };
  return (
    <Group>
      <Rect x={0} y={0} width={RULER.left} height={size.height} fill={palette.paperLit} opacity={0.9} />
      <Rect x={0} y={foot} width={size.width} height={RULER.foot} fill={palette.paperLit} opacity={0.9} />
      {ys.map(({ value, px }) => (
        <Text key={value} {...upright} y={px - 8} text={number(value)} />
      ))}
      {xs.map(({ value, px }) => (
        <Text
          key={value}
          {...lettering(palette.ink)}
          x={px - 40}
          y={foot + 6}
          width={80}
          align="center"
          text={number(value)}
        />
      ))}
      <Text {...upright} fontStyle="bold" y={6} text={units} />
    </Group>
  );
});

function lettering(fill: string) {
  return { fontFamily: TYPE, fontSize: 15, fill };
}

interface GridLine {
  readonly value: number;
  readonly px: number;
}

/** Most lines that are drawn one way. */
const MOST_LINES = 600;

/** The multiples of `step` that cross the canvas, with the pixel where they do. */
function linesBetween({ view, size }: DrawingSheet, step: number, axis: 'x' | 'y'): GridLine[] {
  const low = toDrawing(view, { px: 0, py: size.height });
  const high = toDrawing(view, { px: size.width, py: 0 });
  const first = Math.ceil(low[axis] / step);
  const count = Math.min(MOST_LINES, Math.max(0, Math.floor(high[axis] / step) - first + 1));
  return Array.from({ length: count }, (_, k) => {
    const value = (first + k) * step;
    return { value, px: axis === 'x' ? view.x + value * view.scale : view.y - value * view.scale };
  });
}

function strokeLines(context: DrawingContext, sheet: DrawingSheet, step: number, alpha: number, width: number): void {
  const { size } = sheet;
  context.setAttr('globalAlpha', alpha);
  context.setAttr('lineWidth', width);
  context.beginPath();
  for (const { px } of linesBetween(sheet, step, 'x')) {
    context.moveTo(Math.round(px) + 0.5, 0);
    context.lineTo(Math.round(px) + 0.5, size.height);
  }
  for (const { px } of linesBetween(sheet, step, 'y')) {
    context.moveTo(0, Math.round(px) + 0.5);
    context.lineTo(size.width, Math.round(px) + 0.5);
  }
  context.stroke();
  context.setAttr('globalAlpha', 1);
}

function strokeAxes(context: DrawingContext, { view, size }: DrawingSheet): void {
  context.setAttr('globalAlpha', 0.6);
  context.setAttr('lineWidth', 1.5);
  context.setLineDash([12, 4, 2, 4]);
  context.beginPath();
  context.moveTo(view.x, 0);
  context.lineTo(view.x, size.height);
  context.moveTo(0, view.y);
  context.lineTo(size.width, view.y);
  context.stroke();
  context.setLineDash([]);
  context.setAttr('globalAlpha', 1);
}

function paintDots(context: DrawingContext, sheet: DrawingSheet, step: number): void {
  context.setAttr('fillStyle', sheet.palette.inkSoft);
  context.setAttr('globalAlpha', 0.55);
  const ys = linesBetween(sheet, step, 'y');
  for (const { px: x } of linesBetween(sheet, step, 'x'))
    for (const { px: y } of ys) context.fillRect(Math.round(x) - 0.5, Math.round(y) - 0.5, 2, 2);
  context.setAttr('globalAlpha', 1);
}
