import type { BedPlace } from './solid-picture.ts';

/** Distance of two rules of the bed, millimetres. */
const RULE = 20;

/**
 * The rules of a printer's bed, just under what stands on it.
 *
 * @returns six numbers a line, millimetres.
 * @check tests/unit/app/block-turned-view.test.ts
 */
export function bedLines({ x: left, y: front, size: [wide, deep] }: BedPlace): number[] {
  const z = -0.05;
  const across = steps(wide).flatMap((x) => [left + x, front, z, left + x, front + deep, z]);
  const along = steps(deep).flatMap((y) => [left, front + y, z, left + wide, front + y, z]);
  return [...across, ...along];
}

/** 0, every whole rule, and the end itself. */
function steps(length: number): number[] {
  const whole = Array.from({ length: Math.ceil(length / RULE - 1e-9) }, (_, i) => i * RULE);
  return [...whole, length];
}
