// One blank in one opening: generated keyway pairs, about half of which go in, at about 20, 60 and 120 vertices. Ours
// beside general-purpose engines on the same pairs in one process, by turns. The engines get whole-nanometre outlines and
// the box test for free; converting to their own objects is part of their work, as it would be for anybody.

import { performance } from 'node:perf_hooks';
import { measureInterference } from '../../src/fit/measure-interference.ts';
import { keywayPair, type VertexCount } from '../cases/keyway-pairs.ts';
import { loadClipper2 } from '../kit/engines/clipper2-inner-fit.ts';
import { coreBlank, coreOpening } from '../kit/engines/core-answer.ts';
import { loadManifold } from '../kit/engines/manifold-inner-fit.ts';
import {
  clipper2Convolution,
  clipperLibConvolution,
  clipperLibMinkowski,
  type Judge,
  manifoldConvolution,
  ourClearance,
  ourVerdict,
  type ReadyPair,
  readyPairs,
} from './contestants.ts';
import { checksumOf, shareOf, type Timing, takeTurns } from './measure.ts';
import { figures, printNote, printTable, times } from './print-table.ts';

const PAIRS = 256;
const REPEATS = 7;

/** The slow way is timed on fewer pairs. */
const MINKOWSKI_PAIRS: Record<VertexCount, number> = { 20: 256, 60: 24, 120: 4 };

const general = [
  clipper2Convolution(await loadClipper2()),
  manifoldConvolution(await loadManifold()),
  clipperLibConvolution,
];

for (const vertices of [20, 60, 120] as const) compare(vertices);
interferenceAt(60);

/** One table: all contestants at one size. */
function compare(vertices: VertexCount): void {
  const cases = Array.from({ length: PAIRS }, (_, seed) => keywayPair(seed + 10_000, vertices));
  const pairs = readyPairs(cases.map(({ opening, blank }) => ({ opening: opening.outer, blank })));
  const judges = [ourVerdict, ourClearance, ...general];
  const timings = takeTurns(
    judges.map((judge) => contestant(judge, pairs)),
    REPEATS,
  ).map((t) => perPair(t, PAIRS));
  const few = pairs.slice(0, MINKOWSKI_PAIRS[vertices]);
  const slow = takeTurns([contestant(clipperLibMinkowski, few)], 1).map((t) => perPair(t, few.length));
  const answers = judges.map(({ judge }) => pairs.map(judge));
  const baseline = timings.slice(2).reduce((a, b) => (b.median < a.median ? b : a));
  const rows = [...timings, ...slow].map((timing, i) => [
    timing.name,
    figures(timing.median),
    `${figures(timing.least)} - ${figures(timing.greatest)}`,
    times(baseline.median / timing.median),
    i < answers.length ? checksumOf(answers[i]) : agreement(few, clipperLibMinkowski),
  ]);
  const share = Math.round((100 * answers[0].filter(Boolean).length) / PAIRS);
  printTable(
    `${PAIRS} pairs at ${vertices} vertices, ${share} % go in: ms a pair, median and range of ${REPEATS} passes; speed beside ${baseline.name}`,
    ['', 'ms', 'range', 'speed', 'verdicts'],
    rows,
  );
  reportDifferences(judges, answers);
  printNote(
    `verdict + clearance takes ${times(timings[1].median / timings[0].median)} the verdict; making ready, once a profile: ${preparation(pairs)} ms`,
  );
}

function contestant({ name, judge }: Judge, pairs: readonly ReadyPair[]) {
  return { name, run: () => pairs.forEach((pair) => void judge(pair)) };
}

function perPair(timing: Timing, count: number): Timing {
  return { ...timing, median: timing.median / count, least: timing.least / count, greatest: timing.greatest / count };
}

function agreement(pairs: readonly ReadyPair[], { judge }: Judge): string {
  const same = pairs.filter((pair) => judge(pair) === ourVerdict.judge(pair)).length;
  return `${same} of ${pairs.length}`;
}

/** Says which pairs are judged otherwise; a disagreement makes the bench fail. */
function reportDifferences(judges: readonly Judge[], answers: readonly boolean[][]): void {
  judges.forEach(({ name }, i) => {
    const different = answers[i].flatMap((answer, k) => (answer === answers[0][k] ? [] : [k + 10_000]));
    if (different.length === 0) return;
    printNote(`${name} answers otherwise than ours for seeds ${different.join(', ')}`);
    process.exitCode = 1;
  });
}

/** Time to make an opening and a blank ready, together, milliseconds. */
function preparation(pairs: readonly ReadyPair[]): string {
  const start = performance.now();
  for (const { opening, blank } of pairs) {
    coreOpening({ outer: opening, islands: [] });
    coreBlank(blank);
  }
  return figures((performance.now() - start) / pairs.length / 2);
}

/** Interference of blocked pairs, on demand. */
function interferenceAt(vertices: VertexCount): void {
  const cases = Array.from({ length: 300 }, (_, seed) => keywayPair(seed + 20_000, vertices));
  const pairs = readyPairs(cases.map(({ opening, blank }) => ({ opening: opening.outer, blank })));
  const blocked = pairs.filter((pair) => !ourVerdict.judge(pair));
  const sorted = blocked.map(interferenceTime).sort((a, b) => a - b);
  printTable(
    `Interference of ${blocked.length} blocked pairs at ${vertices} vertices, opening fresh each time: ms a pair`,
    ['', 'median', '95 %', 'most'],
    [['ours', figures(shareOf(sorted, 0.5)), figures(shareOf(sorted, 0.95)), figures(sorted[sorted.length - 1])]],
  );
}

function interferenceTime({ opening, coreBlank: blank }: ReadyPair): number {
  const fresh = coreOpening({ outer: opening, islands: [] });
  const start = performance.now();
  measureInterference(fresh, blank);
  return performance.now() - start;
}
