import { looksNumeric } from './cell-number.ts';
import { unitOfName } from './length-units.ts';

/** One row of a table, with its number in the text from 1. */
export interface TableRow {
  readonly number: number;
  readonly cells: readonly string[];
}

/** Which cell of a row holds what; `name` and `bulge` are null where the table has none. */
export interface Columns {
  readonly x: number;
  readonly y: number;
  readonly bulge: number | null;
  readonly name: number | null;
  /** How many cells a row may have. */
  readonly width: number;
  /** Nanometres in one unit as the header states it; null where it states none. */
  readonly nmPerUnit: number | null;
  /** Headings that mean nothing here. */
  readonly ignored: readonly string[];
}

/** The columns, or what is wrong with the header. */
export type ColumnsFound =
  | { readonly ok: true; readonly columns: Columns }
  | { readonly ok: false; readonly what: string; readonly cure: string };

type Meaning = 'x' | 'y' | 'bulge' | 'name';

const MEANINGS: readonly (readonly [Meaning, RegExp])[] = [
  ['x', /^x([ _-]?coord(inate)?)?$/],
  ['y', /^y([ _-]?coord(inate)?)?$/],
  ['bulge', /^bulge$/],
  ['name', /^(name|section|profile|outline|label|part|id)$/],
];

/** A longer cell is no heading; to look for one in it would take long. */
const LONGEST_HEADING = 100;

/** What a heading means and the unit that it names: `x (mm)`, `y [in]`, `x_mm`, `Y / inch`. */
function meaningOf(heading: string): { meaning: Meaning | null; unit: string } {
  const text = heading.replace(/\s+/g, ' ').trim().toLowerCase();
  if (text.length > LONGEST_HEADING) return { meaning: null, unit: '' };
  const split = /^(.*?)\s*(?:[([]\s*(?:in\s+)?([^)\]]*?)\s*[)\]]|[/,_]\s*([a-zµμ"]+)|\s(?:in\s+)?([a-zµμ"]+))$/.exec(
    text,
  );
  const unit = split?.[2] ?? split?.[3] ?? split?.[4] ?? '';
  const known = (name: string) => MEANINGS.find(([, pattern]) => pattern.test(name))?.[0] ?? null;
  const whole = known(text);
  return whole ? { meaning: whole, unit: '' } : { meaning: split ? known(split[1]) : null, unit };
}

/** Whether a row is a header: a cell of it is called x or y, or no cell of it begins like a number and there are two. */
export function isHeader({ cells }: TableRow): boolean {
  const filled = cells.filter((cell) => cell !== '');
  if (filled.some(looksNumeric)) return false;
  return filled.some((cell) => ['x', 'y'].includes(meaningOf(cell).meaning ?? ''));
}

const NAME_COLUMNS = 'Name the columns x, y and, where there are arcs, bulge.';

/** The columns that a header names. */
export function columnsOfHeader({ cells }: TableRow): ColumnsFound {
  const headings = cells.map((cell) => ({ cell, ...meaningOf(cell) }));
  const twice = MEANINGS.map(([m]) => m).find((m) => headings.filter(({ meaning }) => meaning === m).length > 1);
  if (twice) {
    const cure = 'Put the outlines one below the other, with an empty row between, or leave one of the columns out.';
    return { ok: false, what: `has more than one column for ${twice}`, cure };
  }
  const at = (meaning: Meaning) => headings.findIndex((heading) => heading.meaning === meaning);
  if (at('x') < 0 || at('y') < 0) {
    return { ok: false, what: `has no column ${at('x') < 0 ? 'x' : 'y'}`, cure: NAME_COLUMNS };
  }
  const named = [headings[at('x')], headings[at('y')]].map(({ unit }) => unit).filter((unit) => unit !== '');
  const units = new Set(named.map(unitOfName));
  const unknown = named.find((unit) => unitOfName(unit) === null);
  if (unknown !== undefined)
    return { ok: false, what: `names the unit "${unknown.slice(0, 20)}", which is not known`, cure: 'Give mm or in.' };
  if (units.size > 1) return { ok: false, what: 'names two units for x and y', cure: 'Give both in the same unit.' };
  const place = (meaning: Meaning) => (at(meaning) < 0 ? null : at(meaning));
  const ignored = headings.flatMap(({ cell, meaning }) => (meaning === null && cell !== '' ? [cell] : []));
  const [nmPerUnit = null] = units;
  const columns = { x: at('x'), y: at('y'), bulge: place('bulge'), name: place('name'), width: cells.length };
  return { ok: true, columns: { ...columns, nmPerUnit, ignored } };
}

/** Whether a cell is a formula or what programs write where they have no number, and so no name. */
function isFailedNumber(cell: string): boolean {
  return /^([=+\-@#]|[+-]?(nan|inf|infinity|null|none)$)/i.test(cell);
}

/** The columns of a table without a header, by its first row of numbers: x, y, bulge, perhaps with a name before. */
export function columnsOfRow({ cells }: TableRow): ColumnsFound {
  const named = cells.length > 2 && !looksNumeric(cells[0]) && !isFailedNumber(cells[0]) ? 1 : 0;
  const filled = cells.reduce((last, cell, i) => (cell === '' ? last : i + 1), 0);
  const count = filled - named;
  if (count < 2 || count > 3) {
    const what = `has ${count} ${count === 1 ? 'number' : 'numbers'}, must be x and y, and perhaps bulge`;
    const cure = 'Give two numbers a row; where the comma is the decimal mark, part them by semicolons or tabs.';
    return { ok: false, what, cure };
  }
  const columns = { x: named, y: named + 1, bulge: count > 2 ? named + 2 : null, name: named === 1 ? 0 : null };
  return { ok: true, columns: { ...columns, width: filled, nmPerUnit: null, ignored: [] } };
}
