import { boxOf, NM_PER_MM, type Point } from '../../../geom/point.ts';
import { boundariesOf, type Region } from '../../../geom/region.ts';
import { type Comparison, partsApart } from '../../../identify/compare-outlines.ts';
import type { Profile } from '../../../profile/profile.ts';

/** SVG paths in millimetres, y up: both outlines, and the parts that only one of them covers. */
export interface LaidPaths {
  readonly known: string;
  readonly laid: string;
  readonly onlyUnknown: string;
  readonly onlyKnown: string;
}

/** The paths of an unknown laid on a section. */
export function laidPaths({ laid }: Comparison, { ring }: Pick<Profile, 'ring'>): LaidPaths {
  const { onlyUnknown, onlyKnown } = partsApart(laid, ring);
  const region = (parts: Region) => boundariesOf(parts).map(pathOf).join('');
  return { known: pathOf(ring), laid: pathOf(laid), onlyUnknown: region(onlyUnknown), onlyKnown: region(onlyKnown) };
}

function pathOf(points: readonly Point[]): string {
  return `M${points.map(({ x, y }) => `${x / NM_PER_MM} ${y / NM_PER_MM}`).join('L')}Z`;
}

/** Outlines closer together than this lie on each other, nanometres. */
const SAME = 500;

/** Whether there is anything to enlarge. */
export function liesApart({ most }: Pick<Comparison, 'most'>): boolean {
  return most > SAME;
}

/** A size on the screen, pixels. */
export interface WindowSize {
  readonly width: number;
  readonly height: number;
}

/** A window onto the drawing: a rectangle of the picture in pixels, its middle in millimetres, and its scale. */
export interface LaidWindow extends WindowSize {
  readonly left: number;
  readonly top: number;
  readonly middle: Point;
  readonly pxPerMm: number;
}

/** Pixels kept free along the edges. */
const MARGIN = 14;

/** The share of the picture's width that the whole has beside an enlargement. */
const WHOLE = 0.42;

/** The window onto the whole: at the left of the picture where another one is to stand beside it, else all of it. */
export function wholeWindow(
  { ring }: Pick<Profile, 'ring'>,
  { laid, most }: Pick<Comparison, 'laid' | 'most'>,
  { width, height }: WindowSize,
): LaidWindow {
  const box = boxOf([...ring, ...laid]);
  const [wide, tall] = [(box.maxX - box.minX) / NM_PER_MM, (box.maxY - box.minY) / NM_PER_MM];
  const share = liesApart({ most }) ? width * WHOLE : width;
  const pxPerMm = Math.min((share - 2 * MARGIN) / wide, (height - 2 * MARGIN) / tall);
  const middle = { x: (box.minX + box.maxX) / 2 / NM_PER_MM, y: (box.minY + box.maxY) / 2 / NM_PER_MM };
  return { left: 0, top: 0, width: share, height, middle, pxPerMm };
}

/** The greatest distance is to be seen this large, pixels, where it is enlarged by no less and no more than these. */
const SEEN = 56;
const LEAST_ENLARGED = 2;
const MOST_ENLARGED = 12;

/** The window onto the place of the greatest distance, at the right of the whole. */
export function closeWindow(
  { at, nearest, most }: Pick<Comparison, 'at' | 'nearest' | 'most'>,
  size: WindowSize,
  whole: LaidWindow,
): LaidWindow {
  const room = size.width - whole.width - MARGIN;
  const side = Math.max(1, Math.min(room, size.height - 2 * MARGIN));
  const wanted = SEEN / (most / NM_PER_MM);
  const pxPerMm = Math.min(MOST_ENLARGED * whole.pxPerMm, Math.max(LEAST_ENLARGED * whole.pxPerMm, wanted));
  const middle = { x: (at.x + nearest.x) / 2 / NM_PER_MM, y: (at.y + nearest.y) / 2 / NM_PER_MM };
  const left = whole.width + (room - side) / 2;
  return { left, top: (size.height - side) / 2, width: side, height: side, middle, pxPerMm };
}

/** Where a place of the drawing, in nanometres, is in the picture. */
export function pixelIn({ left, top, width, height, middle, pxPerMm }: LaidWindow, { x, y }: Point): Point {
  return {
    x: left + width / 2 + (x / NM_PER_MM - middle.x) * pxPerMm,
    y: top + height / 2 - (y / NM_PER_MM - middle.y) * pxPerMm,
  };
}
