import { explainPlacement } from '../../fit/explain-placement.ts';
import { blockedWords, fitSentence, partName } from '../../fit/fit-sentence.ts';
import type { ThicknessCurve } from '../../gauge/thickness-curve.ts';
import { addSection } from '../../interchange/json/add-section.ts';
import { changeFamily } from '../../interchange/json/change-family.ts';
import * as lesson from '../../interchange/json/edit-lesson.ts';
import { putLeastWeb, putMilled } from '../../interchange/json/mill-file.ts';
import { readPicture, writePicture } from '../../interchange/json/picture-file.ts';
import { readFamily } from '../../interchange/json/read.ts';
import { replaceOutline } from '../../interchange/json/replace-outline.ts';
import { writeFamily } from '../../interchange/json/write.ts';
import type { ExaminedBlade } from '../../jobs/examine-blades.ts';
import type { PairDetail } from '../../jobs/judge-details.ts';
import type { PairsPart } from '../../jobs/judge-pairs.ts';
import type { TolerancesPart } from '../../jobs/judge-tolerances.ts';
import { packOutline } from '../../jobs/packed-outline.ts';
import { startJob, threadCount } from '../../workers/start-job.ts';
import type { Doors } from '../state/doors.ts';
import { accessDoors } from './access-doors.ts';
import { browserPace } from './browser-pace.ts';
import { claimsDoors } from './claims-doors.ts';
import { interchangeDoors } from './interchange-doors.ts';
import { namesDoors } from './names-doors.ts';
import { bandShapes, innerFitNow, judgeNow, shapesUnder, toleranceNow } from './pair-now.ts';
import { publishDoors } from './publish-doors.ts';
import { sectionsDoors } from './sections-doors.ts';

/** The real operations that the window asks the core for. */
export const appDoors: Doors = {
  readFamily,
  writeFamily,
  replaceOutline,
  changeFamily,
  addSection,
  mill: { putMilled, putLeastWeb },
  claims: claimsDoors((input, onPart) =>
    startJob('judgeTolerances', input, { onPart: (part) => onPart(part as TolerancesPart) }),
  ),
  lesson,
  access: accessDoors,
  sections: sectionsDoors,
  tiers: {
    layOut: (input) => startJob('layOutTiers', input),
    countConcepts: (input) => startJob('countConcepts', input),
  },
  passage: {
    findPassage: (input, onProgress) => startJob('findPassage', input, { onProgress, alone: true }),
    millPassage: (input, onProgress) => startJob('millPassage', input, { onProgress, alone: true }),
  },
  strength: {
    examineBlades: (questions, onPart) =>
      startJob('examineBlades', questions, { onPart: (part) => onPart(part as ExaminedBlade), alone: true }),
  },
  grow: {
    growFamily: (input, onProgress) => startJob('growFamily', input, { onProgress, alone: true }),
  },
  gauge: {
    gaugeFamily: (question, onCurve, onProgress) =>
      startJob('gaugeFamily', question, {
        onPart: (part) => onCurve(part as ThicknessCurve),
        onProgress,
        alone: true,
      }),
    tableTools: (question, onProgress) => startJob('tableTools', question, { onProgress, alone: true }),
    coverOpenings: (question, onProgress) => startJob('coverOpenings', question, { onProgress, alone: true }),
  },
  capacity: {
    countCapacity: (input, onProgress) => startJob('countCapacity', input, { onProgress, alone: true }),
  },
  block: {
    buildDisplaySet: (order, onProgress) => startJob('buildDisplaySet', order, { onProgress, alone: true }),
    writeDisplaySet: (writing, onProgress) => startJob('writeDisplaySet', writing, { onProgress, alone: true }),
  },
  publish: publishDoors((input, onProgress) => startJob('publishSheets', input, { onProgress, keptAs: 'publish' })),
  judgeNow,
  toleranceNow,
  innerFitNow,
  shapesUnder,
  bandShapes,
  threadCount,
  judgePairs: (input, onPart) => startJob('judgePairs', input, { onPart: (part) => onPart(part as PairsPart) }),
  judgeDetails: (input, onPart) => startJob('judgeDetails', input, { onPart: (part) => onPart(part as PairDetail) }),
  guardFamily: (family, matrix) => startJob('guardFamily', { family, matrix }),
  drawParts: (opening, entrant, bands, count, seed) =>
    startJob('drawParts', { opening: packOutline('', opening), entrant: packOutline('', entrant), bands, count, seed }),
  tracePicture: (input, onProgress) => startJob('tracePicture', input, { onProgress }),
  readPicture,
  writePicture,
  interchange: interchangeDoors((input) => startJob('readDrawing', input, { alone: true })),
  names: namesDoors,
  identify: {
    identifyOutline: (question, onProgress) => startJob('identifyOutline', question, { onProgress }),
  },
  pace: browserPace,
  explainPlacement,
  fitSentence,
  blockedWords,
  partName,
};
