/** Letters that do not come apart into a plain letter and a mark. */
const PLAIN_LETTERS: Readonly<Record<string, string>> = { ß: 'ss', ø: 'o', ł: 'l', đ: 'd', æ: 'ae', œ: 'oe', '×': 'x' };

/** Signs that part words without being letters, digits or symbols, and the minus that stands for a hyphen. */
const PARTING = /[\p{P}\p{Z}\p{C}\s−]+/gu;

const DIGIT = /\p{Nd}/u;

/**
 * A name without capitals, spaces, punctuation and accents: two ways to write one name fold to the same text. A gap
 * between two digits stays, as one space, since "10 5" is not "105". Look-alikes stay apart.
 *
 * @returns the empty text only where nothing but spaces and control characters is given.
 * @check tests/unit/names/resolve.test.ts
 */
export function foldName(text: string): string {
  const plain = text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/(?<=[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}])\p{M}+|[\uFE00-\uFE0F]/gu, '')
    .replace(/[ßøłđæœ×]/g, (letter) => PLAIN_LETTERS[letter] ?? letter);
  const folded = plain.replace(PARTING, (gap: string, at: number) => {
    const between = DIGIT.test(plain.charAt(at - 1)) && DIGIT.test(plain.charAt(at + gap.length));
    return between ? ' ' : '';
  });
  return folded || text.replace(/[\s\p{C}]+/gu, '');
}

/** The runs of digits of a folded name, in order: ["105"], or [] where it has none. */
export function digitRunsOf(folded: string): string[] {
  return folded.match(/\p{Nd}+/gu) ?? [];
}

/** Small Greek and Cyrillic letters whose capitals look like Latin ones. */
const LATIN_LOOKS: Readonly<Record<string, string>> = {
  ...{ а: 'a', в: 'b', е: 'e', к: 'k', м: 'm', н: 'h', о: 'o', р: 'p', с: 'c', т: 't', у: 'y', х: 'x', і: 'i', ѕ: 's' },
  ...{ α: 'a', β: 'b', ε: 'e', ζ: 'z', η: 'h', ι: 'i', κ: 'k', μ: 'm', ν: 'n', ο: 'o', ρ: 'p', τ: 't', υ: 'y', χ: 'x' },
};

/** A folded name with the signs that are taken for each other made one: O and 0; I, l and 1; letters of other alphabets. */
export function lookAlikeForm(folded: string): string {
  const latin = folded.replace(/[\p{Script=Greek}\p{Script=Cyrillic}]/gu, (letter) => LATIN_LOOKS[letter] ?? letter);
  return latin.replace(/o/g, '0').replace(/[il|]/g, '1');
}
