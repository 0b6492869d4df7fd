import { type FileFault, sayText } from '../json/file-fault.ts';
import type { NameFile } from '../json/schema.ts';
import { formatTable } from './table-text.ts';
import { readWordTable, type WordColumn, type WordRow } from './word-table.ts';

/** The names of a table with what is worth telling of it; or every fault with its row. */
export type NamesRead =
  | { readonly ok: true; readonly names: readonly NameFile[]; readonly notes: readonly FileFault[] }
  | { readonly ok: false; readonly faults: readonly FileFault[] };

type Column = 'text' | 'kind' | 'section' | 'scheme' | 'chambers' | 'supersededBy' | 'profile' | 'note';

/** The columns, in the order that they have in a table without a header. */
const COLUMNS: readonly WordColumn<Column>[] = [
  { key: 'text', heading: /^(name|text)$/ },
  { key: 'kind', heading: /^(kind|what|kind of thing)$/ },
  { key: 'section', heading: /^section$/ },
  { key: 'scheme', heading: /^(scheme|naming scheme|list|catalogue|catalog)$/ },
  { key: 'chambers', heading: /^(number of )?chambers$/ },
  { key: 'supersededBy', heading: /^(superseded ?by|replaced by|now)$/ },
  { key: 'profile', heading: /^(profile|stands for)$/ },
  { key: 'note', heading: /^(note|remark)s?$/ },
];

/** What a cell of the column `kind` may say, in small letters. */
const KINDS: Readonly<Record<string, NameFile['kind']>> = {
  keyway: 'keyway',
  opening: 'keyway',
  section: 'section',
  'key section': 'section',
  blank: 'blank',
  'key blank': 'blank',
  tool: 'tool',
  series: 'series',
};

/** Most faults that are told; more of them seldom help. */
const MOST_FAULTS = 20;

/** Longest name, section or scheme that a family file takes. */
const LONGEST = 200;

/**
 * The names in a table, pasted or from a file: columns name, kind, section, scheme, chambers, superseded by; also profile
 * (an id) and note. A row that stands in the table twice counts once.
 *
 * @param text CSV with commas, semicolons, tabs or bars, with a header or in the order above.
 * @returns names as a family file writes them; or every fault with its row, and no name.
 * @check tests/unit/interchange/csv-names.test.ts
 */
export function readNames(text: string): NamesRead {
  const table = readWordTable(text, COLUMNS);
  if (!table.ok) return table;
  const faults: FileFault[] = [];
  const notes = [...table.notes];
  const names = new Map<string, NameFile>();
  for (const row of table.rows) {
    const name = readRow(row, faults);
    if (faults.length >= MOST_FAULTS) break;
    if (!name) continue;
    const key = JSON.stringify(name);
    if (names.has(key))
      notes.push({
        path: `row ${row.number}`,
        what: `${sayText(name.text)} stands above already`,
        cure: 'Nothing: it counts once.',
      });
    names.set(key, name);
  }
  if (faults.length > 0) return { ok: false, faults };
  if (names.size === 0)
    return { ok: false, faults: [{ path: 'table', what: 'holds no names', cure: 'Give one row for each name.' }] };
  return { ok: true, names: [...names.values()], notes };
}

function readRow({ number, cells }: WordRow<Column>, faults: FileFault[]): NameFile | null {
  const before = faults.length;
  const tell = (what: string, cure: string) => faults.push({ path: `row ${number}`, what, cure });
  if (cells.text === '') tell('has no name', 'Fill in the column name, or leave the row out.');
  for (const { key } of COLUMNS)
    if (key !== 'note' && cells[key].length > LONGEST)
      tell(`${sayText(cells[key])} is longer than ${LONGEST} characters`, 'Shorten it.');
  const kind = readKind(cells.kind, tell);
  const chambers = readChambers(cells.chambers, tell);
  if (faults.length > before || kind === null) return null;
  const { section, profile, scheme, supersededBy, note } = cells;
  return {
    text: cells.text,
    kind,
    ...(section === '' ? {} : { section }),
    ...(profile === '' ? {} : { profile }),
    ...(scheme === '' ? {} : { scheme }),
    ...(chambers === null ? {} : { chambers }),
    ...(supersededBy === '' ? {} : { supersededBy }),
    ...(note === '' ? {} : { note }),
  };
}

type Tell = (what: string, cure: string) => void;

const GIVE_KIND = 'Give keyway, section, blank, tool or series.';

function readKind(cell: string, tell: Tell): NameFile['kind'] | null {
  const key = cell.toLowerCase().replace(/\s+/g, ' ');
  if (Object.hasOwn(KINDS, key)) return KINDS[key];
  tell(cell === '' ? 'has no kind' : `${sayText(cell)} is no kind of thing`, GIVE_KIND);
  return null;
}

/** At most this many pin positions a family file takes. */
const MOST_CHAMBERS = 12;

function readChambers(cell: string, tell: Tell): number | null {
  if (cell === '') return null;
  const digits = /^(\d{1,4})(\.0*)?(?:[ -]?chambers?)?$/i.exec(cell)?.[1];
  const count = digits === undefined ? Number.NaN : Number(digits);
  if (count >= 1 && count <= MOST_CHAMBERS) return count;
  tell(
    `${sayText(cell)} is no number of chambers`,
    `Give a whole number from 1 to ${MOST_CHAMBERS}, or leave it empty.`,
  );
  return null;
}

/**
 * Names as a table that {@link readNames} reads back the same: a header, then one row each.
 *
 * @check tests/unit/interchange/csv-names.test.ts
 */
export function writeNames(names: readonly NameFile[]): string {
  const header = ['name', 'kind', 'section', 'scheme', 'chambers', 'superseded by', 'profile', 'note'];
  const rows = names.map((name) => [
    name.text,
    name.kind,
    name.section ?? '',
    name.scheme ?? '',
    name.chambers ?? '',
    name.supersededBy ?? '',
    name.profile ?? '',
    name.note ?? '',
  ]);
  return formatTable([header, ...rows], ',');
}
