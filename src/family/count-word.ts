/**
 * "1 site", "9 sites", "1,234 sites".
 *
 * @check tests/unit/app/sections-words.test.ts
 */
export function countWord(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString('en')} ${count === 1 ? one : many}`;
}
