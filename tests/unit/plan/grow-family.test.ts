import { beforeAll, expect, test } from 'vitest';
import type { Family } from '../../../src/family/family.ts';
import type { GrowReport } from '../../../src/plan/grow.ts';
import type { GrowInput } from '../../../src/plan/grow-family.ts';
import { blankFromOpening, openingFromBlank } from '../../../src/profile/opening-from-blank.ts';
import { demoFamily } from '../../kit/demo-family.ts';
import { blade, planned, profile } from '../../kit/four-site-blades.ts';
import { roomOf } from '../../kit/room-of.ts';

const LONG = 240_000;

const ask = (family: Family, more: Partial<GrowInput> = {}) => roomOf({ family, ...more });
const withProfiles = (family: Family, keep: (id: string) => boolean): Family => ({
  ...family,
  profiles: family.profiles.filter(({ id }) => keep(id)),
});

let report: GrowReport;
beforeAll(() => {
  report = ask(demoFamily(), { between: ['heron-keyway', 'bittern-keyway'] });
}, LONG);

test('the demo family has room over the nine grooves of its all-section blank, confirmed and proved', () => {
  expect(report.none).toBeNull();
  expect(report.tops).toEqual(['polder-all-section-blank']);
  expect(report.places).toHaveLength(9);
  // profiles-demo/README.md: every keyway has the ward at the foot of its right side.
  expect(report.places[0]).toMatchObject({ side: 'right', used: 10 });
  expect(report.codes.map(({ code }) => code.filter(Boolean).length)).toEqual(new Array(10).fill(3));
  expect(report.count.confirmed).toBe(report.count.atMost);
  expect(report.count.confirmed).toBeGreaterThan(20);
  expect(report.groups.map(({ enters }) => enters)).toEqual([3, 3, 3, 7]);
});

test('between two neighbours each proposal takes a ward of each, milled, the greatest guard margin first', () => {
  expect(report.proposals.length).toBeGreaterThan(5);
  const guards = report.proposals.map(({ guard }) => guard?.length ?? Number.POSITIVE_INFINITY);
  expect(guards).toEqual([...guards].sort((a, b) => b - a));
  for (const { between, keyway, blank, clearance, closest } of report.proposals) {
    expect(between?.first).toBeGreaterThan(0);
    expect(between?.second).toBeGreaterThan(0);
    expect(keyway.milled && blank.milled).toBeTruthy();
    expect(clearance.length).toBeGreaterThanOrEqual(demoFamily().runningClearance);
    expect(closest.map(({ length }) => length)).toEqual(closest.map(({ length }) => length).sort((a, b) => a - b));
  }
});

// Four places for a groove: of the six codes with two wards three are taken.
const small = planned([
  [1, 1, 0, 0],
  [0, 0, 1, 1],
  [0, 1, 1, 0],
]);
const ofSmall = ask(small);

test('without an all-section blank it says so, and the widest blank that passes all can stand for one', () => {
  const family = withProfiles(small, (id) => id !== 'all');
  const none = ask(family).none;
  expect(none?.why).toBe('no-all-section');
  if (none?.why !== 'no-all-section') return;
  expect(none.passage).not.toBeNull();
  const room = ask(family, { top: 'passage' });
  expect(room.none).toBeNull();
  expect(room.newTop).not.toBeNull();
  expect(room.count).toEqual(ofSmall.count);
  expect(room.count).toMatchObject({ confirmed: 3, atMost: 3 });
});

test('a group blank takes room, unless it may enter new keyways', () => {
  const group = profile('group', 'blank', blade([1, 1, 1, 0]));
  const grouped: Family = { ...small, profiles: [...small.profiles, group] };
  const strict = ask(grouped);
  expect(strict.groups).toEqual([{ id: 'group', enters: 2 }]);
  expect(strict.count.single).toBeLessThan(ofSmall.count.single);
  expect(ask(grouped, { allowed: ['group'] }).count).toEqual(ofSmall.count);
});

// A planned family was offered a thicker blank than all of its own: other stock.
test('a new blank is of the size of the base blanks where most share one, else the widest with the least gap', () => {
  const size = (ring: readonly { readonly x: number; readonly y: number }[]) => {
    const [xs, ys] = [ring.map(({ x }) => x), ring.map(({ y }) => y)];
    return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
  };
  // profiles-demo/README.md: every blade is 2 mm by 8.4 mm, whatever the gap of its keyway.
  for (const { blank } of report.proposals) expect(size(blank.ring)).toEqual([2_000_000, 8_400_000]);
  const thinner = (by: number): Family => ({
    ...small,
    profiles: small.profiles.map((one) => {
      if (one.kind !== 'blank' || one.id === 'all' || !one.milled) return one;
      const { thickness, height } = one.milled;
      return profile(one.id, 'blank', { ...one.milled, thickness: thickness - by, height: height - by });
    }),
  });
  const own = small.profiles.find(({ id }) => id === 'b0');
  if (!own) throw new Error('no blank');
  const [thickness, height] = size(own.ring);
  const room = ask(thinner(40_000));
  expect(room.gap).toBe(ofSmall.gap - 1_000 + 20_000);
  for (const { blank } of room.proposals) expect(size(blank.ring)).toEqual([thickness - 40_000, height - 40_000]);
  const uneven = { ...small, profiles: small.profiles.filter(({ id }) => id !== 'b2') };
  const one = thinner(40_000).profiles.find(({ id }) => id === 'b0');
  if (!one) throw new Error('no thin blank');
  expect(ask({ ...uneven, profiles: uneven.profiles.map((other) => (other.id === 'b0' ? one : other)) }).gap).toBe(
    ofSmall.gap,
  );
});

test('where few could come next, each is proposed, also one that is not of the largest set', () => {
  const two = planned([
    [1, 1, 0, 0],
    [1, 0, 1, 0],
  ]);
  const room = ask(two);
  // By hand: 1001, 0110, 0101 and 0011 beside each other; 0001 and 0111 lie under or over one of them.
  expect(room.count).toEqual({ confirmed: 4, atMost: 4, single: 6 });
  expect(room.proposals).toHaveLength(6);
});

test('a keyway without a blank of its own keeps the one that it will get out of new keyways', () => {
  expect(ask(withProfiles(small, (id) => id !== 'b2')).count).toEqual(ofSmall.count);
});

test('drawn outlines have the same room as milled ones', () => {
  const drawn = { ...small, profiles: small.profiles.map(({ milled, ...rest }) => rest) };
  expect(ask(drawn).count).toEqual(ofSmall.count);
});

test('without keyways, and with one, it says so', () => {
  expect(ask(withProfiles(demoFamily(), (id) => !id.endsWith('keyway'))).none).toEqual({ why: 'no-keyways' });
  const one = withProfiles(demoFamily(), (id) => id.startsWith('heron'));
  expect(ask(one).none).toEqual({ why: 'one-keyway' });
});

test('an all-section blank without grooves leaves no place for a ward', () => {
  const family = withProfiles(demoFamily(), (id) => id.startsWith('heron-keyway'));
  const [keyway] = family.profiles;
  const { milled } = keyway;
  const made = milled && blankFromOpening({ name: '', ring: keyway.ring }, 200_000);
  if (!made?.ok) throw new Error('no blank');
  const strip = demoFamily().profiles.find(({ id }) => id === 'strip-055');
  if (!strip) throw new Error('no strip');
  const two: Family = {
    ...family,
    profiles: [keyway, { ...keyway, id: 'second' }, { ...strip, kind: 'blank' }],
  };
  expect(ask(two).none).toEqual({ why: 'no-sites' });
});

test('an unused groove of the all-section blank that is high enough is a place for several wards', () => {
  const groove = (side: 'left' | 'right', bottom: number, width: number, depth: number) => {
    const [b, w, d] = [bottom, width, depth].map((mm) => mm * 1e6);
    return { side, bottom: b, width: w, depth: d, flank: 0, rootRadius: 0 };
  };
  const milled = (grooves: ReturnType<typeof groove>[]) => ({
    thickness: 2_400_000,
    height: 8_000_000,
    backRadius: 0,
    grooves,
  });
  const [low, high] = [groove('left', 1, 0.8, 0.6), groove('right', 2, 0.8, 0.6)];
  const wide = (millimetres: number): Family => {
    const top = profile('top', 'blank', milled([low, high, groove('right', 4, millimetres, 0.8)]));
    const sections = [low, high].flatMap((own, i) => {
      const blank = profile(`b${i}`, 'blank', milled([own]));
      const made = openingFromBlank(blank, small.runningClearance);
      if (!made.ok || !made.made.milled) throw new Error('no keyway');
      return [blank, profile(`k${i}`, 'opening', made.made.milled)];
    });
    return { ...small, tolerance: 10_000, profiles: [...sections, top] };
  };
  // By hand: gaps of 0.08 mm in all, wards of 0.6 mm at least, lands of 0.4 mm.
  for (const [millimetres, wards] of [
    [0.9, 1],
    [1.6, 1],
    [1.8, 2],
    [2.6, 2],
    [2.8, 3],
  ]) {
    const { places, count } = ask(wide(millimetres));
    expect(places).toHaveLength(2 + wards);
    expect(count.confirmed).toBe(wards);
  }
});
