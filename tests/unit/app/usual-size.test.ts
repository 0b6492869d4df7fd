import { expect, test } from 'vitest';
import { usualSize } from '../../../src/app/state/draw/usual-size.ts';
import type { Family } from '../../../src/family/family.ts';
import type { ProfileKind } from '../../../src/profile/profile.ts';
import { demoFamily } from '../../kit/demo-family.ts';

const only = (...kinds: ProfileKind[]): Family => {
  const family = demoFamily();
  return { ...family, profiles: family.profiles.filter(({ kind }) => kinds.includes(kind)) };
};

test("a new section begins with the size that the family's sections of its kind have", () => {
  expect(usualSize(demoFamily(), 'blank', 'mm')).toEqual({ width: 2_000_000, height: 8_400_000 });
  expect(usualSize(demoFamily(), 'opening', 'mm')).toEqual({ width: 2_110_000, height: 8_510_000 });
});

test('where there is none of its kind, with what goes with the others; in an empty family with a common blade', () => {
  const gap = 2 * demoFamily().runningClearance;
  expect(usualSize(only('blank'), 'opening', 'mm')).toEqual({ width: 2_000_000 + gap, height: 8_400_000 + gap });
  expect(usualSize(only('blank'), 'tool', 'mm')).toEqual({ width: 2_000_000, height: 8_400_000 });
  expect(usualSize(only('opening'), 'blank', 'mm')).toEqual({ width: 2_110_000 - gap, height: 8_510_000 - gap });
  expect(usualSize(only(), 'blank', 'mm')).toEqual({ width: 2_000_000, height: 8_000_000 });
  expect(usualSize(only(), 'opening', 'in').width % 2_540).toBe(0);
});
