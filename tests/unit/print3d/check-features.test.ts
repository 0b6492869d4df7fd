import { expect, test } from 'vitest';
import { makeRing } from '../../../src/geom/ring.ts';
import { checkCoupon, checkOpening } from '../../../src/print3d/check-features.ts';
import { type DisplaySetup, usualSetup } from '../../../src/print3d/display-setup.ts';
import type { Profile, ProfileKind } from '../../../src/profile/profile.ts';
import { demoFamily } from '../../kit/demo-family.ts';

function profileOf(kind: ProfileKind, points: readonly (readonly [number, number])[]): Profile {
  const made = makeRing(points.map(([x, y]) => ({ x: x * 1e6, y: (y + 10) * 1e6 })));
  if (!made.ok) throw new Error('not a ring');
  return { id: 'it', kind, name: 'It', ring: made.ring };
}

/** 2 x 8 mm; from the left something of 0.08 mm at 2 mm, on the right something of 0.08 mm to the outside at 5 mm. */
const NOTCHED = [
  [0, 0],
  [2, 0],
  [2, 5],
  [2.5, 5],
  [2.5, 5.08],
  [2, 5.08],
  [2, 8],
  [0, 8],
  [0, 2.08],
  [0.6, 2.08],
  [0.6, 2],
  [0, 2],
] as const;

const SETUP: DisplaySetup = { ...usualSetup(demoFamily()), scale: 4, nozzle: 0.4, gap: 0.05 };

function told(checks: ReturnType<typeof checkOpening>) {
  return checks.map(({ kind, where, size, limit, subjects }) => {
    const at = where && [where.side, Number((where.from / 1e6).toFixed(1)), Number((where.to / 1e6).toFixed(1))];
    return { kind, at, size: Number(size?.toFixed(1)), limit, subjects };
  });
}

test('a ward and a slot of an opening that the nozzle does not make are named with place and size', () => {
  expect(told(checkOpening(profileOf('opening', NOTCHED), SETUP))).toEqual([
    { kind: 'ward', at: ['left', 2, 2.1], size: 0.3, limit: 0.4, subjects: ['it'] },
    { kind: 'slot', at: ['right', 5, 5.1], size: 0.3, limit: 0.4, subjects: ['it'] },
  ]);
});

test('a web of a coupon loses the gap on both sides, a groove gains it', () => {
  const checks = told(checkCoupon(profileOf('blank', NOTCHED), { ...SETUP, gap: 0.02 }));
  expect(checks).toEqual([
    { kind: 'web', at: ['right', 5, 5.1], size: 0.3, limit: 0.4, subjects: ['it'] },
    { kind: 'groove', at: ['left', 2, 2.1], size: 0.4, limit: 0.4, subjects: ['it'] },
  ]);
  expect(told(checkCoupon(profileOf('blank', NOTCHED), SETUP)).map(({ kind }) => kind)).toEqual(['web']);
});

test('a larger scale, or a finer nozzle, makes all of it', () => {
  const opening = profileOf('opening', NOTCHED);
  expect(checkOpening(opening, { ...SETUP, scale: 6 })).toEqual([]);
  expect(checkOpening(opening, { ...SETUP, nozzle: 0.25 })).toEqual([]);
});

test('a gap that leaves nothing of a blade is told', () => {
  const strip = profileOf('tool', [
    [0, 0],
    [0.4, 0],
    [0.4, 6],
    [0, 6],
  ]);
  expect(checkCoupon(strip, { ...SETUP, scale: 1, gap: 0.25 }).map(({ kind }) => kind)).toEqual(['nothing-left']);
  expect(told(checkCoupon(strip, { ...SETUP, scale: 1, gap: 0.1 }))).toEqual([
    { kind: 'web', at: ['left', 0, 6], size: 0.2, limit: 0.4, subjects: ['it'] },
  ]);
});

test('the demo family at 4:1 loses nothing', () => {
  const family = demoFamily();
  const setup = usualSetup(family);
  for (const profile of family.profiles) {
    expect(profile.kind === 'opening' ? checkOpening(profile, setup) : checkCoupon(profile, setup)).toEqual([]);
  }
});
