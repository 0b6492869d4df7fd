import { expect, test } from 'vitest';
import {
  boundWords,
  changeWords,
  demandWords,
  foundWords,
  workWords,
} from '../../../src/app/state/plan/sections/sections-words.ts';
import type { WardPlan } from '../../../src/plan/ward-plan.ts';
import { CAMPUS, questionOf } from './planned-campus.ts';

const plan = (change: Partial<WardPlan>): WardPlan => ({
  sites: 9,
  wards: [],
  grooves: [],
  lowerBound: 9,
  bound: 'sperner',
  proved: true,
  grooved: 30,
  ...change,
});

test('what was found is said with its proof or its gap', () => {
  expect(foundWords(plan({}), 12)).toBe('9 sites, proved fewest');
  expect(foundWords(plan({ sites: 10, proved: false }), 12)).toBe('10 sites; at least 9 are needed');
  expect(foundWords(plan({ sites: 1, lowerBound: 1 }), 12)).toBe('1 site, proved fewest');
  expect(foundWords(plan({ sites: 2, lowerBound: 1, proved: false }), 12)).toBe('2 sites; at least 1 is needed');
  expect(foundWords(plan({ sites: 2, lowerBound: 0, bound: 'none', proved: false }), 12)).toMatch(/is not known yet$/);
  expect(foundWords(plan({ sites: 0, lowerBound: 0 }), 12)).toBe('No site is needed: nothing is to be kept apart');
});

test('a blade with too little room is told: surely too little only where that is proved', () => {
  expect(foundWords(plan({}), 7)).toBe('Needs 9 sites, the blade has 7');
  expect(foundWords(plan({ sites: 10, proved: false }), 7)).toBe('Needs 9 sites, the blade has 7');
  expect(foundWords(plan({ sites: 10, lowerBound: 6, proved: false }), 7)).toBe(
    'Takes 10 sites so far, the blade has 7; at least 6 are needed',
  );
  expect(foundWords(plan({}), 0)).toBe('Needs 9 sites, the blade has none');
});

test('the demand counts every pair, with reserve and pairs that may do either', () => {
  // 4 sections: 4 base blanks, Warden, Gardener, all-section = 7 blanks, 28 pairs: 4 + 2 + 2 + 4 enter, 1 is free.
  expect(demandWords(questionOf(CAMPUS))).toBe(
    '4 sections, 7 blanks: 12 pairs must enter, 15 pairs are stopped by at least 1 ward each, 1 pair may do either (don’t care).',
  );
  // Two more rows and columns: each is entered by its own base blank and the all-section blank.
  const reserve = { ...CAMPUS, plan: { ...CAMPUS.plan, reserve: 2, stops: 2 } };
  expect(demandWords(questionOf(reserve))).toBe(
    '4 sections and 2 in reserve, 7 blanks and 2 in reserve: 16 pairs must enter, 37 pairs are stopped by at least 2 wards each, 1 pair may do either (don’t care).',
  );
});

test('bounds, changes and work have words of their own', () => {
  expect(boundWords(plan({}))).toMatch(/^by Sperner/);
  expect(boundWords(plan({ bound: 'none', lowerBound: 0 }))).toBe('');
  const { blade } = questionOf(CAMPUS).plan;
  expect(changeWords({ options: { depths: 2 } }, { blade }, 'mm').key).toBe('Use 2 depths per site');
  expect(changeWords({ options: { stops: 1 } }, { blade }, 'mm').key).toBe('Stop by 1 ward');
  expect(changeWords({ blade: { height: 9_000_000 } }, { blade }, 'mm')).toEqual({
    key: 'Make the blade 9.000 mm high',
    what: 'With a blade 0.600 mm higher',
  });
  expect(changeWords({ blade: { heightStep: 800_000 } }, { blade }, 'mm').what).toBe(
    'With a step from groove to groove 0.100 mm smaller',
  );
  expect(changeWords({ shared: [['Heron', 'Smew', 'Knot']] }, { blade }, 'mm')).toEqual({
    key: 'Share these sections',
    what: 'With 2 sections fewer, one for Heron, Smew and Knot; who enters one of them enters all',
  });
  expect(changeWords({ without: ['Heron', 'Smew', 'Knot', 'Rail', 'Ruff'] }, { blade }, 'mm').what).toBe(
    'With 5 sections fewer, such as without Heron, Smew, Knot and 2 more',
  );
  const state = {
    asked: null,
    phase: 'improving',
    done: 1,
    total: 20,
    trouble: '',
    found: plan({ sites: 10, proved: false }),
    better: null,
    drawing: { phase: 'none' },
    near: [],
  } as const;
  expect(workWords(state)).toBe('Looking for less: best so far 10 sites, at least 9 needed, 30 grooves');
  expect(workWords({ ...state, phase: 'searching', better: plan({ grooved: 28 }) })).toBe(
    'Looking for less: best so far 9 sites, proved fewest, 28 grooves',
  );
  expect(workWords({ ...state, phase: 'found' })).toBe('');
});
