import { ENLARGE_RANGE, QUESTIONS_RANGE } from '../publish/order-fault.ts';
import { PAPER_NAMES, type PaperName, type PaperTurn } from '../publish/paper.ts';
import { SHEET_NAMES, type SheetName } from '../publish/sheet-order.ts';
import { listedIds } from './listed-ids.ts';
import { type NumberRange, numberFault } from './number-fault.ts';

/** A file format that sheets are written in. */
export type PublishFormat = 'pdf' | 'svg' | 'html' | 'csv';

/** What `publish` is asked for. */
export interface PublishCommand {
  readonly name: 'publish';
  readonly file: string;
  readonly sheet: SheetName;
  readonly format: PublishFormat;
  readonly output: string;
  readonly paper: PaperName;
  /** How the paper is held; as is usual for the sheet where not given. */
  readonly turned?: PaperTurn;
  readonly grey: boolean;
  /** Whether the chart is made smaller until it stands on one page. */
  readonly onePage: boolean;
  /** Whether tools are left out. */
  readonly blanks: boolean;
  /** Ids that the sheet is of. */
  readonly of: readonly string[];
  /** Ids of openings that stand between their neighbours on the chart; where not given, the file says which. */
  readonly inBetween?: readonly string[];
  readonly enlarge?: number;
  readonly questions?: number;
  readonly seed?: number;
  readonly units?: 'mm' | 'in';
  readonly date?: string;
}

/** The command, or what is wrong with its options. */
type ParsedPublishCommand =
  | { readonly ok: true; readonly command: PublishCommand }
  | { readonly ok: false; readonly fault: string };

/** The options of `publish` that take a value. */
export const PUBLISH_OPTIONS = [
  'sheet',
  'paper',
  'of',
  'in-between',
  'enlarge',
  'questions',
  'seed',
  'units',
  'date',
] as const;

/** The options of `publish` that are given or not. */
export const PUBLISH_FLAGS = ['landscape', 'portrait', 'grey', 'one-page'] as const;

/** What must follow the options that take a text. */
export const PUBLISH_VALUES: Readonly<Record<string, string>> = {
  sheet: SHEET_NAMES.join(', '),
  paper: PAPER_NAMES.join(', '),
  of: 'the id of a blank, a holder or an opening',
  'in-between': 'ids of openings parted by commas',
  units: 'mm or in',
  date: 'a date YYYY-MM-DD, as in 2030-05-14',
};

type PublishValues = { readonly [option in (typeof PUBLISH_OPTIONS)[number]]?: string[] } & {
  readonly [flag in (typeof PUBLISH_FLAGS)[number]]?: boolean;
} & { readonly output?: string[]; readonly blanks?: boolean };

type Taken<Value> = { readonly value: Value } | { readonly fault: string };

/** What each sheet can be written as. */
const FORMATS: Readonly<Record<SheetName, readonly PublishFormat[]>> = {
  chart: ['pdf', 'svg'],
  matrix: ['pdf', 'svg', 'csv'],
  scale: ['pdf', 'svg'],
  card: ['pdf', 'svg'],
  answers: ['pdf', 'svg'],
  slides: ['pdf', 'svg', 'html'],
};

/** The options that go with some sheets only. */
const GOES_WITH: readonly (readonly [option: keyof PublishValues, sheets: readonly SheetName[]])[] = [
  ['of', ['scale', 'card']],
  ['enlarge', ['scale']],
  ['questions', ['answers']],
  ['seed', ['answers']],
  ['one-page', ['chart']],
  ['in-between', ['chart']],
  ['blanks', ['chart', 'matrix']],
];

/** The options that take a number. */
const NUMBERS: Readonly<Record<'enlarge' | 'questions' | 'seed', NumberRange>> = {
  enlarge: ENLARGE_RANGE,
  questions: { ...QUESTIONS_RANGE, whole: true },
  seed: { most: 999_999_999, whole: true },
};

/** Most ids that a sheet is of. */
const MOST_OF: Readonly<Partial<Record<SheetName, number>>> = { scale: 2, card: 1 };

/**
 * The command, or what is wrong with its options.
 *
 * @check tests/unit/cli/publish.test.ts
 */
export function toPublishCommand(file: string, values: PublishValues): ParsedPublishCommand {
  const sheet = oneOf('sheet', values.sheet?.[0], SHEET_NAMES);
  if ('fault' in sheet) return { ok: false, fault: sheet.fault };
  const stray = GOES_WITH.find(([option, sheets]) => values[option] !== undefined && !sheets.includes(sheet.value));
  if (stray) return { ok: false, fault: `--${stray[0]} goes with --sheet ${stray[1].join(' or ')}` };
  const format = formatOf(sheet.value, values.output?.[0]);
  if ('fault' in format) return { ok: false, fault: format.fault };
  const fault = turnFault(values) ?? numbersFault(values) ?? dateFault(values) ?? listFault(sheet.value, values);
  if (fault) return { ok: false, fault };
  const paper = oneOf('paper', values.paper?.[0] ?? 'A4', PAPER_NAMES);
  if ('fault' in paper) return { ok: false, fault: paper.fault };
  const units = values.units && oneOf('units', values.units[0], ['mm', 'in'] as const);
  if (units && 'fault' in units) return { ok: false, fault: units.fault };
  const number = (option: 'enlarge' | 'questions' | 'seed') => values[option] && Number(values[option][0]);
  const command: PublishCommand = {
    ...{ name: 'publish', file, sheet: sheet.value, format: format.value, output: values.output?.[0] ?? '' },
    ...{ paper: paper.value, turned: turnOf(values), grey: values.grey ?? false },
    ...{ onePage: values['one-page'] ?? false, blanks: values.blanks ?? false, of: listedIds(values.of ?? []) },
    inBetween: values['in-between'] && listedIds(values['in-between']),
    ...{ enlarge: number('enlarge'), questions: number('questions'), seed: number('seed') },
    ...{ units: units?.value, date: values.date?.[0] },
  };
  return { ok: true, command };
}

function oneOf<Value extends string>(option: string, given: string | undefined, known: readonly Value[]): Taken<Value> {
  const value = known.find((name) => name.toLowerCase() === given?.toLowerCase());
  if (value !== undefined) return { value };
  const must = `${known.slice(0, -1).join(', ')} or ${known.at(-1)}`;
  return { fault: given === undefined ? `say --${option} ${must}` : `--${option} is "${given}", must be ${must}` };
}

function formatOf(sheet: SheetName, output: string | undefined): Taken<PublishFormat> {
  const formats = FORMATS[sheet];
  const must = `${formats
    .slice(0, -1)
    .map((name) => `.${name}`)
    .join(', ')} or .${formats.at(-1)}`;
  if (output === undefined) return { fault: `say -o and the name of a file that ends in ${must}` };
  const ending = /\.([^./\\]*)$/.exec(output)?.[1].toLowerCase();
  const value = formats.find((name) => name === ending);
  return value ? { value } : { fault: `"${output}" does not end in ${must}, which --sheet ${sheet} is written as` };
}

function turnOf({ landscape, portrait }: PublishValues): PaperTurn | undefined {
  if (landscape) return 'landscape';
  return portrait ? 'portrait' : undefined;
}

function turnFault({ landscape, portrait }: PublishValues): string | undefined {
  return landscape && portrait ? 'say --landscape or --portrait, not both' : undefined;
}

function numbersFault(values: PublishValues): string | undefined {
  const options = ['enlarge', 'questions', 'seed'] as const;
  return options.map((option) => numberFault(option, values[option]?.[0], NUMBERS[option])).find(Boolean);
}

/** A day that there is, as the standard for dates writes it. */
function dateFault({ date: [text] = [] }: PublishValues): string | undefined {
  if (text === undefined) return undefined;
  const day = /^\d{4}-\d{2}-\d{2}$/.test(text) ? new Date(`${text}T00:00:00Z`) : null;
  const known = day && Number.isFinite(day.getTime()) && day.toISOString().startsWith(text);
  return known ? undefined : `--date is "${text}", must be ${PUBLISH_VALUES.date}`;
}

function listFault(sheet: SheetName, { of, 'in-between': between }: PublishValues): string | undefined {
  if (listedIds(between ?? []).includes('')) return '--in-between needs ids of openings parted by commas';
  const ids = listedIds(of ?? []);
  if (ids.includes('')) return '--of needs an id where there is none';
  const most = MOST_OF[sheet] ?? 0;
  if (ids.length <= most) return undefined;
  return sheet === 'card' ? '--of takes one blank or holder for a card' : '--of takes one opening and one blank';
}
