// An unknown outline against whole families: noisy, turned and mirrored, as a trace is; generated families of about 60
// vertices a section. The goal: 400 sections take two seconds or so.

import { performance } from 'node:perf_hooks';
import { identify } from '../../src/identify/identify.ts';
import type { Profile } from '../../src/profile/profile.ts';
import { wardFamily } from '../cases/ward-families.ts';
import { noisyTrace } from '../kit/noisy-trace.ts';
import { soundRing } from '../kit/shapes.ts';
import { figures, printNote, printTable } from './print-table.ts';

const ERROR = 50_000;
const TRACES = 5;

const rows = [24, 100, 400].map((size) => {
  const { openings, entrants } = wardFamily(11, size / 2, 60);
  const profiles = [...entrants, ...openings].map((outline, i): Profile => {
    return { id: `section-${i}`, kind: 'blank', name: `Section ${i}`, ring: soundRing(outline) };
  });
  const runs = Array.from({ length: TRACES }, (_, n) => {
    const wanted = profiles[(n * 37) % entrants.length];
    const { ring } = noisyTrace(wanted.ring, { seed: n + 1, error: ERROR, step: 200_000 });
    const from = performance.now();
    const { ranked } = identify({ outline: ring, error: ERROR, mirrored: true, turned: true, profiles });
    return { ms: performance.now() - from, right: ranked[0].ids.includes(wanted.id) };
  });
  const times = runs.map(({ ms }) => ms).sort((a, b) => a - b);
  if (!runs.every(({ right }) => right)) process.exitCode = 1;
  return [
    String(size),
    figures(times[Math.floor(TRACES / 2)]),
    `${figures(times[0])} - ${figures(times[TRACES - 1])}`,
    `${runs.filter(({ right }) => right).length} of ${TRACES}`,
  ];
});
printTable('An unknown outline among so many sections', ['sections', 'ms', 'range', 'right section first'], rows);
if (process.exitCode) printNote('A wrong section came first.');
