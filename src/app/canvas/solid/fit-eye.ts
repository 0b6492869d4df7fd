import type { SolidPoint } from './solid-picture.ts';
import { eyeDirection, type TurnedView } from './turned-view.ts';

/** Where the eye stands and what it looks at; millimetres. */
export interface Eye {
  readonly at: readonly [number, number, number];
  readonly towards: readonly [number, number, number];
  /** Upwards on the screen. */
  readonly up: readonly [number, number, number];
  /** Nearest and furthest that is drawn. */
  readonly near: number;
  readonly far: number;
  /** How much larger than what the lens alone shows. */
  readonly zoom: number;
}

/** Angle of view from top to bottom, degrees: a long lens, so that sections look hardly distorted. */
export const LENS_DEGREES = 22;

/** Room left round what is seen. */
const MARGIN = 1.06;

/**
 * The eye that sees all points, from where a view says, with its nearness and shift.
 *
 * @param points at least one, millimetres.
 * @param aspect width of the picture by its height.
 * @returns at nearness 1 all points lie within the picture, in its middle, and it is nearly filled one way.
 * @check tests/unit/app/block-turned-view.test.ts
 */
export function fitEye(points: readonly SolidPoint[], view: TurnedView, aspect: number): Eye {
  const axes = axesOf(view);
  const spans = axes.map((axis) => spanOf(points, axis));
  const [right, up, out] = spans;
  const radius = Math.max(1e-3, Math.hypot(...spans.map(({ half }) => half)));
  const tanUp = Math.tan((LENS_DEGREES * Math.PI) / 360);
  const tanRight = tanUp * aspect;
  const placed = points.map(
    (point): SolidPoint => [along(point, axes[0]), along(point, axes[1]), along(point, axes[2]) - out.middle],
  );
  const { across, above, distance } = aimAt(placed, [right.middle, up.middle], [tanRight, tanUp], radius);
  const towards = placeAt(axes, [across - view.right * radius, above - view.up * radius, out.middle]);
  return {
    at: [0, 1, 2].map((i) => towards[i] + axes[2][i] * distance) as unknown as SolidPoint,
    towards,
    up: axes[1],
    near: Math.max(distance - 3 * radius, radius * 0.01),
    far: distance + 3 * radius,
    // The picture is enlarged and the eye stays where it is, so it is never inside of anything.
    zoom: view.near,
  };
}

/** So often the aim is brought nearer to the middle: what is near looks larger, so that it is not the middle of the spans. */
const AIMS = 8;

/** Where the eye aims, and from how far, so that all points are within the picture and their picture is in its middle. */
function aimAt(
  points: readonly SolidPoint[],
  [right, up]: readonly [number, number],
  [tanRight, tanUp]: readonly [number, number],
  least: number,
): { readonly across: number; readonly above: number; readonly distance: number } {
  const farEnough = (across: number, above: number) =>
    points.reduce((far, [x, y, z]) => {
      const beside = Math.max(Math.abs(x - across) / tanRight, Math.abs(y - above) / tanUp);
      return Math.max(far, beside * MARGIN + z);
    }, least);
  let [across, above, distance] = [right, up, farEnough(right, up)];
  for (let i = 0; i < AIMS; i++) {
    const middle = (k: 0 | 1, aim: number) => {
      const seen = points.map((point) => (point[k] - aim) / (distance - point[2]));
      return aim + ((Math.min(...seen) + Math.max(...seen)) / 2) * distance;
    };
    [across, above] = [middle(0, across), middle(1, above)];
    distance = farEnough(across, above);
  }
  return { across, above, distance };
}

/** Right and up on the screen, and towards the eye; from straight above, up is away from the front. */
function axesOf(view: TurnedView): readonly [SolidPoint, SolidPoint, SolidPoint] {
  const { turn, lift } = view;
  const out = eyeDirection(view);
  return [
    [Math.cos(turn), Math.sin(turn), 0],
    [-Math.sin(turn) * Math.sin(lift), Math.cos(turn) * Math.sin(lift), Math.cos(lift)],
    [out.x, out.y, out.z],
  ];
}

function along([x, y, z]: SolidPoint, axis: SolidPoint): number {
  return x * axis[0] + y * axis[1] + z * axis[2];
}

function spanOf(points: readonly SolidPoint[], axis: SolidPoint): { readonly middle: number; readonly half: number } {
  const places = points.map((point) => along(point, axis));
  const [least, most] = [Math.min(...places), Math.max(...places)];
  return { middle: (least + most) / 2, half: (most - least) / 2 };
}

/** The point that is so far along each of three axes. */
function placeAt(axes: readonly SolidPoint[], far: SolidPoint): SolidPoint {
  return [0, 1, 2].map((i) => far[0] * axes[0][i] + far[1] * axes[1][i] + far[2] * axes[2][i]) as unknown as SolidPoint;
}
