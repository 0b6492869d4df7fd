import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { indentsOf } from '../../../src/passage/indents.ts';
import { wardByWard } from '../../../src/passage/ward-by-ward.ts';
import { passingWords, wardName } from '../../../src/passage/ward-sentence.ts';
import { judge } from '../../kit/judge.ts';
import { boxOfMm, ringOfMm, wardedKeyway } from '../../kit/shapes.ts';

const read = readFamily(readFileSync('profiles-demo/polderwick.json', 'utf8'));
if (!read.ok) throw new Error('the demonstration family is not sound');
const { profiles } = read.document.family;
const ringOf = (id: string) => {
  const profile = profiles.find((p) => p.id === id);
  if (!profile) throw new Error(id);
  return profile.ring;
};

const length = (nm: number) => `${(nm / 1e6).toFixed(3)} mm`;
const band = (from: number, to: number) => `${(from / 1e6).toFixed(2)}-${(to / 1e6).toFixed(2)} mm`;

function sentences(entrant: string, opening: string): string[] {
  const { placement } = judge(ringOf(opening), ringOf(entrant));
  return wardByWard(ringOf(opening), ringOf(entrant), placement).map(
    (answer) => `${wardName(answer, band)}: ${passingWords(answer, length, band)}.`,
  );
}

test('every ward of the Heron keyway has its groove in the Heron blank, with the gap that it was made with', () => {
  // profiles-demo/README.md: the low right groove, sites 1 and 2, and 55 um all round.
  expect(
    sentences('heron-blank-6', 'heron-keyway').map((words) => words.replace(/^(\w+) ward at [\d.-]+ mm/, '$1')),
  ).toEqual([
    'Right: passes through the right groove at 0.50-1.10 mm, 0.055 mm spare.',
    'Right: passes through the right groove at 1.50-2.25 mm, 0.055 mm spare.',
    'Left: passes through the left groove at 1.95-2.65 mm, 0.055 mm spare.',
  ]);
});

test('the wards found in the outlines are those that the file mills', () => {
  for (const { name, milled, ring } of profiles.filter((profile) => profile.milled)) {
    const found = indentsOf(ring).sort((a, b) => a.from - b.from);
    const given = [...(milled?.grooves ?? [])].sort((a, b) => a.bottom - b.bottom);
    expect(
      found.map(({ side }) => side),
      name,
    ).toEqual(given.map(({ side }) => side));
    for (const [i, { from, to, depth }] of found.entries()) {
      // A foot is looked for 2 um above the face, so a flank that leans makes it a little smaller.
      expect(Math.abs(from - given[i].bottom), name).toBeLessThan(2_500);
      expect(Math.abs(to - given[i].bottom - given[i].width), name).toBeLessThan(2_500);
      expect(depth, name).toBe(given[i].depth);
    }
  }
});

test('a ward below the back is told by how far', () => {
  const told = sentences('strip-131', 'ruff-keyway');
  expect(told[0]).toMatch(/^Right ward 0\.\d\d-1\.\d\d mm below the back: the blade stays clear of it/);
});

test('the ward of the Bittern keyway that the Heron blank has no groove for bites', () => {
  const told = sentences('heron-blank-6', 'bittern-keyway');
  expect(told).toHaveLength(3);
  expect(told.filter((words) => /no groove here; it bites 0\.\d{3} mm\.$/.test(words))).toHaveLength(1);
  expect(told.find((words) => words.includes('no groove here'))).toMatch(/^Right ward at 4\.\d\d-5\.\d\d mm/);
});

test('a thin strip stays clear of every ward', () => {
  const strip = ringOfMm([
    [0, 0],
    [0.6, 0],
    [0.6, 6],
    [0, 6],
  ]);
  const answers = wardByWard(wardedKeyway(1), strip, { x: 1.2e6, y: 0.1e6, tilt: 0 });
  expect(answers.map(({ passing }) => passing)).toEqual([{ how: 'clear', spare: 200_000 }]);
});

test.each([
  ['too-shallow', 0.5, 3, 4],
  ['too-low', 1.05, 2.5, 3.5],
  ['too-high', 1.05, 3.5, 4.5],
  ['too-narrow', 1.05, 3.3, 3.7],
] as const)('a groove that is %s is named with its fault', (fault, depth, from, to) => {
  const blank = ringOfMm([
    [0, 0],
    [2, 0],
    [2, 8.4],
    [0, 8.4],
    [0, to],
    [depth, to],
    [depth, from],
    [0, from],
  ]);
  const [answer] = wardByWard(wardedKeyway(1), blank, { x: 50_000, y: 50_000, tilt: 0 });
  expect(answer.passing).toMatchObject({ how: 'short-groove', fault });
});

test('a plain box has neither wards nor grooves, nor has a step or a rounded end', () => {
  expect(indentsOf(boxOfMm(2, 8))).toEqual([]);
  const stepped = ringOfMm([
    [0, 0],
    [2, 0],
    [2, 5],
    [1.6, 5],
    [1.6, 8],
    [0, 8],
  ]);
  expect(indentsOf(stepped)).toEqual([]);
});

test('a ward with an overhang is one ward as deep as it reaches', () => {
  const hooked = ringOfMm([
    [0, 0],
    [3, 0],
    [3, 8],
    [0, 8],
    [0, 4],
    [0.6, 4],
    [0.6, 4.6],
    [1, 4.6],
    [1, 3.5],
    [0, 3.5],
  ]);
  const [ward, ...others] = indentsOf(hooked);
  expect(others).toEqual([]);
  expect(ward).toMatchObject({ side: 'left', from: 3.5e6, to: 4.6e6, depth: 1e6 });
});

test('the spare gap is measured to whatever of the blank comes nearest, a corner in its groove too', () => {
  // A ward of 0.5 x 2 mm; the blade stands off 0.1 mm, its groove 0.3 mm, but for a spike that ends 0.05 mm short of the ward.
  const keyway = ringOfMm([
    [0, 0],
    [2, 0],
    [2, 8],
    [0, 8],
    [0, 5],
    [0.5, 5],
    [0.5, 3],
    [0, 3],
  ]);
  const blade = ringOfMm([
    [0.1, 0.1],
    [1.9, 0.1],
    [1.9, 7.9],
    [0.1, 7.9],
    [0.1, 5.3],
    [0.8, 5.3],
    [0.8, 4.2],
    [0.55, 4],
    [0.8, 3.8],
    [0.8, 2.7],
    [0.1, 2.7],
  ]);
  const placement = { ...judge(keyway, blade).placement, x: 0, y: 0 };
  const [{ passing }] = wardByWard(keyway, blade, placement);
  expect(passing).toMatchObject({ how: 'groove', spare: 0.05e6 });
});
