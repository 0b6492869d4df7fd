import { expect, test } from 'vitest';
import { type DisplaySetup, usualSetup } from '../../../src/print3d/display-setup.ts';
import { planCoupon } from '../../../src/print3d/plan-coupon.ts';
import { printedBox } from '../../../src/print3d/section-loops.ts';
import { demoFamily, demoProfile } from '../../kit/demo-family.ts';

const usual = usualSetup(demoFamily());
const heron = demoProfile('heron-blank-5');
const strip = demoProfile('strip-055');

function plan(changes: Partial<DisplaySetup> = {}, profile = heron) {
  return planCoupon(profile, { ...usual, ...changes });
}

test('the grip is larger than the section all round, which lies in its middle', () => {
  const { grip, origin } = plan();
  const { minX, minY, maxX, maxY } = printedBox(heron.ring, usual.scale);
  expect(grip.width - (maxX - minX)).toBeCloseTo(4, 9);
  expect(grip.depth - (maxY - minY)).toBeCloseTo(4, 9);
  expect(origin[0] + (minX + maxX) / 2).toBeCloseTo(grip.width / 2, 9);
  // Up on the section is down on the bed.
  expect(origin[1] - (minY + maxY) / 2).toBeCloseTo(grip.depth / 2, 9);
});

test('the blade reaches through the block, its tip beyond', () => {
  expect(plan({ tip: 'flat' })).toMatchObject({ bladeLength: usual.blockDepth + 2, tip: { taken: 0 } });
  for (const tip of ['chamfered', 'pointed'] as const) {
    const { bladeLength, tip: shape } = plan({ tip });
    expect(bladeLength - shape.taken).toBeCloseTo(usual.blockDepth + 2, 9);
    expect(shape.taken).toBeGreaterThan(0);
  }
});

test('a thin strip still has a grip that can be held, at any scale', () => {
  expect(plan({ scale: 1 }, strip).grip).toEqual({ width: 8, depth: 10 });
});
