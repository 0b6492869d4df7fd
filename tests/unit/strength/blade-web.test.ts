import { expect, test } from 'vitest';
import { asTrustedRing } from '../../../src/geom/ring.ts';
import { millOutline } from '../../../src/profile/mill-outline.ts';
import { bladeWeb } from '../../../src/strength/blade-web.ts';
import { demoFamily } from '../../kit/demo-family.ts';

test('a milled blade is measured in any direction, a drawn one along a level line', () => {
  const { profiles } = demoFamily();
  const blank = profiles.find(({ id }) => id === 'heron-blank-6');
  const strip = profiles.find(({ id }) => id === 'strip-055');
  expect(blank && bladeWeb(blank)).toMatchObject({ way: 'any' });
  // Its name says 0.55 mm.
  expect(strip && bladeWeb(strip)).toMatchObject({ way: 'level', thickness: 550_000, ends: null });
});

test('two grooves level with each other leave what they say', () => {
  const groove = { bottom: 3_000_000, width: 1_000_000, flank: 0, rootRadius: 0 };
  const milled = {
    ...{ thickness: 2_000_000, height: 8_000_000, backRadius: 0 },
    grooves: [
      { ...groove, side: 'left' as const, depth: 600_000 },
      { ...groove, side: 'right' as const, depth: 500_000 },
    ],
  };
  const points = millOutline(milled);
  const ring = Array.isArray(points) && asTrustedRing(points);
  expect(ring && bladeWeb({ ring, milled }).thickness).toBe(900_000);
});
