import { firstFree } from '../../../family/first-free.ts';
import { type Units, wholeSteps } from '../../../family/length-text.ts';
import type { Strip } from '../../../gauge/thickness-curve.ts';
import { NM_PER_INCH, NM_PER_MM } from '../../../geom/point.ts';
import type { Profile } from '../../../profile/profile.ts';
import { addPlainSection, type EditAnswer } from '../draw/section-editing.ts';
import type { Session } from '../session.ts';

/**
 * A name for a strip as a tool, which nothing else has: "Strip 0.94 x 6", "Strip 37.1 thou x 0.236 in".
 *
 * @param had the parts of the family.
 * @param strip nanometres; a size that is not known yet is left out.
 * @check tests/unit/app/gauge-keep.test.ts
 */
export function stripName(
  had: readonly Pick<Profile, 'name'>[],
  { thickness, height }: { readonly [size in keyof Strip]: number | null },
  units: Units,
): string {
  const inMm = (nm: number) => String(Number((nm / NM_PER_MM).toFixed(3)));
  const thick = (nm: number) => (units === 'mm' ? inMm(nm) : `${Number(((1000 * nm) / NM_PER_INCH).toFixed(1))} thou`);
  const tall = (nm: number) => (units === 'mm' ? inMm(nm) : `${(nm / NM_PER_INCH).toFixed(3)} in`);
  const size = thickness === null || height === null ? '' : ` ${thick(thickness)} x ${tall(height)}`;
  const taken = had.map(({ name }) => name);
  return firstFree(taken, (n) => `Strip${size}${n === 1 ? '' : `, ${n}`}`);
}

/**
 * The thickest strip in round figures: a micrometre or a tenth of a thousandth of an inch, never more than it is.
 *
 * @returns nanometres; null where no strip goes in.
 */
export function roundStrip(most: number | null, units: Units): number | null {
  if (most === null) return null;
  const [per, decimals] = units === 'mm' ? [NM_PER_MM, 3] : [NM_PER_INCH, 4];
  const nm = Math.floor((wholeSteps(most / per, decimals) * per) / 10 ** decimals);
  return nm > 0 ? nm : null;
}

/**
 * What is told below the thickness of a strip that is to be kept.
 *
 * @param typed what is in the fields, nanometres; null where nothing is.
 * @param asked the height that the thickest strip was found for, and that thickness in round figures, nanometres; null
 * where it is not known.
 * @returns undefined where nothing is to be told.
 * @check tests/unit/app/gauge-keep.test.ts
 */
export function thicknessHint(
  typed: { readonly [size in keyof Strip]: number | null },
  asked: { readonly height: number | null; readonly thickest: number | null },
): string | undefined {
  const { thickest } = asked;
  // Of another height another strip is the thickest.
  if (typed.height === null || typed.height !== asked.height) return undefined;
  if (typed.thickness === null) return thickest === null ? 'The thickest that goes in is not known.' : undefined;
  return typed.thickness === thickest ? 'The thickest that goes in, touching.' : undefined;
}

/**
 * Makes a strip a tool of the family, picks it and takes its size in hand; one step of undo.
 *
 * @param strip nanometres.
 * @returns null where it was taken, else what is wrong with it.
 * @check tests/unit/app/gauge-keep.test.ts
 */
export function keepStrip(session: Session, name: string, { thickness, height }: Strip): EditAnswer {
  const refused = addPlainSection(session, { kind: 'tool', name }, thickness, height);
  if (!refused) session.gauge.setState({ thickness, height });
  return refused;
}
