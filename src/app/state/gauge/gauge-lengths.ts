import { flooredText, heightNumber, type Units, wholeSteps } from '../../../family/length-text.ts';
import { NM_PER_INCH, NM_PER_MM } from '../../../geom/point.ts';

const NM_PER_THOU = NM_PER_INCH / 1000;

/** A length that is typed and stepped: its unit, one step of the arrow keys, and one with shift, nanometres. */
export interface TypedMeasure {
  readonly unit: string;
  readonly per: number;
  readonly decimals: number;
  readonly step: number;
  readonly leap: number;
}

/** How the height of a strip is typed. */
export const HEIGHT_MEASURES: Readonly<Record<Units, TypedMeasure>> = {
  mm: { unit: 'mm', per: NM_PER_MM, decimals: 2, step: 0.1 * NM_PER_MM, leap: NM_PER_MM },
  in: { unit: 'in', per: NM_PER_INCH, decimals: 3, step: 5 * NM_PER_THOU, leap: 50 * NM_PER_THOU },
};

/** How its thickness is typed. */
export const THICKNESS_MEASURES: Readonly<Record<Units, TypedMeasure>> = {
  mm: { unit: 'mm', per: NM_PER_MM, decimals: 3, step: 0.01 * NM_PER_MM, leap: 0.1 * NM_PER_MM },
  in: { unit: 'thou', per: NM_PER_THOU, decimals: 1, step: NM_PER_THOU / 2, leap: 5 * NM_PER_THOU },
};

/** Greatest height and thickness that are asked about, nanometres. */
export const MOST_GAUGED = 40 * NM_PER_MM;

/** A length as its field shows it: no more decimals than are needed, none lost. */
export function typedText(nm: number, { per, decimals }: TypedMeasure): string {
  const exact = Number((nm / per).toFixed(6));
  const short = Number(exact.toFixed(decimals));
  return String(Math.abs(exact - short) < 1e-6 ? short : exact);
}

/** A sum whose numbers have no unit is in the unit of its field: "22" thousandths is "(22)*1thou". */
export function withUnit(text: string, { unit }: TypedMeasure): string {
  return /[a-zµ"]/i.test(text) || text.trim() === '' ? text : `(${text})*1${unit}`;
}

/** A thickness: two decimals of a millimetre, three where it has them, or thousandths of an inch; never rounded up. */
export function thicknessText(nm: number, units: Units): string {
  const text = thicknessFigure(nm, units);
  return units === 'mm' && !text.startsWith('less') ? text.replace(/0 mm$/, ' mm') : text;
}

/** A thickness as it was asked for: as {@link thicknessText}, but with all its digits. */
export function askedThicknessText(nm: number, units: Units): string {
  const text = typedText(nm, THICKNESS_MEASURES[units]);
  const least = units === 'in' ? 1 : 2;
  const told = text.split('.')[1]?.length ?? 0;
  return `${told < least ? Number(text).toFixed(least) : text} ${THICKNESS_MEASURES[units].unit}`;
}

/** The same with all its decimals, for figures that stand below each other. */
export function thicknessFigure(nm: number, units: Units): string {
  return units === 'in' ? flooredText(nm / NM_PER_THOU, 1, 'thou') : flooredText(nm / NM_PER_MM, 3, 'mm');
}

/** A spare thickness with its sign: "+0.050 mm", "−1.2 thou". */
export function spareText(nm: number, units: Units): string {
  return `${spareNumber(nm, units)} ${units === 'in' ? 'thou' : 'mm'}`;
}

/** The same without its unit: what is spare is rounded down, what is too much up, neither is told as 0. */
export function spareNumber(nm: number, units: Units): string {
  const value = units === 'in' ? nm / NM_PER_THOU : nm / NM_PER_MM;
  const decimals = units === 'in' ? 1 : 3;
  if (value === 0) return value.toFixed(decimals);
  const steps = value > 0 ? wholeSteps(value, decimals) : Math.max(1, -wholeSteps(value, decimals));
  if (steps === 0) return `+<${10 ** -decimals}`;
  return `${value > 0 ? '+' : '−'}${(steps / 10 ** decimals).toFixed(decimals)}`;
}

/** A height of a strip: "6 mm", "6.25 mm", "0.236 in". */
export function stripHeightText(nm: number, units: Units): string {
  if (units === 'in') return `${heightNumber(nm, units)} in`;
  return `${Number((nm / NM_PER_MM).toFixed(2))} mm`;
}

/** The height of a strip as it was asked for; in inches one that was asked in hundredths of a millimetre is told in short. */
export function askedHeightText(nm: number, units: Units): string {
  return units === 'in' && nm % 1e4 === 0 ? stripHeightText(nm, units) : exactHeightText(nm, units);
}

/** The height of a strip with all its digits, as its field shows it. */
export function exactHeightText(nm: number, units: Units): string {
  return `${typedText(nm, HEIGHT_MEASURES[units])} ${units}`;
}

/** The height of the tallest strip that goes in, never rounded up: "8.2 mm", "0.322 in". */
export function tallestText(nm: number, units: Units): string {
  if (units === 'in') return flooredText(nm / NM_PER_INCH, 4, 'in');
  return flooredText(nm / NM_PER_MM, 3, 'mm', 0);
}
