import type { CurveKnot } from '../../../gauge/knots.ts';
import { type Axis, type PlotFrame, xOf, yOf } from './chart-scale.ts';

/** The two axes of the chart and where its plot lies. */
export interface Plot {
  readonly frame: PlotFrame;
  readonly heights: Axis;
  readonly thicknesses: Axis;
}

/** A place of the plot, pixels. */
export function placeOf({ frame, heights, thicknesses }: Plot, height: number, thickness: number) {
  return { x: xOf(frame, heights, height), y: yOf(frame, thicknesses, thickness) };
}

/**
 * The SVG path of a curve: level from the thickness axis to its first knot, straight from knot to knot, down to nothing
 * after the last.
 *
 * @check tests/unit/app/gauge-chart.test.ts
 */
export function curvePath(plot: Plot, knots: readonly CurveKnot[]): string {
  if (knots.length === 0) return '';
  const places = [
    { height: 0, thickness: knots[0].thickness },
    ...knots,
    { height: knots[knots.length - 1].height, thickness: 0 },
  ].map(({ height, thickness }) => placeOf(plot, height, thickness));
  return `M${places.map(({ x, y }) => `${round(x)} ${round(y)}`).join('L')}`;
}

/** The same, closed along both axes: what lies under the curve. */
export function underCurvePath(plot: Plot, knots: readonly CurveKnot[]): string {
  if (knots.length === 0) return '';
  const corner = placeOf(plot, 0, 0);
  return `${curvePath(plot, knots)}L${round(corner.x)} ${round(corner.y)}Z`;
}

function round(pixels: number): number {
  return Math.round(pixels * 100) / 100;
}
