import type { NameKind } from '../family/name-entry.ts';
import { findMentions } from './find-mentions.ts';
import { foldName } from './fold-name.ts';
import type { Mention } from './mention.ts';
import { chambersAt, KIND_WORDS, type Word } from './name-phrase.ts';
import { type Item, isVerb, itemsOf } from './question-items.ts';
import { classOf, isParticiple, type WordClass } from './question-words.ts';
import { areListed } from './read-beside.ts';
import { readTurns, type Turned } from './read-turns.ts';
import type { Register } from './register.ts';
import { canBe, type Role } from './resolve.ts';
import { meaningOfTerm } from './terms.ts';

/** What is asked. */
export type Form =
  /** Does X go into Y, why not, with how much room. */
  | 'pair'
  /** What goes into Y; what goes into Y and into Z. */
  | 'what goes in'
  /** What does X go into. */
  | 'where'
  /** What goes into all. */
  | 'goes into all'
  /** What is X. */
  | 'what is'
  | 'what differs'
  | 'is it the same'
  /** Whether the things of one name differ: "are the two Heron blanks the same". */
  | 'do they differ'
  /** What does a word of the trade mean. */
  | 'what is the word'
  | 'not understood';

/** A question taken apart. */
export interface Reading {
  readonly form: Form;
  /** All names, in the order of the question. */
  readonly mentions: readonly Mention[];
  readonly entrants: readonly Mention[];
  readonly openings: readonly Mention[];
  /** What the word of the trade means that is asked about, or the empty text. */
  readonly meaning: string;
  /** The openings among those that are asked about with a "not". */
  readonly excluded: readonly Mention[];
  /** Whether it is asked what does not go in. */
  readonly negated: boolean;
  /** What is asked for: "which tools go into Y". */
  readonly asked: NameKind | null;
  /** Whether the answer may start with yes or no. */
  readonly yesOrNo: boolean;
  /** Whether it is asked about opening or turning, which going in alone does not do. */
  readonly turning: boolean;
  /** Whether the blank and the keyway were named the wrong way round. */
  readonly swapped: boolean;
  /** Whether two names stand there without a word that says what is asked of them. */
  readonly bare: boolean;
  /** The length in chambers that is asked for, or said of the lock; null where none is. */
  readonly chambers: number | null;
  /** Words that turn the question. */
  readonly turned: Turned;
  /** Words that were not understood and are left out of account. */
  readonly unread: readonly string[];
}

/**
 * Takes a question in plain words apart: what is asked, and which names have which part in it.
 *
 * @check tests/unit/names/ask.test.ts
 */
export function readQuestion(question: string, register: Register): Reading {
  const { words, mentions } = findMentions(question, register);
  const items = itemsOf(words, mentions);
  const certain = needed(words, items, mentions).filter((one, i, all) => !isSaidAgain(words, one, all.slice(0, i)));
  const roles = rolesOf(words, items, certain);
  const has = (use: WordClass) => items.some((item) => item.use === use);
  const meaning = mentions.some(({ certain }) => certain) ? '' : termMeaning(question);
  const pair = barePair(words, items, certain);
  const asked = askedKind(items);
  const parted = pair ? { ...roles, entrants: [pair[0]], openings: [pair[1]], open: [] } : forAsked(roles, asked, has);
  const form = meaning === '' ? formOf(has, parted, isGreeting(words, has, certain)) : 'what is the word';
  const kept = form === 'what goes in' && has('stops');
  return {
    form,
    mentions: certain,
    entrants: parted.entrants,
    openings: parted.openings,
    excluded: form === 'what goes in' ? excludedOf(words, parted.openings) : [],
    negated: has('negation') !== kept,
    meaning,
    asked,
    yesOrNo: !pair && !(['asking', 'room', 'negation', 'why', 'stops'] as const).some(has),
    turning: items.some(({ word }) => /^(open|turn|operate|unlock|work)(s|ed|ing)?$/.test(word.plain)),
    swapped: roles.swapped,
    bare: pair !== null,
    chambers: chambersAsked(words, certain, parted.openings),
    turned: readTurns(words, items, certain, (mention) => roleIn(parted, mention)),
    unread: mentions.filter((one) => !one.certain && !certain.includes(one)).map(({ text }) => text),
  };
}

function roleIn({ entrants, openings }: Roles, mention: Mention): Role | null {
  if (entrants.includes(mention)) return 'entrant';
  return openings.includes(mention) ? 'opening' : null;
}

/** A name that is said once more: "HB …, since it is called HB". */
function isSaidAgain(words: readonly Word[], { text, from }: Mention, before: readonly Mention[]): boolean {
  const called = /^(called|named)$/.test(words[from - 1]?.plain ?? '');
  return called && before.some((other) => foldName(other.text) === foldName(text));
}

/** "which keyway is the tightest for X": where a keyway is asked for, the name is of what goes in. */
function forAsked(roles: Roles, asked: NameKind | null, has: (use: WordClass) => boolean): Roles {
  const { entrants, openings, open } = roles;
  const turned = asked === 'keyway' && has('asking') && entrants.length + open.length === 0;
  const canGo = openings.every((one) => one.kind !== 'keyway' && !isKeywayOnly(one));
  return turned && canGo ? { ...roles, entrants: openings, openings: [] } : roles;
}

/** "Reed, Heron?": what may go in and what it may go into, with no word between that asks; by their kinds, else in order. */
function barePair(
  words: readonly Word[],
  items: readonly Item[],
  mentions: readonly Mention[],
): readonly [Mention, Mention] | null {
  const [one, two] = mentions;
  if (mentions.length !== 2 || one.to !== two.from || items.some(({ use }) => use !== 'filling')) return null;
  const rest = words.length - (one.to - one.from) - (two.to - two.from);
  if (rest > 2) return null;
  const turned = isKeywayOnly(one) && !isKeywayOnly(two);
  const pair = turned ? ([two, one] as const) : ([one, two] as const);
  return mayBe(pair[0], 'entrant') && mayBe(pair[1], 'opening') ? pair : null;
}

function mayBe({ resolution }: Mention, role: Role): boolean {
  return resolution.kind === 'found' && resolution.senses.some((sense) => canBe(sense, role));
}

/** A length that is said of no blank by name: "which six-chamber blank", "the lock, six chambers". */
function chambersAsked(
  words: readonly Word[],
  mentions: readonly Mention[],
  openings: readonly Mention[],
): number | null {
  const ofLock = openings.find(({ chambers, kind }) => chambers !== null && kind === 'keyway');
  if (ofLock) return ofLock.chambers;
  const free = words.findIndex(
    (_, at) => chambersAt(words, at) !== null && !mentions.some(({ from, to }) => at >= from && at < to),
  );
  return free < 0 ? null : (chambersAt(words, free)?.chambers ?? null);
}

/** The openings that a negation stands before: "into Heron but not into Bittern". */
function excludedOf(words: readonly Word[], openings: readonly Mention[]): Mention[] {
  if (words.some(({ plain }) => plain === 'neither')) return [...openings];
  return openings.filter(({ from }, i) => {
    const before = words.slice(openings[i - 1]?.to ?? from, from);
    return before.some(({ plain }) => classOf(plain) === 'negation' || plain === 'without');
  });
}

/** The meaning of the word in "what is a keyway?". */
function termMeaning(question: string): string {
  const plain = question
    .toLowerCase()
    .replace(/[^\p{L}]+/gu, ' ')
    .trim();
  const asked =
    /^(?:please )?(?:what is|what s|what are|explain|define|what does|what do you mean by|tell me what|what)(?: (?:is|an?|the|mean by))* (.+?)(?: mean| is| are| please)*$/.exec(
      plain,
    );
  return (asked && meaningOfTerm(asked[1])) ?? '';
}

/**
 * The names without words that may be none, where there are enough names without them: "does the strip go into Heron" lacks
 * what goes in, and takes the word that stands in its place.
 */
function needed(words: readonly Word[], items: readonly Item[], mentions: readonly Mention[]): Mention[] {
  const certain = mentions.filter((mention) => mention.certain);
  if (certain.length === 0) return mentions.slice(0, 2);
  const asks = items.some(({ use, word }) => /^(asking|any|all|means)$/.test(use) || word.plain === 'there');
  if (certain.length > 1 || asks || !items.some(isVerb)) return certain;
  const placed = mentions.find((mention) => !mention.certain && isNounPlace(words[mention.from - 1]?.plain ?? ''));
  return mentions.filter((mention) => mention.certain || mention === placed);
}

/** Whether a word that a name would follow stands before: "the", "does", "into". */
function isNounPlace(before: string): boolean {
  const use = classOf(before);
  return /^(a|an|the|this|that|my|our)$/.test(before) || use === 'auxiliary' || use === 'into' || use === 'enters';
}

/** Whether nothing is asked: no name that is surely one, and none of the words that ask. */
function isGreeting(words: readonly Word[], has: (use: WordClass) => boolean, mentions: readonly Mention[]): boolean {
  const asks = (['asking', 'means', 'auxiliary', 'enters', 'takes', 'handles'] as const).some(has);
  const alone = mentions.length === 1 && mentions[0].to - mentions[0].from === words.length;
  return !asks && !alone && !mentions.some(({ certain, resolution }) => certain || resolution.kind !== 'unknown');
}

interface Roles {
  readonly entrants: readonly Mention[];
  readonly openings: readonly Mention[];
  /** Names whose part the sentence does not tell. */
  readonly open: readonly Mention[];
  readonly swapped: boolean;
}

/** Which names go in, and into which. */
function rolesOf(words: readonly Word[], items: readonly Item[], mentions: readonly Mention[]): Roles {
  const roles: (Role | null)[] = [];
  for (const [i, mention] of mentions.entries()) {
    const listed = i > 0 && areListed(words, mentions[i - 1], mention);
    roles.push(listed ? roles[i - 1] : roleOf(words, items, mentions, mention));
  }
  const of = (role: Role | null) => mentions.filter((_, i) => roles[i] === role);
  const parts = completed({ entrants: of('entrant'), openings: of('opening'), open: of(null), swapped: false });
  return turnedRight(words, withTopic(words, items, parts));
}

/** "Dunlin: does Polder go in?": a name that stands before the question is what is gone into. */
function withTopic(words: readonly Word[], items: readonly Item[], roles: Roles): Roles {
  const [topic, subject] = roles.entrants;
  if (roles.entrants.length !== 2 || roles.openings.length + roles.open.length > 0) return roles;
  const first = items.find(({ at }) => at >= topic.to);
  const stands = topic.from <= 1 && first?.use === 'auxiliary' && first.at === topic.to;
  if (!stands || areListed(words, topic, subject) || !mayBe(topic, 'opening')) return roles;
  return { ...roles, entrants: [subject], openings: [topic] };
}

/** The part of one name, by the word before it, else by the verb that it is subject or object of. */
function roleOf(
  words: readonly Word[],
  items: readonly Item[],
  mentions: readonly Mention[],
  mention: Mention,
): Role | null {
  const verb = items.findLast((item) => item.at < mention.from && isVerb(item));
  const before = wordBefore(words, mention);
  // "better than Heron does": compared with the subject.
  if (before === 'than' && /^do(es)?$/.test(words[mention.to]?.plain ?? '')) return 'entrant';
  if (before === 'for' && words[mention.to]?.plain === 'to') return 'entrant';
  if (classOf(before) === 'into' || (before === 'out' && verb?.use === 'stops')) return 'opening';
  const said = mentions.length > 1 && items.some(isVerb) ? saidToBe(words, mention) : null;
  if (said) return said;
  if (classOf(before) === 'by' && (verb || before === 'by')) return agentRole(before, verb, isPassive(items));
  if (verb) return objectRole(verb.use);
  const next = items.find((item) => item.at >= mention.to && isVerb(item));
  return next ? subjectRole(next, isPassive(items)) : null;
}

/** "Is X the only keyway that …", "is X the blank that …": what a name is said to be right behind it. */
function saidToBe(words: readonly Word[], { to }: Mention): Role | null {
  let at = to;
  while (/^(a|an|the|one|only|of|single|sole)$/.test(words[at]?.plain ?? '')) at += 1;
  const kind = at > to ? KIND_WORDS.get(words[at]?.plain ?? '') : undefined;
  if (kind === undefined || !/^(that|which)$/.test(words[at + 1]?.plain ?? '')) return null;
  if (kind === 'keyway') return 'opening';
  return kind === 'blank' || kind === 'tool' ? 'entrant' : null;
}

/** The word before a name, articles and the like left out. */
function wordBefore(words: readonly Word[], { from }: Pick<Mention, 'from'>): string {
  let at = from - 1;
  while (
    /^(a|an|the|this|that|these|those|both|all|of|any|my|our|your|their|some|called|named)$/.test(
      words[at]?.plain ?? '',
    )
  )
    at -= 1;
  return words[at]?.plain ?? '';
}

function isPassive(items: readonly Item[]): boolean {
  const be = items.findIndex(({ word }) =>
    /^(is|are|was|were|be|been|being|get|gets|isn't|aren't|can't)$/.test(word.plain),
  );
  return be >= 0 && items.slice(be).some((item) => isVerb(item) && isParticiple(item.word.plain));
}

function objectRole(use: WordClass): Role {
  return use === 'enters' ? 'opening' : 'entrant';
}

function subjectRole({ use, word }: Item, passive: boolean): Role {
  const active = use === 'takes' || use === 'stops' ? 'opening' : 'entrant';
  if (!passive || use === 'handles' || !isParticiple(word.plain)) return active;
  return active === 'entrant' ? 'opening' : 'entrant';
}

/** "opened by X", "open Y with X", but "works with Y". */
function agentRole(before: string, verb: Item | undefined, passive: boolean): Role {
  if (verb?.use === 'takes' || verb?.use === 'stops') return passive ? 'opening' : 'entrant';
  const alongside = /^(work|works|working|compatible|match|matches|go|goes|belong|fitted|come|comes)$/;
  return before === 'with' && verb && alongside.test(verb.word.plain) ? 'opening' : 'entrant';
}

/** Names of unknown part take the part that is still free. */
function completed(roles: Roles): Roles {
  const { entrants, openings, open } = roles;
  if (open.length === 0) return roles;
  if (openings.length > 0 && entrants.length === 0) return { ...roles, entrants: open, open: [] };
  if (entrants.length > 0 && openings.length === 0) return { ...roles, openings: open, open: [] };
  return roles;
}

/**
 * A door "opens with" a blank as a blank "opens" a door: where both parts are taken, or two names have the same one, what
 * the names are decides.
 */
function turnedRight(words: readonly Word[], roles: Roles): Roles {
  const { entrants, openings } = roles;
  if (entrants.length > 0 && openings.length > 0) {
    const crossed = entrants.every(isKeywayOnly) && openings.every(isEntrantOnly);
    return crossed ? { ...roles, entrants: openings, openings: entrants, swapped: true } : roles;
  }
  const all = entrants.length > 0 ? entrants : openings;
  const [keyways, others] = [all.filter(isKeywayOnly), all.filter((mention) => !isKeywayOnly(mention))];
  const barred = others.some(({ from }) => classOf(wordBefore(words, { from })) === 'negation');
  const clear = keyways.length > 0 && others.length > 0 && roles.open.length === 0 && !barred;
  return clear ? { ...roles, entrants: others, openings: keyways } : roles;
}

function isKeywayOnly({ kind, resolution }: Mention): boolean {
  if (resolution.kind !== 'found') return kind === 'keyway';
  return resolution.senses.every((sense) => !canBe(sense, 'entrant'));
}

function isEntrantOnly({ resolution }: Mention): boolean {
  return resolution.kind === 'found' && resolution.senses.every((sense) => !canBe(sense, 'opening'));
}

/** What is asked, by the kinds of words in the question and the parts of its names. */
function formOf(has: (use: WordClass) => boolean, roles: Roles, greeting: boolean): Form {
  const names = roles.entrants.length + roles.openings.length + roles.open.length;
  if (greeting) return 'not understood';
  if (names === 0)
    return has('all') && (isMoving(has) || (has('kind') && has('into'))) ? 'goes into all' : 'not understood';
  return formOfNames(has, roles, names);
}

function formOfNames(has: (use: WordClass) => boolean, { entrants, openings, open }: Roles, names: number): Form {
  if (names >= 2 && has('differs')) return 'what differs';
  if (names >= 2 && has('same')) return 'is it the same';
  if (entrants.length > 0 && openings.length > 0) return 'pair';
  if (names === 1 && open.length === 1 && (has('differs') || has('same'))) return 'do they differ';
  if (open.length === 2 && has('room')) return 'pair';
  if (open.length === names || has('means')) return names === 1 || isAsking(has) ? 'what is' : 'not understood';
  return openings.length > 0 ? 'what goes in' : 'where';
}

function isMoving(has: (use: WordClass) => boolean): boolean {
  return has('enters') || has('takes') || has('stops') || has('handles');
}

function isAsking(has: (use: WordClass) => boolean): boolean {
  return has('asking') || has('means') || has('auxiliary');
}

/** The kind that a question asks for: the kind word soon after "which" or "what", or what "who" must have. */
function askedKind(items: readonly Item[]): NameKind | null {
  const asking = items.findIndex(
    ({ use, word }) => use === 'asking' || use === 'any' || use === 'all' || word.plain === 'there',
  );
  if (asking < 0) return null;
  const kind = items.slice(asking, asking + 4).find(({ use, at }) => use === 'kind' && at <= items[asking].at + 3);
  if (kind) return KIND_WORDS.get(kind.word.plain) ?? null;
  return /^who/.test(items[asking].word.plain) ? 'blank' : null;
}
