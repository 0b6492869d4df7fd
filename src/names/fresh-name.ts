import { foldName, lookAlikeForm } from './fold-name.ts';
import type { NameTarget } from './misleading-name.ts';
import { namingWords } from './naming-words.ts';
import type { Register, Sense } from './register.ts';

/**
 * A name as it may be misread: look-alike signs made one, those of numbers (S and 5, B and 8, Z and 2) only in a name with
 * a digit.
 */
export function misreadForm(text: string): string {
  const form = lookAlikeForm(foldName(text).replace(/ /g, '').replace(/rn/g, 'm'));
  return /\p{Nd}/u.test(text) ? form.replace(/s/g, '5').replace(/b/g, '8').replace(/z/g, '2') : form;
}

/** Where the name of a sense is written. */
export function targetOf({ source, profile, section, index }: Sense): NameTarget {
  if (source === 'register' && index !== null) return { of: 'register', index };
  if (source === 'section' && section !== null) return { of: 'section', section };
  return { of: 'profile', id: profile ?? '' };
}

/** A finder of names that nothing has, nor anything that looks alike; each is given out once. */
export class FreshNames {
  private readonly taken: Set<string>;
  private readonly register: Register;

  constructor(register: Register) {
    this.register = register;
    this.taken = new Set(register.senses.map(({ text }) => misreadForm(text)));
  }

  /** The first of some names that is free, or null. */
  firstOf(wanted: Iterable<string>): string | null {
    for (const text of wanted) {
      const form = misreadForm(text);
      if (this.taken.has(form)) continue;
      this.taken.add(form);
      return text;
    }
    return null;
  }

  /** A word that can name a section. */
  word(): string {
    return this.firstOf(namingWords()) ?? 'Section';
  }

  /** The next number of the list that a name stands in, as it writes its numbers; a word where it has no number. */
  next(sense: Sense): string {
    const parts = numberedParts(sense.text);
    if (!parts) return this.word();
    const { senses } = this.register;
    const inList = senses.flatMap(({ text, scheme }) => (scheme === sense.scheme ? (numberedParts(text) ?? []) : []));
    const most = Math.max(
      parts.number,
      ...inList.filter(({ head }) => head === parts.head).map(({ number }) => number),
    );
    return this.firstOf(numbersFrom(parts.head, most + 1)) ?? this.word();
  }
}

function* numbersFrom(head: string, first: number): Generator<string> {
  for (let n = first; n < first + 1000; n += 1) yield `${head}${n}`;
}

/** A name that ends in a number, as what stands before it and the number: "PC 105". */
export function numberedParts(text: string): { head: string; number: number } | null {
  const digits = /(?<![0-9])[0-9]{1,9}$/.exec(text);
  return digits ? { head: text.slice(0, digits.index), number: Number(digits[0]) } : null;
}
