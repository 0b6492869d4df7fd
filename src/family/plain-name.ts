/**
 * A name fit for any disk: letters of any script, digits, blanks, dots and hyphens, at most 80 of them.
 *
 * @returns '' where nothing of the name is left.
 * @check tests/unit/family/plain-name.test.ts
 */
export function fileNameText(name: string): string {
  const plain = name
    .normalize('NFC')
    .replace(/[^\p{L}\p{M}\p{N} ._-]+/gu, ' ')
    .replace(/\s+/g, ' ');
  const trimmed = (text: string) => text.replace(/^[. ]+|[. ]+$/g, '');
  return trimmed([...trimmed(plain)].slice(0, 80).join(''));
}

/**
 * A name as one word of small letters without accents, digits and hyphens, at most 80 of them; letters of other scripts stay.
 *
 * @returns '' where nothing of the name is left.
 * @check tests/unit/family/plain-name.test.ts
 */
export function hyphenedName(name: string): string {
  return hyphened(name, /[^\p{L}\p{N}]+/gu);
}

/** As {@link hyphenedName}, of the letters a to z alone: for ids. */
export function idName(name: string): string {
  return hyphened(name, /[^a-z0-9]+/g);
}

function hyphened(name: string, others: RegExp): string {
  return name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(others, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 80);
}
