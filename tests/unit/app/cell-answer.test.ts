import { expect, test } from 'vitest';
import { cellAnswer } from '../../../src/app/state/cell-answer.ts';
import { AS_DRAWN } from '../../../src/app/state/conditions-state.ts';
import { alteredText, isOtherThanDrawn } from '../../../src/app/state/conditions-words.ts';
import { UNMEASURED } from '../../../src/fit/judge-fit.ts';

const NOTHING = { fit: undefined, wornAway: false, threeWay: undefined, wear: undefined, halted: false };
const blocked = { ...UNMEASURED, clearance: -210_000, accuracy: 400 };
const wearOf = (both: number) => ({ blank: both, keyway: both, both });

test('a figure that is on its way is no number', () => {
  expect(cellAnswer('margin', NOTHING, 'mm')).toMatchObject({ mark: null, word: 'waiting', tone: 'unknown' });
  expect(cellAnswer('margin', { ...NOTHING, fit: UNMEASURED }, 'mm')).toMatchObject({
    mark: 'blocked',
    word: 'blocked',
    figure: 'measuring…',
  });
  expect(cellAnswer('guard', { ...NOTHING, fit: blocked }, 'mm').figure).toBe('measuring…');
  expect(cellAnswer('parts', { ...NOTHING, fit: blocked }, 'mm')).toMatchObject({ mark: null, word: 'measuring…' });
});

test('after a stop nothing is said to be on its way', () => {
  const halted = { ...NOTHING, halted: true };
  expect(cellAnswer('margin', halted, 'mm')).toMatchObject({ mark: null, word: 'not judged', phrase: 'not judged' });
  expect(cellAnswer('parts', halted, 'mm').word).toBe('not judged');
  expect(cellAnswer('margin', { ...halted, fit: UNMEASURED }, 'mm')).toMatchObject({
    mark: 'blocked',
    phrase: 'blocked, not measured',
  });
  expect(cellAnswer('margin', { ...halted, fit: blocked }, 'mm').figure).toBe('0.21 mm too deep');
});

test('each way of telling has words of its own', () => {
  const all = { ...NOTHING, fit: blocked, threeWay: 'depends', wear: wearOf(110_000) } as const;
  expect(cellAnswer('margin', all, 'mm').figure).toBe('0.21 mm too deep');
  expect(cellAnswer('guard', all, 'mm')).toMatchObject({
    figure: 'in after 0.110 mm',
    phrase: 'blocked, goes in after 0.110 mm of wear',
  });
  expect(cellAnswer('guard', { ...all, wear: wearOf(0) }, 'mm').figure).toBe('goes in new');
  expect(cellAnswer('guard', { ...all, wear: wearOf(Infinity) }, 'mm').figure).toBe('not by wear');
  expect(cellAnswer('guard', all, 'in').figure).toBe('in after 4.3 thou');
  expect(cellAnswer('parts', all, 'mm')).toEqual({
    mark: 'depends',
    word: 'depends',
    figure: 'on the parts',
    phrase: 'depends on the parts',
    tone: 'tight',
  });
  expect(cellAnswer('margin', { ...all, wornAway: true }, 'mm').word).toBe('worn away');
});

test('what is otherwise than drawn is said in a line, and nothing where all is as drawn', () => {
  const drawn = { ...AS_DRAWN, telling: 'parts' } as const;
  expect([isOtherThanDrawn(drawn), alteredText(drawn, 'mm')]).toEqual([false, '']);
  const altered = { ...drawn, wear: 20_000, tiltLimit: (2 * Math.PI) / 180, openingTolerance: 0 };
  expect(isOtherThanDrawn(altered)).toBe(true);
  expect(alteredText(altered, 'mm')).toBe('worn 0.020 mm each, tilt up to 2.0°, keyways made to ±0.000 mm');
});
