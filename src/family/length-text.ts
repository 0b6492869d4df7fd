import { NM_PER_INCH, NM_PER_MM } from '../geom/point.ts';

/** Units that lengths are shown in. */
export type Units = 'mm' | 'in';

const NM_PER_THOU = NM_PER_INCH / 1000;

/**
 * A small length: three decimals of a millimetre, two from a tenth up; in inch units thousandths ("thou"),
 * as gaps are spoken of at a bench. A length above zero never reads as zero.
 */
export function gapText(nm: number, units: Units): string {
  const size = Math.abs(nm);
  if (units === 'in') return smallText(size / NM_PER_THOU, 1, 'thou');
  const mm = size / NM_PER_MM;
  return smallText(mm, mm >= 0.0995 ? 2 : 3, 'mm');
}

/** A small length among the readings: three decimals of a millimetre however large, or thousandths of an inch. */
export function readingText(nm: number, units: Units): string {
  const size = Math.abs(nm);
  return units === 'in' ? gapText(size, units) : smallText(size / NM_PER_MM, 3, 'mm');
}

/** A wear that lets a blank in, as a reading; never rounded up, so that a guard does not look better than it is. */
export function wearLengthText(nm: number, units: Units): string {
  const step = units === 'in' ? NM_PER_THOU / 10 : NM_PER_MM / 1000;
  const steps = Math.floor(nm / step + 1e-6);
  // Less than one step is left as it is, to be told as that.
  return readingText(steps === 0 ? Math.min(nm, step / 4) : steps * step, units);
}

function smallText(value: number, decimals: number, unit: string): string {
  const least = 10 ** -decimals;
  if (value > 0 && value < least / 2) return `under ${least.toFixed(decimals)} ${unit}`;
  return `${value.toFixed(decimals)} ${unit}`;
}

/**
 * Cut off after some decimals, so that the most that goes in is not told as more; what is above 0 is not told as 0.
 *
 * @param value in the unit that is told.
 * @param kept of the decimals these are told though they be 0.
 * @check tests/unit/family/length-text.test.ts
 */
export function flooredText(value: number, decimals: number, unit: string, kept = decimals): string {
  const steps = wholeSteps(value, decimals);
  if (steps === 0 && value > 0) return `less than ${10 ** -decimals} ${unit}`;
  const told = (steps / 10 ** decimals).toFixed(decimals);
  return `${told.replace(new RegExp(`0{0,${decimals - kept}}$`), '').replace(/\.$/, '')} ${unit}`;
}

/** How many steps of the last decimal there are in a value: what is a hair short of a step for the rounding of doubles counts. */
export function wholeSteps(value: number, decimals: number): number {
  return Math.floor(value * 10 ** decimals + 1e-6);
}

/**
 * With how many decimals two values are told, so that different ones do not read alike.
 *
 * @param least this many in any case; at most three more.
 * @check tests/unit/family/length-text.test.ts
 */
export function decimalsApart(a: number, b: number, least: number): number {
  return [0, 1, 2, 3].map((more) => least + more).find((n) => a.toFixed(n) !== b.toFixed(n)) ?? least;
}

/** A length along the blade, without its unit: one decimal of a millimetre, three of an inch. */
export function heightNumber(nm: number, units: Units): string {
  const text = units === 'in' ? (nm / NM_PER_INCH).toFixed(3) : (nm / NM_PER_MM).toFixed(1);
  return Number(text) === 0 ? text.replace('-', '') : text;
}

/** A length along the blade: "3.1 mm" or "0.122 in". */
export function heightText(nm: number, units: Units): string {
  return `${heightNumber(nm, units)} ${units}`;
}

/** A stretch along the blade: "3.1–4.0 mm". */
export function bandText(from: number, to: number, units: Units): string {
  return `${heightNumber(from, units)}–${heightNumber(to, units)} ${units}`;
}

/** The size of a blade: "2.00 × 8.40 mm" or "0.079 × 0.331 in". */
export function sizeText(width: number, height: number, units: Units): string {
  const per = units === 'in' ? NM_PER_INCH : NM_PER_MM;
  const decimals = units === 'in' ? 3 : 2;
  return `${(width / per).toFixed(decimals)} × ${(height / per).toFixed(decimals)} ${units}`;
}

/** A signed movement: "+0.050 mm", "−0.012 mm"; in inch units "+2.0 thou". */
export function shiftText(nm: number, units: Units): string {
  const value = units === 'in' ? nm / NM_PER_THOU : nm / NM_PER_MM;
  const text = Math.abs(value).toFixed(units === 'in' ? 1 : 3);
  const unit = units === 'in' ? 'thou' : 'mm';
  if (Number(text) === 0) return `${text} ${unit}`;
  return `${value > 0 ? '+' : '−'}${text} ${unit}`;
}
