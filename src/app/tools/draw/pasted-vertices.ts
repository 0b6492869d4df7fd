import type { Units } from '../../../family/length-text.ts';
import { MAX_COORDINATE } from '../../../geom/point.ts';
import { MAX_BULGE, type Vertex, vertexAt } from '../../../geom/vertex.ts';
import { NM_OF_UNIT } from '../ruler-steps.ts';

/** Vertices that were pasted as text, or what is wrong with them. */
export type PastedVertices =
  | { readonly ok: true; readonly vertices: readonly Vertex[] }
  | { readonly ok: false; readonly words: string };

/** Most lines that are taken at once; larger outlines are imported. */
const MOST_LINES = 10_000;

/**
 * Vertices of a block of text, as a spreadsheet or this table copies it: one a line, x and y, and where an arc follows a
 * third number, the bulge. Numbers are parted by tabs, semicolons, spaces or commas; with a tab, a semicolon or a space
 * between them they may have decimal commas. A first line of words is left out.
 *
 * @param units of the lengths.
 * @check tests/unit/app/draw-typed-length.test.ts
 */
export function readPasted(text: string, units: Units): PastedVertices {
  const lines = text.split(/\r\n|\r|\n/).map((line) => line.trim());
  const rows = lines.flatMap((line, i) => (line === '' ? [] : [{ numbers: numbersIn(line), line: i + 1 }]));
  if (rows.length > 0 && rows[0].numbers.every(Number.isNaN)) rows.shift();
  if (rows.length === 0) return { ok: false, words: 'Nothing to paste: copy lines of x and y.' };
  if (rows.length > MOST_LINES)
    return { ok: false, words: `Too many lines to paste: ${rows.length}. Import them as a file.` };
  const vertices: Vertex[] = [];
  for (const { numbers, line } of rows) {
    const fault = faultOf(numbers, NM_OF_UNIT[units]);
    if (fault) return { ok: false, words: `Not pasted: line ${line} ${fault}.` };
    const [x, y, bulge] = numbers;
    vertices.push(vertexAt(whole(x * NM_OF_UNIT[units]), whole(y * NM_OF_UNIT[units]), bulge));
  }
  return { ok: true, vertices };
}

/** Vertices as lines of x, y and, where an arc follows, its bulge, parted by tabs; what {@link readPasted} reads back. */
export function copyText(vertices: readonly Vertex[], units: Units): string {
  const length = (nm: number) => String(Number((nm / NM_OF_UNIT[units]).toFixed(9)));
  return vertices
    .map(({ x, y, bulge }) => [length(x), length(y), ...(bulge ? [String(bulge)] : [])].join('\t'))
    .join('\n');
}

/** The numbers of a line; NaN stands for what is none. */
function numbersIn(line: string): number[] {
  const plain = line.replaceAll('−', '-');
  const parts = plain.split(parting(plain));
  return parts.filter((part) => part !== '').map((part) => Number(part.replace(/^\((.*)\)$/, '$1').replace(',', '.')));
}

/** What parts the numbers of a line: tabs or semicolons, else commas, else spaces, which leave commas to decimals. */
function parting(line: string): RegExp {
  if (/[\t;]/.test(line)) return /\s*[\t;]\s*/;
  return /,\s/.test(line) || !/\s/.test(line) ? /\s*,\s*/ : /\s+/;
}

function faultOf(numbers: readonly number[], perUnit: number): string | null {
  if (numbers.length < 2) return 'has fewer than two numbers';
  if (numbers.length > 3) return 'has more than x, y and bulge';
  if (!numbers.every(Number.isFinite)) return 'has something that is no number';
  if (Math.max(Math.abs(numbers[0]), Math.abs(numbers[1])) * perUnit > MAX_COORDINATE)
    return 'lies further than 47 mm from the origin';
  return Math.abs(numbers[2] ?? 0) > MAX_BULGE ? `has a bulge beyond ${MAX_BULGE}` : null;
}

function whole(nm: number): number {
  return Math.round(nm) + 0;
}
