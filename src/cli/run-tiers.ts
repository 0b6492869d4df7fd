import type { Family } from '../family/family.ts';
import type { Tiers } from '../family/tiers.ts';
import { catalogue } from '../jobs/catalogue.ts';
import type { TiersDescription, ToldNode } from '../jobs/describe-tiers.ts';
import { JobRefused } from '../jobs/job.ts';
import { shown } from './fit-table.ts';
import { sayNoProfiles } from './no-sections.ts';
import type { TiersCommand } from './parse-command.ts';
import { EXIT, type Shell } from './shell.ts';

/** Where counting concepts ends. */
const MOST_CONCEPTS = 100_000;

/** Most names of a list that are printed one by one. */
const MOST_NAMES = 12;

/** Judges a family, prints its tiers, and returns the exit code. @check tests/unit/cli/run-tiers.test.ts */
export async function runTiers(family: Family, command: TiersCommand, shell: Shell): Promise<number> {
  const empty = sayNoProfiles(family, command.file, 'there is nothing to order', shell);
  if (empty !== null) return empty;
  const limits = { mostConcepts: MOST_CONCEPTS, mostNames: MOST_NAMES };
  try {
    const described = await catalogue.describeTiers({ family, blanksOnly: command.blanks, ...limits }, shell.jobs);
    shell.print(command.json ? tiersJson(described) : tiersText(family, described));
    return EXIT.done;
  } catch (error) {
    if (!(error instanceof JobRefused)) throw error;
    shell.warn(`${command.file}: ${error.message}.\n`);
    return EXIT.badInput;
  }
}

/** The tiers from the highest down: in each its blanks, what they enter, and what stands directly below and above. */
function tiersText(family: Family, described: TiersDescription): string {
  const { told, table } = described;
  const lines = [sayContents(family, described)];
  for (let tier = highestOf(described.tiers); tier >= 0; tier--) {
    const nodes = told.filter(({ node }) => node.tier === tier);
    lines.push('', `Tier ${tier + 1}`, ...nodes.flatMap((node) => nodeLines(node, table.openings.length)));
  }
  return `${lines.join('\n')}\n`;
}

/** Tiers are counted from 1 for people and in JSON alike; null where a keyway is in none. */
function numbered(tier: number | undefined): number | null {
  return tier === undefined ? null : tier + 1;
}

function highestOf({ nodes }: Tiers): number {
  return Math.max(-1, ...nodes.map(({ tier }) => tier));
}

function nodeLines({ node, entrants, openings, below, above, same }: ToldNode, of: number): string[] {
  const number = node.openings.length === of ? 'all' : node.openings.length;
  const none = of === 0 ? 'nothing: the family has no openings' : `none of ${of}`;
  return [
    `  ${shown(entrants)}  [${node.rank}]`,
    `      enters ${node.openings.length === 0 ? none : `${number} of ${of}: ${shown(openings)}`}`,
    ...(same ? [`      ${shown(same)}`] : []),
    ...(below ? [`      above  ${shown(below)}`] : []),
    ...(above ? [`      below  ${shown(above)}`] : []),
  ];
}

function sayContents(family: Family, { table, tiers, count }: TiersDescription): string {
  const { nodes, covers } = tiers;
  const number = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
  const tools = table.entrants.some((id) => family.profiles.some((p) => p.id === id && p.kind === 'tool'));
  const rows = number(table.entrants.length, tools ? 'tool' : 'blank', tools ? 'blanks and tools' : 'blanks');
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

function tiersJson({ tiers, table, count, told }: TiersDescription): string {
  const { nodes, covers, tierOfOpening } = tiers;
  const list = (values: readonly unknown[]) =>
    values.length === 0 ? '[]' : `[\n${values.map((value) => `    ${JSON.stringify(value)}`).join(',\n')}\n  ]`;
  const rows = told.map(({ node: { id, tier, rank, entrants, openings }, sentence, same }) => ({
    ...{ id, tier: tier + 1, rank, profiles: entrants, openings, sentence, ...(same && { same }) },
  }));
  const pairs = covers.map(([lower, upper]) => ({ lower: nodes[lower].id, upper: nodes[upper].id }));
  const keyways = table.openings.map((id) => ({ id, tier: numbered(tierOfOpening.get(id)) }));
  const { concepts, edges, capped } = count;
  const lattice = JSON.stringify({ concepts, lines: capped ? null : edges, capped });
  return `{\n  "nodes": ${list(rows)},\n  "covers": ${list(pairs)},\n  "openings": ${list(keyways)},\n  "lattice": ${lattice}\n}\n`;
}
