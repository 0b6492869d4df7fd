// A bar 2 x 6 mm in a slot 2.1 x 6.6 mm, printed 4 times as large with a fitting gap of 0.15 mm: the coupon's blade is
// 2 * 4 - 2 * 0.15 = 7.7 mm wide in an opening of 8.4 mm, so 0.35 mm are left on each side. A block 2.6 mm wide overlaps by
// 0.5 mm in all. All expected places below follow from that.
import { beforeAll, describe, expect, test } from 'vitest';
import { letterTops } from '../../../src/app/canvas/solid/letter-tops.ts';
import type { Pose, ShownSolid, SolidPoint } from '../../../src/app/canvas/solid/solid-picture.ts';
import { withoutLetters } from '../../../src/app/canvas/solid/without-letters.ts';
import { setPicture } from '../../../src/app/panels/publish/block-set-picture.ts';
import { COUPON, tryPicture } from '../../../src/app/panels/publish/block-try-picture.ts';
import { blockPair, insertedBy, insertionRange, printedFit } from '../../../src/app/state/publish/block-pair.ts';
import { explainPlacement } from '../../../src/fit/explain-placement.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { writeStl } from '../../../src/interchange/print3d/write-stl.ts';
import { buildDisplaySet } from '../../../src/jobs/build-display-set.ts';
import type { JobContext } from '../../../src/jobs/job.ts';
import type { DisplaySet } from '../../../src/print3d/display-set.ts';
import { usualSetup } from '../../../src/print3d/display-setup.ts';
import { joinParts } from '../../../src/print3d/join-parts.ts';
import { judge } from '../../kit/judge.ts';

const rectangle = (width: number, height: number) => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
];

const read = readFamily(
  JSON.stringify({
    format: 'sectionary-family',
    version: 1,
    name: 'Plain',
    units: 'mm',
    runningClearance: 0.03,
    profiles: [
      { id: 'slot', kind: 'opening', name: 'Slot keyway', outline: rectangle(2.1, 6.6) },
      { id: 'bar', kind: 'blank', name: 'Bar blank', outline: rectangle(2, 6) },
      { id: 'bar-long', kind: 'blank', name: 'Bar blank, long', outline: rectangle(2, 6) },
      { id: 'wide', kind: 'blank', name: 'Wide blank', outline: rectangle(2.6, 6) },
    ],
  }),
);
if (!read.ok) throw new Error(JSON.stringify(read.faults));
const { family } = read.document;
const ring = (id: string) => {
  const found = family.profiles.find((profile) => profile.id === id);
  if (!found) throw new Error(id);
  return found.ring;
};

const ALONE: JobContext = {
  progress: () => {},
  cancelled: () => false,
  pause: async () => {},
  now: () => performance.now(),
};

let set: DisplaySet;
beforeAll(async () => {
  set = await buildDisplaySet({ family, setup: { ...usualSetup(family), columns: 1 } }, ALONE);
});

const applied = (pose: Pose, [x, y, z]: SolidPoint) =>
  [0, 1, 2].map((i) => pose[i] * x + pose[4 + i] * y + pose[8 + i] * z + pose[12 + i]);

/** The corners of a shown solid where they are in the scene. */
function cornersOf({ mesh, pose }: ShownSolid): number[][] {
  return Array.from({ length: mesh.positions.length / 3 }, (_, i) =>
    applied(pose, [mesh.positions[3 * i], mesh.positions[3 * i + 1], mesh.positions[3 * i + 2]]),
  );
}

const span = (values: readonly number[]) => [Math.min(...values), Math.max(...values)];

function tried(entrantId: string, wished: number | null) {
  const pair = blockPair(family, set, { entrantId, openingId: 'slot' });
  if (!pair?.coupon || !pair.frame) throw new Error('not in the set');
  const fit = judge(ring('slot'), ring(entrantId));
  const range = insertionRange(pair.coupon, fit.verdict);
  const inserted = insertedBy(range, wished);
  const { collisions } = explainPlacement(ring('slot'), ring(entrantId), fit.placement);
  const { coupon, frame } = pair;
  const picture = tryPicture(set, {
    ...{ coupon, frame, placement: fit.placement, inserted, waits: range.waits, through: false },
    opening: ring('slot'),
    collisions: fit.verdict === 'blocked' && inserted >= 0 ? collisions : [],
  });
  const [block, blade] = ['block', COUPON].map((id) => picture.solids.find((solid) => solid.id === id));
  if (!block || !blade) throw new Error('not shown');
  return { ...pair, coupon, frame, fit, range, inserted, picture, block: cornersOf(block), blade: cornersOf(blade) };
}

describe('a coupon before the block', () => {
  test('that goes in stops with its shoulder at the front, its blade in the middle of the opening', () => {
    const { coupon, frame, inserted, block, blade, fit } = tried('bar', 1e9);
    expect(fit.verdict).toBe('enters');
    expect(inserted).toBe(coupon.bladeLength);
    const front = -frame.depth;
    expect(span(block.map(([, y]) => y))[1]).toBeCloseTo(0, 4);
    // Behind the shoulder there is the blade alone.
    const within = blade.filter(([, y]) => y > front + 0.01);
    expect(span(within.map(([, y]) => y))[1]).toBeCloseTo(front + coupon.bladeLength, 4);
    const [left, right] = span(within.map(([x]) => x));
    const [at] = frame.at;
    expect(left - at).toBeCloseTo(0.35, 3);
    expect(at + 8.4 - right).toBeCloseTo(0.35, 3);
    // Upright: the section's height is up in the scene.
    const [low, high] = span(within.map(([, , z]) => z));
    expect(high - low).toBeCloseTo(6 * 4 - 2 * 0.15, 3);
    expect(low).toBeGreaterThan(frame.at[1]);
  });

  test('that is blocked stops with its tip at the front, the overlap in that plane', () => {
    const { fit, frame, inserted, blade, picture } = tried('wide', 1e9);
    expect(fit.verdict).toBe('blocked');
    expect(inserted).toBe(0);
    expect(span(blade.map(([, y]) => y))[1]).toBeCloseTo(-frame.depth, 4);
    const clashes = picture.clashes;
    const places =
      clashes?.parts.flatMap(({ outer }) => outer.map(({ x, y }) => applied(clashes.pose, [x, y, 0]))) ?? [];
    expect(new Set(places.map(([, y]) => Math.round(y * 1e4) / 1e4))).toEqual(new Set([-frame.depth - 0.05]));
    const [left, right] = span(places.map(([x]) => x));
    expect(right - left).toBeCloseTo(2.6 * 4, 3);
  });

  test('waits a blade before it, so that its outlined opening is seen, and the picture does not jump while it moves', () => {
    const { blade, coupon, frame, picture } = tried('bar', null);
    expect(span(blade.map(([, y]) => y))[1]).toBeCloseTo(-frame.depth - coupon.bladeLength, 4);
    const { target } = picture;
    const corners = target?.loops.flat().map(({ x, y }) => applied(target.pose, [x, y, 0])) ?? [];
    expect(span(corners.map(([x]) => x))[1] - span(corners.map(([x]) => x))[0]).toBeCloseTo(2.1 * 4, 3);
    for (const [, y] of corners) expect(y).toBeCloseTo(-frame.depth - 0.05, 4);
    expect(tried('bar', 3).picture.room).toEqual(picture.room);
    expect(tried('bar', 1e9).picture.room).toEqual(picture.room);
    expect(tried('wide', null).picture.clashes).toBeNull();
  });

  test('of a blank without one is that of another with the same outline', () => {
    const { coupon } = tried('bar-long', null);
    expect(coupon.profile).toBe('bar');
    expect(blockPair(family, set, { entrantId: 'bar', openingId: null })).toBeNull();
  });
});

test('the gap adds to what is left, and takes off what overlaps', () => {
  expect(printedFit(50_000, 4, 0.2)).toEqual({ scaled: 0.2, gap: 0.2, printed: 0.4 });
  expect(printedFit(-250_000, 4, 0.2).printed).toBeCloseTo(-0.8, 9);
});

describe('the set', () => {
  test('stands on its beds, and one bed alone is shown with its parts only', () => {
    const all = setPicture(set, 'Bar blank', null);
    expect(all.solids.map(({ id }) => id)).toEqual(set.parts.map(({ name }) => name));
    expect(all.solids.filter(({ picked }) => picked).map(({ id }) => id)).toEqual(['Bar blank']);
    for (const solid of all.solids) expect(span(cornersOf(solid).map(([, , z]) => z))[0]).toBeCloseTo(0, 4);
    expect(all.beds).toHaveLength(set.beds);
    const one = setPicture(set, null, 0);
    expect(one.beds).toMatchObject([{ x: 0, y: 0, size: set.bed }]);
    expect(one.solids).toHaveLength(set.parts.filter(({ bed }) => bed === 0).length);
  });

  test('on several beds has each part on its own, all beds in the picture and none over another', async () => {
    const bed = [50, 62] as const;
    const many = await buildDisplaySet(
      {
        family,
        setup: {
          ...usualSetup(family),
          bed,
          openings: [],
          blanks: ['bar', 'bar-long', 'wide'],
          board: false,
          scale: 9,
        },
      },
      ALONE,
    );
    expect(many.beds).toBeGreaterThan(2);
    const picture = setPicture(many, null, null);
    for (const [i, solid] of picture.solids.entries()) {
      const at = picture.beds[many.parts[i].bed];
      for (const [axis, from] of [at.x, at.y].entries()) {
        const [least, most] = span(cornersOf(solid).map((corner) => corner[axis]));
        expect(least).toBeGreaterThan(from - 0.01);
        expect(most).toBeLessThan(from + bed[axis] + 0.01);
      }
    }
    const places = picture.beds.map(({ x, y }) => `${x} ${y}`);
    expect(new Set(places).size).toBe(many.beds);
    for (const { x, y } of picture.beds) expect(picture.room).toContainEqual([x + bed[0], y + bed[1], 0]);
    // About as wide as deep.
    const [[left, right], [front, back]] = [0, 1].map((axis) => span(picture.room.map((point) => point[axis])));
    expect(Math.max(right - left, back - front) / Math.min(right - left, back - front)).toBeLessThan(2.2);
  });

  test('of which little stands on its bed is shown with a piece of it', () => {
    const piece = setPicture({ ...set, bed: [900, 900] }, null, 0).beds[0];
    const ends = [0, 1].map((axis) => Math.max(...set.parts.map(({ place, size }) => place[axis] + size[axis])));
    for (const axis of [0, 1]) {
      expect(piece.drawn[axis]).toBeGreaterThan(ends[axis]);
      expect(piece.drawn[axis]).toBeLessThan(ends[axis] + 40);
    }
  });

  test('has its letters in their colour on top only', () => {
    for (const part of set.parts) {
      const { triangles, topsFrom } = letterTops(part);
      expect([...triangles].sort()).toEqual([...part.triangles].sort());
      expect([...triangles.slice(0, 3 * part.lettersFrom)]).toEqual([...part.triangles.slice(0, 3 * part.lettersFrom)]);
      expect(topsFrom).toBeGreaterThan(part.lettersFrom);
      const axis = part.kind === 'coupon' ? 0 : 2;
      const levels = [...triangles.slice(3 * topsFrom)].map((corner) => part.positions[3 * corner + axis]);
      for (const level of levels) expect(level).toBeCloseTo(part.size[axis], 3);
    }
  });

  test('is joined into one surface with every part in its place', () => {
    const joined = joinParts(set.parts);
    expect(joined.triangles.length).toBe(set.parts.reduce((sum, { triangles }) => sum + triangles.length, 0));
    const last = set.parts[set.parts.length - 1];
    const [corner] = joined.triangles.slice(-last.triangles.length);
    const own = last.triangles[0];
    for (const i of [0, 1, 2])
      expect(joined.positions[3 * corner + i]).toBeCloseTo(last.positions[3 * own + i] + last.place[i], 4);
    expect(writeStl(joined)).toHaveLength(84 + (50 * joined.triangles.length) / 3);
  });

  test('is drawn without the edges of its letters', () => {
    const [block] = set.parts;
    expect(block.lettersFrom).toBeLessThan(block.triangles.length / 3);
    const letter = block.triangles.slice(3 * block.lettersFrom, 3 * block.lettersFrom + 2);
    const at = (corner: number) => [...block.positions.slice(3 * corner, 3 * corner + 3)];
    const edge = [...at(letter[0]), ...at(letter[1])];
    const outer = [0, 0, 0, block.size[0], 0, 0];
    expect([...withoutLetters([...edge, ...outer], block)]).toEqual(outer.map(Math.fround));
  });
});
