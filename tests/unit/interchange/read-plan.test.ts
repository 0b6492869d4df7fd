import { describe, expect, test } from 'vitest';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { writeFamily } from '../../../src/interchange/json/write.ts';

const BLADE = { thickness: 2.1, height: 8.4, cutZone: 3, grooveWidth: 0.7, heightStep: 0.8, grooveDepth: 0.6 };
const PLAN = {
  areas: [
    { id: 'north', name: 'North side' },
    { id: 'hall', name: 'Hall', parent: 'north' },
    { id: 'barn', name: 'Barn', section: 'Heron' },
  ],
  holders: [{ id: 'porter', name: 'Porter', enters: ['north'], free: ['barn'] }],
  blade: { ...BLADE, flankDeg: 90 / 6, note: 'kept' },
};
const read = (plan: unknown, units = 'mm') =>
  readFamily(
    JSON.stringify({
      format: 'sectionary-family',
      version: 1,
      name: 'P',
      units,
      runningClearance: 0.04,
      profiles: [],
      plan,
    }),
  );
const faults = (plan: unknown) => {
  const answer = read(plan);
  return answer.ok ? [] : answer.faults;
};

describe('a plan in a family file', () => {
  test('is read in nanometres and radians, a family may have nothing but a plan', () => {
    const answer = read(PLAN);
    if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
    const { plan } = answer.document.family;
    expect(plan?.blade).toMatchObject({ thickness: 2_100_000, flank: Math.PI / 12, backRadius: 0, sides: 'both' });
    expect(plan).toMatchObject({ baseBlanks: true, allSection: true, reserve: 0, stops: 1, depths: 1 });
    expect(plan?.holders[0].free).toEqual(['barn']);
  });

  test('is written as it was, fields unknown to us included', () => {
    const answer = read(PLAN);
    if (!answer.ok) throw new Error('not read');
    expect(JSON.parse(writeFamily(answer.document.file)).plan).toEqual(PLAN);
  });

  test('inches are converted to the whole nanometre', () => {
    const answer = read({ ...PLAN, blade: { ...BLADE, thickness: 0.08, height: 0.33, cutZone: 0.1 } }, 'in');
    expect(answer.ok && answer.document.family.plan?.blade.thickness).toBe(2_032_000);
  });

  test.each([
    ['an id twice', { ...PLAN, areas: [...PLAN.areas, { id: 'hall', name: 'Other' }] }, 'plan.areas[3].id'],
    [
      'a parent that is not there',
      { ...PLAN, areas: [{ id: 'a', name: 'A', parent: 'b' }], holders: [] },
      'plan.areas[0].parent',
    ],
    [
      'an area that a holder names and nobody has',
      { ...PLAN, holders: [{ id: 'p', name: 'P', enters: ['hal'] }] },
      'plan.holders[0].enters[0]',
    ],
    [
      'a free area that is not there',
      { ...PLAN, holders: [{ id: 'p', name: 'P', enters: [], free: ['x'] }] },
      'plan.holders[0].free[0]',
    ],
    ['a size beyond the core', { ...PLAN, blade: { ...BLADE, height: 99 } }, 'plan.blade.height'],
    ['a size that is missing', { ...PLAN, blade: { ...BLADE, thickness: undefined } }, 'plan.blade.thickness'],
    ['a word for a number', { ...PLAN, stops: 'two' }, 'plan.stops'],
    ['four wards at once', { ...PLAN, stops: 4 }, 'plan.stops'],
    ['no list of areas', { ...PLAN, areas: 'hall' }, 'plan.areas'],
    [
      'a word for a list of areas',
      { ...PLAN, holders: [{ id: 'p', name: 'P', enters: true }] },
      'plan.holders[0].enters',
    ],
  ])('%s is told with its place and a cure', (_, plan, path) => {
    const told = faults(plan);
    expect(told.map((fault) => fault.path)).toContain(path);
    for (const fault of told) expect(fault.cure).not.toMatch(/what is asked for/);
  });

  test('an area that lies in itself is told, however long the way round', () => {
    const areas = [
      { id: 'a', name: 'A', parent: 'b' },
      { id: 'b', name: 'B', parent: 'c' },
      { id: 'c', name: 'C', parent: 'a' },
      { id: 'd', name: 'D', parent: 'a' },
    ];
    expect(faults({ ...PLAN, areas, holders: [] }).map(({ path }) => path)).toEqual([
      'plan.areas[0].parent',
      'plan.areas[1].parent',
      'plan.areas[2].parent',
    ]);
  });
});
