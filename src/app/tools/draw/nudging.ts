import { NM_PER_INCH, NM_PER_MM, type Point } from '../../../geom/point.ts';

/** One press of an arrow key on a vertex: plain, with Shift, with Alt; nanometres. */
const STEPS = {
  mm: { plain: 0.01 * NM_PER_MM, shift: 0.1 * NM_PER_MM, alt: 0.001 * NM_PER_MM },
  in: { plain: 0.0005 * NM_PER_INCH, shift: 0.005 * NM_PER_INCH, alt: 0.00005 * NM_PER_INCH },
} as const;

const DIRECTIONS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
};

/**
 * The movement that a key asks for: a hundredth of a millimetre or half a thousandth of an inch; ten times that with
 * Shift, a tenth with Alt.
 *
 * @returns nanometres; null for any other key.
 */
export function nudgeOf(key: string, shift: boolean, alt: boolean, units: 'mm' | 'in'): Point | null {
  const direction = Object.hasOwn(DIRECTIONS, key) ? DIRECTIONS[key] : null;
  if (!direction) return null;
  const { plain, shift: large, alt: small } = STEPS[units];
  const fine = alt ? small : plain;
  const step = shift ? large : fine;
  return { x: direction.x * step + 0, y: direction.y * step + 0 };
}
