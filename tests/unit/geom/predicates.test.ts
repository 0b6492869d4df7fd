import { describe, expect, test } from 'vitest';
import { MAX_COORDINATE, type Point } from '../../../src/geom/point.ts';
import { crossingPoint, meetingOf, turn } from '../../../src/geom/predicates.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';

const at = (x: number, y: number): Point => ({ x, y });

/** The sign by whole numbers of any size: what is true. */
function exactTurn(a: Point, b: Point, c: Point): number {
  const [ax, ay, bx, by, cx, cy] = [a.x, a.y, b.x, b.y, c.x, c.y].map(BigInt);
  const area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  if (area === 0n) return 0;
  return area > 0n ? 1 : -1;
}

describe('turn', () => {
  test('is twice the signed area of the triangle', () => {
    expect(turn(at(0, 0), at(4, 0), at(0, 3))).toBe(12);
    expect(turn(at(0, 0), at(0, 3), at(4, 0))).toBe(-12);
    expect(turn(at(0, 0), at(2, 3), at(4, 6))).toBe(0);
  });

  test('one nanometre off a line right across the accepted square is told from none', () => {
    const [a, b] = [at(-MAX_COORDINATE, -MAX_COORDINATE), at(MAX_COORDINATE, MAX_COORDINATE)];
    expect(turn(a, b, at(12_345_678, 12_345_678))).toBe(0);
    expect(turn(a, b, at(12_345_678, 12_345_679))).toBeGreaterThan(0);
    expect(turn(a, b, at(12_345_679, 12_345_678))).toBeLessThan(0);
    const next = at(MAX_COORDINATE, MAX_COORDINATE - 1);
    expect(Math.sign(turn(a, next, at(0, 0)))).toBe(exactTurn(a, next, at(0, 0)));
  });

  test('has the right sign for points nearly in line at the limit of the coordinates', () => {
    const random = randomNumbers(11);
    const coordinate = () => random.whole(-MAX_COORDINATE, MAX_COORDINATE);
    for (let i = 0; i < 3000; i++) {
      const [a, b] = [at(coordinate(), coordinate()), at(coordinate(), coordinate())];
      const f = random.next();
      const near = at(
        Math.round(a.x + f * (b.x - a.x)) + random.whole(-1, 1),
        Math.round(a.y + f * (b.y - a.y)) + random.whole(-1, 1),
      );
      expect(Math.sign(turn(a, b, near)) + 0).toBe(exactTurn(a, b, near));
    }
  });
});

describe('how two segments meet', () => {
  const [a, b] = [at(0, 0), at(10, 0)];
  test.each([
    ['crossing in the middle of both', at(5, -5), at(5, 5), 'crossing'],
    ['an end of one on the other', at(5, 0), at(5, 5), 'touching'],
    ['a shared end', at(10, 0), at(12, 9), 'touching'],
    ['in line, sharing an end', at(10, 0), at(15, 0), 'touching'],
    ['in line, sharing a length', at(8, 0), at(15, 0), 'overlapping'],
    ['one within the other', at(2, 0), at(4, 0), 'overlapping'],
    ['in line, apart', at(11, 0), at(15, 0), 'apart'],
    ['parallel', at(0, 1), at(10, 1), 'apart'],
    ['pointing at each other, one short', at(5, 1), at(5, 5), 'apart'],
    ['lines crossing beyond the end', at(11, -5), at(11, 5), 'apart'],
  ] as const)('%s', (_, c, d, expected) => {
    expect(meetingOf(a, b, c, d)).toBe(expected);
    expect(meetingOf(c, d, a, b)).toBe(expected);
    expect(meetingOf(b, a, d, c)).toBe(expected);
  });

  test('upright segments in line are compared by height', () => {
    expect(meetingOf(at(0, 0), at(0, 4), at(0, 3), at(0, 9))).toBe('overlapping');
    expect(meetingOf(at(0, 0), at(0, 4), at(0, 5), at(0, 9))).toBe('apart');
  });

  test('at the limit of the coordinates a crossing is told from a miss by one nanometre', () => {
    const M = MAX_COORDINATE;
    const [p, q] = [at(-M, -M), at(M, M - 1)];
    expect(meetingOf(p, q, at(0, 0), at(M, -M))).toBe('crossing');
    expect(meetingOf(p, q, at(0, -1), at(M, -M))).toBe('apart');
    expect(meetingOf(at(-M, -M), at(M, M), at(7, 7), at(M, -M))).toBe('touching');
  });
});

describe('crossing point', () => {
  test('lies on both lines', () => {
    expect(crossingPoint(at(0, 0), at(10, 10), at(0, 10), at(10, 0))).toEqual(at(5, 5));
    const third = crossingPoint(at(0, 0), at(3, 1), at(0, 1), at(3, 0));
    expect(third.x).toBeCloseTo(1.5, 12);
    expect(third.y).toBeCloseTo(0.5, 12);
  });
});
