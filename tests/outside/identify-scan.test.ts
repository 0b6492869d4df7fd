// Outside truth: the demo scan, which is drawn from the outline of the demo family without any part of the program that
// traces or identifies it (tests/kit/demo-scan.ts), read by pngjs, and traced by the tracer with the marks of the scene.

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { makeRing, type Ring } from '../../src/geom/ring.ts';
import { identify, profilesAmong } from '../../src/identify/identify.ts';
import { lightOfPixels } from '../../src/trace/gray-picture.ts';
import { likeliestLoop } from '../../src/trace/pick-loop.ts';
import { makePictureFrame, NO_MARKS } from '../../src/trace/picture-scale.ts';
import { suggestThreshold } from '../../src/trace/suggest-threshold.ts';
import { demoFamily } from '../kit/demo-family.ts';
import { decodePng, SCAN, SCANNED_PROFILE, SHEET, scanMarks } from '../kit/demo-scan.ts';
import { traced } from '../kit/traced.ts';

const MM = 1e6;
const { profiles } = demoFamily();

/** The outline that the tracer finds in the scan, the picture scaled by its bar and, if wanted, straightened by its frame. */
function tracedScan(straightened: boolean): Ring {
  const { width, height, rgba } = decodePng(readFileSync(SCAN.file));
  const picture = lightOfPixels(rgba, width, height);
  const { bar, corners } = scanMarks();
  const [a, b, c, d] = corners;
  const made = makePictureFrame(SCAN, {
    ...NO_MARKS,
    scale: { from: bar[0], to: bar[1], distance: SHEET.bar * MM },
    ...(straightened
      ? { rectangle: { corners: [a, b, c, d], width: SHEET.frame.width * MM, height: SHEET.frame.height * MM } }
      : {}),
  });
  if (!made.ok) throw new Error(made.fault.what);
  const { loops } = traced(picture, made.frame.toProfile, {
    threshold: suggestThreshold(picture),
    shade: 'dark',
    blur: 0,
    leastArea: 2e10,
    sharpen: true,
    tolerance: 4_000,
  });
  const ring = makeRing(loops[likeliestLoop(loops)].vertices);
  if (!ring.ok) throw new Error(ring.fault.message);
  return ring.ring;
}

test('the traced scan is almost certainly the Knot blank, within 0.02 mm', () => {
  const among = profilesAmong(profiles, 'entrants');
  const answer = identify({ outline: tracedScan(true), error: 50_000, mirrored: true, turned: true, profiles: among });
  expect(answer).toMatchObject({ likeness: 'certain', count: 1 });
  expect(answer.ranked[0]).toMatchObject({ ids: [SCANNED_PROFILE], comparison: { pose: { mirrored: false } } });
  expect(answer.ranked[0].comparison.most).toBeLessThan(20_000);
  expect(answer.ranked[1].comparison.most).toBeGreaterThan(300_000);
});

test('not straightened, turned by three degrees and tipped, it is still first, keyways among the rest', () => {
  const answer = identify({ outline: tracedScan(false), error: 50_000, mirrored: true, turned: true, profiles });
  expect(answer.ranked[0].ids).toEqual([SCANNED_PROFILE]);
  expect((Math.abs(answer.ranked[0].comparison.pose.turned) * 180) / Math.PI).toBeGreaterThan(2);
});
