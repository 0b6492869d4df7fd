import { numberWord } from '../family/count-word.ts';
import type { Family } from '../family/family.ts';
import type { NameKind } from '../family/name-entry.ts';
import { foldName } from './fold-name.ts';
import { type Register, registerOf, type Sense } from './register.ts';
import { profilesOf, sameSection, successorOf } from './resolve.ts';
import { chambersText, listed } from './say-list.ts';

/** What each kind of name is called, with its article. */
const KIND_TEXT: Readonly<Record<NameKind, string>> = {
  keyway: 'a keyway (the opening of a lock as seen from the front)',
  section: 'a section (the shape that a keyway and its blanks share)',
  blank: 'a blank (a key that is not cut yet)',
  tool: 'a tool (it goes in, but it is no key blank)',
  series: 'a series (one name for blanks of several lengths)',
};

/**
 * What a name is, in sentences: its kind, its section and length, other lengths of that section, what it is called now.
 *
 * @param instead what the name was taken for and is not: "not a keyway" is said of a blank.
 * @check tests/unit/names/ask.test.ts
 */
export function saySense(sense: Sense, family: Family, instead?: NameKind): string[] {
  const register = registerOf(family);
  return [headOf(sense, family, instead), ...otherLengths(sense, register), ...saySuccessor(sense, register)];
}

/** Kind, section and length of a name in one sentence. */
function headOf(sense: Sense, family: Family, instead?: NameKind): string {
  const { text, kind, section, chambers, scheme } = sense;
  const inScheme = scheme === null ? '' : ` in "${scheme}"`;
  const not = instead ? `, not a ${instead}` : '';
  if (kind === 'blank' && sense.source === 'register') {
    const is = section === null ? sayProfile(sense, family) : `it is the ${section} section${inChambers(chambers)}`;
    return `${text} is a blank number${inScheme}${not}; ${is}.`;
  }
  if (sense.source === 'section' && kind !== 'section') return sayThingsOf(sense, family, not);
  if (kind === 'section') return saySection(sense, family, inScheme);
  if (kind === 'series') return saySeries(sense, family, inScheme, not);
  const ofSection = section === null ? '' : ` of the ${section} section`;
  return `${text} is ${KIND_TEXT[kind]}${ofSection}${kind === 'blank' ? inChambers(chambers) : ''}${inScheme}${not}.`;
}

function inChambers(chambers: number | null): string {
  return chambers === null ? '' : ` in ${chambersText(chambers)}`;
}

function sayProfile(sense: Sense, family: Family): string {
  const names = profilesOf(family, sense).map(({ name }) => name);
  return names.length > 0 ? `it stands for ${listed(names)}` : 'what it stands for is not in this family';
}

/** "the Heron blank", of a section: all its blanks. */
function sayThingsOf(sense: Sense, family: Family, not: string): string {
  const names = profilesOf(family, sense).map(({ name }) => name);
  const { text, kind } = sense;
  if (names.length === 0) return `The family has no ${kind} of the ${text} section.`;
  return `${listed(names)} ${names.length > 1 ? `are ${kind}s` : `is ${KIND_TEXT[kind]}`} of the ${text} section${not}.`;
}

/** A section with its keyway and its blanks, and where it stands between others. */
function saySection(sense: Sense, family: Family, inScheme: string): string {
  const { text, section } = sense;
  const named = section === null || foldName(section) === foldName(text) ? '' : `; it is the ${section} section`;
  const keyways = sameSection(family, sense, 'opening').map(({ name }) => name);
  const blanks = sameSection(family, sense, 'entrant').map(({ name }) => name);
  const has = [...(keyways.length > 0 ? [`its keyway is ${listed(keyways)}`] : ['no keyway has this section'])];
  if (blanks.length > 0) has.push(`its ${blanks.length > 1 ? 'blanks are' : 'blank is'} ${listed(blanks)}`);
  return `${text} is ${KIND_TEXT.section}${inScheme}${named}; ${has.join(', ')}.`;
}

function saySeries(sense: Sense, family: Family, inScheme: string, not: string): string {
  const blanks = profilesOf(family, sense, 'entrant').map(({ name }) => name);
  const of = sense.section === null ? '' : `, those of the ${sense.section} section`;
  const members = blanks.length > 0 ? ` (${listed(blanks)})` : '';
  return `${sense.text} is a series${inScheme}${not}: one name for blanks of several lengths${of}${members}.`;
}

/** Names of the same section and scheme for other lengths: "A five-chamber blank of the same section is PC 105." */
function otherLengths(sense: Sense, register: Register): string[] {
  const { kind, section, chambers, scheme, source } = sense;
  if (kind !== 'blank' || section === null || chambers === null) return [];
  const others = register.senses.filter(
    (other) =>
      other.kind === 'blank' &&
      other.section === section &&
      other.source === source &&
      other.scheme === scheme &&
      other.chambers !== null &&
      other.chambers !== chambers &&
      other.supersededBy === null,
  );
  return others.slice(0, 3).map((other) => {
    const length = numberWord(other.chambers ?? 0);
    return `${/^eight|^eleven/.test(length) ? 'An' : 'A'} ${length}-chamber blank of the same section is ${other.text}.`;
  });
}

/** That a name is no longer used, and what is used instead. */
export function saySuccessor(sense: Sense, register: Register): string[] {
  const { text, supersededBy } = sense;
  if (supersededBy === null) return [];
  const now = successorOf(register, sense)?.text ?? supersededBy;
  const by = foldName(now) === foldName(supersededBy) ? now : `${supersededBy}, and that by ${now}`;
  return [`${text} is an old name; it was replaced by ${by}.`];
}

/** Other names of the same section in the register, with their schemes: "It is also called …". */
export function otherNames(sense: Sense, family: Family): string[] {
  const ids = new Set(profilesOf(family, sense).map(({ id }) => id));
  if (ids.size === 0) return [];
  const others = registerOf(family).senses.filter((other) => {
    if (foldName(other.text) === foldName(sense.text) || other.supersededBy !== null) return false;
    if (other.source === 'section' || (other.kind !== sense.kind && sense.kind !== 'section')) return false;
    if ((sense.kind === 'section' || sense.source === 'section') && other.source === 'profile') return false;
    const stands = profilesOf(family, other);
    return (
      stands.length > 0 &&
      stands.every(({ id }) => ids.has(id)) &&
      (sense.kind === 'section' || stands.length === ids.size)
    );
  });
  const texts = [...new Set(others.map(({ text, scheme }) => (scheme === null ? text : `${text} ("${scheme}")`)))];
  return texts.length > 0 ? [`It is also called ${listed(texts.slice(0, 6))}.`] : [];
}
