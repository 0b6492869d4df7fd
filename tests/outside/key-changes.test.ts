// Outside truth for numbers of bittings under a maximum adjacent cut.
// OEIS, R. H. Hardin, "Number of base b n-digit numbers with adjacent digits differing by k or less": leading zeros
// count, so that it is this count. Offsets differ between the entries (A057960 is shifted), so terms are typed here by
// their number of digits n. "Seen": the printed terms were seen; "inferred": the entry's number follows from its
// neighbours'; null: no entry found, the terms are from a transfer matrix and by brute force elsewhere.
// A383201 and A235163 have no leading zero.
// Closed form for m = 1: A. Knopfmacher, T. Mansour, A. Munagi, H. Prodinger, "Smooth words and Chebyshev polynomials",
// arXiv:0809.0551 (from memory, confirmed by the rows).
// Two-step progression: all depths of one parity are half as many depths under half the maximum, so the rows hold.
import { expect, test } from 'vitest';
import { type BittingRules, USUAL_RULES } from '../../src/capacity/bitting-rules.ts';
import { countingBittings } from '../../src/capacity/count-bittings.ts';
import { finish } from '../kit/traced.ts';

/** b, m, the entry, terms for n = 4 to 7. */
const ROWS: readonly [number, number, string | null, readonly number[]][] = [
  [4, 1, 'A126358 seen', [68, 178, 466, 1220]],
  [4, 2, null, [178, 634, 2258, 8042]],
  [5, 1, 'A057960 seen', [95, 259, 707, 1931]],
  [5, 2, 'A126392 seen', [295, 1161, 4569, 17981]],
  [5, 3, 'A126473 inferred', [497, 2309, 10727, 49835]],
  [6, 1, 'A126360 seen', [122, 340, 950, 2658]],
  [6, 2, 'A126393 seen', [418, 1748, 7310, 30570]],
  [6, 3, 'A126474 inferred', [788, 4034, 20650, 105708]],
  [6, 4, 'A126501 inferred', [1106, 6306, 35954, 204994]],
  [7, 1, 'A126361 inferred', [149, 421, 1193, 3387]],
  [7, 2, 'A126394 seen', [543, 2363, 10287, 44787]],
  [7, 3, 'A126475 seen', [1111, 6083, 33305, 182349]],
  [7, 4, 'A126502 seen', [1679, 10483, 65449, 408623]],
  [7, 5, 'A126528 seen', [2137, 14407, 97127, 654797]],
  [8, 1, 'A126362 seen', [176, 502, 1436, 4116]],
  [8, 2, 'A126395 seen', [668, 2986, 13362, 59816]],
  [8, 3, 'A126476 seen', [1446, 8300, 47642, 273466]],
  [8, 4, 'A126503 seen', [2322, 15500, 103462, 690610]],
  [8, 5, 'A126529 inferred', [3124, 22914, 168066, 1232708]],
  [8, 6, null, [3746, 29114, 226274, 1758602]],
  [9, 1, 'A126363 seen', [203, 583, 1679, 4845]],
  [9, 2, 'A126396 cross-reference seen', [793, 3611, 16475, 75229]],
  [9, 3, 'A126477 seen', [1787, 10619, 63111, 375091]],
  [9, 4, 'A126504 seen', [3011, 21141, 148433, 1042167]],
  [9, 5, 'A126530 seen', [4231, 33101, 258953, 2025831]],
  [9, 6, null, [5303, 44573, 374641, 3148905]],
  [9, 7, null, [6113, 53769, 472943, 4159927]],
  [10, 1, 'A126364 seen', [230, 664, 1922, 5574]],
  [10, 2, 'A126397 seen', [918, 4236, 19598, 90790]],
  [10, 3, 'A126478 seen', [2130, 12990, 79258, 483646]],
  [10, 4, 'A126505 seen', [3720, 27142, 198034, 1444904]],
  [10, 5, 'A126531 seen', [5430, 44692, 367826, 3027314]],
  [10, 6, null, [7042, 62948, 562670, 5029530]],
  [10, 7, null, [8420, 79666, 753754, 7131596]],
  [10, 8, null, [9442, 92674, 909602, 8927810]],
];

const count = (change: Partial<BittingRules>) =>
  finish(countingBittings({ ...USUAL_RULES, maximumAdjacent: null, ...change })).bittings;

test.each(ROWS)('base %i, neighbours at most %i apart (%s)', (depths, maximumAdjacent, _entry, terms) => {
  const counted = [4, 5, 6, 7].map((chambers) => count({ chambers, depths, maximumAdjacent }));
  expect(counted).toEqual(terms.map(BigInt));
});

test.each([
  ['A383201', 6, [9, 81, 724, 6472, 57851, 517112]],
  ['A235163', 1, [9, 26, 75, 217, 629, 1826]],
])('without a leading zero: %s', (_entry, maximumAdjacent, terms) => {
  const counted = terms.map((_, i) => count({ chambers: i + 1, depths: 10, maximumAdjacent, excluded: [[0]] }));
  expect(counted).toEqual(terms.map(BigInt));
});

test('the closed form for neighbours that differ by one at most', () => {
  for (const [depths, chambers] of [
    [4, 2],
    [6, 5],
    [8, 6],
    [10, 7],
    [12, 12],
  ]) {
    let sum = 0;
    for (let j = 1; j <= depths; j++) {
      const angle = (j * Math.PI) / (depths + 1);
      const weight = (1 + (-1) ** (j + 1)) / Math.tan(angle / 2) ** 2;
      sum += weight * (1 + 2 * Math.cos(angle)) ** (chambers - 1);
    }
    expect(count({ chambers, depths, maximumAdjacent: 1 })).toBe(BigInt(Math.round(sum / (depths + 1))));
  }
});

test('a maximum of all depths leaves every bitting, exactly', () => {
  expect(count({ chambers: 12, depths: 12, maximumAdjacent: 11 })).toBe(12n ** 12n);
});

test('a two-step progression is a system of half as many depths under half the maximum', () => {
  const odd = Array.from({ length: 6 }, () => 'odd' as const);
  const rules = { chambers: 6, depths: 10, maximumAdjacent: 7, progression: 'two-step' as const };
  expect(count(rules)).toBe(10727n); // base 5, maximum 3
  expect(count({ ...rules, parity: odd })).toBe(10727n);
});

// Recomputed independently for the master 5 2 7 4 1 8; no print of it.
test('change keys under a top master, two-step, ten depths: four choices in each position', () => {
  const under = (chambers: number, maximumAdjacent: number | null) =>
    count({
      chambers,
      depths: 10,
      progression: 'two-step',
      maximumAdjacent,
      master: [5, 2, 7, 4, 1, 8, 3].slice(0, chambers),
    });
  expect([4, 5, 6, 7].map((chambers) => under(chambers, null))).toEqual([256n, 1024n, 4096n, 16384n]);
  expect([4, 5, 6, 7, 8, 9].map((most) => under(6, most))).toEqual([487n, 1776n, 1776n, 3105n, 3105n, 4096n]);
});
