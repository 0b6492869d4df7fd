import { expect, test } from 'vitest';
import { identify, profilesAmong } from '../../../src/identify/identify.ts';
import { mirrorOutline } from '../../../src/profile/mirror-outline.ts';
import { compareOnce } from '../../kit/compare-once.ts';
import { demoFamily } from '../../kit/demo-family.ts';
import { noisyTrace } from '../../kit/noisy-trace.ts';

const ERROR = 50_000;
const { profiles } = demoFamily();
const sections = profiles.filter(({ id }) => id !== 'heron-blank-6');

/** A strip looks the same from either end. */
function hasTwoSides(ring: (typeof profiles)[number]['ring']): boolean {
  return compareOnce(mirrorOutline(ring, 'left-right'), ring, { mirrored: false, turned: true }).most > ERROR;
}

test.each(sections)('$name, traced 0.05 mm off either way, turned and moved, every other one mirrored', (section) => {
  const among = profilesAmong(profiles, section.kind === 'opening' ? 'openings' : 'entrants');
  const seed = 1 + sections.indexOf(section);
  const trace = noisyTrace(section.ring, { seed, error: ERROR, step: 200_000 });
  const answer = identify({ outline: trace.ring, error: ERROR, mirrored: true, turned: true, profiles: among });
  const [first, second] = answer.ranked;
  expect(first.ids).toContain(section.id);
  expect(answer).toMatchObject({ likeness: 'certain', count: 1 });
  expect(first.comparison.most).toBeLessThan(2 * ERROR);
  expect(second.comparison.rms).toBeGreaterThan(2 * first.comparison.rms);
  expect(first.comparison.pose.mirrored).toBe(trace.mirrored && hasTwoSides(section.ring));
});

test('keyways and blanks together: a blank and its keyway differ by less than the noise, and the right one is first', () => {
  for (const [i, section] of sections
    .filter(({ section }) => ['Knot', 'Ruff', 'Rail'].includes(section ?? ''))
    .entries()) {
    const trace = noisyTrace(section.ring, { seed: 900 + i, error: ERROR, step: 200_000 });
    const { ranked } = identify({ outline: trace.ring, error: ERROR, mirrored: true, turned: true, profiles });
    expect(ranked[0].ids).toContain(section.id);
  }
});
