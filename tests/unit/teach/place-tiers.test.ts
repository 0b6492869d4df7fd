import { describe, expect, test } from 'vitest';
import type { Profile } from '../../../src/profile/profile.ts';
import { type PlacedTiers, placeTiers } from '../../../src/teach/place-tiers.ts';
import type { TierRows } from '../../../src/teach/tier-rows.ts';
import { nestedSets, type SetDiagram, scatteredSets } from '../../cases/set-diagrams.ts';

const PROFILE = {} as Profile;

/** The rows of an order of sets, a plate for each; empty tiers are left out, as the rows of a family are. */
function rowsOf({ tiers, covers }: SetDiagram): TierRows {
  const used = [...new Set(tiers)].sort((a, b) => a - b);
  const rows = used.map((tier) => ({
    words: `tier ${tier}`,
    plates: tiers.flatMap((each, i) => {
      const onto = covers.filter(([, upper]) => upper === i).map(([lower]) => `n${lower}`);
      return each === tier ? [{ id: `n${i}`, profile: PROFILE, name: `Blank ${i}`, count: 1, onto }] : [];
    }),
  }));
  return { rows, of: tiers.length };
}

/** All-section over a group of five over four groups of two or three over nine, some of them passed by a line. */
const NINE: SetDiagram = {
  tiers: [0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 3],
  covers: [
    [0, 9],
    [4, 9],
    [2, 10],
    [3, 10],
    [5, 10],
    [4, 11],
    [6, 11],
    [7, 12],
    [8, 12],
    [9, 13],
    [12, 13],
    [2, 13],
    [6, 13],
    [13, 14],
    [10, 14],
    [11, 14],
    [1, 14],
  ],
};

const ROOM = {
  width: 1190,
  height: 640,
  type: 26,
  between: 44,
  highest: 220,
  widthOf: (text: string) => text.length * 14.5,
};
const PAPER = {
  width: 267,
  height: 110,
  type: 5.2,
  between: 8,
  highest: 46,
  widthOf: (text: string) => text.length * 2.9,
};

const CASES: [string, SetDiagram][] = [
  ['a hospital of nine', NINE],
  ['one blank', { tiers: [0], covers: [] }],
  ['three side by side', { tiers: [0, 0, 0], covers: [] }],
  ['8 nested sets', nestedSets(8, 1)],
  ['20 scattered sets', scatteredSets(20, 4)],
  ['60 nested sets', nestedSets(60, 2)],
  [
    'a chain of 18',
    {
      tiers: Array.from({ length: 18 }, (_, i) => i),
      covers: Array.from({ length: 17 }, (_, i) => [i, i + 1] as const),
    },
  ],
];

/** How much of a segment lies inside a box whose border is drawn in by a little, 0 to 1, by samples. */
function runsInside(points: PlacedTiers['lines'][number]['points'], box: [number, number, number, number]): boolean {
  const [left, top, right, foot] = box;
  return points.slice(1).some(([u, v], i) => {
    const [x, y] = points[i];
    return Array.from({ length: 201 }, (_, k) => k / 200).some((t) => {
      const at = [x + (u - x) * t, y + (v - y) * t];
      return at[0] > left && at[0] < right && at[1] > top && at[1] < foot;
    });
  });
}

describe.each([
  ['a screen', ROOM],
  ['paper', PAPER],
])('tiers on %s', (_, room) => {
  test.each(CASES)('%s: plates stand apart in the room, and no line runs through one', (_name, diagram) => {
    const rows = rowsOf(diagram);
    const { plates, lines, high, tops, more } = placeTiers(rows, room);
    const slack = room.type / 1000;
    expect(plates.length + more.reduce((sum, each) => sum + each, 0)).toBe(diagram.tiers.length);
    for (const [i, { x, top, row, wide }] of plates.entries()) {
      expect(x - wide / 2).toBeGreaterThan(-slack);
      expect(x + wide / 2).toBeLessThan(room.width + slack);
      expect(top).toBe(tops[row]);
      const beside = plates.filter((other, k) => k > i && other.row === row);
      for (const other of beside) expect(Math.abs(other.x - x)).toBeGreaterThan((wide + other.wide) / 2 - slack);
    }
    expect(Math.min(...tops)).toBeGreaterThan(-slack);
    expect(Math.max(...tops) + high).toBeLessThan(room.height + slack);
    for (const { points } of lines)
      for (const [, y] of points) {
        expect(y).toBeGreaterThan(-slack);
        expect(y).toBeLessThan(room.height + slack);
      }
    const thin = 2 * slack;
    for (const { points } of lines)
      for (const { x, top, wide } of plates)
        expect(runsInside(points, [x - wide / 2 + thin, top + thin, x + wide / 2 - thin, top + high - thin])).toBe(
          false,
        );
  });

  test('rows take the whole height, with no room for lines over the highest', () => {
    const { high, tops } = placeTiers(rowsOf(NINE), room);
    expect(Math.min(...tops)).toBeCloseTo(0, 6);
    expect(Math.max(...tops) + high).toBeCloseTo(room.height, 6);
  });

  test('a line begins on the middle of the lower plate and ends under the middle of the upper one', () => {
    const { plates, lines, high } = placeTiers(rowsOf(NINE), room);
    expect(lines).toHaveLength(NINE.covers.length);
    const placeOf = new Map(plates.map((placed) => [placed.plate.id, placed]));
    for (const { from, to, row, points } of lines) {
      const [lower, upper] = [placeOf.get(from.id), placeOf.get(to.id)];
      expect(points[0][0]).toBeCloseTo(lower?.x ?? Number.NaN, 6);
      expect(points[0][1]).toBeCloseTo(lower?.top ?? Number.NaN, 6);
      expect(points.at(-1)?.[0]).toBeCloseTo(upper?.x ?? Number.NaN, 6);
      expect(points.at(-1)?.[1]).toBeCloseTo((upper?.top ?? Number.NaN) + high, 6);
      expect(row).toBe(upper?.row);
    }
  });
});

test('a row too long for the room says how many it leaves out, and keeps the first', () => {
  const many: SetDiagram = {
    tiers: [...Array<number>(60).fill(0), 1],
    covers: [
      [0, 60],
      [1, 60],
    ],
  };
  const { plates, more } = placeTiers(rowsOf(many), ROOM);
  expect(more[0]).toBeGreaterThan(40);
  expect(plates.filter(({ row }) => row === 0)).toHaveLength(60 - more[0]);
  expect(plates.some(({ plate }) => plate.id === 'n0')).toBe(true);
  expect(more[1]).toBe(0);
});

test.each([
  ['a screen', ROOM],
  ['paper', PAPER],
])('on %s a plate that reaches further to both sides than two under it leaves these apart', (_, room) => {
  const rows = rowsOf({
    tiers: [0, 0, 1],
    covers: [
      [0, 2],
      [1, 2],
    ],
  });
  const [low, high] = rows.rows;
  const long = high.plates.map((plate) => ({ ...plate, name: 'Gemeenschappelijkwaterschapsblank' }));
  const { plates } = placeTiers({ ...rows, rows: [low, { ...high, plates: long }] }, room);
  const [left, right] = plates.filter(({ row }) => row === 0).sort((a, b) => a.x - b.x);
  expect(right.x - left.x).toBeGreaterThan((left.wide + right.wide) / 2);
});
