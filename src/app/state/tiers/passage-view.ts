import { type Box, boxOf, NM_PER_MM, type Point } from '../../../geom/point.ts';
import { boundariesOf, type Region } from '../../../geom/region.ts';
import type { Ring } from '../../../geom/ring.ts';
import type { Passage } from '../../../passage/passage.ts';
import type { Profile } from '../../../profile/profile.ts';

/** A keyway where it lies round the common blank. */
export interface PlacedOpening {
  readonly id: string;
  readonly name: string;
  readonly ring: Ring;
  /** The move as an SVG transform in millimetres. */
  readonly at: string;
  /** Nanometres. */
  readonly box: Box;
}

/** The keyways of a passage that the family has. */
export function placedOpenings({ members }: Passage, openings: readonly Profile[]): PlacedOpening[] {
  const profiles = new Map(openings.map((opening) => [opening.id, opening]));
  return members.flatMap(({ id, move }) => {
    const opening = profiles.get(id);
    if (!opening) return [];
    const { minX, minY, maxX, maxY } = boxOf(opening.ring);
    const box = { minX: minX + move.x, minY: minY + move.y, maxX: maxX + move.x, maxY: maxY + move.y };
    const at = `translate(${move.x / NM_PER_MM} ${move.y / NM_PER_MM})`;
    return [{ id, name: opening.name, ring: opening.ring, at, box }];
  });
}

/** The box round all that is drawn, millimetres; null where there is nothing. */
export function boxRound({ blank }: Passage, placed: readonly PlacedOpening[]): Box | null {
  const corners = placed.flatMap(({ box }) => [
    { x: box.minX, y: box.minY },
    { x: box.maxX, y: box.maxY },
  ]);
  const all: readonly Point[] = blank ? [...corners, ...blank.ring] : corners;
  if (all.length === 0) return null;
  const { minX, minY, maxX, maxY } = boxOf(all);
  return { minX: minX / NM_PER_MM, minY: minY / NM_PER_MM, maxX: maxX / NM_PER_MM, maxY: maxY / NM_PER_MM };
}

/** Pixels a millimetre, and the pixel of the drawing's origin. */
export interface PassageView {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

/** The view in which a box in millimetres fills a picture, with room at its edges and for the ruler at its left. */
export function viewOf(
  { minX, minY, maxX, maxY }: Box,
  { width, height }: { readonly width: number; readonly height: number },
  { margin, ruler }: { readonly margin: number; readonly ruler: number },
): PassageView {
  const [wide, high] = [Math.max(20, width - ruler - 2 * margin), Math.max(20, height - 2 * margin)];
  const scale = Math.min(wide / (maxX - minX), high / (maxY - minY));
  return {
    scale,
    x: ruler + margin + wide / 2 - (scale * (minX + maxX)) / 2,
    y: margin + high / 2 + (scale * (minY + maxY)) / 2,
  };
}

/** Every boundary of a region. */
export function regionBoundaries(region: Region): (readonly Point[])[] {
  return boundariesOf(region);
}

/** A region as an SVG path in pixels, so that its hatch is as coarse at every scale. */
export function pixelPath(region: Region, { scale, x, y }: PassageView): string {
  const place = (p: Point) =>
    `${(x + (p.x / NM_PER_MM) * scale).toFixed(2)} ${(y - (p.y / NM_PER_MM) * scale).toFixed(2)}`;
  return boundariesOf(region)
    .map((boundary) => `M${boundary.map(place).join('L')}Z`)
    .join('');
}

/** The pixel of a height above the back of the blank, nanometres. */
export function pixelOfHeight(height: number, view: PassageView): number {
  return view.y - (height / NM_PER_MM) * view.scale;
}
