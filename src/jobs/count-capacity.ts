import { ruleFaults } from '../capacity/bitting-rules.ts';
import { type Capacity, type CapacityInput, countingCapacity } from '../capacity/capacity.ts';
import { type Job, JobRefused, runInSlices } from './job.ts';

/**
 * How many keys a family has under some rules.
 *
 * @throws JobRefused where the rules contradict themselves, with the field and the cure.
 * @check tests/unit/jobs/count-capacity.test.ts
 */
export const countCapacity: Job<CapacityInput, Capacity> = async (input, context) => {
  const [fault] = ruleFaults(input.rules);
  if (fault) throw new JobRefused(`${fault.what}. ${fault.cure}`);
  return runInSlices(countingCapacity(input), context);
};
