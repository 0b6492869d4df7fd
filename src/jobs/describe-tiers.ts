import { type EntryTable, withEntrants } from '../family/entry-table.ts';
import { entrantsOf, type Family } from '../family/family.ts';
import { judgeEntryTable } from '../family/judge-entry-table.ts';
import { nameList } from '../family/name-list.ts';
import { PairRefused } from '../family/pair-refused.ts';
import { sameReachSentence, tierNames, tierSentence } from '../family/tier-sentence.ts';
import {
  type ConceptCount,
  countingConcepts,
  neighboursOf,
  type TierNode,
  type Tiers,
  tiersOf,
} from '../family/tiers.ts';
import { type Job, type JobContext, JobRefused, runInSlices } from './job.ts';

/** What is described. */
export interface TiersInput {
  readonly family: Family;
  /** Whether tools are left out. */
  readonly blanksOnly: boolean;
  /** Where counting concepts ends. */
  readonly mostConcepts: number;
  /** How many names of a list are told one by one. */
  readonly mostNames: number;
}

/** A node in names; '' where there is nothing to name. */
export interface ToldNode {
  readonly node: TierNode;
  readonly entrants: string;
  readonly openings: string;
  /** What stands directly below and above it, each by its first name. */
  readonly below: string;
  readonly above: string;
  /** What its first entrant enters, as a sentence. */
  readonly sentence: string;
  /** What its entrants have in common and what sets them apart; '' for one alone. */
  readonly same: string;
}

/** The tiers of a family, judged from its outlines. */
export interface TiersDescription {
  readonly table: EntryTable;
  readonly tiers: Tiers;
  readonly count: ConceptCount;
  /** In the order of the nodes. */
  readonly told: readonly ToldNode[];
}

/** Judges a family, new parts held upright, and tells its tiers. Refused where a pair cannot be judged. */
export const describeTiers: Job<TiersInput, TiersDescription> = async (input, context) => {
  const { family, blanksOnly, mostConcepts, mostNames } = input;
  const judged = await judge(family, context);
  const tools = new Set(entrantsOf(family).flatMap(({ id, kind }) => (kind === 'tool' ? [id] : [])));
  const table = blanksOnly ? withEntrants(judged, (id) => !tools.has(id)) : judged;
  const count = await runInSlices(countingConcepts(table, mostConcepts), context);
  const tiers = tiersOf(table);
  return { table, tiers, count, told: tellNodes(family, table, tiers, mostNames) };
};

async function judge(family: Family, context: JobContext): Promise<EntryTable> {
  try {
    return await runInSlices(judgeEntryTable(family), context);
  } catch (error) {
    if (error instanceof PairRefused) throw new JobRefused(error.message);
    throw error;
  }
}

function tellNodes(family: Family, table: EntryTable, tiers: Tiers, most: number): ToldNode[] {
  const nameOf = tierNames(family);
  const profiles = new Map(family.profiles.map((profile) => [profile.id, profile]));
  const list = (ids: readonly string[]) => (ids.length === 0 ? '' : nameList(ids.map(nameOf), most));
  const firsts = (nodes: readonly number[]) => list(nodes.map((i) => tiers.nodes[i].id));
  const neighbours = neighboursOf(tiers);
  return tiers.nodes.map((node, i) => ({
    ...{ node, entrants: list(node.entrants), openings: list(node.openings) },
    ...{ below: firsts(neighbours[i].below), above: firsts(neighbours[i].above) },
    sentence: tierSentence(table, node.id, { nameOf }),
    same: sameReachSentence(node.entrants.flatMap((id) => profiles.get(id) ?? [])),
  }));
}
