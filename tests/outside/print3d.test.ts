// Display sets, written as 3MF and STL, opened by programs that share no code with this project, all from Debian 12:
// - Assimp 5.2.5 (assimp-utils; Open Asset Import Library, BSD licence) reads corners, triangles, places and colours of both;
// - ADMesh 0.98.4 (admesh; A. Martin and others, GPL) says of every STL file whether it is closed and turned outwards;
// - GEOS 3.11.1 (geos-bin; LGPL) puts cuts together and lays them over each other;
// - zipfile and xml of Python 3.11 read names, colours and the unit of the 3MF.
// What a 3MF file has to hold: 3MF Core Specification 1.4.0, 3MF Consortium, chapters 3 and 4. Volumes: single precision is all
// that ADMesh sums in, so they are summed again in double precision over what Assimp read (divergence theorem).

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import type { Family } from '../../src/family/family.ts';
import { plainConditions } from '../../src/fit/conditions.ts';
import { judgePair, openingUnder } from '../../src/fit/judge-pair.ts';
import { makeRing } from '../../src/geom/ring.ts';
import { write3mf } from '../../src/interchange/print3d/write-3mf.ts';
import { writeStl } from '../../src/interchange/print3d/write-stl.ts';
import { buildDisplaySet } from '../../src/jobs/build-display-set.ts';
import type { DisplaySet, SolidPart } from '../../src/print3d/display-set.ts';
import { type DisplaySetup, usualSetup } from '../../src/print3d/display-setup.ts';
import { poseCoupon } from '../../src/print3d/pose-coupon.ts';
import type { Profile, ProfileKind } from '../../src/profile/profile.ts';
import { checkWithAdmesh } from '../kit/check-with-admesh.ts';
import { areaOf, cutAt, sharedArea } from '../kit/cut-with-geos.ts';
import { demoFamily } from '../kit/demo-family.ts';
import { joinCorners, measureSolid, type SolidFacts } from '../kit/measure-solid.ts';
import { type ModelXml, read3mfModel } from '../kit/read-3mf-model.ts';
import { type ReadSolid, readWithAssimp } from '../kit/read-with-assimp.ts';

const folder = mkdtempSync(join(tmpdir(), 'print3d-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const CONTEXT = { progress: () => {}, cancelled: () => false, pause: () => Promise.resolve(), now: () => 0 };

function build(family: Family, changes: Partial<DisplaySetup> = {}): Promise<DisplaySet> {
  return buildDisplaySet({ family, setup: { ...usualSetup(family), ...changes } }, CONTEXT);
}

function save(name: string, bytes: Uint8Array): string {
  const file = join(folder, name);
  writeFileSync(file, bytes);
  return file;
}

/** A solid as read, what was measured on it, and the areas of its cuts. */
interface Found extends ReadSolid, SolidFacts {
  readonly areas: readonly number[];
}

function measure(solid: ReadSolid, heights: readonly number[]): Found {
  return { ...solid, ...measureSolid(solid), areas: heights.map((height) => areaOf(cutAt(solid, height))) };
}

/** Every part as STL, then all of them as 3MF, read back; ADMesh has nothing to mend in any of them. */
function readBack(set: DisplaySet, title: string, heights: readonly number[] = []) {
  const stl = set.parts.map((part, i) => {
    const file = save(`${i}.stl`, writeStl(part));
    const found = measure(joinCorners(readWithAssimp(file)[0]), heights);
    expectNothingToMend(file, found, 1);
    return found;
  });
  const file = save('all.3mf', write3mf(set.parts, title));
  const whole = readWithAssimp(file).map((solid) => measure(solid, heights));
  return { stl, whole, xml: read3mfModel(file) };
}

/** ADMesh finds the same sizes and volume, every edge shared, nothing turned the wrong way. */
function expectNothingToMend(file: string, { count, bounds, volume }: SolidFacts, parts: number) {
  const { faults, ...said } = checkWithAdmesh(file);
  expect(Object.entries(faults).filter(([, count]) => count !== 0)).toEqual([]);
  expect(said).toMatchObject({ facets: count, parts });
  expect(Math.abs(said.volume / volume - 1)).toBeLessThan(1e-5);
  for (const end of [0, 1])
    for (const axis of [0, 1, 2]) expect(said.bounds[end][axis]).toBeCloseTo(bounds[end][axis], 5);
}

/** Closed, counter-clockwise seen from outside, each edge of exactly two triangles, in one piece. */
const SOUND = { oriented: true, edgeUses: [2, 2], bodies: 1, degenerate: 0 };

function expectSound(solid: SolidFacts) {
  expect(solid).toMatchObject(SOUND);
  expect(solid.volume).toBeGreaterThan(0);
}

function profileOf(id: string, kind: ProfileKind, points: readonly (readonly [number, number])[]): Profile {
  const made = makeRing(points.map(([x, y]) => ({ x: x * 1e6, y: y * 1e6 })));
  if (!made.ok) throw new Error('not a ring');
  return { id, kind, name: id, ring: made.ring };
}

const RECTANGLE = [
  [0, 0],
  [2, 0],
  [2, 8],
  [0, 8],
] as const;

/** 20 square millimetres, 22 mm round, five corners of 90 degrees and one of 270. */
const STEPPED = [
  [-0.5, -1],
  [1.5, -1],
  [1.5, 3],
  [2.5, 3],
  [2.5, 7],
  [-0.5, 7],
] as const;

function plainFamily(name: string, blanks: readonly string[]): Family {
  return {
    ...{ name, units: 'mm', runningClearance: 40_000, tolerance: 0, tiltLimit: 0 },
    profiles: [
      profileOf('Rectangle keyway', 'opening', RECTANGLE),
      profileOf('Stepped keyway', 'opening', STEPPED),
      { ...profileOf('a', 'blank', RECTANGLE), name: blanks[0] },
      { ...profileOf('b', 'blank', STEPPED), name: blanks[1] },
    ],
  };
}

/** What the corners of a plate lack, rounded with 2 mm in eight chords each: four squares less a polygon of 32 corners. */
const ROUNDED = 4 * 2 ** 2 - 0.5 * 32 * 2 ** 2 * Math.sin(Math.PI / 16);

function plateArea({ bounds: [low, high] }: SolidFacts): number {
  return (high[0] - low[0]) * (high[1] - low[1]) - ROUNDED;
}

/** To a millionth, what single precision leaves of numbers like these. */
function expectClose(found: number, wanted: number) {
  expect(Math.abs(found / wanted - 1), `${found} against ${wanted}`).toBeLessThan(1e-6);
}

describe('a set without letters', () => {
  const [scale, gap, depth] = [4, 0.25, 15];
  const rectangle = (8 - 2 * gap) * (32 - 2 * gap);
  // Steiner's formula for a set shrunk: area less the way round times the gap, plus a square at each corner of 90 degrees, less
  // a quarter circle at the one of 270.
  const stepped = 320 - 88 * gap + (5 - Math.PI / 4) * gap ** 2;
  const family = plainFamily('Plain', ['Rectangle', 'Stepped']);

  test('has the volumes and sizes that are worked out by hand', async () => {
    const setup = { letters: false, tip: 'flat', gap, blockDepth: depth, scale, wall: 5, columns: 2 } as const;
    const set = await build(family, setup);
    const [{ gripLength, bladeLength }] = set.couponFrames;
    const { stl, whole } = readBack(set, 'Plain', [7.5, gripLength + 7.5]);
    for (const part of [...stl, ...whole]) expectSound(part);
    for (const parts of [stl, whole]) {
      const [block, first, second, board] = parts;
      expectClose(block.volume, (plateArea(block) - 256 - 320) * depth);
      expectClose(first.volume, plateArea(first) * gripLength + rectangle * bladeLength);
      expectClose(second.volume, plateArea(second) * gripLength + stepped * bladeLength);
      expectClose(block.areas[0], plateArea(block) - 256 - 320);
      expectClose(first.areas[1], rectangle);
      expectClose(second.areas[1], stepped);
      // The cells are as wide as the wider opening with its wall, 3 x 4 + 5 mm, and as high as 8 x 4 + 5 mm.
      expect(block.bounds[1]).toEqual([2 * 17 + 5, 37 + 5, depth]);
      expect(board.euler).toBe(2);
    }
    // A hole goes right through for each opening; the board's slots are no holes.
    expect(stl[0].euler).toBe(2 - 2 * 2);
    expect([bladeLength, set.parts[1].size[2]]).toEqual([depth + 2, gripLength + bladeLength]);
  });
});

describe('the demo family', () => {
  const family = demoFamily();
  const built = build(family);

  test('is sound in both formats, with names, colours and millimetres', async () => {
    const set = await built;
    const { stl, whole, xml } = readBack(set, family.name);
    for (const part of [...stl, ...whole]) expectSound(part);
    expect(xml.unit).toBe('millimeter');
    expect(xml.objects.map(({ name }) => name)).toEqual(set.parts.map(({ name }) => name));
    expect(whole.map(({ colour }) => colour)).toEqual(set.parts.map(({ colour }) => colour.toUpperCase()));
    set.parts.forEach((part, i) => {
      for (const found of [stl[i], whole[i]]) {
        expectClose(found.volume, part.volume);
        expect(found.count).toBe(part.triangles.length / 3);
        expect(found.bounds[0]).toEqual([0, 0, 0]);
        for (const axis of [0, 1, 2]) expect(found.bounds[1][axis]).toBeCloseTo(part.size[axis], 4);
      }
      for (const axis of [0, 1, 2]) expect(whole[i].place[axis]).toBeCloseTo(part.place[axis], 4);
    });
    expectModel(xml, set);
    expect(set.checks.filter(({ weight }) => weight !== 'note')).toEqual([]);
  });

  test('lies on its beds without overlap', async () => {
    const { parts, bed } = await built;
    const boxes = parts.map(({ place, size, bed: number }) => {
      const left = place[0] - number * (bed[0] + 20);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(left + size[0]).toBeLessThanOrEqual(bed[0]);
      expect(place[1]).toBeGreaterThanOrEqual(0);
      expect(place[1] + size[1]).toBeLessThanOrEqual(bed[1]);
      expect(place[2]).toBe(0);
      return [place[0], place[1], place[0] + size[0], place[1] + size[1]];
    });
    boxes.forEach(([left, low, right, high], i) => {
      for (const other of boxes.slice(i + 1))
        expect(other[0] >= right || other[2] <= left || other[1] >= high || other[3] <= low).toBe(true);
    });
  });

  test('has coupons that go in where the blank enters and collide where it is blocked, seen the right way round', async () => {
    const set = await built;
    const read = (part: SolidPart) => joinCorners(readWithAssimp(save('posed.stl', writeStl(part)))[0]);
    const block = read(set.parts[0]);
    const wanted = [
      ...['heron', 'bittern', 'curlew', 'dunlin'].map((name) => [
        name === 'heron' ? 'heron-blank-5' : `${name}-blank`,
        `${name}-keyway`,
      ]),
      ['polder-all-section-blank', 'plover-keyway'],
      ['heron-blank-5', 'smew-keyway'],
      ['dunlin-blank', 'curlew-keyway'],
    ] as const;
    const pairs = wanted.map(([blankId, openingId]) => {
      const [blank, opening] = [blankId, openingId].map((id) => family.profiles.find((profile) => profile.id === id));
      const coupon = set.couponFrames.find(({ profile }) => profile === blankId);
      const frame = set.openingFrames.find((one) => one.opening === openingId);
      if (!blank || !opening || !coupon || !frame) throw new Error(`no ${blankId} or ${openingId}`);
      const plain = plainConditions(0);
      const fit = judgePair(openingUnder(opening.ring, plain), [blank.ring], plain);
      const pose = poseCoupon(coupon, frame, fit.placement, set.scale, coupon.bladeLength);
      const posed = moveBy(pose, read(set.parts[coupon.part]));
      const [plug, blade] = [block, posed].map((solid) => cutAt(solid, frame.depth / 2));
      return { verdict: fit.verdict, blade: areaOf(blade), shared: sharedArea(plug, blade) };
    });
    pairs.forEach(({ verdict, blade, shared }, i) => {
      expect(blade).toBeGreaterThan(100);
      if (verdict === 'blocked') expect(shared, wanted[i].join()).toBeGreaterThan(0.05);
      else expect(shared, wanted[i].join()).toBeLessThan(1e-9);
    });
    expect(pairs.map(({ verdict }) => verdict === 'blocked')).toEqual([false, false, false, false, false, true, true]);
  });
});

/** A solid moved by a matrix whose columns stand one after the other. */
function moveBy(m: readonly number[], solid: ReadSolid): ReadSolid {
  const corners = solid.corners.map(([x, y, z]) => {
    const moved = [0, 1, 2].map((row) => m[row] * x + m[4 + row] * y + m[8 + row] * z + m[12 + row]);
    return [moved[0], moved[1], moved[2]] as const;
  });
  return { ...solid, corners };
}

/** Rules of the core specification, and that the colours are those of the parts. */
function expectModel(xml: ModelXml, { parts }: DisplaySet) {
  expect(xml.tag).toBe('{http://schemas.microsoft.com/3dmanufacturing/core/2015/02}model');
  expect(xml.unit).toBe('millimeter');
  expect([...xml.files].sort()).toEqual(['3D/3dmodel.model', '[Content_Types].xml', '_rels/.rels']);
  expect(new Set(xml.objects.map(({ id }) => id)).size).toBe(parts.length);
  xml.objects.forEach((object, i) => {
    const { name, colour, letterColour, triangles, lettersFrom, place } = parts[i];
    expect(object).toMatchObject({ type: 'model', name, colour: colour.toUpperCase() });
    expect(object.colour).toMatch(/^#[0-9A-F]{6}$/);
    const raised = triangles.length / 3 - lettersFrom;
    expect(object).toMatchObject({ raised, letterColours: raised > 0 ? [letterColour.toUpperCase()] : [] });
    const matrix = object.transform.split(' ').map(Number);
    expect(matrix.slice(0, 9)).toEqual([1, 0, 0, 0, 1, 0, 0, 0, 1]);
    for (const axis of [0, 1, 2]) expect(matrix[9 + axis]).toBeCloseTo(place[axis], 5);
  });
}

test('a small bed cuts the block between openings, and every part is sound', async () => {
  const family = demoFamily();
  const set = await build(family, {
    bed: [70, 130],
    letters: true,
    tip: 'pointed',
    blanks: ['heron-blank-5', 'nose-feeler'],
  });
  const { stl } = readBack(set, family.name);
  const blocks = set.parts.filter(({ kind }) => kind === 'block');
  expect(blocks.length).toBeGreaterThan(1);
  expect(blocks.flatMap(({ subjects }) => subjects).sort()).toEqual(
    set.openingFrames.map(({ opening }) => opening).sort(),
  );
  expect(new Set(set.openingFrames.map(({ opening }) => opening)).size).toBe(10);
  stl.forEach((part, i) => {
    expectSound(part);
    expect(part.euler).toBe(set.parts[i].kind === 'block' ? 2 - 2 * set.parts[i].subjects.length : 2);
    expect(set.parts[i].size[0]).toBeLessThanOrEqual(70);
    expect(set.parts[i].size[1]).toBeLessThanOrEqual(130);
  });
  expect(set.checks.map(({ kind }) => kind)).toContain('cut');
});

test('names that are hard to write as XML come back as they were', async () => {
  const blanks = ['<b name="x">&amp; \u0007"\'', 'Rietgöt 鷺 🐦'] as const;
  const family = plainFamily('A < B & "C"', blanks);
  const set = await build(family, { letters: false, board: false });
  const { xml } = readBack(set, family.name);
  const clean = [blanks[0].replace('\u0007', ''), blanks[1]];
  expect(xml.objects.slice(1).map(({ name }) => name)).toEqual(clean);
  expect(xml.titles).toEqual(['A < B & "C"']);
});
