import type { SolidBox } from './solid-picture.ts';
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
 * The eye that sees a whole box, from where a view says, with its nearness and shift.
 *
 * @param aspect width of the picture by its height.
 * @returns the box's corners lie within the picture at nearness 1, and none is nearer to an edge than a few hundredths.
 * @check tests/unit/app/block-turned-view.test.ts
 */
export function fitEye(box: SolidBox, view: TurnedView, aspect: number): Eye {
  const out = eyeDirection(view);
  // From straight above, "up" on the screen is away from the front.
  const right = { x: Math.cos(view.turn), y: Math.sin(view.turn), z: 0 };
  const up = {
    x: -Math.sin(view.turn) * Math.sin(view.lift),
    y: Math.cos(view.turn) * Math.sin(view.lift),
    z: Math.cos(view.lift),
  };
  const middle = [0, 1, 2].map((i) => (box.least[i] + box.most[i]) / 2);
  const half = [0, 1, 2].map((i) => Math.max(1e-3, (box.most[i] - box.least[i]) / 2));
  const radius = Math.hypot(...half);
  const tanUp = Math.tan((LENS_DEGREES * Math.PI) / 360);
  const tanRight = tanUp * aspect;
  let distance = 0;
  for (const corner of CORNERS) {
    const [x, y, z] = corner.map((sign, i) => sign * half[i]);
    const along = (axis: { x: number; y: number; z: number }) => x * axis.x + y * axis.y + z * axis.z;
    const beside = Math.max(Math.abs(along(right)) / tanRight, Math.abs(along(up)) / tanUp);
    distance = Math.max(distance, beside * MARGIN + along(out));
  }
  const moved = (axis: 'x' | 'y' | 'z', i: number) =>
    middle[i] - radius * (view.right * right[axis] + view.up * up[axis]);
  const towards = [moved('x', 0), moved('y', 1), moved('z', 2)] as const;
  return {
    at: [towards[0] + out.x * distance, towards[1] + out.y * distance, towards[2] + out.z * distance],
    towards,
    up: [up.x, up.y, up.z],
    near: Math.max(distance - 3 * radius, radius * 0.01),
    far: distance + 3 * radius,
    // The picture is enlarged and the eye stays where it is, so it is never inside of anything.
    zoom: view.near,
  };
}

const SIGNS = [-1, 1] as const;
const CORNERS = SIGNS.flatMap((x) => SIGNS.flatMap((y) => SIGNS.map((z) => [x, y, z] as const)));
