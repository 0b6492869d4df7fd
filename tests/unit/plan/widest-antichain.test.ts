import { expect, test } from 'vitest';
import { type CodeSpace, codeAt, codeCount, largestRank, widestAntichain } from '../../../src/plan/widest-antichain.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';

/** C(n, floor n/2) for n = 1 to 12: Sperner 1928, OEIS A001405. */
const SPERNER = [1, 2, 3, 6, 10, 20, 35, 70, 126, 252, 462, 924];

const all = (space: CodeSpace) => new Uint8Array(codeCount(space)).fill(1);
const yesNo = (sites: number): CodeSpace => ({ levels: new Array(sites).fill(1) });

test('over n sites with a ward or none there are as many codes that exclude each other as Sperner says', () => {
  for (const [i, most] of SPERNER.entries()) {
    const space = yesNo(i + 1);
    expect(largestRank(space)).toBe(most);
    const found = widestAntichain(space, all(space));
    expect(found).toHaveLength(most);
    expect(isAntichain(space, found)).toBe(true);
  }
});

test('with several depths it is the largest rank of the product of chains', () => {
  // de Bruijn, Tengbergen & Kruyswijk 1951: 3 chains of 3 have 7 elements of the middle rank, 2 of 4 have 4.
  for (const [levels, most] of [
    [[2, 2, 2], 7],
    [[3, 3], 4],
    [[1, 2, 3], 6],
  ] as const) {
    const space = { levels };
    expect(largestRank(space)).toBe(most);
    expect(widestAntichain(space, all(space))).toHaveLength(most);
  }
});

test('of a convex part of the codes as many are found as by trying all sets', () => {
  const random = randomNumbers(11);
  for (let round = 0; round < 40; round++) {
    const space: CodeSpace = { levels: [1, random.whole(1, 2), 1, 1] };
    const [above, below] = [random.whole(0, codeCount(space) - 1), random.whole(0, codeCount(space) - 1)];
    const allowed = all(space).map((_, n) => (!isBelow(space, n, below) && !isBelow(space, above, n) ? 1 : 0));
    const found = widestAntichain(space, allowed);
    expect(isAntichain(space, found)).toBe(true);
    expect(found.every((n) => allowed[n] === 1)).toBe(true);
    expect(found.length).toBe(mostByTrying(space, allowed));
  }
});

test('each number has a code of its own, its first digit first', () => {
  const space = { levels: [1, 3, 2] };
  const codes = Array.from({ length: codeCount(space) }, (_, n) => codeAt(space, n));
  expect(new Set(codes.map(String)).size).toBe(24);
  expect(codes.slice(0, 3)).toEqual([
    [0, 0, 0],
    [1, 0, 0],
    [0, 1, 0],
  ]);
});

function isBelow(space: CodeSpace, a: number, b: number): boolean {
  const [x, y] = [codeAt(space, a), codeAt(space, b)];
  return x.every((digit, site) => digit <= y[site]);
}

function isAntichain(space: CodeSpace, numbers: readonly number[]): boolean {
  return numbers.every((a) => numbers.every((b) => a === b || !isBelow(space, a, b)));
}

/** The size of the largest antichain, by taking or leaving one code after the other. */
function mostByTrying(space: CodeSpace, allowed: Uint8Array): number {
  const codes = Array.from(allowed.keys()).filter((n) => allowed[n] === 1);
  const most = (rest: readonly number[]): number => {
    const [first, ...others] = rest;
    if (first === undefined) return 0;
    const beside = others.filter((n) => !isBelow(space, first, n) && !isBelow(space, n, first));
    return Math.max(1 + most(beside), beside.length === others.length ? 0 : most(others));
  };
  return most(codes);
}
