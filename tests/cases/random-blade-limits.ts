import type { BladeLimits } from '../../src/family/plan.ts';
import type { PlanGap } from '../../src/plan/plan-gap.ts';
import type { RandomNumbers } from './random-numbers.ts';

const UM = 1_000;

/** Limits of a blade as somebody might type them, and gaps; sound or not. */
export function randomBladeLimits(random: RandomNumbers): { blade: BladeLimits; gap: PlanGap; depths: number } {
  const um = (from: number, to: number, step = 10) => random.whole(from / step, to / step) * step * UM;
  const grooveWidth = um(350, 1200);
  const depths = random.whole(1, 3);
  const depthStep = um(180, 400);
  const blade: BladeLimits = {
    thickness: um(1600, 3200),
    height: um(6500, 10_000),
    backRadius: random.chance(0.3) ? 0 : um(50, 700),
    cutZone: random.chance(0.2) ? 0 : um(1000, 3500),
    backZone: random.chance(0.2) ? 0 : um(300, 1200),
    grooveWidth,
    heightStep: grooveWidth + um(100, 900),
    grooveDepth: depths * depthStep + um(-100, 500),
    depthStep,
    flank: random.chance(0.4) ? 0 : random.between(0, 0.6),
    rootRadius: random.chance(0.4) ? 0 : um(10, 200),
    sides: random.pick(['both', 'both', 'both', 'left', 'right'] as const),
  };
  const gap = { runningClearance: um(10, 60), tolerance: um(0, 20), leastWeb: um(300, 700) };
  return { blade, gap, depths };
}
