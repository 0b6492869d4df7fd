import { readFileSync } from 'node:fs';
import type { DrawingCase, ExpectedLoop } from './dxf-drawings.ts';

/** The rectangle that most tables hold: 2.0 x 8.4 mm. */
const PLAIN: ExpectedLoop = { label: '', area: 2 * 8.4, width: 2, height: 8.4, x: 0, y: 0, arcs: 0 };

const RUFF: ExpectedLoop = { area: 6, width: 3, height: 2, x: 5, y: 0, arcs: 0 };

const INCHES: ExpectedLoop = { area: 0.08 * 0.32 * 25.4 ** 2, width: 2.032, height: 8.128, arcs: 0 };

/** Tables of points and the outlines in them. */
export const CSV_TABLES: readonly DrawingCase[] = [
  { file: 'plain-commas.csv', stated: false, loops: [PLAIN] },
  { file: 'header-mm.csv', loops: [{ area: 2 * 8.4 + Math.PI / 2, width: 2, height: 9.4, arcs: 1 }] },
  { file: 'header-inches.csv', nmPerUnit: 25.4e6, loops: [INCHES] },
  { file: 'header-thou.tsv', nmPerUnit: 25.4e3, loops: [INCHES] },
  { file: 'semicolons-decimal-comma.csv', stated: false, loops: [PLAIN] },
  { file: 'tabs-decimal-comma.tsv', stated: false, loops: [PLAIN] },
  { file: 'spaces.txt', stated: false, loops: [PLAIN] },
  { file: 'spaces-decimal-comma.txt', stated: false, loops: [PLAIN] },
  {
    file: 'named-parts.csv',
    stated: false,
    loops: [
      { ...PLAIN, label: 'Dunlin' },
      { ...RUFF, label: 'Ruff, old', area: 6 + Math.PI / 2, width: 4, arcs: 1 },
    ],
  },
  {
    file: 'name-only-in-first-row.csv',
    stated: false,
    loops: [
      { ...PLAIN, label: 'Dunlin' },
      { ...RUFF, label: 'Ruff' },
    ],
  },
  { file: 'blank-lines.csv', stated: false, loops: [PLAIN, RUFF] },
  {
    file: 'titles.csv',
    stated: false,
    loops: [
      { ...PLAIN, label: 'Dunlin' },
      { ...RUFF, label: 'Ruff' },
    ],
  },
  { file: 'headers-again.csv', loops: [PLAIN, RUFF] },
  { file: 'comments.csv', nmPerUnit: 25.4e6, loops: [INCHES] },
  { file: 'quoted-mark-crlf.csv', loops: [PLAIN] },
  { file: 'sep-line.csv', stated: false, loops: [PLAIN] },
  { file: 'closed-by-repeat.csv', stated: false, loops: [PLAIN] },
  { file: 'exponents-and-signs.csv', stated: false, loops: [PLAIN] },
  { file: 'units-in-cells.csv', loops: [PLAIN] },
  { file: 'printed-minus.csv', stated: false, loops: [{ ...PLAIN, x: -1 }] },
  { file: 'more-columns.csv', stated: false, loops: [PLAIN], notes: [/columns not read: "point", "remark"/] },
  { file: 'bars.txt', stated: false, loops: [PLAIN] },
  { file: 'zeros-as-third-column.csv', stated: false, loops: [PLAIN] },
  { file: 'old-line-ends.csv', stated: false, loops: [PLAIN] },
  { file: 'apostrophe-names.csv', stated: false, loops: [{ ...PLAIN, label: '=Dunlin' }] },
  { file: 'circle-of-two.csv', stated: false, loops: [{ area: Math.PI * 1.5 ** 2, width: 3, height: 3, arcs: 2 }] },
];

/** The text of a table of the corpus. */
export function csvTable(file: string): string {
  return readFileSync(new URL(`./drawings/csv/${file}`, import.meta.url), 'utf8');
}
