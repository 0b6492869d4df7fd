import { listedIds } from './listed-ids.ts';
import { numberFault } from './number-fault.ts';

/** What a straight milling cutter and a plain blade are for a passage; micrometres and degrees. */
export interface MilledWish {
  readonly flankDeg: number;
  readonly rootUm: number;
  readonly widthUm: number;
  readonly stepUm: number;
  /** Null: as much as there is room for. */
  readonly thicknessUm: number | null;
  readonly heightUm: number | null;
}

/** What `passage` is asked for. */
export interface PassageCommand {
  readonly name: 'passage';
  readonly file: string;
  readonly json: boolean;
  /** Ids of the openings that have to be passed; undefined: all of them. */
  readonly openings?: readonly string[];
  /** Present where the blank is restricted to straight cutters. */
  readonly milled?: MilledWish;
}

/** The command, or what is wrong with its options. */
type ParsedPassageCommand =
  | { readonly ok: true; readonly command: PassageCommand }
  | { readonly ok: false; readonly fault: string };

/** The options of `passage` that take a number, each with its unit, its greatest value and what it is where not given. */
const MILLED = {
  'flank-deg': { most: 60, unit: 'degrees', usual: 0 },
  'root-um': { most: 1_000, unit: 'um', usual: 100 },
  'groove-um': { most: 5_000, unit: 'um', usual: 400 },
  'step-um': { most: 1_000, unit: 'um', usual: 50 },
  'thickness-um': { most: 20_000, unit: 'um', usual: null },
  'height-um': { most: 40_000, unit: 'um', usual: null },
} as const;

type MilledOption = keyof typeof MILLED;

/** See {@link MILLED}. */
export const PASSAGE_OPTIONS = Object.keys(MILLED) as readonly MilledOption[];

type PassageValues = {
  readonly openings?: string[];
  readonly milled?: boolean;
  readonly json?: boolean;
} & { readonly [option in MilledOption]?: string[] };

/** The command, or what is wrong with its options. */
export function toPassageCommand(file: string, values: PassageValues): ParsedPassageCommand {
  const { openings, milled = false, json = false } = values;
  const ids = openings && listedIds(openings);
  if (ids?.some((id) => id === '')) return { ok: false, fault: '--openings needs ids of openings parted by commas' };
  const command = { name: 'passage', file, json, ...(ids && { openings: [...new Set(ids)] }) } as const;
  const given = PASSAGE_OPTIONS.filter((option) => values[option] !== undefined);
  if (!milled)
    return given.length > 0
      ? { ok: false, fault: `--${given[0]} goes with --milled: give that too` }
      : { ok: true, command };
  const fault = given.map((option) => faultOf(option, values[option]?.[0])).find(Boolean);
  if (fault) return { ok: false, fault };
  const number = (option: MilledOption) => (values[option] ? Number(values[option][0]) : MILLED[option].usual);
  const wish: MilledWish = {
    flankDeg: number('flank-deg') ?? 0,
    rootUm: number('root-um') ?? 0,
    widthUm: number('groove-um') ?? 0,
    stepUm: number('step-um') ?? 1,
    thicknessUm: number('thickness-um'),
    heightUm: number('height-um'),
  };
  return { ok: true, command: { ...command, milled: wish } };
}

/** Lengths that nothing could be made of when they are 0. */
const ABOVE_NOTHING: readonly MilledOption[] = ['step-um', 'thickness-um', 'height-um'];

function faultOf(option: MilledOption, text: string | undefined): string | undefined {
  return numberFault(option, text, { ...MILLED[option], least: ABOVE_NOTHING.includes(option) ? 1 : 0 });
}
