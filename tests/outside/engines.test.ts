// The other libraries and the generators themselves, held to closed forms before anything is judged by them.
// Convex container: each side moved inwards by the blank's support function. Hexagons R, r turned alike: hexagon R - r.
// L and T junction circles 1.171573 and 1.25: Roark & Young, "Formulas for Stress and Strain", junction formulas, from
// memory; both follow from plain geometry.
// Libraries: JSTS 2.12 (JTS Topology Suite), manifold-3d 3.5, clipper2-wasm 0.4 (Clipper2).

import { beforeAll, describe, expect, test, vi } from 'vitest';
import { signedArea } from '../../src/geom/signed-area.ts';
import { blockedFits } from '../cases/blocked-fits.ts';
import { contactFits } from '../cases/contact-fits.ts';
import { rectangle } from '../cases/fit-case.ts';
import { keywayPair, nearContactPair, type VertexCount } from '../cases/keyway-pairs.ts';
import { plainFits } from '../cases/plain-fits.ts';
import { polygonPair } from '../cases/polygon-pairs.ts';
import { randomNumbers } from '../cases/random-numbers.ts';
import { isSimpleOutline } from '../cases/simple-outline.ts';
import { clipper2InnerFit, loadClipper2 } from '../kit/engines/clipper2-inner-fit.ts';
import { convexParts, convexPartsOutside } from '../kit/engines/convex-parts.ts';
import { convolutionOf } from '../kit/engines/convolution.ts';
import { liesInside } from '../kit/engines/exact-containment.ts';
import { type InnerFitEngine, windowOf } from '../kit/engines/inner-fit-result.ts';
import { jstsInnerFit } from '../kit/engines/jsts-inner-fit.ts';
import { ARC_SHORTFALL, DepthMeter, leastDepthOnGrid } from '../kit/engines/jsts-interference.ts';
import { jstsInscribedCircle, jstsPolygon } from '../kit/engines/jsts-shapes.ts';
import { loadManifold, manifoldInnerFit } from '../kit/engines/manifold-inner-fit.ts';

// Two slow cores shared with other work must not fail a correct answer.
vi.setConfig({ testTimeout: 120_000 });

const namedFits = [...plainFits, ...contactFits, ...blockedFits];

let manifold: Awaited<ReturnType<typeof loadManifold>>;

beforeAll(async () => {
  [manifold] = await Promise.all([loadManifold(), loadClipper2()]);
});

const engines: [string, InnerFitEngine][] = [
  ['JSTS', jstsInnerFit],
  ['manifold-3d', manifoldInnerFit],
  ['clipper2-wasm', clipper2InnerFit],
];

describe.each(engines)('inner-fit region by %s', (_, engine) => {
  test.each(namedFits)('$name', ({ opening, blank, known }) => {
    const found = engine(opening, blank);
    // Whole sixteenths of a nanometre move an edge of the region by up to that much.
    const rounding = (found.play.lateral + found.play.vertical) / 16;
    if (known.area !== undefined)
      expect(Math.abs(found.area - known.area)).toBeLessThanOrEqual((known.areaWithin ?? 0) + rounding);
    if (known.pieces !== undefined) expect([found.pieces, found.holes]).toEqual([known.pieces, known.holes]);
    const clearance = known.clearance ?? 0;
    expect(found.radius).toBeGreaterThan(clearance - 1.2 - (known.within ?? 0) - clearance * 1e-6);
    expect(found.radius).toBeLessThan(clearance + 0.1 + (known.within ?? 0) + clearance * 8e-5);
    if (known.play && found.area > 0)
      expect(
        Math.hypot(found.play.lateral - known.play.lateral, found.play.vertical - known.play.vertical),
      ).toBeLessThan(2);
  });
});

describe('three libraries, three methods, one answer', () => {
  const classes: [string, (seed: number) => ReturnType<typeof polygonPair>][] = [
    ['keyways', (seed) => keywayPair(seed, 20)],
    ['near contact', (seed) => nearContactPair(seed, 20)],
    ['polygons', polygonPair],
  ];
  test.each(classes)('%s', (_, pairOf) => {
    for (let seed = 5000; seed < 5025; seed++) {
      const { opening, blank } = pairOf(seed);
      const [first, ...others] = engines.map(([, engine]) => engine(opening, blank));
      for (const other of others) {
        expect(Math.abs(other.radius - first.radius)).toBeLessThan(1 + 8e-5 * first.radius);
        expect(Math.abs(other.area - first.area)).toBeLessThan(1 + 0.2 * (first.play.lateral + first.play.vertical));
        expect(other.pieces).toBe(first.pieces);
      }
    }
  });
});

describe('convolution, one pass of the clipping library, as the bench uses it', () => {
  test.each(namedFits)('$name', ({ opening, blank, known }) => {
    const cycles = windowOf(opening, blank) ? convolutionOf(opening, blank) : [];
    const area = negativeArea(cycles);
    expect(Math.abs(area - (known.area ?? 0))).toBeLessThanOrEqual((known.areaWithin ?? 0) + 1);
  });

  test('keyways and polygons: the area that JSTS finds', () => {
    for (let seed = 6000; seed < 6040; seed++) {
      for (const { opening, blank } of [keywayPair(seed, 60), polygonPair(seed)]) {
        const theirs = jstsInnerFit(opening, blank);
        const area = windowOf(opening, blank) ? negativeArea(convolutionOf(opening, blank)) : 0;
        expect(Math.abs(area - theirs.area)).toBeLessThan(1 + theirs.play.lateral + theirs.play.vertical);
      }
    }
  });
});

describe('exact containment', () => {
  test.each(namedFits)('$name', ({ opening, blank, known }) => {
    for (const at of known.fitting ?? []) expect(liesInside(opening, blank, at)).toBe(true);
    for (const at of known.colliding ?? []) expect(liesInside(opening, blank, at)).toBe(false);
    expect(known.outcome).toBeDefined();
  });

  test('an island as large as the blank, exactly under it, counts as a collision', () => {
    const opening = { outer: rectangle(0, 0, 90, 90), islands: [rectangle(30, 30, 20, 20)] };
    expect(liesInside(opening, rectangle(0, 0, 20, 20), { x: 30, y: 30 })).toBe(false);
    expect(liesInside(opening, rectangle(0, 0, 60, 60), { x: 10, y: 10 })).toBe(false);
    expect(liesInside(opening, rectangle(0, 0, 20, 20), { x: 50, y: 30 })).toBe(true);
  });
});

describe('convex parts', () => {
  test.each(namedFits)('of $name: convex, and together as large as the whole', ({ opening, blank }) => {
    const parts = convexParts(blank);
    expect(parts.reduce((sum, part) => sum + signedArea(part), 0)).toBeCloseTo(signedArea(blank), -1);
    for (const part of [...parts, ...convexPartsOutside(opening, 1e7)]) {
      expect(isSimpleOutline(part)).toBe(true);
      expect(signedArea(part)).toBeGreaterThan(0);
    }
  });
});

describe('depth by JSTS', () => {
  test.each(blockedFits)(
    '$name: on a grid round the middle nothing is shallower than the closed form',
    ({ opening, blank, known }) => {
      const meter = new DepthMeter(opening, blank);
      const interference = known.interference ?? 0;
      const middle = middleOf(opening.outer, blank);
      const least = leastDepthOnGrid(
        meter,
        middle,
        Math.max(20, interference / 5),
        5,
        Math.max(0.5, interference / 500),
      );
      expect(least).toBeGreaterThan(interference - 0.6);
    },
  );

  test('a square larger than the hole: least where both are centred, by d / sqrt 2', () => {
    const meter = new DepthMeter({ outer: rectangle(0, 0, 2e6, 2e6), islands: [] }, rectangle(0, 0, 2.1e6, 2.1e6));
    const inTheMiddle = meter.depthAt({ x: -50_000, y: -50_000 }, 1) - 50_000 * Math.SQRT2;
    const aside = meter.depthAt({ x: -50_000, y: 0 }, 1) - Math.hypot(50_000, 100_000);
    for (const excess of [inTheMiddle, aside]) {
      expect(excess).toBeGreaterThan(-0.01);
      expect(excess).toBeLessThan(1 + ARC_SHORTFALL);
    }
  });
});

test('the largest inscribed circle by JSTS: L and T junctions, 3-4-5 triangle', () => {
  const L = jstsPolygon(
    [
      [0, 0],
      [5, 0],
      [5, 1],
      [1, 1],
      [1, 5],
      [0, 5],
    ].map(([x, y]) => ({ x: x * 1e6, y: y * 1e6 })),
  );
  expect(2 * jstsInscribedCircle(L, 10).radius).toBeCloseTo(1_171_573, -2);
  const T = jstsPolygon(
    [
      [0, 0],
      [5, 0],
      [5, 1],
      [3, 1],
      [3, 5],
      [2, 5],
      [2, 1],
      [0, 1],
    ].map(([x, y]) => ({ x: x * 1e6, y: y * 1e6 })),
  );
  expect(2 * jstsInscribedCircle(T, 10).radius).toBeCloseTo(1_250_000, -2);
  const triangle = jstsPolygon([
    { x: 0, y: 0 },
    { x: 4e6, y: 0 },
    { x: 0, y: 3e6 },
  ]);
  expect(jstsInscribedCircle(triangle, 10).radius).toBeCloseTo(1e6, -2);
});

describe('generators', () => {
  test('random numbers: the first of seed 0, and a flat draw', () => {
    expect(randomNumbers(0).next()).toBeCloseTo(0.26642920868471265, 15);
    const random = randomNumbers(11);
    const bins = new Array<number>(10).fill(0);
    for (let i = 0; i < 10_000; i++) bins[Math.floor(random.next() * 10)]++;
    // Chi-squared, 9 degrees of freedom: 27.9 is passed once in a thousand.
    expect(bins.reduce((sum, n) => sum + (n - 1000) ** 2 / 1000, 0)).toBeLessThan(27.9);
  });

  test.each([20, 60, 120] as const)(
    'keyways at %i vertices are simple, counter-clockwise, of that size',
    (vertices: VertexCount) => {
      const pairs = Array.from({ length: 100 }, (_, seed) => [
        keywayPair(seed, vertices),
        nearContactPair(seed, vertices),
      ]).flat();
      const outlines = pairs.flatMap((pair) => [pair.blank, pair.opening.outer]);
      expect(outlines.every((outline) => isSimpleOutline(outline) && signedArea(outline) > 0)).toBe(true);
      const mean = pairs.reduce((sum, pair) => sum + pair.blank.length, 0) / pairs.length;
      expect(mean / vertices).toBeGreaterThan(0.85);
      expect(mean / vertices).toBeLessThan(1.15);
    },
  );

  test('about half of the keyway pairs go in', () => {
    const pairs = Array.from({ length: 300 }, (_, seed) => keywayPair(seed, 20));
    const share = pairs.filter((pair) => jstsInnerFit(pair.opening, pair.blank).area > 0).length / pairs.length;
    expect(share).toBeGreaterThan(0.4);
    expect(share).toBeLessThan(0.6);
  });
});

/** Area round which the curves wind less than 0 times, by manifold-3d. */
function negativeArea(cycles: readonly number[][]): number {
  if (cycles.length === 0) return 0;
  const pairs = cycles.map((c) =>
    Array.from({ length: c.length / 2 }, (_, i): [number, number] => [c[2 * i], c[2 * i + 1]]),
  );
  const section = new manifold.CrossSection(pairs, 'Negative');
  const area = section.area();
  section.delete();
  return area;
}

function middleOf(
  outer: readonly { x: number; y: number }[],
  blank: readonly { x: number; y: number }[],
): { x: number; y: number } {
  const middle = (values: number[]): number => (Math.min(...values) + Math.max(...values)) / 2;
  return {
    x: middle(outer.map((p) => p.x)) - middle(blank.map((p) => p.x)),
    y: middle(outer.map((p) => p.y)) - middle(blank.map((p) => p.y)),
  };
}
