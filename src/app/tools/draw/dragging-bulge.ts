import type { Point } from '../../../geom/point.ts';
import { MAX_BULGE, type Vertex } from '../../../geom/vertex.ts';
import { setBulge } from '../../../profile/bend-edge.ts';
import { type DrawingView, type PixelPoint, toDrawing } from '../drawing-view.ts';
import type { DraggingBulge } from './gesture.ts';

/** Nearer than this to the chord an edge is straight, and nearer to a half circle it is one; in pixels. */
const STRAIGHT_PX = 5;
const HALF_PX = 4;

/** How far a round radius may move the middle of an arc from under the hand, in pixels. */
const ROUND_PX = 3;

/** The bulge that a hand asks for, and what it was drawn to: "straight", "half circle" or a round radius. */
export interface Bowed {
  readonly bulge: number;
  readonly word: string;
}

/**
 * The bulge of an edge whose middle stands as far off its chord as a point does: straight near the chord, a half circle
 * near one, else a radius of whole steps where one is near.
 *
 * @param step of the radius, nanometres; null to follow the hand freely.
 * @param scale pixels a nanometre.
 * @source the sagitta of a bulged edge is half its chord times the bulge (DXF group code 42).
 * @check tests/unit/app/draw-gestures.test.ts
 */
export function bulgeTowards(from: Point, to: Point, point: Point, step: number | null, scale: number): Bowed {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const half = Math.hypot(dx, dy) / 2;
  if (half === 0) return { bulge: 0, word: '' };
  const bow = ((point.x - from.x) * dy - (point.y - from.y) * dx) / (2 * half);
  const size = Math.abs(bow);
  if (step !== null && size * scale < STRAIGHT_PX) return { bulge: 0, word: 'straight' };
  if (step !== null && Math.abs(size - half) * scale < HALF_PX) return { bulge: Math.sign(bow), word: 'half circle' };
  const round = step === null ? null : roundBow(size, half, step);
  const taken = round !== null && Math.abs(round - size) * scale < ROUND_PX ? round : size;
  const bulge = Math.min(MAX_BULGE, taken / half) * Math.sign(bow);
  return { bulge, word: taken === round ? 'round radius' : '' };
}

/** The bow nearest to `bow` whose arc over a chord of `2 half` has a radius of whole steps. */
function roundBow(bow: number, half: number, step: number): number {
  const radius = (half * half + bow * bow) / (2 * bow);
  const wanted = Math.max(half, Math.round(radius / step) * step);
  const depth = Math.sqrt(Math.max(0, wanted * wanted - half * half));
  return bow > half ? wanted + depth : (half * half) / (wanted + depth);
}

/** The held edge bows to where the pointer is. */
export function dragBulgeTo(
  { edge, grip }: DraggingBulge,
  at: PixelPoint,
  view: DrawingView,
  base: readonly Vertex[],
  step: number | null,
): { readonly wanted: readonly Vertex[]; readonly bowed: Bowed } {
  const point = toDrawing(view, { px: at.px - grip.px, py: at.py - grip.py });
  const bowed = bulgeTowards(base[edge], base[(edge + 1) % base.length], point, step, view.scale);
  return { wanted: setBulge(base, edge, bowed.bulge), bowed };
}
