import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { buildOnce } from '../kit/build-once.mjs';
import { partOfDemo } from '../kit/demo-family.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { kept, marginIs, moveCornerTo, openPlain } from './keep-page.ts';
import { headline, judged, pickEntrant } from './wall-page.ts';

/** Quickly judged; whether all of the demo is judged is no matter here. */
const family = partOfDemo('heron-keyway', 'heron-blank-5', 'reed-group-blank');

let app: OpenedApp;

afterEach(async () => {
  await app.close();
});

/** Waits until the page's files lie ready for later. */
async function readyForOffline(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
}

test('after the first opening all works without a network: a reload, judging, an edit, what is kept', async () => {
  app = await openApp({ offline: true, family });
  const { page } = app;
  await judged(page);
  await readyForOffline(page);
  await page.context().setOffline(true);
  await page.reload();
  await judged(page);
  await pickEntrant(page, 'Reed group blank');
  await page.getByRole('heading', { level: 1, name: /^Reed group blank/ }).waitFor();
  expect(
    await page.evaluate(() =>
      fetch('./not-there.json').then(
        () => 'answered',
        () => 'no network',
      ),
    ),
  ).toBe('no network');
  app.problems.length = 0;
  await openPlain(page);
  await moveCornerTo(page, '2.01');
  await marginIs(page, '+0.045');
  await kept(page);
  const other = await app.anotherTab('#compare');
  await marginIs(other, '+0.045');
  expect(app.problems).toEqual([]);
});

test('the page can be installed: a manifest with a name, relative addresses and icons of the sizes it says', async () => {
  app = await openApp({ offline: true });
  const { page } = app;
  const href = await page.getAttribute('link[rel="manifest"]', 'href');
  expect(href).toBe('./manifest.webmanifest');
  const manifest = await page.evaluate(async (address) => (await fetch(address ?? '')).json(), href);
  expect(manifest).toMatchObject({ name: 'Sectionary', start_url: './', scope: './', display: 'standalone' });
  const sizes = await page.evaluate(
    (icons: { src: string }[]) =>
      Promise.all(
        icons.map(async ({ src }) => {
          const picture = new Image();
          picture.src = src;
          await picture.decode();
          return `${picture.naturalWidth}x${picture.naturalHeight}`;
        }),
      ),
    manifest.icons,
  );
  expect(sizes).toEqual(manifest.icons.map((icon: { sizes: string }) => icon.sizes));
  // What the browser itself finds wanting for an installation.
  const debug = await page.context().newCDPSession(page);
  await readyForOffline(page);
  const { installabilityErrors } = await debug.send('Page.getInstallabilityErrors');
  // A private window, as tests have it, installs nothing; that is the only thing in the way.
  expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito')).toEqual([]);
});

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

/** Serves a folder under a path of its own, as a school's server might. */
function serveFolder(folder: string): Promise<{ server: Server; address: string }> {
  const server = createServer((request, response) => {
    const path =
      new URL(request.url ?? '/', 'http://localhost').pathname.replace(/^\/deep\/path\//, '') || 'index.html';
    try {
      response.writeHead(200, { 'content-type': TYPES[extname(path)] ?? 'application/octet-stream' });
      response.end(readFileSync(join(folder, path)));
    } catch {
      response.writeHead(404).end();
    }
  });
  return new Promise((resolve) =>
    server.listen(0, '127.0.0.1', () => {
      const at = server.address();
      resolve({ server, address: `http://127.0.0.1:${typeof at === 'object' && at ? at.port : 0}/deep/path/` });
    }),
  );
}

/** Makes another build of a built folder: the page's title says so, and the worker knows other bytes. */
function rebuild(folder: string): void {
  const page = join(folder, 'index.html');
  writeFileSync(page, readFileSync(page, 'utf8').replace('Opening the display block', 'Opening the newer block'));
  const worker = join(folder, 'offline-worker.js');
  const source = readFileSync(worker, 'utf8');
  expect(source).toMatch(/"hash":"[0-9a-f]{16}"/);
  writeFileSync(worker, source.replace(/"hash":"[0-9a-f]{16}"/, '"hash":"00000000newbuild"'));
}

test('a new build is told and comes up when the user says so; the old one’s files are gone then', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'sectionary-build-'));
  cpSync(buildOnce('app'), folder, { recursive: true });
  const { server, address } = await serveFolder(folder);
  app = await openApp({ offline: true });
  try {
    const page = await app.page.context().newPage();
    const opened = () => page.locator('button[data-opening]').first().waitFor();
    await page.goto(address);
    await opened();
    await readyForOffline(page);
    await page.reload();
    await opened();
    const block = () => page.evaluate(async () => (await fetch('./index.html')).text());
    expect(await block()).toContain('Opening the display block');
    rebuild(folder);
    await page.reload();
    const notice = page.getByRole('alert', { name: 'A new version is ready' });
    await notice.waitFor();
    await takeScreenshots(page, 'keep-new-version');
    // Until then page and files are those of one build, the old one.
    expect(await block()).toContain('Opening the display block');
    await Promise.all([page.waitForEvent('load'), notice.getByRole('button', { name: 'Reload' }).click()]);
    await opened();
    expect(await block()).toContain('Opening the newer block');
    expect(await page.evaluate(() => caches.keys())).toEqual(['sectionary-00000000newbuild']);
    await expect.poll(() => headline(page)).toContain('of 10 keyways');
  } finally {
    await new Promise((done) => server.close(done).closeAllConnections());
    rmSync(folder, { recursive: true, force: true });
  }
});

test('the worker knows every file of its build, and no other', () => {
  const folder = buildOnce('app');
  const source = readFileSync(join(folder, 'offline-worker.js'), 'utf8');
  const { files } = JSON.parse(/\{"hash".*?\]\}/.exec(source)?.[0] ?? '{}') as { files: string[] };
  const built = (readdirSync(folder, { recursive: true, withFileTypes: true }) as import('node:fs').Dirent[])
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .replaceAll('\\', '/'),
    )
    .filter((name) => name !== 'offline-worker.js');
  expect(files.toSorted()).toEqual(built.toSorted());
});
