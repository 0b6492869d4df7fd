import { describe, expect, test } from 'vitest';
import { endsOf } from '../../../src/app/tools/draw/dragging-edge.ts';
import { insertPart } from '../../../src/app/tools/draw/insert-part.ts';
import type { Point } from '../../../src/geom/point.ts';
import { arcOf, makeDrawn, type Vertex } from '../../../src/geom/vertex.ts';
import { setBulge, straighten } from '../../../src/profile/bend-edge.ts';
import { bowOf, bulgeOfBow, bulgeOfRadius, radiusOf } from '../../../src/profile/edge-bulge.ts';
import { deleteVertices, moveVertices, putVertex } from '../../../src/profile/edit-vertices.ts';
import { insertAt } from '../../../src/profile/insert-vertex.ts';
import { roundVertex } from '../../../src/profile/round-vertex.ts';

const MM = 1e6;
const say = (nm: number) => `${Number((nm / MM).toFixed(4))} mm`;

/** 2 x 4 mm with a half circle of 1 mm radius on top. */
const arch: Vertex[] = [
  { x: 0, y: 0 },
  { x: 2 * MM, y: 0 },
  { x: 2 * MM, y: 4 * MM, bulge: 1 },
  { x: 0, y: 4 * MM },
];

describe('moving and leaving out vertices', () => {
  test('a vertex that is put elsewhere keeps the bulge of its edge', () => {
    expect(putVertex(arch, 2, { x: 3 * MM, y: 4 * MM })[2]).toEqual({ x: 3 * MM, y: 4 * MM, bulge: 1 });
  });

  test('moving an edge moves both its ends, also the last one', () => {
    const moved = moveVertices(arch, endsOf({ edge: 3 }, arch.length), { x: -0.1 * MM, y: 0 });
    expect(moved.map(({ x }) => x)).toEqual([-0.1 * MM, 2 * MM, 2 * MM, -0.1 * MM]);
    expect(moveVertices(arch, [2], { x: 1, y: 1 })[2]).toEqual({ x: 2 * MM + 1, y: 4 * MM + 1, bulge: 1 });
  });

  test('the edge that takes the place of those left out is straight', () => {
    const left = deleteVertices([...arch, { x: 0, y: MM }], [3]);
    expect(left).toEqual({
      ok: true,
      vertices: [arch[0], arch[1], { x: 2 * MM, y: 4 * MM }, { x: 0, y: MM }],
    });
  });

  test('three vertices must stay', () => {
    const refused = deleteVertices(arch, [0, 1, 1, 2]);
    expect(refused).toMatchObject({
      ok: false,
      fault: { what: expect.stringMatching(/at least three .*, and one would/) },
    });
  });
});

/** A vertex more on an edge, where the edge comes nearest to a place. */
const insertNear = (vertices: readonly Vertex[], edge: number, near: Point) =>
  insertAt(vertices, edge, insertPart(vertices, edge, near, null));

describe('inserting a vertex', () => {
  test('into a straight edge: nearest to the place, or in the middle', () => {
    expect(insertNear(arch, 0, { x: 0.5 * MM, y: -3 })[1]).toEqual({ x: 0.5 * MM, y: 0 });
    expect(insertNear(arch, 0, { x: -9 * MM, y: 0 })[1]).toEqual({ x: MM, y: 0 });
    expect(insertAt(arch, 3, 0.5)[4]).toEqual({ x: 0, y: 2 * MM });
  });

  test('into an arc: both parts are on the circle, the apex of a half circle is its middle', () => {
    const split = insertAt(arch, 2, 0.5);
    expect(split[3]).toMatchObject({ x: MM, y: 5 * MM });
    expect(split[2].bulge).toBeCloseTo(Math.tan(Math.PI / 8), 12);
    expect(split[3].bulge).toBeCloseTo(Math.tan(Math.PI / 8), 12);
    const third = insertAt(arch, 2, 1 / 3);
    for (const edge of [2, 3]) {
      const arc = arcOf(third[edge], third[(edge + 1) % 5]);
      expect(arc?.radius).toBeCloseTo(MM, -1);
      expect(arc?.centre.x).toBeCloseTo(MM, -1);
    }
    expect(insertNear(arch, 2, { x: MM + 9, y: 99 * MM })[3]).toMatchObject({ y: 5 * MM });
  });
});

describe('bending an edge', () => {
  test('a half circle has the radius of half its chord and stands off by as much', () => {
    expect(radiusOf(arch[2], arch[3])).toBeCloseTo(MM, 3);
    expect(bowOf(arch[2], arch[3])).toBeCloseTo(MM, 3);
    expect(radiusOf(arch[0], arch[1])).toBe(0);
  });

  test('a bulge comes back from its radius and from its bow, on either side and beyond a half circle', () => {
    for (const bulge of [0.1, 0.4, 1, 1.7, -0.1, -0.9, -3]) {
      const from = { x: 0, y: 0, bulge };
      const to = { x: 3 * MM, y: MM };
      const byRadius = bulgeOfRadius(from, to, radiusOf(from, to), say);
      const byBow = bulgeOfBow(from, to, bowOf(from, to));
      expect(byRadius.ok && byRadius.bulge).toBeCloseTo(bulge, 6);
      expect(byBow.ok && byBow.bulge).toBeCloseTo(bulge, 12);
    }
  });

  test('a radius that is too small is told with the least that does', () => {
    expect(bulgeOfRadius(arch[2], arch[3], 0.5 * MM, say)).toEqual({
      ok: false,
      fault: {
        what: 'A radius of 0.5 mm does not reach from one end of the edge to the other',
        cure: "Give at least 1 mm, half the edge's length.",
      },
    });
    expect(bulgeOfBow(arch[2], arch[3], 200 * MM).ok).toBe(false);
    expect(bulgeOfBow(arch[2], arch[2], 1).ok).toBe(false);
  });

  test('straightening takes the bulge away', () => {
    expect(straighten(setBulge(arch, 0, -0.5), [0, 2]).some(({ bulge }) => bulge)).toBe(false);
  });
});

describe('rounding a corner', () => {
  test('a right angle: the arc begins and ends one radius from the corner', () => {
    const round = roundVertex(arch, 1, 0.5 * MM, say);
    if (!round.ok) throw new Error(round.fault.what);
    expect(round.vertices.slice(0, 4)).toEqual([
      { x: 0, y: 0 },
      { x: 1.5 * MM, y: 0, bulge: Math.tan(Math.PI / 8) },
      { x: 2 * MM, y: 0.5 * MM },
      arch[2],
    ]);
    expect(makeDrawn(round.vertices).ok).toBe(true);
  });

  test('a corner that points inwards is rounded to the other side', () => {
    const notch: Vertex[] = [...arch.slice(0, 2), { x: MM, y: 2 * MM }, { x: 2 * MM, y: 4 * MM }, { x: 0, y: 4 * MM }];
    const round = roundVertex(notch, 2, 0.1 * MM, say);
    expect(round.ok && (round.vertices[2].bulge ?? 0)).toBeLessThan(0);
  });

  test('says how large the radius may be, and which corners cannot be rounded', () => {
    const tooLarge = roundVertex(arch, 1, 3 * MM, say);
    expect(!tooLarge.ok && tooLarge.fault.cure).toBe('Give a radius of at most 2 mm.');
    expect(roundVertex(arch, 1, 2 * MM, say).ok).toBe(true);
    expect(roundVertex(arch, 2, 0.1 * MM, say).ok).toBe(false);
    expect(roundVertex(arch, 3, 0.1 * MM, say).ok).toBe(false);
    expect(roundVertex(insertAt(arch, 0, 0.5), 1, 0.1 * MM, say).ok).toBe(false);
    expect(roundVertex(arch, 1, Number.NaN, say).ok).toBe(false);
  });
});
