import { describe, expect, test } from 'vitest';
import { cornersOf, firstReaching, indexEdges } from '../../../src/fit/edge-index.ts';
import { prepareBlank } from '../../../src/fit/prepare-blank.ts';
import { GROWTH, prepareOpening } from '../../../src/fit/prepare-opening.ts';
import { sideOfRegion } from '../../../src/geom/contains-point.ts';
import { polygonPair } from '../../cases/polygon-pairs.ts';
import { boxOfMm, ringOfMm, wardedKeyway } from '../../kit/shapes.ts';

describe('the edge index', () => {
  test('bisection misses no edge that reaches a height', () => {
    for (let seed = 0; seed < 20; seed++) {
      const { edges, minY, reachY } = indexEdges([polygonPair(seed).opening.outer]);
      const tops = [...minY.keys()].map((i) => Math.max(edges[4 * i + 1], edges[4 * i + 3]));
      for (const y of [...tops, -1e9, 1e9, ...tops.map((top) => top + 1)]) {
        const first = firstReaching(reachY, y);
        expect(tops.slice(0, first).every((top) => top < y)).toBe(true);
        if (first < tops.length) expect(tops[first]).toBeGreaterThanOrEqual(y);
      }
      expect([...minY]).toEqual([...minY].sort((a, b) => a - b));
    }
  });

  test('holds every edge of every boundary once, in its direction', () => {
    const rings = [boxOfMm(3, 3), [...boxOfMm(1, 1)].reverse()];
    const { edges } = indexEdges(rings);
    const found = Array.from({ length: edges.length / 4 }, (_, i) => [...edges.slice(4 * i, 4 * i + 4)].join());
    const given = rings.flatMap((ring) => ring.map((p, i) => [p, ring[(i + 1) % ring.length]]));
    expect(found.sort()).toEqual(given.map(([p, q]) => [p.x, p.y, q.x, q.y].join()).sort());
  });

  test('corners: those that stick out, those that stick in, never those in line', () => {
    const ring = ringOfMm([
      [0, 0],
      [1, 0],
      [2, 0],
      [2, 2],
      [1, 1],
      [0, 2],
    ]);
    expect(cornersOf([ring], 1)).toHaveLength(4 * 6);
    expect([...cornersOf([ring], -1)]).toEqual([1e6, 1e6, -1e6, -1e6, -1e6, 1e6]);
  });
});

describe('a prepared opening', () => {
  test('grown a little it holds every corner of the opening in its inside', () => {
    for (let seed = 0; seed < 40; seed++) {
      const outline = polygonPair(seed).opening.outer;
      const grown = prepareOpening([{ outer: outline as never, holes: [] }]).grown();
      for (const p of outline) expect(sideOfRegion(grown.region, p)).toBe('inside');
    }
  });

  test('grown copies are made once', () => {
    const opening = prepareOpening(wardedKeyway(0.5));
    expect(opening.grown()).toBe(opening.grown());
    expect(opening.roundGrown(1000, 50)).toBe(opening.roundGrown(1000, 50));
    expect(opening.roundGrown(1000, 50)).not.toBe(opening.roundGrown(1000, 60));
    expect(opening.grown().box.minX).toBe(-GROWTH);
  });

  test('tips of wards are its reflex corners', () => {
    const tips = prepareOpening(wardedKeyway(0.5)).reflex();
    expect([tips[0], tips[1], tips[6], tips[7]]).toEqual([0.5e6, 3.9e6, 0.5e6, 3.1e6]);
    expect(tips).toHaveLength(12);
  });
});

describe('a prepared blank', () => {
  test('its longest edges come first: they forbid most', () => {
    const { edges } = prepareBlank(wardedKeyway(0.5));
    const lengths = Array.from({ length: edges.length / 4 }, (_, i) =>
      Math.hypot(edges[4 * i + 2] - edges[4 * i], edges[4 * i + 3] - edges[4 * i + 1]),
    );
    expect(lengths).toEqual([...lengths].sort((a, b) => b - a));
    expect(lengths).toHaveLength(8);
  });

  test('several parts are one blank', () => {
    const far = ringOfMm([
      [0, 5],
      [1, 5],
      [1, 6],
    ]);
    const { rings, box, convex } = prepareBlank([boxOfMm(2, 2), far]);
    expect(rings).toHaveLength(2);
    expect(box).toEqual({ minX: 0, minY: 0, maxX: 2e6, maxY: 6e6 });
    expect(convex).toHaveLength(7 * 6);
  });
});
