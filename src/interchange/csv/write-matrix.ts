import type { EntryMatrix } from '../../family/entry-matrix.ts';
import type { Family, FileUnits } from '../../family/family.ts';
import { NM_PER_UNIT } from '../../family/file-length.ts';
import type { Fit } from '../../fit/fit.ts';
import type { Profile } from '../../profile/profile.ts';
import { uniqueNames } from '../unique-names.ts';
import { formatTable } from './table-text.ts';

/** How the matrix is written. */
export interface MatrixWriting {
  readonly units: FileUnits;
  /** What parts the cells: a comma where not given. */
  readonly separator?: ',' | ';' | '\t';
  /** `table`: a row for each blank, two columns for each keyway. `pairs`: a row for each pair. `table` where not given. */
  readonly form?: 'table' | 'pairs';
}

/** Digits after the point of a margin: a tenth of a micrometre, or what is nearest to it in inches. */
const DIGITS: Readonly<Record<FileUnits, number>> = { mm: 4, in: 6 };

type Cell = string | number;

/**
 * The verdict matrix as a table for a spreadsheet. A margin is a plain number whose unit stands in the head: the gap all
 * round where it goes in, minus the depth by which it collides where it is blocked, nothing where that was not measured.
 * A name that a spreadsheet would take for a formula gets an apostrophe; equal names get their ids behind them.
 *
 * @param family whose profiles the ids of the matrix are; an id that it does not have stands for its own name.
 * @accuracy margins to 0.1 um, or 0.000001 in.
 * @check tests/unit/interchange/csv-matrix.test.ts, tests/outside/csv-matrix.test.ts
 */
export function writeMatrix(family: Family, matrix: EntryMatrix, writing: MatrixWriting): string {
  const { separator = ',', form = 'table' } = writing;
  const names = namesOf(family);
  const rows = form === 'pairs' ? pairRows(matrix, names, writing) : tableRows(family, matrix, names, writing);
  return formatTable(rows, separator);
}

function tableRows(
  family: Family,
  { profiles, openings, fits }: EntryMatrix,
  names: (id: string) => string,
  { units }: MatrixWriting,
): Cell[][] {
  const known = new Map(family.profiles.map((profile) => [profile.id, profile]));
  const head = openings.flatMap((id) => [`${names(id)}: verdict`, `${names(id)}: margin (${units})`]);
  const body = profiles.map((id, i) => [
    names(id),
    ...factsOf(known.get(id)),
    ...openings.flatMap((_, k) => answerOf(fits[i][k], units)),
  ]);
  return [['name', 'kind', 'section', 'chambers', ...head], ...body];
}

function pairRows(
  { profiles, openings, fits }: EntryMatrix,
  names: (id: string) => string,
  { units }: MatrixWriting,
): Cell[][] {
  const body = profiles.flatMap((blank, i) =>
    openings.map((opening, k) => [names(blank), names(opening), ...answerOf(fits[i][k], units)]),
  );
  return [['blank or tool', 'keyway', 'verdict', `margin (${units})`], ...body];
}

function factsOf(profile: Profile | undefined): Cell[] {
  return [profile?.kind ?? '', oneLine(profile?.section ?? ''), profile?.chambers ?? ''];
}

function answerOf({ verdict, clearance }: Fit, units: FileUnits): Cell[] {
  if (!Number.isFinite(clearance)) return [verdict, ''];
  return [verdict, Number((clearance / NM_PER_UNIT[units]).toFixed(DIGITS[units])) + 0];
}

/** Keyways and what goes in are told apart among their own kind: a blank may be called as its keyway is. */
function namesOf({ profiles }: Family): (id: string) => string {
  const named = new Map<string, string>();
  for (const isOpening of [true, false]) {
    const some = profiles.filter(({ kind }) => (kind === 'opening') === isOpening);
    for (const [i, name] of uniqueNames(some, oneLine).entries()) named.set(some[i].id, name);
  }
  return (id) => named.get(id) ?? id;
}

function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}
