import { describe, expect, test } from 'vitest';
import { findStrength } from '../../../src/strength/find-strength.ts';
import { materialsThatDo, torqueLimits, torqueVerdict } from '../../../src/strength/torque-limits.ts';
import { milledRing, rootedBlade } from '../../cases/strength-blades.ts';

const milled = rootedBlade(0.06);
const section = findStrength({ ring: milledRing(milled), milled });

describe('limits of a blade', () => {
  test('go with the yield strength, the range from its low to its high end', () => {
    const limits = torqueLimits(section, { yield: [300, 600] });
    expect(limits.yieldNm.high / limits.yieldNm.low).toBeCloseTo(2, 10);
    expect(limits.plasticNm.high / limits.plasticNm.low).toBeGreaterThan(2);
    expect(limits.plasticNm.high / limits.plasticNm.low).toBeLessThan(2.02);
    expect(limits.bendingNm.low).toBeCloseTo((300 * section.weakModulus) / 1_000, 12);
    // Grooves raise the shear: the whole section yields at far more than first yield.
    expect(limits.plasticNm.low).toBeGreaterThan(1.3 * limits.yieldNm.low);
  });

  test('a row without a least yield strength promises nothing', () => {
    const limits = torqueLimits(section, { yield: [0, 230] });
    expect(limits).toMatchObject({ yieldNm: { low: 0 }, plasticNm: { low: 0 } });
    expect(torqueVerdict(limits, 0.1)).toBe('too-much');
  });
});

describe('verdicts', () => {
  const limits = { yieldNm: { low: 1, high: 2 }, plasticNm: { low: 3, high: 6 } };

  test.each([
    [0.9, 'elastic'],
    [1, 'elastic'],
    [1.1, 'part-plastic'],
    [3, 'part-plastic'],
    [3.1, 'too-much'],
  ])('%f N m: %s', (torque, verdict) => {
    expect(torqueVerdict(limits, torque)).toBe(verdict);
  });

  test('of all materials, in their order: a stronger one never does less', () => {
    const materials = [100, 300, 600, 1_200, 2_400].map((low) => ({ id: `m${low}`, yield: [low, low] as const }));
    const found = materialsThatDo(section, materials, 2.5);
    expect(found.map(({ material }) => material.id)).toEqual(materials.map(({ id }) => id));
    const rank = { 'too-much': 0, 'part-plastic': 1, elastic: 2 };
    const ranks = found.map(({ verdict }) => rank[verdict]);
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect(ranks[0]).toBe(0);
    expect(ranks[4]).toBe(2);
  });
});
