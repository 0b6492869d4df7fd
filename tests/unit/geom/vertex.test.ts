import { describe, expect, test } from 'vitest';
import { signedArea } from '../../../src/geom/signed-area.ts';
import { ARC_CHORD_ERROR, arcOf, edgePoints, makeDrawn, turnedRound, type Vertex } from '../../../src/geom/vertex.ts';

const MM = 1e6;
const HALF_CIRCLE = 1;
const QUARTER = Math.tan(Math.PI / 8);

/** A stadium: a 2 x 4 mm slot with half circles of 1 mm radius at its ends. */
const stadium: Vertex[] = [
  { x: -MM, y: -MM },
  { x: -MM, y: -MM, bulge: HALF_CIRCLE },
  { x: MM, y: -MM },
  { x: MM, y: MM, bulge: HALF_CIRCLE },
  { x: -MM, y: MM },
];

function made(vertices: readonly Vertex[]) {
  const result = makeDrawn(vertices);
  if (!result.ok) throw new Error(result.fault.message);
  return result;
}

describe('a bulged edge', () => {
  test('a bulge of 1 is a half circle to the left of the way, as in the DXF reference', () => {
    const arc = arcOf({ x: 0, y: 0, bulge: 1 }, { x: 2, y: 0 });
    expect(arc?.radius).toBeCloseTo(1, 12);
    expect(arc?.centre.x).toBeCloseTo(1, 12);
    // Turning left on the way from (0, 0) to (2, 0) leads through the lower half plane.
    const [, ...inner] = edgePoints({ x: 0, y: 0, bulge: 1 }, { x: 2 * MM, y: 0 });
    expect(inner.every((p) => p.y < 0)).toBe(true);
  });

  test('tan(22.5 degrees) is a quarter of a circle about the inner corner', () => {
    const arc = arcOf({ x: MM, y: 0, bulge: QUARTER }, { x: 0, y: MM });
    expect(arc?.radius).toBeCloseTo(MM, 3);
    expect(Math.hypot(arc?.centre.x ?? 9, arc?.centre.y ?? 9)).toBeLessThan(1e-6);
    expect(arc?.sweep).toBeCloseTo(Math.PI / 2, 12);
  });

  test('chords keep within the stated error, and no finer than they need to', () => {
    const points = [...edgePoints({ x: 4 * MM, y: 0, bulge: QUARTER }, { x: 0, y: 4 * MM }), { x: 0, y: 4 * MM }];
    const sags = points.slice(1).map((p, i) => 4 * MM - Math.hypot((p.x + points[i].x) / 2, (p.y + points[i].y) / 2));
    expect(Math.max(...sags)).toBeLessThanOrEqual(ARC_CHORD_ERROR + 1);
    expect(Math.max(...sags)).toBeGreaterThan(ARC_CHORD_ERROR / 2);
  });

  test('a straight edge and an edge without length have no arc', () => {
    expect(arcOf({ x: 0, y: 0 }, { x: 1, y: 1 })).toBeNull();
    expect(arcOf({ x: 0, y: 0, bulge: 1 }, { x: 0, y: 0 })).toBeNull();
  });
});

test('an edge bowed by less than half a nanometre is straight, not thousands of chords', () => {
  expect(edgePoints({ x: 0, y: 0, bulge: 1e-59 }, { x: 8 * MM, y: 0 })).toEqual([{ x: 0, y: 0 }]);
  expect(edgePoints({ x: 0, y: 0, bulge: 1e-10 }, { x: 8 * MM, y: 0 })).toEqual([{ x: 0, y: 0 }]);
  expect(arcOf({ x: 0, y: 0, bulge: 1e-6 }, { x: 8 * MM, y: 0 })?.radius).toBeGreaterThan(1e12);
});

describe('making an outline of drawn vertices', () => {
  test('the area of a stadium is that of its rectangle and circle', () => {
    const { ring, drawn } = made(stadium);
    expect(drawn).toHaveLength(4);
    const area = signedArea(ring) / MM ** 2;
    expect(area).toBeGreaterThan(4 + Math.PI - 0.005);
    expect(area).toBeLessThan(4 + Math.PI);
  });

  test('a clockwise one is turned round, its arcs with it', () => {
    const { ring, drawn } = made(turnedRound(stadium.slice(1)));
    expect(signedArea(ring)).toBeGreaterThan(0);
    expect(drawn).toEqual(stadium.slice(1));
    expect(new Set(ring.map((p) => `${p.x} ${p.y}`))).toEqual(new Set(made(stadium).ring.map((p) => `${p.x} ${p.y}`)));
  });

  test('turning round twice changes nothing', () => {
    expect(turnedRound(turnedRound(stadium))).toEqual(stadium);
  });

  test('two vertices with bulges are a circle, whose halves are halved so that a file can hold it', () => {
    const { ring, drawn } = made([
      { x: -MM, y: 0, bulge: 1 },
      { x: MM, y: 0, bulge: 1 },
    ]);
    expect(signedArea(ring) / MM ** 2).toBeCloseTo(Math.PI, 2);
    expect(drawn.map(({ x, y }) => [x, y])).toEqual([
      [-MM, 0],
      [0, -MM],
      [MM, 0],
      [0, MM],
    ]);
    expect(drawn.every(({ bulge = 0 }) => Math.abs(bulge - QUARTER) < 1e-12)).toBe(true);
  });

  test('a half disc of two vertices has three, and two vertices without an arc are no outline', () => {
    const { ring, drawn } = made([
      { x: 0, y: 0, bulge: 1 },
      { x: 2 * MM, y: 0 },
    ]);
    expect(drawn).toHaveLength(3);
    expect(signedArea(ring) / MM ** 2).toBeCloseTo(Math.PI / 2, 2);
    expect(
      makeDrawn([
        { x: 0, y: 0 },
        { x: 2 * MM, y: 0 },
      ]),
    ).toMatchObject({
      ok: false,
      fault: { kind: 'too-few-vertices' },
    });
  });

  test('an arc that runs into another edge is told by the numbers of the given vertices', () => {
    const result = makeDrawn([
      { x: 0, y: 0 },
      { x: 4 * MM, y: 0 },
      { x: 4 * MM, y: MM, bulge: -1 },
      { x: 0, y: MM },
    ]);
    expect(result).toMatchObject({
      ok: false,
      fault: { kind: 'self-crossing', vertices: [0, 2], message: 'edge 0 crosses edge 2' },
    });
  });
});
