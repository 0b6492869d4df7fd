import { foldName } from './fold-name.ts';
import { type FreshNames, misreadForm, targetOf } from './fresh-name.ts';
import type { Knowledge } from './knowledge.ts';
import type { MisleadingName } from './misleading-name.ts';
import type { Sense } from './register.ts';

/** Letters that are read as digits: each with its digit. */
const READ_AS: Readonly<Record<string, string>> = { O: '0', o: '0', I: '1', l: '1' };

/**
 * Names that only look-alike signs tell apart (O and 0; I, l and 1; rn and m; in numbers also S and 5, B and 8, Z and 2),
 * and numbers in which such a letter stands alone.
 *
 * @check tests/unit/names/misleading.test.ts
 */
export function findLookAlikes({ register }: Knowledge, fresh: FreshNames): MisleadingName[] {
  const senses = register.senses.filter((sense) => sense.supersededBy === null && !isCarried(sense));
  const names = [...new Map(senses.toReversed().map((sense) => [foldName(sense.text), sense])).values()].reverse();
  const byForm = new Map<string, Sense[]>();
  for (const sense of names) {
    const form = misreadForm(sense.text);
    byForm.set(form, [...(byForm.get(form) ?? []), sense]);
  }
  const pairs = [...byForm.values()].filter((group) => group.length > 1);
  const paired = new Set(pairs.flat());
  const lone = names.filter((sense) => !paired.has(sense) && digitsFor(sense.text) !== sense.text);
  return [...pairs.map((group) => sayPairOfNames(group, fresh)), ...lone.map(sayLone)];
}

/** Whether a profile's name is its section's with a word behind: the section is told instead. */
function isCarried({ source, section, text }: Sense): boolean {
  return source === 'profile' && section !== null && foldName(text).includes(foldName(section));
}

/** A name with digits in place of letters that stand alone among digits: "PC 1O5" becomes "PC 105". */
function digitsFor(text: string): string {
  return text.replace(/(?<!\p{L})[OoIl]{1,3}(?!\p{L})/gu, (letters: string, at: number) => {
    const touching = /\p{Nd}/u.test(text.charAt(at - 1)) || /\p{Nd}/u.test(text.charAt(at + letters.length));
    return touching ? letters.replace(/[OoIl]/g, (letter) => READ_AS[letter] ?? letter) : letters;
  });
}

function sayPairOfNames(group: readonly Sense[], fresh: FreshNames): MisleadingName {
  const texts = group.map(({ text }) => text);
  // What is written on keyways and blanks stays, where a list can change instead.
  const kept = group.find(({ source, text }) => source !== 'register' && digitsFor(text) === text);
  const clean = kept ?? group.find(({ text }) => digitsFor(text) === text) ?? group[0];
  const changed = group.filter((sense) => sense !== clean);
  return {
    kind: 'look-alike',
    texts,
    words: `${texts.map((text) => `"${text}"`).join(' and ')} are told apart by signs that look alike only.`,
    why: 'Read from a worn bow or a photocopy, the one is taken for the other.',
    renames: changed.map((sense) => ({
      target: targetOf(sense),
      to: fresh.next({ ...sense, text: digitsFor(sense.text) }),
    })),
  };
}

function sayLone(sense: Sense): MisleadingName {
  const digits = digitsFor(sense.text);
  return {
    kind: 'look-alike',
    texts: [sense.text],
    words: `"${sense.text}" has a letter among its digits that looks like a digit: it is read as "${digits}".`,
    why: 'Who types it as it looks does not find it.',
    renames: [{ target: targetOf(sense), to: digits }],
  };
}
