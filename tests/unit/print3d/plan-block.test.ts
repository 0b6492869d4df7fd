import { expect, test } from 'vitest';
import { openingsOf } from '../../../src/family/family.ts';
import type { DisplaySetup } from '../../../src/print3d/display-setup.ts';
import { usualSetup } from '../../../src/print3d/display-setup.ts';
import { planBlock } from '../../../src/print3d/plan-block.ts';
import { roundedRectangle } from '../../../src/print3d/rounded-rectangle.ts';
import { printedBox } from '../../../src/print3d/section-loops.ts';
import { demoFamily } from '../../kit/demo-family.ts';

const family = demoFamily();
const openings = openingsOf(family);

function plan(changes: Partial<DisplaySetup> = {}) {
  const setup = { ...usualSetup(family), ...changes };
  return { setup, tiles: planBlock(openings, [{ width: 12, depth: 37 }], setup) };
}

/** Boxes of the openings in a part, in its millimetres. */
function boxesIn(tile: ReturnType<typeof plan>['tiles'][number], scale: number) {
  return tile.cells.map(({ opening, origin: [x, y] }) => {
    const { minX, minY, maxX, maxY } = printedBox(opening.ring, scale);
    return { left: x + minX, low: y + minY, right: x + maxX, high: y + maxY };
  });
}

test('rows begin at the top left, and walls are nowhere thinner than asked for', () => {
  const { setup, tiles } = plan({ columns: 4 });
  const [tile, ...others] = tiles;
  expect(others).toEqual([]);
  const boxes = boxesIn(tile, setup.scale);
  expect(boxes[0].low).toBeGreaterThan(boxes[4].high);
  expect(boxes[1].left).toBeGreaterThan(boxes[0].right);
  boxes.forEach((box, i) => {
    expect(Math.min(box.left, box.low, tile.width - box.right, tile.depth - box.high)).toBeGreaterThanOrEqual(
      setup.wall - 1e-9,
    );
    for (const other of boxes.slice(i + 1)) {
      const [across, along] = [
        Math.max(other.left - box.right, box.left - other.right),
        Math.max(other.low - box.high, box.low - other.high),
      ];
      expect(Math.max(across, along)).toBeGreaterThanOrEqual(setup.wall - 1e-9);
    }
  });
});

test('a small bed cuts it between openings into parts that it takes', () => {
  const { setup, tiles } = plan({ columns: 10, bed: [60, 60] });
  expect(tiles.length).toBeGreaterThan(2);
  expect(tiles.flatMap(({ cells }) => cells.map(({ opening }) => opening.id))).toEqual(openings.map(({ id }) => id));
  for (const { width, depth } of tiles) expect(width <= setup.bed[0] && depth <= setup.bed[1]).toBe(true);
});

test('a bed that is too small for one opening gets parts of one opening', () => {
  const { tiles } = plan({ bed: [10, 10] });
  expect(tiles.map(({ cells }) => cells.length)).toEqual(openings.map(() => 1));
});

test('no openings, no block; fewer openings than columns make one row as wide as they are', () => {
  const { setup } = plan();
  expect(planBlock([], [], setup)).toEqual([]);
  const [tile] = planBlock(openings.slice(0, 2), [], { ...setup, columns: 40 });
  expect(tile.width).toBeLessThan(40);
});

test('a rounded rectangle keeps within its sides, counter-clockwise', () => {
  const loop = roundedRectangle(1, 2, 10, 6, 2);
  const xs = loop.map(([x]) => x);
  const ys = loop.map(([, y]) => y);
  expect(
    [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)].map((v) => Math.round(v * 1e9) / 1e9),
  ).toEqual([1, 11, 2, 8]);
  const twice = loop.reduce((sum, [x, y], i) => {
    const [u, v] = loop[(i + 1) % loop.length];
    return sum + x * v - u * y;
  }, 0);
  expect(twice / 2).toBeCloseTo(60 - (16 - 0.5 * 32 * 4 * Math.sin(Math.PI / 16)), 9);
  expect(roundedRectangle(0, 0, 1, 1, 0)).toHaveLength(4);
});
