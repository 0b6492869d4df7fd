import svgpath from 'svgpath';
import type { PathPart } from './path-part.ts';

/** Longest path data of one element, in characters. */
export const MAX_PATH_CHARACTERS = 2_000_000;

/** Runs of numbers longer than this are given their command anew: the parser's time grows with the square of a run. */
const LONG_RUN = 4_000;

/** Most characters of arcs in one run, whose flags may stand without gaps and so cannot be counted out. */
const MAX_ARC_RUN = 100_000;

/** Numbers put under one command. */
const NUMBERS_A_COMMAND = 600;

const NUMBER = /[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?/g;
const RUN = /[A-DF-Za-df-z][^A-DF-Za-df-z]*/g;

/** The parts of a path, or what is wrong with its data, in words. */
export type PathRead =
  | { readonly ok: true; readonly parts: readonly PathPart[] }
  | { readonly ok: false; readonly what: string };

/**
 * The parts of a `d` attribute: absolute, shorthand curves written out, horizontal and vertical lines as lines. Arcs
 * stay arcs.
 *
 * @returns every part, or why there are none; a path is taken whole or not at all, since a section that ends where its
 *   data breaks would look sound.
 * @source Scalable Vector Graphics (SVG) 1.1, second edition, W3C 2011, section 8.3. A number with a needless zero in
 *   front, such as `007`, is refused by the parser although the standard allows it.
 * @check tests/unit/interchange/svg-pieces.test.ts
 */
export function readPathData(data: string): PathRead {
  if (data.length > MAX_PATH_CHARACTERS) return refuse(`has ${data.length} characters, over ${MAX_PATH_CHARACTERS}`);
  const catmull = /[rR]/.exec(data);
  if (catmull) return refuse(`holds the command ${catmull[0]}, which SVG does not know`);
  const broken = breakRuns(data);
  if (broken === null) return refuse('holds a run of numbers that cannot be read');
  const path = svgpath(broken);
  const mistake = mistakeOf(path);
  if (mistake) return refuse(sayMistake(mistake, broken));
  const parts: PathPart[] = [];
  path
    .abs()
    .unshort()
    .iterate((segment, _index, x, y) => {
      parts.push(takePart(segment as readonly [string, ...number[]], x, y));
    });
  const endless = parts.some(([, ...numbers]) => !numbers.every(Number.isFinite));
  return endless ? refuse('holds a number that is too large') : { ok: true, parts };
}

function refuse(what: string): PathRead {
  return { ok: false, what };
}

function takePart([command, ...n]: readonly [string, ...number[]], x: number, y: number): PathPart {
  if (command === 'H') return ['L', n[0], y];
  if (command === 'V') return ['L', x, n[0]];
  if (command === 'Z' || command === 'z') return ['Z'];
  return [command, ...n] as unknown as PathPart;
}

/** The parser keeps its complaint in a field that its types do not tell of; empty where there is none. */
function mistakeOf(path: unknown): string {
  return (path as { readonly err?: string }).err ?? '';
}

function sayMistake(mistake: string, data: string): string {
  const [, words, digits] = /^(?:SvgPath: )?(.*?)(?: \(at pos (\d+)\))?$/.exec(mistake) ?? [];
  if (digits === undefined) return `is not path data: ${words}`;
  const at = Number(digits);
  const near = data.slice(Math.max(0, at - 15), at + 15).replace(/\s+/g, ' ');
  return `is not path data at character ${at + 1}, near "${near}"`;
}

/** The same data with the command repeated in long runs; null where a long run is not made of numbers. */
function breakRuns(data: string): string | null {
  if (data.length <= LONG_RUN) return data;
  let sound = true;
  const broken = data.replace(RUN, (run) => {
    if (run.length <= LONG_RUN) return run;
    const pieces = /^[aA]/.test(run) ? keepArcs(run) : breakRun(run);
    sound &&= pieces !== null;
    return pieces ?? '';
  });
  return sound ? broken : null;
}

function keepArcs(run: string): string | null {
  return run.length > MAX_ARC_RUN ? null : run;
}

function breakRun(run: string): string | null {
  const body = run.slice(1);
  if (/[^\s,0]|,\s*,/.test(body.replace(NUMBER, '0'))) return null;
  const numbers = body.match(NUMBER) ?? [];
  // What follows the first point of a move is a line.
  const next = run[0] === 'm' ? 'l' : run[0].replace('M', 'L');
  let broken = '';
  for (let i = 0; i < numbers.length; i += NUMBERS_A_COMMAND)
    broken += (i === 0 ? run[0] : next) + numbers.slice(i, i + NUMBERS_A_COMMAND).join(' ');
  return broken;
}
