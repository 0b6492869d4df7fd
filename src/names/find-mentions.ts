import { foldName } from './fold-name.ts';
import type { Mention } from './mention.ts';
import { chambersAt, type Word, wordsOf } from './name-phrase.ts';
import { classOf } from './question-words.ts';
import { readBeside, type SchemeSpan } from './read-beside.ts';
import type { Register, Sense } from './register.ts';
import { type Resolution, resolveExactly, resolveName, sensesWritten } from './resolve.ts';

/** The names in a question, in order, and all its words. */
export interface Mentions {
  readonly words: readonly Word[];
  readonly mentions: readonly Mention[];
}

/** A run of words that is a name or may be one. */
interface Span {
  readonly from: number;
  readonly to: number;
  readonly quoted: boolean;
}

/** Most words that a name is looked for in. */
const MOST_NAME_WORDS = 40;

/** Most runs of words of one question that are compared with every name of the register. */
const MOST_COMPARED = 40;

/** Most parts of one run of unknown words that are looked up. */
const MOST_PARTS = 24;

/** How many runs of words may still be compared with every name. */
interface Budget {
  left: number;
}

/**
 * Finds the names in a question: known ones by the longest run of words that is one, then what is left over and no word
 * of questions.
 *
 * @check tests/unit/names/ask.test.ts
 */
export function findMentions(question: string, register: Register): Mentions {
  const words = wordsOf(question);
  const quoted = quotedSpans(question, words);
  const known = knownSpans(question, words, register, quoted);
  const spans = [...quoted, ...known].sort((a, b) => a.from - b.from);
  const grown = spans.map((span) => withStrayNumber(question, words, spans, span));
  const schemes = schemeSpans(question, words, register).filter(
    (scheme) => !grown.some((span) => overlap(span, scheme)),
  );
  const budget = { left: MOST_COMPARED };
  const found = grown.map((span) => toMention(question, words, register, span, budget));
  const rest = leftOver(question, words, [...grown, ...schemes]).flatMap((s) =>
    guess(question, words, register, s, budget),
  );
  const ordered = [...found, ...rest].sort((a, b) => a.from - b.from);
  return { words, mentions: readBeside(words, ordered, schemes) };
}

/** Where the register's schemes are named. */
function schemeSpans(question: string, words: readonly Word[], register: Register): SchemeSpan[] {
  const schemes = new Map(
    register.senses.flatMap((s) => (s.scheme === null ? [] : [[foldName(s.scheme), s.scheme] as const])),
  );
  if (schemes.size === 0) return [];
  const longest = Math.min(MOST_NAME_WORDS, Math.max(...[...schemes.values()].map((text) => wordsOf(text).length)));
  const spans: SchemeSpan[] = [];
  for (let from = 0; from < words.length; from += 1)
    for (let to = Math.min(words.length, from + longest); to > from; to -= 1) {
      const scheme = schemes.get(foldName(sliceOf(question, words, from, to)));
      if (scheme !== undefined && spans.every((span) => span.to <= from)) spans.push({ from, to, scheme });
    }
  return spans;
}

function overlap(a: Pick<Span, 'from' | 'to'>, b: Pick<Span, 'from' | 'to'>): boolean {
  return a.from < b.to && b.from < a.to;
}

/** Names in quotation marks: they are taken whole. */
function quotedSpans(question: string, words: readonly Word[]): Span[] {
  return [...question.matchAll(/"[^"]+"|“[^”]+”|«[^»]+»/g)].flatMap(({ 0: text, index }) => {
    const inside = words.flatMap(({ from, to }, i) => (from >= index && to <= index + text.length ? [i] : []));
    return inside.length > 0 ? [{ from: inside[0], to: inside[inside.length - 1] + 1, quoted: true }] : [];
  });
}

const longestNames = new WeakMap<Register, number>();

/** How many words the longest name or id of a register has. */
function longestName(register: Register): number {
  const known = longestNames.get(register);
  if (known !== undefined) return known;
  const lengths = register.senses.map(({ text, profile }) =>
    Math.max(wordsOf(text).length, wordsOf(profile ?? '').length),
  );
  const most = lengths.reduce((longest, length) => Math.max(longest, length), 1);
  const longest = Math.min(most, MOST_NAME_WORDS);
  longestNames.set(register, longest);
  return longest;
}

function knownSpans(question: string, words: readonly Word[], register: Register, taken: readonly Span[]): Span[] {
  const spans: Span[] = [];
  const longest = longestName(register);
  for (let from = 0; from < words.length; ) {
    const stop = taken.find((span) => span.to > from)?.from ?? words.length;
    const to = from < stop ? longestKnown(question, words, register, from, Math.min(stop, from + longest)) : from;
    if (to > from) spans.push({ from, to, quoted: false });
    from = Math.max(to, from + 1);
    if (from > stop) from = Math.max(from, taken.find((span) => span.from === stop)?.to ?? from);
  }
  return spans;
}

/** The word behind the longest known name that starts at `from`; `from` where none does. */
function longestKnown(question: string, words: readonly Word[], register: Register, from: number, most: number) {
  for (let to = most; to > from; to -= 1) {
    const text = sliceOf(question, words, from, to);
    const senses = sensesWritten(register, text);
    const bare = senses.length > 0 ? senses : sensesWritten(register, text.replace(/['’]s$/, ''));
    if (bare.length > 0 && (to > from + 1 ? !isAllAsking(words.slice(from, to)) : mayBeName(words, from, bare)))
      return to;
  }
  return from;
}

/** Whether a run of words would ask rather than name: "go into". Such a name counts in quotation marks only. */
function isAllAsking(words: readonly Word[]): boolean {
  const uses = words.map(({ plain }) => classOf(plain));
  return uses.every((use) => use !== null) && !uses.includes('kind');
}

/** Words before and after "I" where it is the speaker. */
const SPEAKER_BEFORE = /^(can|do|may|could|should|if|when|must|would|will|did|am|that|which|shall|have|might|what)$/;
const SPEAKER_AFTER =
  /^(can|put|use|have|want|try|need|do|may|could|should|must|would|will|am|think|know|wonder|get|open)$/;

/** Whether a word follows a name rather than an article: "does a go into b". */
function isAfterName(after: Word | undefined): boolean {
  const use = after ? classOf(after.plain) : 'enters';
  return /^(enters|takes|stops|into|and|by|differs|same|negation|auxiliary)$/.test(use ?? '');
}

/**
 * Whether one word is meant as a name. A name that is also a word of questions ("A", "I", "All") counts only as it is
 * written, and not where the sentence needs the word.
 */
function mayBeName(words: readonly Word[], at: number, senses: readonly Sense[]): boolean {
  const { plain, text } = words[at];
  const use = classOf(plain);
  if (use === null || use === 'turning' || words.length === 1) return true;
  if (plain === 'a' && isAfterName(words[at + 1])) return true;
  if (!senses.some((sense) => sense.text === text)) return false;
  const [before, after] = [words[at - 1]?.plain ?? '', words[at + 1]?.plain ?? ''];
  if (plain === 'i') return !SPEAKER_BEFORE.test(before) && !SPEAKER_AFTER.test(after);
  if (at > 0) return text !== plain;
  return plain === 'a' && classOf(after) !== 'kind' && classOf(after) !== 'filling';
}

/** A known name with a number or a lone capital right behind it that is not part of it is another name: "Heron 7". */
function withStrayNumber(question: string, words: readonly Word[], spans: readonly Span[], span: Span): Span {
  const next = words[span.to];
  if (!next || span.quoted || spans.some(({ from }) => from === span.to)) return span;
  const gap = question.slice(words[span.to - 1].to, next.from);
  const joins = /^[\s\-–./]*$/.test(gap) && gap.length <= 2;
  const stray = /\p{Nd}/u.test(next.text) || (/^\p{Lu}$/u.test(next.text) && classOf(next.plain) === null);
  return joins && stray && !chambersAt(words, span.to) ? { ...span, to: span.to + 1 } : span;
}

function toMention(question: string, words: readonly Word[], register: Register, span: Span, budget: Budget): Mention {
  const text = sliceOf(question, words, span.from, span.to);
  const whole = resolved(register, text, budget);
  const bare = text.replace(/['’]s$/, '');
  const resolution = whole.kind === 'found' || bare === text ? whole : resolved(register, bare, budget);
  const [start, end] = [words[span.from].from, words[span.to - 1].to];
  return {
    text: bare,
    start,
    end,
    from: span.from,
    to: span.to,
    kind: null,
    chambers: null,
    resolution,
    certain: true,
  };
}

/** What a name stands for; names that come near only as long as the budget lasts. */
function resolved(register: Register, text: string, budget: Budget): Resolution {
  const exact = resolveExactly(register, text);
  if (exact.kind === 'found' || budget.left <= 0) return exact;
  budget.left -= 1;
  return resolveName(register, text);
}

/** Runs of words that are neither names nor words of questions. */
function leftOver(question: string, words: readonly Word[], taken: readonly Pick<Span, 'from' | 'to'>[]): Span[] {
  const spans: Span[] = [];
  for (const [i, word] of words.entries()) {
    if (taken.some(({ from, to }) => i >= from && i < to) || classOf(word.plain) !== null || isLength(words, i))
      continue;
    const last = spans.at(-1);
    const joins = last?.to === i && !/[,;:?!()]/.test(question.slice(words[i - 1].to, word.from));
    if (last && joins) spans[spans.length - 1] = { ...last, to: i + 1 };
    else spans.push({ from: i, to: i + 1, quoted: false });
  }
  return spans;
}

function isLength(words: readonly Word[], at: number): boolean {
  return chambersAt(words, at) !== null;
}

/** What a run of unknown words may name: as a whole, else the longest part of it that comes near a name. */
function guess(question: string, words: readonly Word[], register: Register, span: Span, budget: Budget): Mention[] {
  for (const part of partsOf(span)) {
    const mention = toMention(question, words, register, part, budget);
    if (mention.resolution.kind !== 'unknown') return [mention];
  }
  const whole = toMention(question, words, register, span, { left: 0 });
  return [{ ...whole, certain: looksLikeName(whole.text, span.from) }];
}

/** A span and its parts, the longer first. */
function partsOf({ from, to }: Span): Span[] {
  const parts: Span[] = [];
  for (let count = Math.min(to - from, 4); count >= 1; count -= 1)
    for (let at = from; at + count <= to && parts.length < MOST_PARTS; at += 1)
      parts.push({ from: at, to: at + count, quoted: false });
  return to - from > 4 ? [{ from, to, quoted: false }, ...parts] : parts;
}

function looksLikeName(text: string, from: number): boolean {
  return /\p{Nd}/u.test(text) || /\p{Lu}{2}/u.test(text) || (from > 0 && /\p{Lu}/u.test(text));
}

function sliceOf(question: string, words: readonly Word[], from: number, to: number): string {
  return question.slice(words[from].from, words[to - 1].to);
}
