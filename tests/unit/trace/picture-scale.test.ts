import { describe, expect, test } from 'vitest';
import {
  ASSUMED_HEIGHT,
  makePictureFrame,
  NO_MARKS,
  type PictureFrame,
  type PictureMarks,
  toPicturePlane,
  toProfilePlane,
} from '../../../src/trace/picture-scale.ts';
import type { FourPoints } from '../../../src/trace/plane-map.ts';

const SIZE = { width: 800, height: 600 };
const MM = 1e6;
const at = (x: number, y: number) => ({ x, y });

function frameOf(marks: Partial<PictureMarks>): PictureFrame {
  const made = makePictureFrame(SIZE, { ...NO_MARKS, ...marks });
  if (!made.ok) throw new Error(made.fault.what);
  return made.frame;
}

const SQUARE: FourPoints = [at(100, 100), at(500, 100), at(500, 500), at(100, 500)];
const rectangle = (corners: FourPoints, width = 10 * MM, height = 10 * MM) => ({ corners, width, height });

describe('the frame of a picture', () => {
  test('without marks the picture stands upright, 25 mm high, its middle where it is wanted', () => {
    const frame = frameOf({ middle: at(3 * MM, -MM) });
    expect(frame).toMatchObject({ perspective: false, scaleFrom: 'assumed', distanceByRectangle: null });
    expect(frame.nmPerPixel).toBeCloseTo(ASSUMED_HEIGHT / 600, 6);
    expect(toProfilePlane(frame, at(400, 300))).toEqual(at(3 * MM, -MM));
    // Up in the picture is up among the profiles, right is right.
    expect(toProfilePlane(frame, at(400, 0))?.y).toBeCloseTo(-MM + ASSUMED_HEIGHT / 2, 3);
    expect(toProfilePlane(frame, at(800, 300))?.x).toBeGreaterThan(3 * MM);
  });

  test('two points a known distance apart are that far apart', () => {
    const frame = frameOf({ scale: { from: at(10, 20), to: at(310, 420), distance: 10 * MM } });
    const [a, b] = [toProfilePlane(frame, at(10, 20)), toProfilePlane(frame, at(310, 420))];
    expect(frame.scaleFrom).toBe('points');
    expect(Math.hypot((b?.x ?? 0) - (a?.x ?? 0), (b?.y ?? 0) - (a?.y ?? 0))).toBeCloseTo(10 * MM, 3);
    expect(frame.nmPerPixel).toBeCloseTo((10 * MM) / 500, 6);
  });

  test.each([
    ['upright', at(100, 500), at(130, 100)],
    ['upright', at(130, 100), at(100, 500)],
    ['level', at(100, 500), at(500, 480)],
  ] as const)('a line that should be %s is, whichever end comes first, by the least turn', (lies, from, to) => {
    const frame = frameOf({ line: { from, to, lies } });
    const [a, b] = [toProfilePlane(frame, from), toProfilePlane(frame, to)];
    const off = lies === 'upright' ? (b?.x ?? 0) - (a?.x ?? 0) : (b?.y ?? 0) - (a?.y ?? 0);
    expect(off).toBeCloseTo(0, 3);
    // Up stays up.
    expect((toProfilePlane(frame, at(400, 0))?.y ?? 0) > (toProfilePlane(frame, at(400, 600))?.y ?? 0)).toBe(true);
  });

  test('a turn goes counter-clockwise', () => {
    const frame = frameOf({ turn: Math.PI / 2 });
    const right = toProfilePlane(frame, at(500, 300));
    expect(right?.x).toBeCloseTo(0, 3);
    expect(right?.y).toBeGreaterThan(0);
  });

  test('the corners of a rectangle make one of its size; two points on it only rescale', () => {
    const corners: FourPoints = [at(120, 80), at(640, 130), at(600, 520), at(150, 470)];
    const byItself = frameOf({ rectangle: rectangle(corners, 14 * MM, 11 * MM) });
    expect(byItself).toMatchObject({ perspective: true, scaleFrom: 'rectangle', distanceByRectangle: null });
    const [a, b, c, d] = corners.map((corner) => toProfilePlane(byItself, corner) ?? at(0, 0));
    expect([b.x - a.x, b.y - a.y, a.x - d.x, a.y - d.y, c.x - d.x, c.y - d.y].map((nm) => Math.round(nm) + 0)).toEqual([
      14 * MM,
      0,
      0,
      11 * MM,
      14 * MM,
      0,
    ]);
    const scaled = frameOf({
      rectangle: rectangle(corners, 14 * MM, 11 * MM),
      scale: { from: corners[0], to: corners[1], distance: 7 * MM },
    });
    expect(scaled.scaleFrom).toBe('points');
    expect(scaled.distanceByRectangle).toBeCloseTo(14 * MM, 1);
    const p = toProfilePlane(scaled, corners[3]);
    const q = toProfilePlane(scaled, corners[0]);
    expect((q?.y ?? 0) - (p?.y ?? 0)).toBeCloseTo(5.5 * MM, 1);
  });

  test('goes both ways to a hundred-millionth of a pixel', () => {
    const corners: FourPoints = [at(120, 80), at(640, 130), at(600, 520), at(150, 470)];
    const frame = frameOf({ rectangle: rectangle(corners), turn: 0.3, middle: at(5 * MM, 2 * MM) });
    for (const p of [at(0, 0), at(800, 600), at(13.25, 444)]) {
      const back = toPicturePlane(frame, toProfilePlane(frame, p) ?? at(0, 0));
      expect(back?.x).toBeCloseTo(p.x, 8);
      expect(back?.y).toBeCloseTo(p.y, 8);
    }
  });

  test('has no answer beyond the horizon of a steep perspective', () => {
    // The sides meet at (300, 0): what lies above that line is sky.
    const frame = frameOf({ rectangle: rectangle([at(200, 200), at(400, 200), at(500, 400), at(100, 400)]) });
    expect(toProfilePlane(frame, at(300, 1))).not.toBeNull();
    expect(toProfilePlane(frame, at(300, 0))).toBeNull();
  });
});

describe('marks that tell nothing definite are a fault with a cure', () => {
  const [a, b, c, d] = SQUARE;
  const cases: [string, Partial<PictureMarks>, string, RegExp][] = [
    ['two points the same', { scale: { from: at(9, 9), to: at(9.5, 9), distance: MM } }, 'scale', /same/],
    ['a distance of nothing', { scale: { from: a, to: b, distance: 0 } }, 'scale', /not above 0/],
    ['a distance that is no number', { scale: { from: a, to: b, distance: Number.NaN } }, 'scale', /not above 0/],
    ['a distance over a metre', { scale: { from: a, to: b, distance: 2e9 } }, 'scale', /over a metre/],
    ['a line without length', { line: { from: a, to: a, lies: 'level' } }, 'line', /same/],
    ['a turn that is no number', { turn: Number.NaN }, 'picture', /no number/],
    ['a rectangle without width', { rectangle: rectangle(SQUARE, 0) }, 'rectangle', /width or height/],
    ['three corners in line', { rectangle: rectangle([a, b, at(900, 100), d]) }, 'rectangle', /in line/],
    ['two corners the same', { rectangle: rectangle([a, a, c, d]) }, 'rectangle', /in line/],
    ['crossed sides', { rectangle: rectangle([a, c, b, d]) }, 'rectangle', /cross/],
    ['corners the other way round', { rectangle: rectangle([b, a, d, c]) }, 'rectangle', /mirror/],
    ['a hollow', { rectangle: rectangle([a, b, at(250, 250), d]) }, 'rectangle', /hollow/],
    ['a pixel of 3 mm', { scale: { from: at(0, 0), to: at(300, 0), distance: 9e8 } }, 'picture', /more than 2 mm/],
    [
      'a picture whose middle is sky',
      { rectangle: rectangle([at(390, 580), at(410, 580), at(500, 600), at(300, 600)]) },
      'rectangle',
      /horizon/,
    ],
  ];
  test.each(cases)('%s', (_name, marks, of, words) => {
    const made = makePictureFrame(SIZE, { ...NO_MARKS, ...marks });
    if (made.ok) throw new Error('taken');
    expect(made.fault.of).toBe(of);
    expect(made.fault.what).toMatch(words);
    expect(made.fault.cure.length).toBeGreaterThan(10);
  });
});
