// Fewest ward sites by brute force that shares no code with the solver: the forbidden pairs that one site can stop are found
// by trying every set of rows (every depth of every row), and the fewest sites by trying all unions.

import type { AccessTable } from '../../src/plan/access-table.ts';

/** For each way to give every row a ward depth at one site: which forbidden pairs it stops, as bits. */
function stopsOfOneSite(table: AccessTable, depths: number): { stops: bigint[]; pairs: number } {
  const pairs = table.flatMap((row, i) => row.flatMap((cell, j) => (cell === 0 ? [[i, j] as const] : [])));
  const found = new Set<bigint>();
  for (let way = 1; way < (depths + 1) ** table.length; way++) {
    const wards = table.map((_, i) => Math.floor(way / (depths + 1) ** i) % (depths + 1));
    const groove = (j: number) => Math.max(0, ...table.map((row, i) => (row[j] === 1 ? wards[i] : 0)));
    let stopped = 0n;
    for (const [p, [i, j]] of pairs.entries()) if (wards[i] > groove(j)) stopped |= 1n << BigInt(p);
    found.add(stopped);
  }
  const all = [...found];
  // What another way stops too, and more, need not be tried.
  return { stops: all.filter((a) => !all.some((b) => a !== b && (a & ~b) === 0n)), pairs: pairs.length };
}

/** Fewest sites by trying: always the first pair that is open, stopped by each way that can. */
export function fewestByTrying(table: AccessTable, stops: number, depths: number): number {
  const { stops: ways, pairs } = stopsOfOneSite(table, depths);
  const goes = (counts: readonly number[], left: number): boolean => {
    const open = counts.findIndex((count) => count < stops);
    if (open < 0) return true;
    if (left === 0) return false;
    return ways.some(
      (way) =>
        (way >> BigInt(open)) & 1n &&
        goes(
          counts.map((count, p) => count + Number((way >> BigInt(p)) & 1n)),
          left - 1,
        ),
    );
  };
  for (let sites = 0; ; sites++) if (goes(new Array<number>(pairs).fill(0), sites)) return sites;
}
