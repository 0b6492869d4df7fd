/** From where solids are looked at; z is up. A value: every turn makes a new one. */
export interface TurnedView {
  /** Round the upright axis, radians: 0 from the front (the side of small y), a quarter from the right. */
  readonly turn: number;
  /** Above level, radians: a quarter is straight from above. */
  readonly lift: number;
  /** How much larger than the picture that shows all. */
  readonly near: number;
  /** How far what lies in the middle is moved, to the right and up on the screen, in radii of the scene. */
  readonly right: number;
  readonly up: number;
}

/** The views that have a key of their own. */
export const NAMED_VIEWS = {
  /** Parts on a bed. */
  corner: { turn: 0.4, lift: 0.85, near: 1, right: 0, up: 0 },
  /** A block that stands up, with what goes into it: lower, so that its front is seen. */
  before: { turn: 0.55, lift: 0.4, near: 1, right: 0, up: 0 },
  front: { turn: 0, lift: 0, near: 1, right: 0, up: 0 },
  right: { turn: Math.PI / 2, lift: 0, near: 1, right: 0, up: 0 },
  top: { turn: 0, lift: Math.PI / 2, near: 1, right: 0, up: 0 },
} as const satisfies Record<string, TurnedView>;

/** The name of one of {@link NAMED_VIEWS}. */
export type ViewName = keyof typeof NAMED_VIEWS;

const FULL = 2 * Math.PI;
const LEAST_NEAR = 0.5;
const MOST_NEAR = 12;
/** What lies in the middle stays within so many radii of the scene. */
const MOST_ASIDE = 1.2;
/** A drag over so many pixels is half a turn. */
const PIXELS_HALF_TURN = 480;

const within = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value));

/**
 * The view after a turn; it goes round as often as one likes, but never over the top, so that up stays up.
 *
 * @param by radians, `right` to look from further right, `up` from higher.
 * @check tests/unit/app/block-turned-view.test.ts
 */
export function turnView(view: TurnedView, by: { readonly right: number; readonly up: number }): TurnedView {
  const turn = (((view.turn + by.right) % FULL) + FULL) % FULL;
  return { ...view, turn, lift: within(view.lift + by.up, -Math.PI / 2, Math.PI / 2) };
}

/** The view after a drag of the pointer: what is taken hold of follows the hand. Pixels, y down. */
export function dragView(view: TurnedView, dx: number, dy: number): TurnedView {
  const perPixel = Math.PI / PIXELS_HALF_TURN;
  return turnView(view, { right: -dx * perPixel, up: dy * perPixel });
}

/** The view nearer by a factor, within limits. */
export function zoomView(view: TurnedView, factor: number): TurnedView {
  return { ...view, near: within(view.near * factor, LEAST_NEAR, MOST_NEAR) };
}

/** The view with the scene moved on the screen; in radii of the scene, to the right and up. */
export function moveView(view: TurnedView, right: number, up: number): TurnedView {
  return {
    ...view,
    right: within(view.right + right, -MOST_ASIDE, MOST_ASIDE),
    up: within(view.up + up, -MOST_ASIDE, MOST_ASIDE),
  };
}

const TURN_STEP = Math.PI / 24;
const ZOOM_STEP = 1.2;
const MOVE_STEP = 0.08;

/** What a key does to a view; null where it does nothing. With shift the arrows move instead of turn. */
export function keyedView(view: TurnedView, key: string, shift: boolean, home: ViewName = 'corner'): TurnedView | null {
  const [right, up] = ARROWS[key] ?? [0, 0];
  if (right !== 0 || up !== 0)
    return shift
      ? moveView(view, right * MOVE_STEP, up * MOVE_STEP)
      : turnView(view, { right: right * TURN_STEP, up: up * TURN_STEP });
  if (key === '+' || key === '=') return zoomView(view, ZOOM_STEP);
  if (key === '-' || key === '_') return zoomView(view, 1 / ZOOM_STEP);
  const name = key === 'Home' || key === '1' ? home : NAMED_KEYS[key];
  return name ? NAMED_VIEWS[name] : null;
}

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

const NAMED_KEYS: Readonly<Record<string, ViewName>> = {
  2: 'front',
  3: 'top',
  4: 'right',
};

/** Where the eye is, seen from the middle of the scene: a vector of length 1. */
export function eyeDirection({ turn, lift }: TurnedView): {
  readonly x: number;
  readonly y: number;
  readonly z: number;
} {
  return { x: Math.sin(turn) * Math.cos(lift), y: -Math.cos(turn) * Math.cos(lift), z: Math.sin(lift) };
}

/** The view in words, for those who cannot see it: "from the front right, 32° above". */
export function viewWords({ turn, lift, near }: TurnedView): string {
  const degrees = Math.round((lift * 180) / Math.PI);
  const zoom = Math.abs(near - 1) < 0.01 ? '' : `, ${near.toFixed(1)} times as large`;
  if (degrees === 90) return `from above${zoom}`;
  if (degrees === -90) return `from below${zoom}`;
  const side = SIDES[Math.round((turn / FULL) * SIDES.length) % SIDES.length];
  const height = degrees === 0 ? ', level' : `, ${Math.abs(degrees)}° ${degrees > 0 ? 'above' : 'below'}`;
  return `from the ${side}${height}${zoom}`;
}

const SIDES = ['front', 'front right', 'right', 'back right', 'back', 'back left', 'left', 'front left'] as const;
