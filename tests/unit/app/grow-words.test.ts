import { expect, test } from 'vitest';
import {
  betweenText,
  enteredWords,
  guardText,
  placeText,
  reissueWords,
  reserveWords,
  sureWords,
} from '../../../src/app/state/plan/grow/grow-words.ts';
import type { Family } from '../../../src/family/family.ts';
import type { GrowCount, GrowReport } from '../../../src/plan/grow.ts';
import { demoFamily } from '../../kit/demo-family.ts';

const family = demoFamily();
const withReserve = (reserve: number): Family => ({ ...family, plan: family.plan && { ...family.plan, reserve } });
const room = (confirmed: number, atMost = confirmed): GrowCount => ({ confirmed, atMost, single: 0 });

test('the reserve of a plan is held against the room there is', () => {
  expect(reserveWords(withReserve(8), room(65))).toBe(
    'The plan keeps room for 8 sections more: there is room for them.',
  );
  expect(reserveWords(withReserve(8), room(8))).toMatch(/there is room for them\.$/);
  expect(reserveWords(withReserve(1), room(1))).toMatch(/1 section more: there is room for it\.$/);
  expect(reserveWords(withReserve(1), room(0))).toBe(
    'The plan keeps room for 1 section more: there is room for 0 only.',
  );
  expect(reserveWords(withReserve(0), room(0))).toBe('');
  expect(reserveWords({ ...family, plan: undefined }, room(3))).toBe('');
});

test('what is proved is said of the places that were looked at', () => {
  const places = [{ side: 'left', from: 570_000, to: 1_070_000, levels: 1, used: 1 }] as const;
  const report = { places, count: room(0) } as unknown as GrowReport;
  expect(sureWords(report)).toMatch(/^Proved over this one place for wards: .* at other places are not looked at\.$/);
  expect(sureWords({ ...report, count: room(3) })).toMatch(/^Proved the most over this one place .* not looked at\.$/);
  expect(placeText(places[0], 'mm')).toBe('left 0.57–1.07 mm');
  expect(placeText(places[0], 'in')).toBe('left 0.0224–0.0421 in');
});

test('the wards of a section between two neighbours add up', () => {
  const proposal = { code: [1, 1, 0, 1, 1], between: { first: 1, second: 1, neither: 1, dropped: 0 } };
  expect(betweenText(proposal, 'Heron', 'Smew')).toBe(
    '1 ward of Heron, 1 of Smew, 1 where both have one, 1 of neither.',
  );
  expect(betweenText({ ...proposal, code: [1, 1, 0, 1, 0] }, 'Heron', 'Smew')).toBe(
    '1 ward of Heron, 1 of Smew, 1 of neither.',
  );
});

test('without room it says which blank would have to be reissued', () => {
  const report = {
    none: null,
    count: room(0),
    tops: ['polder-all-section-blank'],
    newTop: null,
  } as unknown as GrowReport;
  const nameOf = (id: string) => family.profiles.find((profile) => profile.id === id)?.name ?? id;
  expect(reissueWords(report, nameOf)).toMatch(/in place of Polder all-section blank/);
  expect(reissueWords({ ...report, none: { why: 'no-sites' } }, nameOf)).toMatch(
    /in place of Polder all-section blank/,
  );
  expect(reissueWords({ ...report, count: room(0, 3) }, nameOf)).toBe('');
  expect(reissueWords({ ...report, none: { why: 'one-keyway' } }, nameOf)).toBe('');
});

test('it is told how many could come next, and how many of those are proposed', () => {
  const told = (single: number, proposals: number) => {
    const report = { tops: ['top'], newTop: null, count: { ...room(2), single } };
    const list = new Array(proposals).fill(null);
    return enteredWords({ ...report, proposals: list as unknown as GrowReport['proposals'] }, () => 'Polder blank');
  };
  expect(told(3, 3)).toMatch(/entered by Polder blank\. 3 different ones could come next\.$/);
  expect(told(206, 12)).toMatch(/206 different ones could come next; 12 of them are proposed here\.$/);
  expect(told(1, 1)).toMatch(/One could come next\.$/);
  expect(told(0, 0)).toMatch(/entered by Polder blank\.$/);
});

test('what sets a guard margin is told with how many others come as close', () => {
  const guard = { blank: 'smew', keyway: null, length: 115_000 };
  const said = (alike?: number) => guardText({ guard: alike ? { ...guard, alike } : guard }, (id) => id);
  expect(said(2)).toBe('smew into the new keyway, the same for 2 other pairs');
  expect(said(1)).toBe('smew into the new keyway, the same for 1 other pair');
  expect(said()).toBe('smew into the new keyway');
  const own = { blank: null, keyway: 'heron', length: 90_000 };
  expect(guardText({ guard: own }, (id) => id)).toBe('Its own blank into heron');
});
