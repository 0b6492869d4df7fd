import { parseArgs } from 'node:util';
import { EXPORT_FORMATS, type ExportFormat } from '../interchange/export-profiles.ts';
import { MAX_TOLERANCE } from '../interchange/json/file-units.ts';
import { MAX_TILT_DEG } from '../interchange/json/schema.ts';
import { listedIds } from './listed-ids.ts';
import { type NumberRange, numberFault } from './number-fault.ts';
import { CAPACITY_OPTIONS, type CapacityCommand, toCapacityCommand } from './parse-capacity.ts';
import { GAUGE_OPTIONS, GAUGE_VALUES, type GaugeCommand, toGaugeCommand } from './parse-gauge.ts';
import { GROW_OPTIONS, type GrowCommand, toGrowCommand } from './parse-grow.ts';
import { PASSAGE_OPTIONS, type PassageCommand, toPassageCommand } from './parse-passage.ts';
import { PLAN_OPTIONS, type PlanFamilyCommand, type PlanTableCommand, toPlanCommand } from './parse-plan.ts';
import {
  PRINT3D_FLAGS,
  PRINT3D_OPTIONS,
  PRINT3D_VALUES,
  type Print3dCommand,
  toPrint3dCommand,
} from './parse-print3d.ts';
import {
  PUBLISH_FLAGS,
  PUBLISH_OPTIONS,
  PUBLISH_VALUES,
  type PublishCommand,
  toPublishCommand,
} from './parse-publish.ts';
import { STRENGTH_OPTIONS, type StrengthCommand, toStrengthCommand } from './parse-strength.ts';

/** What `fit` is asked for. */
export interface FitCommand {
  readonly name: 'fit';
  readonly file: string;
  readonly json: boolean;
  readonly verify: boolean;
  /** Whether the guard margin and the smallest clearance are told. */
  readonly margins: boolean;
  /** Greatest tilt of a blank either way, in degrees; undefined where not given. */
  readonly tiltDeg?: number;
  /** One tolerance for every profile, in micrometres; undefined: those of the file. */
  readonly toleranceUm?: number;
  /** Wear of each blank and of each keyway, in micrometres; undefined where not given. */
  readonly wearUm?: number;
  /** How many pairs of parts are drawn from their tolerances for each pair; undefined: none. */
  readonly draws?: number;
}

/** What `export` is asked for. */
export interface ExportCommand {
  readonly name: 'export';
  readonly file: string;
  readonly format: ExportFormat;
  /** Ids of the profiles that are written, in this order; undefined: all of them. */
  readonly only?: readonly string[];
  /** The file that is written; undefined: standard output. */
  readonly output?: string;
}

/** What `claims` is asked for. */
export interface ClaimsCommand {
  readonly name: 'claims';
  readonly file: string;
  /** A table of claims in place of those of the family; undefined: those of the family. */
  readonly table?: string;
  readonly json: boolean;
}

/** What `tiers` is asked for. */
export interface TiersCommand {
  readonly name: 'tiers';
  readonly file: string;
  readonly json: boolean;
  /** Whether tools are left out. */
  readonly blanks: boolean;
}

/** What `identify` is asked for. */
export interface IdentifyCommand {
  readonly name: 'identify';
  readonly file: string;
  /** The drawing that holds the unknown outline. */
  readonly outline: string;
  readonly json: boolean;
  /** What it is compared with. */
  readonly among: 'blanks' | 'keyways' | 'all';
  /** By how much the outline may be wrong either way, in micrometres; undefined where not given. */
  readonly errorUm?: number;
  /** The number of the outline in the drawing, from 1; undefined: the only one. */
  readonly loop?: number;
}

/** What `names` is asked for. */
export interface NamesCommand {
  readonly name: 'names';
  readonly file: string;
  readonly json: boolean;
}

/** What `ask` is asked for. */
export interface AskCommand {
  readonly name: 'ask';
  readonly file: string;
  readonly question: string;
}

/** What `help` is asked for. */
export interface HelpCommand {
  readonly name: 'help';
  /** The command that help is asked about; undefined: all. */
  readonly about?: string;
}

/** What a command line asks for. */
export type Command =
  | AskCommand
  | CapacityCommand
  | StrengthCommand
  | NamesCommand
  | FitCommand
  | ExportCommand
  | IdentifyCommand
  | TiersCommand
  | PassageCommand
  | GaugeCommand
  | GrowCommand
  | PlanTableCommand
  | PlanFamilyCommand
  | PublishCommand
  | Print3dCommand
  | ClaimsCommand
  | { readonly name: 'check'; readonly file: string }
  | { readonly name: 'schema' }
  | HelpCommand;

/** A command, or what is wrong with the words, in one line. */
export type ParsedCommand =
  | { readonly ok: true; readonly command: Command }
  | { readonly ok: false; readonly fault: string };

/** Greatest wear, in micrometres: of a blade, hardly thicker than twice that, nothing would be left. */
const MAX_WEAR_UM = 1_000;

/** Most pairs of parts that are drawn for one pair. */
const MAX_DRAWS = 1_000_000;

type NumberOption = 'tilt' | 'tolerance-um' | 'wear-um' | 'draws' | 'error-um' | 'loop';

/** The options that take a number, and what numbers. */
const NUMBERS: Readonly<Record<NumberOption, NumberRange>> = {
  tilt: { most: MAX_TILT_DEG, unit: 'degrees' },
  'tolerance-um': { most: MAX_TOLERANCE / 1e3, unit: 'um' },
  'wear-um': { most: MAX_WEAR_UM, unit: 'um' },
  draws: { least: 1, most: MAX_DRAWS, unit: 'pairs of parts', whole: true },
  'error-um': { least: 1, most: 1_000, unit: 'um' },
  loop: { least: 1, most: 500, unit: 'the number of an outline', whole: true },
};

const NUMBER_OPTIONS = ['tilt', 'tolerance-um', 'wear-um', 'draws'] as const;

interface CommandWords {
  readonly files: number;
  /** As many as `files` where not given. */
  readonly least?: number;
  readonly options: readonly string[];
}

/**
 * How many files and which options each command takes; what `help` takes for a file is a command.
 *
 * @check tests/unit/cli/command-help.test.ts
 */
export const GRAMMAR: Readonly<Record<Command['name'], CommandWords>> = {
  fit: { files: 1, options: ['json', 'verify', 'margins', ...NUMBER_OPTIONS] },
  check: { files: 1, options: [] },
  export: { files: 1, options: ['only', 'as', 'output'] },
  claims: { files: 1, options: ['json', 'table'] },
  tiers: { files: 1, options: ['json', 'blanks'] },
  passage: { files: 1, options: ['json', 'openings', 'milled', ...PASSAGE_OPTIONS] },
  gauge: { files: 1, options: ['json', 'tilt', ...GAUGE_OPTIONS] },
  grow: { files: 1, options: ['json', 'passage', ...GROW_OPTIONS] },
  identify: { files: 2, options: ['json', 'among', 'error-um', 'loop'] },
  ask: { files: 2, options: [] },
  names: { files: 1, options: ['json'] },
  strength: { files: 1, options: ['json', ...STRENGTH_OPTIONS] },
  capacity: { files: 1, least: 0, options: ['json', 'two-step', ...CAPACITY_OPTIONS] },
  plan: { files: 1, least: 0, options: ['json', 'table', 'output', 'replace', ...PLAN_OPTIONS] },
  print3d: { files: 1, options: ['output', 'only', ...PRINT3D_OPTIONS, ...PRINT3D_FLAGS] },
  publish: { files: 1, options: ['output', 'blanks', ...PUBLISH_OPTIONS, ...PUBLISH_FLAGS] },
  schema: { files: 0, options: [] },
  help: { files: 1, least: 0, options: [] },
};

/** What the options were given as. */
type Values = { json?: boolean; verify?: boolean; margins?: boolean; blanks?: boolean; 'two-step'?: boolean } & {
  readonly only?: string[];
  readonly as?: string[];
  readonly output?: string[];
  readonly among?: string[];
  readonly table?: string[];
  readonly openings?: string[];
} & {
  readonly [option in
    | (typeof CAPACITY_OPTIONS)[number]
    | (typeof STRENGTH_OPTIONS)[number]
    | (typeof PLAN_OPTIONS)[number]
    | (typeof PUBLISH_OPTIONS)[number]
    | (typeof PRINT3D_OPTIONS)[number]
    | (typeof GAUGE_OPTIONS)[number]
    | (typeof GROW_OPTIONS)[number]
    | (typeof PASSAGE_OPTIONS)[number]]?: string[];
} & {
  readonly [option in NumberOption]?: string[];
} & {
  readonly [flag in (typeof PUBLISH_FLAGS | typeof PRINT3D_FLAGS)[number]]?: boolean;
};

/**
 * Reads the words after the program's name.
 *
 * @returns help for `--help` anywhere, about the command that it is given with; a fault in one line for unknown commands
 *   and options, for files missing or too many, and for a number that is none or out of range.
 * @check tests/unit/cli/parse-command.test.ts
 */
export function parseCommand(words: readonly string[]): ParsedCommand {
  const split = splitWords(words);
  if (typeof split === 'string') return { ok: false, fault: split };
  const { values, positionals } = split;
  const [name, ...files] = positionals;
  if (name === undefined) return values.help ? toHelpCommand() : { ok: false, fault: 'no command given' };
  if (!Object.hasOwn(GRAMMAR, name)) return { ok: false, fault: `there is no command "${name}"` };
  if (values.help) return toHelpCommand(name === 'help' ? files[0] : name);
  return toCommand(name as Command['name'], files, values);
}

/** Options and the other words, or what is wrong with an option. */
function splitWords(words: readonly string[]) {
  try {
    return parseArgs({ args: joinNegative(words), allowPositionals: true, options: OPTIONS });
  } catch (error) {
    return error instanceof Error ? sayOptionFault(error.message) : String(error);
  }
}

/** How the library reads each option. */
const OPTIONS: Readonly<Record<string, { type: 'string' | 'boolean'; multiple?: boolean; short?: string }>> = {
  json: { type: 'boolean' },
  verify: { type: 'boolean' },
  margins: { type: 'boolean' },
  blanks: { type: 'boolean' },
  tilt: { type: 'string', multiple: true },
  'tolerance-um': { type: 'string', multiple: true },
  'wear-um': { type: 'string', multiple: true },
  draws: { type: 'string', multiple: true },
  only: { type: 'string', multiple: true },
  openings: { type: 'string', multiple: true },
  passage: { type: 'boolean' },
  milled: { type: 'boolean' },
  replace: { type: 'boolean' },
  as: { type: 'string', multiple: true },
  output: { type: 'string', short: 'o', multiple: true },
  among: { type: 'string', multiple: true },
  'error-um': { type: 'string', multiple: true },
  loop: { type: 'string', multiple: true },
  table: { type: 'string', multiple: true },
  'two-step': { type: 'boolean' },
  ...Object.fromEntries(
    [
      ...[...CAPACITY_OPTIONS, ...STRENGTH_OPTIONS, ...GROW_OPTIONS, ...PASSAGE_OPTIONS, ...PLAN_OPTIONS],
      ...[...PUBLISH_OPTIONS, ...PRINT3D_OPTIONS, ...GAUGE_OPTIONS],
    ].map((option) => [option, { type: 'string', multiple: true }] as const),
  ),
  ...Object.fromEntries([...PUBLISH_FLAGS, ...PRINT3D_FLAGS].map((flag) => [flag, { type: 'boolean' }] as const)),
  help: { type: 'boolean', short: 'h' },
};

/** Help about a command, or about all; that on `help` itself is all. */
function toHelpCommand(about?: string): ParsedCommand {
  if (about === undefined || about === 'help') return { ok: true, command: { name: 'help' } };
  if (!Object.hasOwn(GRAMMAR, about)) return { ok: false, fault: `there is no command "${about}"` };
  return { ok: true, command: { name: 'help', about } };
}

/** A value below zero joined to its option: apart, the library takes it for another option, so that its range is not told. */
function joinNegative(words: readonly string[]): string[] {
  const joined: string[] = [];
  for (const [i, word] of words.entries()) {
    const before = joined.at(-1) === '-o' ? '--output' : joined.at(-1);
    const takesValue = before?.startsWith('--') && OPTIONS[before.slice(2)]?.type === 'string';
    if (takesValue && /^-[\d.]/.test(word) && !words.slice(0, i).includes('--'))
      joined.splice(-1, 1, `${before}=${word}`);
    else joined.push(word);
  }
  return joined;
}

/** What must follow the options that take a text; all others take a number. */
const TEXT_VALUES: Readonly<Record<string, string>> = {
  only: 'ids of profiles parted by commas',
  openings: 'ids of openings parted by commas',
  between: 'the ids of two openings parted by a comma',
  allow: 'ids of group blanks parted by commas',
  as: 'svg, dxf or csv',
  output: 'the name of a file',
  among: 'blanks, keyways or all',
  table: 'the name of a table of claims, or of what must enter what (CSV)',
  material: 'the id of a material',
  exclude: 'depths parted by commas, or chamber:depths',
  master: 'the depths of the top master parted by commas',
  parity: 'one letter for each chamber, e (even) or o (odd)',
  ...GAUGE_VALUES,
  ...PUBLISH_VALUES,
  ...PRINT3D_VALUES,
};

/** The library's message in one line; it calls a missing value by two names, and its option by the short one alone. */
function sayOptionFault(message: string): string {
  const unfinished = /^Option '(?:-o|(?:-\w, )?--([a-z-]+)[^']*)' argument (?:is ambiguous|missing)/.exec(message);
  if (!unfinished) return message.split(/\. |\.?\n/)[0];
  const [, option = 'output'] = unfinished;
  return `--${option} needs ${TEXT_VALUES[option] ?? 'a number after it'}`;
}

/** What the second word of a command is. */
const SECOND_WORDS: Readonly<Partial<Record<Command['name'], string>>> = {
  identify: 'the name of a drawing (SVG, DXF, CSV)',
  ask: 'a question in quotation marks',
};

/** The options that take several values and may be given several times. */
const REPEATED: readonly string[] = ['only', 'openings', 'between', 'allow', 'exclude', 'of', 'in-between'];

function toCommand(name: Command['name'], files: string[], values: Values): ParsedCommand {
  const grammar = GRAMMAR[name];
  const stray = Object.keys(values).find((option) => !grammar.options.includes(option));
  if (stray) return { ok: false, fault: `"${name}" takes no --${stray}` };
  if (files.length < (grammar.least ?? grammar.files))
    return {
      ok: false,
      fault: `"${name}" needs ${files.length === 0 ? 'the name of a family file' : SECOND_WORDS[name]}`,
    };
  if (files.length > grammar.files) return { ok: false, fault: `"${name}" takes no "${files[grammar.files]}"` };
  for (const [option, given] of Object.entries(values))
    if (Array.isArray(given) && given.length > 1 && !REPEATED.includes(option))
      return { ok: false, fault: `--${option} is given ${given.length} times, give it once` };
  return readCommand(name, files, values);
}

/** The command whose words are in order. */
function readCommand(name: Command['name'], files: string[], values: Values): ParsedCommand {
  const [file] = files;
  const { json = false, blanks = false } = values;
  switch (name) {
    case 'fit':
      return toFitCommand(file, values);
    case 'export':
      return toExportCommand(file, values);
    case 'claims':
      return toClaimsCommand(file, values);
    case 'tiers':
      return { ok: true, command: { name, file, json, blanks } };
    case 'passage':
      return toPassageCommand(file, values);
    case 'gauge':
      return toGaugeCommand(file, values);
    case 'grow':
      return toGrowCommand(file, values);
    case 'identify':
      return toIdentifyCommand(files, values);
    case 'ask':
      return { ok: true, command: { name, file, question: files[1] } };
    case 'names':
      return { ok: true, command: { name, file, json } };
    case 'strength':
      return toStrengthCommand(file, values);
    case 'plan':
      return toPlanCommand(file, values);
    case 'capacity':
      return toCapacityCommand(file, values);
    case 'print3d':
      return toPrint3dCommand(file, values);
    case 'publish':
      return toPublishCommand(file, values);
    case 'check':
      return { ok: true, command: { name, file } };
    case 'help':
      return toHelpCommand(file);
    default:
      return { ok: true, command: { name } };
  }
}

function toFitCommand(file: string, values: Values): ParsedCommand {
  const fault = NUMBER_OPTIONS.map((option) => faultOf(option, values)).find(Boolean);
  if (fault) return { ok: false, fault };
  const { json = false, verify = false, margins = false } = values;
  const [tiltDeg, toleranceUm, wearUm, draws] = NUMBER_OPTIONS.map((option) => {
    const given = values[option];
    return given && Number(given[0]);
  });
  if (draws && (tiltDeg || wearUm))
    return { ok: false, fault: '--draws takes new parts held upright: leave out --tilt and --wear-um' };
  if (draws && !json) return { ok: false, fault: '--draws is told by --json only: give that too' };
  const numbers = { tiltDeg, toleranceUm, wearUm, ...(draws && { draws }) };
  return { ok: true, command: { name: 'fit', file, json, verify, margins, ...numbers } };
}

function toExportCommand(file: string, { only, as = [], output = [] }: Values): ParsedCommand {
  const [target] = output;
  const ending = /\.([^./\\]*)$/.exec(target ?? '')?.[1].toLowerCase();
  const wanted = as[0]?.toLowerCase() ?? ending;
  const format = EXPORT_FORMATS.find((known) => known === wanted);
  if (as.length > 0 && !format) return { ok: false, fault: `--as is "${as[0]}", must be svg, dxf or csv` };
  if (!format) {
    const fault = target === undefined ? 'say --as svg, dxf or csv' : `"${target}" does not end in .svg, .dxf or .csv`;
    return { ok: false, fault: target === undefined ? fault : `${fault}: say --as svg, dxf or csv` };
  }
  const ids = only && listedIds(only);
  if (ids?.some((id) => id === '')) return { ok: false, fault: '--only needs ids of profiles parted by commas' };
  const command = { name: 'export', file, format, ...(ids && { only: [...new Set(ids)] }) } as const;
  return { ok: true, command: target === undefined ? command : { ...command, output: target } };
}

function toClaimsCommand(file: string, { table = [], json = false }: Values): ParsedCommand {
  return { ok: true, command: { name: 'claims', file, json, ...(table.length > 0 && { table: table[0] }) } };
}

const AMONG = ['blanks', 'keyways', 'all'] as const;

function toIdentifyCommand([file, outline]: string[], values: Values): ParsedCommand {
  const { among: given = ['blanks'], json = false } = values;
  const fault = faultOf('error-um', values) ?? faultOf('loop', values);
  if (fault) return { ok: false, fault };
  const among = AMONG.find((known) => known === given[0]);
  if (!among) return { ok: false, fault: `--among is "${given[0]}", must be blanks, keyways or all` };
  const [errorUm, loop] = [values['error-um'], values.loop].map((number) => number && Number(number[0]));
  return { ok: true, command: { name: 'identify', file, outline, json, among, errorUm, loop } };
}

/** What is wrong with the number given for an option, if anything is. */
function faultOf(option: NumberOption, values: Values): string | undefined {
  return numberFault(option, values[option]?.[0], NUMBERS[option]);
}
