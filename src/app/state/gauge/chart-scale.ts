import type { Units } from '../../../family/length-text.ts';
import { NM_PER_INCH, NM_PER_MM } from '../../../geom/point.ts';

/** One stroke of an axis. */
export interface Tick {
  /** Nanometres. */
  readonly nm: number;
  /** The number beside it, without a unit. */
  readonly text: string;
}

/** An axis of the chart: a length in nanometres to pixels. */
export interface Axis {
  /** Length at the end of the axis, nanometres; it begins at 0. */
  readonly end: number;
  readonly ticks: readonly Tick[];
  /** The unit of the numbers. */
  readonly unit: string;
}

const LADDER = [1, 2, 2.5, 5] as const;

/** Lengths in one unit of the axis: heights in millimetres or inches, thicknesses in millimetres or thousandths. */
const UNIT = {
  height: { mm: { unit: 'mm', per: NM_PER_MM }, in: { unit: 'in', per: NM_PER_INCH } },
  thickness: { mm: { unit: 'mm', per: NM_PER_MM }, in: { unit: 'thou', per: NM_PER_INCH / 1000 } },
} as const;

/**
 * An axis from 0 to a round number beyond `most`, with at most `strokes` spaces between its numbers.
 *
 * @param most greatest length to be shown, nanometres; above 0.
 * @check tests/unit/app/gauge-chart.test.ts
 */
export function makeAxis(what: 'height' | 'thickness', most: number, strokes: number, units: Units): Axis {
  const { unit, per } = UNIT[what][units];
  const step = roundStep(most / per / Math.max(1, strokes));
  const count = Math.max(1, Math.ceil(most / per / step - 1e-9));
  const decimals = decimalsOf(step);
  const ticks = Array.from({ length: count + 1 }, (_, i) => ({
    nm: i * step * per,
    text: (i * step).toFixed(decimals),
  }));
  return { end: count * step * per, ticks, unit };
}

/** The least of 1, 2, 2.5, 5 times a power of ten that is not below `least`. */
function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  const digit = LADDER.find((d) => d * power >= least * (1 - 1e-9)) ?? 10;
  return digit * power;
}

function decimalsOf(step: number): number {
  for (let decimals = 0; decimals < 4; decimals++)
    if (Math.abs(step * 10 ** decimals - Math.round(step * 10 ** decimals)) < 1e-6) return decimals;
  return 4;
}

/** Where the plot lies in the picture, and how lengths become pixels. */
export interface PlotFrame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Pixels of a height along the plot. */
export function xOf(frame: PlotFrame, axis: Axis, nm: number): number {
  return frame.left + (frame.width * nm) / axis.end;
}

/** Pixels of a thickness up the plot. */
export function yOf(frame: PlotFrame, axis: Axis, nm: number): number {
  return frame.top + frame.height * (1 - nm / axis.end);
}

/** The height under a place of the picture, nanometres, within the axis. */
export function heightUnder(frame: PlotFrame, axis: Axis, x: number): number {
  return Math.min(axis.end, Math.max(0, ((x - frame.left) / frame.width) * axis.end));
}
