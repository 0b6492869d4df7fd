import { setBladeLimits } from '../../interchange/json/edit-plan.ts';
import { takePlan } from '../../interchange/json/take-plan.ts';
import type { WardPlan } from '../../plan/ward-plan.ts';
import { startJob } from '../../workers/start-job.ts';
import type { SectionsDoors } from '../state/plan/sections/sections-doors.ts';

/** The operations behind the sections sheet of a plan; the long ones each in a thread of its own, which a cancel ends. */
export const sectionsDoors: SectionsDoors = {
  solve: (input, onPart, onProgress) =>
    startJob('solvePlan', input, { onPart: (part) => onPart(part as WardPlan), onProgress, alone: true }),
  near: (input) => startJob('findNearestPlans', input, { alone: true }),
  draw: (input, onProgress) => startJob('drawPlan', input, { onProgress, alone: true }),
  takePlan,
  setBladeLimits,
};
