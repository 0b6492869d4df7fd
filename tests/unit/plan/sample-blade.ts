import type { BladeLimits } from '../../../src/family/plan.ts';

const MM = 1_000_000;

/** Millimetres in whole nanometres. */
export const mm = (length: number) => Math.round(length * MM);

/** 8.4 mm high: 0.6 mm at the back and 3.05 mm for the cuts leave 4.75 mm for grooves of 0.75 mm every millimetre. */
export const BLADE: BladeLimits = {
  thickness: mm(2),
  height: mm(8.4),
  backRadius: mm(0.4),
  cutZone: mm(3.05),
  backZone: mm(0.6),
  grooveWidth: mm(0.75),
  heightStep: mm(1),
  grooveDepth: mm(0.6),
  depthStep: mm(0.3),
  flank: 0,
  rootRadius: 0,
  sides: 'both',
};

/** All round 0.08 mm, so a stop takes 2 x 0.08 + 4 x 0.02 = 0.24 mm and 0.005 for chords. */
export const GAP = { runningClearance: mm(0.04), tolerance: mm(0.02), leastWeb: mm(0.5) };
