import { outlineKey } from '../profile/outline-key.ts';
import type { Profile } from '../profile/profile.ts';
import type { EntryTable } from './entry-table.ts';
import { type Family, openingsOf } from './family.ts';
import { MOST_NAMES, nameList } from './name-list.ts';

/** What a sentence about a row of the table needs besides the table. */
export interface TierWords {
  /** The name of a blank or tool, or of a keyway as it stands in a list of keyways; see {@link tierNames}. */
  nameOf(id: string): string;
  /** What stands in the way of a pair that does not go in: "left ward"; '' where that is not known. */
  blockedBy?(entrantId: string, openingId: string): string;
}

/** Most groups of keyways told with what blocks in them. */
const MOST_PARTS = 3;

/** Most keyways told by name for one such group. */
const MOST_BLOCKED = 4;

/**
 * What a blank enters and what blocks it elsewhere, in one sentence: "The Reed group blank enters 3 of 10 keyways:
 * Heron, Smew and Bittern; it is blocked in Ruff by the left ward, in Plover and Knot by the right ward, and in 4 more."
 *
 * Long lists name the first few and count the rest, so that the sentence stays readable with 200 keyways.
 *
 * @returns '' where the table has no such entrant.
 * @check tests/unit/family/tier-sentence.test.ts
 */
export function tierSentence(table: EntryTable, entrantId: string, words: TierWords): string {
  const row = table.goesIn[table.entrants.indexOf(entrantId)];
  if (!row) return '';
  const those = (wanted: boolean | null) => table.openings.filter((_, k) => row[k] === wanted);
  const [open, blocked, unknown] = [those(true), those(false), those(null)];
  const head = `${withArticle(words.nameOf(entrantId))} ${enteredWords(open, table.openings.length, unknown.length, words)}`;
  const parts = [head];
  if (blocked.length > 0) parts.push(`it is blocked ${blockedWords(entrantId, blocked, words)}`);
  if (unknown.length > 0) parts.push(unjudgedWords(unknown, table.openings.length));
  return `${parts.join('; ')}.`;
}

/** "The Reed group blank"; a name with a comma of its own gets one after it too. */
function withArticle(name: string): string {
  const head = /^the /i.test(name) ? `T${name.slice(1)}` : `The ${name}`;
  return name.includes(',') ? `${head},` : head;
}

function enteredWords(open: readonly string[], of: number, unknown: number, { nameOf }: TierWords): string {
  if (of === 0) return 'has no keyway to enter';
  const keyways = of === 1 ? 'keyway' : 'keyways';
  const names = () => nameList(open.map((id) => nameOf(id)));
  if (unknown === of) return `has not been judged`;
  if (open.length === 0) return unknown > 0 ? 'enters none so far' : `enters none of ${of} ${keyways}`;
  if (open.length < of) return `enters ${open.length} of ${of} ${keyways}: ${names()}`;
  if (of === 1) return `enters the only keyway, ${names()}`;
  return of <= MOST_NAMES ? `enters all ${of} keyways: ${names()}` : `enters all ${of} keyways`;
}

/** "in Ruff by the left ward, in Plover and Knot by the right ward, and in 4 more": the first groups, the rest counted. */
function blockedWords(entrantId: string, blocked: readonly string[], words: TierWords): string {
  const groups = new Map<string, string[]>();
  for (const id of blocked) {
    const part = words.blockedBy?.(entrantId, id) ?? '';
    groups.set(part, [...(groups.get(part) ?? []), id]);
  }
  const known = [...groups].filter(([part]) => part !== '');
  if (known.length === 0) return `in ${nameList(blocked.map((id) => words.nameOf(id)))}`;
  const told = known.slice(0, MOST_PARTS).map(([part, ids]) => {
    const names = ids.map((id) => words.nameOf(id));
    return `in ${nameList(names, MOST_BLOCKED)} by the ${part}`;
  });
  const counted = known.slice(0, MOST_PARTS).reduce((sum, [, ids]) => sum + ids.length, 0);
  if (counted < blocked.length)
    told.push(restWords(blocked, new Set(known.slice(0, MOST_PARTS).flatMap(([, ids]) => ids)), words));
  return told.length === 1 ? told[0] : `${told.slice(0, -1).join(', ')}, and ${told[told.length - 1]}`;
}

/** The keyways not told yet: one by its name, several by their number. */
function restWords(blocked: readonly string[], told: ReadonlySet<string>, { nameOf }: TierWords): string {
  const rest = blocked.filter((id) => !told.has(id));
  return rest.length === 1 ? `in ${nameOf(rest[0])}` : `in ${rest.length} more`;
}

function unjudgedWords(unknown: readonly string[], of: number): string {
  if (unknown.length === of) return 'judging is under way';
  return unknown.length === 1 ? '1 keyway is not judged yet' : `${unknown.length} keyways are not judged yet`;
}

/**
 * Names for sentences: a keyway by its section where no other keyway has that section, everything else by its own name.
 *
 * @returns the id itself for a profile that the family does not have.
 */
export function tierNames(family: Family): (id: string) => string {
  const sections = new Map<string, number>();
  for (const { section } of openingsOf(family)) if (section) sections.set(section, (sections.get(section) ?? 0) + 1);
  const names = new Map(
    family.profiles.map(({ id, kind, name, section }) => {
      const alone = kind === 'opening' && section !== undefined && sections.get(section) === 1;
      return [id, alone ? section : name] as const;
    }),
  );
  return (id) => names.get(id) ?? id;
}

/**
 * What the blanks of one node have in common and what sets them apart: "Two blanks with the same reach: Heron blank, five
 * chambers; and Heron blank, six chambers. They differ only in length."
 *
 * @param members what stands in one node, in chart order.
 * @returns '' for fewer than two.
 * @check tests/unit/family/tier-sentence.test.ts
 */
export function sameReachSentence(members: readonly Profile[]): string {
  if (members.length < 2) return '';
  const names = nameList(members.map(({ name }) => name));
  return `${kindsWords(members)} with the same reach: ${names}. ${differenceWords(members)}`;
}

/** "Two blanks", "A blank and a tool", "13 blanks and two tools". */
function kindsWords(members: readonly Profile[]): string {
  const tools = members.filter(({ kind }) => kind === 'tool').length;
  const words = [counted(members.length - tools, 'blank'), counted(tools, 'tool')].filter((text) => text !== '');
  const text = words.join(' and ');
  return text[0].toUpperCase() + text.slice(1);
}

const NUMBER_WORDS = 'no a two three four five six seven eight nine ten eleven twelve'.split(' ');

function counted(count: number, noun: string): string {
  if (count === 0) return '';
  return `${NUMBER_WORDS[count] ?? count} ${noun}${count === 1 ? '' : 's'}`;
}

function differenceWords(members: readonly Profile[]): string {
  const outlines = new Set(members.map(({ ring }) => outlineKey(ring)));
  if (outlines.size > 1) {
    const some = outlines.size < members.length ? 'Not all of their outlines are equal' : 'Their outlines differ';
    return `${some}, but no keyway here tells them apart.`;
  }
  const lengths = new Set(members.map(({ chambers }) => chambers));
  return lengths.size > 1 ? 'They differ only in length.' : 'Their outlines are equal.';
}
