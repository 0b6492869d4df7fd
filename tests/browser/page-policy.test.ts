import { createServer } from 'node:http';
import { expect, test } from 'vitest';
import { partOfDemo } from '../kit/demo-family.ts';
import { openApp } from '../kit/open-app.ts';
import { kept, marginIs, moveCornerTo, openMenu, openPlain } from './keep-page.ts';
import { judged } from './wall-page.ts';

/** Quickly judged; whether all of the demo is judged is no matter here. */
const family = partOfDemo('heron-keyway', 'heron-blank-5');

test('the built page opens without a complaint and stays on its own origin', async () => {
  const app = await openApp({ offline: true });
  await app.page.waitForLoadState('networkidle');
  expect(app.problems).toEqual([]);
  await app.close();
});

test('the page itself forbids inline script and foreign addresses, wherever it is served', async () => {
  const app = await openApp({ offline: true });
  const policy = await app.page.getAttribute('meta[http-equiv="Content-Security-Policy"]', 'content');
  expect(policy).toContain("default-src 'none'");
  expect(policy).not.toContain('unsafe');
  const outcome = await app.page.evaluate(async () => {
    const script = document.createElement('script');
    script.textContent = 'document.documentElement.dataset.inlineScript = "ran"';
    document.body.append(script);
    const answer = await fetch('http://192.0.2.1/').then(
      () => 'answered',
      () => 'refused',
    );
    return { inlineScript: document.documentElement.dataset.inlineScript ?? 'refused', foreignAddress: answer };
  });
  expect(outcome).toEqual({ inlineScript: 'refused', foreignAddress: 'refused' });
  // Both refusals come from the policy: the browser says so, and no request went out.
  expect(app.problems.filter((problem) => problem.includes('Content Security Policy'))).not.toHaveLength(0);
  expect(app.problems.filter((problem) => problem.startsWith('left the origin'))).toEqual([]);
  await app.close();
});

test('over a whole session no request leaves the origin, the offline worker’s included', async () => {
  const app = await openApp({ offline: true, family });
  const { page } = app;
  const asked: string[] = [];
  page.context().on('request', (request) => asked.push(request.url()));
  await judged(page);
  await openPlain(page);
  await moveCornerTo(page, '2.01');
  await marginIs(page, '+0.045');
  await kept(page);
  await openMenu(page, /^Share by a link/);
  await page.getByRole('button', { name: 'Done' }).click();
  await openMenu(page, /^Snapshots/);
  await page.getByRole('button', { name: 'Take snapshot' }).click();
  await page.getByRole('dialog').getByRole('listitem').waitFor();
  await page.keyboard.press('Escape');
  for (const view of ['Draw', 'Wall']) await page.getByRole('button', { name: view, exact: true }).click();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  await judged(page);
  const foreign = asked.filter((address) => /^(https?|wss?|ftp):/.test(address) && !address.startsWith(app.url));
  expect(asked.length).toBeGreaterThan(5);
  expect(foreign).toEqual([]);
  expect(app.problems).toEqual([]);
  await app.close();
});

test('every way out that a page has is shut by the policy: pictures, styles, frames, sockets, beacons, forms, workers', async () => {
  // A server of another origin that would hear it: it counts who comes.
  let heard = 0;
  const server = createServer((_request, response) => {
    heard++;
    response.end();
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const at = server.address();
  const away = `127.0.0.1:${typeof at === 'object' && at ? at.port : 0}/out`;
  await fetch(`http://${away}`);
  expect(heard).toBe(1);
  const app = await openApp({ offline: true, family });
  await judged(app.page);
  await app.page.evaluate(async (foreign) => {
    const blocked = new Set<string>();
    Object.assign(window, { blocked });
    document.addEventListener('securitypolicyviolation', (event) => blocked.add(event.effectiveDirective));
    const put = (tag: string, fields: object) =>
      document.body.append(Object.assign(document.createElement(tag), fields));
    const away = `http://${foreign}`;
    put('img', { src: `${away}.png` });
    put('link', { rel: 'stylesheet', href: `${away}.css` });
    put('iframe', { src: away });
    put('object', { data: away });
    put('audio', { src: `${away}.wav` });
    put('script', { src: `${away}.js` });
    const form = Object.assign(document.createElement('form'), { action: away, method: 'post' });
    document.body.append(form);
    form.submit();
    navigator.sendBeacon(away, 'secret');
    const attempts = [
      () => fetch(away, { mode: 'no-cors' }),
      () => new WebSocket(`ws://${foreign}`),
      () => new EventSource(away),
      () => new Worker(`${away}.js`),
      () => import(/* @vite-ignore */ `${away}.mjs`),
    ];
    for (const attempt of attempts) {
      try {
        await attempt();
      } catch {
        // Refused at once: that is what is wanted.
      }
    }
  }, away);
  const blocked = () => app.page.evaluate(() => [...(window as unknown as { blocked: Set<string> }).blocked]);
  await expect
    .poll(blocked)
    .toEqual(
      expect.arrayContaining([
        'connect-src',
        'form-action',
        'frame-src',
        'img-src',
        'media-src',
        'object-src',
        'script-src-elem',
        'style-src-elem',
      ]),
    );
  await app.close();
  expect(heard).toBe(1);
  await new Promise((done) => server.close(done).closeAllConnections());
});

test('what users get is the production build of React', async () => {
  const app = await openApp({ offline: true });
  const scripts = await app.page.$$eval('script[src]', (all) => all.map((script) => (script as HTMLScriptElement).src));
  expect(scripts.length).toBeGreaterThan(0);
  for (const address of scripts) {
    const source = await (await fetch(address)).text();
    expect(source).not.toContain('jsxDEV');
    expect(source).not.toContain('Download the React DevTools');
  }
  await app.close();
});
