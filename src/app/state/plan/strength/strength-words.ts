import type { Units } from '../../../../family/length-text.ts';
import { NM_PER_INCH, NM_PER_MM } from '../../../../geom/point.ts';
import type { Material, Range } from '../../../../strength/materials.ts';
import type { Bounds, SectionStrength } from '../../../../strength/strength.ts';
import type { LimitRange, TorqueVerdict } from '../../../../strength/torque-limits.ts';

/** Inch pounds in a newton metre. */
export const IN_LB_PER_NM = 8.850_745_8;

const MM_PER_INCH = NM_PER_INCH / NM_PER_MM;
const KSI_PER_MPA = 0.145_037_74;

/** A torque or a moment without its unit. */
export function torqueNumber(nm: number, units: Units): string {
  return units === 'in' ? (nm * IN_LB_PER_NM).toFixed(1) : nm.toFixed(2);
}

/** The unit of torques and moments. */
export function torqueUnit(units: Units): string {
  return units === 'in' ? 'in-lb' : 'N m';
}

/** A torque or a moment: "2.50 N m" or "22.1 in-lb". */
export function torqueText(nm: number, units: Units): string {
  return `${torqueNumber(nm, units)} ${torqueUnit(units)}`;
}

/** From the weakest to the strongest piece; one figure where both read alike. */
export function limitText({ low, high }: LimitRange, units: Units): string {
  const [from, to] = [torqueNumber(low, units), torqueNumber(high, units)];
  return from === to ? `${from} ${torqueUnit(units)}` : `${from}–${to} ${torqueUnit(units)}`;
}

/** A stress: "277 MPa" or "40.2 ksi". */
export function stressText(mpa: number, units: Units): string {
  return units === 'in' ? `${(mpa * KSI_PER_MPA).toFixed(1)} ksi` : `${mpa.toFixed(0)} MPa`;
}

/** A yield or tensile strength from a list. */
export function strengthText([low, high]: Range, units: Units): string {
  if (low === high) return stressText(low, units);
  if (low === 0) return `${stressText(high, units)} at most`;
  return `${stressText(low, units).split(' ')[0]}–${stressText(high, units)}`;
}

/** A power of a length; inches in millionths where they would be hard to read. */
function powerText(value: number, power: 2 | 3 | 4, units: Units, digits = 4): string {
  const sign = { 2: '²', 3: '³', 4: '⁴' }[power];
  if (units === 'mm') return `${significant(value, digits)} mm${sign}`;
  const inches = value / MM_PER_INCH ** power;
  return power === 2 ? `${inches.toFixed(4)} in²` : `${significant(inches * 1e6, digits)} × 10⁻⁶ in${sign}`;
}

/** An area in mm^2. */
export function sectionAreaText(area: number, units: Units): string {
  return powerText(area, 2, units);
}

/** A section modulus in mm^3. */
export function modulusText(modulus: number, units: Units): string {
  return powerText(modulus, 3, units);
}

/** A second moment or torsion constant in mm^4. */
export function momentText(moment: number, units: Units, digits = 4): string {
  return powerText(moment, 4, units, digits);
}

/** A figure with so many digits that mean something, zeros at the end as well, so that figures of a column are alike. */
function significant(value: number, digits: number): string {
  const text = value.toPrecision(digits);
  return text.includes('e') ? String(Number(text)) : text;
}

/** Half the distance of two bounds, as a share of the estimate: "± 0.1 %". */
export function boundsText({ below, above, best }: Bounds & { readonly best: number }): string {
  const percent = (50 * (above - below)) / best;
  return `±\u00a0${percent < 0.05 ? 'under\u00a00.1' : percent.toFixed(1)}\u00a0%`;
}

const VERDICT_WORDS: Readonly<Record<TorqueVerdict, string>> = {
  elastic: 'bears it',
  'part-plastic': 'yields in part',
  'too-much': 'too much',
};

/** How a blade takes the torque, in two or three words. */
export function verdictWords(verdict: TorqueVerdict): string {
  return VERDICT_WORDS[verdict];
}

/** The same as a sentence for the picked blade. */
export function verdictSentence(name: string, verdict: TorqueVerdict, torqueNm: number, units: Units): string {
  const torque = torqueText(torqueNm, units);
  if (verdict === 'elastic') return `${name} bears ${torque} without yielding anywhere.`;
  if (verdict === 'part-plastic')
    return `Under ${torque} part of ${name} yields: it may stay twisted, but is not yet plastic throughout.`;
  return `${torque} is more than ${name} bears in this material: it would twist through.`;
}

/** "Nickel silver 55-18 C77000, H04, 0.2 % offset": rows that differ by the definition alone are told apart. */
export function materialText({ name, alloy, temper, yieldBy }: Material): string {
  const by = yieldBy === 'not stated' ? 'yield not defined' : yieldBy;
  const title = name.includes(alloy) ? name : `${name} ${alloy}`;
  return `${title}, ${temper} (${by})`;
}

/** What is from memory in a row of the materials; empty where nothing is. */
export function memoryText({ fromMemory }: Material): string {
  if (fromMemory.length === 0) return '';
  const fields = fromMemory.map((field) => (field === 'yieldBy' ? 'definition of yield' : field));
  return `From memory, the source text was not seen: ${fields.join(', ')}.`;
}

/** What stands over the sharp corners of a section; empty where there are none. */
export function sharpText({ sharpCorners, keepOut }: SectionStrength, length: (nm: number) => string): string {
  const count = sharpCorners.length;
  if (count === 0) return '';
  const corners = count === 1 ? 'One inner corner is sharp' : `${count} inner corners are sharp`;
  return `${corners}. At a sharp inner corner the elastic stress has no bound, so no peak is told within ${length(keepOut)} of it. Give its true root radius.`;
}

/** A ratio of two figures: "1.24 times", "the same". */
export function ratioText(value: number, beside: number): string {
  const ratio = value / beside;
  if (!Number.isFinite(ratio)) return '–';
  return Math.abs(ratio - 1) < 0.005 ? 'the same' : `× ${ratio.toFixed(2)}`;
}
