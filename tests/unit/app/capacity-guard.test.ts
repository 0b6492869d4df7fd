import { expect, test } from 'vitest';
import { countedGuardInput } from '../../../src/app/state/plan/capacity/capacity-guard.ts';
import { entryMatrix } from '../../../src/family/entry-matrix.ts';
import { demoFamily, demoProfile } from '../../kit/demo-family.ts';

const family = demoFamily();
const some = ['heron', 'smew', 'polder'];
const few = { ...family, profiles: family.profiles.filter(({ id }) => some.some((name) => id.startsWith(name))) };

function judged() {
  const steps = entryMatrix(few);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

const counted = ['heron', 'smew'].map((name) => ({
  keyway: demoProfile(`${name}-keyway`),
  blank: demoProfile(name === 'heron' ? 'heron-blank-6' : 'smew-blank'),
  tooShort: false,
}));

test('the counted sections are a family of their own, with their own verdicts', () => {
  const input = countedGuardInput(few, counted, judged());
  expect(input?.matrix.profiles).toEqual(['heron-blank-6', 'smew-blank']);
  expect(input?.matrix.openings).toEqual(['heron-keyway', 'smew-keyway']);
  expect(input?.matrix.fits.map((row) => row.map(({ verdict }) => verdict !== 'blocked'))).toEqual([
    [true, false],
    [false, true],
  ]);
});

test('while a pair is not judged there is nothing to ask', () => {
  const matrix = judged();
  const open = { ...matrix, fits: matrix.fits.map((row) => row.map(() => undefined)) };
  expect(countedGuardInput(few, counted, open)).toBeNull();
});
