import type { Family } from '../family/family.ts';
import { outlineKey } from '../profile/outline-key.ts';
import type { Profile } from '../profile/profile.ts';
import type { Answer, Choice } from './answer.ts';
import { digitRunsOf, foldName, lookAlikeForm } from './fold-name.ts';
import type { Knowledge } from './knowledge.ts';
import type { Mention } from './mention.ts';
import { wordsOf } from './name-phrase.ts';
import { classOf } from './question-words.ts';
import type { Register, Sense } from './register.ts';
import { canBe, narrowed, preferred, profilesOf, type Role, sameSection } from './resolve.ts';
import { chambersText, listed } from './say-list.ts';
import { saySense, saySuccessor } from './say-sense.ts';

/** What a name in a question stands for in its part. */
export interface Meaning {
  readonly mention: Mention;
  readonly sense: Sense;
  /** One profile for each outline. */
  readonly profiles: readonly Profile[];
  /** Profiles that differ from one of those in their length only. */
  readonly alike: readonly Profile[];
  /** What must be said before the answer: that the name is not what it was taken for. */
  readonly corrections: readonly string[];
  /** What the answer is about instead, or the empty text. */
  readonly instead: string;
  /** What may be said after the answer: how the name was taken. */
  readonly notes: readonly string[];
}

/** A meaning, or the answer that must be given instead. */
export type MeaningOrAnswer =
  | { readonly ok: true; readonly meaning: Meaning }
  | { readonly ok: false; readonly answer: Answer };

/**
 * What a name stands for where it has a part in a pair. A blank where a keyway is wanted stands for the keyway of its
 * section, and the other way round, and that is said; a name of several things is asked back.
 *
 * @param question whole, for the ready-made questions.
 */
function takeMeaning(question: string, mention: Mention, role: Role, knowledge: Knowledge): MeaningOrAnswer {
  const { family, register } = knowledge;
  const { resolution } = mention;
  if (resolution.kind !== 'found') return { ok: false, answer: askBack(question, mention, register) };
  const senses = sensesFor(family, resolution.senses, role);
  if (senses.length > 1) return { ok: false, answer: askWhich(question, mention, senses) };
  return { ok: true, meaning: meaningOf(mention, senses[0], role, knowledge) };
}

/** What is said of the meanings of some names; where one of them must be asked back, that. */
export function withMeanings(
  question: string,
  mentions: readonly Mention[],
  role: Role,
  knowledge: Knowledge,
  say: (meanings: readonly Meaning[]) => Answer,
): Answer {
  const meanings: Meaning[] = [];
  for (const mention of mentions) {
    const taken = takeMeaning(question, mention, role, knowledge);
    if (!taken.ok) return taken.answer;
    meanings.push(taken.meaning);
  }
  return say(meanings);
}

/** The senses that matter for a part, one for each thing: names in use before old ones. */
function sensesFor(family: Family, senses: readonly Sense[], role: Role): Sense[] {
  const fitting = preferred(senses, role);
  const inUse = fitting.filter(({ supersededBy }) => supersededBy === null);
  const things = new Map<string, Sense>();
  for (const sense of inUse.length > 0 ? inUse : fitting) {
    const ids = standsFor(family, sense, role).map(({ id }) => id);
    const key = ids.length > 0 ? ids.join(' ') : `${sense.section} ${sense.profile}`;
    if (!things.has(key)) things.set(key, sense);
  }
  return [...things.values()];
}

/** The profiles of a sense in a part, those of its section where it cannot have that part itself. */
function standsFor(family: Family, sense: Sense, role: Role): Profile[] {
  const own = profilesOf(family, sense, role);
  return own.length > 0 || canBe(sense, role) ? own : sameSection(family, sense, role);
}

function meaningOf(mention: Mention, sense: Sense, role: Role, { family, register }: Knowledge): Meaning {
  const all = standsFor(family, sense, role);
  const profiles = all.filter((profile, i) => all.findIndex((other) => isSameOutline(other, profile)) === i);
  const alike = all.filter((profile) => !profiles.includes(profile));
  const wrong = !canBe(sense, role);
  const nothing = all.length === 0 ? [sayNothing(sense, role, family)] : [];
  const corrections = wrong ? saySense(sense, family, role === 'opening' ? 'keyway' : 'blank') : nothing;
  const instead = wrong ? sayInstead(sense, role, all) : '';
  const notes = wrong ? [] : [...noteOf(sense, role, profiles), ...saySuccessor(sense, register)];
  return { mention, sense, profiles, alike, corrections, instead, notes };
}

/** Whether two profiles have the very same outline, wherever they are drawn, so that they differ in their length at most. */
export function isSameOutline(a: Profile, b: Profile): boolean {
  return a.ring === b.ring || (a.ring.length === b.ring.length && outlineKey(a.ring) === outlineKey(b.ring));
}

/** What is answered instead where a name is no keyway, or nothing that goes in. */
function sayInstead(sense: Sense, role: Role, all: readonly Profile[]): string {
  const what = role === 'opening' ? 'keyway' : 'blank';
  if (all.length === 0)
    return sense.section === null
      ? 'It belongs to no section.'
      : `The ${sense.section} section has no ${what} in this family.`;
  const names = listed(all.map(({ name }) => name));
  return `So the answer is for the ${what}${all.length > 1 ? 's' : ''} of that section, ${names}.`;
}

/** That the family has nothing of what a name stands for. */
function sayNothing(sense: Sense, role: Role, family: Family): string {
  const { text, section, chambers } = sense;
  if (section === null) return `${text} stands for nothing in this family.`;
  if (role === 'opening') return `The family has no keyway of the ${section} section.`;
  const others = sameSection(family, sense, 'entrant');
  const length = chambers === null ? '' : ` in ${chambersText(chambers)}`;
  const has = others.length > 0 ? ` It has ${listed(others.map(({ name }) => name))}.` : '';
  return `The family has no blank of the ${section} section${length}.${has}`;
}

/** How a name was taken that does not say it itself. */
function noteOf(sense: Sense, role: Role, profiles: readonly Profile[]): string[] {
  const { text, section, kind, source, scheme, chambers } = sense;
  const names = profiles.map(({ name }) => name);
  if (names.length === 0 || names.some((name) => foldName(name) === foldName(text))) return [];
  const meant = role === 'opening' ? 'its keyway is' : 'its blank is';
  const where = scheme === null ? '' : ` in "${scheme}"`;
  const other = section !== null && foldName(section) !== foldName(text);
  if (kind === 'section')
    return [`${text} ${other ? `is the ${section} section${where}` : 'names a section'}; here ${meant} meant.`];
  if (source !== 'register') return [];
  const length = chambers === null ? '' : ` in ${chambersText(chambers)}`;
  if (kind === 'series')
    return [`${text} is a series${where}: all blanks of the ${section} section, which differ in length only.`];
  if (kind === 'blank' && section !== null)
    return [`${text} is the ${section} section${length}${where ? `,${where}` : ''}.`];
  return [`${text} stands for ${listed(names)}${where}.`];
}

/** The answer where a name is not there: names that come near, or none. */
export function askBack(question: string, mention: Mention, register: Register): Answer {
  const { text, resolution, kind: said, chambers } = mention;
  const near = resolution.kind === 'near' ? narrowed(resolution.candidates, said, chambers) : [];
  const offered = near.length > 0 ? near : namesBeginning(register, text);
  const choices = offered.map((sense) => choiceOf(question, mention, sense.text, sense));
  const none = `There is no name "${text}" in this family.`;
  if (near.length === 0 && choices.length === 0)
    return {
      kind: 'unknown',
      sentences: [none, 'Look it up in the register, or add it there.'],
      profiles: [],
      choices,
    };
  const alike = near.filter((sense) => lookAlikeForm(foldName(sense.text)) === lookAlikeForm(foldName(text)));
  const hints = alike.map((sense) => sayLookAlike(text, sense.text));
  const names = listed(
    choices.map(({ label }) => label),
    'or',
  );
  const kind = near.length > 0 ? 'choose' : 'unknown';
  return { kind, sentences: [none, ...hints, `Did you mean ${names}?`], profiles: [], choices };
}

/** That only signs differ that look alike. */
function sayLookAlike(typed: string, name: string): string {
  const digits = digitRunsOf(foldName(typed)).join('').length;
  const other = digitRunsOf(foldName(name)).join('').length;
  if (digits === other) return `${name} looks much the same: only look-alike letters differ.`;
  return `${name} looks much the same: it has ${other > digits ? 'a digit where a letter' : 'a letter where a digit'} was typed (O and 0, I or l and 1).`;
}

/**
 * Names that begin with the typed words, where these have no digits: "Strip" for "Strip 0.55 x 6"; else names that hold
 * all of them in another order: "0.55 strip".
 */
function namesBeginning({ senses }: Register, text: string): Sense[] {
  const folded = foldName(text);
  const typed = wordsOf(text)
    .map(({ plain }) => foldName(plain))
    .filter((word) => !/^(mm|inch(es)?|thou)$/.test(word));
  if (folded.length < 2) return [];
  const begins = ({ text: name }: Sense) => digitRunsOf(folded).length === 0 && foldName(name).startsWith(folded);
  const holds = ({ text: name }: Sense) => {
    const words = wordsOf(name).map(({ plain }) => foldName(plain));
    return typed.length > 1 && typed.every((word) => words.includes(word));
  };
  const found = senses.filter((sense) => begins(sense) || holds(sense));
  return found.filter((s, i) => found.findIndex((o) => o.text === s.text) === i).slice(0, 5);
}

/** The answer where a name has several senses. */
function askWhich(question: string, mention: Mention, senses: readonly Sense[]): Answer {
  const choices = senses.slice(0, 5).map((sense) => {
    const own = senses.filter(({ scheme }) => scheme === sense.scheme).length === 1 && sense.scheme !== null;
    const meant = own ? `${sense.text} (${sense.scheme})` : (sense.section ?? sense.text);
    return choiceOf(question, mention, meant, sense);
  });
  const what = senses.slice(0, 5).map(({ section, scheme, text }) => {
    const thing = section === null ? text : `the ${section} section`;
    return scheme === null ? thing : `${thing} in "${scheme}"`;
  });
  const sentences = [`${mention.text} names different things: ${listed(what)}.`, 'Which one is meant?'];
  return { kind: 'choose', sentences, profiles: [], choices };
}

/** The question with another name in place of the one that was typed. */
function choiceOf(question: string, { start, end }: Mention, name: string, sense: Sense): Choice {
  const quotes = /["“”«»]/;
  const [before, after] = [question.slice(0, start), question.slice(end)];
  const bare = quotes.test(before.slice(-1)) && quotes.test(after.charAt(0));
  const said = bare ? name : askedAs(name);
  const kind = sense.kind === 'section' ? '(section)' : sense.kind;
  const label = sense.source === 'section' ? `${name} ${kind}` : name;
  return { label, question: `${before}${said}${after}` };
}

/** A name as it stands in a question: in quotation marks where it would be read as something else. */
export function askedAs(name: string): string {
  const plain = foldName(name);
  const odd = classOf(plain) !== null || !/[\p{L}\p{N}]/u.test(name) || /[?;!]/.test(name);
  return odd && !name.includes('"') ? `"${name}"` : name;
}
