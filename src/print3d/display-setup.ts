import { entrantsOf, type Family, openingsOf } from '../family/family.ts';
import type { Profile } from '../profile/profile.ts';

/** How the tip of a coupon ends: square, with its edges taken off, or running to a point. */
export type TipShape = 'flat' | 'chamfered' | 'pointed';

/** What a display set is made of and how it is printed; lengths in millimetres as printed. */
export interface DisplaySetup {
  /** Ids of the openings of the block, in rows from the top left. */
  readonly openings: readonly string[];
  /** Ids of the blanks and tools that become coupons. */
  readonly blanks: readonly string[];
  /** How many times as large as the real section. */
  readonly scale: number;
  /** Openings in a row of the block. */
  readonly columns: number;
  /** How deep the block is, front to back. */
  readonly blockDepth: number;
  /** The thinnest wall between openings, and round the block and the slots of the board. */
  readonly wall: number;
  /** Taken off a coupon's section all round, and left between a slot of the board and what stands in it. */
  readonly gap: number;
  /** Width of the line that the nozzle lays. */
  readonly nozzle: number;
  /** Width and depth of the printer's bed. */
  readonly bed: readonly [number, number];
  readonly tip: TipShape;
  /** Whether names stand raised at the openings and on the grips. */
  readonly letters: boolean;
  /** Height of the letters' em where there is room for it. */
  readonly letterSize: number;
  /** Whether a board that holds the block and the coupons is part of the set. */
  readonly board: boolean;
}

/** A setting that takes a number: its name for people, its least and greatest value. */
export interface SettingRange {
  readonly words: string;
  readonly least: number;
  readonly most: number;
}

/** The settings that take one number, in millimetres but for scale and columns. */
export const SETTING_RANGES = {
  scale: { words: 'scale', least: 1, most: 12 },
  columns: { words: 'columns', least: 1, most: 40 },
  blockDepth: { words: 'depth of the block', least: 3, most: 200 },
  wall: { words: 'wall', least: 0.4, most: 30 },
  gap: { words: 'fitting gap', least: 0, most: 1 },
  nozzle: { words: 'nozzle', least: 0.1, most: 2 },
  letterSize: { words: 'size of letters', least: 2, most: 30 },
} as const satisfies { readonly [setting in keyof DisplaySetup]?: SettingRange };

/** Least and greatest width and depth of a bed, millimetres. */
export const BED_RANGE: SettingRange = { words: 'bed', least: 50, most: 2_000 };

/** What is wrong with a setup. */
export interface SetupFault {
  readonly setting: keyof DisplaySetup;
  /** What is wrong and what to do, without a full stop. */
  readonly message: string;
}

/**
 * The setup that a family begins with: all openings, each different outline of a blank or tool once, four times as
 * large, in rows about as wide as high. Nozzle, gap and wall are common practice of printers at home, no source.
 *
 * @check tests/unit/print3d/display-setup.test.ts
 */
export function usualSetup(family: Family): DisplaySetup {
  const openings = openingsOf(family).map(({ id }) => id);
  return {
    openings,
    blanks: differentOutlines(entrantsOf(family)).map(({ id }) => id),
    ...{ scale: 4, columns: usualColumns(openings.length), blockDepth: 20 },
    ...{ wall: 6, gap: 0.15, nozzle: 0.4, bed: [250, 210] },
    ...{ tip: 'chamfered', letters: true, letterSize: 7, board: true },
  };
}

/** Sections are about three times as high as wide, so a row of them takes more of them than a column. */
function usualColumns(openings: number): number {
  return Math.max(1, Math.min(openings, Math.ceil(Math.sqrt(openings * 2.5))));
}

/** Of several profiles with the same outline (two lengths of one blank) the first. */
function differentOutlines(profiles: readonly Profile[]): Profile[] {
  const seen = new Set<string>();
  return profiles.filter(({ ring }) => {
    const outline = ring.map(({ x, y }) => `${x},${y}`).join(' ');
    if (seen.has(outline)) return false;
    seen.add(outline);
    return true;
  });
}

/**
 * Everything that is wrong with a setup; empty where it can be built.
 *
 * @check tests/unit/print3d/display-setup.test.ts
 */
export function setupFaults(family: Family, setup: DisplaySetup): SetupFault[] {
  return [...choiceFaults(family, setup), ...rangeFaults(setup), ...bedFaults(setup)];
}

function choiceFaults(family: Family, { openings, blanks }: DisplaySetup): SetupFault[] {
  if (openings.length + blanks.length === 0)
    return [{ setting: 'openings', message: 'nothing is chosen: choose an opening, a blank or a tool' }];
  const openingIds = openingsOf(family).map(({ id }) => id);
  const blankIds = entrantsOf(family).map(({ id }) => id);
  return [
    ...unknownIds(openings, openingIds).map((id) => notThere('openings', id, 'opening')),
    ...unknownIds(blanks, blankIds).map((id) => notThere('blanks', id, 'blank or tool')),
  ];
}

function unknownIds(chosen: readonly string[], known: readonly string[]): string[] {
  return chosen.filter((id) => !known.includes(id));
}

function notThere(setting: 'openings' | 'blanks', id: string, what: string): SetupFault {
  return { setting, message: `the family has no ${what} with the id "${id}": leave it out` };
}

function rangeFaults(setup: DisplaySetup): SetupFault[] {
  return (Object.keys(SETTING_RANGES) as (keyof typeof SETTING_RANGES)[]).flatMap((setting) => {
    const range = SETTING_RANGES[setting];
    const whole = setting === 'columns';
    if (isWithin(setup[setting], range) && (!whole || Number.isInteger(setup[setting]))) return [];
    const unit = setting === 'scale' || whole ? '' : ' mm';
    const kind = whole ? 'a whole number' : 'a number';
    return [{ setting, message: `${range.words} must be ${kind} from ${range.least} to ${range.most}${unit}` }];
  });
}

function bedFaults({ bed }: DisplaySetup): SetupFault[] {
  if (bed.every((length) => isWithin(length, BED_RANGE))) return [];
  const { least, most } = BED_RANGE;
  return [{ setting: 'bed', message: `the bed must be from ${least} to ${most} mm wide and deep` }];
}

function isWithin(value: number, { least, most }: SettingRange): boolean {
  return value >= least && value <= most;
}
