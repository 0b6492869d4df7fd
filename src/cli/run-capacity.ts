import { allowedDepths } from '../capacity/bitting-rules.ts';
import { blankForLength } from '../capacity/blank-lengths.ts';
import type { Capacity, Variant } from '../capacity/capacity.ts';
import { whyNoneWords } from '../capacity/why-none-words.ts';
import { cautionLine } from '../family/cautions.ts';
import type { EntryTable } from '../family/entry-table.ts';
import type { Family } from '../family/family.ts';
import { judgeEntryTable } from '../family/judge-entry-table.ts';
import { catalogue } from '../jobs/catalogue.ts';
import { runInSlices } from '../jobs/job.ts';
import { shown } from './fit-table.ts';
import { sayNoOpenings } from './no-sections.ts';
import type { CapacityCommand } from './parse-capacity.ts';
import { EXIT, type Shell } from './shell.ts';

/**
 * Counts the keys of a system, with a family those of all sections that exclude each other; returns the exit code.
 *
 * @check tests/unit/cli/run-capacity.test.ts
 */
export async function runCapacity(family: Family | null, command: CapacityCommand, shell: Shell): Promise<number> {
  const idle = 'there is nothing to count unless the file is left out';
  const empty = family && sayNoOpenings(family, command.file ?? '', idle, shell);
  if (empty !== null) return empty;
  const table = family && (await judgedBlanks(family, shell));
  const { rules, sections } = command;
  const capacity = await catalogue.countCapacity({ rules, goesIn: table?.goesIn ?? null, sections }, shell.jobs);
  shell.print(command.json ? toJson(capacity, table, family, command) : toText(capacity, table, family, command));
  return EXIT.done;
}

/** What goes into what, blanks only; a pair that is not judged counts as going in. */
interface JudgedBlanks extends EntryTable {
  readonly goesIn: readonly (readonly boolean[])[];
}

async function judgedBlanks(family: Family, shell: Shell): Promise<JudgedBlanks> {
  const profiles = family.profiles.filter(({ kind }) => kind !== 'tool');
  const table = await runInSlices(judgeEntryTable({ ...family, profiles }), shell.jobs);
  return { ...table, goesIn: table.goesIn.map((row) => row.map((cell) => cell !== false)) };
}

/** The sections that are counted, each with the blank of its keys, of the length they need where there is one. */
function pairsOf(
  { sections }: Capacity,
  table: JudgedBlanks | null,
  family: Family | null,
  { rules }: CapacityCommand,
) {
  if (!sections || !table) return [];
  const lengths = table.entrants.map((id) => family?.profiles.find((profile) => profile.id === id)?.chambers);
  return sections.pairs.map(({ keyway, blank }) => {
    const own = blankForLength(table.goesIn, blank, lengths, rules.chambers);
    return { opening: table.openings[keyway], blank: table.entrants[own.blank], tooShort: own.tooShort };
  });
}

function toJson(
  capacity: Capacity,
  table: JudgedBlanks | null,
  family: Family | null,
  command: CapacityCommand,
): string {
  const { rules, firstDepth } = command;
  const { bittings, without, keys, count, sections, example, variants } = capacity;
  const written = (depths: readonly number[]) => depths.map((depth) => depth + firstDepth);
  const value = {
    chambers: rules.chambers,
    depths: rules.depths,
    macs: rules.maximumAdjacent,
    allowed: allowedDepths(rules).map(written),
    bittings: String(bittings),
    withoutRules: String(without),
    sections: count,
    sectionsAtMost: sections?.atMost ?? count,
    exclusive: pairsOf(capacity, table, family, command),
    keyChanges: String(keys),
    example: example && written(example),
    whyNone: capacity.whyNone && whyNoneWords(rules, capacity.whyNone, firstDepth).join(' '),
    variants: variants.map(({ of, count: its, bittings: b, keys: k, now }) => ({
      of,
      count: its,
      bittings: String(b),
      keyChanges: String(k),
      now,
    })),
    caution: cautionLine('capacity'),
  };
  return `${JSON.stringify(value, null, 2)}\n`;
}

function toText(
  capacity: Capacity,
  table: JudgedBlanks | null,
  family: Family | null,
  command: CapacityCommand,
): string {
  const { bittings, without, keys, count, sections, example } = capacity;
  const { rules, firstDepth } = command;
  const nameOf = (id: string) => shown(family?.profiles.find((profile) => profile.id === id)?.name ?? id);
  const macs = rules.maximumAdjacent === null ? 'no maximum adjacent cut' : `MACS ${rules.maximumAdjacent}`;
  const proved = !sections || sections.atMost === count;
  const lines = [
    `${rules.chambers} ${rules.chambers === 1 ? 'chamber' : 'chambers'}, ${rules.depths} depths (${firstDepth} to ${firstDepth + rules.depths - 1}), ${macs}`,
    `  ${digits(bittings)} bittings keep the rules, of ${digits(without)}`,
    `  ${count} ${count === 1 ? 'section' : 'sections'}${family && count > 1 ? ' that exclude each other' : ''}${proved ? '' : `; no more than ${sections.atMost}`}`,
    `  ${digits(keys)} key changes`,
    ...(capacity.whyNone ? whyNoneWords(rules, capacity.whyNone, firstDepth).map((words) => `  ${words}`) : []),
    ...pairsOf(capacity, table, family, command).map(
      ({ opening, blank, tooShort }) =>
        `    ${nameOf(opening)}: keys on ${nameOf(blank)}${tooShort ? `, which is too short for ${rules.chambers} chambers` : ''}`,
    ),
    ...(example
      ? [`An example: ${example.map((depth) => depth + firstDepth).join(' ')}, the same in every section`]
      : []),
    'One more, one less',
    ...capacity.variants.filter(({ now }) => !now).map((variant) => `  ${variantLine(variant, keys)}`),
    cautionLine('capacity'),
  ];
  return `${lines.join('\n')}\n`;
}

function variantLine({ of, count, keys }: Variant, now: bigint): string {
  const factor = now === 0n ? '' : `  x ${(Number((keys * 100_000n) / now) / 100_000).toFixed(2)}`;
  const what = count === 1 ? of.slice(0, -1) : of;
  return `${String(count).padStart(5)} ${what.padEnd(8)}  ${digits(keys).padStart(26)}${factor}`;
}

/** Digits in groups of three, parted so that no language reads a fraction. */
function digits(value: bigint): string {
  return String(value).replace(/\B(?=(\d{3})+$)/g, ' ');
}
