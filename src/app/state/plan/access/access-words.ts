import { countWord } from '../../../../family/count-word.ts';
import type { Area, Plan } from '../../../../family/plan.ts';
import type { Access, AccessFault, PlannedBlank } from '../../../../plan/access.ts';
import { type WantedPair, wantedOf } from '../sections/sections-rows.ts';

/** How many pairs of a section and a blank must, must not, and may or may not. */
export function tallyPairs({ table }: Pick<Access, 'table'>): Readonly<Record<WantedPair, number>> {
  const tally = { must: 0, not: 0, free: 0 };
  for (const row of table) for (const cell of row) tally[wantedOf(cell)]++;
  return tally;
}

/** "12 sections, 17 blanks". */
export function neededWords({ sections, blanks }: Access): string {
  return `${countWord(sections.length, 'section')}, ${countWord(blanks.length, 'blank')}`;
}

type PlacedArea = Pick<Area, 'id' | 'parent'>;

/** How many areas a plan has more than before: "9 areas", "9 areas and 3 groups"; a group is no area of its own. */
export function addedAreaWords(before: readonly PlacedArea[], after: readonly PlacedArea[], last = ' and '): string {
  const had = new Set(before.map(({ id }) => id));
  const parents = new Set(after.map(({ parent }) => parent));
  const added = after.filter(({ id }) => !had.has(id));
  const groups = added.filter(({ id }) => parents.has(id)).length;
  const areas = countWord(added.length - groups, 'area');
  return groups > 0 ? `${areas}${last}${countWord(groups, 'group')}` : areas;
}

const RANKS = { base: 'base', group: 'group', 'all-section': 'all-section' } as const;

/** What a blank is among the others: "group, 3 keyways". */
export function rankWords({ rank, sections, free }: PlannedBlank): string {
  const more = free.length > 0 ? `, ${free.length} free` : '';
  return `${RANKS[rank]}, ${countWord(sections.length, 'section')}${more}`;
}

/** Who carries a blank: "Porter, Nurse and 3 more". */
export function carrierWords({ holders }: Pick<PlannedBlank, 'holders'>, plan: Plan, most = 3): string {
  const nameOf = new Map(plan.holders.map(({ id, name }) => [id, name]));
  const names = holders.map((id) => nameOf.get(id) ?? id);
  if (names.length === 0) return 'nobody yet';
  const shown = names.slice(0, names.length > most ? most - 1 : most);
  const more = names.length - shown.length;
  return more > 0 ? `${shown.join(', ')} and ${more} more` : shown.join(', ');
}

/** The names of the sections that a blank enters. */
export function sectionWords({ sections }: Pick<PlannedBlank, 'sections'>, access: Access, most = 12): string {
  const names = sections.slice(0, most).map((s) => access.sections[s].name);
  const more = sections.length - names.length;
  return more > 0 ? `${names.join(', ')} and ${more} more` : names.join(', ');
}

/** How many of each kind of fault there are, the graver first: "1 contradiction, 2 notes". */
export function faultWords(faults: readonly AccessFault[]): string {
  const count = (kind: AccessFault['kind']) => faults.filter((fault) => fault.kind === kind).length;
  const [wrong, empty, notes] = [count('contradiction'), count('empty'), count('note')];
  const parts = [
    wrong > 0 ? countWord(wrong, 'contradiction') : 'No contradiction',
    ...(empty > 0 ? [`${empty} to be filled in`] : []),
    ...(notes > 0 ? [countWord(notes, 'note')] : []),
  ];
  return parts.join(', ');
}

const KINDS = { contradiction: 'Contradiction', empty: 'Still empty', note: 'Note' } as const;

/** What kind of fault it is, in a word. */
export function faultKind({ kind }: AccessFault): string {
  return KINDS[kind];
}
