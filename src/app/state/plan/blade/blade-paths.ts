import type { BladeLimits } from '../../../../family/plan.ts';
import { NM_PER_MM, type Point } from '../../../../geom/point.ts';
import type { WardSite } from '../../../../plan/ward-sites.ts';
import { roundCorners } from '../../../../profile/round-corners.ts';

/** Where the blade stands in its picture: from nanometres to pixels. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  /** A length in pixels. */
  px(nm: number): number;
  x(nm: number): number;
  y(nm: number): number;
}

/** Room for the numbers beside the blade and round it, pixels. */
const BESIDE = 44;
const ROUND = 12;

/** The blade as large as there is room for; null where there is none. */
export function frameOf(
  { thickness, height: tall }: BladeLimits,
  { width, height }: { width: number; height: number },
): Frame | null {
  const wide = (width - 2 * BESIDE) / (thickness / NM_PER_MM);
  const high = (height - 2 * ROUND) / (tall / NM_PER_MM);
  const scale = Math.min(wide, high);
  if (!(scale > 0)) return null;
  const px = (nm: number) => (nm / NM_PER_MM) * scale;
  return {
    ...{ width, height, px },
    x: (nm) => width / 2 + px(nm - thickness / 2),
    y: (nm) => height / 2 - px(nm - tall / 2),
  };
}

function pathOf(points: readonly Point[], { x, y }: Frame): string {
  return `M${points.map((p) => `${x(p.x).toFixed(2)} ${y(p.y).toFixed(2)}`).join('L')}Z`;
}

/** The blade without a groove. */
export function bladePath({ thickness, height, backRadius }: BladeLimits, frame: Frame): string {
  const radius = Math.min(backRadius, thickness / 2, height);
  const corners = [
    { at: { x: 0, y: 0 }, radius },
    { at: { x: thickness, y: 0 }, radius },
    { at: { x: thickness, y: height }, radius: 0 },
    { at: { x: 0, y: height }, radius: 0 },
  ];
  return pathOf(roundCorners(corners), frame);
}

/** A groove at a site, so deep. */
export function sitePath(blade: BladeLimits, { side, bottom }: WardSite, depth: number, frame: Frame): string {
  const { grooveWidth, flank, rootRadius, thickness } = blade;
  const run = depth * Math.tan(flank);
  const line = roundCorners([
    { at: { x: 0, y: bottom }, radius: 0 },
    { at: { x: depth, y: bottom + run }, radius: rootRadius },
    { at: { x: depth, y: bottom + grooveWidth - run }, radius: rootRadius },
    { at: { x: 0, y: bottom + grooveWidth }, radius: 0 },
  ]);
  return pathOf(side === 'left' ? line : line.map(({ x, y }) => ({ x: thickness - x, y })), frame);
}
