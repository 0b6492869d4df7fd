import { entrantsOf, type Family, openingsOf } from '../family/family.ts';
import type { NameKind } from '../family/name-entry.ts';
import type { Profile } from '../profile/profile.ts';
import { digitRunsOf, foldName, lookAlikeForm } from './fold-name.ts';
import { readPhrase } from './name-phrase.ts';
import { type Register, registerOf, type Sense } from './register.ts';
import { textDistance } from './text-distance.ts';

/** What a typed name stands for. `near`: nothing has that name; these come close and are to be asked about. */
export type Resolution =
  | { readonly kind: 'found'; readonly senses: readonly Sense[] }
  | { readonly kind: 'near'; readonly candidates: readonly Sense[] }
  | { readonly kind: 'unknown'; readonly candidates: readonly [] };

/** What part a name has in a pair: what goes in, or what it goes into. */
export type Role = 'entrant' | 'opening';

/** Most candidates that are offered for a name that is not there. */
const MOST_CANDIDATES = 5;

/** Longest text that is compared letter by letter. */
const LONGEST_NAME = 200;

/** Kinds of names that can stand for each part of a pair. */
const PARTS: Readonly<Record<Role, readonly NameKind[]>> = {
  entrant: ['blank', 'tool', 'series', 'section'],
  opening: ['keyway', 'section'],
};

/**
 * What a typed name stands for: first a name that is written the same but for capitals, spaces, punctuation and accents,
 * also with the words of its kind around it ("the Heron", "Heron blank"); else names that come near.
 *
 * Digits are never changed, put in or left out: PC 105 is never offered for PC 106. Where only look-alikes differ (O and
 * 0; I, l and 1) the name is offered, not taken.
 *
 * @param wanted the part that the name has in a pair: senses that can have it are preferred.
 * @returns senses in the order of the register, or at most five candidates, the nearest first.
 * @check tests/unit/names/resolve.test.ts
 */
export function resolveName(register: Register, text: string, wanted?: Role): Resolution {
  const senses = exactSenses(register, text);
  if (senses.length > 0) return { kind: 'found', senses: preferred(senses, wanted) };
  const candidates = nearSenses(register, text, wanted);
  return candidates.length > 0 ? { kind: 'near', candidates } : { kind: 'unknown', candidates: [] };
}

/** The same without names that come near, which take longer to find. */
export function resolveExactly(register: Register, text: string): Resolution {
  const senses = exactSenses(register, text);
  return senses.length > 0 ? { kind: 'found', senses } : { kind: 'unknown', candidates: [] };
}

/** Whether a sense can have a part in a pair. */
export function canBe(sense: Sense, role: Role): boolean {
  return PARTS[role].includes(sense.kind);
}

/** The senses that can have the part, or all where none can. */
export function preferred(senses: readonly Sense[], wanted?: Role): readonly Sense[] {
  const fitting = wanted ? senses.filter((sense) => canBe(sense, wanted)) : senses;
  return fitting.length > 0 ? fitting : senses;
}

/** A name as it is compared with what is typed. */
interface Compared {
  readonly form: Form;
  readonly senses: readonly Sense[];
}

/** Senses by their folded text, and by what is left of it without the words of their kind. */
interface Lookup {
  readonly whole: ReadonlyMap<string, readonly Sense[]>;
  readonly cores: ReadonlyMap<string, readonly Sense[]>;
  /** The names of profiles by the ids of these. */
  readonly ids: ReadonlyMap<string, readonly Sense[]>;
  /** Names whole and without the words of their kind, as they are compared with what is typed: by their digits. */
  readonly byDigits: ReadonlyMap<string, readonly Compared[]>;
  /** The same by how they look. */
  readonly byLook: ReadonlyMap<string, readonly Compared[]>;
}

const lookups = new WeakMap<Register, Lookup>();

function lookupOf(register: Register): Lookup {
  const known = lookups.get(register);
  if (known) return known;
  const whole = grouped(register.senses, ({ text }) => foldName(text));
  const cores = grouped(register.senses, ({ text }) => foldName(readPhrase(text).core));
  const all = [...whole, ...[...cores].filter(([folded]) => !whole.has(folded))];
  const compared = all.map(([folded, senses]) => ({ form: formOf(folded), senses }));
  const made = {
    ...{ whole, cores, ids: idsOf(register) },
    byDigits: grouped(compared, ({ form }) => form.digits),
    byLook: grouped(compared, ({ form }) => form.lookAlike),
  };
  lookups.set(register, made);
  return made;
}

function idsOf({ senses }: Register): Map<string, Sense[]> {
  const named = senses.filter(({ source }) => source === 'profile');
  return new Map(named.flatMap((sense) => (sense.profile === null ? [] : [[sense.profile.toLowerCase(), [sense]]])));
}

function grouped<Value>(values: readonly Value[], keyOf: (value: Value) => string): Map<string, Value[]> {
  const groups = new Map<string, Value[]>();
  for (const value of values) {
    const key = keyOf(value);
    const group = groups.get(key);
    if (group) group.push(value);
    else groups.set(key, [value]);
  }
  return groups;
}

/**
 * Senses whose name is written like the text, whatever stands around it; where none is, the profile whose id is the very
 * text but for capitals.
 */
export function sensesWritten(register: Register, text: string): readonly Sense[] {
  const { whole, ids } = lookupOf(register);
  return whole.get(foldName(text)) ?? ids.get(text.toLowerCase()) ?? [];
}

/** Senses of a name, alone or with the words of its kind. */
function exactSenses(register: Register, text: string): readonly Sense[] {
  const whole = sensesWritten(register, text);
  if (whole.length > 0) return whole;
  const { core, kind, chambers } = readPhrase(text);
  const written = sensesWritten(register, core);
  const senses = written.length > 0 ? written : (lookupOf(register).cores.get(foldName(core)) ?? []);
  return narrowed(senses, kind, chambers);
}

/**
 * The senses that agree with what is said beside the name; the name of a section with "blank" beside it stands for its
 * blanks. Where none agrees, all of them: who asks is told what the name is.
 */
export function narrowed(senses: readonly Sense[], kind: NameKind | null, chambers: number | null): readonly Sense[] {
  const meant = senses.map((sense) => (kind && sense.source === 'section' ? { ...sense, kind } : sense));
  const ofKind = meant.filter((sense) => kind === null || sense.kind === kind);
  const rest = ofKind.length > 0 ? ofKind : senses;
  if (chambers === null) return rest;
  const ofLength = rest.filter((sense) => sense.chambers === chambers);
  if (ofLength.length > 0) return ofLength;
  return rest.map((sense) => (sense.profile === null && sense.chambers === null ? { ...sense, chambers } : sense));
}

/** Names that come near, one sense a text, the nearest first. */
function nearSenses(register: Register, text: string, wanted?: Role): Sense[] {
  if (text.length > LONGEST_NAME) return [];
  const typed = [...new Set([foldName(text), foldName(readPhrase(text).core)])].map(formOf);
  const near: { sense: Sense; distance: number }[] = [];
  const { byDigits, byLook } = lookupOf(register);
  const worth = typed.flatMap((one) => [...(byLook.get(one.lookAlike) ?? []), ...(byDigits.get(one.digits) ?? [])]);
  for (const { form, senses } of new Set(worth)) {
    const distance = Math.min(...typed.map((one) => distanceOf(one, form)));
    if (Number.isFinite(distance)) near.push({ sense: preferred(senses, wanted)[0], distance });
  }
  near.sort((a, b) => a.distance - b.distance);
  const once = near.filter(({ sense }, i) => near.findIndex((other) => other.sense.text === sense.text) === i);
  return once.slice(0, MOST_CANDIDATES).map(({ sense }) => sense);
}

/** A folded name with what is compared of it. */
interface Form {
  readonly folded: string;
  readonly lookAlike: string;
  /** Its runs of digits, a space between. */
  readonly digits: string;
  readonly letters: number;
}

function formOf(folded: string): Form {
  const letters = folded.replace(/\p{Nd}/gu, '').length;
  return { folded, lookAlike: lookAlikeForm(folded), digits: digitRunsOf(folded).join(' '), letters };
}

/**
 * How far a typed name is from a name, as a share of its length; infinite where it is not near. Only look-alikes: nearer
 * than any slip of a letter. Only the digits typed: further.
 */
function distanceOf(typed: Form, name: Form): number {
  if (typed.lookAlike === name.lookAlike) return 0.01;
  if (typed.digits !== name.digits) return Number.POSITIVE_INFINITY;
  if (typed.digits !== '' && typed.digits === typed.folded) return 1;
  const most = slipsIn(Math.min(typed.letters, name.letters), typed.digits !== '');
  const distance = textDistance(typed.folded, name.folded, most);
  return distance > most ? Number.POSITIVE_INFINITY : distance / name.folded.length;
}

/** Most slips in so many letters for a name still to be taken for another one; digits beside them tell which is meant. */
function slipsIn(letters: number, digits: boolean): number {
  if (letters < 3) return digits && letters === 2 ? 1 : 0;
  if (letters < 5) return 1;
  return letters < 10 ? 2 : 3;
}

/**
 * The profiles that a sense stands for, in chart order. A name that is superseded and says no more stands for what its
 * successor stands for.
 *
 * @param wanted only what goes in, or only keyways: a blank wanted as a keyway gives [], since it is none.
 * @returns [] also where the family has no such section or profile.
 * @check tests/unit/names/resolve.test.ts
 */
export function profilesOf(family: Family, sense: Sense, wanted?: Role): Profile[] {
  const pool = poolOf(family, wanted);
  if (sense.profile !== null) return pool.filter(({ id }) => id === sense.profile);
  if (sense.section !== null) return pool.filter((profile) => isMeant(profile, sense));
  const successor = successorOf(registerOf(family), sense);
  return successor ? profilesOf(family, successor, wanted) : [];
}

/** Everything else of the section of a sense in one part of a pair: the keyways of a blank's section, for example. */
export function sameSection(family: Family, sense: Sense, role: Role): Profile[] {
  const section = sense.section ?? successorOf(registerOf(family), sense)?.section ?? null;
  return section === null ? [] : poolOf(family, role).filter((profile) => profile.section === section);
}

/** The sense that a superseded name leads to, or null where there is none or the names lead in a circle. */
export function successorOf(register: Register, sense: Sense): Sense | null {
  const seen = new Set([foldName(sense.text)]);
  for (let next = sense; ; ) {
    if (next.supersededBy === null) return next === sense ? null : next;
    const folded = foldName(next.supersededBy);
    if (seen.has(folded)) return null;
    seen.add(folded);
    const found = exactSenses(register, next.supersededBy);
    if (found.length === 0) return null;
    next = found.find(({ kind }) => kind === sense.kind) ?? found[0];
  }
}

function poolOf(family: Family, wanted?: Role): readonly Profile[] {
  if (wanted === 'entrant') return entrantsOf(family);
  return wanted === 'opening' ? openingsOf(family) : family.profiles;
}

/** Whether a profile is among what a name for something of a section stands for. */
function isMeant(profile: Profile, { section, kind, chambers }: Sense): boolean {
  if (profile.section !== section) return false;
  if (chambers !== null && profile.kind !== 'opening' && profile.chambers !== chambers) return false;
  if (kind === 'section') return true;
  if (kind === 'keyway') return profile.kind === 'opening';
  return profile.kind === (kind === 'tool' ? 'tool' : 'blank');
}
