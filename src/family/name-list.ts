/** Most names that are told one by one where nothing else is said. */
export const MOST_NAMES = 7;

/**
 * Names in a sentence: "Heron", "Heron and Smew", "Heron, Smew and Bittern"; a long list names the first few and counts
 * the rest: "Heron, Smew, Bittern and 12 more".
 *
 * Names that have commas of their own are parted by semicolons.
 *
 * @param names at least one.
 * @param most how many are named; one more is named too, rather than counted.
 * @check tests/unit/family/tier-sentence.test.ts
 */
export function nameList(names: readonly string[], most = MOST_NAMES): string {
  const shown = names.length <= most + 1 ? names : names.slice(0, most);
  const words = shown.length < names.length ? [...shown, `${names.length - shown.length} more`] : [...shown];
  const commas = words.some((word) => word.includes(','));
  const end = commas && words.length > 1 ? '; and ' : ' and ';
  if (words.length <= 2) return words.join(end);
  return `${words.slice(0, -1).join(commas ? '; ' : ', ')}${end}${words[words.length - 1]}`;
}
