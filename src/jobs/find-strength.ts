import { findingStrength, type StrengthQuestion } from '../strength/find-strength.ts';
import type { SectionStrength } from '../strength/strength.ts';
import { type Job, runInSlices } from './job.ts';

/** What a section bears by its shape; each better answer as a part, cancelled between two steps of the refinement. */
export const findStrength: Job<StrengthQuestion, SectionStrength> = (question, context) => {
  function* told() {
    const steps = findingStrength(question);
    for (;;) {
      const step = steps.next();
      if (step.done) return step.value;
      if (step.value.part) context.part?.(step.value.part);
      yield step.value;
    }
  }
  return runInSlices(told(), context);
};
