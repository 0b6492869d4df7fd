import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeRing } from '../../../src/geom/ring.ts';
import { signedArea } from '../../../src/geom/signed-area.ts';
import { arcOf, makeDrawn, type Vertex } from '../../../src/geom/vertex.ts';
import { checkMilled } from '../../../src/profile/check-milled.ts';
import { measureWeb } from '../../../src/profile/measure-web.ts';
import { millOutline, millVertices } from '../../../src/profile/mill-outline.ts';
import type { Groove, Milled } from '../../../src/profile/profile.ts';

const UM = 1_000;
const MM = 1e6;

const length = (fromUm: number, toUm: number) => fc.integer({ min: fromUm * UM, max: toUm * UM });

const groove: fc.Arbitrary<Groove> = fc.record({
  side: fc.constantFrom<Groove['side']>('left', 'right'),
  bottom: fc.oneof(fc.constant(0), length(0, 8_000)),
  width: length(100, 1_500),
  depth: length(50, 1_200),
  flank: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 0.6, noNaN: true })),
  rootRadius: fc.oneof(fc.constant(0), length(0, 200)),
});

const blade: fc.Arbitrary<Milled> = fc.record({
  thickness: length(1_500, 3_000),
  height: length(6_000, 9_000),
  backRadius: fc.oneof(fc.constant(0), length(0, 800)),
  grooves: fc.array(groove, { maxLength: 5 }),
});

/** Area between two tangents of length r tan(turn/2) and their arc. */
const cornerArea = (radius: number, turn: number) => radius * radius * (Math.tan(turn / 2) - turn / 2);

/** The area of the blade by addition: rectangle, less grooves as trapeziums, plus root fillets, less back corners. */
function areaByAddition(milled: Milled): number {
  const grooves = milled.grooves.map((g) => {
    const flanks = (g.bottom === 0 ? 0 : 1) + (g.bottom + g.width === milled.height ? 0 : 1);
    const root = g.width - flanks * g.depth * Math.tan(g.flank);
    return ((g.width + root) / 2) * g.depth - flanks * cornerArea(g.rootRadius, Math.PI / 2 - g.flank);
  });
  const lost = grooves.reduce((sum, area) => sum + area, 0);
  return milled.thickness * milled.height - lost - 2 * cornerArea(milled.backRadius, Math.PI / 2);
}

/** The polygon of the vertices and the circular segments r^2 (a - sin a) / 2 that its arcs of angle a add. */
function areaWithArcs(vertices: readonly Vertex[]): number {
  const segments = vertices.map((vertex, i) => {
    const arc = arcOf(vertex, vertices[(i + 1) % vertices.length]);
    return arc ? (arc.radius ** 2 * (arc.sweep - Math.sin(arc.sweep))) / 2 : 0;
  });
  return signedArea(vertices) + segments.reduce((sum, area) => sum + area, 0);
}

describe('random blades', () => {
  test('what has no fault is drawn soundly, with the area that adds up, and keeps a web', () => {
    let drawn = 0;
    fc.assert(
      fc.property(blade, (milled) => {
        const points = millOutline(milled);
        expect(Array.isArray(points)).toBe(checkMilled(milled).length === 0);
        if (!Array.isArray(points)) return;
        drawn++;
        const made = makeRing(points);
        if (!made.ok) throw new Error(made.fault.message);
        // Each arc may be off by 1 um over its length, each vertex by 1 nm over the outline's.
        const arcs = milled.backRadius * 3.2 + milled.grooves.reduce((sum, g) => sum + g.rootRadius * 3.2, 0);
        expect(Math.abs(signedArea(points) - areaByAddition(milled))).toBeLessThan(arcs * UM + 5e7);
        expect(measureWeb(made.ring).thickness).toBeGreaterThan(0);
      }),
      { numRuns: 3000 },
    );
    expect(drawn).toBeGreaterThan(500);
  });

  test('with arcs in place of chords the area adds up but for the rounding of vertices', () => {
    let drawn = 0;
    fc.assert(
      fc.property(blade, (milled) => {
        if (checkMilled(milled).length > 0) return;
        const vertices = millVertices(milled);
        const made = makeDrawn(vertices);
        if (!made.ok) return;
        drawn++;
        expect(made.drawn).toEqual(vertices);
        const perimeter = 2 * (milled.height + milled.thickness) + milled.grooves.length * 4 * MM;
        expect(Math.abs(areaWithArcs(vertices) - areaByAddition(milled))).toBeLessThan(perimeter * 2);
        const corners = 4 + milled.grooves.length * 4;
        const rounded = 2 + milled.grooves.length * 2;
        expect(vertices.length).toBeLessThanOrEqual(corners + rounded);
      }),
      { numRuns: 3000 },
    );
    expect(drawn).toBeGreaterThan(500);
  });

  test('the web is the thickness less the deepest grooves at one height, where flanks are square', () => {
    fc.assert(
      fc.property(blade, (given) => {
        const milled = {
          ...given,
          backRadius: 0,
          grooves: given.grooves.map((g) => ({ ...g, flank: 0, rootRadius: 0 })),
        };
        const points = millOutline(milled);
        if (!Array.isArray(points)) return;
        const made = makeRing(points);
        if (!made.ok) throw new Error(made.fault.message);
        const middles = milled.grooves.flatMap((g) =>
          milled.grooves.map(
            (h) => (Math.max(g.bottom, h.bottom) + Math.min(g.bottom + g.width, h.bottom + h.width)) / 2,
          ),
        );
        const depthAt = (y: number) =>
          milled.grooves.filter((g) => g.bottom < y && y < g.bottom + g.width).reduce((sum, g) => sum + g.depth, 0);
        expect(measureWeb(made.ring).thickness).toBe(milled.thickness - Math.max(0, ...middles.map(depthAt)));
      }),
      { numRuns: 2000 },
    );
  });
});
