import { expect, test } from 'vitest';
import {
  placeText,
  rankText,
  reachText,
  sightText,
  sightWords,
  tightHeadline,
  tightRows,
  tightWords,
} from '../../../src/app/state/gauge/tight-rows.ts';
import { openingsOf } from '../../../src/family/family.ts';
import { uprightCurve } from '../../../src/gauge/thickness-curve.ts';
import { asTrustedRing } from '../../../src/geom/ring.ts';
import { sightOf } from '../../../src/profile/sight-line.ts';
import { demoFamily, demoProfile } from '../../kit/demo-family.ts';

const OPENINGS = openingsOf(demoFamily());
const CURVES = OPENINGS.map(({ id, ring }) => uprightCurve(id, ring));

test('the ranking goes from tight to wide by each measure', () => {
  for (const by of ['height', 'mean', 'sight'] as const) {
    const rows = tightRows(OPENINGS, CURVES, by, 6e6);
    expect(rows.length).toBe(OPENINGS.length);
    const measures = rows.map(({ measure }) => measure);
    expect(measures).toEqual([...measures].sort((a, b) => a - b));
    expect(rows[0].rank).toBe(1);
  }
  const rows = tightRows(OPENINGS, CURVES, 'height', 6e6);
  expect(tightHeadline(rows, 'height', '6 mm')).toBe(
    'The Avocet keyway is the tightest for a strip 6 mm tall, the Bittern keyway the widest',
  );
  expect(tightHeadline(rows, 'height', '6 mm', 'up to 2°')).toContain(
    'tightest for a strip 6 mm tall tilted up to 2°,',
  );
  expect(tightHeadline(rows.slice(0, 1), 'mean', '6 mm')).toBe('Avocet keyway over all heights');
  expect(tightHeadline([], 'mean', '')).toBe('No keyway is gauged yet');
  expect(tightWords('height', '6 mm')).toContain('6 mm tall');
});

test('keyways that are equally tight share a place, and the headline names all that are tightest or widest', () => {
  const [a, b, c, d] = OPENINGS.map((opening, i) => ({ ...opening, section: 'ABCDEFGHIJK'[i] }));
  const slots = [slot(1, 0), slot(1, 0), slot(0.5, 0), slot(0, 0)].map((ring, i) =>
    uprightCurve([a, b, c, d][i].id, ring),
  );
  const rows = tightRows([a, b, c, d], slots, 'height', 6e6);
  expect(rows.map((row) => rankText(row, rows))).toEqual(['=1', '=1', '3', '4']);
  expect(placeText(rows[1], rows)).toBe('1 of 4, shared by 2');
  expect(placeText(rows[2], rows)).toBe('3 of 4');
  expect(tightHeadline(rows, 'height', '6 mm')).toBe(
    'The A keyway and the B keyway alike are the tightest for a strip 6 mm tall, the D keyway the widest',
  );
  const many = [0, 1, 2, 3].map((i) => ({ ...rows[0], opening: OPENINGS[i] }));
  expect(tightHeadline([...many, { ...rows[2], rank: 5 }], 'mean', '')).toBe(
    '4 keyways alike are the tightest over all heights, the C keyway the widest',
  );
  expect(tightHeadline(many, 'mean', '')).toBe('All 4 keyways are equally tight over all heights');
});

/** A slot 2 x 8 mm with a ward of the given depths from the left and, higher up, from the right; millimetres. */
function slot(left: number, right: number) {
  const points = [
    [0, 0],
    [2, 0],
    [2, 5],
    [2 - right, 5],
    [2 - right, 5.6],
    [2, 5.6],
    [2, 8],
    [0, 8],
    [0, 3],
    [left, 3],
    [left, 2],
    [0, 2],
  ];
  return asTrustedRing(points.map(([x, y]) => ({ x: x * 1e6, y: y * 1e6 })));
}

test('line of sight and paracentric reach are told in words', () => {
  const opening = { ...demoProfile('heron-keyway'), name: 'Slot' };
  // Wards 0.6 and 0.5 deep leave 2 - 1.1 = 0.9 mm; neither reaches the middle at 1 mm.
  const open = sightOf(slot(0.6, 0.5));
  expect(sightText(open, 'mm')).toBe('0.900 mm');
  expect(reachText(open, 'mm')).toBe('no, 0.400 mm short');
  expect(sightWords(opening, open, 'mm')).toContain('an upright gap 0.900 mm wide. It is not paracentric');
  // Wards 1.3 and 0.9 deep pass each other by 0.2 mm; the left one reaches 0.3 mm past the middle.
  const shut = sightOf(slot(1.3, 0.9));
  expect(sightText(shut, 'mm')).toBe('none, wards pass by 0.200 mm');
  expect(reachText(shut, 'mm')).toBe('+0.300 mm from the left');
  expect(sightWords(opening, shut, 'mm')).toContain('past the upright centre line from the left by 0.300 mm');
});
