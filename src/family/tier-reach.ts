import { neighboursOf, type Tiers } from './tiers.ts';

/** What stands above and below one node, near and far, as numbers of nodes. */
export interface TierReach {
  readonly above: ReadonlySet<number>;
  readonly below: ReadonlySet<number>;
}

/** Everything above a node, which enters all that it enters and more, and everything below it. */
export function reachOf(tiers: Tiers, node: number): TierReach {
  const neighbours = neighboursOf(tiers);
  const climb = (way: 'above' | 'below'): Set<number> => {
    const found = new Set<number>();
    const open = [node];
    for (let at = open.pop(); at !== undefined; at = open.pop())
      for (const next of neighbours[at]?.[way] ?? [])
        if (!found.has(next)) {
          found.add(next);
          open.push(next);
        }
    return found;
  };
  return { above: climb('above'), below: climb('below') };
}

/** The number of the node that a blank or tool stands in; -1 where it is in none. */
export function nodeOf({ nodes }: Tiers, entrantId: string | null): number {
  return entrantId === null ? -1 : nodes.findIndex(({ entrants }) => entrants.includes(entrantId));
}

/**
 * Some nodes with the lines between them, on tiers without gaps. Whoever is between two of them must be one of them, or
 * a line is missing.
 */
export function onlyNodes(tiers: Tiers, wanted: ReadonlySet<number>): Tiers {
  const kept = tiers.nodes.flatMap((_, at) => (wanted.has(at) ? [at] : []));
  const numbers = new Map(kept.map((at, number) => [at, number]));
  const covers = tiers.covers.flatMap(([lower, upper]) => {
    const ends = [numbers.get(lower), numbers.get(upper)] as const;
    return ends[0] === undefined || ends[1] === undefined ? [] : [[ends[0], ends[1]] as const];
  });
  const levels = [...new Set(kept.map((at) => tiers.nodes[at].tier))].sort((a, b) => a - b);
  const nodes = kept.map((at) => ({ ...tiers.nodes[at], tier: levels.indexOf(tiers.nodes[at].tier) }));
  return { ...tiers, nodes, covers };
}
