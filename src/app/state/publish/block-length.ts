import { decimalsApart, type Units } from '../../../family/length-text.ts';
import type { SettingRange } from '../../../print3d/display-setup.ts';

const MM_PER_INCH = 25.4;
const MM_OF_UNIT: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  in: MM_PER_INCH,
  '"': MM_PER_INCH,
  thou: MM_PER_INCH / 1000,
};

/** A number that was typed, or what is wrong with it. */
export type TypedSetting =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly words: string };

/** How a length of the printed set is written into a field: no more digits than it needs. Millimetres. */
export function settingText(mm: number, units: Units): string {
  return String(units === 'in' ? round(mm / MM_PER_INCH, 4) : round(mm, 3));
}

/** The same with its unit, for reading; with more decimals where a limit beside it would read alike. */
export function printedText(mm: number, units: Units, limit = mm): string {
  const per = units === 'in' ? MM_PER_INCH : 1;
  return `${(mm / per).toFixed(decimalsApart(mm / per, limit / per, units === 'in' ? 3 : 2))} ${units}`;
}

/**
 * A length of the printed set as typed, in `units` or in the unit behind it, within its range.
 *
 * @returns millimetres.
 * @check tests/unit/app/block-settings.test.ts
 */
export function readSetting(text: string, units: Units, range: SettingRange): TypedSetting {
  const found = /^([0-9]+(?:[.,][0-9]*)?|[.,][0-9]+)\s*(mm|cm|in|"|thou)?$/.exec(text.trim());
  if (!found) return { ok: false, words: `Not a length: type ${settingText(range.least, units)} or more.` };
  const value = Number(found[1].replace(',', '.')) * MM_OF_UNIT[found[2] ?? units];
  return within(round(value, 6), range, (mm) => settingText(mm, units), ` ${units}`);
}

/** A plain number as typed, within its range. */
export function readNumber(text: string, range: SettingRange): TypedSetting {
  const plain = text.trim().replace(',', '.');
  const value = Number(plain);
  if (plain === '' || !Number.isFinite(value))
    return { ok: false, words: `Not a number: type ${range.least} or more.` };
  return within(value, range, String, '');
}

function within(value: number, { least, most }: SettingRange, text: (n: number) => string, unit: string): TypedSetting {
  if (value >= least && value <= most) return { ok: true, value };
  return { ok: false, words: `Out of range: ${text(least)} to ${text(most)}${unit}.` };
}

function round(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}
