import { NM_PER_INCH, NM_PER_MM, type Point } from '../../../geom/point.ts';

/** One press of an arrow key: a hundredth of a millimetre or half a thousandth of an inch; ten times that with shift. */
const STEP = { mm: 0.01 * NM_PER_MM, in: 0.0005 * NM_PER_INCH } as const;
const SHIFT_TIMES = 10;

const DIRECTIONS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
};

/** The movement that a key asks for, in nanometres; null for any other key. */
export function nudgeOf(key: string, shift: boolean, units: 'mm' | 'in'): Point | null {
  const direction = Object.hasOwn(DIRECTIONS, key) ? DIRECTIONS[key] : null;
  if (!direction) return null;
  const step = STEP[units] * (shift ? SHIFT_TIMES : 1);
  return { x: direction.x * step, y: direction.y * step };
}
