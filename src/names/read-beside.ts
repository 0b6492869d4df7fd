import type { NameKind } from '../family/name-entry.ts';
import type { Mention } from './mention.ts';
import { chambersAt, KIND_WORDS, readPhrase, type Word } from './name-phrase.ts';
import { classOf } from './question-words.ts';
import { narrowed } from './resolve.ts';

/** A place where a naming scheme is named, in words. */
export interface SchemeSpan {
  readonly from: number;
  readonly to: number;
  readonly scheme: string;
}

/** What the words beside a name say, and which words these are. */
interface Beside {
  readonly from: number;
  readonly to: number;
  readonly kind: NameKind | null;
  readonly chambers: number | null;
}

/**
 * The names with what the words beside them say: "the five-chamber Heron blank", "blank number PC 105 of the Stores
 * list", "the Heron and Bittern keyways".
 *
 * @param mentions in order.
 * @check tests/unit/names/ask.test.ts
 */
export function readBeside(
  words: readonly Word[],
  mentions: readonly Mention[],
  schemes: readonly SchemeSpan[],
): Mention[] {
  const alone = mentions.map((mention, i) => {
    const floor = mentions[i - 1]?.to ?? 0;
    const ceiling = mentions[i + 1]?.from ?? words.length;
    const beside = lookBefore(words, lookBehind(words, mention, ceiling), floor);
    return withBeside(mention, mentions.length > 1 ? lookOver(words, beside, floor) : beside);
  });
  return shareKinds(
    words,
    alone.map((mention) => ofScheme(words, mention, schemes)),
  );
}

/** Kind and length behind a name: "Heron group blank, six chambers". */
function lookBehind(words: readonly Word[], start: Beside, ceiling: number): Beside {
  let now = start;
  for (let before = -1; before !== now.to; ) {
    before = now.to;
    const at = /^(in|with|of|for)$/.test(words[now.to]?.plain ?? '') ? now.to + 1 : now.to;
    const length = chambersAt(words, at);
    if (length && at + 2 <= ceiling) now = { ...now, chambers: length.chambers, to: at + 2 };
    else if (now.to < ceiling && isBeside(words[now.to]))
      now = { ...now, kind: now.kind ?? kindOf(words[now.to]), to: now.to + 1 };
  }
  return now;
}

/** Kind and length before a name: "the five-chamber blank Heron". */
function lookBefore(words: readonly Word[], start: Beside, floor: number): Beside {
  let now = start;
  for (let before = -1; before !== now.from; ) {
    before = now.from;
    const last = now.from - 1;
    if (words[now.from].parted) break;
    const length = now.from - 2 >= floor ? chambersAt(words, now.from - 2) : null;
    if (length) now = { ...now, chambers: length.chambers, from: now.from - 2 };
    else if (now.from > floor && isBeside(words[last]) && !isAskedFor(words, last))
      now = { ...now, kind: now.kind ?? kindOf(words[last]), from: last };
  }
  return now;
}

/** Kind before a name and a "for" or "of": "the blank for Heron", but not "a blank for Heron", which asks for one. */
function lookOver(words: readonly Word[], start: Beside, floor: number): Beside {
  const article = /^(the|a|an)$/.test(words[start.from - 1]?.plain ?? '') ? 1 : 0;
  const link = start.from - 1 - article;
  const [of, kind, the] = [words[link]?.plain, words[link - 1], words[link - 2]?.plain];
  if (link - 1 < floor || start.kind !== null || !kind || !/^(for|of)$/.test(of ?? '')) return start;
  if (!/^(the|my|our|your)$/.test(the ?? '') || !KIND_WORDS.has(kind.plain) || !asksOfMoving(words)) return start;
  return { ...start, kind: kindOf(kind), from: link - 1 };
}

/** Whether a question is about going in, so that a name in it has a part: else "the blank for X" is asked for. */
function asksOfMoving(words: readonly Word[]): boolean {
  return words.some(({ plain }) => /^(enters|takes|stops|handles|same|differs)$/.test(classOf(plain) ?? ''));
}

function withBeside(mention: Mention, { from, to, kind, chambers }: Beside): Mention {
  const grown = { ...mention, from, to, kind: kind ?? readPhrase(mention.text).kind, chambers };
  return withSenses(grown, kind, chambers);
}

function withSenses(mention: Mention, kind: NameKind | null, chambers: number | null): Mention {
  if (mention.resolution.kind !== 'found') return mention;
  const senses = narrowed(mention.resolution.senses, kind, chambers);
  return { ...mention, resolution: { kind: 'found', senses } };
}

function isBeside({ plain }: Word): boolean {
  return KIND_WORDS.has(plain) || /^(number|numbers|group|master|no)$/.test(plain);
}

function kindOf({ plain }: Word): NameKind | null {
  return KIND_WORDS.get(plain) ?? null;
}

/** "which blank Heron": the kind is asked for and says nothing of the name behind it. */
function isAskedFor(words: readonly Word[], at: number): boolean {
  return [at - 1, at - 2].some((i) => classOf(words[i]?.plain ?? '') === 'asking');
}

/** The senses of the scheme that is named right behind: "W-12 (Stores list)", "W-12 of the Stores list". */
function ofScheme(words: readonly Word[], mention: Mention, schemes: readonly SchemeSpan[]): Mention {
  const linked = (from: number) => words.slice(mention.to, from).every(({ plain }) => /^(of|in|from|the)$/.test(plain));
  const named = schemes.find(({ from }) => from >= mention.to && from <= mention.to + 2 && linked(from));
  if (!named || mention.resolution.kind !== 'found') return mention;
  const senses = mention.resolution.senses.filter(({ scheme }) => scheme === named.scheme);
  const resolution = senses.length > 0 ? ({ kind: 'found', senses } as const) : mention.resolution;
  return { ...mention, to: named.to, resolution };
}

/** "the Heron and the Bittern keyway", "blank numbers PC 105 and PC 106": a kind said once for all of a list. */
function shareKinds(words: readonly Word[], mentions: readonly Mention[]): Mention[] {
  const shared = [...mentions];
  for (let i = shared.length - 2; i >= 0; i -= 1) shared[i] = withKindOf(words, shared[i], shared[i + 1], true);
  for (let i = 1; i < shared.length; i += 1)
    if (shared[i].kind === null && /^ones?$/.test(words[shared[i].to]?.plain ?? ''))
      shared[i] = withSenses({ ...shared[i], kind: shared[i - 1].kind }, shared[i - 1].kind, shared[i].chambers);
  for (let i = 1; i < shared.length; i += 1)
    shared[i] = withKindOf(words, shared[i], shared[i - 1], isPlural(words, shared[i - 1]));
  return shared;
}

function withKindOf(words: readonly Word[], mention: Mention, other: Mention, shares: boolean): Mention {
  if (mention.kind !== null || other.kind === null || !shares || !areListed(words, mention, other)) return mention;
  return withSenses({ ...mention, kind: other.kind }, other.kind, mention.chambers);
}

function isPlural(words: readonly Word[], { from, to }: Mention): boolean {
  return words.slice(from, to).some(({ plain }) => KIND_WORDS.has(plain) && /s$/.test(plain) && plain !== 'series');
}

/** Whether only "and", "or", "both" and articles stand between two names. */
export function areListed(words: readonly Word[], a: Mention, b: Mention): boolean {
  const [first, second] = a.from < b.from ? [a, b] : [b, a];
  const between = words.slice(first.to, second.from);
  return between.every(
    ({ plain }) => classOf(plain) === 'and' || plain === 'the' || plain === 'also' || plain === 'nor',
  );
}
