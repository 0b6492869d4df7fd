/**
 * The item `steps` places after `current` in a list, going round at the ends. A `current` that is not in
 * the list counts as standing before the first item when walking on and after the last when walking back.
 */
export function walk<T>(items: readonly T[], current: T | null, steps: number): T | null {
  if (items.length === 0) return null;
  const at = current === null ? -1 : items.indexOf(current);
  const from = at < 0 && steps < 0 ? 0 : at;
  const next = (from + steps) % items.length;
  return items[(next + items.length) % items.length];
}

/**
 * The item of a list that a key leads to: Up and Down walk, round the ends as {@link walk} does, Home and End go to them.
 *
 * @returns undefined for keys that lead nowhere, null in an empty list.
 * @check tests/unit/app/walk.test.ts
 */
export function walkByKey<T>(items: readonly T[], current: T | null, key: string): T | null | undefined {
  if (key === 'Home') return items[0] ?? null;
  if (key === 'End') return items.at(-1) ?? null;
  if (key === 'ArrowDown') return walk(items, current, 1);
  if (key === 'ArrowUp') return walk(items, current, -1);
  return undefined;
}
