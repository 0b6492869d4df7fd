import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { explainPlacement } from '../fit/explain-placement.ts';
import { blockedWords, fitSentence, partName } from '../fit/fit-sentence.ts';
import type { ThicknessCurve } from '../gauge/thickness-curve.ts';
import { addSection } from '../interchange/json/add-section.ts';
import { changeFamily } from '../interchange/json/change-family.ts';
import * as lesson from '../interchange/json/edit-lesson.ts';
import { putLeastWeb, putMilled } from '../interchange/json/mill-file.ts';
import { readPicture, writePicture } from '../interchange/json/picture-file.ts';
import { readFamily } from '../interchange/json/read.ts';
import { replaceOutline } from '../interchange/json/replace-outline.ts';
import { writeFamily } from '../interchange/json/write.ts';
import { isLink } from '../interchange/link/link-form.ts';
import type { ExaminedBlade } from '../jobs/examine-blades.ts';
import type { PairDetail } from '../jobs/judge-details.ts';
import type { PairsPart } from '../jobs/judge-pairs.ts';
import type { TolerancesPart } from '../jobs/judge-tolerances.ts';
import { packOutline } from '../jobs/packed-outline.ts';
import { startJob, threadCount } from '../workers/start-job.ts';
import { accessDoors } from './doors/access-doors.ts';
import { blockDoors } from './doors/block-doors.ts';
import { browserPace } from './doors/browser-pace.ts';
import { claimsDoors } from './doors/claims-doors.ts';
import './fonts.ts';
import { interchangeDoors } from './doors/interchange-doors.ts';
import { namesDoors } from './doors/names-doors.ts';
import { bandShapes, innerFitNow, judgeNow, shapesUnder, toleranceNow } from './doors/pair-now.ts';
import { publishDoors } from './doors/publish-doors.ts';
import { sectionsDoors } from './doors/sections-doors.ts';
import { browserTabs } from './keep/browser-tabs.ts';
import type { KeepParts } from './keep/keeping.ts';
import { openLink } from './keep/open-link.ts';
import { browserKeepShelf } from './keep/shelf.ts';
import { keepingOf, startKeeping } from './keep/start-keeping.ts';
import { registerOffline } from './offline/register-offline.ts';
import { mayReplace } from './panels/exchange/may-replace.ts';
import { downloadText, saveFamily } from './panels/exchange/save-file.ts';
import { SessionContext } from './panels/use-store.ts';
import type { Doors } from './state/doors.ts';
import { removeNotice, showNotice } from './state/notices-state.ts';
import { makeSession } from './state/session.ts';
import './styles/tokens.css';
import './styles/base.css';
import './styles/controls.css';
import './styles/print.css';
import { AppFrame } from './views/app-frame.tsx';

const doors: Doors = {
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
  block: blockDoors({
    buildDisplaySet: (order, onProgress) => startJob('buildDisplaySet', order, { onProgress, alone: true }),
  }),
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

/** One of the browser's own memories; null where a strict setting forbids even to look at it. */
function browserMemory(name: 'localStorage' | 'sessionStorage'): Storage | null {
  try {
    return window[name];
  } catch {
    return null;
  }
}

const tabMemory = browserMemory('sessionStorage');
const session = makeSession(doors, browserMemory('localStorage'), tabMemory);

const keepParts: KeepParts = {
  shelf: browserKeepShelf(),
  tabs: browserTabs(),
  memory: tabMemory,
  freshId: () => Array.from(crypto.getRandomValues(new Uint32Array(3)), (n) => n.toString(36)).join(''),
  now: () => Date.now(),
  saveFile: () => saveFamily(session),
  saveText: downloadText,
};

/** A link to a family is taken out of the address once it is read: what is open is from then on the user's own. */
function cleanAddress(): void {
  if (isLink(location.hash)) history.replaceState(null, '', location.pathname + location.search);
}

const fragment = location.hash;
cleanAddress();
startKeeping(session, keepParts, fragment);
addEventListener('hashchange', () => {
  if (!isLink(location.hash)) return;
  const link = location.hash;
  cleanAddress();
  if (mayReplace(session)) openLink(session, link);
});
for (const moment of ['pagehide', 'visibilitychange'])
  addEventListener(moment, () => {
    if (moment === 'pagehide' || document.hidden) keepingOf(session)?.hurry();
  });

registerOffline((bringUp) =>
  showNotice(session, {
    id: 'new-version',
    tone: 'news',
    title: 'A new version is ready',
    words: 'Your work is kept as it is. The new version comes up when the page is loaded again.',
    keys: [
      { label: 'Reload', press: bringUp },
      { label: 'Later', press: () => removeNotice(session, 'new-version') },
    ],
  }),
);

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
