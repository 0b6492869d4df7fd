import { type Affine, compose, IDENTITY, rotation, scaling, translation } from '../../geom/affine.ts';

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
  translate: { counts: [1, 2], map: ([x, y = 0]) => translation(x, y) },
  scale: { counts: [1, 2], map: ([x, y = x]) => scaling(x, y) },
  rotate: { counts: [1, 3], map: ([angle, x, y]) => rotation(angle, x, y) },
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
