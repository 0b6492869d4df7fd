import type { Family } from '../../../family/family.ts';
import {
  BED_RANGE,
  type DisplaySetup,
  SETTING_RANGES,
  type SettingRange,
  type TipShape,
  usualSetup,
} from '../../../print3d/display-setup.ts';
import { makeKeptStore, type Shelf } from '../kept-store.ts';
import type { Store } from '../store.ts';

/** Settings of the printer and of how a set is made: the same whatever the family. */
export type PrinterSettings = Omit<DisplaySetup, 'openings' | 'blanks' | 'columns'>;

/** What the user has set otherwise than usual; nothing at first. */
export type BlockSettings = Partial<PrinterSettings>;

/** What of a family is in the set; null: as usual. */
export interface BlockChoices {
  readonly openings: readonly string[] | null;
  readonly blanks: readonly string[] | null;
  /** Openings in a row. */
  readonly columns: number | null;
}

/** The settings that take one number. */
export type NumberSetting = Exclude<keyof typeof SETTING_RANGES, 'columns'>;

const SHELF_KEY = 'sectionary-display-block';

/**
 * The settings as kept in this browser; what is unsound there is left out.
 *
 * @check tests/unit/app/block-settings.test.ts
 */
export function makeBlockSettingsStore(shelf: Shelf | null): Store<BlockSettings> {
  return makeKeptStore<BlockSettings>(shelf, SHELF_KEY, (fields) => ({
    ...keptNumbers(fields),
    ...(isBed(fields.bed) ? { bed: fields.bed } : {}),
    ...(isTip(fields.tip) ? { tip: fields.tip } : {}),
    ...(typeof fields.letters === 'boolean' ? { letters: fields.letters } : {}),
    ...(typeof fields.board === 'boolean' ? { board: fields.board } : {}),
  }));
}

const NUMBERS = ['scale', 'blockDepth', 'wall', 'gap', 'nozzle', 'letterSize'] as const satisfies NumberSetting[];

function keptNumbers(fields: Readonly<Record<string, unknown>>): BlockSettings {
  const sound = NUMBERS.filter((name) => isWithin(fields[name], SETTING_RANGES[name]));
  return Object.fromEntries(sound.map((name) => [name, fields[name]]));
}

function isWithin(value: unknown, { least, most }: SettingRange): value is number {
  return typeof value === 'number' && value >= least && value <= most;
}

function isBed(value: unknown): value is readonly [number, number] {
  return Array.isArray(value) && value.length === 2 && value.every((length) => isWithin(length, BED_RANGE));
}

function isTip(value: unknown): value is TipShape {
  return value === 'flat' || value === 'chamfered' || value === 'pointed';
}

/**
 * The setup of a family's set: as usual, but for what is set in this browser and what is chosen of this family; chosen
 * sections that the family does not have any more are left out.
 */
export function blockSetup(
  family: Family,
  settings: BlockSettings,
  { openings, blanks, columns }: BlockChoices,
): DisplaySetup {
  const usual = usualSetup(family);
  const known = (ids: readonly string[]) => ids.filter((id) => family.profiles.some((profile) => profile.id === id));
  const chosen = openings ? known(openings) : usual.openings;
  return {
    ...usual,
    ...settings,
    openings: chosen,
    blanks: blanks ? known(blanks) : usual.blanks,
    columns:
      columns ?? usualSetup({ ...family, profiles: family.profiles.filter(({ id }) => chosen.includes(id)) }).columns,
  };
}
