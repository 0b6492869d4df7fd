import { expect, test } from 'vitest';
import type { Milled } from '../../../src/profile/profile.ts';
import { tidyMilled } from '../../../src/profile/tidy-milled.ts';

const measured: Milled = {
  thickness: 2_000_012,
  height: 8_400_400,
  backRadius: 349_990,
  grooves: [
    {
      side: 'left',
      bottom: 1_950_003.2,
      width: 699_980,
      depth: 600_400,
      flank: (14.9993 * Math.PI) / 180,
      rootRadius: 0,
    },
    { side: 'right', bottom: 7_000_000, width: 1_400_400, depth: 300_000, flank: 0, rootRadius: 0 },
  ],
};

test('sizes that are a whole micrometre but for rounding become that; others stay as they are', () => {
  const tidy = tidyMilled(measured, 1);
  expect(tidy).toMatchObject({ thickness: 2_000_000, height: 8_400_400, backRadius: 350_000 });
  expect(tidy.grooves[0]).toMatchObject({ bottom: 1_950_000, width: 700_000, depth: 600_400 });
  expect((tidy.grooves[0].flank * 180) / Math.PI).toBeCloseTo(15, 9);
});

test('a step at the top still ends at the top, also in coarse steps', () => {
  for (const step of [1, 1_000]) {
    const { height, grooves } = tidyMilled(measured, step);
    expect(grooves[1].bottom + grooves[1].width).toBe(height);
  }
});
