import { heightNumber, type Units } from '../../../family/length-text.ts';
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
  if (units === 'in') return `${floored(nm / NM_PER_THOU, 1)} thou`;
  const text = floored(nm / NM_PER_MM, 3);
  return `${text.endsWith('0') ? text.slice(0, -1) : text} mm`;
}

/** The same with all its decimals, for figures that stand below each other. */
export function thicknessFigure(nm: number, units: Units): string {
  return units === 'in' ? `${floored(nm / NM_PER_THOU, 1)} thou` : `${floored(nm / NM_PER_MM, 3)} mm`;
}

/** Cut off after some decimals, so that the most that goes in is not told as more. */
function floored(value: number, decimals: number): string {
  const tens = 10 ** decimals;
  return (Math.floor(value * tens + 1e-6) / tens).toFixed(decimals);
}

/** A spare thickness with its sign: "+0.050 mm", "−1.2 thou". */
export function spareText(nm: number, units: Units): string {
  return `${spareNumber(nm, units)} ${units === 'in' ? 'thou' : 'mm'}`;
}

/** The same without its unit. */
export function spareNumber(nm: number, units: Units): string {
  const value = units === 'in' ? nm / NM_PER_THOU : nm / NM_PER_MM;
  const decimals = units === 'in' ? 1 : 3;
  const text = Math.abs(value).toFixed(decimals);
  if (Number(text) === 0) return nm < 0 ? `−${text}` : text;
  return `${value > 0 ? '+' : '−'}${text}`;
}

/** A height of a strip: "6 mm", "6.25 mm", "0.236 in". */
export function stripHeightText(nm: number, units: Units): string {
  if (units === 'in') return `${heightNumber(nm, units)} in`;
  return `${Number((nm / NM_PER_MM).toFixed(2))} mm`;
}
