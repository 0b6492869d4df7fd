import { describe, expect, it } from 'vitest';
import type { Vertex } from '../../../src/geom/vertex.ts';
import { flattenSpline, type Spline, splineFault } from '../../../src/interchange/dxf/flatten-spline.ts';
import { arcVertices } from '../../../src/interchange/dxf/place-arc.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';

/** Greatest allowed distance of a chord from its curve, nanometres. */
const CHORD_ERROR = 500;

function distanceToLine(p: Vertex, line: readonly Vertex[]): number {
  let least = Infinity;
  for (let i = 1; i < line.length; i += 1) {
    const [a, b] = [line[i - 1], line[i]];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const t = Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1)));
    least = Math.min(least, Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy));
  }
  return least;
}

/** A point of a rational B-spline by the sum over its basis. @source Cox and de Boor's recursion (from memory) */
function splinePoint({ degree, controlPoints, knots, weights }: Spline, t: number): Vertex {
  const basis = (i: number, p: number): number => {
    if (p === 0) return knots[i] <= t && t < knots[i + 1] ? 1 : 0;
    const left = knots[i + p] - knots[i];
    const right = knots[i + p + 1] - knots[i + 1];
    return (
      (left > 0 ? ((t - knots[i]) / left) * basis(i, p - 1) : 0) +
      (right > 0 ? ((knots[i + p + 1] - t) / right) * basis(i + 1, p - 1) : 0)
    );
  };
  let [x, y, w] = [0, 0, 0];
  for (const [i, point] of controlPoints.entries()) {
    const share = basis(i, degree) * (weights?.[i] ?? 1);
    x += share * point.x;
    y += share * point.y;
    w += share;
  }
  return { x: x / w, y: y / w };
}

function randomSpline(seed: number): Spline {
  const random = randomNumbers(seed);
  const degree = random.whole(1, 5);
  const count = degree + random.whole(1, 6);
  const inner = Array.from({ length: count + degree + 1 }, () => random.whole(0, 6)).sort((a, b) => a - b);
  const clamped = Array.from({ length: count + degree + 1 }, (_, i) =>
    Math.min(Math.max(0, i - degree), count - degree),
  );
  const ends = Math.max(...inner) > 0 && inner[count] > inner[degree] && random.chance(0.5);
  const controlPoints = Array.from({ length: count }, () => ({ x: random.between(0, 8e6), y: random.between(0, 8e6) }));
  const weights = random.chance(0.5) ? controlPoints.map(() => random.between(0.1, 4)) : undefined;
  return { degree, controlPoints, knots: ends ? inner : clamped, weights };
}

describe('splines', () => {
  it.each(Array.from({ length: 60 }, (_, i) => i))(
    'stay within the chord error of the curve, both ways, seed %i',
    (seed) => {
      const spline = randomSpline(seed);
      expect(splineFault(spline)).toBeNull();
      const runs = flattenSpline(spline);
      const { knots, degree, controlPoints } = spline;
      const [from, to] = [knots[degree], knots[controlPoints.length]];
      const curve = Array.from({ length: 600 }, (_, i) => splinePoint(spline, from + ((to - from) * (i + 0.5)) / 600));
      for (const point of curve)
        expect(Math.min(...runs.map((run) => distanceToLine(point, run)))).toBeLessThan(CHORD_ERROR + 1);
      // Every vertex lies on the curve itself: as near to 600 of its points as those are apart.
      const apart = Math.max(...curve.slice(1).map((p, i) => Math.hypot(p.x - curve[i].x, p.y - curve[i].y)));
      for (const vertex of runs.flat())
        expect(Math.min(...curve.map((p) => Math.hypot(p.x - vertex.x, p.y - vertex.y)))).toBeLessThan(apart + 1);
    },
  );

  it('take few chords: a quarter circle of 3 mm as a rational curve no more than twice what is needed', () => {
    const r = 3e6;
    const spline = {
      degree: 2,
      controlPoints: [
        { x: r, y: 0 },
        { x: r, y: r },
        { x: 0, y: r },
      ],
      knots: [0, 0, 0, 1, 1, 1],
      weights: [1, Math.SQRT1_2, 1],
    };
    const [points] = flattenSpline(spline);
    for (const { x, y } of points) expect(Math.abs(Math.hypot(x, y) - r)).toBeLessThan(1e-3);
    const least = Math.PI / 2 / (2 * Math.acos(1 - CHORD_ERROR / r));
    expect(points.length - 1).toBeLessThan(2 * least + 2);
  });

  it('part where they jump', () => {
    const controlPoints = [0, 1, 5, 6].map((x) => ({ x: x * 1e6, y: 0 }));
    expect(flattenSpline({ degree: 1, controlPoints, knots: [0, 0, 1, 1, 2, 2] })).toEqual([
      controlPoints.slice(0, 2),
      controlPoints.slice(2),
    ]);
  });

  it('name what is wrong with them', () => {
    const good: Spline = {
      degree: 1,
      controlPoints: [
        { x: 0, y: 0 },
        { x: 1, y: 0 },
      ],
      knots: [0, 0, 1, 1],
    };
    expect(splineFault(good)).toBeNull();
    expect(splineFault({ ...good, degree: 2 })).toContain('2 control points');
    expect(splineFault({ ...good, degree: 1.5 })).toContain('degree is 1.5');
    expect(splineFault({ ...good, knots: [0, 1, 1] })).toContain('3 knots, must be 4');
    expect(splineFault({ ...good, knots: [0, 1, 0, 1] })).toContain('do not rise');
    expect(splineFault({ ...good, knots: [1, 1, 1, 1] })).toContain('all the same');
    expect(splineFault({ ...good, weights: [1] })).toContain('1 weights for 2');
    expect(splineFault({ ...good, weights: [1, 0] })).toContain('not above 0');
  });
});

describe('arcs of ellipses', () => {
  it.each(Array.from({ length: 40 }, (_, i) => i))('stay within the chord error, seed %i', (seed) => {
    const random = randomNumbers(seed);
    const vector = (most: number) => ({ x: random.between(-most, most), y: random.between(-most, most) });
    const arc = {
      centre: vector(1e7),
      u: vector(6e6),
      v: vector(6e6),
      start: random.between(0, 6),
      sweep: random.between(0.1, 6.2),
    };
    const at = (t: number) => ({
      x: arc.centre.x + arc.u.x * Math.cos(t) + arc.v.x * Math.sin(t),
      y: arc.centre.y + arc.u.y * Math.cos(t) + arc.v.y * Math.sin(t),
    });
    const line = arcVertices(arc);
    for (let i = 0; i <= 500; i += 1)
      expect(distanceToLine(at(arc.start + (arc.sweep * i) / 500), line)).toBeLessThan(CHORD_ERROR + 1);
    expect(Math.hypot(line[0].x - at(arc.start).x, line[0].y - at(arc.start).y)).toBeLessThan(1e-3);
    const end = at(arc.start + arc.sweep);
    const last = line[line.length - 1];
    expect(Math.hypot(last.x - end.x, last.y - end.y)).toBeLessThan(1e-3);
  });

  it('stay arcs where they are circles, mirrored ones too', () => {
    const circle = { centre: { x: 0, y: 0 }, u: { x: 0, y: 2 }, v: { x: -2, y: 0 }, start: 0, sweep: Math.PI / 2 };
    expect(arcVertices(circle)[0].bulge).toBeCloseTo(Math.tan(Math.PI / 8), 12);
    expect(arcVertices({ ...circle, v: { x: 2, y: 0 } })[0].bulge).toBeCloseTo(-Math.tan(Math.PI / 8), 12);
  });

  it('of an ellipse that is hardly more than a line do not vanish', () => {
    const flat = { centre: { x: 0, y: 0 }, u: { x: 4e6, y: 0 }, v: { x: 0, y: 1 }, start: 0, sweep: 2 * Math.PI };
    expect(arcVertices(flat).length).toBeGreaterThan(100);
  });
});
