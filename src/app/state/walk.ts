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
