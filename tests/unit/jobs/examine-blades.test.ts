import { expect, test } from 'vitest';
import { type ExaminedBlade, examineBlades } from '../../../src/jobs/examine-blades.ts';
import { JobCancelled, type JobContext } from '../../../src/jobs/job.ts';
import { findStrength } from '../../../src/strength/find-strength.ts';
import { milledRing, rootedBlade } from '../../cases/strength-blades.ts';

const sharp = rootedBlade(0.1);
const round = rootedBlade(0.06);
const QUESTIONS = [sharp, round].map((milled) => ({ ring: milledRing(milled), milled, gap: 5e-3 }));

function listening(change: Partial<JobContext> = {}) {
  const parts: ExaminedBlade[] = [];
  const context: JobContext = {
    progress: () => {},
    part: (part) => parts.push(part as ExaminedBlade),
    cancelled: () => false,
    pause: async () => {},
    now: () => performance.now(),
    ...change,
  };
  return { parts, context };
}

test('each blade has a first answer before any is brought closer; the last one is that of the blade alone', async () => {
  const { parts, context } = listening();
  expect(await examineBlades(QUESTIONS, context)).toBe(2);
  const told = parts.map((part) => ('last' in part ? [part.index, part.last] : [part.index]));
  expect(told).toEqual([
    [0, false],
    [1, false],
    [0, true],
    [1, true],
  ]);
  const last = parts[3];
  expect('strength' in last && last.strength.torsion).toEqual(findStrength(QUESTIONS[1]).torsion);
});

test('a section that cannot be solved is told, and the other one has its answer', async () => {
  const { parts, context } = listening();
  const broken = {
    get ring(): never {
      throw new Error('no mesh');
    },
  };
  expect(await examineBlades([broken, QUESTIONS[1]], context)).toBe(1);
  expect(parts[0]).toEqual({ index: 0, trouble: 'no mesh' });
  expect(parts.at(-1)).toMatchObject({ index: 1, last: true });
});

test('may be stopped on its way', async () => {
  let now = 0;
  const { context } = listening({ cancelled: () => true, now: () => (now += 100) });
  await expect(examineBlades(QUESTIONS, context)).rejects.toThrow(JobCancelled);
});
