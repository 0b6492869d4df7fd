import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { explainPlacement } from '../fit/explain-placement.ts';
import { blockedWords, fitSentence, partName } from '../fit/fit-sentence.ts';
import { addDrawn } from '../interchange/json/add-drawn.ts';
import { changeFamily } from '../interchange/json/change-family.ts';
import { readPicture, writePicture } from '../interchange/json/picture-file.ts';
import { readFamily } from '../interchange/json/read.ts';
import { replaceOutline } from '../interchange/json/replace-outline.ts';
import { writeFamily } from '../interchange/json/write.ts';
import type { PairDetail } from '../jobs/judge-details.ts';
import type { PairsPart } from '../jobs/judge-pairs.ts';
import { packOutline } from '../jobs/packed-outline.ts';
import { startJob, threadCount } from '../workers/start-job.ts';
import { browserPace } from './browser-pace.ts';
import './fonts.ts';
import { bandShapes, innerFitNow, judgeNow, shapesUnder, toleranceNow } from './pair-now.ts';
import { SessionContext } from './panels/use-store.ts';
import { openText } from './state/document-state.ts';
import type { Doors } from './state/doors.ts';
import { SAMPLE_FAMILIES } from './state/sample-families.ts';
import { makeSession } from './state/session.ts';
import type { Shelf } from './state/settings-state.ts';
import './styles/tokens.css';
import './styles/base.css';
import './styles/controls.css';
import { AppFrame } from './views/app-frame.tsx';

const doors: Doors = {
  readFamily,
  writeFamily,
  replaceOutline,
  changeFamily,
  addDrawn,
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
  pace: browserPace,
  explainPlacement,
  fitSentence,
  blockedWords,
  partName,
};

/** The browser's own shelf; null where a strict setting forbids even to look at it. */
function browserShelf(): Shelf | null {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
}

const session = makeSession(doors, browserShelf());
const [demo] = SAMPLE_FAMILIES;
openText(session.documents, doors, demo.text, demo.fileName);

const root = document.getElementById('root');
if (root) {
  createRoot(root).render(
    <StrictMode>
      <SessionContext value={session}>
        <AppFrame />
      </SessionContext>
    </StrictMode>,
  );
}
