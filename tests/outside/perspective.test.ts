// Outside truth: projective geometry in closed form. The cross ratio of four points in line is kept by every projective map
// (Pappus; any textbook); a pinhole camera over a plane is worked out by similar triangles, without any matrix.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { makePictureFrame, NO_MARKS, toProfilePlane } from '../../src/trace/picture-scale.ts';
import { type FourPoints, mapOfFourPoints, mapPoint, type PlanePoint } from '../../src/trace/plane-map.ts';

const near = (x: number, y: number) =>
  fc.record({
    x: fc.double({ min: x - 60, max: x + 60, noNaN: true }),
    y: fc.double({ min: y - 60, max: y + 60, noNaN: true }),
  });

/** Four corners of a square of 400 pixels, each up to 60 pixels off: never in line, never crossed. */
const corners = fc.tuple(near(200, 150), near(600, 150), near(600, 550), near(200, 550)) as fc.Arbitrary<FourPoints>;

/** The cross ratio of four points in line, by distances with their sense. */
function crossRatio([a, b, c, d]: readonly PlanePoint[]): number {
  const along = (p: PlanePoint, q: PlanePoint) =>
    Math.sign((q.x - p.x) * (d.x - a.x) + (q.y - p.y) * (d.y - a.y)) * Math.hypot(q.x - p.x, q.y - p.y);
  return (along(a, c) * along(b, d)) / (along(b, c) * along(a, d));
}

test('the cross ratio of four points in line is kept', () => {
  fc.assert(
    fc.property(corners, near(300, 300), near(500, 420), (four, p, q) => {
      const made = makePictureFrame(
        { width: 800, height: 700 },
        { ...NO_MARKS, rectangle: { corners: four, width: 3e7, height: 2e7 } },
      );
      if (!made.ok) throw new Error(made.fault.what);
      const line = [0, 0.2, 0.55, 1].map((t) => ({ x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) }));
      const mapped = line.map((point) => toProfilePlane(made.frame, point) ?? { x: Number.NaN, y: 0 });
      // (0.55 - 0) (1 - 0.2) / ((0.55 - 0.2) (1 - 0)) = 44 / 35.
      expect(crossRatio(mapped)).toBeCloseTo(44 / 35, 9);
      // And the four stay in line.
      const [a, b, , d] = mapped;
      const off = ((d.x - a.x) * (b.y - a.y) - (d.y - a.y) * (b.x - a.x)) / Math.hypot(d.x - a.x, d.y - a.y);
      expect(Math.abs(off)).toBeLessThan(1e-3);
    }),
    { numRuns: 300 },
  );
});

/** A pinhole over a plane, tipped by `tip` about the level axis: where a place (mm) is seen, in pixels. */
function pinhole({ x, y }: PlanePoint, tip: number): PlanePoint {
  const [height, focal] = [80, 2400];
  const depth = height + y * Math.sin(tip);
  return { x: 400 + (focal * x) / depth, y: 350 - (focal * y * Math.cos(tip)) / depth };
}

test.each([0, 10, 25, 40])(
  'a sheet seen by a pinhole tipped by %d degrees comes back true to a nanometre',
  (degrees) => {
    const tip = (degrees * Math.PI) / 180;
    const sheet: FourPoints = [
      { x: -10, y: 7 },
      { x: 10, y: 7 },
      { x: 10, y: -7 },
      { x: -10, y: -7 },
    ];
    const seen = sheet.map((corner) => pinhole(corner, tip)) as unknown as FourPoints;
    const made = makePictureFrame(
      { width: 800, height: 700 },
      { ...NO_MARKS, rectangle: { corners: seen, width: 20e6, height: 14e6 } },
    );
    if (!made.ok) throw new Error(made.fault.what);
    const places = [
      { x: 0, y: 0 },
      { x: 3.25, y: -6.5 },
      { x: -12, y: 9 },
    ];
    const [origin, ...others] = places.map((place) => toProfilePlane(made.frame, pinhole(place, tip)) ?? place);
    for (const [i, found] of others.entries()) {
      expect(found.x - origin.x).toBeCloseTo(places[i + 1].x * 1e6, 0);
      expect(found.y - origin.y).toBeCloseTo(places[i + 1].y * 1e6, 0);
    }
  },
);

test('sides that are parallel on the sheet meet where their pictures cross: the vanishing point is at the horizon', () => {
  const four: FourPoints = [
    { x: 200, y: 200 },
    { x: 420, y: 180 },
    { x: 520, y: 420 },
    { x: 110, y: 400 },
  ];
  const unit: FourPoints = [
    { x: 0, y: 1 },
    { x: 1, y: 1 },
    { x: 1, y: 0 },
    { x: 0, y: 0 },
  ];
  const map = mapOfFourPoints(unit, four);
  if (!map) throw new Error('no map');
  // Far up the sheet every upright line runs into the crossing of the two sides, by the two-line formula.
  const far = mapPoint(map, { x: 0.37, y: 1e9 });
  const crossing = meeting(four[3], four[0], four[2], four[1]);
  expect(far.x).toBeCloseTo(crossing.x, 4);
  expect(far.y).toBeCloseTo(crossing.y, 4);
});

/** Where the lines a-b and c-d cross. */
function meeting(a: PlanePoint, b: PlanePoint, c: PlanePoint, d: PlanePoint): PlanePoint {
  const t =
    ((c.x - a.x) * (d.y - c.y) - (c.y - a.y) * (d.x - c.x)) / ((b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x));
  return { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) };
}
