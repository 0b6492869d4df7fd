import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openingsOf } from '../../../src/family/family.ts';
import { difference } from '../../../src/geom/clip.ts';
import { boxOf, translatePoints } from '../../../src/geom/point.ts';
import { regionOf } from '../../../src/geom/region.ts';
import { regionArea } from '../../../src/geom/region-area.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { findPassage } from '../../../src/jobs/find-passage.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import { judge } from '../../kit/judge.ts';
import { soundRing } from '../../kit/shapes.ts';

const read = readFamily(readFileSync('profiles-demo/polderwick.json', 'utf8'));
if (!read.ok) throw new Error('the demonstration family is not sound');
const { family } = read.document;
const openings = openingsOf(family).map(({ id, ring }) => ({ id, ring }));
const polder = family.profiles.find(({ id }) => id === 'polder-all-section-blank');

const context = { progress: () => {}, cancelled: () => false, pause: async () => {}, now: () => performance.now() };
const input = { openings, chosen: openings.map(({ id }) => id), runningClearance: family.runningClearance };

/** The passage of all ten, found once for all tests. */
const passageOfAll = findPassage(input, context);

/*
 * Polder was given a groove at every ward of the ten keyways, and those gaps of 43 um and more (profiles-demo/README.md). With
 * the running clearance of 40 um there is room for a blank a little larger all round.
 */
test('what passes all ten keyways of the demonstration is about its all-section blank, and no narrower', async () => {
  if (!polder) throw new Error('there is no Polder blank');
  const { blank, sure, entries } = await passageOfAll;
  if (!blank) throw new Error('there is no blank');
  const box = boxOf(polder.ring);
  expect(blank.entersAll).toBe(true);
  expect(entries.map(({ fit }) => fit.verdict)).toEqual(openings.map(() => 'enters'));
  expect(sure?.kind).toBe('agreed');
  expect(blank.width).toBeGreaterThanOrEqual(box.maxX - box.minX);
  expect(blank.height).toBeGreaterThanOrEqual(box.maxY - box.minY);
  // No wider than the tightest gap lets it be: 2 x (43 - 40) um and what rounding may bring.
  expect(blank.width - (box.maxX - box.minX)).toBeLessThan(7_000);
  expect(blank.height - (box.maxY - box.minY)).toBeLessThan(7_000);
  const area = regionArea(regionOf(polder.ring));
  expect(blank.area).toBeGreaterThan(area);
  expect(blank.area).toBeLessThan(area * 1.03);
  // Polder lies in it but for a few micrometres at wards of keyways that were made wider than the tightest.
  const inWidest = soundRing(translatePoints(polder.ring, { x: blank.width / 2 - 1e6, y: blank.height / 2 - 4.2e6 }));
  const outside = regionArea(difference(regionOf(inWidest), regionOf(blank.ring)));
  expect(outside / area).toBeLessThan(0.01);
  expect(judge(soundRing(blank.ring), polder.ring, 0).clearance).toBeGreaterThan(-12_000);
});

test('three keyways leave more than ten, and the keyways that also take their blank are told', async () => {
  const three = input.chosen.slice(0, 3);
  const { blank, entries, members } = await findPassage({ ...input, chosen: three }, context);
  const ten = await passageOfAll;
  expect(blank?.area).toBeGreaterThan(ten.blank?.area ?? 0);
  expect(members.map(({ id }) => id)).toEqual([...three].sort());
  expect(entries.filter(({ chosen }) => chosen).map(({ id }) => id)).toEqual(three);
  for (const { loss } of members) {
    expect(loss?.share).toBeGreaterThan(0);
    expect(loss?.share).toBeLessThan(0.2);
    expect(loss?.places[0].area).toBeGreaterThan(1e9);
  }
});

test('the search tells its progress, which never runs back, and stops when it is cancelled', async () => {
  const told: number[] = [];
  let clock = 0;
  await findPassage(
    { ...input, chosen: input.chosen.slice(0, 4) },
    // Time flies: every step is told.
    { ...context, now: () => clock++ * 1_000, progress: (done, total) => told.push(done / total) },
  );
  expect(told.length).toBeGreaterThan(1);
  expect(Math.max(...told)).toBeLessThanOrEqual(1);
  expect(told).toEqual([...told].sort((a, b) => a - b));
  await expect(findPassage(input, { ...context, cancelled: () => true })).rejects.toThrow(JobCancelled);
});

test('nothing chosen, unknown ids and no keyways are answers, not troubles', async () => {
  expect((await findPassage({ ...input, chosen: [] }, context)).none).toEqual({ why: 'none-chosen' });
  expect((await findPassage({ ...input, chosen: ['nobody'] }, context)).none).toEqual({ why: 'none-chosen' });
  expect((await findPassage({ ...input, openings: [] }, context)).none).toEqual({ why: 'none-chosen' });
});
