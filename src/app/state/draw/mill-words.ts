import { gapText, heightText, type Units } from '../../../family/length-text.ts';
import { NM_PER_INCH, NM_PER_MM, type Point } from '../../../geom/point.ts';
import type { MillFault } from '../../../profile/check-milled.ts';
import { grooveKind } from '../../../profile/edit-milled.ts';
import type { Groove, Milled, Profile, ProfileKind } from '../../../profile/profile.ts';
import type { UnexplainedPart } from '../../../profile/unexplained-parts.ts';

/** A size of a blade without its unit: three decimals of a millimetre, four of an inch; fewer where they are 0. */
export function lengthNumber(nm: number, units: Units): string {
  const [value, least, most] = units === 'in' ? [nm / NM_PER_INCH, 3, 5] : [nm / NM_PER_MM, 2, 4];
  const exact = Number(value.toFixed(most));
  const short = exact.toFixed(least);
  return (Number(short) === exact ? short : String(exact)).replace('-', '−');
}

/** A size of a blade: "1.95 mm", "0.0768 in". */
export function lengthText(nm: number, units: Units): string {
  return `${lengthNumber(nm, units)} ${units}`;
}

/** An angle in degrees: "15", "12.5". */
export function degreesNumber(radians: number): string {
  return String(Number(((radians * 180) / Math.PI).toFixed(2)));
}

/** What is milled into a blade is a groove; in an opening it is a ward of the plug. */
export function grooveWord(kind: ProfileKind): 'groove' | 'ward' {
  return kind === 'opening' ? 'ward' : 'groove';
}

/** What a milled profile is described by: "its grooves", "its wards"; a plain blade has none. */
export function describedBy({ kind, milled }: Pick<Profile, 'kind' | 'milled'>): string {
  return milled?.grooves.length ? `its ${grooveWord(kind)}s` : 'its sizes';
}

/** What a groove is, with its face: "Left groove", "Right step at the back"; in an opening "Left ward". */
export function grooveName(groove: Groove, height: number, word: 'groove' | 'ward' = 'groove'): string {
  const side = groove.side === 'left' ? 'Left' : 'Right';
  const kind = grooveKind(groove, height);
  return `${side} ${kind === 'groove' ? word : kind}`;
}

/** The sizes of a groove in one line: "1.95–2.65, 0.60 deep". */
export function grooveSizes({ bottom, width, depth, flank, rootRadius }: Groove, units: Units): string {
  const n = (nm: number) => lengthNumber(nm, units);
  const lean = flank > 0 ? `, ${degreesNumber(flank)}°` : '';
  const root = rootRadius > 0 ? `, r\u00a0${n(rootRadius)}` : '';
  return `${n(bottom)}–${n(bottom + width)}, ${n(depth)} deep${lean}${root}`;
}

/**
 * Where a part that is not explained lies and by how much: "0.03 mm more at 3.1 mm on the left".
 *
 * @param origin where the blade's frame stands in the outline's.
 */
export function unexplainedText(part: UnexplainedPart, milled: Milled, origin: Point, units: Units): string {
  const [across, up] = [part.at.x - origin.x, part.at.y - origin.y];
  const what = `${gapText(part.off, units)} ${part.extra ? 'more' : 'less'}`;
  if (up < milled.height * 0.01) return `${what} at the back`;
  if (up > milled.height * 0.99) return `${what} at the top`;
  return `${what} at ${heightText(up, units)} on the ${across < milled.thickness / 2 ? 'left' : 'right'}`;
}

/** The fault at a field of a groove, or of the blade where `groove` is null, in words; empty where there is none. */
export function faultAt(faults: readonly MillFault[], groove: number | null, field: MillFault['field']): string {
  const fault = faults.find((f) => f.field === field && (f.grooves[0] ?? null) === groove);
  return fault ? `${sentence(fault.message)} ${fault.cure}` : '';
}

function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}
