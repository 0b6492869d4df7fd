import { type RowGroup, rowTree } from './row-tree.ts';
import type { SearchSetting } from './ward-search.ts';

/** A question for the exact solver: are there wards on so many sites? */
export interface SiteQuestion {
  readonly programme: string;
  /** Wards by row of the kernel, from the atoms of a model. */
  read(atoms: readonly string[]): number[][];
}

/**
 * The question whether a kernel has wards on `sites` sites, as a logic programme. A ward of a depth is the lower ones
 * too; a blank has the grooves of all wards that it must pass; each forbidden pair is stopped at `stops` sites. Sites
 * may be exchanged, and so may rows that the table does not tell apart, and groups of them: of all such plans only the
 * one whose wards, read row by row, come last in the order of words has to be looked for, so neighbours are in order.
 *
 * @source bicliques that cover a graph as answer sets; breaking symmetry by lexicographic order of rows and columns:
 *   Flener et al., Breaking row and column symmetries in matrix models, 2002 (from memory).
 * @check tests/outside/ward-sites.test.ts, tests/laws/ward-plans.test.ts
 */
export function askForSites(setting: SearchSetting, sites: number): SiteQuestion {
  const { kernel, depths, stops } = setting;
  const { order, blocks } = orderRows(setting);
  const placeOf = new Map(order.map((row, place) => [row, place]));
  const facts = order.flatMap((row, place) => [
    ...kernel.ones[row].map((j) => `e(${place},${j}).`),
    ...kernel.zeros[row].map((j) => `z(${place},${j}).`),
  ]);
  const lines = [
    `site(1..${sites}). row(0..${kernel.rows - 1}). level(1..${depths}).`,
    facts.join(''),
    blocks.map(([a, b]) => `after(${placeOf.get(a)},${placeOf.get(b)}).`).join(''),
    ...RULES,
    stops === 1 ? ':- z(I,J), not x(I,J,S) : site(S).' : `:- z(I,J), #count { S : x(I,J,S), site(S) } < ${stops}.`,
    '#show w/3.',
  ];
  return { programme: lines.join('\n'), read: (atoms) => readWards(atoms, order, sites) };
}

const RULES = [
  '{ w(I,S,1) } :- row(I), site(S).',
  '{ w(I,S,V) } :- w(I,S,V-1), level(V).',
  'g(J,S,V) :- w(I,S,V), e(I,J).',
  'x(I,J,S) :- z(I,J), w(I,S,V), not g(J,S,V).',
  // Sites in falling order of their columns, read from the first row down.
  'same(S,0) :- site(S), site(S+1).',
  'half(S,I,0) :- same(S,I), row(I).',
  'half(S,I,V) :- half(S,I,V-1), level(V), not w(I,S,V).',
  'half(S,I,V) :- half(S,I,V-1), level(V), w(I,S+1,V).',
  ':- half(S,I,V-1), level(V), not w(I,S,V), w(I,S+1,V).',
  'same(S,I+1) :- half(S,I,V), level(V), not level(V+1), row(I).',
  // Rows that may be exchanged in falling order of their wards, read from the first site on.
  'alike(I,K,1,0) :- after(I,K).',
  'alike(I,K,S,V) :- alike(I,K,S,V-1), site(S), level(V), not w(I,S,V).',
  'alike(I,K,S,V) :- alike(I,K,S,V-1), site(S), level(V), w(K,S,V).',
  'alike(I,K,S+1,0) :- alike(I,K,S,V), level(V), not level(V+1), site(S+1).',
  ':- alike(I,K,S,V-1), site(S), level(V), not w(I,S,V), w(K,S,V).',
];

function readWards(atoms: readonly string[], order: readonly number[], sites: number): number[][] {
  const wards = order.map(() => new Array<number>(sites).fill(0));
  for (const atom of atoms) {
    const [, place, site, depth] = /^w\((\d+),(\d+),(\d+)\)$/.exec(atom) ?? [];
    if (place === undefined) continue;
    const ward = wards[order[Number(place)]];
    ward[Number(site) - 1] = Math.max(ward[Number(site) - 1], Number(depth));
  }
  return wards;
}

/** The rows group by group, and pairs of rows of which the first may be asked to come first. */
function orderRows({ kernel }: SearchSetting): { order: number[]; blocks: [number, number][] } {
  const tree = rowTree(kernel);
  const order: number[] = [];
  const blocks: [number, number][] = [];
  const profile = profilesOf(kernel.rows, kernel.ones, kernel.zeros, kernel.columns);
  const visit = (group: RowGroup) => {
    const rows = [...group.single];
    const groups = [...group.groups].sort((a, b) => a.rows.length - b.rows.length);
    for (const inner of groups) visit(inner);
    order.push(...rows);
    for (let i = 1; i < rows.length; i++)
      if (profile.survives([[rows[i - 1], rows[i]]])) blocks.push([rows[i - 1], rows[i]]);
    for (let i = 1; i < groups.length; i++) {
      const [a, b] = [inOrder(groups[i - 1], order), inOrder(groups[i], order)];
      if (a.length === b.length && profile.survives(a.map((row, at) => [row, b[at]]))) blocks.push([a[0], b[0]]);
    }
  };
  visit(tree);
  return { order, blocks };
}

function inOrder(group: RowGroup, order: readonly number[]): number[] {
  const inside = new Set(group.rows);
  return order.filter((row) => inside.has(row));
}

/** Tells whether exchanging rows leaves the table as it is, its columns in whatever order. */
function profilesOf(
  rows: number,
  ones: readonly (readonly number[])[],
  zeros: readonly (readonly number[])[],
  columns: number,
) {
  const cells = Array.from({ length: columns }, () => new Uint8Array(rows).fill(2));
  for (let i = 0; i < rows; i++) {
    for (const j of ones[i]) cells[j][i] = 1;
    for (const j of zeros[i]) cells[j][i] = 0;
  }
  return {
    survives(swaps: readonly (readonly [number, number])[]): boolean {
      const touched = cells.filter((column) => swaps.some(([a, b]) => column[a] !== column[b]));
      const before = touched.map((column) => column.join('')).sort();
      const after = touched.map((column) => {
        const swapped = column.slice();
        for (const [a, b] of swaps) [swapped[a], swapped[b]] = [column[b], column[a]];
        return swapped.join('');
      });
      return after.sort().every((text, i) => text === before[i]);
    },
  };
}
