import { foldName } from './fold-name.ts';
import { type FreshNames, targetOf } from './fresh-name.ts';
import type { Knowledge } from './knowledge.ts';
import type { MisleadingName } from './misleading-name.ts';
import { readPhrase } from './name-phrase.ts';
import { type Sense, sectionsOf } from './register.ts';
import { profilesOf, sameSection } from './resolve.ts';
import { chambersText, listed } from './say-list.ts';
import { goesIn } from './say-pair.ts';
import { isSameOutline } from './take-meaning.ts';

/**
 * One text for different things in two schemes, or twice in one.
 *
 * @check tests/unit/names/misleading.test.ts
 */
export function findTwoSchemes(knowledge: Knowledge, fresh: FreshNames): MisleadingName[] {
  const byText = new Map<string, Sense[]>();
  for (const sense of knowledge.register.senses) {
    if (sense.supersededBy !== null) continue;
    const folded = foldName(sense.text);
    byText.set(folded, [...(byText.get(folded) ?? []), sense]);
  }
  return [...byText.values()].flatMap((senses) => {
    const different = senses.filter(
      (sense, i) => !senses.slice(0, i).some((other) => isSameThing(sense, other, knowledge)),
    );
    const listedOnly = different.filter(({ source }) => source === 'register');
    return different.length > 1 && listedOnly.length > 0 ? [sayTwoSchemes(different, fresh)] : [];
  });
}

/** Whether two names stand for one thing as far as a reader can be misled: one section, and no other length. */
function isSameThing(a: Sense, b: Sense, { family }: Knowledge): boolean {
  if (a.section !== null && b.section !== null) {
    const lengths = a.chambers === null || b.chambers === null || a.chambers === b.chambers;
    return foldName(a.section) === foldName(b.section) && lengths;
  }
  const [mine, yours] = [profilesOf(family, a), profilesOf(family, b)];
  return mine.some((profile) => yours.includes(profile)) || (mine.length === 0 && yours.length === 0);
}

function sayTwoSchemes(senses: readonly Sense[], fresh: FreshNames): MisleadingName {
  const [first] = senses;
  const told = senses.map((sense) => {
    const where = sense.scheme === null ? 'among the names of the family' : `in "${sense.scheme}"`;
    const length = sense.chambers === null ? '' : ` in ${chambersText(sense.chambers)}`;
    return `${sense.section === null ? `a ${sense.kind}` : `the ${sense.section} section${length}`} ${where}`;
  });
  // The names of the family stay; of two lists, the first keeps the name.
  const kept = senses.find(({ source }) => source !== 'register') ?? first;
  const changed = senses.filter((sense) => sense !== kept && sense.source === 'register');
  return {
    kind: 'two schemes',
    texts: [first.text],
    words: `"${first.text}" is ${listed(told)}.`,
    why: 'Who looks it up in one list and orders by the other gets the wrong thing.',
    renames: changed.map((sense) => ({ target: targetOf(sense), to: fresh.next(sense) })),
  };
}

/**
 * Two sections whose names are written alike but for capitals, spaces and accents, and two things of different shape under
 * one name.
 *
 * @check tests/unit/names/misleading.test.ts
 */
export function findSameNames({ family, register }: Knowledge, fresh: FreshNames): MisleadingName[] {
  const sections = sectionsOf(family);
  const twice = sections.filter((s, i) => sections.findIndex((other) => foldName(other) === foldName(s)) < i);
  const bySection = twice.map((section): MisleadingName => {
    const other = sections.find((one) => foldName(one) === foldName(section)) ?? section;
    return {
      kind: 'same section name',
      texts: [other, section],
      words: `"${other}" and "${section}" are two sections under one name: only capitals, spaces or accents differ.`,
      why: 'Nobody hears the difference, and an order by telephone gets either.',
      renames: [{ target: { of: 'section', section }, to: fresh.word() }],
    };
  });
  const shared = new Set(twice.map(foldName));
  const own = register.senses.filter(
    ({ source, section }) => source === 'profile' && !shared.has(foldName(section ?? '')),
  );
  const byId = new Map(family.profiles.map((profile) => [profile.id, profile]));
  const firsts = new Map(own.toReversed().map((sense) => [foldName(sense.text), sense]));
  const byName = own.flatMap((sense): MisleadingName[] => {
    const first = firsts.get(foldName(sense.text));
    const other = first === sense ? undefined : first;
    const [a, b] = [byId.get(other?.profile ?? ''), byId.get(sense.profile ?? '')];
    if (!other || !a || !b || (a.kind === b.kind && isSameOutline(a, b) && a.chambers === b.chambers)) return [];
    const length = b.chambers === undefined ? [] : [`${sense.text}, ${chambersText(b.chambers)}`];
    const tries = [
      ...length,
      `${sense.text} (${sense.kind})`,
      ...[2, 3, 4, 5, 6, 7, 8, 9].map((n) => `${sense.text} ${n}`),
    ];
    return [
      {
        kind: 'same section name',
        texts: [other.text, sense.text],
        words: `Two different things are called "${sense.text}".`,
        why: 'Nobody can tell which of them is meant.',
        renames: [{ target: targetOf(sense), to: fresh.firstOf(tries) ?? fresh.word() }],
      },
    ];
  });
  return [...bySection, ...byName];
}

/**
 * Blanks that are named like another section and do not go into its keyway, or beside that section's own blank.
 *
 * @check tests/unit/names/misleading.test.ts
 */
export function findForeignKeyways(knowledge: Knowledge, fresh: FreshNames): MisleadingName[] {
  const { family, register } = knowledge;
  const sections = new Map(sectionsOf(family).map((section) => [foldName(section), section]));
  return register.senses.flatMap((sense): MisleadingName[] => {
    const named = sections.get(foldName(readPhrase(sense.text).core));
    const { section, kind, supersededBy } = sense;
    if (kind !== 'blank' || supersededBy !== null || named === undefined || section === null) return [];
    if (foldName(named) === foldName(section)) return [];
    const other = { ...sense, section: named, profile: null };
    const keyways = sameSection(family, other, 'opening');
    const goers = profilesOf(family, sense, 'entrant');
    const answers = goers.flatMap((goer) => keyways.map((keyway) => goesIn(knowledge, goer, keyway)));
    const rival = sameSection(family, other, 'entrant').length > 0;
    if (answers.length === 0 || answers.includes(undefined) || !(answers.includes(false) || rival)) return [];
    const does = answers.includes(false) ? 'does not go into' : 'is not the own blank of';
    return [
      {
        kind: 'foreign keyway',
        texts: [sense.text],
        words: `"${sense.text}" is a blank of the ${section} section and ${does} ${listed(keyways.map(({ name }) => name))}.`,
        why: `Who reads it takes it for the blank of the ${named} section.`,
        renames: [{ target: targetOf(sense), to: ownName(sense, section, fresh) }],
      },
    ];
  });
}

/** A name for a blank after its own section. */
function ownName({ chambers, text }: Sense, section: string, fresh: FreshNames): string {
  const number = /\p{Nd}+$/u.exec(text)?.[0];
  const plain = `${section} blank`;
  const lengths = chambers === null ? [] : [`${plain}, ${chambersText(chambers)}`];
  return (
    fresh.firstOf([plain, ...lengths, ...(number ? [`${plain} ${number}`] : []), `${section} blank, other list`]) ??
    plain
  );
}
