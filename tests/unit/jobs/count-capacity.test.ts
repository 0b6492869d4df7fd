import { expect, test } from 'vitest';
import { USUAL_RULES } from '../../../src/capacity/bitting-rules.ts';
import { countCapacity } from '../../../src/jobs/count-capacity.ts';
import { JobCancelled, type JobContext, JobRefused } from '../../../src/jobs/job.ts';

const context = (change: Partial<JobContext> = {}): JobContext => ({
  progress: () => {},
  cancelled: () => false,
  pause: async () => {},
  now: () => performance.now(),
  ...change,
});

test('counts a family', async () => {
  const { keys } = await countCapacity({ rules: USUAL_RULES, goesIn: [[true]] }, context());
  expect(keys).toBe(753_754n);
});

test('rules that contradict themselves are refused in words', async () => {
  const refused = countCapacity({ rules: { ...USUAL_RULES, chambers: 13 }, goesIn: null }, context());
  await expect(refused).rejects.toThrow(new JobRefused('number of chambers: 13. Give a whole number from 1 to 12.'));
});

test('may be stopped on its way', async () => {
  const rules = { ...USUAL_RULES, chambers: 12, depths: 12, mostAlike: 2, leastDifferent: 8 };
  const stopped = countCapacity({ rules, goesIn: null }, context({ cancelled: () => true }));
  await expect(stopped).rejects.toThrow(JobCancelled);
});
