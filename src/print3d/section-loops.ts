import { shrinkRing } from '../fit/offset-shapes.ts';
import { type Box, boxOf, NM_PER_MM, type Point } from '../geom/point.ts';
import type { Ring } from '../geom/ring.ts';
import type { Loop } from './solids.ts';

/** Millimetres as printed of a length in nanometres. */
export function asPrinted(length: number, scale: number): number {
  return (length / NM_PER_MM) * scale;
}

/** Nanometres of the real section of a length in millimetres as printed. */
export function asReal(length: number, scale: number): number {
  return (length / scale) * NM_PER_MM;
}

/** The box round an outline as printed, millimetres. */
export function printedBox(ring: Ring, scale: number): Box {
  const { minX, minY, maxX, maxY } = boxOf(ring);
  const [x0, y0] = [asPrinted(minX, scale), asPrinted(minY, scale)];
  return { minX: x0, minY: y0, maxX: asPrinted(maxX, scale), maxY: asPrinted(maxY, scale) };
}

/** An opening as a hole, clockwise, its drawing's origin at a place; millimetres. */
export function holeLoop(ring: Ring, scale: number, [x, y]: readonly [number, number]): Loop {
  return ring.map((p): readonly [number, number] => [x + asPrinted(p.x, scale), y + asPrinted(p.y, scale)]).reverse();
}

/**
 * A blade with the fitting gap taken off all round, as it stands with its tip up: up on the section is down on the bed.
 * Counter-clockwise, millimetres; several outlines where the gap parts it, none where nothing is left.
 *
 * @param gap millimetres as printed.
 * @accuracy 42 nm of the real section, by `fit/offset-shapes`.
 * @check tests/unit/print3d/section-loops.test.ts
 */
export function bladeLoops(ring: Ring, scale: number, gap: number, [x, y]: readonly [number, number]): Loop[] {
  const turned = (p: Point): readonly [number, number] => [x + asPrinted(p.x, scale), y - asPrinted(p.y, scale)];
  return shrinkRing(ring, asReal(gap, scale)).map((outline) => outline.map(turned).reverse());
}
