import { numberWord } from '../family/count-word.ts';

/** "A", "A and B", "A, B and C"; names with a comma of their own are parted by semicolons. */
export function listed(texts: readonly string[], link = 'and'): string {
  if (texts.length < 2) return texts.join('');
  const commas = texts.length > 2 && texts.some((text) => text.includes(','));
  const last = texts[texts.length - 1];
  const head = texts.slice(0, -1).join(commas ? '; ' : ', ');
  return `${head}${commas ? ';' : ''} ${link} ${last}`;
}

/** "five chambers", "one chamber". */
export function chambersText(chambers: number): string {
  return `${numberWord(chambers)} ${chambers === 1 ? 'chamber' : 'chambers'}`;
}
