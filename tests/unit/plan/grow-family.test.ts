import { beforeAll, expect, test } from 'vitest';
import type { Family } from '../../../src/family/family.ts';
import type { GrowReport } from '../../../src/plan/grow.ts';
import type { GrowInput } from '../../../src/plan/grow-family.ts';
import { blankFromOpening } from '../../../src/profile/opening-from-blank.ts';
import { demoFamily } from '../../kit/demo-family.ts';
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

const few = ['heron', 'bittern', 'plover', 'polder'];
const fewOf = (family: Family) => withProfiles(family, (id) => few.some((name) => id.startsWith(name)));

test(
  'without an all-section blank it says so, and the widest blank that passes all can stand for one',
  () => {
    const family = withProfiles(fewOf(demoFamily()), (id) => !id.startsWith('polder'));
    const none = ask(family).none;
    expect(none?.why).toBe('no-all-section');
    if (none?.why !== 'no-all-section') return;
    expect(none.passage).not.toBeNull();
    const room = ask(family, { top: 'passage' });
    expect(room.none).toBeNull();
    expect(room.newTop).not.toBeNull();
    expect(room.count.confirmed).toBe(room.count.atMost);
  },
  LONG,
);

test(
  'a group blank that may enter new keyways makes no less room',
  () => {
    const family = demoFamily();
    const ids = ['heron', 'bittern', 'plover', 'polder', 'reed'];
    const small = withProfiles(family, (id) => ids.some((name) => id.startsWith(name)));
    const strict = ask(small);
    expect(strict.groups.map(({ id }) => id)).toEqual(['reed-group-blank']);
    expect(ask(small, { allowed: ['reed-group-blank'] }).count.single).toBeGreaterThanOrEqual(strict.count.single);
  },
  LONG,
);

test(
  'a keyway without a blank of its own keeps the one that it will get out of new keyways',
  () => {
    const family = withProfiles(fewOf(demoFamily()), (id) => id !== 'plover-blank');
    const strict = ask(fewOf(demoFamily()));
    expect(ask(family).count.atMost).toBe(strict.count.atMost);
  },
  LONG,
);

test(
  'drawn outlines have the same room as milled ones',
  () => {
    const family = fewOf(demoFamily());
    const drawn = { ...family, profiles: family.profiles.map(({ milled, ...profile }) => profile) };
    expect(ask(drawn).count).toEqual(ask(family).count);
  },
  LONG,
);

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
