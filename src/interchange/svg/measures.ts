import type { Affine } from '../../geom/affine.ts';

/** Pixels of CSS in one unit. A pixel is 1/96 inch, an inch 25.4 mm. */
const PIXELS: Readonly<Record<string, number>> = {
  '': 1,
  px: 1,
  in: 96,
  cm: 96 / 2.54,
  mm: 96 / 25.4,
  q: 96 / 101.6,
  pt: 96 / 72,
  pc: 16,
};

/** A length as written: its number, and its unit in small letters. */
export interface Length {
  readonly number: number;
  readonly unit: string;
}

/** Width and height that a percentage is a part of, in user units; null where the drawing does not say. */
export interface Viewport {
  readonly width: number | null;
  readonly height: number | null;
}

/** The rectangle of user units that a viewport shows. */
export interface ViewBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const LENGTH = /^\s*([-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)\s*(%|[a-zA-Z]*)\s*$/;
const NUMBERS = /^\s*[-+.\deE]+(?:[\s,]+[-+.\deE]+){3}\s*$/;

/**
 * A length such as `2.1mm`, or null where it is none that has a size of its own: a word, NaN, a font's unit.
 *
 * @source CSS Values and Units Module Level 3, W3C 2024, section 6.2 (absolute lengths).
 * @check tests/unit/interchange/svg-pieces.test.ts
 */
export function readLength(text: string): Length | null {
  const hit = LENGTH.exec(text);
  if (!hit) return null;
  const unit = hit[2].toLowerCase();
  const number = Number(hit[1]);
  if (!Number.isFinite(number) || (unit !== '%' && !Object.hasOwn(PIXELS, unit))) return null;
  return { number, unit };
}

/** Whether a length names a unit of the workshop, not pixels or a part of something. */
export function isPhysical({ unit }: Length): boolean {
  return unit !== '' && unit !== 'px' && unit !== '%';
}

/** A length in pixels, which are user units where no view box says otherwise; a percentage is one of `whole`. */
export function toPixels({ number, unit }: Length, whole: number | null): number | null {
  if (unit !== '%') return number * PIXELS[unit];
  return whole === null ? null : (number * whole) / 100;
}

/** The four numbers of a `viewBox`, or null where it is not well written. */
export function readViewBox(text: string): ViewBox | null {
  if (!NUMBERS.test(text)) return null;
  const [x, y, width, height] = text
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  return [x, y, width, height].every(Number.isFinite) && width >= 0 && height >= 0 ? { x, y, width, height } : null;
}

/** Where free room goes: before the picture, on both sides, behind it. */
const ALIGNMENTS: Readonly<Record<string, number>> = { Min: 0, Mid: 0.5, Max: 1 };
const ASPECT = /^\s*(?:defer\s+)?(none|x(Min|Mid|Max)Y(Min|Mid|Max))(?:\s+(meet|slice))?\s*$/;

/**
 * The map from user units to the viewport that shows them.
 *
 * @param aspect the value of `preserveAspectRatio`; one that is not understood counts as `xMidYMid meet`.
 * @param box must have a width and a height.
 * @source Scalable Vector Graphics (SVG) 2, W3C Candidate Recommendation 2018, section 8.2 (the computation).
 * @check tests/unit/interchange/svg-pieces.test.ts, tests/browser/svg-against-browser.test.ts
 */
export function viewBoxMap(box: ViewBox, width: number, height: number, aspect: string): Affine {
  const [, align = '', alignX = 'Mid', alignY = 'Mid', fit = 'meet'] = ASPECT.exec(aspect) ?? [];
  const across = width / box.width;
  const down = height / box.height;
  if (align === 'none') return [across, 0, 0, down, -box.x * across, -box.y * down];
  const scale = fit === 'slice' ? Math.max(across, down) : Math.min(across, down);
  const left = (width - box.width * scale) * ALIGNMENTS[alignX];
  const top = (height - box.height * scale) * ALIGNMENTS[alignY];
  return [scale, 0, 0, scale, left - box.x * scale, top - box.y * scale];
}
