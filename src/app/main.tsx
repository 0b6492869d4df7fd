import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { isLink } from '../interchange/link/link-form.ts';
import './fonts.ts';
import { appDoors } from './doors/app-doors.ts';
import { browserTabs } from './keep/browser-tabs.ts';
import type { KeepParts } from './keep/keeping.ts';
import { openLink } from './keep/open-link.ts';
import { browserKeepShelf } from './keep/shelf.ts';
import { keepingOf, startKeeping } from './keep/start-keeping.ts';
import { registerOffline } from './offline/register-offline.ts';
import { mayReplace } from './panels/exchange/may-replace.ts';
import { downloadText, saveFamily } from './panels/exchange/save-file.ts';
import { SessionContext } from './panels/use-store.ts';
import { removeNotice, showNotice } from './state/notices-state.ts';
import { makeSession } from './state/session.ts';
import './styles/tokens.css';
import './styles/base.css';
import './styles/controls.css';
import './styles/print.css';
import { AppFrame } from './views/app-frame.tsx';

/** One of the browser's own memories; null where a strict setting forbids even to look at it. */
function browserMemory(name: 'localStorage' | 'sessionStorage'): Storage | null {
  try {
    return window[name];
  } catch {
    return null;
  }
}

const tabMemory = browserMemory('sessionStorage');
const session = makeSession(appDoors, browserMemory('localStorage'), tabMemory);

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
