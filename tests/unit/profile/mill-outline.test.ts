import { describe, expect, test } from 'vitest';
import { checkOutline } from '../../../src/geom/check-outline.ts';
import type { Point } from '../../../src/geom/point.ts';
import { signedArea } from '../../../src/geom/signed-area.ts';
import { millOutline } from '../../../src/profile/mill-outline.ts';
import type { Groove, Milled } from '../../../src/profile/profile.ts';

const MM = 1e6;
const DEG = Math.PI / 180;

const groove = (given: Partial<Groove>): Groove => ({
  side: 'left',
  bottom: 1.2 * MM,
  width: 0.9 * MM,
  depth: 0.6 * MM,
  flank: 0,
  rootRadius: 0,
  ...given,
});

const blade = (grooves: Groove[] = [], given: Partial<Milled> = {}): Milled => ({
  thickness: 2 * MM,
  height: 8.4 * MM,
  backRadius: 0,
  grooves,
  ...given,
});

function outline(milled: Milled): Point[] {
  const result = millOutline(milled);
  if (!Array.isArray(result)) throw new Error(result.message);
  return result;
}

const inMm = (points: Point[]) => points.map((p) => [p.x / MM, p.y / MM]);
const areaMm2 = (points: Point[]) => signedArea(points) / MM ** 2;

describe('the outline of a milled blade', () => {
  test('a plain blade is the rectangle of its thickness and height, from the left end of its back', () => {
    expect(inMm(outline(blade()))).toEqual([
      [0, 0],
      [2, 0],
      [2, 8.4],
      [0, 8.4],
    ]);
  });

  test('a square groove on the left takes its width off the left face and goes as deep as stated', () => {
    expect(inMm(outline(blade([groove({})])))).toEqual([
      [0, 0],
      [2, 0],
      [2, 8.4],
      [0, 8.4],
      [0, 2.1],
      [0.6, 2.1],
      [0.6, 1.2],
      [0, 1.2],
    ]);
  });

  test('a groove on the right is the mirror image of the same groove on the left', () => {
    const shape = { flank: 15 * DEG, rootRadius: 0.1 * MM };
    const left = outline(blade([groove(shape)]));
    const right = outline(blade([groove({ ...shape, side: 'right' })]));
    const mirrored = right.map((p) => `${2 * MM - p.x},${p.y}`).sort();
    expect(left.map((p) => `${p.x},${p.y}`).sort()).toEqual(mirrored);
  });

  test('the order in which grooves are listed does not matter', () => {
    const low = groove({ rootRadius: 0.1 * MM });
    const high = groove({ bottom: 4 * MM, depth: 0.3 * MM });
    const across = groove({ side: 'right', bottom: 2.6 * MM });
    expect(outline(blade([high, across, low]))).toEqual(outline(blade([low, high, across])));
  });

  test('a flank narrows the groove towards its root by depth * tan(flank) on each side', () => {
    const points = inMm(outline(blade([groove({ flank: 45 * DEG, depth: 0.3 * MM })])));
    expect(points.slice(4)).toEqual([
      [0, 2.1],
      [0.3, 1.8],
      [0.3, 1.5],
      [0, 1.2],
    ]);
  });

  test('a root radius adds (1 - pi/4) r^2 of material at each square root corner', () => {
    const r = 0.2;
    const sharp = areaMm2(outline(blade([groove({})])));
    const rounded = areaMm2(outline(blade([groove({ rootRadius: r * MM })])));
    const exact = 2 * (1 - Math.PI / 4) * r * r;
    expect(rounded - sharp).toBeGreaterThanOrEqual(exact - 1e-6);
    expect(rounded - sharp).toBeLessThan(exact + 2 * (Math.PI / 2) * r * 0.001);
  });

  test('a back radius takes (1 - pi/4) r^2 off each corner of the back and leaves the upper corners sharp', () => {
    const r = 0.5;
    const points = outline(blade([], { backRadius: r * MM }));
    const removed = 2 * 8.4 - areaMm2(points);
    const exact = 2 * (1 - Math.PI / 4) * r * r;
    expect(removed).toBeGreaterThanOrEqual(exact - 1e-6);
    expect(removed).toBeLessThan(exact + 2 * (Math.PI / 2) * r * 0.001);
    expect(inMm(points)).toContainEqual([0, 8.4]);
    expect(inMm(points)).toContainEqual([2, 8.4]);
  });

  test('arcs are met by their vertices, and no chord strays more than 1 um', () => {
    const r = 0.5 * MM;
    const points = outline(blade([], { backRadius: r })).filter((p) => p.y <= r && p.x <= r);
    expect(points.length).toBeGreaterThan(5);
    for (const p of points) expect(Math.abs(Math.hypot(p.x - r, p.y - r) - r)).toBeLessThanOrEqual(0.71);
    points.sort((a, b) => a.x - b.x);
    for (let i = 1; i < points.length; i++) {
      const middle = { x: (points[i].x + points[i - 1].x) / 2, y: (points[i].y + points[i - 1].y) / 2 };
      expect(r - Math.hypot(middle.x - r, middle.y - r)).toBeLessThanOrEqual(1001);
    }
  });

  test('a root fillet is tangent to leaning flank and root: its arc is r from both', () => {
    const flank = 20 * DEG;
    const r = 0.1 * MM;
    const g = groove({ flank, rootRadius: r });
    const points = outline(blade([g]));
    // The arc's centre is r above the root floor and r off the lower flank, both measured square to them.
    const centre = {
      x: g.depth - r,
      y: g.bottom + ((g.depth - r) * Math.sin(flank) + r) / Math.cos(flank),
    };
    const onArc = points.filter((p) => Math.abs(Math.hypot(p.x - centre.x, p.y - centre.y) - r) < 1);
    expect(onArc.length).toBeGreaterThanOrEqual(6);
    expect(Math.max(...onArc.map((p) => p.x))).toBe(g.depth);
  });

  test('a groove that starts at the back is a step without a lower flank, and the back radius rounds what is left', () => {
    const step = groove({ bottom: 0, flank: 45 * DEG, depth: 0.3 * MM });
    expect(inMm(outline(blade([step])))).toEqual([
      [0.3, 0],
      [2, 0],
      [2, 8.4],
      [0, 8.4],
      [0, 0.9],
      [0.3, 0.6],
    ]);
    const rounded = outline(blade([step], { backRadius: 0.2 * MM }));
    expect(rounded).toContainEqual({ x: 0.5 * MM, y: 0 });
    expect(rounded).toContainEqual({ x: 0.3 * MM, y: 0.2 * MM });
  });

  test('a groove that ends at the upper edge is a step without an upper flank', () => {
    const step = groove({ bottom: 7.5 * MM, depth: 0.3 * MM, side: 'right' });
    expect(inMm(outline(blade([step])))).toEqual([
      [0, 0],
      [2, 0],
      [2, 7.5],
      [1.7, 7.5],
      [1.7, 8.4],
      [0, 8.4],
    ]);
  });

  test('a fully round back is allowed: the two arcs meet', () => {
    const points = outline(blade([], { backRadius: 1 * MM }));
    expect(Math.min(...points.map((p) => p.y))).toBe(0);
    expect(checkOutline(points)).toBeNull();
  });

  test('what comes out is a simple counter-clockwise outline in whole nanometres', () => {
    const points = outline(
      blade(
        [
          groove({ flank: 12.5 * DEG, rootRadius: 0.0987654 * MM }),
          groove({ side: 'right', bottom: 1.9 * MM, flank: 10 * DEG, rootRadius: 0.1 * MM }),
          groove({ side: 'right', bottom: 3.33 * MM, depth: 1.2 * MM }),
          groove({ bottom: 4.5 * MM, depth: 1.1 * MM }),
        ],
        { backRadius: 0.4 * MM },
      ),
    );
    expect(checkOutline(points)).toBeNull();
    expect(signedArea(points)).toBeGreaterThan(0);
    expect(points.every((p) => Number.isInteger(p.x) && Number.isInteger(p.y))).toBe(true);
  });
});
