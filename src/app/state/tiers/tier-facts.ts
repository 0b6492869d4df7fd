import { nodeOf } from '../../../family/tier-reach.ts';
import { neighboursOf, type Tiers } from '../../../family/tiers.ts';
import type { Fact } from '../profile-facts.ts';
import type { TiersOfFits } from './tiers-of-fits.ts';

const RANK_WORDS = {
  nothing: 'enters none',
  base: 'base: one keyway',
  group: 'group: several keyways',
  all: 'all-section: every keyway',
} as const;

/** What a title block says of a blank's place among the others. */
export function tierFacts({ tiers, table }: TiersOfFits, entrantId: string): Fact[] {
  const node = tiers.nodes[nodeOf(tiers, entrantId)];
  if (!node) return [];
  const top = tiers.nodes.reduce((most, { tier }) => Math.max(most, tier), 0);
  return [
    { term: 'Enters', value: `${node.openings.length} of ${table.openings.length}` },
    { term: 'Tier', value: `${node.tier + 1} of ${top + 1}` },
    { term: 'Rank', value: RANK_WORDS[node.rank] },
  ];
}

/** Ids of the blanks directly above and below one, and of those that enter the same as it does. */
export function tierNeighbours(
  tiers: Tiers,
  entrantId: string,
): { above: readonly string[]; below: readonly string[]; same: readonly string[] } {
  const at = nodeOf(tiers, entrantId);
  if (at < 0) return { above: [], below: [], same: [] };
  const { above, below } = neighboursOf(tiers)[at];
  const ids = (nodes: readonly number[]) => nodes.flatMap((node) => tiers.nodes[node].entrants);
  return { above: ids(above), below: ids(below), same: tiers.nodes[at].entrants.filter((id) => id !== entrantId) };
}
