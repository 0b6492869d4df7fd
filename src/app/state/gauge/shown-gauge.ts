import { type Family, openingsOf } from '../../../family/family.ts';
import { envelopeOf, type FamilyLimit } from '../../../gauge/family-limit.ts';
import { type ThicknessCurve, thicknessAt } from '../../../gauge/thickness-curve.ts';
import type { Profile } from '../../../profile/profile.ts';
import { sizeOf } from './strip-in-hand.ts';

/** The curves of a family as far as they are known. */
export interface ShownCurves {
  readonly openings: readonly Profile[];
  /** By the keyway's id, in chart order. */
  readonly curves: ReadonlyMap<string, ThicknessCurve>;
  /** Whether none is missing. */
  readonly complete: boolean;
  /** The family's own limit; null until all curves are there. */
  readonly limit: FamilyLimit | null;
  /** Greatest height and width of a keyway, nanometres: ends of the chart. */
  readonly tallest: number;
  readonly thickest: number;
}

/**
 * What the chart shows of the curves that are known.
 *
 * @check tests/unit/app/gauge-strip.test.ts
 */
export function shownCurves(family: Family, known: readonly ThicknessCurve[]): ShownCurves {
  const openings = openingsOf(family);
  const curves = new Map(known.map((curve) => [curve.openingId, curve]));
  const complete = openings.length > 0 && openings.every(({ id }) => curves.has(id));
  const sizes = openings.map(sizeOf);
  return {
    openings,
    curves,
    complete,
    limit: complete ? envelopeOf(known) : null,
    tallest: Math.max(1, ...sizes.map(({ height }) => height)),
    thickest: Math.max(1, ...sizes.map(({ thickness }) => thickness)),
  };
}

/** The keyways from tight to wide at a height, with the thickest strip of each; nanometres. */
export function fromTightAt({ openings, curves }: ShownCurves, height: number): { opening: Profile; most: number }[] {
  return openings
    .flatMap((opening) => {
      const curve = curves.get(opening.id);
      return curve ? [{ opening, most: thicknessAt(curve, height) }] : [];
    })
    .sort((a, b) => a.most - b.most);
}
