import { expect, test } from 'vitest';
import { pushedAt, pushLength } from '../../../src/app/tools/compare/pushing.ts';

test('a blank comes nearer all the while, then goes in and sinks to its seat', () => {
  const near = [0, 300, 600, 899].map((ms) => pushedAt(ms, true, false));
  const steps = near.map((p) => (p.phase === 'coming' ? p.near : -1));
  expect(steps).toEqual([...steps].sort((a, b) => a - b));
  expect(steps[0]).toBe(0);
  expect(pushedAt(pushLength(true), true, false)).toEqual({ phase: 'in', down: 1 });
});

test('a blocked blank flashes at most three times in a second and stays lit', () => {
  const lit = Array.from({ length: 2000 }, (_, i) => pushedAt(900 + i, false, false)).map(
    (p) => p.phase === 'stopped' && p.lit,
  );
  const flashesBetween = (from: number) =>
    lit.slice(from, from + 1000).filter((on, i, all) => on && !all[i - 1]).length;
  for (let from = 0; from < 1000; from += 50) expect(flashesBetween(from)).toBeLessThanOrEqual(3);
  expect(lit.at(-1)).toBe(true);
  expect(lit).toContain(false);
  expect(pushedAt(pushLength(false), false, false)).toEqual({ phase: 'stopped', lit: true });
});

test('with less motion there are two still pictures and no flash', () => {
  for (const goesIn of [true, false]) {
    const all = Array.from({ length: 260 }, (_, i) => JSON.stringify(pushedAt(i * 10, goesIn, true)));
    expect(new Set(all).size).toBe(2);
  }
});
