// Outside truth: the scene of the demo scan is drawn from the outline of the demo family by tests/kit/demo-scan.ts, which
// shares no code with the tracer (closed-form projection, exact pixel coverage), and read by pngjs. The places of the
// marks are those of the scene, with and without the slips of a hand.

import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { expect, test } from 'vitest';
import { type GrayPicture, lightOfPixels } from '../../src/trace/gray-picture.ts';
import { likeliestLoop } from '../../src/trace/pick-loop.ts';
import { makePictureFrame, NO_MARKS, type PictureFrame, type PictureMarks } from '../../src/trace/picture-scale.ts';
import { suggestThreshold } from '../../src/trace/suggest-threshold.ts';
import type { TracedLoop, TraceSettings } from '../../src/trace/trace-picture.ts';
import { randomNumbers } from '../cases/random-numbers.ts';
import { decodePng, drawScan, encodeGrey, SCAN, SHEET, scanMarks, scannedOutline } from '../kit/demo-scan.ts';
import { alignedDistance } from '../kit/outline-distance.ts';
import { traced } from '../kit/traced.ts';

const NM = 1e6;

function scan(): GrayPicture {
  const { width, height, rgba } = decodePng(readFileSync(SCAN.file));
  return lightOfPixels(rgba, width, height);
}

/** The marks of the sheet, each off by up to `slip` pixels. */
function marks(slip: number, seed = 1): PictureMarks {
  const random = randomNumbers(seed);
  const near = ({ x, y }: { x: number; y: number }) => ({
    x: x + random.between(-slip, slip),
    y: y + random.between(-slip, slip),
  });
  const { bar, corners } = scanMarks();
  const [a, b, c, d] = corners;
  return {
    ...NO_MARKS,
    scale: { from: near(bar[0]), to: near(bar[1]), distance: SHEET.bar * NM },
    rectangle: {
      corners: [near(a), near(b), near(c), near(d)],
      width: SHEET.frame.width * NM,
      height: SHEET.frame.height * NM,
    },
  };
}

function frameOf(told: PictureMarks): PictureFrame {
  const made = makePictureFrame(SCAN, told);
  if (!made.ok) throw new Error(made.fault.what);
  return made.frame;
}

function outline(picture: GrayPicture, told: PictureMarks, change: Partial<TraceSettings> = {}): TracedLoop {
  const usual = {
    threshold: suggestThreshold(picture),
    shade: 'dark',
    blur: 0,
    leastArea: 2e10,
    sharpen: true,
  } as const;
  const { loops } = traced(picture, frameOf(told).toProfile, { ...usual, tolerance: 4_000, ...change });
  return loops[likeliestLoop(loops)];
}

test('the kept file is what the scene draws (where it is missing it is written: look at it)', () => {
  const drawn = drawScan();
  if (!existsSync(SCAN.file)) {
    mkdirSync(dirname(SCAN.file), { recursive: true });
    writeFileSync(SCAN.file, encodeGrey(drawn, SCAN.width, SCAN.height));
    throw new Error(`${SCAN.file} was written.`);
  }
  const { width, height, rgba } = decodePng(readFileSync(SCAN.file));
  expect([width, height]).toEqual([SCAN.width, SCAN.height]);
  // A rounding may fall to the other side with another engine's sine.
  const off = drawn.reduce((most, grey, i) => Math.max(most, Math.abs(grey - rgba[4 * i])), 0);
  expect(off).toBeLessThanOrEqual(1);
  expect(statSync(SCAN.file).size).toBeLessThan(400_000);
});

test('marked exactly, the traced outline is within 0.015 mm of the true one', () => {
  const found = outline(scan(), marks(0));
  expect(found.touchesEdge).toBe(false);
  expect(alignedDistance(found.vertices, scannedOutline())).toBeLessThan(15_000);
});

test('marked by a hand that slips by a third of a pixel either way, it is within 0.03 mm', () => {
  const picture = scan();
  const distances = [11, 12, 13].map((seed) =>
    alignedDistance(outline(picture, marks(0.33, seed)).vertices, scannedOutline()),
  );
  expect(Math.max(...distances)).toBeLessThan(30_000);
});

test('without its four corners the tipped sheet is told from a flat one', () => {
  const { rectangle: _corners, ...flat } = marks(0);
  expect(alignedDistance(outline(scan(), flat).vertices, scannedOutline())).toBeGreaterThan(30_000);
});

test('corners come out sharper where straight edges may meet', () => {
  const picture = scan();
  const sharp = alignedDistance(outline(picture, marks(0)).vertices, scannedOutline());
  const round = alignedDistance(outline(picture, marks(0), { sharpen: false }).vertices, scannedOutline());
  expect(sharp).toBeLessThan(0.85 * round);
});
