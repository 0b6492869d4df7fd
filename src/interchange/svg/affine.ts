import type { Point } from '../../geom/point.ts';

/** An affine map (x, y) -> (a x + c y + e, b x + d y + f), as the six numbers of SVG's `matrix(a b c d e f)`. */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

/** The map that leaves everything where it is. */
export const IDENTITY: Affine = [1, 0, 0, 1, 0, 0];

/** The map that does `inner` first, then `outer`. */
export function compose(outer: Affine, inner: Affine): Affine {
  const [a, b, c, d, e, f] = outer;
  const [p, q, r, s, t, u] = inner;
  return [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f];
}

/** The image of a place. */
export function mapPoint([a, b, c, d, e, f]: Affine, x: number, y: number): Point {
  return { x: a * x + c * y + e + 0, y: b * x + d * y + f + 0 };
}

/** The image of a displacement. */
export function mapVector([a, b, c, d]: Affine, x: number, y: number): Point {
  return { x: a * x + c * y, y: b * x + d * y };
}

const NUMBER = /[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?/g;
const STEP = /\s*([a-zA-Z]+)\s*\(([^()]*)\)\s*,?/y;

/**
 * What a list of numbers looks like when each is put as 0 and each run of blanks as one. There is one way only to match
 * what parts two numbers: with two, a list with a mistake at its end would take for ever.
 */
const LIST = /^0(?:(?: ,? ?|, ?)?0)*$/;

/** What each function of a `transform` does with its numbers; angles in degrees. */
const FUNCTIONS: Readonly<Record<string, { counts: readonly number[]; map: (n: readonly number[]) => Affine }>> = {
  matrix: { counts: [6], map: ([a, b, c, d, e, f]) => [a, b, c, d, e, f] },
  translate: { counts: [1, 2], map: ([x, y = 0]) => [1, 0, 0, 1, x, y] },
  scale: { counts: [1, 2], map: ([x, y = x]) => [x, 0, 0, y, 0, 0] },
  rotate: { counts: [1, 3], map: ([angle, x = 0, y = 0]) => rotation(angle, x, y) },
  skewX: { counts: [1], map: ([angle]) => [1, 0, Math.tan(radians(angle)), 1, 0, 0] },
  skewY: { counts: [1], map: ([angle]) => [1, Math.tan(radians(angle)), 0, 1, 0, 0] },
};

/**
 * The map that a `transform` attribute stands for, or what is wrong with it, in words. Nothing is guessed: a function
 * that is not known or has the wrong number of numbers would move a section silently if it were passed over.
 *
 * @param text the attribute's value: functions in a row, the last one applied first.
 * @source Scalable Vector Graphics (SVG) 1.1, second edition, W3C 2011, section 7.6.
 * @check tests/unit/interchange/svg-pieces.test.ts
 */
export function readTransform(text: string): Affine | string {
  const steps = text.trim();
  if (steps === '' || steps === 'none') return IDENTITY;
  let whole: Affine = IDENTITY;
  STEP.lastIndex = 0;
  while (STEP.lastIndex < steps.length) {
    const from = STEP.lastIndex;
    const hit = STEP.exec(steps);
    const numbers = hit && numbersOf(hit[2]);
    if (!numbers) return `is not understood from "${steps.slice(from, from + 30)}" on`;
    const known = Object.hasOwn(FUNCTIONS, hit[1]) ? FUNCTIONS[hit[1]] : null;
    if (!known) return `has the function "${hit[1].slice(0, 30)}", which SVG does not know`;
    if (!known.counts.includes(numbers.length)) return `gives ${hit[1]} ${numbers.length} numbers`;
    whole = compose(whole, known.map(numbers));
  }
  return whole.every(Number.isFinite) ? whole : 'holds a number that is too large';
}

function numbersOf(list: string): number[] | null {
  return LIST.test(list.replace(NUMBER, '0').replace(/\s+/g, ' ').trim())
    ? (list.match(NUMBER) ?? []).map(Number)
    : null;
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

/** Right angles come out exact, so that a section turned by 90 degrees keeps its whole numbers. */
function rotation(angle: number, x: number, y: number): Affine {
  const quarters = angle / 90;
  const exact = Number.isInteger(quarters);
  const quarter = ((quarters % 4) + 4) % 4;
  const cos = exact ? [1, 0, -1, 0][quarter] : Math.cos(radians(angle));
  const sin = exact ? [0, 1, 0, -1][quarter] : Math.sin(radians(angle));
  return [cos, sin, -sin, cos, x - cos * x + sin * y, y - sin * x - cos * y];
}
