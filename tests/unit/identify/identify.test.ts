import { expect, test } from 'vitest';
import { asTrustedRing } from '../../../src/geom/ring.ts';
import { identify, identifying, profilesAmong } from '../../../src/identify/identify.ts';
import { mirrorOutline } from '../../../src/profile/mirror-outline.ts';
import { moveOutline } from '../../../src/profile/move-outline.ts';
import type { Profile } from '../../../src/profile/profile.ts';
import { demoFamily, demoProfile } from '../../kit/demo-family.ts';
import { boxOfMm, ringOfMm, wardedKeyway } from '../../kit/shapes.ts';

const { profiles } = demoFamily();
const entrants = profilesAmong(profiles, 'entrants');
const exact = { error: 10_000, mirrored: true, turned: true } as const;
const ring = (id: string) => demoProfile(id).ring;
const blank = (id: string, outline: Profile['ring']): Profile => ({ id, kind: 'blank', name: id, ring: outline });

test('every profile is itself first, with 0 in every figure, as it lies', () => {
  for (const { id } of entrants) {
    const { ranked, likeness } = identify({ ...exact, outline: ring(id), profiles: entrants });
    expect(ranked[0].ids).toContain(id);
    expect(ranked[0].comparison).toMatchObject({ most: 0, areaApart: 0 });
    expect(ranked[0].comparison.rms).toBeLessThan(1e-9);
    expect(ranked[0].comparison.pose).toMatchObject({ mirrored: false });
    expect(likeness).toBe('certain');
  }
});

test('profiles of one outline are one line, and every other profile has its own', () => {
  const { ranked } = identify({ ...exact, outline: ring('heron-blank-6'), profiles: entrants });
  expect(ranked[0].ids).toEqual(['heron-blank-5', 'heron-blank-6']);
  expect(ranked.flatMap(({ ids }) => ids).sort()).toEqual(entrants.map(({ id }) => id).sort());
  expect(ranked.length).toBe(entrants.length - 1);
});

test('a view from the tip is found mirrored, and is not found where that is not tried', () => {
  const seen = asTrustedRing(mirrorOutline(ring('plover-blank'), 'left-right'));
  const found = identify({ ...exact, outline: seen, profiles: entrants });
  expect(found.ranked[0]).toMatchObject({ ids: ['plover-blank'], comparison: { most: 0, pose: { mirrored: true } } });
  expect(found.likeness).toBe('certain');
  const straight = identify({ ...exact, mirrored: false, outline: seen, profiles: entrants });
  expect(straight.likeness).toBe('none');
});

test('where one section is the mirror image of another, both are told, the unmirrored one first', () => {
  const left = wardedKeyway(0.6);
  const family = [blank('right', asTrustedRing(mirrorOutline(left, 'left-right'))), blank('left', left)];
  const { ranked, likeness, count } = identify({ ...exact, turned: false, outline: left, profiles: family });
  expect(ranked.map(({ ids, comparison }) => [ids[0], comparison.pose.mirrored])).toEqual([
    ['left', false],
    ['right', true],
  ]);
  expect([likeness, count]).toEqual(['either', 2]);
});

test('a symmetric section is never called a tip view or upside down', () => {
  const { ranked } = identify({ ...exact, outline: boxOfMm(1.31, 6), profiles: entrants });
  expect(ranked[0]).toMatchObject({ ids: ['strip-131'], comparison: { pose: { mirrored: false, turned: 0 } } });
});

test('what is like nothing of the family is said to be', () => {
  const cross = ringOfMm([
    [2, 0],
    [4, 0],
    [4, 2],
    [6, 2],
    [6, 4],
    [4, 4],
    [4, 6],
    [2, 6],
    [2, 4],
    [0, 4],
    [0, 2],
    [2, 2],
  ]);
  const { likeness, count, ranked } = identify({ ...exact, error: 50_000, outline: cross, profiles: entrants });
  expect([likeness, count]).toEqual(['none', 0]);
  expect(ranked.length).toBeGreaterThan(1);
});

test('nothing to compare with is an answer too', () => {
  expect(identify({ ...exact, outline: boxOfMm(2, 8), profiles: [] })).toEqual({
    ranked: [],
    likeness: 'none',
    count: 0,
    beyond: 0,
  });
});

test('two sections that differ by less than the error cannot be told apart; with a smaller error they can', () => {
  const family = [blank('a', boxOfMm(2, 8)), blank('b', boxOfMm(2.03, 8)), blank('c', boxOfMm(2.6, 8))];
  const ask = (error: number) => identify({ ...exact, error, outline: boxOfMm(2, 8), profiles: family });
  expect(ask(50_000)).toMatchObject({ likeness: 'either', count: 2 });
  expect(ask(5_000)).toMatchObject({ likeness: 'certain', count: 1 });
});

test('of a very large family the sixty closest are ranked, and the rest counted', () => {
  const family = Array.from({ length: 90 }, (_, i) => blank(`b${i}`, boxOfMm(1 + i * 0.02, 8)));
  const { ranked, beyond } = identify({ ...exact, outline: boxOfMm(1.4, 8), profiles: family });
  expect([ranked.length, beyond]).toEqual([60, 30]);
  expect(ranked[0].ids).toEqual(['b20']);
});

test('where it was drawn and from which corner makes no difference', () => {
  const outline = ring('knot-blank');
  const shifted = moveOutline([...outline.slice(7), ...outline.slice(0, 7)], { x: 12_345_678, y: -3_000_001 });
  const { ranked } = identify({ ...exact, outline: shifted, profiles: entrants });
  expect(ranked[0]).toMatchObject({ ids: ['knot-blank'], comparison: { most: 0 } });
});

test('progress runs from nothing to all of the work', () => {
  const steps = identifying({ ...exact, outline: ring('knot-blank'), profiles: entrants });
  const told: number[] = [];
  for (let step = steps.next(); !step.done; step = steps.next()) told.push(step.value.done / step.value.total);
  expect(told[0]).toBe(0);
  expect(told.at(-1)).toBe(1);
  expect([...told].sort((a, b) => a - b)).toEqual(told);
});
