import { expect, test } from 'vitest';
import {
  buildsOf,
  placeAfter,
  placeAt,
  placeBefore,
  type ShowPlace,
  showActOf,
} from '../../../src/app/state/teach/show-place.ts';
import { demoFamily } from '../teach/known-family.ts';

const BUILDS = [1, 4, 2];
const at = (step: number, build: number): ShowPlace => ({ step, build });

test('on and on leads through every state of every step and stays at the end', () => {
  const walked: ShowPlace[] = [];
  for (let place = at(0, 0), n = 0; n < 9; n++, place = placeAfter(place, BUILDS)) walked.push(place);
  expect(walked).toEqual([at(0, 0), at(1, 0), at(1, 1), at(1, 2), at(1, 3), at(2, 0), at(2, 1), at(2, 1), at(2, 1)]);
});

test('back leads the same way back: a step that is come back to is shown in full', () => {
  const walked: ShowPlace[] = [];
  for (let place = at(2, 1), n = 0; n < 8; n++, place = placeBefore(place, BUILDS)) walked.push(place);
  expect(walked).toEqual([at(2, 1), at(2, 0), at(1, 3), at(1, 2), at(1, 1), at(1, 0), at(0, 0), at(0, 0)]);
});

test('a jump lands at the beginning of the nearest step there is', () => {
  expect([placeAt(-1, 3), placeAt(1, 3), placeAt(99, 3)]).toEqual([at(0, 0), at(1, 0), at(2, 0)]);
});

test('a question has an answer after it; tiers that are not known yet have one state', () => {
  const family = demoFamily('first-lesson');
  const builds = (show: 'question' | 'tiers' | 'pair') => buildsOf({ show, title: 'x' }, family, null);
  expect([builds('question'), builds('tiers'), builds('pair')]).toEqual([2, 1, 1]);
});

test('keys of the keyboard and of clickers', () => {
  const acts = (...keys: string[]) => keys.map((key) => showActOf(key, false)?.act);
  expect(new Set(acts('ArrowRight', 'PageDown', ' ', 'N'))).toEqual(new Set(['next']));
  expect(new Set(acts('ArrowLeft', 'PageUp', 'Backspace'))).toEqual(new Set(['previous']));
  expect(acts('Home', 'End', 'Escape', 'B', '.', 'l', 'I', 'f', 'Enter')).toEqual([
    'first',
    'last',
    'end',
    'dark',
    'dark',
    'pointer',
    'again',
    'screen',
    'go',
  ]);
  expect(showActOf(' ', true)).toEqual({ act: 'previous' });
  expect(showActOf('7', false)).toEqual({ act: 'digit', digit: '7' });
  expect(acts('x', 'F1', 'Shift')).toEqual([undefined, undefined, undefined]);
});
