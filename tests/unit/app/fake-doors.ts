import { accessDoors } from '../../../src/app/doors/access-doors.ts';
import { claimsDoors } from '../../../src/app/doors/claims-doors.ts';
import { interchangeDoors } from '../../../src/app/doors/interchange-doors.ts';
import { namesDoors } from '../../../src/app/doors/names-doors.ts';
import { bandShapes, innerFitNow, judgeNow, shapesUnder, toleranceNow } from '../../../src/app/doors/pair-now.ts';
import { publishDoors } from '../../../src/app/doors/publish-doors.ts';
import type { Doors } from '../../../src/app/state/doors.ts';
import type { GaugedCurves } from '../../../src/app/state/gauge/gauge-doors.ts';
import type { Pace } from '../../../src/app/state/pace.ts';
import type { BlockOrder } from '../../../src/app/state/publish/block-doors.ts';
import type { Capacity, CapacityInput } from '../../../src/capacity/capacity.ts';
import type { EntryMatrix } from '../../../src/family/entry-matrix.ts';
import type { EntryTable } from '../../../src/family/entry-table.ts';
import type { Family } from '../../../src/family/family.ts';
import type { GuardMargins } from '../../../src/family/guard-margin.ts';
import type { ConceptCount } from '../../../src/family/tiers.ts';
import { explainPlacement } from '../../../src/fit/explain-placement.ts';
import type { Fit } from '../../../src/fit/fit.ts';
import { blockedWords, fitSentence, partName } from '../../../src/fit/fit-sentence.ts';
import { judgeEntry, judgeFit } from '../../../src/fit/judge-fit.ts';
import { prepareBlank } from '../../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../../src/fit/prepare-opening.ts';
import type { ToolCover } from '../../../src/gauge/cover-tools.ts';
import type { ThicknessCurve } from '../../../src/gauge/thickness-curve.ts';
import type { ToolTable } from '../../../src/gauge/tool-table.ts';
import type { Identification, Question } from '../../../src/identify/identify.ts';
import { addSection } from '../../../src/interchange/json/add-section.ts';
import { changeFamily } from '../../../src/interchange/json/change-family.ts';
import * as lesson from '../../../src/interchange/json/edit-lesson.ts';
import { setBladeLimits } from '../../../src/interchange/json/edit-plan.ts';
import { putLeastWeb, putMilled } from '../../../src/interchange/json/mill-file.ts';
import { readPicture, writePicture } from '../../../src/interchange/json/picture-file.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { replaceOutline } from '../../../src/interchange/json/replace-outline.ts';
import { takePlan } from '../../../src/interchange/json/take-plan.ts';
import { writeFamily } from '../../../src/interchange/json/write.ts';
import type { CoverQuestion } from '../../../src/jobs/cover-openings.ts';
import type { ExaminedBlade } from '../../../src/jobs/examine-blades.ts';
import type { GaugeQuestion } from '../../../src/jobs/gauge-family.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import type { DetailsInput, PairDetail } from '../../../src/jobs/judge-details.ts';
import type { PairsInput, PairsPart } from '../../../src/jobs/judge-pairs.ts';
import type { TolerancesInput, TolerancesPart } from '../../../src/jobs/judge-tolerances.ts';
import type { Diagram, DiagramInput } from '../../../src/jobs/lay-out-tiers.ts';
import { type PackedOutline, unpackOutline } from '../../../src/jobs/packed-outline.ts';
import type { Published, PublishInput } from '../../../src/jobs/publish-sheets.ts';
import type { DrawingInput, LoopsRead } from '../../../src/jobs/read-drawing.ts';
import type { SolveInput } from '../../../src/jobs/solve-plan.ts';
import type { ToolsQuestion } from '../../../src/jobs/table-tools.ts';
import type { TraceInput } from '../../../src/jobs/trace-picture.ts';
import type { DisplayWriting } from '../../../src/jobs/write-display-set.ts';
import type { PassageInput } from '../../../src/passage/find-passage.ts';
import type { MillPassageInput } from '../../../src/passage/mill-passage.ts';
import type { Passage } from '../../../src/passage/passage.ts';
import type { DrawnPlan, DrawPlanInput } from '../../../src/plan/drawn-plan.ts';
import type { GrowReport } from '../../../src/plan/grow.ts';
import type { GrowInput } from '../../../src/plan/grow-family.ts';
import type { NearestPlan } from '../../../src/plan/nearest-plan.ts';
import type { WardPlan } from '../../../src/plan/ward-plan.ts';
import type { DisplaySet } from '../../../src/print3d/display-set.ts';
import type { StrengthQuestion } from '../../../src/strength/find-strength.ts';
import type { PictureTrace } from '../../../src/trace/trace-picture.ts';

/** A job that ends when the test says so. */
export interface HeldJob<Input, Part, Output> {
  readonly input: Input;
  readonly part: (part: Part) => void;
  readonly finish: (output: Output) => void;
  readonly fail: (reason: unknown) => void;
  cancelled: boolean;
}

/** A pace whose frames and timers come when the test says so. */
export function heldPace() {
  const waiting = new Set<() => void>();
  const timers = new Set<() => void>();
  const hold = (held: Set<() => void>, run: () => void) => {
    held.add(run);
    return () => {
      held.delete(run);
    };
  };
  const release = (held: Set<() => void>) => {
    const runs = [...held];
    held.clear();
    for (const run of runs) run();
    return runs.length;
  };
  const pace: Pace = { frame: (run) => hold(waiting, run), later: (_ms, run) => hold(timers, run) };
  return { pace, nextFrame: () => release(waiting), calm: () => release(timers) };
}

function holder<Input, Part, Output>() {
  const jobs: HeldJob<Input, Part, Output>[] = [];
  const start = (input: Input, part: (part: Part) => void) => {
    let finish: (output: Output) => void = () => {};
    let fail: (reason: unknown) => void = () => {};
    const result = new Promise<Output>((resolve, reject) => {
      finish = resolve;
      fail = reject;
    });
    const job = { input, part, finish, fail, cancelled: false };
    jobs.push(job);
    const cancel = () => {
      job.cancelled = true;
    };
    return { result, cancel };
  };
  return { jobs, start };
}

/** Doors onto the real core whose jobs are held by the test; two threads. */
export function fakeDoors() {
  const pairs = holder<PairsInput, PairsPart, number>();
  const details = holder<DetailsInput, PairDetail, PairDetail[]>();
  const guards = holder<{ family: Family; matrix: EntryMatrix }, never, GuardMargins>();
  const traces = holder<TraceInput, never, PictureTrace>();
  const drawings = holder<DrawingInput, never, LoopsRead>();
  const tolerances = holder<TolerancesInput, TolerancesPart, number>();
  const identities = holder<Question, never, Identification>();
  const layouts = holder<DiagramInput, never, Diagram>();
  const counts = holder<{ table: EntryTable; limit: number }, never, ConceptCount>();
  const passages = holder<PassageInput, never, Passage>();
  const millings = holder<MillPassageInput, never, Passage | null>();
  const strengths = holder<readonly StrengthQuestion[], ExaminedBlade, number>();
  const growths = holder<GrowInput, never, GrowReport>();
  const gaugings = holder<GaugeQuestion, ThicknessCurve, GaugedCurves>();
  const toolTablings = holder<ToolsQuestion, never, ToolTable>();
  const coverings = holder<CoverQuestion, never, ToolCover>();
  const capacities = holder<CapacityInput, never, Capacity>();
  const solvings = holder<SolveInput, WardPlan, WardPlan>();
  const nearings = holder<SolveInput, never, NearestPlan[]>();
  const planDrawings = holder<DrawPlanInput, never, DrawnPlan>();
  const sheets = holder<PublishInput, never, Published>();
  const displays = holder<BlockOrder, never, DisplaySet>();
  const solidFiles = holder<DisplayWriting, never, Uint8Array>();
  const held = heldPace();
  const doors: Doors = {
    readFamily,
    writeFamily,
    explainPlacement,
    fitSentence,
    blockedWords,
    partName,
    replaceOutline,
    changeFamily,
    addSection,
    mill: { putMilled, putLeastWeb },
    claims: claimsDoors(tolerances.start),
    lesson,
    access: accessDoors,
    sections: {
      solve: (input, onPart) => solvings.start(input, onPart),
      draw: (input) => planDrawings.start(input, () => {}),
      near: (input) => nearings.start(input, () => {}),
      ...{ takePlan, setBladeLimits },
    },
    tiers: {
      layOut: (input) => layouts.start(input, () => {}),
      countConcepts: (input) => counts.start(input, () => {}),
    },
    passage: {
      findPassage: (input, onProgress) => passages.start(input, () => onProgress(1, 2)),
      millPassage: (input, onProgress) => millings.start(input, () => onProgress(1, 2)),
    },
    strength: { examineBlades: (questions, onPart) => strengths.start(questions, onPart) },
    grow: { growFamily: (input, onProgress) => growths.start(input, () => onProgress(1, 2)) },
    gauge: {
      gaugeFamily: (question, onCurve) => gaugings.start(question, onCurve),
      tableTools: (question, onProgress) => toolTablings.start(question, () => onProgress(1, 2)),
      coverOpenings: (question) => coverings.start(question, () => {}),
    },
    capacity: { countCapacity: (input, onProgress) => capacities.start(input, () => onProgress(1, 2)) },
    block: {
      buildDisplaySet: (order, onProgress) => displays.start(order, () => onProgress(1, 2)),
      writeDisplaySet: (writing, onProgress) => solidFiles.start(writing, () => onProgress(1, 2)),
    },
    publish: publishDoors((input, onProgress) => sheets.start(input, () => onProgress(1, 2))),
    judgeNow,
    toleranceNow,
    bandShapes,
    innerFitNow,
    shapesUnder,
    threadCount: () => 2,
    judgePairs: pairs.start,
    judgeDetails: details.start,
    guardFamily: (family, matrix) => guards.start({ family, matrix }, () => {}),
    drawParts: () => ({ result: new Promise(() => {}), cancel: () => {} }),
    tracePicture: (input, onProgress) => traces.start(input, () => onProgress(1, 2)),
    readPicture,
    writePicture,
    interchange: interchangeDoors((input) => drawings.start(input, () => {})),
    identify: { identifyOutline: (question, onProgress) => identities.start(question, () => onProgress(1, 2)) },
    names: namesDoors,
    pace: held.pace,
  };
  return {
    doors,
    pairs: pairs.jobs,
    details: details.jobs,
    guards: guards.jobs,
    drawings: drawings.jobs,
    traces: traces.jobs,
    tolerances: tolerances.jobs,
    identities: identities.jobs,
    layouts: layouts.jobs,
    counts: counts.jobs,
    passages: passages.jobs,
    millings: millings.jobs,
    solvings: solvings.jobs,
    nearings: nearings.jobs,
    planDrawings: planDrawings.jobs,
    strengths: strengths.jobs,
    growths: growths.jobs,
    gaugings: gaugings.jobs,
    toolTablings: toolTablings.jobs,
    coverings: coverings.jobs,
    capacities: capacities.jobs,
    sheets: sheets.jobs,
    displays: displays.jobs,
    solidFiles: solidFiles.jobs,
    ...held,
  };
}

export type FakeDoors = ReturnType<typeof fakeDoors>;

/** The true fits of some pairs of a job, from the pair numbered `first` on. */
export function answersTo({ openings, entrants, pairs, conditions, measured }: PairsInput, first = 0, count = 1e9) {
  const shape = (outline: PackedOutline) => unpackOutline(outline);
  const fits: Fit[] = [];
  for (let n = first; n < Math.min(pairs.length / 2, first + count); n++) {
    const opening = prepareOpening(shape(openings[pairs[2 * n + 1]]));
    const blank = prepareBlank([shape(entrants[pairs[2 * n]])]);
    fits.push((measured ? judgeFit : judgeEntry)(opening, blank, conditions.runningClearance));
  }
  return { first, fits };
}

/** Answers a held job in full, or says that it heard its cancel. */
export async function settle(job: HeldJob<PairsInput, PairsPart, number>): Promise<void> {
  if (job.cancelled) job.fail(new JobCancelled());
  else {
    job.part(answersTo(job.input));
    job.finish(job.input.pairs.length / 2);
  }
  await turn();
}

/** Lets what promises have led to happen. */
export function turn(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}
