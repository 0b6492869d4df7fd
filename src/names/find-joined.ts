import type { Profile } from '../profile/profile.ts';
import { foldName } from './fold-name.ts';
import { type FreshNames, targetOf } from './fresh-name.ts';
import type { Knowledge } from './knowledge.ts';
import type { MisleadingName } from './misleading-name.ts';
import { readPhrase } from './name-phrase.ts';
import { type Sense, sectionsOf } from './register.ts';
import { profilesOf, sameSection } from './resolve.ts';
import { listed } from './say-list.ts';
import { goesIn } from './say-pair.ts';

/** A name that is made of the names of sections, and what it stands for does not go into all of them. */
export interface JoinedName {
  readonly sense: Sense;
  /** The sections whose names it joins, in the order of the chart. */
  readonly parts: readonly string[];
  /** Those of them that it does have to do with. */
  readonly into: readonly string[];
}

/** Shortest beginning of a section's name that a joined name may be made of. */
const SHORTEST_BEGINNING = 3;

/**
 * Names that join the names of sections, whole, by their beginnings or by their initials, and whose blank does not go into
 * the keyways of all of them. A name whose pairs are not judged yet is not told.
 *
 * @check tests/unit/names/misleading.test.ts
 */
export function findJoined(knowledge: Knowledge): JoinedName[] {
  const { family, register } = knowledge;
  const sections = sectionsOf(family).map((section) => ({ section, folded: foldName(section) }));
  const carried = new Set(sections.map(({ folded }) => folded));
  return register.senses.flatMap((sense): JoinedName[] => {
    const core = readPhrase(sense.text).core;
    if (sense.supersededBy !== null || sense.kind === 'tool') return [];
    if (sense.source === 'profile' && carried.has(foldName(core))) return [];
    const parts = partsOf(core, sense, sections);
    const into = parts?.map((part) => isTrueOf(sense, part, knowledge));
    if (!parts || !into || into.includes(undefined) || !into.includes(false)) return [];
    return [{ sense, parts, into: parts.filter((_, i) => into[i]) }];
  });
}

/** A section's name, and folded. */
interface Named {
  readonly section: string;
  readonly folded: string;
}

/** The sections that a name is made of, or null where it is no joining. */
function partsOf(core: string, sense: Sense, sections: readonly Named[]): readonly string[] | null {
  const written = core.replace(/ (and|or|with) |[&+/]/gi, ' ').replace(/\p{Nd}+$/u, '');
  const folded = foldName(written);
  const others = sections.filter((one) => one.folded !== folded);
  const found = wholeNames(folded, others) ?? beginnings(folded, others) ?? initials(core, sense, sections);
  if (!found) return null;
  return sections.filter(({ section }) => found.some((one) => one.section === section)).map(({ section }) => section);
}

/** A text taken apart into whole names of two or three sections, none twice. */
function wholeNames(folded: string, sections: readonly Named[], most = 3): readonly Named[] | null {
  if (most < 2) return null;
  for (const named of sections) {
    if (named.folded.length >= folded.length || !folded.startsWith(named.folded)) continue;
    const rest = folded.slice(named.folded.length);
    const left = sections.filter((other) => other !== named);
    const last = left.find((other) => other.folded === rest);
    const more = last ? [last] : wholeNames(rest, left, most - 1);
    if (more) return [named, ...more];
  }
  return null;
}

/** "HerBit": beginnings of two names. */
function beginnings(folded: string, sections: readonly Named[]): readonly Named[] | null {
  for (let at = SHORTEST_BEGINNING; at <= folded.length - SHORTEST_BEGINNING; at += 1) {
    const a = onlyBeginning(folded.slice(0, at), sections);
    const b = a && onlyBeginning(folded.slice(at), sections);
    if (a && b && a !== b) return [a, b];
  }
  return null;
}

/** The one section whose name begins so. */
function onlyBeginning(beginning: string, sections: readonly Named[]): Named | null {
  const found = sections.filter(({ folded }) => folded.startsWith(beginning));
  return found.length === 1 ? found[0] : null;
}

/** "HB": the initials of the two neighbours of its own section in the chart. */
function initials(core: string, { section }: Sense, sections: readonly Named[]): readonly Named[] | null {
  const letters = /^(\p{Lu})[ \-./]?(\p{Lu})$/u.exec(core.trim());
  const own = sections.findIndex((one) => one.section === section);
  const [before, after] = [sections[own - 1], sections[own + 1]];
  if (!letters || own < 0 || !before || !after) return null;
  const [a, b] = [before, after].map((one) => one.section.charAt(0).toUpperCase());
  const [first, second] = [letters[1], letters[2]];
  return (a === first && b === second) || (a === second && b === first) ? [before, after] : null;
}

/**
 * Whether a joined name tells the truth of one section: its blank goes into that section's keyways; for a name of a keyway,
 * that section's blanks go into it. Undefined where that is not judged, true where there is nothing to judge.
 */
function isTrueOf(sense: Sense, part: string, knowledge: Knowledge): boolean | undefined {
  const { family } = knowledge;
  const other = { ...sense, section: part, profile: null, chambers: null };
  const own = profilesOf(family, sense, 'entrant');
  const goers = own.length > 0 ? own : [];
  const keyways = own.length > 0 ? sameSection(family, other, 'opening') : profilesOf(family, sense, 'opening');
  const entrants = own.length > 0 ? goers : sameSection(family, other, 'entrant');
  const answers = entrants.flatMap((entrant) => keyways.map((keyway) => goesIn(knowledge, entrant, keyway)));
  if (answers.length === 0) return true;
  if (answers.includes(false)) return false;
  return answers.includes(undefined) ? undefined : true;
}

/** A joined name in words, with a name instead: that of its section, or a new one where the section itself is called so. */
export function sayJoined({ sense, parts, into }: JoinedName, knowledge: Knowledge, fresh: FreshNames): MisleadingName {
  const { text, section } = sense;
  const things = thingsOf(sense, knowledge);
  const thing = listed(things.map(({ name }) => name)) || text;
  const keyway = things.length > 0 && things.every(({ kind }) => kind === 'opening');
  const only = into.length > 0 ? `only ${listed(into)}` : 'neither';
  const words = keyway
    ? `"${text}" joins the names of ${listed(parts)}, but of these ${into.length > 0 ? only : 'no'} blank goes into ${thing}.`
    : `"${text}" joins the names of ${listed(parts)}, but ${thing} goes into ${parts.length > 2 && into.length === 0 ? 'none of them' : only}.`;
  const own = section !== null && foldName(section) !== foldName(text) ? section : null;
  return {
    kind: 'joined',
    texts: [text],
    words,
    why: 'Who reads it expects one blank for both. An in-between section is a section of its own, with its own keyway.',
    renames: [{ target: targetOf(sense), to: own ?? fresh.word() }],
  };
}

function thingsOf(sense: Sense, { family }: Knowledge): Profile[] {
  const goers = profilesOf(family, sense, 'entrant');
  return goers.length > 0 ? goers : profilesOf(family, sense);
}
