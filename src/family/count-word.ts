const NUMBERS = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/**
 * "1 site", "9 sites", "1,234 sites".
 *
 * @check tests/unit/app/sections-words.test.ts
 */
export function countWord(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString('en')} ${count === 1 ? one : many}`;
}

/** A number in words up to twelve, then in digits. */
export function numberWord(count: number): string {
  return NUMBERS[count - 1] ?? String(count);
}
