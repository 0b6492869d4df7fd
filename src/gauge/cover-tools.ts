import type { ToolTable } from './tool-table.ts';

/** The least set of tools with which every chosen opening can be entered. */
export interface ToolCover {
  /** Ids, in the order of the table: of all least sets the one whose tightest fit is the widest; empty where nothing has to be covered. */
  readonly tools: readonly string[];
  /** Which of them to take for each opening: the one with most clearance. */
  readonly uses: readonly ToolUse[];
  /** The clearance of its tightest opening, nanometres; Infinity where there is none. */
  readonly clearance: number;
  /** Ids of chosen openings that none of the tools enters. */
  readonly uncovered: readonly string[];
  /** Least sets of the same size, this one first; no more than {@link MOST_SETS}. */
  readonly sets: readonly (readonly string[])[];
  /** Whether there are more than are told. */
  readonly more: boolean;
  /** Whether fewer tools are shown not to do, and no set of as many has more clearance; else the search was cut short. */
  readonly proved: boolean;
}

/** An opening with the tool to take for it. */
export interface ToolUse {
  readonly openingId: string;
  readonly toolId: string;
  /** Nanometres. */
  readonly clearance: number;
  /** Whether that is less than the running clearance. */
  readonly tight: boolean;
}

/** Most sets of tools that are told. */
export const MOST_SETS = 12;

/** Looks after which a search is cut short: a few seconds with a hundred tools. */
const MOST_LOOKS = 120_000;

/** For each opening to be covered its tools, and the clearance of each of them there. */
interface Column {
  readonly openingId: string;
  readonly clearances: ReadonlyMap<number, number>;
}

/**
 * The least set of tools that enters every chosen opening which any of them enters, exactly: by branch and bound over the
 * opening that fewest tools are left for. Of the least sets the one with most clearance at its tightest opening is found
 * by asking again with the tightest fits left out.
 *
 * @param chosen ids of openings; others are not looked at.
 * @param allowed ids of tools that may be taken; all of the table where not given.
 * @yields looks so far, of those after which the search is cut short.
 * @check tests/unit/gauge/cover-tools.test.ts
 */
export function* coveringTools(
  table: ToolTable,
  chosen: readonly string[],
  allowed?: readonly string[],
): Generator<Looks, ToolCover, void> {
  const columns = columnsOf(table, chosen, allowed);
  const open = columns.filter(({ clearances }) => clearances.size > 0);
  const uncovered = columns.filter(({ clearances }) => clearances.size === 0).map(({ openingId }) => openingId);
  const search = new CoverSearch();
  const least = yield* search.leastCover(open);
  const best = yield* search.widest(open, least);
  const sets = yield* search.allCovers(open, best.length, best);
  const idsOf = (rows: readonly number[]) => [...rows].sort((a, b) => a - b).map((i) => table.rows[i].toolId);
  const uses = open.map((column) => useOf(column, best, table));
  return {
    tools: idsOf(best),
    uses,
    clearance: uses.reduce((tightest, use) => Math.min(tightest, use.clearance), Infinity),
    uncovered,
    sets: sets.slice(0, MOST_SETS).map(idsOf),
    more: sets.length > MOST_SETS,
    proved: search.looks <= MOST_LOOKS,
  };
}

function columnsOf({ rows, openings }: ToolTable, chosen: readonly string[], allowed?: readonly string[]): Column[] {
  return openings.flatMap((openingId, k) => {
    if (!chosen.includes(openingId)) return [];
    const clearances = new Map<number, number>();
    for (const [i, { toolId, cells }] of rows.entries())
      if (cells[k].verdict !== 'blocked' && (allowed?.includes(toolId) ?? true)) clearances.set(i, cells[k].clearance);
    return [{ openingId, clearances }];
  });
}

function useOf({ openingId, clearances }: Column, cover: readonly number[], { rows }: ToolTable): ToolUse {
  const has = cover.filter((tool) => clearances.has(tool));
  const at = (tool: number) => clearances.get(tool) ?? -Infinity;
  const tool = has.reduce((a, b) => (at(b) > at(a) ? b : a));
  const { toolId, cells } = rows[tool];
  const tight = cells.some((cell) => cell.openingId === openingId && cell.verdict === 'tight');
  return { openingId, toolId, clearance: at(tool), tight };
}

/** Tools for each opening, as numbers of rows. */
type Choices = readonly (readonly number[])[];

/** How far a search has come. */
interface Looks {
  readonly done: number;
  readonly total: number;
}

/** Looks between two tellings. */
const TOLD_EACH = 256;

/** Searches for covers; counts its looks over all searches together. */
class CoverSearch {
  looks = 0;

  /** A least cover, as numbers of rows. Where the search is cut short, one that need not be least. */
  *leastCover(columns: readonly Column[]): Generator<Looks, readonly number[], void> {
    const choices = choicesOf(columns, -Infinity);
    const greedy = greedyCover(choices);
    for (let size = leastSize(choices); size < greedy.length; size++) {
      const [found] = yield* this.coversOf(choices, size, 1);
      if (found) return found;
      if (this.looks > MOST_LOOKS) break;
    }
    return greedy;
  }

  /** The cover of the same size whose tightest opening has most clearance. */
  *widest(columns: readonly Column[], least: readonly number[]): Generator<Looks, readonly number[], void> {
    const levels = [...new Set(columns.flatMap(({ clearances }) => [...clearances.values()]))].sort((a, b) => a - b);
    let best = least;
    let [from, to] = [1, levels.length];
    while (from < to && this.looks <= MOST_LOOKS) {
      const middle = (from + to) >> 1;
      const choices = choicesOf(columns, levels[middle]);
      const [found] = choices.some((tools) => tools.length === 0) ? [] : yield* this.coversOf(choices, least.length, 1);
      if (found) {
        best = found;
        from = middle + 1;
      } else to = middle;
    }
    return best;
  }

  /** Covers of a size, the given one first; one more than are told where there are more. */
  *allCovers(
    columns: readonly Column[],
    size: number,
    first: readonly number[],
  ): Generator<Looks, (readonly number[])[], void> {
    if (size === 0) return [];
    const found = yield* this.coversOf(choicesOf(columns, -Infinity), size, MOST_SETS + 1);
    const same = (cover: readonly number[]) => cover.length === first.length && cover.every((t) => first.includes(t));
    return [first, ...found.filter((cover) => !same(cover))].slice(0, MOST_SETS + 1);
  }

  /** Covers of at most so many tools, up to a number of them; none is found twice. */
  private *coversOf(choices: Choices, size: number, most: number): Generator<Looks, number[][], void> {
    const found: number[][] = [];
    yield* this.branch(choices, size, [], found, most);
    return found;
  }

  private *branch(
    open: Choices,
    left: number,
    taken: readonly number[],
    found: number[][],
    most: number,
  ): Generator<Looks, void, void> {
    if (found.length >= most || ++this.looks > MOST_LOOKS) return;
    if (this.looks % TOLD_EACH === 0) yield { done: this.looks, total: MOST_LOOKS };
    if (open.length === 0) found.push([...taken]);
    if (open.length === 0 || leastSize(open) > left) return;
    const narrow = open.reduce((a, b) => (b.length < a.length ? b : a));
    let rest = open;
    for (const tool of narrow) {
      const next = rest.filter((tools) => !tools.includes(tool));
      yield* this.branch(next, left - 1, [...taken, tool], found, most);
      // Covers with this tool are all found: the branches after it go without.
      rest = rest.map((tools) => tools.filter((other) => other !== tool));
      if (rest.some((tools) => tools.length === 0)) return;
    }
  }
}

/**
 * The tools of each opening that have so much clearance there. An opening is left out where whatever enters another one
 * enters it as well.
 */
function choicesOf(columns: readonly Column[], least: number): Choices {
  const all = columns.map(({ clearances }) => [...clearances].filter(([, c]) => c >= least).map(([tool]) => tool));
  const kept: number[][] = [];
  for (const tools of all.sort((a, b) => a.length - b.length))
    if (!kept.some((fewer) => fewer.every((tool) => tools.includes(tool)))) kept.push(tools);
  return kept;
}

/** A size that no cover is below: openings that share no tool need one each, and prices bound all of them together. */
function leastSize(choices: Choices): number {
  return Math.max(apartOf(choices), pricedSize(choices));
}

/** What doubles round away in a sum of prices. */
const ROUNDED = 1e-9;

/**
 * Each opening has the price 1 / n, n the most openings that one of its tools enters: no tool is then paid more than 1 for all it
 * enters, so a cover has at least as many tools as all prices come to.
 */
function pricedSize(choices: Choices): number {
  const entered = new Map<number, number>();
  for (const tools of choices) for (const tool of tools) entered.set(tool, (entered.get(tool) ?? 0) + 1);
  let paid = 0;
  for (const tools of choices) paid += 1 / tools.reduce((most, tool) => Math.max(most, entered.get(tool) ?? 0), 1);
  return Math.ceil(paid - ROUNDED);
}

/** How many openings can be picked of which no two share a tool: as many tools are needed at least. */
function apartOf(choices: Choices): number {
  const used = new Set<number>();
  let count = 0;
  for (const tools of [...choices].sort((a, b) => a.length - b.length)) {
    if (tools.some((tool) => used.has(tool))) continue;
    for (const tool of tools) used.add(tool);
    count++;
  }
  return count;
}

/** A cover by taking, again and again, the tool that enters most of what is left. */
function greedyCover(choices: Choices): number[] {
  const cover: number[] = [];
  for (let open = choices; open.length > 0; ) {
    const count = new Map<number, number>();
    for (const tool of open.flat()) count.set(tool, (count.get(tool) ?? 0) + 1);
    const [best] = [...count].reduce((a, b) => (b[1] > a[1] ? b : a));
    cover.push(best);
    open = open.filter((tools) => !tools.includes(best));
  }
  return cover;
}
