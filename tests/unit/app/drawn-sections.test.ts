import { expect, test } from 'vitest';
import {
  drawnPair,
  drawnSections,
  namedSites,
  siteNumber,
  wardNumbers,
} from '../../../src/app/state/plan/sections/drawn-sections.ts';
import { planStrength } from '../../../src/app/state/plan/sections/plan-strength.ts';
import { planReadings } from '../../../src/app/state/plan/sections/report-readings.ts';
import { siteWords, stoppingSites } from '../../../src/app/state/plan/sections/sections-rows.ts';
import { outlineKey } from '../../../src/app/state/plan/strength/examining-strength.ts';
import { thinnestWeb } from '../../../src/profile/thinnest-web.ts';
import { findStrength } from '../../../src/strength/find-strength.ts';
import { USUAL_MATERIAL } from '../../../src/strength/materials.ts';
import { CAMPUS, drawn, questionOf, solved } from './planned-campus.ts';

const question = questionOf(CAMPUS);
const found = solved(question);
const answer = drawn(question, found);
if (!answer.ok) throw new Error(answer.why.map(({ words }) => words).join('; '));
const confirmed = answer;

test('a confirmed plan has a keyway for each section and every blank, in the order of the plan', () => {
  const sections = drawnSections(confirmed);
  expect(sections.openings.map(({ section }) => section)).toEqual(question.access.sections.map(({ name }) => name));
  expect(sections.blanks).toHaveLength(question.access.blanks.length);
  expect(drawnSections(confirmed)).toBe(sections);
  const pair = drawnPair(sections, question.access, 1, 0);
  expect(pair?.opening.name).toBe('Smew keyway');
  expect(pair?.entrant.name).toBe('Heron blank');
  expect(drawnPair(sections, question.access, 9, 0)).toBeNull();
});

test('sites have letters until they are drawn, then their numbers on the blade, in that order', () => {
  const before = namedSites(3, null, question.layout);
  expect(before.map(({ name }) => name)).toEqual(['a', 'b', 'c']);
  const after = namedSites(found.sites, confirmed.report.sites, question.layout);
  const numbers = after.map(({ name }) => Number(name));
  expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
  for (const { at, name, site } of after) {
    expect(site).toEqual(confirmed.report.sites[at]);
    expect(site && siteNumber(site, question.layout.sites)).toBe(Number(name));
  }
  expect(namedSites(30, null, question.layout)[27].name).toBe('ab');
});

test('the wards of each drawn keyway stand at the sites that the plan gives it', () => {
  const sites = namedSites(found.sites, confirmed.report.sites, question.layout);
  for (const [s, opening] of drawnSections(confirmed).openings.entries()) {
    const planned = sites.filter(({ at }) => found.wards[s][at] > 0).map(({ name }) => name);
    expect(
      wardNumbers(opening, sites)
        .map(({ name }) => name)
        .sort(),
    ).toEqual(planned.sort());
  }
});

test('wards are told by the names of their sites, and those that stop a blank are picked out', () => {
  const sites = namedSites(3, null, question.layout);
  expect(siteWords([0, 1, 1], sites, false)).toBe('b and c');
  expect(siteWords([2, 0, 1], sites, true)).toBe('a (depth 2) and c (depth 1)');
  expect(siteWords([0, 0, 0], sites, false)).toBe('none');
  expect(stoppingSites([2, 1, 0], [1, 1, 1], sites)).toEqual(['a']);
});

test('the weakest blank is named once all are examined, by the torque at which it first yields', () => {
  const { blanks } = drawnSections(confirmed);
  const strengthOf = (blank: (typeof blanks)[number]) => findStrength({ ...blank, gap: 0.02, mostTriangles: 3_000 });
  const known = new Map(blanks.slice(1).map((blank) => [outlineKey(blank), strengthOf(blank)]));
  const material = USUAL_MATERIAL;
  const failed = new Map<string, string>();
  expect(planStrength(blanks, { known, failed }, material)).toMatchObject({ done: blanks.length - 1, weakest: -1 });
  failed.set(outlineKey(blanks[0]), 'no mesh');
  expect(planStrength(blanks, { known, failed }, material).troubles).toEqual(
    blanks.map((_, b) => (b ? '' : 'no mesh')),
  );
  known.set(outlineKey(blanks[0]), strengthOf(blanks[0]));
  const { limits, weakest } = planStrength(blanks, { known, failed }, material);
  const lows = limits.map((limit) => limit?.yieldNm.low ?? 0);
  expect(lows[weakest]).toBe(Math.min(...lows));
  // It has the most metal milled off: all grooves of the plan.
  expect(question.access.blanks[weakest].rank).toBe('all-section');
});

test('the report names the blank with the thinnest web of each rank and the keyways of the longest ward', () => {
  const readings = planReadings(confirmed.report, question.access);
  const webs = drawnSections(confirmed).blanks.map(({ milled }) => (milled ? thinnestWeb(milled)?.thickness : 0));
  for (const { what, kind, place } of readings) {
    if (kind !== 'blank') continue;
    const rank = question.access.blanks[place].rank;
    const alike = webs.filter((_, b) => question.access.blanks[b].rank === rank);
    expect(webs[place], what).toBe(Math.min(...alike.map((web) => web ?? 0)));
  }
  expect(readings.map(({ what }) => what)).toEqual([
    'Thinnest web, base blanks',
    'Thinnest web, group blanks',
    'Thinnest web, all-section blank',
    'Longest ward',
    'Widest line of sight',
    'Narrowest line of sight',
  ]);
  const reach = readings.find(({ what }) => what === 'Longest ward');
  // The blade is 2 mm thick and grooves are 0.6 mm deep: wards end about 0.4 mm short of the middle, less the gap.
  expect(reach?.figure('mm')).toMatch(/^0\.4\d\d mm short of the middle$/);
});
