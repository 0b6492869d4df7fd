// What goes on a bed is asked of the parts that are really built: at the scale found none is larger than the bed, a tenth
// more and one is.
import { describe, expect, test } from 'vitest';
import { buildDisplaySet } from '../../../src/jobs/build-display-set.ts';
import type { JobContext } from '../../../src/jobs/job.ts';
import { type DisplaySetup, usualSetup } from '../../../src/print3d/display-setup.ts';
import { scaleForBed } from '../../../src/print3d/scale-for-bed.ts';
import { demoFamily } from '../../kit/demo-family.ts';

const family = demoFamily();
const few = (changes: Partial<DisplaySetup>): DisplaySetup => ({
  ...usualSetup(family),
  openings: ['heron-keyway', 'smew-keyway'],
  blanks: ['heron-blank-5'],
  ...changes,
});

const ALONE: JobContext = { progress: () => {}, cancelled: () => false, pause: async () => {}, now: () => 0 };

async function isLarger(setup: DisplaySetup): Promise<boolean> {
  const { checks } = await buildDisplaySet({ family, setup }, ALONE);
  return checks.some(({ kind }) => kind === 'bed');
}

describe('a scale that goes on the bed', () => {
  test.each<[string, Partial<DisplaySetup>]>([
    ['where the board is too large', { bed: [60, 60], scale: 6, letters: false }],
    ['where a coupon is', { bed: [52, 52], scale: 7, openings: [], board: false }],
    ['where the block is, without letters', { bed: [60, 50], scale: 8, blanks: [], board: false, letters: false }],
  ])('is the largest in tenths %s', async (_, changes) => {
    const setup = few(changes);
    expect(await isLarger(setup)).toBe(true);
    const scale = scaleForBed(family, setup) ?? Number.NaN;
    expect(scale).toBeLessThan(setup.scale);
    expect(await isLarger({ ...setup, scale })).toBe(false);
    expect(await isLarger({ ...setup, scale: Math.round(scale * 10 + 1) / 10 })).toBe(true);
  });

  test('is none where walls alone are too thick', () => {
    expect(scaleForBed(family, few({ bed: [50, 50], wall: 30 }))).toBeNull();
  });
});
