/**
 * The first name that nothing has yet.
 *
 * @param taken the names that are had.
 * @param named the names that will do, the first for 1, the next for 2, and so on; in the end one that is free.
 * @check tests/unit/family/first-free.test.ts
 */
export function firstFree(taken: Iterable<string>, named: (n: number) => string): string {
  const had = new Set(taken);
  for (let n = 1; ; n++) {
    const wanted = named(n);
    if (!had.has(wanted)) return wanted;
  }
}
