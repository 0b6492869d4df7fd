import { expect, test } from 'vitest';
import {
  inOrderOfNearness,
  isMadeByKey,
  nearBlades,
  nearQuestions,
} from '../../../src/app/state/plan/sections/near-plans.ts';
import { wardSites } from '../../../src/plan/ward-sites.ts';
import { CAMPUS, questionOf } from './planned-campus.ts';

const asking = (plan: object) => questionOf({ ...CAMPUS, plan: { ...CAMPUS.plan, ...plan } });

test('more depths, fewer stops and no reserve are looked at, with the room that the blade has then', () => {
  const near = nearQuestions(asking({ stops: 3, depths: 2, reserve: 2 }));
  expect(near.map(({ change }) => change.options)).toEqual(
    expect.arrayContaining([{ stops: 2 }, { stops: 1 }, { reserve: 0 }]),
  );
  // 4 areas and no reserve: 4 rows; with reserve 2 more.
  expect(near.find(({ change }) => change.options?.reserve === 0)?.table).toHaveLength(4);
  expect(near.find(({ change }) => change.options?.stops === 2)?.table).toHaveLength(6);
  for (const { options } of near) expect(options.seconds).toBe(0);
  expect(nearQuestions(asking({})).map(({ change }) => change.options)).not.toContainEqual({ reserve: 0 });
});

test('a limit of the blade is changed by the least that gives the room', () => {
  const question = asking({});
  const { plan, gap, layout } = question;
  const wanted = layout.sites.length + 1;
  const near = nearBlades(question, wanted);
  expect(near.length).toBeGreaterThan(0);
  for (const { change, room } of near) {
    expect(room).toBeGreaterThanOrEqual(wanted);
    const [[field, value]] = Object.entries(change.blade ?? {}) as [keyof typeof plan.blade, number][];
    const back = value + Math.sign((plan.blade[field] as number) - value) * 50_000;
    const less = wardSites({ ...plan.blade, [field]: back }, gap, plan.depths).sites.length;
    expect(less, field).toBeLessThan(wanted);
  }
  expect(nearBlades(question, 500)).toEqual([]);
});

test('both faces are offered where only one may be milled', () => {
  const one = questionOf({ ...CAMPUS, plan: { ...CAMPUS.plan, blade: { ...CAMPUS.plan.blade, sides: 'left' } } });
  const near = nearBlades(one, one.layout.sites.length + 1);
  expect(near[0].change).toEqual({ blade: { sides: 'both' } });
});

test('sections are shared by a key, unless one of them is still to come; which are left out is only told', () => {
  const question = asking({ reserve: 1 });
  expect(isMadeByKey({ shared: [['Heron', 'Smew']] }, question)).toBe(true);
  expect(isMadeByKey({ shared: [['Heron', 'reserve 1']] }, question)).toBe(false);
  expect(isMadeByKey({ without: ['Heron'] }, question)).toBe(false);
  expect(isMadeByKey({ options: { stops: 1 } }, question)).toBe(true);
});

test('those that fit come in their order; where none does, the one that lacks least stands alone', () => {
  const plan = (sites: number, room: number) => ({ change: { options: { depths: sites } }, sites, room });
  expect(inOrderOfNearness([plan(9, 7), plan(6, 7), plan(5, 7)])).toEqual([plan(6, 7), plan(5, 7)]);
  expect(inOrderOfNearness([plan(12, 7), plan(9, 7)])).toEqual([plan(9, 7)]);
  expect(inOrderOfNearness([])).toEqual([]);
});
