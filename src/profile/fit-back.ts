import type { OutlineSample } from './fit-groove.ts';
import { fitLeastSquares } from './fit-least-squares.ts';

/** The lower end of a blade: the height of its back, and the radius of its two corners. Nanometres. */
export interface BackShape {
  readonly back: number;
  readonly radius: number;
}

/** The blade above its back: where its two sides run, and up to what height they do so undisturbed. */
export interface BackSides {
  readonly left: number;
  readonly right: number;
  readonly upTo: number;
}

/** Vertices further than this from what was found, nanometres, are no mere rounding. */
const CHORDS_OFF = 2_500;

/**
 * The back that fits the lower end of an outline best. As with grooves, an outline that is fitted to a few micrometres
 * is fitted once more to its vertices alone, which lie on the arcs.
 *
 * @param start a guess.
 * @check tests/unit/profile/read-grooves.test.ts
 */
export function fitBack(samples: readonly OutlineSample[], sides: BackSides, start: BackShape): BackShape {
  const near = samples.filter((p) => p.y <= sides.upTo);
  // A radius of next to nothing does not grow by itself: a start with some radius has to be tried as well.
  const rough = [start, { ...start, radius: Math.max(start.radius, 10_000) }, { ...start, radius: start.radius / 2 }]
    .map((from) => fitTo(near, sides, from))
    .reduce((best, next) => (next.misfit < best.misfit ? next : best));
  const vertices = near.filter((p) => p.isVertex);
  const off = Math.max(0, ...vertices.map((p) => Math.abs(distanceFromBack(rough, sides, p))));
  return vertices.length < 2 || off > CHORDS_OFF ? rough : fitTo(vertices, sides, rough);
}

/** The two sides are found along with back and radius: a guess that is off by a little would bend the radius. */
function fitTo(samples: readonly OutlineSample[], sides: BackSides, start: BackShape): BackShape & { misfit: number } {
  const { parameters, misfit } = fitLeastSquares(
    {
      residuals: ([back, radius, left, right]) =>
        samples.map((p) => distanceFromBack({ back, radius }, { left, right }, p)),
      clamp: ([back, radius, left, right]) => [back, Math.min((right - left) / 2, Math.max(0, radius)), left, right],
      steps: [50, 50, 50, 50],
    },
    [start.back, start.radius, sides.left, sides.right],
  );
  return { back: parameters[0], radius: parameters[1], misfit };
}

/** Signed distance from the end of a blade, positive inside: the end is a corner rounded on either side of the middle. */
function distanceFromBack(
  { back, radius }: BackShape,
  { left, right }: Omit<BackSides, 'upTo'>,
  p: OutlineSample,
): number {
  const side = Math.min(p.x - left, right - p.x);
  const up = p.y - back;
  if (side >= radius || up >= radius) return Math.min(side, up);
  return radius - Math.hypot(radius - side, radius - up);
}
