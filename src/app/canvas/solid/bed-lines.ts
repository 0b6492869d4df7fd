import type { BedPlace } from './solid-picture.ts';

/** Distance of two rules of the bed, millimetres. */
export const BED_RULE = 20;

/**
 * The rules of a printer's bed, just under what stands on it; where only a piece of the bed is drawn they run out open.
 *
 * @returns six numbers a line, millimetres.
 * @check tests/unit/app/block-turned-view.test.ts
 */
export function bedLines({ x: left, y: front, size, drawn }: BedPlace): number[] {
  const z = -0.05;
  const [wide, deep] = drawn;
  const across = steps(wide, size[0]).flatMap((x) => [left + x, front, z, left + x, front + deep, z]);
  const along = steps(deep, size[1]).flatMap((y) => [left, front + y, z, left + wide, front + y, z]);
  return [...across, ...along];
}

/** 0 and every whole rule within what is drawn, and the end where the bed ends there. */
function steps(drawn: number, length: number): number[] {
  const whole = Array.from({ length: Math.ceil(drawn / BED_RULE - 1e-9) }, (_, i) => i * BED_RULE);
  return drawn < length ? whole : [...whole, length];
}
