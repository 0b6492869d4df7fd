import { expect, test } from 'vitest';
import { findingExclusiveSections } from '../../../src/capacity/exclusive-sections.ts';
import { finish } from '../../kit/traced.ts';

/** Each blank enters the keyways named. */
const table = (keyways: number, ...rows: readonly (readonly number[])[]) =>
  rows.map((row) => Array.from({ length: keyways }, (_, k) => row.includes(k)));

test('base blanks exclude each other; group and all-section blanks do not take from that', () => {
  const { pairs, atMost } = finish(findingExclusiveSections(table(3, [0], [1], [2], [0, 1], [0, 1, 2])));
  expect(pairs).toEqual([
    { keyway: 0, blank: 0 },
    { keyway: 1, blank: 1 },
    { keyway: 2, blank: 2 },
  ]);
  expect(atMost).toBe(3);
});

test('a blank that enters two keyways shares its bittings between them', () => {
  expect(finish(findingExclusiveSections(table(3, [0, 1], [2]))).pairs.length).toBe(2);
  expect(finish(findingExclusiveSections(table(2, [0, 1]))).pairs.length).toBe(1);
});

test('a keyway without a blank, and a family without blanks, count for nothing', () => {
  expect(finish(findingExclusiveSections(table(3, [0], [1]))).pairs.length).toBe(2);
  expect(finish(findingExclusiveSections([]))).toEqual({ pairs: [], atMost: 0 });
});

test('a chain where each blank also enters the next keyway leaves two of three', () => {
  // Keys for keyway 1 on blank 0, for 2 on 2, for 4 on 3, for 5 on 5, and so on.
  const chain = table(9, ...Array.from({ length: 9 }, (_, k) => [k, k + 1]));
  expect(finish(findingExclusiveSections(chain)).pairs.length).toBe(6);
});

test('two hundred sections with their groups are proved at once', () => {
  const keyways = 200;
  const base = Array.from({ length: keyways }, (_, k) => [k]);
  const groups = Array.from({ length: 20 }, (_, g) => Array.from({ length: 10 }, (_, i) => 10 * g + i));
  expect(finish(findingExclusiveSections(table(keyways, ...base, ...groups)))).toMatchObject({ atMost: 200 });
});

test('what cannot be proved in time is told with a bound', () => {
  // A random-looking table where blanks enter about a third of all keyways.
  const size = 60;
  const goesIn = Array.from({ length: size }, (_, b) =>
    Array.from({ length: size }, (_, k) => b === k || (b * 7919 + k * 104_729 + b * k * 31) % 97 < 30),
  );
  const { pairs, atMost } = finish(findingExclusiveSections(goesIn));
  expect(pairs.length).toBeGreaterThan(1);
  expect(atMost).toBeGreaterThanOrEqual(pairs.length);
});
