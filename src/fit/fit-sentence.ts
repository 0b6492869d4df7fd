import type { Explanation } from './explain-placement.ts';
import type { Collision, Contact, Fit, WardSide } from './fit.ts';

/** How lengths are written for the reader, unit included; gets nanometres. */
export type FormatLength = (nm: number) => string;

/** Writes a height band, unit once: "3.1-4.0 mm"; gets nanometres. */
export type FormatBand = (from: number, to: number) => string;

/**
 * The answer for one pair as a sentence that a class understands.
 *
 * @param explanation of the best placement.
 */
export function fitSentence(
  blank: string,
  opening: string,
  fit: Fit,
  explanation: Explanation,
  length: FormatLength,
  band: FormatBand,
): string {
  if (fit.verdict === 'blocked')
    return `${blank} does not enter ${opening}: ${blockedWords(explanation.collisions, length, band)}.`;
  const pinch = explanation.contacts[0];
  const where = pinch ? `, the narrowest gap at the ${partName(pinch)}` : '';
  if (fit.clearance === 0) return `${blank} enters ${opening} in contact on both sides: no gap is left.`;
  if (fit.verdict === 'tight') return `${blank} enters ${opening} tightly: ${length(fit.clearance)} all round${where}.`;
  return `${blank} enters ${opening} with ${length(fit.clearance)} all round${where}.`;
}

/** "blocked by the left ward at 3.1-4.0 mm, 0.42 mm too deep" for the deepest collision, and what else collides. */
export function blockedWords(collisions: readonly Collision[], length: FormatLength, band: FormatBand): string {
  if (collisions.length === 0) return 'blocked';
  const [first, ...others] = collisions;
  const head = `blocked by the ${partName(first)} at ${band(first.from, first.to)}, ${length(first.depth)} too deep`;
  const names = [...new Set(others.map(partName))].filter((name) => name !== partName(first));
  return names.length > 0 ? `${head}; it also meets the ${names.join(' and the ')}` : head;
}

/** "left ward", "right wall", "floor": the plug's parts as seen from the front. */
export function partName({ side, ward }: Pick<Contact, 'side' | 'ward'>): string {
  const plain: Record<WardSide, string> = {
    left: 'left wall',
    right: 'right wall',
    bottom: 'floor of the keyway',
    top: 'top of the keyway',
  };
  const standing: Record<WardSide, string> = {
    left: 'left ward',
    right: 'right ward',
    bottom: 'bottom ward',
    top: 'top ward',
  };
  return (ward ? standing : plain)[side];
}
