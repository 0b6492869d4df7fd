import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openApp } from '../kit/open-app.ts';

const DEMO = readFileSync(new URL('../../profiles-demo/polderwick.json', import.meta.url), 'utf8');

test('when a view breaks down, the window says so and the family can still be saved', async () => {
  const app = await openApp();
  const { page } = app;
  // A browser whose layout observer fails stands for any fault in drawing.
  await page.addInitScript(() => {
    window.ResizeObserver = class {
      constructor() {
        throw new Error('no layout here');
      }
    } as unknown as typeof ResizeObserver;
  });
  await page.reload();
  await page.getByRole('heading', { name: 'This could not be drawn' }).waitFor();
  await page.getByText('no layout here').waitFor();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save family' }).click();
  expect(JSON.parse(readFileSync(await (await download).path(), 'utf8'))).toEqual(JSON.parse(DEMO));
  await app.close();
});

test('a worker that cannot be started is told, and judging can be tried again', async () => {
  const app = await openApp();
  const { page } = app;
  await page.addInitScript(() => {
    const Real = window.Worker;
    Object.assign(window, {
      workerAllowed: false,
      Worker: class {
        constructor(...parts: ConstructorParameters<typeof Worker>) {
          if (!(window as unknown as { workerAllowed: boolean }).workerAllowed)
            throw new Error('workers are forbidden here');
          // biome-ignore lint/correctness/noConstructorReturn: the real worker takes the place of this stand-in
          return new Real(...parts);
        }
      },
    });
  });
  await page.reload();
  await page.getByText('Judging failed: workers are forbidden here').waitFor();
  await page.evaluate(() => Object.assign(window, { workerAllowed: true }));
  await page.getByRole('button', { name: 'Judge again' }).click();
  await page.getByRole('heading', { name: 'Heron blank, five chambers enters 1 of 10 keyways' }).waitFor();
  await app.close();
});
