import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { accessOf } from '../../../src/plan/access.ts';
import { wardSites } from '../../../src/plan/ward-sites.ts';

function planOf(name: string) {
  const read = readFamily(readFileSync(`profiles-demo/${name}`, 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const { family } = read.document;
  if (!family.plan) throw new Error('no plan');
  return { family, plan: family.plan, access: accessOf(family.plan) };
}

test('the demo’s plan asks for its ten sections and for the sets of its group blanks', () => {
  const { family, access } = planOf('polderwick.json');
  expect(access.faults).toEqual([]);
  const openings = family.profiles.filter(({ kind }) => kind === 'opening');
  expect(access.sections.map(({ name }) => name)).toEqual(openings.map(({ section }) => section));
  const groups = access.blanks.filter(({ rank }) => rank !== 'base');
  expect(groups.map(({ name, sections }) => [name, sections.map((s) => access.sections[s].name).join(' ')])).toEqual([
    ['Reed court', 'Heron Smew Bittern'],
    ['Dyke yard', 'Plover Knot Curlew'],
    ['Shore', 'Rail Avocet Dunlin'],
    ['Causeway side', 'Heron Smew Bittern Ruff Plover Knot Curlew'],
    ['All-section blank', 'Heron Smew Bittern Ruff Plover Knot Curlew Rail Avocet Dunlin'],
  ]);
});

test('the plan alone has twelve areas, keeps room for eight, and has no contradiction', () => {
  const { family, plan, access } = planOf('polderwick-plan.json');
  expect([family.profiles.length, access.sections.length, plan.reserve]).toEqual([0, 12, 8]);
  expect(access.faults.map(({ kind, what }) => [kind, what])).toEqual([]);
});

test('the blades of both have room for more sites than their sections take', () => {
  for (const name of ['polderwick.json', 'polderwick-plan.json']) {
    const { family, plan } = planOf(name);
    const { runningClearance, tolerance, leastWeb } = family;
    const { sites } = wardSites(
      plan.blade,
      { runningClearance, tolerance, ...(leastWeb && { leastWeb }) },
      plan.depths,
    );
    expect(sites.length).toBeGreaterThanOrEqual(8);
  }
});
