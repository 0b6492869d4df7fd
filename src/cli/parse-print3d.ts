import { BED_RANGE, SETTING_RANGES, type TipShape } from '../print3d/display-setup.ts';
import { listedIds } from './listed-ids.ts';

/** What `print3d` is asked for; lengths in millimetres as printed, undefined where the usual ones will do. */
export interface Print3dCommand {
  readonly name: 'print3d';
  readonly file: string;
  readonly output: string;
  readonly format: '3mf' | 'stl';
  /** Ids of openings, blanks and tools; undefined: all of the file. */
  readonly only?: readonly string[];
  readonly numbers: { readonly [setting in (typeof PRINT3D_NUMBERS)[NumberOption]]?: number };
  readonly bed?: readonly [number, number];
  readonly tip?: TipShape;
  readonly letters: boolean;
  readonly board: boolean;
}

/** The command, or what is wrong with its options. */
type ParsedPrint3dCommand =
  | { readonly ok: true; readonly command: Print3dCommand }
  | { readonly ok: false; readonly fault: string };

/** The options that take a number, and the settings that they set. */
const PRINT3D_NUMBERS = {
  scale: 'scale',
  columns: 'columns',
  depth: 'blockDepth',
  wall: 'wall',
  gap: 'gap',
  nozzle: 'nozzle',
  'letter-size': 'letterSize',
} as const;

type NumberOption = keyof typeof PRINT3D_NUMBERS;

const NUMBER_OPTIONS = Object.keys(PRINT3D_NUMBERS) as readonly NumberOption[];

/** The options of `print3d` that take a value. */
export const PRINT3D_OPTIONS = [...NUMBER_OPTIONS, 'bed', 'tip'] as const;

/** The options of `print3d` that are given or not. */
export const PRINT3D_FLAGS = ['no-letters', 'no-board'] as const;

const TIPS: readonly TipShape[] = ['flat', 'chamfered', 'pointed'];

/** What must follow the options that take a text. */
export const PRINT3D_VALUES: Readonly<Record<string, string>> = {
  bed: 'width and depth of the bed in mm, as in 250x210',
  tip: 'flat, chamfered or pointed',
};

type Print3dValues = { readonly [option in (typeof PRINT3D_OPTIONS)[number]]?: string[] } & {
  readonly [flag in (typeof PRINT3D_FLAGS)[number]]?: boolean;
} & { readonly output?: string[]; readonly only?: string[] };

/**
 * The command, or what is wrong with its options.
 *
 * @check tests/unit/cli/print3d.test.ts
 */
export function toPrint3dCommand(file: string, values: Print3dValues): ParsedPrint3dCommand {
  const output = values.output?.[0];
  const ending = output === undefined ? null : /\.(3mf|stl)$/i.exec(output)?.[1].toLowerCase();
  if (output === undefined) return { ok: false, fault: 'say -o and the name of a file that ends in .3mf or .stl' };
  if (!ending) return { ok: false, fault: `"${output}" ends neither in .3mf nor in .stl, say which` };
  const fault = NUMBER_OPTIONS.map((option) => numberFault(option, values[option]?.[0])).find(Boolean);
  if (fault) return { ok: false, fault };
  const bed = bedOf(values.bed?.[0]);
  if (typeof bed === 'string') return { ok: false, fault: bed };
  const tip = TIPS.find((name) => name === values.tip?.[0]);
  if (values.tip && !tip) return { ok: false, fault: `--tip is "${values.tip[0]}", must be ${PRINT3D_VALUES.tip}` };
  const only = values.only && listedIds(values.only);
  if (only?.includes('')) return { ok: false, fault: '--only needs ids of profiles parted by commas' };
  const given = NUMBER_OPTIONS.flatMap((option) => {
    const text = values[option]?.[0];
    return text === undefined ? [] : [[PRINT3D_NUMBERS[option], Number(text)] as const];
  });
  const command: Print3dCommand = {
    ...{ name: 'print3d', file, output, format: ending === 'stl' ? 'stl' : '3mf', numbers: Object.fromEntries(given) },
    ...{ letters: !values['no-letters'], board: !values['no-board'] },
    ...(bed && { bed }),
    ...(tip && { tip }),
    ...(only && { only }),
  };
  return { ok: true, command };
}

function numberFault(option: NumberOption, text: string | undefined): string | undefined {
  if (text === undefined) return undefined;
  const { least, most } = SETTING_RANGES[PRINT3D_NUMBERS[option]];
  const whole = option === 'columns';
  const form = whole ? /^\d{1,4}$/ : /^(\d{1,5}\.?\d*|\.\d+)$/;
  if (form.test(text) && Number(text) >= least && Number(text) <= most) return undefined;
  const unit = option === 'scale' || whole ? '' : ' (mm)';
  return `--${option} is "${text}", must be a ${whole ? 'whole ' : ''}number from ${least} to ${most}${unit}`;
}

function bedOf(text: string | undefined): readonly [number, number] | string | undefined {
  if (text === undefined) return undefined;
  const sizes = /^(\d{1,4}(?:\.\d+)?)[x×](\d{1,4}(?:\.\d+)?)$/i.exec(text)?.slice(1).map(Number);
  const { least, most } = BED_RANGE;
  if (sizes?.every((size) => size >= least && size <= most)) return [sizes[0], sizes[1]];
  return `--bed is "${text}", must be ${PRINT3D_VALUES.bed}, each from ${least} to ${most}`;
}
