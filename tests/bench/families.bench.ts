// Whole families: every entrant in every opening. A generated family at about 60 vertices a section, 16 to 200 openings
// and as many entrants; the 64 x 64 one beside two general-purpose engines in the same process. "An edit" is what a
// changed profile costs: one opening prepared again and judged with every entrant, one blank with every opening.

import { performance } from 'node:perf_hooks';
import { judgeEntry } from '../../src/fit/judge-fit.ts';
import { plainOpening } from '../cases/fit-case.ts';
import { type WardFamily, wardFamily } from '../cases/ward-families.ts';
import { loadClipper2 } from '../kit/engines/clipper2-inner-fit.ts';
import { coreBlank, coreOpening } from '../kit/engines/core-answer.ts';
import { loadManifold } from '../kit/engines/manifold-inner-fit.ts';
import {
  clipper2Convolution,
  type Judge,
  manifoldConvolution,
  ourClearance,
  ourVerdict,
  readyPairs,
} from './contestants.ts';
import { checksumOf, takeTurns } from './measure.ts';
import { figures, printNote, printTable, times } from './print-table.ts';

const VERTICES = 60;
const SEED = 7;
/** Uniform gap below which a fit is tight. */
const RUNNING_CLEARANCE = 40_000;

const engines = [clipper2Convolution(await loadClipper2()), manifoldConvolution(await loadManifold())];
beside(wardFamily(SEED, 64, VERTICES));
growth();

/** 64 x 64 beside the engines. */
function beside(family: WardFamily): void {
  const pairs = readyPairs(family.entrants.flatMap((blank) => family.openings.map((opening) => ({ opening, blank }))));
  const run = ({ name, judge }: Judge) => ({ name, run: () => pairs.forEach((pair) => void judge(pair)) });
  const ours = takeTurns([ourVerdict, ourClearance].map(run), 7);
  const others = takeTurns(engines.map(run), 3);
  const baseline = others.reduce((a, b) => (b.median < a.median ? b : a));
  const judges = [ourVerdict, ourClearance, ...engines];
  const answers = judges.map(({ judge }) => pairs.map(judge));
  const rows = [...ours, ...others].map((timing, i) => [
    timing.name,
    figures(timing.median),
    `${figures(timing.least)} - ${figures(timing.greatest)}`,
    figures((1000 * timing.median) / pairs.length),
    times(baseline.median / timing.median),
    checksumOf(answers[i]),
  ]);
  const share = Math.round((100 * answers[0].filter(Boolean).length) / pairs.length);
  const heading = `64 x 64 family, ${verticesOf(family)} vertices a section, ${share} % of ${pairs.length} pairs go in; speed beside ${baseline.name}`;
  printTable(heading, ['', 'ms', 'range', 'us a pair', 'speed', 'verdicts'], rows);
  if (new Set(answers.map(checksumOf)).size > 1) {
    printNote('The verdicts differ.');
    process.exitCode = 1;
  }
}

/** Ours as the family grows, making ready included. */
function growth(): void {
  const rows = [16, 32, 64, 128, 200].map((size) => {
    const family = wardFamily(SEED, size, VERTICES);
    const [whole] = takeTurns([{ name: '', run: () => void matrixOf(family) }], 5);
    const [edit] = takeTurns([{ name: '', run: editOf(family) }], 9);
    return [
      `${size} x ${size}`,
      figures(whole.median),
      `${figures(whole.least)} - ${figures(whole.greatest)}`,
      figures((1000 * whole.median) / size ** 2),
      `${figures(edit.median)}`,
    ];
  });
  printTable(
    `A family from raw outlines, verdict + clearance for every pair, ${VERTICES} vertices: ms, median and range`,
    ['', 'ms', 'range', 'us a pair', 'an edit, ms'],
    rows,
  );
}

function matrixOf({ openings, entrants }: WardFamily): string {
  const ready = openings.map((outer) => coreOpening(plainOpening(outer)));
  const answers = entrants.flatMap((outline) => {
    const blank = coreBlank(outline);
    return ready.map((opening) => judgeEntry(opening, blank, RUNNING_CLEARANCE).verdict === 'enters');
  });
  return checksumOf(answers);
}

/** One opening and one blank changed: a column and a row. */
function editOf({ openings, entrants }: WardFamily): () => void {
  const ready = openings.map((outer) => coreOpening(plainOpening(outer)));
  const blanks = entrants.map(coreBlank);
  return () => {
    const opening = coreOpening(plainOpening(openings[0]));
    for (const blank of blanks) judgeEntry(opening, blank, RUNNING_CLEARANCE);
    const changed = coreBlank(entrants[0]);
    for (const other of ready) judgeEntry(other, changed, RUNNING_CLEARANCE);
  };
}

function verticesOf({ openings, entrants }: WardFamily): string {
  const counts = [...openings, ...entrants].map((outline) => outline.length);
  return `${Math.min(...counts)}-${Math.max(...counts)} (mean ${Math.round(counts.reduce((a, b) => a + b, 0) / counts.length)})`;
}

const started = performance.timeOrigin;
printNote(`\n${Math.round((Date.now() - started) / 1000)} s in all.`);
