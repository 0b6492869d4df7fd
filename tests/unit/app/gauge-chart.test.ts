import { expect, test } from 'vitest';
import { heightUnder, makeAxis } from '../../../src/app/state/gauge/chart-scale.ts';
import { curvePath, underCurvePath } from '../../../src/app/state/gauge/curve-path.ts';
import { dotLabels } from '../../../src/app/state/gauge/dot-labels.ts';

const MM = 1e6;

test('an axis ends at a round number beyond the most and counts in 1, 2, 2.5 or 5', () => {
  const axis = makeAxis('thickness', 2.1 * MM, 10, 'mm');
  expect(axis.unit).toBe('mm');
  expect(axis.ticks.map(({ text }) => text)).toEqual([
    '0.00',
    '0.25',
    '0.50',
    '0.75',
    '1.00',
    '1.25',
    '1.50',
    '1.75',
    '2.00',
    '2.25',
  ]);
  expect(axis.end).toBeCloseTo(2.25 * MM, 3);
  expect(makeAxis('height', 8.5 * MM, 12, 'mm').ticks.at(-1)?.text).toBe('9');
});

test('in inch units heights are inches and thicknesses thousandths', () => {
  const height = makeAxis('height', 0.335 * 25.4 * MM, 8, 'in');
  expect(height.unit).toBe('in');
  expect(height.ticks[1].text).toBe('0.05');
  const thickness = makeAxis('thickness', 0.0827 * 25.4 * MM, 5, 'in');
  expect(thickness.unit).toBe('thou');
  expect(thickness.ticks.map(({ text }) => text)).toEqual(['0', '20', '40', '60', '80', '100']);
});

const PLOT = {
  frame: { left: 50, top: 20, width: 900, height: 400 },
  heights: makeAxis('height', 9 * MM, 9, 'mm'),
  thicknesses: makeAxis('thickness', 2 * MM, 4, 'mm'),
};

test('a curve runs level from the axis, over its knots, and down to nothing', () => {
  const knots = [
    { height: 3 * MM, thickness: 2 * MM },
    { height: 3 * MM, thickness: 1 * MM },
    { height: 9 * MM, thickness: 1 * MM },
  ];
  expect(curvePath(PLOT, knots)).toBe('M50 20L350 20L350 220L950 220L950 420');
  expect(underCurvePath(PLOT, knots)).toBe('M50 20L350 20L350 220L950 220L950 420L50 420Z');
  expect(curvePath(PLOT, [])).toBe('');
});

test('a place of the picture is a height within the axis', () => {
  expect(heightUnder(PLOT.frame, PLOT.heights, 350)).toBeCloseTo(3 * MM, 3);
  expect(heightUnder(PLOT.frame, PLOT.heights, 0)).toBe(0);
  expect(heightUnder(PLOT.frame, PLOT.heights, 5000)).toBeCloseTo(9 * MM, 3);
});

test('labels keep clear of each other, of dots and of the edge; without any room they are left out', () => {
  const room = { left: 0, top: 0, right: 400, bottom: 200 };
  const [alone] = dotLabels([{ id: 'a', x: 100, y: 100, lines: ['Strip'] }], room);
  expect(alone).toMatchObject({ anchor: 'start', x: 115 });
  const [edge] = dotLabels([{ id: 'a', x: 390, y: 100, lines: ['Strip'] }], room);
  expect(edge).toMatchObject({ anchor: 'end', x: 375 });
  const pair = dotLabels(
    [
      { id: 'a', x: 100, y: 100, lines: ['Strip'] },
      { id: 'b', x: 130, y: 100, lines: ['Strip'] },
    ],
    room,
  );
  expect(pair.map(({ id, anchor }) => `${id} ${anchor}`)).toEqual(['a end', 'b start']);
  const narrow = { left: 90, top: 90, right: 110, bottom: 110 };
  expect(dotLabels([{ id: 'a', x: 100, y: 100, lines: ['Strip'] }], narrow)).toEqual([]);
});

test('a dot with room neither right nor left has its name over it', () => {
  const room = { left: 60, top: 0, right: 140, bottom: 200 };
  const [label] = dotLabels([{ id: 'a', x: 100, y: 100, lines: ['Feeler'] }], room);
  expect(label).toMatchObject({ anchor: 'middle', x: 100 });
});

test('every dot of a crowd has its name, those in the middle with a line to it', () => {
  const room = { left: 0, top: 0, right: 420, bottom: 300 };
  const dots = [0, 1, 2, 3, 4].flatMap((i) =>
    [0, 1].map((k) => ({ id: `${i}${k}`, x: 160 + 26 * i, y: 140 + 24 * k, lines: [`Feeler ${i}${k}`, '0.3 mm'] })),
  );
  const labels = dotLabels(dots, room);
  expect(labels.map(({ id }) => id)).toEqual(dots.map(({ id }) => id));
  expect(labels.filter(({ lead }) => lead !== null).length).toBeGreaterThan(0);
  for (const { id, lead } of labels) {
    const dot = dots.find((one) => one.id === id);
    if (lead && dot) expect(Math.hypot(lead.x - dot.x, lead.y - dot.y)).toBeGreaterThan(20);
  }
});

test('a dot in little room keeps the first line of its name', () => {
  const room = { left: 0, top: 90, right: 200, bottom: 120 };
  const [label] = dotLabels([{ id: 'a', x: 100, y: 100, lines: ['Feeler', '0.3 mm, upright'] }], room);
  expect(label).toMatchObject({ anchor: 'start', lines: ['Feeler'] });
});
