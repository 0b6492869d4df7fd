// Thickness against height of generated keyways, upright, at about 20, 60 and 120 vertices. Ours is the whole exact curve, read
// at some heights; beside it the two ways without one, asked at these heights only: the thickness is halved down to the micrometre
// by the fit core, and by a general-purpose engine. All thicknesses lie off the round ones, where a strip would touch: engines
// that work by area do not see contact. The answers are compared by checksum.

import {
  findingCurve,
  type ThicknessCurve,
  tallestOf,
  thicknessAt,
  uprightCurve,
} from '../../src/gauge/thickness-curve.ts';
import { boxOf, type Point } from '../../src/geom/point.ts';
import { rectangle } from '../cases/fit-case.ts';
import { keywayPair, type VertexCount } from '../cases/keyway-pairs.ts';
import { loadClipper2 } from '../kit/engines/clipper2-inner-fit.ts';
import { coreBlank, coreOpening } from '../kit/engines/core-answer.ts';
import { clipper2Convolution, type Judge, ourVerdict } from './contestants.ts';
import { checksumOf, takeTurns } from './measure.ts';
import { figures, printNote, printTable, times } from './print-table.ts';

const KEYWAYS = 12;
const HEIGHTS = 16;
const REPEATS = 5;
/** Thicknesses that are tried, nanometres: whole steps and a part of one. */
const STEP = 1_000;
const PART = 437;

/** A keyway and the heights at which its thickness is asked. */
interface Question {
  readonly outline: readonly Point[];
  readonly opening: ReturnType<typeof coreOpening>;
  readonly heights: readonly number[];
}

const engine = clipper2Convolution(await loadClipper2());

for (const vertices of [20, 60, 120] as const) compare(vertices);
tilted();

/** One table: the curve and the two ways without it, at one size. */
function compare(vertices: VertexCount): void {
  const questions = questionsAt(vertices);
  const ways: readonly [string, (question: Question) => number[]][] = [
    ['ours, exact curve', ({ outline, heights }) => readOff(uprightCurve('k', outline), heights)],
    ['ours, fit core by halving', (question) => halved(question, ourVerdict)],
    [`${engine.name} by halving`, (question) => halved(question, engine)],
  ];
  const timings = takeTurns(
    ways.map(([name, way]) => ({ name, run: () => questions.forEach((question) => void way(question)) })),
    REPEATS,
  );
  const sums = ways.map(([, way]) => checksumOf(questions.flatMap(way).flatMap(bitsOf)));
  const baseline = timings[2];
  const rows = timings.map(({ name, median, least, greatest }, i) => [
    name,
    figures(median / KEYWAYS),
    `${figures(least / KEYWAYS)} - ${figures(greatest / KEYWAYS)}`,
    times(baseline.median / median),
    sums[i],
  ]);
  const heading = `${KEYWAYS} keyways at ${vertices} vertices, ${HEIGHTS} heights each: ms a keyway, median and range of ${REPEATS} passes; speed beside ${baseline.name}`;
  printTable(heading, ['', 'ms', 'range', 'speed', 'thicknesses'], rows);
  if (new Set(sums).size === 1) return;
  printNote('The thicknesses differ.');
  process.exitCode = 1;
}

function questionsAt(vertices: VertexCount): Question[] {
  return Array.from({ length: KEYWAYS }, (_, seed) => {
    const { opening } = keywayPair(seed + 30_000, vertices);
    const tallest = tallestOf(uprightCurve('k', opening.outer));
    const heights = Array.from({ length: HEIGHTS }, (__, i) => Math.round(((i + 0.7) / HEIGHTS) * tallest));
    return { outline: opening.outer, opening: coreOpening(opening), heights };
  });
}

/** The steps of thickness that go in at each height. */
function readOff(curve: ThicknessCurve, heights: readonly number[]): number[] {
  return heights.map((height) => Math.floor((thicknessAt(curve, height) - PART) / STEP));
}

function halved({ outline, opening, heights }: Question, { judge }: Judge): number[] {
  const { minX, maxX } = boxOf(outline);
  return heights.map((height) => {
    const entersAt = (steps: number) => {
      const blank = rectangle(0, 0, steps * STEP + PART, height);
      return judge({
        opening: outline,
        blank,
        coreOpening: opening,
        // Made ready for those who ask for it only.
        get coreBlank() {
          return coreBlank(blank);
        },
      });
    };
    let [low, high] = [-1, Math.ceil((maxX - minX) / STEP)];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (entersAt(middle)) low = middle;
      else high = middle;
    }
    return low;
  });
}

/** A number of steps as yes and no, the lowest digit first. */
function bitsOf(steps: number): boolean[] {
  return Array.from({ length: 16 }, (_, digit) => ((steps >> digit) & 1) === 1);
}

/** What tilt costs, where no other way is at hand. */
function tilted(): void {
  const questions = questionsAt(20);
  const limits = [0, 1, 2, 5].map((degrees) => ({
    name: `${degrees}°`,
    run: () => questions.forEach(({ outline }) => void finish(outline, (degrees * Math.PI) / 180)),
  }));
  const rows = takeTurns(limits, 2).map(({ name, median }) => [name, figures(median / KEYWAYS)]);
  printTable(`${KEYWAYS} keyways at 20 vertices, by the limit of tilt: ms a curve`, ['', 'ms'], rows);
}

function finish(outline: readonly Point[], limit: number): ThicknessCurve {
  const steps = findingCurve('k', outline, limit);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
