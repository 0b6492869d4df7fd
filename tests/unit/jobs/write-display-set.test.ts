// Two tetrahedra with legs of 10 mm on two beds of 100 mm, 20 mm apart: the second begins at 120 + 7 mm. Heads of files by
// their formats: an archive begins with "PK", binary STL has 80 bytes, a count and 50 bytes a triangle, its first corner 12
// bytes into each of those (3D Systems, 1989, by second hand).
import { unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { JobCancelled, type JobContext } from '../../../src/jobs/job.ts';
import { type DisplayWriting, writeDisplaySet } from '../../../src/jobs/write-display-set.ts';
import type { SolidPart } from '../../../src/print3d/display-set.ts';

const tetrahedron = (name: string, place: SolidPart['place'], bed: number): SolidPart => ({
  ...{
    name,
    kind: 'coupon',
    subjects: [],
    colour: '#e69f00',
    letterColour: '#1f2937',
    lettersFrom: 4,
    volume: 1000 / 6,
  },
  positions: new Float32Array([0, 0, 0, 10, 0, 0, 0, 10, 0, 0, 0, 10]),
  triangles: new Uint32Array([0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3]),
  ...{ size: [10, 10, 10], place, bed },
});

const set = {
  parts: [tetrahedron('A/B', [5, 0, 0], 0), tetrahedron('A B', [127, 3, 0], 1)],
  ...{ bed: [100, 100] as const, beds: 2 },
};

function context(cancelledAfter = Number.POSITIVE_INFINITY) {
  const told: string[] = [];
  let asked = 0;
  let time = 0;
  const made: JobContext = {
    progress: (done, total) => void told.push(`${done} of ${total}`),
    cancelled: () => ++asked > cancelledAfter,
    pause: async () => {},
    // Every look at the clock is long after the one before, so that each step is told.
    now: () => (time += 1_000),
  };
  return { told, made };
}

const write = (as: DisplayWriting['as'], each: DisplayWriting['each'], { made } = context()) =>
  writeDisplaySet({ set, title: 'Plain', as, each }, made);

/** The least corner of all triangles of a binary STL file. */
function cornerOf(stl: Uint8Array): number[] {
  const view = new DataView(stl.buffer, stl.byteOffset, stl.byteLength);
  const count = view.getUint32(80, true);
  const corners = Array.from({ length: 3 * count }, (_, n) =>
    [0, 1, 2].map((axis) => view.getFloat32(84 + 50 * Math.floor(n / 3) + 12 * (1 + (n % 3)) + 4 * axis, true)),
  );
  return [0, 1, 2].map((axis) => Math.min(...corners.map((corner) => corner[axis])));
}

const modelOf = (bytes: Uint8Array) => new TextDecoder().decode(unzipSync(bytes)['3D/3dmodel.model']);

test('a whole set is one file, with all parts where they lie', async () => {
  const model = modelOf(await write('3mf', 'set'));
  expect(model).toContain('1 0 0 0 1 0 0 0 1 127 3 0');
  expect(model.match(/<item /g)).toHaveLength(2);
  const stl = await write('stl', 'set');
  expect(stl).toHaveLength(84 + 50 * 8);
  expect(cornerOf(stl)).toEqual([5, 0, 0]);
});

test('a file for each bed begins at that bed, a file for each part at the part', async () => {
  const models = unzipSync(await write('3mf', 'bed'));
  expect(Object.keys(models)).toEqual(['bed 1 of 2.3mf', 'bed 2 of 2.3mf']);
  expect(modelOf(models['bed 2 of 2.3mf'])).toContain('1 0 0 0 1 0 0 0 1 7 3 0');
  expect(cornerOf(unzipSync(await write('stl', 'bed'))['bed 2 of 2.stl'])).toEqual([7, 3, 0]);
  const parts = unzipSync(await write('stl', 'part'));
  // A name without what no disk takes may be another part's name.
  expect(Object.keys(parts)).toEqual(['A B.stl', 'A B 2.stl']);
  for (const stl of Object.values(parts)) expect(cornerOf(stl)).toEqual([0, 0, 0]);
});

test('progress is told file by file, and a cancel ends it between two', async () => {
  const hearing = context();
  await write('stl', 'part', hearing);
  expect(hearing.told).toEqual(['0 of 3', '1 of 3', '2 of 3']);
  const cut = context(1);
  await expect(write('stl', 'part', cut)).rejects.toBeInstanceOf(JobCancelled);
  expect(cut.told).toEqual(['0 of 3', '1 of 3']);
});
