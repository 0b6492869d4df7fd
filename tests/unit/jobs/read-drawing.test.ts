import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { makeDrawn } from '../../../src/geom/vertex.ts';
import { placeLoop } from '../../../src/interchange/place-loop.ts';
import { sniffFormat } from '../../../src/interchange/sniff-format.ts';
import type { JobContext } from '../../../src/jobs/job.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import { type DrawingFormat, type LoopsRead, readDrawing } from '../../../src/jobs/read-drawing.ts';
import { SVG_CASES } from '../../cases/drawings/svg-cases.ts';
import { DXF_DRAWINGS } from '../../cases/dxf-drawings.ts';

const NOW: JobContext = { progress: () => {}, cancelled: () => false, pause: async () => {}, now: () => 0 };
const FOLDERS = ['svg', 'dxf', 'csv'] as const;
const FORMATS: Readonly<Record<string, DrawingFormat>> = { svg: 'svg', dxf: 'dxf', csv: 'points' };
const UM = 1e3;

const textOf = (folder: string, file: string) => readFileSync(`tests/cases/drawings/${folder}/${file}`, 'utf8');
const read = (folder: string, file: string) =>
  readDrawing({ format: FORMATS[folder], text: textOf(folder, file) }, NOW);

function loopsOf(answer: LoopsRead) {
  return answer.ok ? answer.drawing.loops : [];
}

/** Sizes of loops in whole micrometres, sorted; chords fall short of a curve by half a micrometre. */
const sizesOf = (boxes: readonly (readonly [number, number])[]) =>
  boxes.map(([w, h]) => [w, h]).sort((a, b) => a[0] - b[0] || a[1] - b[1]);

describe.each(FOLDERS)('the corpus of %s', (folder) => {
  test.each(readdirSync(`tests/cases/drawings/${folder}`))(
    '%s is known by its content, and its loops are sound',
    async (file) => {
      const bytes = readFileSync(`tests/cases/drawings/${folder}/${file}`);
      expect(sniffFormat('no-name', bytes)).toMatchObject({ ok: true, format: FORMATS[folder] });
      for (const loop of loopsOf(await read(folder, file))) {
        if (loop.fault) continue;
        for (const seenFrom of ['bow', 'tip'] as const) {
          const taken = placeLoop(loop, { seenFrom, quarters: 1, place: 'origin', lighter: true });
          const made = makeDrawn(taken);
          // What is taken is whole, sound, counter-clockwise and stands on 0, 0.
          expect(made.ok && made.drawn).toEqual(taken);
        }
      }
    },
  );
});

test.each(SVG_CASES.filter(({ paths }) => paths.length > 0))(
  '$file.svg: every closed line once, at its true size',
  async ({ file, paths }) => {
    const loops = loopsOf(await read('svg', `${file}.svg`)).filter(({ gaps }) => gaps.length === 0);
    const wanted = new Map(
      paths.filter(({ area }) => area !== undefined).map(({ box }) => [box.map((mm) => mm?.toFixed(2)).join(), box]),
    );
    const sizes = sizesOf([...wanted.values()].map(([, , w, h]) => [w * 1e6, h * 1e6]));
    const found = sizesOf(loops.map(({ width, height }) => [width, height]));
    expect(found).toHaveLength(sizes.length);
    for (const [i, [w, h]] of sizes.entries()) {
      expect(Math.abs(found[i][0] - w)).toBeLessThan(2 * UM);
      expect(Math.abs(found[i][1] - h)).toBeLessThan(2 * UM);
    }
  },
);

test.each(DXF_DRAWINGS.filter(({ loops }) => loops.length > 0))(
  '$file: every closed line once, at its true size',
  async ({ file, loops: wanted }) => {
    const name = file.endsWith('.dxf') ? file : `${file}.dxf`;
    const loops = loopsOf(await read('dxf', name)).filter(({ gaps }) => gaps.length === 0);
    for (const { width, height } of wanted) {
      if (width === undefined || height === undefined) continue;
      const near = loops.filter((l) => Math.hypot(l.width - width * 1e6, l.height - height * 1e6) < 3 * UM);
      expect(near.length).toBeGreaterThan(0);
    }
    expect(loops.length).toBeLessThanOrEqual(wanted.length);
  },
);

test('a drawing whose lines enclose nothing is refused with words', async () => {
  const text =
    '<svg xmlns="http://www.w3.org/2000/svg" width="9mm" height="9mm" viewBox="0 0 9 9"><path d="M0 0L5 5"/></svg>';
  const answer = await readDrawing({ format: 'svg', text }, NOW);
  expect(answer).toMatchObject({ ok: false, faults: [{ what: 'has no line that encloses anything' }, {}] });
});

test('a job that was cancelled before it began gives nothing', async () => {
  await expect(readDrawing({ format: 'svg', text: '<svg/>' }, { ...NOW, cancelled: () => true })).rejects.toThrow(
    JobCancelled,
  );
});
