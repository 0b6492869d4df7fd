import type { SectionStrength } from './strength.ts';

/** What the limits need to know of a material: its least and greatest yield strength in tension, MPa. */
export interface YieldRange {
  readonly yield: readonly [number, number];
}

/** A figure from the weakest to the strongest piece that the material's table allows. */
export interface LimitRange {
  readonly low: number;
  readonly high: number;
}

/** How a blade takes a torque, told by the low end of its material's yield strength. */
export type TorqueVerdict = 'elastic' | 'part-plastic' | 'too-much';

/** What a blade of a material bears. Newton metres. */
export interface TorqueLimits {
  /** Torque at which the material first yields somewhere, by von Mises. */
  readonly yieldNm: LimitRange;
  /** The same by Tresca's rule, which is more cautious. */
  readonly trescaNm: LimitRange;
  /** Torque at which the whole section yields, by von Mises: it bears no more without hardening. */
  readonly plasticNm: LimitRange;
  /** Bending moment about the weakest axis at which the outer fibre first yields. */
  readonly bendingNm: LimitRange;
}

/** A material and how a blade of it takes a torque. */
export interface MaterialVerdict<M extends YieldRange> {
  readonly material: M;
  readonly limits: TorqueLimits;
  readonly verdict: TorqueVerdict;
}

/** Shear yield over tensile yield by von Mises. */
const VON_MISES = 1 / Math.sqrt(3);

/** Shear yield over tensile yield by Tresca. */
const TRESCA = 1 / 2;

/** Newton millimetres in a newton metre. */
const N_MM = 1_000;

/**
 * Torque to first yield and to full plasticity, and bending moment to first yield, of a section in a material.
 *
 * First yield is told away from sharp corners (see `peakShear`). Both criteria stand beside each other; `plasticNm` and
 * verdicts are by von Mises. The range is that of the material's yield strength, and for the fully plastic torque also that
 * of its bounds. No safety factor, no cuts, no hardening.
 *
 * @returns newton metres.
 * @accuracy `yieldNm` as `peakShear`: about 1 %, see there.
 * @source shear yield sigma / sqrt 3 (von Mises), sigma / 2 (Tresca); any text on plasticity.
 * @check tests/outside/torsion.test.ts, the worked blade of 8 x 2 mm
 */
export function torqueLimits(section: SectionStrength, material: YieldRange): TorqueLimits {
  const [low, high] = material.yield;
  const { peakShear, plasticTorque, weakModulus } = section;
  const first = (share: number): LimitRange => ({
    low: (low * share) / peakShear / N_MM,
    high: (high * share) / peakShear / N_MM,
  });
  const yieldNm = first(VON_MISES);
  const plasticNm = {
    low: (low * VON_MISES * plasticTorque.below) / N_MM,
    high: (high * VON_MISES * plasticTorque.above) / N_MM,
  };
  return {
    yieldNm,
    trescaNm: first(TRESCA),
    plasticNm,
    bendingNm: { low: (low * weakModulus) / N_MM, high: (high * weakModulus) / N_MM },
  };
}

/** How a torque is taken by the weakest piece of the material: without yield, with part of the section yielding, or not. */
export function torqueVerdict(
  { yieldNm, plasticNm }: Pick<TorqueLimits, 'yieldNm' | 'plasticNm'>,
  torqueNm: number,
): TorqueVerdict {
  if (torqueNm <= yieldNm.low) return 'elastic';
  return torqueNm <= plasticNm.low ? 'part-plastic' : 'too-much';
}

/**
 * Every material with what a blade of it bears, and how it takes a torque; in the order given.
 *
 * @param torqueNm newton metres.
 * @check tests/unit/strength/torque-limits.test.ts
 */
export function materialsThatDo<M extends YieldRange>(
  section: SectionStrength,
  materials: readonly M[],
  torqueNm: number,
): MaterialVerdict<M>[] {
  return materials.map((material) => {
    const limits = torqueLimits(section, material);
    return { material, limits, verdict: torqueVerdict(limits, torqueNm) };
  });
}
