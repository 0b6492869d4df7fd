import type { NameKind } from '../family/name-entry.ts';

/** A name as people say it: "the five-chamber Heron blank" is Heron, said to be a blank, of five chambers. */
export interface NamePhrase {
  /** The name without the words around it. */
  readonly core: string;
  /** What the words around it say that it is. */
  readonly kind: NameKind | null;
  readonly chambers: number | null;
}

/** One word of a text and where it stands. */
export interface Word {
  /** As it is written. */
  readonly text: string;
  /** In small letters, a possessive "'s" taken off. */
  readonly plain: string;
  readonly from: number;
  readonly to: number;
  /** Whether a comma, a stop or a bracket stands before it. */
  readonly parted: boolean;
}

/** Words that say what kind of thing a name beside them names. */
export const KIND_WORDS: ReadonlyMap<string, NameKind> = new Map<string, NameKind>([
  ...['keyway', 'keyways', 'lock', 'locks', 'cylinder', 'cylinders', 'door', 'doors'].map(
    (w) => [w, 'keyway'] as const,
  ),
  ...['opening', 'openings', 'plug', 'plugs', 'keyhole', 'keyholes'].map((w) => [w, 'keyway'] as const),
  ...['blank', 'blanks', 'key', 'keys', 'blade', 'blades'].map((w) => [w, 'blank'] as const),
  ...['section', 'sections', 'profile', 'profiles'].map((w) => [w, 'section'] as const),
  ...['tool', 'tools'].map((w) => [w, 'tool'] as const),
  ...['series'].map((w) => [w, 'series'] as const),
]);

/** Words before a name, or between a name and the word of its kind, that say nothing of which it is. */
const FILLING = new Set([
  ...['the', 'a', 'an', 'this', 'that', 'my', 'our', 'your', 'their', 'group', 'master', 'number', 'numbers', 'no'],
  ...['called', 'named', 'old', 'new', 'uncut'],
]);

const NUMBERS = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

const CHAMBER_WORD = /^(chamber|pin)(s|ed)?$/;

/** The words of a text: letters, digits and symbols, with apostrophes inside, but not with hyphens. */
export function wordsOf(text: string): Word[] {
  return [...text.matchAll(/[\p{L}\p{N}\p{M}\p{S}\u200D]+(?:['’][\p{L}\p{N}]+)*/gu)].map((match) => ({
    text: match[0],
    plain: match[0].toLowerCase().replace(/’/g, "'").replace(/'s$/, ''),
    from: match.index,
    to: match.index + match[0].length,
    parted: /[,;?!.()]\s*$/.test(text.slice(Math.max(0, match.index - 4), match.index)),
  }));
}

/** How many words from `at` on say a length in chambers, and which: "five chambers", "5-pin". */
export function chambersAt(words: readonly Word[], at: number): { chambers: number; count: number } | null {
  const [first, second] = [words[at], words[at + 1]];
  if (!first || !second || !CHAMBER_WORD.test(second.plain)) return null;
  const chambers = NUMBERS.indexOf(first.plain) + 1 || Number(first.plain);
  return Number.isInteger(chambers) && chambers >= 1 && chambers <= 12 ? { chambers, count: 2 } : null;
}

/**
 * Takes the words off a name that say what kind of thing it is and how long, from both ends.
 *
 * @returns a core of one word at least, since a name may be such a word itself.
 * @check tests/unit/names/resolve.test.ts
 */
export function readPhrase(text: string): NamePhrase {
  const words = wordsOf(text);
  let [from, to] = [0, words.length];
  let kind: NameKind | null = null;
  let chambers: number | null = null;
  for (let before = -1; before !== to - from && to - from > 1; ) {
    before = to - from;
    const [lead, tail] = [chambersAt(words, from), chambersAt(words, to - 2)];
    if (tail && before > 2) [chambers, to] = [tail.chambers, to - 2];
    else if (lead && before > 2) [chambers, from] = [lead.chambers, from + 2];
    else if (isAround(words[to - 1]) || words[to - 1].plain === 'in')
      [kind, to] = [kind ?? kindOf(words[to - 1]), to - 1];
    else if (isAround(words[from])) [kind, from] = [kind ?? kindOf(words[from]), from + 1];
  }
  if (from >= to) return { core: text.trim(), kind: null, chambers: null };
  return { core: text.slice(words[from].from, words[to - 1].to).replace(/['’]s$/, ''), kind, chambers };
}

function isAround({ plain }: Word): boolean {
  return KIND_WORDS.has(plain) || FILLING.has(plain);
}

function kindOf({ plain }: Word): NameKind | null {
  return KIND_WORDS.get(plain) ?? null;
}
