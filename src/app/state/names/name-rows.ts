import type { Family } from '../../../family/family.ts';
import type { NameKind } from '../../../family/name-entry.ts';
import { type Register, registerOf, type Sense, sectionsOf } from '../../../names/register.ts';
import type { NameColumn, RegisterLook } from './names-state.ts';

/** One row of the register as the table shows it. */
export interface NameRow {
  /** Stays the same while the row stands for the same thing. */
  readonly key: string;
  readonly sense: Sense;
  /** What it stands for, in words. */
  readonly stands: string;
  /** Whether it names a section or a profile that the family has no longer. */
  readonly gone: boolean;
}

/** What each kind of thing is called, as the file writes it. */
export const NAME_KINDS: readonly NameKind[] = ['keyway', 'section', 'blank', 'tool', 'series'];

/** Where a name stands, in a word. */
export const SOURCE_WORDS: Readonly<Record<Sense['source'], string>> = {
  profile: 'own name',
  section: 'section',
  register: 'register',
};

const rowsBefore = new WeakMap<Register, readonly NameRow[]>();

/** Every name of a family as a row: first the entries of the register, then own names; the same value for the same family. */
export function nameRows(family: Family): readonly NameRow[] {
  const register = registerOf(family);
  const known = rowsBefore.get(register);
  if (known) return known;
  const profiles = new Map(family.profiles.map((profile) => [profile.id, profile.name]));
  const sections = new Set(sectionsOf(family));
  const [own, entries] = [register.senses.filter((one) => one.index === null), register.senses.filter(isEntry)];
  const rows = [...entries, ...own].map((sense) => toRow(sense, profiles, sections));
  rowsBefore.set(register, rows);
  return rows;
}

function isEntry({ index }: Sense): boolean {
  return index !== null;
}

/** Key of the row that an entry of the file's register has, by its place there. */
export function entryKey(index: number): string {
  return `entry ${index}`;
}

function toRow(sense: Sense, profiles: ReadonlyMap<string, string>, sections: ReadonlySet<string>): NameRow {
  const { source, profile, section, index } = sense;
  const key = source === 'register' ? entryKey(index ?? 0) : `${source} ${profile ?? section}`;
  const named = profile === null ? undefined : profiles.get(profile);
  const noProfile = profile !== null && named === undefined;
  const noSection = section !== null && !sections.has(section);
  return { key, sense, stands: standsFor(sense, named), gone: source === 'register' && (noProfile || noSection) };
}

/** "Heron blank, five chambers", "Heron section", or what a profile was called by its id where it is gone. */
function standsFor({ source, profile, section }: Sense, named: string | undefined): string {
  if (source === 'profile') return section === null ? '' : `${section} section`;
  if (profile !== null) return named ?? profile;
  return section === null ? '' : `${section} section`;
}

/** How many rows have each kind, and how many stand for what is gone. */
export interface RowCounts {
  readonly all: number;
  readonly kinds: Readonly<Record<NameKind, number>>;
  readonly inRegister: number;
  readonly gone: number;
}

/** Counts rows by kind. */
export function countRows(rows: readonly NameRow[]): RowCounts {
  const kinds = { keyway: 0, section: 0, blank: 0, tool: 0, series: 0 };
  let [inRegister, gone] = [0, 0];
  for (const row of rows) {
    kinds[row.sense.kind]++;
    if (row.sense.source === 'register') inRegister++;
    if (row.gone) gone++;
  }
  return { all: rows.length, kinds, inRegister, gone };
}

/**
 * The rows that a look leaves, in its order. Rows that are equal in the column keep their order; empty cells
 * come last either way.
 *
 * @check tests/unit/app/name-rows.test.ts
 */
export function lookedAt(rows: readonly NameRow[], { search, only, sort }: RegisterLook): readonly NameRow[] {
  const words = search.toLowerCase().split(/\s+/).filter(Boolean);
  const left = rows.filter((row) => isAmong(row, only) && words.every((word) => heldBy(row).includes(word)));
  if (!sort) return left;
  return left.toSorted((a, b) => compareCells(cellText(a, sort.column), cellText(b, sort.column), sort.falling));
}

function isAmong({ sense, gone }: NameRow, only: RegisterLook['only']): boolean {
  if (only === 'gone') return gone;
  if (only === 'all') return true;
  return (sense.source === 'register') === (only === 'register');
}

const heldBefore = new WeakMap<NameRow, string>();

function heldBy(row: NameRow): string {
  const known = heldBefore.get(row);
  if (known !== undefined) return known;
  const { text, kind, scheme, supersededBy, note, chambers } = row.sense;
  const length = chambers === null ? '' : `${chambers} chambers`;
  const held = [text, kind, row.stands, scheme, supersededBy, note, length].filter(Boolean).join('\n').toLowerCase();
  heldBefore.set(row, held);
  return held;
}

/** What a cell of the table says; empty where nothing is known. */
export function cellText({ sense, stands }: NameRow, column: NameColumn): string {
  if (column === 'stands') return stands;
  if (column === 'source') return SOURCE_WORDS[sense.source];
  return String(sense[column] ?? '');
}

const inOrder = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

function compareCells(a: string, b: string, falling: boolean): number {
  if (a === '' || b === '') return Number(a === '') - Number(b === '');
  return (falling ? -1 : 1) * inOrder.compare(a, b);
}
