import { expect, test } from 'vitest';
import { equalOutlines } from '../../../src/identify/equal-outlines.ts';
import type { Profile, ProfileKind } from '../../../src/profile/profile.ts';
import { demoFamily } from '../../kit/demo-family.ts';
import { boxOfMm, ringOfMm, soundRing } from '../../kit/shapes.ts';

const profile = (id: string, ring: Profile['ring'], kind: ProfileKind = 'blank'): Profile => ({
  id,
  kind,
  name: id,
  ring,
});
const ids = (groups: Profile[][]) => groups.map((group) => group.map(({ id }) => id).join('+'));

test('of the demo family only the two Heron blanks are one section', () => {
  const { profiles } = demoFamily();
  const several = equalOutlines(profiles).filter((group) => group.length > 1);
  expect(ids(several)).toEqual(['heron-blank-5+heron-blank-6']);
  expect(equalOutlines(profiles).flat().length).toBe(profiles.length);
});

test('the same outline elsewhere, with more vertices, from another corner, is the same; in another kind it is not', () => {
  const box = boxOfMm(2, 8);
  const moved = soundRing(box.map(({ x, y }) => ({ x: x + 7_654_321, y: y - 1_000 })));
  const dense = ringOfMm([
    [2, 3],
    [2, 8],
    [0, 8],
    [0, 1],
    [0, 0],
    [2, 0],
  ]);
  const all = [profile('a', box), profile('b', moved), profile('c', dense), profile('d', box, 'opening')];
  expect(ids(equalOutlines(all))).toEqual(['a+b+c', 'd']);
});

test('a thousandth of a millimetre is the same, two are not; equal boxes of another shape are not', () => {
  const notched = (at: number) =>
    ringOfMm([
      [0, 0],
      [2, 0],
      [2, at],
      [1.5, at + 0.5],
      [2, at + 1],
      [2, 8],
      [0, 8],
    ]);
  const all = [
    profile('a', boxOfMm(2, 8)),
    profile('b', boxOfMm(2.001, 8)),
    profile('c', boxOfMm(2.0021, 8)),
    profile('d', notched(3)),
    profile('e', notched(4)),
  ];
  expect(ids(equalOutlines(all))).toEqual(['a+b', 'c', 'd', 'e']);
});
