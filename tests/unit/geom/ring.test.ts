import { describe, expect, test } from 'vitest';
import type { Point } from '../../../src/geom/point.ts';
import { isRing, makeRing, type Ring } from '../../../src/geom/ring.ts';
import { signedArea } from '../../../src/geom/signed-area.ts';

const square: Point[] = [
  { x: 0, y: 0 },
  { x: 10, y: 0 },
  { x: 10, y: 10 },
  { x: 0, y: 10 },
];

function ringOf(points: readonly Point[]): Ring {
  const made = makeRing(points);
  if (!made.ok) throw new Error(made.fault.message);
  return made.ring;
}

function faultOf(points: readonly Point[]): string | undefined {
  const made = makeRing(points);
  return made.ok ? undefined : made.fault.kind;
}

describe('making a ring', () => {
  test('a sound outline comes out as it went in', () => {
    expect(ringOf(square)).toEqual(square);
  });

  test('a clockwise outline is turned round and keeps its first vertex', () => {
    const clockwise = [...square].reverse();
    expect(ringOf(clockwise)).toEqual([square[3], square[0], square[1], square[2]]);
    expect(signedArea(ringOf(clockwise))).toBe(100);
  });

  test('a closing point and repeats in a row are dropped', () => {
    const repeated = [
      square[0],
      square[0],
      square[1],
      square[2],
      square[2],
      square[2],
      square[3],
      square[0],
      square[0],
    ];
    expect(ringOf(repeated)).toEqual(square);
  });

  test('collinear vertices stay', () => {
    const withMiddle = [square[0], { x: 4, y: 0 }, ...square.slice(1)];
    expect(ringOf(withMiddle)).toEqual(withMiddle);
  });

  test('coordinates are rounded to whole nanometres before anything is checked', () => {
    const fractions = square.map(({ x, y }) => ({ x: x + 0.4, y: y - 0.4 }));
    expect(ringOf(fractions)).toEqual(square);
    const vanishing = square.map(({ x, y }) => ({ x: x / 100, y: y / 100 }));
    expect(faultOf(vanishing)).toBe('too-few-vertices');
  });

  test('no vertex has a negative zero, which would write as "-0"', () => {
    for (const p of ringOf(square.map(({ x, y }) => ({ x: x - 0.2, y: y - 0.2 })))) {
      expect(Object.is(p.x, -0)).toBe(false);
      expect(Object.is(p.y, -0)).toBe(false);
    }
  });

  test('the smallest of all rings: one nanometre', () => {
    const tiny = [
      { x: 0, y: 0 },
      { x: 1, y: 0 },
      { x: 0, y: 1 },
    ];
    expect(ringOf(tiny)).toEqual(tiny);
  });

  test('what is not a simple polygon is refused with its reason', () => {
    expect(faultOf([])).toBe('too-few-vertices');
    expect(faultOf([square[0], square[2], square[1], square[3]])).toBe('self-crossing');
    expect(faultOf([{ x: Number.NaN, y: 0 }, ...square])).toBe('not-finite');
  });

  test('one ring is told from several', () => {
    expect(isRing(ringOf(square))).toBe(true);
    expect(isRing([ringOf(square)])).toBe(false);
  });
});
