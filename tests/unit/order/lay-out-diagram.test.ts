import { describe, expect, test } from 'vitest';
import { type Diagram, type DiagramInput, layOutDiagram } from '../../../src/order/lay-out-diagram.ts';
import { nestedSets, type SetDiagram, scatteredSets } from '../../cases/set-diagrams.ts';

/** Boxes of some different sizes, so that rows are uneven. */
function inputOf({ tiers, covers }: SetDiagram): DiagramInput {
  const nodes = tiers.map((tier, i) => ({ id: `n${i}`, width: 80 + 10 * (i % 5), height: 60 + 8 * (i % 4), tier }));
  return { nodes, covers };
}

interface Box {
  left: number;
  right: number;
  top: number;
  foot: number;
}

function boxesOf({ nodes }: DiagramInput, { at }: Diagram): Box[] {
  return at.map(({ x, y }, i) => ({
    left: x - nodes[i].width / 2,
    right: x + nodes[i].width / 2,
    top: y - nodes[i].height / 2,
    foot: y + nodes[i].height / 2,
  }));
}

/** Whether a straight line has a point inside a box, its border not counted (Liang and Barsky's clipping). */
function runsThrough([x, y]: readonly [number, number], [u, v]: readonly [number, number], box: Box): boolean {
  let from = 0;
  let to = 1;
  const sides = [
    [x - u, x - box.left],
    [u - x, box.right - x],
    [y - v, y - box.top],
    [v - y, box.foot - y],
  ];
  for (const [slope, room] of sides) {
    if (slope === 0 && room <= 0) return false;
    if (slope < 0) from = Math.max(from, room / slope);
    if (slope > 0) to = Math.min(to, room / slope);
  }
  return to - from > 1e-6;
}

const CASES: [string, SetDiagram][] = [
  ['8 nested sets', nestedSets(8, 1)],
  ['40 nested sets', nestedSets(40, 2)],
  ['120 nested sets', nestedSets(120, 3)],
  ['20 scattered sets', scatteredSets(20, 4)],
  ['120 scattered sets', scatteredSets(120, 5)],
  ['300 nested sets', nestedSets(300, 6)],
];

describe.each(CASES)('the drawing of %s', (_, diagram) => {
  const input = inputOf(diagram);
  const drawn = layOutDiagram(input);
  const boxes = boxesOf(input, drawn);

  test('has no boxes that overlap, and all within its size', () => {
    const far = 1e-6;
    const within = ({ left, top, right, foot }: Box) =>
      left >= -far && top >= -far && right <= drawn.width + far && foot <= drawn.height + far;
    const apart = (a: Box, b: Box) => a.right <= b.left || b.right <= a.left || a.foot <= b.top || b.foot <= a.top;
    expect(boxes.filter((box) => !within(box))).toEqual([]);
    expect(boxes.filter((a, i) => boxes.slice(i + 1).some((b) => !apart(a, b)))).toEqual([]);
  });

  test('has a row for each tier, higher tiers higher up', () => {
    const rows = new Map<number, number>();
    for (const [i, { tier }] of input.nodes.entries()) {
      expect(drawn.at[i].y).toBeCloseTo(rows.get(tier) ?? drawn.at[i].y, 6);
      rows.set(tier, drawn.at[i].y);
    }
    const heights = [...rows.entries()].sort(([a], [b]) => a - b).map(([, y]) => y);
    for (const [i, y] of heights.entries()) if (i > 0) expect(y).toBeLessThan(heights[i - 1]);
  });

  test('has a line for each cover, from the top of the lower box up to the foot of the upper', () => {
    expect(drawn.edges.map(({ from, to }) => [from, to])).toEqual(input.covers);
    for (const { from, to, points } of drawn.edges) {
      expect(points[0][0]).toBeCloseTo(drawn.at[from].x, 6);
      expect(points[0][1]).toBeCloseTo(boxes[from].top, 6);
      expect(points[points.length - 1][0]).toBeCloseTo(drawn.at[to].x, 6);
      expect(points[points.length - 1][1]).toBeCloseTo(boxes[to].foot, 6);
      expect(points.slice(1).every(([, y], i) => y < points[i][1])).toBe(true);
    }
  });

  test('has no line that runs through a box', () => {
    const pieces = drawn.edges.flatMap(({ points }) => points.slice(1).map((point, i) => [points[i], point] as const));
    expect(pieces.filter(([a, b]) => boxes.some((box) => runsThrough(a, b, box)))).toEqual([]);
  });

  test('is the same a second time', () => {
    expect(layOutDiagram(structuredClone(input))).toEqual(drawn);
  });
});

describe('the drawing', () => {
  test('of nothing is empty, of one box that box', () => {
    expect(layOutDiagram({ nodes: [], covers: [] })).toEqual({ at: [], width: 0, height: 0, edges: [] });
    const one = layOutDiagram({ nodes: [{ id: 'a', width: 50, height: 40, tier: 3 }], covers: [] });
    expect(one.at).toHaveLength(1);
    expect(one.height).toBe(40);
  });

  test('leaves the boxes of a tier in their order where no line asks for another', () => {
    const nodes = ['a', 'b', 'c', 'd', 'e'].map((id) => ({ id, width: 50, height: 40, tier: 0 }));
    const { at } = layOutDiagram({ nodes, covers: [] });
    expect(at.map(({ x }) => x)).toEqual([...at.map(({ x }) => x)].sort((a, b) => a - b));
  });

  test('skips tiers that no box stands in', () => {
    const nodes = [0, 7].map((tier) => ({ id: `t${tier}`, width: 50, height: 40, tier }));
    expect(layOutDiagram({ nodes, covers: [[0, 1]] }).height).toBeLessThan(200);
  });

  test('of a line that does not lead up is refused', () => {
    const nodes = ['a', 'b'].map((id) => ({ id, width: 50, height: 40, tier: 0 }));
    expect(() => layOutDiagram({ nodes, covers: [[0, 1]] })).toThrow('the line from a to b does not lead up');
    expect(() => layOutDiagram({ nodes: [{ ...nodes[0], width: 0 }], covers: [] })).toThrow('the box a has no size');
  });
});
