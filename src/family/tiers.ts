import { type BitSet, countMembers, membersOf, setOf } from '../order/bit-set.ts';
import { type Context, countLowerCovers, formalConcepts } from '../order/formal-concepts.ts';
import { inclusionCovers, mergeEqualSets } from '../order/inclusion.ts';
import { heightsOf } from '../order/transitive-reduction.ts';
import type { EntryTable } from './entry-table.ts';

/**
 * What a node is by how many keyways its blanks enter. `base`: one; `group`: several; `all`: every one of several;
 * `nothing`: none.
 */
export type TierRank = 'nothing' | 'base' | 'group' | 'all';

/** Blanks and tools that enter the very same keyways. */
export interface TierNode {
  /** The id of its first entrant in the table. */
  readonly id: string;
  /** Ids in the order of the table. */
  readonly entrants: readonly string[];
  /** Ids of the keyways that they enter, in the order of the table. */
  readonly openings: readonly string[];
  /** 0: nothing enters fewer of the same keyways; else one above the highest node below it. */
  readonly tier: number;
  readonly rank: TierRank;
}

/** The blanks of a family ordered by what they enter: who enters all that another enters, and more, stands above it. */
export interface Tiers {
  /** In the order of their first entrants. */
  readonly nodes: readonly TierNode[];
  /**
   * The lines of the diagram, as numbers of nodes: what stands above what with nothing in between. What enters
   * nothing stands apart, without lines.
   */
  readonly covers: readonly (readonly [lower: number, upper: number])[];
  readonly tierOfEntrant: ReadonlyMap<string, number>;
  /** The tier of the lowest node that enters the keyway; without an entry where nothing does. */
  readonly tierOfOpening: ReadonlyMap<string, number>;
}

/**
 * The tiers of a family: its blanks and tools by the sets of keyways that they enter, equal sets as one node, ordered
 * by inclusion. A pair that is not judged yet counts as one that does not go in.
 *
 * @check tests/laws/orders.test.ts, tests/outside/trade-facts.test.ts
 */
export function tiersOf(table: EntryTable): Tiers {
  const rows = rowsOf(table);
  const classes = mergeEqualSets(rows);
  const standing = classes.flatMap(({ set }, i) => (countMembers(set) > 0 ? [i] : []));
  const covers = inclusionCovers(standing.map((i) => classes[i].set)).map(
    ([lower, upper]) => [standing[lower], standing[upper]] as const,
  );
  const tiers = heightsOf(classes.length, covers);
  const nodes = classes.map(({ set, of }, i): TierNode => {
    const openings = membersOf(set).map((k) => table.openings[k]);
    const entrants = of.map((e) => table.entrants[e]);
    return { id: entrants[0], entrants, openings, tier: tiers[i], rank: rankOf(openings.length, table) };
  });
  return { nodes, covers, tierOfEntrant: tiersOfEntrants(nodes), tierOfOpening: tiersOfOpenings(nodes) };
}

function rowsOf({ goesIn, openings }: EntryTable): BitSet[] {
  return goesIn.map((row) =>
    setOf(
      openings.length,
      row.flatMap((cell, k) => (cell ? [k] : [])),
    ),
  );
}

function rankOf(entered: number, { openings }: EntryTable): TierRank {
  if (entered === 0) return 'nothing';
  if (entered === 1) return 'base';
  return entered === openings.length ? 'all' : 'group';
}

function tiersOfEntrants(nodes: readonly TierNode[]): Map<string, number> {
  return new Map(nodes.flatMap(({ entrants, tier }) => entrants.map((id) => [id, tier] as const)));
}

function tiersOfOpenings(nodes: readonly TierNode[]): Map<string, number> {
  const lowest = new Map<string, number>();
  for (const { openings, tier } of nodes)
    for (const id of openings) lowest.set(id, Math.min(tier, lowest.get(id) ?? tier));
  return lowest;
}

/** What stands directly above and below each node, as numbers of nodes. */
export function neighboursOf({ nodes, covers }: Tiers): { above: number[]; below: number[] }[] {
  const neighbours = nodes.map(() => ({ above: [] as number[], below: [] as number[] }));
  for (const [lower, upper] of covers) {
    neighbours[lower].above.push(upper);
    neighbours[upper].below.push(lower);
  }
  return neighbours;
}

/** How large the concept lattice of a table is. */
export interface ConceptCount {
  /** Largest sets of blanks that all enter the same keyways, with all the keyways that they share. */
  readonly concepts: number;
  /** True where counting ended at the limit: then there are more. */
  readonly capped: boolean;
  /** Lines of the lattice's diagram; of the counted concepts only where capped. */
  readonly edges: number;
}

/** The table as a context: keyways are objects, blanks and tools attributes. */
function contextOfTable(table: EntryTable): Context {
  return { objects: table.openings.length, attributes: table.entrants.length, extents: rowsOf(table) };
}

/**
 * Counts the concepts of a table and the lines between them, without keeping them.
 *
 * @param limit where to stop.
 * @source B. Ganter, R. Wille, Formal Concept Analysis, Springer 1999
 * @check tests/outside/concepts.test.ts
 */
export function countConcepts(table: EntryTable, limit: number): ConceptCount {
  const counting = countingConcepts(table, limit);
  for (;;) {
    const step = counting.next();
    if (step.done) return step.value;
  }
}

/**
 * The same piece by piece: after each concept its number, of the limit.
 *
 * @yields how far it has come.
 */
export function* countingConcepts(
  table: EntryTable,
  limit: number,
): Generator<{ done: number; total: number }, ConceptCount, void> {
  const context = contextOfTable(table);
  let concepts = 0;
  let edges = 0;
  for (const concept of formalConcepts(context)) {
    if (concepts >= limit) return { concepts, capped: true, edges };
    concepts++;
    edges += countLowerCovers(context, concept);
    yield { done: concepts, total: limit };
  }
  return { concepts, capped: false, edges };
}
