import { describe, expect, test } from 'vitest';
import { explainPlacement } from '../../../src/fit/explain-placement.ts';
import { fitSentence, partName } from '../../../src/fit/fit-sentence.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import { judge } from '../../kit/judge.ts';
import { boxOfMm, ringOfMm, wardedKeyway } from '../../kit/shapes.ts';

const mm = (nm: number) => `${(nm / 1e6).toFixed(2)} mm`;
const band = (from: number, to: number) => `${(from / 1e6).toFixed(1)}-${(to / 1e6).toFixed(1)} mm`;

function sentence(opening: Ring, blank: Ring): string {
  const fit = judge(opening, blank);
  return fitSentence('Heron blank', 'Bittern', fit, explainPlacement(opening, blank, fit.placement), mm, band);
}

describe('the answer as a sentence', () => {
  test('enters, with the gap and where it is narrowest', () => {
    expect(sentence(boxOfMm(2.1, 9), boxOfMm(2, 8.4))).toMatch(
      /^Heron blank enters Bittern with 0\.05 mm all round, the narrowest gap at the (left|right) wall\.$/,
    );
  });

  test('tight', () => {
    expect(sentence(boxOfMm(2.04, 9), boxOfMm(2, 8.4))).toMatch(
      /^Heron blank enters Bittern tightly: 0\.02 mm all round/,
    );
  });

  test('contact: no gap is named', () => {
    expect(sentence(boxOfMm(2, 9), boxOfMm(2, 8.4))).toBe(
      'Heron blank enters Bittern in contact on both sides: no gap is left.',
    );
  });

  test('blocked: by what, where, how deep, and what it meets besides', () => {
    expect(sentence(wardedKeyway(0.5), boxOfMm(2, 8.4))).toMatch(
      /^Heron blank does not enter Bittern: blocked by the left ward at 3\.[01]-3\.[89] mm, 0\.20 mm too deep; it also meets the right wall\.$/,
    );
  });

  test('a part is named once, however often it is met', () => {
    const twoWards = ringOfMm([
      [0, 0],
      [2.1, 0],
      [2.1, 8.5],
      [0, 8.5],
      [0, 6],
      [0.5, 6],
      [0.5, 5],
      [0, 5],
      [0, 3],
      [0.5, 3],
      [0.5, 2],
      [0, 2],
    ]);
    expect(sentence(twoWards, boxOfMm(2, 8.4)).match(/left ward/g)).toHaveLength(1);
  });

  test('nothing in the way worth naming: blocked, and no invented reason', () => {
    const fit = judge(boxOfMm(1.999999, 8.5), boxOfMm(2, 8.4));
    const none = { gap: 0, collisions: [], contacts: [] };
    expect(fitSentence('Heron blank', 'Bittern', fit, none, mm, band)).toBe(
      'Heron blank does not enter Bittern: blocked.',
    );
  });

  test('lengths are written by the caller, in whatever unit', () => {
    const fit = judge(boxOfMm(2.1, 9), boxOfMm(2, 8.4));
    const explanation = explainPlacement(boxOfMm(2.1, 9), boxOfMm(2, 8.4), fit.placement);
    expect(fitSentence('A', 'B', fit, explanation, () => '2 thou', band)).toContain('with 2 thou all round');
  });

  test.each([
    ['left', true, 'left ward'],
    ['right', false, 'right wall'],
    ['bottom', false, 'floor of the keyway'],
    ['top', false, 'top of the keyway'],
    ['bottom', true, 'bottom ward'],
    ['top', true, 'top ward'],
  ] as const)('%s, ward %s: %s', (side, ward, name) => {
    expect(partName({ side, ward })).toBe(name);
  });
});
