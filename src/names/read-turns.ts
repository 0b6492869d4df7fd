import { foldName } from './fold-name.ts';
import type { Mention } from './mention.ts';
import { KIND_WORDS, type Word } from './name-phrase.ts';
import { type Item, isGroup, isVerb, outlineOf } from './question-items.ts';
import { classOf } from './question-words.ts';
import type { Role } from './resolve.ts';
import { type Turn, turnsIn } from './turn-words.ts';

/** The words that turn a question, and what they are said of. */
export interface Turned {
  readonly turns: ReadonlySet<Turn>;
  /** The question with NAME for each name. */
  readonly outline: string;
  /** What "only" is said of: what goes in, or what it goes into; null where the sentence does not tell. */
  readonly only: Role | null;
  /** The names whose group is meant: "the Reed group". */
  readonly groups: readonly Mention[];
  /** The names behind "except". */
  readonly excepted: readonly Mention[];
  /** Pairs of names that are each asked about by a verb of their own, different ones: more than one is two questions. */
  readonly clauses: readonly (readonly [Mention, Mention])[];
}

/**
 * What turns a question, beside its names and their parts.
 *
 * @param roleOf the part of a name, or null where it has none.
 * @check tests/unit/names/ask.test.ts
 */
export function readTurns(
  words: readonly Word[],
  items: readonly Item[],
  mentions: readonly Mention[],
  roleOf: (mention: Mention) => Role | null,
): Turned {
  const outline = outlineOf(words, mentions);
  const found = turnsIn(outline);
  const of = (turn: Turn) => found.find((one) => one.turn === turn);
  const [only, except] = [of('only'), of('except')];
  return {
    turns: new Set(found.map(({ turn }) => turn)),
    outline,
    only: only ? onlySide(outline, only, mentions, roleOf) : null,
    groups: mentions.filter((mention) => isGroup(words, mention)),
    excepted: except ? exceptedIn(outline, except.to, mentions) : [],
    clauses: clausesIn(items, mentions),
  };
}

/** Names in an outline before a place in it. */
function namesBefore(outline: string, place: number): number {
  return outline.slice(0, place).split('NAME').length - 1;
}

/** The names right behind "except": "Rail, Avocet and Dunlin". */
function exceptedIn(outline: string, place: number, mentions: readonly Mention[]): Mention[] {
  const first = namesBefore(outline, place);
  const behind = outline.slice(place).trim().split(' ');
  const start = behind.indexOf('NAME');
  if (start < 0) return [];
  const end = behind.findIndex((word, i) => i > start && !/^(NAME|and|or|nor|the|both|plus)$/.test(word));
  const run = behind.slice(start, end < 0 ? behind.length : end);
  return mentions.slice(first, first + run.filter((word) => word === 'NAME').length);
}

/** What "only" is said of: the first word behind it that tells, else the name before it. */
function onlySide(
  outline: string,
  { from, to }: { readonly from: number; readonly to: number },
  mentions: readonly Mention[],
  roleOf: (mention: Mention) => Role | null,
): Role | null {
  const roleAt = (index: number) => (mentions[index] ? roleOf(mentions[index]) : null);
  const said = outline.slice(from, to);
  if (said.endsWith('NAME')) return roleAt(namesBefore(outline, from));
  if (said === 'alone') return roleAt(namesBefore(outline, from) - 1);
  const behind = outline.slice(to).trim().split(' ');
  for (const word of behind) {
    if (word === 'NAME') return roleAt(namesBefore(outline, to));
    const side = sideOf(word, /^(nothing|no other)/.test(said));
    if (side !== null) return side;
  }
  const before = namesBefore(outline, from) - 1;
  return roleAt(before);
}

/** What a word behind "only" says of it. "Nothing else goes in" is said of what goes in, "only goes in" of the keyway. */
function sideOf(word: string, nothing: boolean): Role | null {
  const kind = KIND_WORDS.get(word);
  if (kind) return kind === 'keyway' ? 'opening' : 'entrant';
  if (word === 'one' || word === 'thing') return 'entrant';
  const use = classOf(word);
  if (use === 'into') return 'opening';
  if (use === 'enters') return nothing ? 'entrant' : 'opening';
  return use === 'takes' || use === 'stops' ? 'entrant' : null;
}

/** "X goes into Y", each time with a verb of its own between the names; the same pair once. */
function clausesIn(items: readonly Item[], mentions: readonly Mention[]): (readonly [Mention, Mention])[] {
  const verbs = items.filter(isVerb).map(({ at }) => at);
  const clauses: (readonly [Mention, Mention])[] = [];
  for (let i = 0; i + 1 < mentions.length; i += 1) {
    const [one, two] = [mentions[i], mentions[i + 1]];
    if (!verbs.some((at) => at >= one.to && at < two.from)) continue;
    if (!clauses.some(([a, b]) => isWrittenAlike(a, one) && isWrittenAlike(b, two))) clauses.push([one, two]);
    i += 1;
  }
  return clauses;
}

function isWrittenAlike(a: Mention, b: Mention): boolean {
  return foldName(a.text) === foldName(b.text);
}
