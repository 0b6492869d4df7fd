import { expect, test } from 'vitest';
import type { BlockPair } from '../../../src/app/state/publish/block-pair.ts';
import {
  checksHeadline,
  gapWords,
  insertionWords,
  lackWords,
  overBedWords,
  partSize,
  setWords,
  toldChecks,
  volumeText,
} from '../../../src/app/state/publish/block-words.ts';
import type { Family } from '../../../src/family/family.ts';
import type { DisplaySet, PrintCheck, SolidPart } from '../../../src/print3d/display-set.ts';
import type { Profile } from '../../../src/profile/profile.ts';
import { boxOfMm } from '../../kit/shapes.ts';

const profile = (id: string, kind: Profile['kind'], name: string): Profile => ({ id, kind, name, ring: boxOfMm(2, 6) });
const BAR = profile('bar', 'blank', 'Bar blank');
const SLOT = profile('slot', 'opening', 'Slot keyway');
const family = { name: 'Plain', profiles: [SLOT, BAR], runningClearance: 40_000 } as unknown as Family;

const part = (name: string, kind: SolidPart['kind']) =>
  ({ name, kind, size: [80.4, 41.6, 20] }) as unknown as SolidPart;
const setOf = (parts: readonly SolidPart[], beds: number) => ({ parts, beds }) as unknown as DisplaySet;

const CHECK: PrintCheck = {
  kind: 'ward',
  weight: 'caution',
  subjects: ['slot'],
  what: 'a ward is thinner than the nozzle makes',
  where: { side: 'left', from: 3_100_000, to: 3_400_000 },
  size: 0.3,
  limit: 0.4,
  cure: 'print at 6:1',
};

test('a set is counted in words', () => {
  const coupons = [part('A', 'coupon'), part('B', 'coupon')];
  expect(setWords(setOf([part('Block', 'block'), ...coupons, part('Board', 'board')], 2))).toBe(
    '4 parts on 2 beds: 1 block, 2 coupons and 1 board.',
  );
  expect(setWords(setOf(coupons, 1))).toBe('2 parts on 1 bed: 2 coupons.');
  expect(partSize(part('Block', 'block'), 'mm')).toBe('80 × 42 × 20 mm');
  expect(partSize(part('Block', 'block'), 'in')).toBe('3.17 × 1.64 × 0.79 in');
  expect(volumeText(12_345, 'mm')).toBe('12.3 cm³');
  const narrow = { ...setOf([part('Block', 'block')], 1), bed: [80, 200] as const };
  expect(overBedWords(narrow, 'mm')).toEqual(['Block: 80.4 × 41.6 mm, on a bed of 80 × 200 mm.']);
  expect(overBedWords({ ...narrow, bed: [80.4, 41.6] }, 'mm')).toEqual([]);
});

test('checks are told faults first, and what is the same of several sections once', () => {
  const fault: PrintCheck = {
    ...CHECK,
    weight: 'fault',
    what: 'nothing is left',
    where: null,
    size: null,
    limit: null,
  };
  const other: PrintCheck = { ...CHECK, subjects: ['bar', 'slot'], size: 0.35 };
  const told = toldChecks([CHECK, other, fault], family, 'mm');
  expect(told.map(({ weight }) => weight)).toEqual(['fault', 'caution']);
  expect(told[1]).toEqual({
    weight: 'caution',
    what: 'A ward is thinner than the nozzle makes.',
    cure: 'Print at 6:1.',
    about: [
      { subjects: 'Slot keyway', where: 'left side at 3.1–3.4 mm, 0.30 mm against 0.40 mm as printed' },
      { subjects: 'Bar blank in Slot keyway', where: 'left side at 3.1–3.4 mm, 0.35 mm against 0.40 mm as printed' },
    ],
  });
  expect(toldChecks([CHECK], family, 'in')[0].about[0].where).toBe(
    'left side at 0.122–0.134 in, 0.012 in against 0.016 in as printed',
  );
  // A size that reads as its limit has a decimal more.
  expect(toldChecks([{ ...CHECK, size: 0.398 }], family, 'mm')[0].about[0].where).toBe(
    'left side at 3.1–3.4 mm, 0.398 mm against 0.400 mm as printed',
  );
  expect(checksHeadline([CHECK, other, fault])).toBe('1 fault and 2 cautions');
  expect(checksHeadline([])).toBe('A printer can make all of it');
});

test('where a coupon is, and why it goes no further', () => {
  const pair = { entrant: BAR, opening: SLOT };
  const goesIn = { waits: -12.5, stops: 25, whole: 25 };
  expect(insertionWords(pair, goesIn, -12.5, 20, 'mm')).toBe('Bar blank stands before Slot keyway.');
  expect(insertionWords(pair, goesIn, 10, 20, 'mm')).toBe('Bar blank is 10.00 mm of 25.00 mm in.');
  expect(insertionWords(pair, goesIn, 25, 20, 'mm')).toBe(
    'Bar blank is in up to its shoulder, 25.00 mm. 5.00 mm of its blade stand out at the back.',
  );
  expect(insertionWords(pair, goesIn, 25, 30, 'mm')).toBe('Bar blank is in up to its shoulder, 25.00 mm.');
  expect(insertionWords(pair, { ...goesIn, stops: 0 }, 0, 20, 'mm')).toBe(
    'Bar blank stops at the face of the block: it does not go into Slot keyway.',
  );
});

test('what scale and fitting gap make of a pair', () => {
  const printed = (scaled: number) => ({ scaled, gap: 0.2, printed: scaled + 0.2 });
  expect(gapWords('enters', printed(0.24), 4, false, 'mm')).toBe(
    'At 4:1 its least gap becomes 0.24 mm; the fitting gap adds 0.20 mm, so the printed pair keeps 0.44 mm.',
  );
  expect(gapWords('tight', printed(0.08), 4, false, 'mm')).toMatch(/keeps 0\.28 mm\. Most of that is the fitting gap/);
  expect(gapWords('blocked', printed(-1), 4, false, 'mm')).toBe(
    'At 4:1 the overlap becomes 1.00 mm; the fitting gap takes off 0.20 mm, so the printed coupon is still stopped, by 0.80 mm.',
  );
  expect(gapWords('blocked', printed(-0.1), 4, true, 'mm')).toMatch(
    /the printed coupon goes in although the blank does not/,
  );
});

test('what a set lacks to try a pair', () => {
  const pair = (coupon: unknown, frame: unknown) => ({ entrant: BAR, opening: SLOT, coupon, frame }) as BlockPair;
  expect(lackWords(pair({}, {}))).toBe('');
  expect(lackWords(pair(null, {}))).toBe('Bar blank is not in this set. Tick it in the settings, or pick another.');
  expect(lackWords(pair(null, null))).toMatch(/^Bar blank and Slot keyway are not in this set\. Tick them/);
});
