import type { FacePart } from './face-file.ts';
import type { Face, FaceStep } from './read-face.ts';
import { MISSING_BOX, type SetLine } from './set-line.ts';

/** A closed outline, its first corner not repeated: x right, y up from the base line. */
export type LetterContour = readonly (readonly [x: number, y: number])[];

/** Most pieces of one curve. */
const MOST_PIECES = 64;

/**
 * The outlines of a line of text, outer ones one way round and holes the other; a box with a hole for a letter that the
 * typeface has not. Filled by the non-zero rule.
 *
 * @param size height of the em; the outlines are in its unit.
 * @param accuracy greatest distance of a curve from its pieces, in the same unit.
 * @check tests/unit/lettering/typeface.test.ts
 */
export function traceLetters(
  line: SetLine,
  faces: ReadonlyMap<FacePart, Face>,
  size: number,
  accuracy: number,
): LetterContour[] {
  return line.runs.flatMap((run) => {
    if (run.kind === 'box') return boxContours(run.at, size);
    const steps = faces.get(run.part)?.path(run.text) ?? [];
    return flatten(steps, size, accuracy).map((contour) => contour.map(([x, y]) => [x + run.at * size, y] as const));
  });
}

function boxContours(at: number, size: number): LetterContour[] {
  const { left, width, height, line } = MISSING_BOX;
  const corners = (inset: number): [number, number][] => {
    const [x0, x1] = [(at + left + inset) * size, (at + left + width - inset) * size];
    const [y0, y1] = [inset * size, (height - inset) * size];
    return [
      [x0, y0],
      [x0, y1],
      [x1, y1],
      [x1, y0],
    ];
  };
  return [corners(-line / 2), corners(line / 2).reverse()];
}

function flatten(steps: readonly FaceStep[], size: number, accuracy: number): LetterContour[] {
  const contours: [number, number][][] = [];
  let open: [number, number][] = [];
  const close = () => {
    const contour = withoutRepeats(open);
    if (contour.length > 2) contours.push(contour);
    open = [];
  };
  for (const { kind, points } of steps) {
    if (kind === 'close' || kind === 'move') close();
    const places = points.map(([x, y]): [number, number] => [x * size, y * size]);
    const start = open.at(-1);
    if (start && kind === 'curve') open.push(...pieces([start, ...places], accuracy));
    else open.push(...places.slice(-1));
  }
  close();
  return contours;
}

/**
 * Points on a Bezier curve after its start. A curve of degree d in n equal pieces strays from them by at most
 * d (d - 1) / (8 n^2) times the greatest second difference of its control points.
 *
 * @source Filip, Magedson, Markot: Surface algorithms using bounds on derivatives, CAGD 3 (1986), from memory.
 */
function pieces(control: readonly (readonly [number, number])[], accuracy: number): [number, number][] {
  const degree = control.length - 1;
  const bend = Math.max(
    ...control.slice(2).map((c, i) => {
      const [a, b] = [control[i], control[i + 1]];
      return Math.hypot(a[0] - 2 * b[0] + c[0], a[1] - 2 * b[1] + c[1]);
    }),
  );
  const wanted = Math.ceil(Math.sqrt((degree * (degree - 1) * bend) / (8 * accuracy)));
  const count = Math.min(MOST_PIECES, Math.max(1, wanted));
  return Array.from({ length: count }, (_, i) => pointOn(control, (i + 1) / count));
}

/** The point of a Bezier curve, by halving between control points. */
function pointOn(control: readonly (readonly [number, number])[], t: number): [number, number] {
  let points = control.map(([x, y]): [number, number] => [x, y]);
  while (points.length > 1)
    points = points.slice(1).map(([x, y], i) => [points[i][0] * (1 - t) + x * t, points[i][1] * (1 - t) + y * t]);
  return points[0];
}

function withoutRepeats(points: readonly [number, number][]): [number, number][] {
  return points.filter(([x, y], i) => {
    const [px, py] = points[(i + points.length - 1) % points.length];
    return x !== px || y !== py;
  });
}
