import { describe, expect, test } from 'vitest';
import { makeDrawn } from '../../../src/geom/vertex.ts';
import { catalogue } from '../../../src/jobs/catalogue.ts';
import { JobCancelled, type JobContext } from '../../../src/jobs/job.ts';
import { type GrayPicture, WHITE } from '../../../src/trace/gray-picture.ts';
import { likeliestLoop, loopRound, sizeOfLoop } from '../../../src/trace/pick-loop.ts';
import type { PlaneMap } from '../../../src/trace/plane-map.ts';
import { MOST_CORNERS } from '../../../src/trace/trace-outline.ts';
import { MOST_LOOPS, type TraceSettings } from '../../../src/trace/trace-picture.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';
import { coverage } from '../../kit/coverage.ts';
import { outlineDistance } from '../../kit/outline-distance.ts';
import { traced } from '../../kit/traced.ts';

/** A pixel is 20 um; y is turned up, the picture's lower left corner is the origin. */
const PIXEL = 20_000;
const toProfile = (height: number): PlaneMap => [PIXEL, 0, 0, 0, -PIXEL, PIXEL * height, 0, 0, 1];

const SETTINGS: TraceSettings = {
  ...{ threshold: 0.475 * WHITE, shade: 'dark', blur: 0, leastArea: 1e10, tolerance: 4_000, sharpen: true },
};

type Ring = readonly { readonly x: number; readonly y: number }[];

const box = (x: number, y: number, wide: number, tall: number): Ring => [
  { x, y },
  { x, y: y + tall },
  { x: x + wide, y: y + tall },
  { x: x + wide, y },
];

/** A light sheet with dark shapes, by exact coverage; hole rings are given the other way round. */
function sheet(width: number, height: number, rings: readonly Ring[], dark = 0.05, light = 0.9): GrayPicture {
  const covered = coverage(rings, width, height);
  return { width, height, light: Uint16Array.from(covered, (c) => Math.round(WHITE * (light + (dark - light) * c))) };
}

const find = (picture: GrayPicture, change: Partial<TraceSettings> = {}) =>
  traced(picture, toProfile(picture.height), { ...SETTINGS, ...change });

describe('the outlines of a picture', () => {
  test('a dark rectangle comes out as four corners of its size to a thousandth of a pixel', () => {
    const { loops } = find(sheet(80, 60, [box(20.25, 10.5, 30, 40)]));
    expect(loops).toHaveLength(1);
    const [loop] = loops;
    expect(loop.vertices).toHaveLength(4);
    const { width, height } = sizeOfLoop(loop);
    expect(width).toBeCloseTo(30 * PIXEL, -2);
    expect(height).toBeCloseTo(40 * PIXEL, -2);
    // A pixel three quarters covered and a clear one: half lies at 19.5 + 0.5 / 0.75, a twelfth of a pixel off the edge.
    expect(loop.at.x).toBeCloseTo((19.5 + 2 / 3) * PIXEL, -2);
    expect(loop.at.y).toBeCloseTo(9.5 * PIXEL, -2);
    expect(loop).toMatchObject({ hole: false, touchesEdge: false, solid: 1 });
  });

  test('light on dark is the same with the other shade', () => {
    const negative = sheet(80, 60, [box(20.25, 10.5, 30, 40)], 0.9, 0.05);
    const [light] = find(negative, { shade: 'light' }).loops;
    const [dark] = find(sheet(80, 60, [box(20.25, 10.5, 30, 40)])).loops;
    expect(outlineDistance(light.vertices, dark.vertices)).toBeLessThan(0.001 * PIXEL);
  });

  test('a frame is told from a part: it has little ink, and its hole is a loop of its own', () => {
    const frame = [box(5, 5, 90, 70), [...box(9, 9, 82, 62)].reverse()];
    const { loops } = find(sheet(100, 80, [...frame, box(40, 20, 20, 40)]));
    expect(loops.map(({ hole, solid }) => [hole, solid > 0.5])).toEqual([
      [false, false],
      [true, false],
      [false, true],
    ]);
    expect(likeliestLoop(loops)).toBe(2);
    expect(loopRound(loops, { x: 50 * PIXEL, y: 40 * PIXEL })).toBe(2);
    expect(loopRound(loops, { x: 20 * PIXEL, y: 40 * PIXEL })).toBe(1);
    expect(loopRound(loops, { x: 2 * PIXEL, y: 2 * PIXEL })).toBe(-1);
  });

  test('what the edge of the picture cuts off is told, and not picked before a whole one', () => {
    const { loops } = find(sheet(100, 80, [box(0, 10, 50, 60), box(70, 30, 15, 20)]));
    expect(loops.map(({ touchesEdge }) => touchesEdge)).toEqual([true, false]);
    expect(likeliestLoop(loops)).toBe(1);
  });

  test('an empty picture has none, and nothing is picked', () => {
    const { loops } = find(sheet(30, 30, []));
    expect(loops).toEqual([]);
    expect(likeliestLoop(loops)).toBe(-1);
  });

  test('specks are left out, and grain costs neither time nor the outline', () => {
    const random = randomNumbers(5);
    const clean = sheet(400, 400, [box(100, 80, 200, 240)]);
    const grain = { ...clean, light: clean.light.map((v) => (random.chance(0.08) ? WHITE - v : v)) };
    const { loops, specks } = find(grain, { blur: 0, leastArea: 4e10 });
    expect(specks).toBeGreaterThan(2000);
    expect(loops.length).toBeLessThanOrEqual(MOST_LOOPS);
    const blurred = find(grain, { blur: 2, leastArea: 4e10 });
    const { width, height } = sizeOfLoop(blurred.loops[0]);
    expect(Math.abs(width - 200 * PIXEL)).toBeLessThan(2 * PIXEL);
    expect(Math.abs(height - 240 * PIXEL)).toBeLessThan(2 * PIXEL);
  });

  test('a ragged line keeps below the most corners, by a coarser tolerance that is told', () => {
    const random = randomNumbers(9);
    const ragged = Array.from({ length: 6000 }, (_, i) => {
      const angle = (-2 * Math.PI * i) / 6000;
      const r = 380 + random.between(-6, 6);
      return { x: 400 + r * Math.cos(angle), y: 400 + r * Math.sin(angle) };
    });
    const [loop] = find(sheet(800, 800, [ragged]), { tolerance: 500, leastArea: 1e12 }).loops;
    expect(loop.vertices.length).toBeLessThanOrEqual(MOST_CORNERS);
    expect(loop.tolerance).toBeGreaterThan(500);
    expect(makeDrawn(loop.vertices).ok).toBe(true);
    expect(loop.deviation).toBeLessThanOrEqual(loop.tolerance + PIXEL);
  });

  test('without sharpening no part of the contour is further off than the tolerance', () => {
    const star = Array.from({ length: 20 }, (_, i) => {
      const r = i % 2 === 0 ? 140 : 60;
      return { x: 150 + r * Math.cos((-Math.PI * i) / 10), y: 150 + r * Math.sin((-Math.PI * i) / 10) };
    });
    for (const tolerance of [1_000, 5_000, 20_000]) {
      const [loop] = find(sheet(300, 300, [star]), { tolerance, sharpen: false }).loops;
      expect(loop.deviation).toBeLessThanOrEqual(tolerance + 1);
      expect(loop.sharpened).toBe(0);
    }
  });

  test('a corner is moved by a pixel at most: a rounding of four pixels stays round', () => {
    const r = 4;
    const quarter = (cx: number, cy: number, from: number) =>
      Array.from({ length: 13 }, (_, k) => {
        const angle = from - (k / 12) * (Math.PI / 2);
        return { x: cx + r * Math.cos(angle), y: cy + r * Math.sin(angle) };
      });
    const rounded = [
      ...quarter(56, 46, Math.PI / 2),
      ...quarter(56, 14, 0),
      ...quarter(14, 14, -Math.PI / 2),
      ...quarter(14, 46, Math.PI),
    ];
    const [loop] = find(sheet(70, 60, [rounded])).loops;
    expect(loop.vertices.length).toBeGreaterThanOrEqual(12);
    // The corner of the square round it is 4 (sqrt 2 - 1) = 1.66 pixels off.
    const nearest = Math.min(...loop.vertices.map((v) => Math.hypot(v.x, v.y)));
    expect(nearest).toBeGreaterThan(1.4 * PIXEL);
  });

  test('what would be larger than any section is not made an outline, and that is said at once', () => {
    const map: PlaneMap = [1e6, 0, 0, 0, -1e6, 0, 0, 0, 1];
    const found = traced(sheet(80, 60, [box(10, 5, 20, 48)]), map, { ...SETTINGS, leastArea: 1e12 });
    expect(found.loops).toEqual([]);
    expect(found.faults[0]).toEqual({ what: expect.stringMatching(/larger than 47 mm/), cure: 'Set the scale first.' });
  });

  test('beyond the horizon of the perspective there is no outline, with words', () => {
    const map: PlaneMap = [PIXEL, 0, 0, 0, -PIXEL, 0, 0, -0.05, 1];
    const found = traced(sheet(60, 60, [box(10, 10, 20, 40)]), map, SETTINGS);
    expect(found.loops).toEqual([]);
    expect(found.faults[0].what).toMatch(/horizon/);
  });
});

describe('the job', () => {
  const context = (cancelAfter: number): JobContext & { told: number } => {
    let clock = 0;
    let pauses = 0;
    return {
      told: 0,
      progress() {
        this.told++;
      },
      cancelled: () => pauses > cancelAfter,
      pause: async () => {
        pauses++;
      },
      now: () => {
        clock += 25;
        return clock;
      },
    };
  };
  const picture = sheet(300, 300, [box(50, 50, 200, 200)]);
  const input = { picture, toProfile: toProfile(300), settings: { ...SETTINGS, blur: 2 } };

  test('gives the same as at once, and tells how far it is', async () => {
    const shown = context(1e9);
    expect(await catalogue.tracePicture(input, shown)).toEqual(find(picture, { blur: 2 }));
    expect(shown.told).toBeGreaterThan(5);
  });

  test('hears a cancel between the rows', async () => {
    await expect(catalogue.tracePicture(input, context(3))).rejects.toThrow(JobCancelled);
  });
});
