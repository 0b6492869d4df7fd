import { expect, test } from 'vitest';
import {
  countedSections,
  judgedBlanks,
  sharedBlanks,
  uncountedKeyways,
} from '../../../src/app/state/plan/capacity/capacity-sections.ts';
import { settled, toggleDepth, toggleDepthEverywhere } from '../../../src/app/state/plan/capacity/capacity-state.ts';
import { ruleFaults, USUAL_RULES } from '../../../src/capacity/bitting-rules.ts';
import type { Capacity } from '../../../src/capacity/capacity.ts';
import { findingExclusiveSections } from '../../../src/capacity/exclusive-sections.ts';
import { judgeEntryTable } from '../../../src/family/judge-entry-table.ts';
import type { KnownFits } from '../../../src/family/known-fits.ts';
import type { Fit } from '../../../src/fit/fit.ts';
import { demoFamily } from '../../kit/demo-family.ts';
import { finish } from '../../kit/traced.ts';

test('rules follow the number of chambers and of depths', () => {
  const rules = { ...USUAL_RULES, master: [1, 2, 3, 4, 5, 9], excluded: [[9], [], [], [], [], [0, 8]] };
  const longer = settled({ ...rules, chambers: 7 });
  expect(longer.master).toEqual([1, 2, 3, 4, 5, 9, 9]);
  const shallower = settled({ ...rules, depths: 6, leastDifferent: 7 });
  expect(shallower.master).toEqual([1, 2, 3, 4, 5, 5]);
  expect(shallower.excluded).toEqual([[], [], [], [], [], [0]]);
  for (const one of [longer, shallower, settled({ ...rules, chambers: 2 })]) expect(ruleFaults(one)).toEqual([]);
});

test('a depth goes out of one chamber or of all, and in again', () => {
  const once = toggleDepth(USUAL_RULES, 2, 4);
  expect(once.excluded).toEqual([[], [], [4], [], [], []]);
  const all = toggleDepthEverywhere(once, 4);
  expect(all.excluded).toEqual([[4], [4], [4], [4], [4], [4]]);
  expect(toggleDepthEverywhere(all, 4).excluded.flat()).toEqual([]);
  expect(toggleDepth(once, 2, 4).excluded.flat()).toEqual([]);
});

/** The demo family judged, without figures. */
function judgedDemo(): KnownFits {
  const steps = judgeEntryTable(demoFamily());
  for (;;) {
    const step = steps.next();
    if (!step.done) continue;
    const { entrants, openings, goesIn } = step.value;
    const fits = goesIn.map((row) => row.map((goes) => ({ verdict: goes ? 'enters' : 'blocked' }) as Fit));
    return { profiles: entrants, openings, fits };
  }
}

test('the ten sections of the demo exclude each other; group and all-section blanks share', () => {
  const family = demoFamily();
  const judged = judgedBlanks(family, judgedDemo());
  if (!judged) throw new Error('nothing judged');
  expect(judged.blanks).not.toContain('strip-055');
  const capacity = { sections: finish(findingExclusiveSections(judged.goesIn)) } as Capacity;
  const counted = countedSections(family, capacity, judged, 6);
  expect(counted.length).toBe(10);
  expect(counted[0].keyway.section).toBe(counted[0].blank.section);
  // Heron has blanks for five and for six chambers: the key's length tells which.
  expect([counted[0].blank.id, counted[0].tooShort]).toEqual(['heron-blank-6', false]);
  const long = countedSections(family, capacity, judged, 7)[0];
  expect([long.blank.id, long.tooShort]).toEqual(['heron-blank-6', true]);
  const [first, ...others] = sharedBlanks(family, counted, judged);
  expect([first.blank.id, first.keyways.length]).toEqual(['polder-all-section-blank', 10]);
  expect(others.map(({ blank }) => blank.name).every((name) => name.includes('group'))).toBe(true);
  expect(uncountedKeyways(family, counted)).toEqual([]);
});

test('what is not judged counts as going in, and a family without keyways has nothing to count', () => {
  const family = demoFamily();
  const fits = judgedDemo();
  const open = { ...fits, fits: fits.fits.map((row) => row.map(() => undefined)) };
  const judged = judgedBlanks(family, open);
  expect(judged?.open).toBe(160);
  expect(finish(findingExclusiveSections(judged?.goesIn ?? [])).pairs.length).toBe(1);
  expect(judgedBlanks(family, { ...fits, openings: [] })).toBeNull();
  expect(judgedBlanks(family, null)).toBeNull();
});
