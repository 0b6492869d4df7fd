import type { AccessTable } from './access-table.ts';
import { isTable } from './reduce-table.ts';
import { solveAtOnce } from './solve.ts';
import type { SolveOptions, WardPlan } from './ward-plan.ts';

/** A plan near to one that has no room in the blade: what is changed, and the plan that then has. */
export interface NearestPlan {
  readonly change: 'stops' | 'depths' | 'sections' | 'sharing';
  /** What is done, in words for people. */
  readonly words: string;
  readonly options: SolveOptions;
  /** Rows of the table that are kept, in groups that share one section; columns that are kept. */
  readonly sections: readonly (readonly number[])[];
  readonly blanks: readonly number[];
  /** Rows are the groups of `sections`, columns `blanks`. */
  readonly table: AccessTable;
  readonly plan: WardPlan;
}

/** Part of a table: rows in groups that become one section, and the columns that are left. */
interface Part {
  readonly sections: readonly (readonly number[])[];
  readonly blanks: readonly number[];
  readonly table: AccessTable;
}

const DEPTHS = [2, 3, 4] as const;

/**
 * Where a table needs more sites than the blade has: the nearest plans that can be done, at most one of each kind. Fewer
 * stops; more depths at a site; fewer sections, left out evenly from all groups; sections shared by those areas whose
 * access differs least. Each is solved at once, so a long search may do with a little less change.
 *
 * @returns in steps, so that whoever waits may stop it; nothing for a table that is none.
 * @check tests/unit/plan/nearest-plan.test.ts
 */
export function* nearestPlans(
  table: AccessTable,
  options: SolveOptions,
): Generator<{ done: number; total: number }, NearestPlan[], void> {
  const found: NearestPlan[] = [];
  if (!isTable(table)) return found;
  const whole = partOf(
    table,
    table.map((_, i) => [i]),
  );
  const take = (change: NearestPlan['change'], words: string, part: Part, changed: SolveOptions) => {
    const plan = solveAtOnce(part.table, changed);
    if (!plan || plan.sites > options.mostSites) return false;
    found.push({ change, words, options: changed, ...part, plan });
    return true;
  };
  for (let stops = options.stops - 1; stops >= 1; stops--) {
    yield { done: 0, total: 4 };
    const changed = { ...options, stops: stops as SolveOptions['stops'] };
    if (take('stops', `stop each forbidden pair at ${stops} ${stops === 1 ? 'site' : 'sites'}`, whole, changed)) break;
  }
  for (const depths of DEPTHS.filter((more) => more > options.depths)) {
    yield { done: 1, total: 4 };
    if (take('depths', `give wards up to ${depths} depths at a site`, whole, { ...options, depths })) break;
  }
  yield { done: 2, total: 4 };
  const order = evenOrder(table);
  const kept = yield* mostThatGo(table.length, options, (count) => partOf(table, singles(order.slice(0, count))), 2);
  if (kept) take('sections', `keep ${kept.sections.length} of ${table.length} sections`, kept, options);
  const merges = sharedGroups(table);
  const shared = yield* mostThatGo(table.length, options, (count) => partOf(table, merges[table.length - count]), 3);
  if (shared)
    take('sharing', `let areas share sections, ${shared.sections.length} in place of ${table.length}`, shared, options);
  return found;
}

function singles(rows: readonly number[]): number[][] {
  return [...rows].sort((a, b) => a - b).map((row) => [row]);
}

/** The part with most sections that has room, by halving; null where not even one does, or where all have. */
function* mostThatGo(
  all: number,
  options: SolveOptions,
  part: (sections: number) => Part,
  done: number,
): Generator<{ done: number; total: number }, Part | null, void> {
  let [low, high] = [0, all];
  while (high - low > 1) {
    yield { done, total: 4 };
    const middle = Math.floor((low + high) / 2);
    const plan = solveAtOnce(part(middle).table, options);
    if (plan && plan.sites <= options.mostSites) low = middle;
    else high = middle;
  }
  return low > 0 ? part(low) : null;
}

/**
 * The table of some rows, those of one group as one: entered where one of them must be, free where all are. Blanks that
 * are for none of them fall away.
 */
function partOf(table: AccessTable, sections: readonly (readonly number[])[]): Part {
  const merged = sections.map((rows) => mergedRow(table, rows));
  const blanks = (table[0] ?? []).flatMap((_, j) => {
    const wasFor = table.some((row) => row[j] === 1);
    return !wasFor || merged.some((row) => row[j] === 1) ? [j] : [];
  });
  return { sections, blanks, table: merged.map((row) => blanks.map((j) => row[j])) };
}

function mergedRow(table: AccessTable, rows: readonly number[]): (0 | 1 | null)[] {
  return (table[0] ?? []).map((_, j) => {
    if (rows.some((i) => table[i][j] === 1)) return 1;
    return rows.some((i) => table[i][j] === 0) ? 0 : null;
  });
}

/** The rows such that any first part of them takes evenly from all groups: first one of each, then a second one. */
function evenOrder(table: AccessTable): number[] {
  const taken = new Map<string, number>();
  const turn = table.map((row) => {
    const group = row.flatMap((cell, j) => (cell === 1 && isGroup(table, j) ? [j] : [])).join();
    taken.set(group, (taken.get(group) ?? 0) + 1);
    return taken.get(group) ?? 0;
  });
  return table.map((_, i) => i).sort((a, b) => turn[a] - turn[b] || a - b);
}

function isGroup(table: AccessTable, column: number): boolean {
  const ones = table.reduce((sum, row) => sum + (row[column] === 1 ? 1 : 0), 0);
  return ones > 1 && ones < table.length;
}

/** By number of sharings, from none: groups of rows, each time with the two groups as one that differ in least cells. */
function sharedGroups(table: AccessTable): number[][][] {
  const groups = table.map((_, i) => [i]);
  const steps = [groups.map((group) => [...group])];
  const rows: (readonly (0 | 1 | null)[])[] = [...table];
  const apart = (a: number, b: number) => {
    let cells = 0;
    for (let j = 0; j < rows[a].length; j++)
      if (rows[a][j] !== rows[b][j] && rows[a][j] !== null && rows[b][j] !== null) cells++;
    return cells + groups[a].length + groups[b].length;
  };
  const distance = rows.map((_, a) => rows.map((_, b) => (a < b ? apart(a, b) : Number.POSITIVE_INFINITY)));
  const live = new Set(rows.keys());
  while (live.size > 1) {
    let [first, second] = [-1, -1];
    for (const a of live)
      for (const b of live)
        if (a < b && (first < 0 || distance[a][b] < distance[first][second])) [first, second] = [a, b];
    groups[first].push(...groups[second]);
    live.delete(second);
    rows[first] = mergedRow(table, groups[first]);
    for (const other of live) {
      if (other < first) distance[other][first] = apart(other, first);
      if (other > first) distance[first][other] = apart(first, other);
    }
    steps.push([...live].map((at) => [...groups[at]].sort((a, b) => a - b)));
  }
  return steps;
}
