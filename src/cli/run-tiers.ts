import { type EntryTable, withEntrants } from '../family/entry-table.ts';
import { entrantsOf, type Family } from '../family/family.ts';
import { nameList } from '../family/name-list.ts';
import { tierNames } from '../family/tier-sentence.ts';
import { type ConceptCount, neighboursOf, type TierNode, type Tiers, tiersOf } from '../family/tiers.ts';
import { catalogue } from '../jobs/catalogue.ts';
import { JobRefused } from '../jobs/job.ts';
import { shown } from './fit-table.ts';
import type { TiersCommand } from './parse-command.ts';
import { EXIT, type Shell } from './shell.ts';

/** Where counting concepts ends. */
const MOST_CONCEPTS = 100_000;

/** Most names of a list that are printed one by one. */
const MOST_LISTED = 12;

/** Judges a family, prints its tiers, and returns the exit code. @check tests/unit/cli/run-tiers.test.ts */
export async function runTiers(family: Family, command: TiersCommand, shell: Shell): Promise<number> {
  try {
    const judged = await catalogue.judgeTable({ family }, shell.jobs);
    const blanks = new Set(entrantsOf(family).flatMap(({ id, kind }) => (kind === 'blank' ? [id] : [])));
    const table = command.blanks ? withEntrants(judged, (id) => blanks.has(id)) : judged;
    const count = await catalogue.countConcepts({ table, limit: MOST_CONCEPTS }, shell.jobs);
    const tiers = tiersOf(table);
    shell.print(command.json ? tiersJson(tiers, table, count) : tiersText(family, table, tiers, count));
    return EXIT.done;
  } catch (error) {
    if (!(error instanceof JobRefused)) throw error;
    shell.warn(`${command.file}: ${error.message}.\n`);
    return EXIT.badInput;
  }
}

/** The tiers from the highest down: in each its blanks, what they enter, and what stands directly below and above. */
function tiersText(family: Family, table: EntryTable, tiers: Tiers, count: ConceptCount): string {
  const nameOf = tierNames(family);
  const listed = (ids: readonly string[]) =>
    nameList(
      ids.map((id) => shown(nameOf(id))),
      MOST_LISTED,
    );
  const neighbours = neighboursOf(tiers);
  const firsts = (nodes: readonly number[]) => listed(nodes.map((i) => tiers.nodes[i].id));
  const highest = Math.max(-1, ...tiers.nodes.map(({ tier }) => tier));
  const lines = [sayContents(family, table, tiers, count)];
  for (let tier = highest; tier >= 0; tier--) {
    lines.push('', `Tier ${tier}`);
    for (const [i, node] of tiers.nodes.entries()) {
      if (node.tier !== tier) continue;
      lines.push(`  ${listed(node.entrants)}  [${node.rank}]`, `      enters ${sayEntered(node, table, listed)}`);
      const { below, above } = neighbours[i];
      if (below.length > 0) lines.push(`      above  ${firsts(below)}`);
      if (above.length > 0) lines.push(`      below  ${firsts(above)}`);
    }
  }
  return `${lines.join('\n')}\n`;
}

function sayEntered({ openings }: TierNode, table: EntryTable, listed: (ids: readonly string[]) => string): string {
  const of = table.openings.length;
  if (openings.length === 0) return of === 0 ? 'nothing: the family has no openings' : `none of ${of}`;
  return `${openings.length === of ? 'all' : openings.length} of ${of}: ${listed(openings)}`;
}

function sayContents(family: Family, table: EntryTable, { nodes, covers }: Tiers, count: ConceptCount): string {
  const number = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
  const tools = table.entrants.some((id) => family.profiles.some((p) => p.id === id && p.kind === 'tool'));
  const rows = tools ? `${table.entrants.length} blanks and tools` : number(table.entrants.length, 'blank', 'blanks');
  const reaches = number(nodes.length, 'set of openings entered', 'different sets of openings entered');
  const lattice = count.capped
    ? `more than ${count.concepts} concepts`
    : `${number(count.concepts, 'concept', 'concepts')}, ${number(count.edges, 'line', 'lines')} between them`;
  return [
    `${shown(family.name)}: ${rows} in ${number(table.openings.length, 'opening', 'openings')}`,
    `Tiers: ${reaches}, ${number(covers.length, 'line', 'lines')} between them`,
    `Concept lattice: ${lattice}`,
  ].join('\n');
}

function tiersJson({ nodes, covers, tierOfOpening }: Tiers, { openings }: EntryTable, count: ConceptCount): string {
  const list = (values: readonly unknown[]) =>
    values.length === 0 ? '[]' : `[\n${values.map((value) => `    ${JSON.stringify(value)}`).join(',\n')}\n  ]`;
  const rows = nodes.map(({ id, tier, rank, entrants, openings: entered }) => ({
    ...{ id, tier, rank, profiles: entrants, openings: entered },
  }));
  const pairs = covers.map(([lower, upper]) => ({ lower: nodes[lower].id, upper: nodes[upper].id }));
  const keyways = openings.map((id) => ({ id, tier: tierOfOpening.get(id) ?? null }));
  const { concepts, edges, capped } = count;
  const lattice = JSON.stringify({ concepts, lines: capped ? null : edges, capped });
  return `{\n  "nodes": ${list(rows)},\n  "covers": ${list(pairs)},\n  "openings": ${list(keyways)},\n  "lattice": ${lattice}\n}\n`;
}
