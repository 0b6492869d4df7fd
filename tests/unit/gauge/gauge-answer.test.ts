import { expect, test } from 'vitest';
import { gaugeAnswer } from '../../../src/gauge/gauge-answer.ts';
import { type GaugeWords, gaugeSentence } from '../../../src/gauge/gauge-sentence.ts';
import { judgeStrip } from '../../../src/gauge/judge-strip.ts';
import { uprightCurve } from '../../../src/gauge/thickness-curve.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import { boxOfMm, wardedKeyway } from '../../kit/shapes.ts';

const MM = 1e6;
const words: GaugeWords = {
  nameOf: (id) => `${id} keyway`,
  thickness: (nm) => `${nm / MM} mm`,
  height: (nm) => `${nm / MM} mm`,
  tooTall: (nm) => `${nm / MM} mm`,
  tallest: (nm) => `${Math.floor(nm / 1e3) / 1e3} mm`,
  at: (nm) => `${(nm / MM).toFixed(1)} mm`,
  band: (from, to) => `${(from / MM).toFixed(1)}–${(to / MM).toFixed(1)} mm`,
};

function answer(outlines: Readonly<Record<string, Ring>>, height: number, thickness?: number) {
  const curves = Object.entries(outlines).map(([id, ring]) => uprightCurve(id, ring));
  const outlineOf = (id: string) => outlines[id];
  if (thickness === undefined) return gaugeAnswer(curves, outlineOf, height * MM);
  const strip = { thickness: thickness * MM, height: height * MM };
  const verdicts = new Map(
    curves.map((curve) => [curve.openingId, judgeStrip(curve, outlineOf(curve.openingId), strip, 0.04 * MM)]),
  );
  return gaugeAnswer(curves, outlineOf, height * MM, { thickness: strip.thickness, verdicts });
}

const MARSH = { Teal: boxOfMm(2, 8), Marsh: wardedKeyway(1.2), Rail: wardedKeyway(0.7) };

test('who sets the limit, where, and what a thickness still enters', () => {
  const facts = answer(MARSH, 6, 1.3);
  expect(facts.thickest).toBeCloseTo(0.9 * MM, 3);
  expect(facts.setters.map(({ openingId, heights }) => [openingId, heights])).toEqual([
    ['Marsh', [3.5 * MM, 3.5 * MM]],
  ]);
  expect([...(facts.asked?.verdicts ?? [])]).toEqual([
    ['Teal', 'enters'],
    ['Marsh', 'blocked'],
    ['Rail', 'enters'],
  ]);
  expect(gaugeSentence(facts, words)).toBe(
    '0.9 mm is the thickest strip 6 mm tall that enters all 3; the Marsh keyway sets it at 3.5 mm; at 1.3 mm it still enters 2.',
  );
});

test('a strip that may be tilted is told with how far', () => {
  const tilted = { ...words, tilted: 'up to 2°' };
  expect(gaugeSentence(answer(MARSH, 6), tilted)).toMatch(
    /^0\.9 mm is the thickest strip 6 mm tall, tilted up to 2°, that enters all 3;/,
  );
  expect(gaugeSentence(answer(MARSH, 8.2), tilted)).toMatch(/^No strip 8\.2 mm tall, tilted up to 2°, enters all 3,/);
});

test('a thickness in contact or with little spare goes in, and is said to be tight', () => {
  expect(gaugeSentence(answer(MARSH, 6, 0.9), words)).toMatch(/; at 0.9 mm it enters all, one of them tight\.$/);
  expect(gaugeSentence(answer(MARSH, 6, 0.82), words)).toMatch(/; at 0.82 mm it enters all\.$/);
  expect(gaugeSentence(answer(MARSH, 6, 1.39), words)).toMatch(/; at 1.39 mm it still enters 2, one of them tight\.$/);
  expect(gaugeSentence(answer(MARSH, 6, 1.99), words)).toMatch(/; at 1.99 mm it still enters 1, tight\.$/);
  const twins = { Heron: boxOfMm(2, 8), Smew: boxOfMm(2, 9) };
  expect(gaugeSentence(answer(twins, 6, 2), words)).toMatch(/; at 2 mm it enters all, all of them tight\.$/);
  expect(gaugeSentence(answer({ Heron: twins.Heron }, 6, 2), words)).toMatch(/; at 2 mm it enters, tight\.$/);
});

test('what all of several set alike is said of all of them', () => {
  const facts = answer({ Heron: boxOfMm(2, 8), Smew: boxOfMm(2, 9), Ruff: boxOfMm(3, 8) }, 6);
  expect(gaugeSentence(facts, words)).toBe(
    '2 mm is the thickest strip 6 mm tall that enters all 3; the Heron keyway and Smew keyway set it.',
  );
});

test('too tall: who stops it, and how tall it may be', () => {
  expect(gaugeSentence(answer(MARSH, 8.2), words)).toBe(
    'No strip 8.2 mm tall enters all 3, however thin; the tallest that does is 8 mm; the Teal keyway stops it.',
  );
});

test('the tallest is never told as the height that is too tall', () => {
  expect(gaugeSentence(answer(MARSH, 8.0004), words)).toContain('No strip 8.0004 mm tall enters all 3');
  const coarse = { ...words, tooTall: () => '8 mm' };
  expect(gaugeSentence(answer(MARSH, 8.0004), coarse)).toContain('the tallest that does is a hair less than 8 mm;');
});

test('a hair begins the sentence with a capital letter', () => {
  const hair = { ...words, thickness: () => 'less than 0.001 mm' };
  expect(gaugeSentence(answer(MARSH, 6), hair)).toMatch(/^Less than 0\.001 mm is the thickest strip 6 mm tall/);
});

test('one keyway', () => {
  expect(gaugeSentence(answer({ Marsh: MARSH.Marsh }, 6, 1), words)).toBe(
    '0.9 mm is the thickest strip 6 mm tall that enters the Marsh keyway; held at 3.5 mm; at 1 mm it does not.',
  );
});

test('no keyway', () => {
  expect(gaugeSentence(answer({}, 6, 1), words)).toBe('There is no keyway to gauge.');
});
