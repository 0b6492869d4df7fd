import { expect, test } from 'vitest';
import { envelopeOf, settersAt } from '../../../src/gauge/family-limit.ts';
import { uprightCurve } from '../../../src/gauge/thickness-curve.ts';
import { asTrustedRing, type Ring } from '../../../src/geom/ring.ts';
import { boxOfMm, ringOfMm } from '../../kit/shapes.ts';

const MM = 1e6;

function stretches(outlines: Readonly<Record<string, Ring>>) {
  const curves = Object.entries(outlines).map(([id, ring]) => uprightCurve(id, ring));
  return envelopeOf(curves).stretches.map(({ openingIds, from, to }) => [openingIds.join(), from / MM, to / MM]);
}

test('openings that set the limit alike are all told, and only as far as they do', () => {
  // Slots: each lets in strips as wide as it is, up to its height.
  expect(stretches({ Heron: boxOfMm(2, 8), Smew: boxOfMm(2, 9), Ruff: boxOfMm(3, 8) })).toEqual([['Heron,Smew', 0, 8]]);
  // Above 6 mm the second lets nothing in: it stops the limit, which the first would carry on.
  expect(stretches({ Heron: boxOfMm(2, 8), Smew: boxOfMm(2, 6) })).toEqual([['Heron,Smew', 0, 6]]);
});

test('an opening that leaves the limit part of the way is told no further', () => {
  // A slot 2 mm wide and 4 mm tall on one 1 mm wide: 2 mm up to 4 mm, as the plain slot; from there 1 mm.
  const stepped = asTrustedRing(
    [
      ...[
        [0, 0],
        [2, 0],
        [2, 4],
      ],
      ...[
        [1, 4],
        [1, 8],
        [0, 8],
      ],
    ].map(([x, y]) => ({ x: x * MM, y: y * MM })),
  );
  expect(stretches({ Plain: boxOfMm(2, 8), Stepped: stepped })).toEqual([
    ['Plain,Stepped', 0, 4],
    ['Stepped', 4, 8],
  ]);
});

test('where others join while the limit stays level, those are told that set it all along', () => {
  // Both let in 2 mm up to 4 mm and 1 mm from there; the third joins them at 6 mm.
  const stepped = (step: number) =>
    asTrustedRing(
      [
        [0, 0],
        [2, 0],
        [2, step],
        [1, step],
        [1, 8],
        [0, 8],
      ].map(([x, y]) => ({ x: x * MM, y: y * MM })),
    );
  expect(stretches({ Teal: stepped(6), Heron: stepped(4), Smew: stepped(4) })).toEqual([
    ['Teal,Heron,Smew', 0, 4],
    ['Heron,Smew', 4, 8],
  ]);
});

test('at a height all that set it are told, the one of the whole stretch first, and above the tallest all that stop a strip', () => {
  const stepped = (step: number) =>
    ringOfMm([
      [0, 0],
      [2, 0],
      [2, step],
      [1, step],
      [1, 8],
      [0, 8],
    ]);
  const outlines = { Mill: stepped(6), Weir: stepped(4), Smew: boxOfMm(3, 9) };
  const curves = Object.entries(outlines).map(([id, ring]) => uprightCurve(id, ring));
  // The mill joins at 6 mm while the limit stays level, so its stretch is the weir's, and says where the mill joins.
  expect(stretches(outlines).at(-1)).toEqual(['Weir', 4, 8]);
  expect(envelopeOf(curves).stretches.at(-1)?.joining).toEqual([{ openingId: 'Mill', from: 6 * MM }]);
  expect(settersAt(curves, 5 * MM)).toEqual(['Weir']);
  expect(settersAt(curves, 7 * MM)).toEqual(['Weir', 'Mill']);
  expect(settersAt(curves, 8.5 * MM)).toEqual(['Mill', 'Weir']);
});

test('without openings there is no limit', () => {
  expect(envelopeOf([])).toEqual({ knots: [], stretches: [] });
});
