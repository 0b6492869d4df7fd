import { describe, expect, test } from 'vitest';
import { checkOutline, MAX_VERTICES } from '../../../src/geom/check-outline.ts';
import { MAX_COORDINATE, type Point } from '../../../src/geom/point.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';
import { isSimpleOutline } from '../../cases/simple-outline.ts';

const outline = (...pairs: [number, number][]): Point[] => pairs.map(([x, y]) => ({ x, y }));
const square = outline([0, 0], [10, 0], [10, 10], [0, 10]);

/** A regular polygon so large that its whole-nanometre vertices stay in convex order. */
const polygonOf = (count: number): Point[] =>
  Array.from({ length: count }, (_, i) => ({
    x: Math.round(40e6 * Math.cos((2 * Math.PI * i) / count)),
    y: Math.round(40e6 * Math.sin((2 * Math.PI * i) / count)),
  }));

describe('an outline without fault', () => {
  test.each([
    ['a square', square],
    ['a triangle', square.slice(0, 3)],
    ['clockwise', [...square].reverse()],
    ['with a vertex in the middle of an edge', outline([0, 0], [5, 0], [10, 0], [10, 10], [0, 10])],
    ['a notch one nanometre wide', outline([0, 0], [10, 0], [10, 10], [6, 10], [6, 1], [5, 1], [5, 10], [0, 10])],
    [
      'at the limit of the coordinates',
      outline([-MAX_COORDINATE, 0], [MAX_COORDINATE, -MAX_COORDINATE], [0, MAX_COORDINATE]),
    ],
    [
      'a sliver one nanometre thick right across',
      outline([-MAX_COORDINATE, 0], [MAX_COORDINATE, 0], [MAX_COORDINATE, 1]),
    ],
  ])('%s', (_, points) => {
    expect(checkOutline(points)).toBeNull();
  });

  test('as many vertices as are allowed', () => {
    expect(checkOutline(polygonOf(MAX_VERTICES))).toBeNull();
  });
});

describe('faults, with what and where', () => {
  test('too few vertices', () => {
    expect(checkOutline([])).toMatchObject({ kind: 'too-few-vertices' });
    expect(checkOutline(square.slice(0, 2))).toMatchObject({
      kind: 'too-few-vertices',
      message: expect.stringContaining('2'),
    });
  });

  test('too many vertices: refused before any work is done on them', () => {
    expect(checkOutline(Array.from({ length: 100_000 }, () => square[0]))).toMatchObject({
      kind: 'too-many-vertices',
      message: expect.stringContaining('100000'),
    });
    expect(checkOutline(polygonOf(MAX_VERTICES + 1))?.kind).toBe('too-many-vertices');
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('not a number: %s', (bad) => {
    expect(checkOutline([square[0], square[1], { x: 5, y: bad }, square[3]])).toMatchObject({
      kind: 'not-finite',
      vertices: [2],
    });
  });

  test('too large: one nanometre beyond the limit, either way', () => {
    const beyond = outline([0, 0], [10, 0], [10, MAX_COORDINATE + 1]);
    expect(checkOutline(beyond)).toMatchObject({ kind: 'too-large', vertices: [2], at: beyond[2] });
    expect(checkOutline(outline([0, 0], [-1e9, 0], [10, 5]))).toMatchObject({ kind: 'too-large', vertices: [1] });
  });

  test('zero area: all vertices in one line', () => {
    expect(checkOutline(outline([0, 0], [10, 20], [5, 10], [20, 40]))?.kind).toBe('zero-area');
  });

  test('self-crossing: the bow-tie names both edges and the place', () => {
    expect(checkOutline([square[0], square[2], square[1], square[3]])).toMatchObject({
      kind: 'self-crossing',
      vertices: [0, 2],
      at: { x: 5, y: 5 },
    });
  });

  test('self-touching: a vertex on an edge it does not belong to', () => {
    const fault = checkOutline(outline([0, 0], [10, 0], [10, 10], [5, 0], [0, 10]));
    expect(fault).toMatchObject({ kind: 'self-touching', vertices: [3, 0], at: { x: 5, y: 0 } });
  });

  test('self-touching: a spike that runs out and back', () => {
    const fault = checkOutline(outline([0, 0], [10, 0], [10, 10], [10, 15], [10, 10 - 2], [0, 10]));
    expect(fault?.kind).toBe('self-touching');
  });

  test('self-touching: two edges on each other', () => {
    const fault = checkOutline(outline([0, 0], [10, 0], [10, 10], [4, 10], [4, 0], [2, 0], [0, 5]));
    expect(fault?.kind).toBe('self-touching');
  });

  test('repeated vertex: two places of the outline meet in a point', () => {
    const hourglass = outline([0, 0], [10, 0], [5, 5], [10, 10], [0, 10], [5, 5]);
    expect(checkOutline(hourglass)).toMatchObject({ kind: 'repeated-vertex', vertices: [2, 5], at: { x: 5, y: 5 } });
  });
});

describe('random outlines', () => {
  test('a fault is found exactly where looking at every pair of edges finds one', () => {
    const random = randomNumbers(5);
    let sound = 0;
    for (let i = 0; i < 4000; i++) {
      const count = random.whole(3, 8);
      const points = Array.from({ length: count }, () => ({ x: random.whole(0, 9), y: random.whole(0, 9) }));
      const fault = checkOutline(points);
      expect({ points, fault: fault === null }).toEqual({ points, fault: isSimpleOutline(points) });
      if (!fault) sound++;
    }
    expect(sound).toBeGreaterThan(400);
  });
});
