// Outside truth: the fewest ward sites of a table are the Boolean rank of its forbidden pairs, or the fewest bicliques
// that cover them. Published values, each source named from memory unless it says that it was seen:
// - E. Sperner, Ein Satz ueber Untermengen einer endlichen Menge, Math. Z. 27 (1928): k sections that exclude each other
//   need the least n with C(n, n/2) >= k; OEIS A001405. The same number for crown graphs: de Caen, Gregory, Pullman, The
//   Boolean rank of zero-one matrices, 1981; there too that an identity matrix has Boolean rank k.
// - W. T. Trotter, Embedding finite posets in cubes, Discrete Math. 12 (1975): 2-dimension of chains (k - 1), Boolean
//   lattices (n), standard examples (n); of a star with k leaves (Sperner).
// - Cover-free families, N(T, 1, 2) = T for T = 3..7: K. Manev, Serdica J. Computing 3 (2009) (abstract seen), after Kautz
//   and Singleton 1964, Erdos, Frankl and Furedi 1982.
// - "Living beings and water", B. Ganter, R. Wille, Formal Concept Analysis, Springer 1999, chapter 1 (context seen); that it
//   needs 6 is a value computed for this project by integer programming, as are those of the binary and ternary trees
//   and of openings in two groups: no published ones.
// - Several depths at a site: a site is a chain factor, so with depths enough the fewest sites are the order dimension: 1 for
//   a chain, n for the Boolean lattice and the standard example S_n, 2 for a tree (Dushnik and Miller 1941; Trotter,
//   Combinatorics and Partially Ordered Sets, 1992); antichains in products of chains: de Bruijn, Tengbergen, Kruyswijk 1951.
// - Two and three stops: for sections that exclude each other, brute force in tests/laws/ward-plans.test.ts; here the exact
//   values of constant-weight codes where they are tight: A(6,4,3) = 4, A(7,4,3) = 7 (the Fano plane), A(8,4,4) = 14
//   (Brouwer, Shearer, Sloane, Smith, A new table of constant weight codes, 1990).

import { describe, expect, test } from 'vitest';
import { antichainCapacity } from '../../src/plan/site-bounds.ts';
import { solveAtOnce } from '../../src/plan/solve.ts';
import { checkWardPlan } from '../../src/plan/ward-plan.ts';
import { blanksFor, campus, orderTable, setsOf, tableOf, treeTable } from '../cases/access-tables.ts';
import { solveOptions, solveTable } from '../kit/solve-table.ts';

const simplex = (k: number) => tableOf(k, k, (i, j) => i === j);
const chain = (k: number) => orderTable(k, (y, x) => y <= x);
const boolean = (n: number) => orderTable(2 ** n, (y, x) => (y & x) === y);
/** n minimal and n maximal elements, each below all maximal ones but its own. */
const standard = (n: number) => orderTable(2 * n, (y, x) => y === x || (y < n && x >= n && x - n !== y));
const LIVING_BEINGS = ['abg', 'abgh', 'abcgh', 'acghi', 'abdf', 'abcdf', 'acde', 'acdf'];

test.each([
  [2, 2],
  [3, 3],
  [4, 6],
  [5, 10],
  [6, 20],
  [7, 35],
  [8, 70],
  [9, 126],
  [10, 252],
])('%i sites have room for %i sections that exclude each other (A001405), and no more', (sites, capacity) => {
  expect(antichainCapacity(sites, 1)).toBe(capacity);
  const full = solveAtOnce(simplex(capacity), solveOptions());
  expect(full).toMatchObject({ sites, lowerBound: sites, proved: true, bound: 'sperner' });
  const over = solveAtOnce(simplex(capacity + 1), solveOptions());
  expect(over).toMatchObject({ sites: sites + 1, proved: true });
});

describe('fewest sites, reached and proved', () => {
  const cases: [string, ReturnType<typeof simplex>, number][] = [
    ...[2, 3, 4, 4, 4, 5, 5, 5, 5, 6].map((sites, at): [string, ReturnType<typeof simplex>, number] => [
      `${at + 2} simplex blanks and one for all (crown)`,
      simplex(at + 2).map((row) => [...row, 1 as const]),
      sites,
    ]),
    ...[3, 5, 8, 12].map((k): [string, ReturnType<typeof simplex>, number] => [
      `each of ${k} blanks shut out of one section (identity)`,
      tableOf(k, k, (i, j) => i !== j),
      k,
    ]),
    ...[3, 5, 8, 20].map((k): [string, ReturnType<typeof simplex>, number] => [`a chain of ${k}`, chain(k), k - 1]),
    ...[2, 3, 4].map((n): [string, ReturnType<typeof simplex>, number] => [
      `the Boolean lattice of ${n}`,
      boolean(n),
      n,
    ]),
    ...[3, 4, 5, 6].map((n): [string, ReturnType<typeof simplex>, number] => [
      `the standard example ${n}`,
      standard(n),
      n,
    ]),
    ...[2, 3, 4, 4, 4, 5, 5].map((sites, at): [string, ReturnType<typeof simplex>, number] => [
      `a star with ${at + 2} leaves`,
      treeTable(at + 3, at + 2),
      sites,
    ]),
    ['a binary tree of 7', treeTable(7, 2), 4],
    ['a binary tree of 15', treeTable(15, 2), 6],
    ['a ternary tree of 13', treeTable(13, 3), 6],
    ...[3, 4, 5, 6, 7].map((t): [string, ReturnType<typeof simplex>, number] => [
      `a blank for every pair of ${t} openings (2-cover-free)`,
      blanksFor(t, setsOf(t, 2)),
      t,
    ]),
    [
      'a blank for every set of 4 openings',
      blanksFor(
        4,
        [0, 1, 2, 3, 4].flatMap((size) => setsOf(4, size)),
      ),
      4,
    ],
    ['4 openings in two pairs', campus([2, 2]), 4],
    ['6 openings, base blanks and one for all', campus([6]), 4],
    ['6 openings in two triples', campus([3, 3]), 5],
    ['8 openings in two quads', campus([4, 4]), 6],
    ['living beings and water', tableOf(8, 9, (i, j) => LIVING_BEINGS[i].includes('abcdefghi'[j])), 6],
  ];
  test.each(cases)('%s', async (_, table, sites) => {
    const plan = await solveTable(table);
    expect(plan).toMatchObject({ sites, lowerBound: sites, proved: true });
    expect(checkWardPlan(table, plan, 1)).toBeNull();
  });
});

describe('several depths at a site', () => {
  test.each([
    ['a chain of 5 in 4 depths', chain(5), 4, 1],
    ['a chain of 9 in 4 depths', chain(9), 4, 2],
    ['a chain of 9 in 2 depths', chain(9), 2, 4],
    ['the standard example 4', standard(4), 4, 4],
    ['the Boolean lattice of 3', boolean(3), 4, 3],
    ['a binary tree of 7, planar', treeTable(7, 2), 4, 2],
    ['3 that exclude each other in 2 depths (middle rank of 3 x 3)', simplex(3), 2, 2],
    ['4 that exclude each other in 3 depths (4 x 4)', simplex(4), 3, 2],
    ['19 that exclude each other in 2 depths (81 = 3^4, middle rank)', simplex(19), 2, 4],
  ] as const)('%s', async (_, table, depths, sites) => {
    const plan = await solveTable(table, { depths });
    expect(plan).toMatchObject({ sites, lowerBound: sites, proved: true });
  });
});

describe('several stops', () => {
  test.each([
    ['4 sections, 2 stops: A(6,4,3) = 4', simplex(4), 2, 6],
    ['7 sections, 2 stops: A(7,4,3) = 7, the Fano plane', simplex(7), 2, 7],
    ['14 sections, 2 stops: A(8,4,4) = 14', simplex(14), 2, 8],
    ['2 sections, 3 stops: nothing shared', simplex(2), 3, 6],
    ['an identity of 4, 3 stops: three sites each', tableOf(4, 4, (i, j) => i !== j), 3, 12],
  ] as const)('%s', async (_, table, stops, sites) => {
    const plan = await solveTable(table, { stops });
    expect(checkWardPlan(table, plan, stops)).toBeNull();
    expect(plan.sites).toBe(sites);
    expect(plan.proved).toBe(true);
  });
});

describe('whole campuses', () => {
  test('64 areas in 8 zones, 8 zone blanks and a top: 9 sites, proved at once', () => {
    const table = campus(new Array<number>(8).fill(8));
    const plan = solveAtOnce(table, solveOptions());
    expect(plan).toMatchObject({ sites: 9, lowerBound: 9, proved: true });
  });

  test('16 areas in 5 zones, 5 zone blanks and a top: 7 sites, proved by search', async () => {
    const plan = await solveTable(campus([4, 3, 3, 3, 3]));
    expect(plan).toMatchObject({ sites: 7, proved: true });
  });

  test('128 areas in 16 zones, 16 zone blanks and a top: 10 sites, proved at once', () => {
    const table = campus(new Array<number>(16).fill(8));
    const plan = solveAtOnce(table, solveOptions());
    expect(plan).toMatchObject({ sites: 10, lowerBound: 10, proved: true });
    expect(plan && checkWardPlan(table, plan, 1)).toBeNull();
  });
});
