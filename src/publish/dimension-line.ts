import type { TextMeasure } from '../lettering/text-measure.ts';
import type { Block } from './block.ts';
import type { Mark, Spot } from './page.ts';
import { ASCENT, LEADING } from './paragraph.ts';
import { drawn, filled, polyline } from './strokes.ts';

/** How a dimension is drawn; millimetres. */
export interface DimensionStyle {
  /** Height of the type. */
  readonly size: number;
  readonly measure: TextMeasure;
}

/** A slim arrow head with its tip at a spot, pointing along (dx, dy), one of them 0. */
function arrowHead([x, y]: Spot, dx: number, dy: number, size: number): Mark {
  const back: Spot = [x - dx * size, y - dy * size];
  const half = size * 0.28;
  const spots: Spot[] = [
    [x, y],
    [back[0] + dy * half, back[1] + dx * half],
    [back[0] - dy * half, back[1] - dx * half],
  ];
  return filled([{ closed: true, spots }], 'soft');
}

/**
 * A dimension across, arrows outwards, its figure under it in the middle. To stand below what it measures, ends in line
 * with it; a figure wider than the dimension stands out at both sides.
 */
export function acrossDimension(length: number, figure: string, { size, measure }: DimensionStyle): Block {
  const wide = measure.width(figure, size);
  const width = Math.max(length, wide);
  const from = (width - length) / 2;
  const line = size * 0.5;
  const arrow = Math.min(size * 0.7, length / 2);
  const marks: Mark[] = [
    drawn(
      [polyline([from, 0], [from, line * 1.6]), polyline([from + length, 0], [from + length, line * 1.6])],
      'soft',
      0.12,
    ),
    drawn([polyline([from, line], [from + length, line])], 'soft', 0.12),
    arrowHead([from, line], -1, 0, arrow),
    arrowHead([from + length, line], 1, 0, arrow),
    { kind: 'text', spot: [width / 2, line * 1.6 + size * ASCENT], text: figure, size, align: 'middle' },
  ];
  return { width, height: line * 1.6 + size * LEADING, marks };
}

/** A dimension upwards, its figure turned at its right: to stand right of what it measures, ends in line with it. */
export function upwardDimension(length: number, figure: string, { size, measure }: DimensionStyle): Block {
  const long = measure.width(figure, size);
  const height = Math.max(length, long);
  const from = (height - length) / 2;
  const line = size * 0.5;
  const arrow = Math.min(size * 0.7, length / 2);
  const marks: Mark[] = [
    drawn(
      [polyline([0, from], [line * 1.6, from]), polyline([0, from + length], [line * 1.6, from + length])],
      'soft',
      0.12,
    ),
    drawn([polyline([line, from], [line, from + length])], 'soft', 0.12),
    arrowHead([line, from], 0, -1, arrow),
    arrowHead([line, from + length], 0, 1, arrow),
    { kind: 'text', spot: [line * 1.6 + size * ASCENT, height / 2], text: figure, size, align: 'middle', turned: -90 },
  ];
  return { width: line * 1.6 + size * LEADING, height, marks };
}
