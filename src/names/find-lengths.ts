import { foldName } from './fold-name.ts';
import { type FreshNames, numberedParts, targetOf } from './fresh-name.ts';
import type { Knowledge } from './knowledge.ts';
import type { MisleadingName, Rename } from './misleading-name.ts';
import { readPhrase } from './name-phrase.ts';
import type { Sense } from './register.ts';
import { chambersText, listed } from './say-list.ts';

/** Names of one scheme for blanks of one section in several lengths. */
interface Lengths {
  readonly section: string;
  /** By length, the shortest first; one name for each length. */
  readonly senses: readonly Sense[];
}

/**
 * Names of blanks that differ in length only: those that look like two sections, those whose numbers run against their
 * lengths, and those of one section that nothing written down sets apart.
 *
 * @check tests/unit/names/misleading.test.ts
 */
export function findLengths(knowledge: Knowledge, fresh: FreshNames): MisleadingName[] {
  const told = groups(knowledge).flatMap((group) => [...lookLikeSections(group, fresh), ...runBackwards(group, fresh)]);
  return [...told, ...withoutLengths(knowledge)];
}

function groups({ register }: Knowledge): Lengths[] {
  const byKey = new Map<string, Sense[]>();
  for (const sense of register.senses) {
    const { kind, section, chambers, supersededBy, scheme, source } = sense;
    if (kind !== 'blank' || section === null || chambers === null || supersededBy !== null) continue;
    const key = JSON.stringify([source === 'register' ? scheme : source, section]);
    byKey.set(key, [...(byKey.get(key) ?? []), sense]);
  }
  return [...byKey.values()].flatMap((senses) => {
    const sorted = [...senses].sort((a, b) => (a.chambers ?? 0) - (b.chambers ?? 0));
    const once = sorted.filter((s, i) => sorted.findIndex(({ chambers }) => chambers === s.chambers) === i);
    return once.length > 1 ? [{ section: once[0].section ?? '', senses: once }] : [];
  });
}

/** A name without its length: what two names of one section should share. */
function stemOf({ text, chambers }: Sense): string {
  const { core, chambers: said } = readPhrase(text);
  if (said !== null) return foldName(core);
  // A length set off from the rest is plain: "Heron 6", "105-6"; the last digit of "106" is not.
  return foldName(
    text.replace(/(?<=[^\p{Nd}\s\-–/.,(])[\s\-–/.,(]+\p{Nd}+\)?$|(?<=\p{Nd})[\s\-–/.,(]+\p{Nd}+\)?$/u, (end) =>
      Number(end.replace(/\P{Nd}/gu, '')) === chambers ? '' : end,
    ),
  );
}

function lookLikeSections({ section, senses }: Lengths, fresh: FreshNames): MisleadingName[] {
  if (new Set(senses.map(stemOf)).size < 2) return [];
  const own = foldName(section);
  if (senses.every(({ text }) => foldName(text).includes(own))) return [];
  const names = listed(senses.map(({ text }) => text));
  const lengths = listed(senses.map(({ chambers }) => chambersText(chambers ?? 0)));
  return [
    {
      kind: 'lengths',
      texts: senses.map(({ text }) => text),
      words: `${names} look like ${senses.length} sections, but they are one, ${section}, in ${lengths}.`,
      why: 'Who holds one of them asks whether it goes where the other goes. It does: they differ in length only.',
      renames: plainLengths(senses, fresh),
    },
  ];
}

/** The first name for all, the length behind it: "PC 105-5", "PC 105-6". */
function plainLengths(senses: readonly Sense[], fresh: FreshNames): Rename[] {
  const numbers = senses.flatMap(({ text }) => numberedParts(text)?.number ?? []);
  const lowest = senses.find(({ text }) => numberedParts(text)?.number === Math.min(...numbers)) ?? senses[0];
  const stem = lowest.text.trim();
  const link = /\p{Nd}$/u.test(stem) ? '-' : ' ';
  return senses.map((sense) => {
    const plain = `${stem}${link}${sense.chambers}`;
    return { target: targetOf(sense), to: fresh.firstOf([plain, `${stem} (${sense.chambers})`]) ?? plain };
  });
}

function runBackwards({ section, senses }: Lengths, fresh: FreshNames): MisleadingName[] {
  const numbered = senses.flatMap((sense) => {
    const parts = numberedParts(sense.text);
    return parts ? [{ sense, ...parts }] : [];
  });
  const wrong = numbered.filter(({ head, number }, i) =>
    numbered.some((o, k) => k !== i && o.head === head && (i < k ? number > o.number : number < o.number)),
  );
  if (wrong.length === 0) return [];
  const told = wrong.map(({ sense }) => `${sense.text} has ${chambersText(sense.chambers ?? 0)}`);
  return [
    {
      kind: 'order',
      texts: wrong.map(({ sense }) => sense.text),
      words: `The numbers run against the lengths of the ${section} section: ${listed(told)}.`,
      why: 'Who orders the longer blank takes the higher number, and gets the shorter one.',
      renames: plainLengths(
        wrong.map(({ sense }) => sense),
        fresh,
      ),
    },
  ];
}

/** Names of one list for blanks of one section without a length: nobody can tell what sets them apart. */
function withoutLengths({ register }: Knowledge): MisleadingName[] {
  const bySection = new Map<string, Sense[]>();
  for (const sense of register.senses) {
    const { kind, section, chambers, supersededBy, scheme, source, profile } = sense;
    if (kind !== 'blank' || source !== 'register' || section === null || profile !== null) continue;
    if (chambers !== null || supersededBy !== null) continue;
    const key = JSON.stringify([scheme, section]);
    bySection.set(key, [...(bySection.get(key) ?? []), sense]);
  }
  return [...bySection.values()].flatMap((senses) => {
    const own = foldName(senses[0].section ?? '');
    const texts = [...new Map(senses.map(({ text }) => [foldName(text), text])).values()];
    if (texts.length < 2 || texts.every((text) => foldName(text).includes(own))) return [];
    return [sayWithoutLengths(texts, senses[0].section ?? '')];
  });
}

function sayWithoutLengths(texts: readonly string[], section: string): MisleadingName {
  return {
    kind: 'lengths',
    texts,
    words: `${listed(texts)} look like ${texts.length} sections, but they are one, ${section}; what sets them apart is not written down.`,
    why: 'Who holds one of them asks whether it goes where the other goes. Note in the register for how many chambers each is.',
    renames: [],
  };
}
