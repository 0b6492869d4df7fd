import { expect, test } from 'vitest';
import { reissueWords, reserveWords } from '../../../src/app/state/plan/grow-words.ts';
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
  expect(reserveWords(withReserve(1), room(0))).toBe(
    'The plan keeps room for 1 section more: there is room for 0 only.',
  );
  expect(reserveWords(withReserve(0), room(0))).toBe('');
  expect(reserveWords({ ...family, plan: undefined }, room(3))).toBe('');
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
