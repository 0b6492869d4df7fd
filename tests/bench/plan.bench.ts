// Wards at once for campuses of 16 to 128 areas, beside a plain way that anyone would start with: greedy set cover, one site
// after another, each the best of some starts that grow row by row. Then what a second and more of the whole solver adds.

import type { AccessTable } from '../../src/plan/access-table.ts';
import { solveAtOnce } from '../../src/plan/solve.ts';
import { solveOn } from '../../src/plan/solve-on.ts';
import { checkWardPlan, type WardPlan } from '../../src/plan/ward-plan.ts';
import { campus } from '../cases/access-tables.ts';
import { solveOptions } from '../kit/solve-table.ts';
import { checksumOf, takeTurns } from './measure.ts';
import { figures, printNote, printTable, times } from './print-table.ts';

/** What 64 areas may take at once on a quiet machine, milliseconds. */
const MOST_MS = 100;

const SIZES: [string, readonly number[], number][] = [
  ['16 areas, 5 zones', [4, 3, 3, 3, 3], 20],
  ['64 areas, 8 zones', new Array<number>(8).fill(8), 20],
  ['128 areas, 16 zones', new Array<number>(16).fill(8), 20],
];

atOnce();
await searched();

/** Greedy set cover: each site takes the rows, one after another, that stop most pairs that are still open. */
function greedyCover(table: AccessTable): WardPlan {
  const open = table.map((row) => row.map((cell) => cell === 0));
  const sets: Set<number>[] = [];
  while (open.some((row) => row.includes(true))) {
    const starts = table.map((_, i) => i).filter((i) => open[i].includes(true));
    const grown = starts.slice(0, 8).map((start) => growSet(table, open, start));
    const best = grown.reduce((a, b) => (b.gain > a.gain ? b : a));
    for (const i of best.rows) for (const j of table[i].keys()) if (!best.grooves.has(j)) open[i][j] = false;
    sets.push(best.rows);
  }
  const wards = table.map((_, i) => sets.map((rows) => Number(rows.has(i))));
  const grooves = table[0].map((_, j) => sets.map((rows) => Number([...rows].some((i) => table[i][j] === 1))));
  const grooved = grooves.flat().reduce((a, b) => a + b, 0);
  return { sites: sets.length, wards, grooves, lowerBound: 0, bound: 'none', proved: false, grooved };
}

function growSet(table: AccessTable, open: readonly (readonly boolean[])[], start: number) {
  const gainOf = (rows: ReadonlySet<number>) => {
    const grooves = new Set<number>();
    for (const i of rows) for (const [j, cell] of table[i].entries()) if (cell === 1) grooves.add(j);
    let gain = 0;
    for (const i of rows) for (const [j, is] of open[i].entries()) if (is && !grooves.has(j)) gain++;
    return { rows: new Set(rows), grooves, gain };
  };
  let best = gainOf(new Set([start]));
  for (let row = 0; row < table.length; row++) {
    if (best.rows.has(row)) continue;
    const more = gainOf(new Set([...best.rows, row]));
    if (more.gain > best.gain) best = more;
  }
  return best;
}

function fingerprint(table: AccessTable, plan: WardPlan): string {
  return checksumOf(
    table.flatMap((_, i) => plan.grooves.map((grooves) => plan.wards[i].every((ward, s) => ward <= grooves[s]))),
  );
}

function atOnce(): void {
  const rows = SIZES.flatMap(([name, zones, repeats]) => {
    const table = campus(zones);
    const ways = [
      { name: 'at once', solve: () => solveAtOnce(table, solveOptions()) as WardPlan },
      { name: 'greedy set cover', solve: () => greedyCover(table) },
    ];
    const timings = takeTurns(
      ways.map(({ name: way, solve }) => ({ name: way, run: () => void solve() })),
      name.startsWith('128') ? 3 : repeats,
    );
    const plans = ways.map(({ solve }) => solve());
    const prints = plans.map((plan) => fingerprint(table, plan));
    if (plans.some((plan) => checkWardPlan(table, plan, 1) !== null)) fail(`${name}: a plan does not keep its table.`);
    if (prints[0] !== prints[1]) fail(`${name}: the two plans let in different blanks.`);
    if (name.startsWith('64') && timings[0].least > MOST_MS) fail(`${name}: over ${MOST_MS} ms.`);
    return timings.map((timing, at) => [
      `${name}: ${timing.name}`,
      figures(timing.median),
      `${figures(timing.least)} - ${figures(timing.greatest)}`,
      times(timings[1].median / timing.median),
      String(plans[at].sites),
      plans[at].lowerBound > 0 ? String(plans[at].lowerBound) : '',
      prints[at],
    ]);
  });
  printTable(
    'Wards at once; speed beside greedy set cover',
    ['', 'ms', 'range', 'speed', 'sites', 'at least', 'entries'],
    rows,
  );
}

async function searched(): Promise<void> {
  const rows: string[][] = [];
  for (const [name, zones] of SIZES) {
    const table = campus(zones);
    const began = performance.now();
    let [slice, longest] = [began, 0];
    const plan = await solveOn(table, solveOptions({ seconds: 10 }), {
      now: () => performance.now(),
      cancelled: () => false,
      pause: async () => {
        longest = Math.max(longest, performance.now() - slice);
        await new Promise((resolve) => setImmediate(resolve));
        slice = performance.now();
      },
      tell: () => {},
      better: () => {},
    });
    if (!plan) continue;
    const { sites, lowerBound, bound, grooved } = plan;
    const seconds = (performance.now() - began) / 1_000;
    rows.push([name, figures(seconds), figures(longest), `${sites}`, `${lowerBound} (${bound})`, `${grooved}`]);
  }
  printTable('The whole solver, 10 s at most', ['', 's', 'longest slice, ms', 'sites', 'at least', 'grooved'], rows);
}

function fail(words: string): void {
  printNote(words);
  process.exitCode = 1;
}
