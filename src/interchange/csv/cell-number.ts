import { sayText } from '../json/file-fault.ts';

/** A cell as a number, or what is wrong with it and what to do. */
export type CellNumber =
  | { readonly ok: true; readonly value: number; readonly mark: DecimalMark | null; readonly unit: string }
  | { readonly ok: false; readonly what: string; readonly cure: string };

/** What parts a number's fraction from its whole. */
export type DecimalMark = '.' | ',';

const PLAIN = String.raw`[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d+)?`;
const NUMBER = new RegExp(`^(${PLAIN})\\s*(mm|cm|um|µm|μm|in|")?$`);

const GIVE_NUMBER = 'Give a plain number such as 1.25.';

/** What else a cell may be that looks like a number, or that a spreadsheet would show as one. */
const REFUSALS: readonly (readonly [RegExp, string, string])[] = [
  [/^[=@]/, 'is a formula, which is not worked out here', 'Copy the values instead of the formulas.'],
  [/^[+-]\s*[A-Za-z(]/, 'is a formula, which is not worked out here', 'Copy the values instead of the formulas.'],
  [/^#/, 'is an error of the spreadsheet', 'Mend the formula there and copy the values again.'],
  [/^[+-]?0[xX]/, 'is a hexadecimal number', GIVE_NUMBER],
  [
    /^[+-]?\d{1,3}(?:[.,'’\s]\d{3})+(?:[.,]\d*)?$/,
    'has thousands separators',
    'Write it without them, such as 1234.5.',
  ],
];

/**
 * The number in a cell: digits with a point or a comma, an exponent, and at most a unit behind it. Nothing is evaluated.
 *
 * @param cell as written; spaces round it and a printed minus sign are allowed.
 * @check tests/unit/interchange/csv-read.test.ts
 */
export function cellNumber(cell: string): CellNumber {
  const text = cell.trim().replace(/^[−–]/, '-');
  if (text === '') return { ok: false, what: 'is empty', cure: GIVE_NUMBER };
  const found = NUMBER.exec(text);
  if (!found) {
    const [, what, cure] = REFUSALS.find(([pattern]) => pattern.test(text)) ?? [null, 'is not a number', GIVE_NUMBER];
    return { ok: false, what: `${sayText(text)} ${what}`, cure };
  }
  const value = Number(found[1].replace(',', '.'));
  if (!Number.isFinite(value)) return { ok: false, what: `${sayText(text)} is too large`, cure: GIVE_NUMBER };
  const [mark = null] = /[.,]/.exec(found[1]) ?? [];
  return { ok: true, value: value + 0, mark: mark as DecimalMark | null, unit: found[2] ?? '' };
}

/** Whether a cell is meant as a number, sound or not: it begins like one. */
export function looksNumeric(cell: string): boolean {
  return /^\s*[+\-−–]?[.,]?\d/.test(cell);
}
