import { describe, expect, test, vi } from 'vitest';
import { findStrength as job } from '../../../src/jobs/find-strength.ts';
import { JobCancelled, type JobContext } from '../../../src/jobs/job.ts';
import { findingStrength, findStrength } from '../../../src/strength/find-strength.ts';
import type { SectionStrength } from '../../../src/strength/strength.ts';
import { manyGrooved, milledRing, rootedBlade } from '../../cases/strength-blades.ts';
import { polygonOfMm } from '../../cases/torsion-shapes.ts';

// A busy machine must not fail a correct answer.
vi.setConfig({ testTimeout: 180_000 });

/** A shell that notes what it is told, and stops after some looks. */
function shell(looks = Number.POSITIVE_INFINITY) {
  const parts: SectionStrength[] = [];
  const progress: number[] = [];
  let [left, clock] = [looks, 0];
  const context: JobContext = {
    progress: (done, total) => progress.push(done / total),
    part: (value) => parts.push(value as SectionStrength),
    cancelled: () => left-- <= 0,
    pause: () => Promise.resolve(),
    now: () => (clock += 100),
  };
  return { context, parts, progress };
}

const milled = manyGrooved();
const question = { ring: milledRing(milled), milled };
const found = findStrength(question);

describe('the search for a strength', () => {
  test('gives a useful answer at once and closes in', () => {
    const [first, ...more] = [...findingStrength(question)].flatMap(({ part }) => part ?? []);
    expect(first.torsion.above / first.torsion.below).toBeLessThan(1.02);
    expect(first.plasticTorque.above / first.plasticTorque.below).toBeLessThan(1.02);
    expect(more.every((part) => part.steps.length)).toBe(true);
    expect(found.plasticTorque.above / found.plasticTorque.below).toBeLessThan(1.003);
    expect(found.converged).toBe(true);
    expect(found.torsion.above / found.torsion.below).toBeLessThan(1.002);
    expect(found.sharpCorners).toEqual([]);
    expect(found.leastRootRadius).toBeCloseTo(60_000, -2);
  });

  test('the root radius decides the peak: a quarter of it raises it by more than a third', () => {
    const sharper = manyGrooved(15_000);
    const tight = findStrength({ ring: milledRing(sharper), milled: sharper });
    expect(tight.peakShear / found.peakShear).toBeGreaterThan(1.35);
    expect(Math.abs(tight.torsion.best / found.torsion.best - 1)).toBeLessThan(0.02);
  });

  test('sharp roots: the peak is told away from them, and stays where the mesh is finer', () => {
    const square = rootedBlade(0);
    const [one, two] = [2e-3, 6e-4].map((gap) => findStrength({ ring: milledRing(square), milled: square, gap }));
    expect(one.sharpCorners).toHaveLength(4);
    expect(one.keepOut).toBeGreaterThan(50_000);
    for (const { sharpCorners, peakAt, keepOut } of [one, two])
      for (const { x, y } of sharpCorners)
        expect(Math.hypot(peakAt.x - x, peakAt.y - y)).toBeGreaterThan(0.6 * keepOut);
    expect(Math.abs(two.peakShear / one.peakShear - 1)).toBeLessThan(0.05);
  });

  test('the field covers the section with counter-clockwise triangles, most sheared near the peak', () => {
    const { field, peakAt, peakShear, area } = found;
    const { points, triangles, shear } = field;
    let sum = 0;
    for (let t = 0; t < triangles.length; t += 3) {
      const [a, b, c] = [2 * triangles[t], 2 * triangles[t + 1], 2 * triangles[t + 2]];
      const twice =
        (points[b] - points[a]) * (points[c + 1] - points[a + 1]) -
        (points[c] - points[a]) * (points[b + 1] - points[a + 1]);
      expect(twice).toBeGreaterThan(0);
      sum += twice / 2e12;
    }
    expect(sum / area).toBeCloseTo(1, 3);
    expect(shear).toHaveLength(points.length / 2);
    const most = shear.reduce((a, b) => Math.max(a, b));
    expect(most / peakShear).toBeGreaterThan(0.9);
    expect(most / peakShear).toBeLessThan(1.15);
    // The peak is at the root of a groove, 0.5 mm below a face.
    expect(Math.min(peakAt.x, 2e6 - peakAt.x)).toBeGreaterThan(0.44e6);
    expect(Math.min(peakAt.x, 2e6 - peakAt.x)).toBeLessThan(0.52e6);
  });

  test('a rounding drawn as chords is told: its peak comes out up to 7 % too low', () => {
    const chords = findStrength({ ring: question.ring });
    expect([found.peakOnChords, chords.peakOnChords]).toEqual([false, true]);
    expect(chords.peakShear / found.peakShear).toBeGreaterThan(0.93);
    expect(chords.peakShear / found.peakShear).toBeLessThan(1.03);
  });

  test('a bound on triangles ends the search, and says that it did', () => {
    const bound = findStrength({
      ...polygonOfMm([
        [0, 0],
        [4, 0],
        [4, 1],
        [1, 1],
        [1, 4],
        [0, 4],
      ]),
      gap: 1e-7,
      mostTriangles: 400,
    });
    expect(bound.converged).toBe(false);
    expect(bound.torsion.below).toBeLessThan(bound.torsion.above);
  });
});

describe('the job', () => {
  test('hands out each better answer as a part and tells its progress', async () => {
    const { context, parts, progress } = shell();
    const answer = await job(question, context);
    expect(answer).toEqual(found);
    expect(parts.length).toBe(answer.steps.length - 1);
    for (const share of progress) expect(share).toBeLessThanOrEqual(1);
  });

  test('can be cancelled', async () => {
    await expect(job(question, shell(0).context)).rejects.toBeInstanceOf(JobCancelled);
  });
});
