import { withEntrants } from '../family/entry-table.ts';
import { openingsOf } from '../family/family.ts';
import { MOST_NAMES, nameList } from '../family/name-list.ts';
import { tierNames } from '../family/tier-sentence.ts';
import { type TierNode, tiersOf } from '../family/tiers.ts';
import type { Verdict } from '../fit/fit.ts';
import { outlineKey } from '../profile/outline-key.ts';
import type { Profile } from '../profile/profile.ts';
import type { SheetGround } from './sheet-ground.ts';
import type { ChartOrder } from './sheet-order.ts';

/** A keyway of the chart: a column. */
export interface ChartColumn {
  readonly opening: Profile;
  /** As it stands in lists: its section where no other keyway has it. */
  readonly name: string;
  /** What enters this keyway and no other; where some of it enters and some is tight, what enters. */
  readonly base: ChartRow | null;
  /** Whether its section was squeezed in later between its neighbours. */
  readonly isInBetween: boolean;
}

/** Blanks and tools that enter the very same keyways, with the same verdicts: a line of the chart. */
export interface ChartRow {
  /** Those with different outlines, in chart order. */
  readonly pictured: readonly Profile[];
  /** "Reed group blank"; several names where several have the same reach. */
  readonly name: string;
  /** "enters 3 of 10: Heron, Smew (tight) and Bittern". */
  readonly words: string;
  /** The same without counting names away. */
  readonly allWords: string;
  /** Its mark in each column; null where it does not go in. */
  readonly marks: readonly (Verdict | null)[];
  readonly tier: number;
  readonly rank: TierNode['rank'];
}

/** What stands on a section chart, whatever the paper. */
export interface ChartContent {
  readonly columns: readonly ChartColumn[];
  /** What enters several keyways, from the lowest tier up; what enters all stands last. What is tight in one alone comes first. */
  readonly rows: readonly ChartRow[];
  /** Names of what enters no keyway. */
  readonly outside: readonly string[];
}

/**
 * The content of a section chart: keyways in chart order, over them what enters one alone, then tier by tier what enters
 * several.
 *
 * @check tests/unit/publish/chart.test.ts
 */
export function chartContent(ground: SheetGround, order: Pick<ChartOrder, 'blanksOnly' | 'inBetween'>): ChartContent {
  const { family } = ground;
  const kinds = new Map(family.profiles.map(({ id, kind }) => [id, kind]));
  const table = order.blanksOnly ? withEntrants(ground.table, (id) => kinds.get(id) === 'blank') : ground.table;
  const { nodes } = order.blanksOnly ? tiersOf(table) : ground.tiers;
  const openings = openingsOf(family);
  const nameOf = tierNames(family);
  const rowsOf = (node: TierNode) => chartRows(node, { ground, openings, nameOf });
  const base = new Map<string, ChartRow>();
  const rows: ChartRow[] = [];
  for (const node of nodes) {
    if (node.openings.length === 0) continue;
    const own = rowsOf(node);
    if (node.openings.length > 1) rows.push(...own);
    else {
      const first = own.find(({ marks }) => marks.includes('enters')) ?? own[0];
      base.set(node.openings[0], first);
      rows.push(...own.filter((row) => row !== first));
    }
  }
  return {
    columns: openings.map((opening) => ({
      opening,
      name: nameOf(opening.id),
      base: base.get(opening.id) ?? null,
      isInBetween: order.inBetween?.includes(opening.id) ?? opening.inBetween ?? false,
    })),
    rows: rows.sort(byTier),
    outside: nodes.filter(({ rank }) => rank === 'nothing').flatMap(({ entrants }) => entrants.map(nameOf)),
  };
}

interface RowSource {
  readonly ground: SheetGround;
  readonly openings: readonly Profile[];
  readonly nameOf: (id: string) => string;
}

/** A line for each set of verdicts: a tight blank must not stand under the mark of one that has its running clearance. */
function chartRows(node: TierNode, source: RowSource): ChartRow[] {
  const { family, fits } = source.ground;
  const entered = new Set(node.openings);
  const marksOf = (id: string) => {
    const verdicts = fits.fits[fits.profiles.indexOf(id)];
    return source.openings.map((opening) =>
      entered.has(opening.id) ? (verdicts?.[fits.openings.indexOf(opening.id)]?.verdict ?? null) : null,
    );
  };
  const groups = new Map<string, { marks: (Verdict | null)[]; members: Profile[] }>();
  for (const id of node.entrants) {
    const member = family.profiles.find((profile) => profile.id === id);
    const marks = marksOf(id);
    const group = groups.get(marks.join()) ?? { marks, members: [] };
    groups.set(marks.join(), group);
    if (member) group.members.push(member);
  }
  return [...groups.values()].map((group) => chartRow(node, group, source));
}

function chartRow(
  { tier, rank }: TierNode,
  { marks, members }: { readonly marks: readonly (Verdict | null)[]; readonly members: readonly Profile[] },
  { openings, nameOf }: RowSource,
): ChartRow {
  const told = (most: number) => enteredWords(openings, marks, { nameOf, most });
  return {
    pictured: withDifferentOutlines(members),
    name: memberNames(members),
    words: told(MOST_NAMES),
    allWords: told(openings.length),
    marks,
    tier,
    rank,
  };
}

function enteredWords(
  openings: readonly Profile[],
  marks: readonly (Verdict | null)[],
  { nameOf, most }: { readonly nameOf: (id: string) => string; readonly most: number },
): string {
  const of = openings.length;
  const entered = openings.flatMap(({ id }, i) =>
    marks[i] ? [{ name: nameOf(id), isTight: marks[i] === 'tight' }] : [],
  );
  const tight = entered.filter(({ isTight }) => isTight).length;
  const allTight = tight === entered.length;
  const verb = allTight ? 'tight in' : 'enters';
  const names = entered.map(({ name, isTight }) => (isTight && !allTight ? `${name} (tight)` : name));
  if (entered.length < of) return `${verb} ${entered.length} of ${of}: ${nameList(names, most)}`;
  if (of <= MOST_NAMES) return `${verb} all ${of}: ${nameList(names)}`;
  return tight > 0 && !allTight ? `enters all ${of} keyways, ${tight} of them tight` : `${verb} all ${of} keyways`;
}

/** "Heron blank, 5 and 6 chambers" for one outline in several lengths, else all names. */
function memberNames(members: readonly Profile[]): string {
  const names = members.map(({ name }) => name);
  const lengths = members.flatMap(({ chambers }) => chambers ?? []);
  const start = sharedStart(names);
  if (
    members.length < 2 ||
    start === '' ||
    lengths.length < members.length ||
    withDifferentOutlines(members).length > 1
  )
    return nameList(names);
  return `${start}, ${nameList(lengths.map(String))} chambers`;
}

/** The words that some names begin with, all of them; '' where they differ from the first. */
function sharedStart(names: readonly string[]): string {
  const words = names.map((name) => name.split(/[\s,;]+/));
  const until = words[0].findIndex((word, i) => words.some((other) => other[i] !== word));
  return words[0].slice(0, until < 0 ? undefined : until).join(' ');
}

function withDifferentOutlines(members: readonly Profile[]): Profile[] {
  const seen = new Set<string>();
  return members.filter(({ ring }) => {
    const key = outlineKey(ring);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** What enters one keyway alone first, then lower tiers; of one tier what enters fewer, then what begins further left; what enters all last. */
function byTier(a: ChartRow, b: ChartRow): number {
  const count = (row: ChartRow) => row.marks.filter((mark) => mark !== null).length;
  const first = (row: ChartRow) => row.marks.findIndex((mark) => mark !== null);
  const all = (row: ChartRow) => (row.rank === 'all' ? 1 : 0);
  const several = (row: ChartRow) => (count(row) > 1 ? 1 : 0);
  return several(a) - several(b) || all(a) - all(b) || a.tier - b.tier || first(a) - first(b) || count(a) - count(b);
}
