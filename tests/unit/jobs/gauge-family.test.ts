import { expect, test } from 'vitest';
import { openingsOf } from '../../../src/family/family.ts';
import { type ThicknessCurve, uprightCurve } from '../../../src/gauge/thickness-curve.ts';
import { gaugeFamily } from '../../../src/jobs/gauge-family.ts';
import { JobCancelled, type JobContext } from '../../../src/jobs/job.ts';
import { demoFamily } from '../../kit/demo-family.ts';

const family = demoFamily();
const context = (change: Partial<JobContext> = {}): JobContext => ({
  progress: () => {},
  cancelled: () => false,
  pause: async () => {},
  now: () => performance.now(),
  ...change,
});

test('a curve for each opening, handed over as it comes', async () => {
  const parts: unknown[] = [];
  const { curves } = await gaugeFamily({ family, tiltLimit: 0 }, context({ part: (part) => parts.push(part) }));
  expect(curves).toEqual(openingsOf(family).map(({ id, ring }) => uprightCurve(id, ring)));
  expect(parts).toEqual(curves);
});

test('tilted curves tell how far they are, rise to all of them, and may be stopped', async () => {
  const told: number[] = [];
  let clock = 0;
  const small = { ...family, profiles: openingsOf(family).slice(1, 3) };
  const watched = context({ progress: (done, total) => told.push(done / total), now: () => (clock += 50) });
  const { curves } = await gaugeFamily({ family: small, tiltLimit: 0.02 }, watched);
  expect(curves.map((curve: ThicknessCurve) => [curve.tiltLimit, curve.accuracy])).toEqual([
    [0.02, 1_000],
    [0.02, 1_000],
  ]);
  expect(told.length).toBeGreaterThan(10);
  expect([...told].sort((a, b) => a - b)).toEqual(told);
  const stopped = gaugeFamily({ family, tiltLimit: 0.05 }, context({ cancelled: () => true }));
  await expect(stopped).rejects.toThrow(JobCancelled);
});

test('no openings, no curves', async () => {
  expect(await gaugeFamily({ family: { ...family, profiles: [] }, tiltLimit: 0.1 }, context())).toEqual({ curves: [] });
});
