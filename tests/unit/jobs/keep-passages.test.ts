import { expect, test } from 'vitest';
import { keptPassage } from '../../../src/jobs/keep-passages.ts';
import type { PassageInput } from '../../../src/passage/find-passage.ts';
import type { Passage } from '../../../src/passage/passage.ts';
import { demoFamily } from '../../kit/demo-family.ts';

const family = demoFamily();
const openings = family.profiles.filter(({ kind }) => kind === 'opening').map(({ id, ring }) => ({ id, ring }));
const input: PassageInput = { openings, chosen: openings.slice(0, 2).map(({ id }) => id), runningClearance: 20_000 };

/** The passage, and in how many steps it was found. */
function find(of: PassageInput): { passage: Passage; steps: number } {
  const finding = keptPassage(of);
  for (let steps = 0; ; steps++) {
    const step = finding.next();
    if (step.done) return { passage: step.value, steps };
  }
}

test('a passage is found once for equal outlines, and anew where anything that it depends on differs', () => {
  const first = find(input);
  expect(first.steps).toBeGreaterThan(0);
  // As another thread gets them: other objects, equal outlines.
  const again = find(structuredClone(input));
  expect(again.steps).toBe(0);
  expect(again.passage).toBe(first.passage);
  expect(find({ ...input, runningClearance: 30_000 }).steps).toBeGreaterThan(0);
  expect(find({ ...input, chosen: [input.chosen[0]] }).steps).toBeGreaterThan(0);
  const renamed = openings.map((opening, i) => (i === 0 ? { ...opening, id: 'renamed' } : opening));
  expect(find({ ...input, openings: renamed }).steps).toBeGreaterThan(0);
});
