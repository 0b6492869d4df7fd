import { expect, test } from 'vitest';
import { openApp } from '../kit/open-app.ts';

test('the built page opens without a complaint and stays on its own origin', async () => {
  const app = await openApp();
  await app.page.waitForLoadState('networkidle');
  expect(app.problems).toEqual([]);
  await app.close();
});

test('the page itself forbids inline script and foreign addresses, wherever it is served', async () => {
  const app = await openApp();
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

test('what users get is the production build of React', async () => {
  const app = await openApp();
  const scripts = await app.page.$$eval('script[src]', (all) => all.map((script) => (script as HTMLScriptElement).src));
  expect(scripts.length).toBeGreaterThan(0);
  for (const address of scripts) {
    const source = await (await fetch(address)).text();
    expect(source).not.toContain('jsxDEV');
    expect(source).not.toContain('Download the React DevTools');
  }
  await app.close();
});
