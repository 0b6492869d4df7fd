import type { Ink } from './inks.ts';
import type { PathMark, Spot, Stroke } from './page.ts';

/** The boundary of an upright rectangle. */
export function rectangle(x: number, y: number, width: number, height: number): Stroke {
  return {
    closed: true,
    spots: [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
  };
}

/** A circle as a polygon so fine that no printer shows its corners. */
export function circle(x: number, y: number, radius: number): Stroke {
  const count = Math.max(24, Math.min(180, Math.ceil(24 * Math.sqrt(radius))));
  const spots = Array.from({ length: count }, (_, i): Spot => {
    const angle = (2 * Math.PI * i) / count;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
  return { closed: true, spots };
}

/** A line through places. */
export function polyline(...spots: readonly Spot[]): Stroke {
  return { closed: false, spots };
}

/** Lines of one kind, widths in millimetres. */
export function drawn(strokes: readonly Stroke[], ink: Ink, width: number, dashes?: readonly number[]): PathMark {
  return { kind: 'path', strokes, line: dashes ? { ink, width, dashes } : { ink, width } };
}

/** Areas of one kind, with a line round them where a width is given. */
export function filled(strokes: readonly Stroke[], fill: Ink, line?: { ink: Ink; width: number }): PathMark {
  return line ? { kind: 'path', strokes, fill, line } : { kind: 'path', strokes, fill };
}
