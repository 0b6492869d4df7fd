import type { Family } from '../family/family.ts';
import type { Profile } from '../profile/profile.ts';
import { misreadForm } from './fresh-name.ts';
import type { Rename } from './misleading-name.ts';
import { namingWords } from './naming-words.ts';
import { registerOf, sectionsOf } from './register.ts';
import { chambersText } from './say-list.ts';

/** How a family is to be named. */
export type NamingScheme =
  | {
      readonly by: 'words';
      /** Words of one's own, taken first; plain words of ours behind them. */
      readonly words?: readonly string[];
    }
  | {
      readonly by: 'numbers';
      /** Stands before the number: "K"; may be empty. */
      readonly prefix: string;
      readonly first: number;
      /** From one section to the next: 10 leaves nine numbers for in-between sections. */
      readonly step: number;
    };

/** Greatest number that a section is given. */
const GREATEST = 99_999_999;

/**
 * What is wrong with a scheme, in words, or null. A prefix may not hold signs that look like digits.
 *
 * @check tests/laws/naming-scheme.test.ts
 */
export function schemeFault(scheme: NamingScheme): string | null {
  if (scheme.by === 'words') return wordsFault(scheme.words ?? []);
  const { prefix, first, step } = scheme;
  if (!Number.isInteger(first) || first < 1 || first > 1_000_000)
    return 'The first number must be whole, 1 to 1,000,000.';
  if (!Number.isInteger(step) || step < 1 || step > 10_000) return 'The step must be whole, 1 to 10,000.';
  if (!/^\p{L}{0,8}$/u.test(prefix.trim())) return 'The prefix must be letters only, eight at most.';
  const odd = [...prefix].filter((sign) => /[OoIlSsBbZz]/.test(sign));
  return odd.length > 0
    ? `The prefix has ${[...new Set(odd)].join(', ')}, which is read as a digit beside a number.`
    : null;
}

function wordsFault(words: readonly string[]): string | null {
  if (words.some((word) => !/\p{L}{2}/u.test(word) || word.length > 60))
    return 'Every word needs two letters at least, and 60 signs at most.';
  const digits = words.find((word) => /\p{Nd}/u.test(word));
  if (digits !== undefined) return `"${digits}" has a digit: numbers are the other scheme.`;
  const forms = words.map(misreadForm);
  const twice = words.find((_, i) => forms.indexOf(forms[i]) < i);
  return twice === undefined ? null : `"${twice}" looks like another word of the list.`;
}

/**
 * New names for the sections of a family and all its keyways and blanks: sections by words or by numbers in chart order,
 * numbers with gaps for in-between sections; a blank has the name of its section, and its length where the section has
 * several, so that no number tells a length. Tools keep their names. Nothing that has its name already is renamed.
 *
 * @returns renames for {@link renameIn}, which does them at once; [] where the scheme has a fault.
 * @check tests/laws/naming-scheme.test.ts: no name of the family misleads afterwards
 */
export function nameByScheme(family: Family, scheme: NamingScheme): readonly Rename[] {
  if (schemeFault(scheme) !== null) return [];
  const sections = sectionsOf(family);
  const loose = family.profiles.filter(({ section, kind }) => section === undefined && kind !== 'tool');
  const names = freeNames(family, scheme, sections.length + loose.length);
  const bySection = new Map(sections.map((section, i) => [section, names[i]]));
  const renames: Rename[] = sections.map((section, i) => ({ target: { of: 'section', section }, to: names[i] }));
  for (const profile of family.profiles) {
    if (profile.kind === 'tool') continue;
    const stem =
      profile.section === undefined ? names[sections.length + loose.indexOf(profile)] : bySection.get(profile.section);
    renames.push({ target: { of: 'profile', id: profile.id }, to: profileName(profile, stem ?? '', family) });
  }
  const byId = new Map(family.profiles.map(({ id, name }) => [id, name]));
  return renames.filter(({ target, to }) => {
    if (target.of === 'profile') return byId.get(target.id) !== to;
    return target.of !== 'section' || target.section !== to;
  });
}

/** So many names that nothing else in the register has: neither its lists nor the tools. */
function freeNames(family: Family, scheme: NamingScheme, count: number): string[] {
  const others = registerOf(family).senses.filter(({ source, kind }) => source === 'register' || kind === 'tool');
  const taken = new Set(others.flatMap(({ text, section }) => (section === text ? [] : [misreadForm(text)])));
  const names: string[] = [];
  for (const name of scheme.by === 'words' ? namingWords(scheme.words?.map((word) => word.trim())) : numbers(scheme)) {
    if (names.length === count) break;
    const form = misreadForm(name);
    if (taken.has(form)) continue;
    taken.add(form);
    names.push(name);
  }
  return names;
}

function* numbers({ prefix, first, step }: Extract<NamingScheme, { by: 'numbers' }>): Generator<string> {
  const head = prefix.trim();
  for (let n = first; n <= GREATEST; n += step) yield head === '' ? String(n) : `${head} ${n}`;
}

/** "K 20 keyway", "K 20 blank", "K 20 blank, six chambers"; a number behind only where one section has several shapes. */
function profileName(profile: Profile, stem: string, family: Family): string {
  const peers = family.profiles.filter((other) => isPeer(other, profile));
  const lengths = new Set(peers.map(({ chambers }) => chambers));
  const kind = profile.kind === 'opening' ? 'keyway' : 'blank';
  const length = kind === 'blank' && lengths.size > 1 && profile.chambers !== undefined;
  const alike = peers.filter((other) => kind === 'keyway' || other.chambers === profile.chambers);
  const place = Math.max(alike.indexOf(profile), 0);
  const letter = alike.length > 1 ? ` ${variantOf(place)}` : '';
  return `${stem} ${kind}${letter}${length ? `, ${chambersText(profile.chambers ?? 0)}` : ''}`;
}

function isPeer(other: Profile, profile: Profile): boolean {
  if (other.kind !== profile.kind) return false;
  return profile.section === undefined ? other === profile : other.section === profile.section;
}

/** A letter for each of several things of one section: a, c, d, e, ... without those that look like digits. */
function variantOf(place: number): string {
  const letters = 'acdefghjkmnpqrtuvwxy';
  const more = Math.floor(place / letters.length);
  return (more > 0 ? variantOf(more - 1) : '') + letters.charAt(place % letters.length);
}
