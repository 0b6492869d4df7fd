import { afterEach, expect, test } from 'vitest';
import { partOfDemo } from '../kit/demo-family.ts';
import { holdFrames } from '../kit/hold-frames.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { drawing, openPair, sentence, verdict } from './compare-page.ts';
import { reading } from './wall-page.ts';

/** What these tests look at. */
const family = partOfDemo('heron-keyway', 'ruff-keyway', 'heron-blank-5', 'reed-group-blank');

/** Longer than any push takes, milliseconds. */
const WHOLE_PUSH = 5_000;

let app: OpenedApp;

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

for (const reducedMotion of ['reduce', 'no-preference'] as const) {
  test(`a blank that enters is pushed in and lies on its seat (${reducedMotion})`, async () => {
    app = await openApp({ sameWindow: true, family, reducedMotion });
    const { page } = app;
    await openPair(page, 'Reed group blank', 'Heron keyway');
    const before = [await verdict(page), await sentence(page), await reading(page, 'Up')];
    const goOn = await holdFrames(page);
    await page.getByRole('button', { name: 'Push it in' }).click();
    await page.getByText('Reed group blank comes to Heron keyway …').waitFor();
    await goOn(WHOLE_PUSH);
    await page.getByText('It goes in and lies on its seat.').waitFor();
    expect([await verdict(page), await sentence(page), await reading(page, 'Up')]).toEqual(before);
    await page.getByRole('button', { name: 'Take it out' }).click();
    await page.getByText('It goes in and lies on its seat.').waitFor({ state: 'detached' });
  });
}

test('a blank that is blocked stops at the front, and the key I begins and ends it', async () => {
  app = await openApp({ sameWindow: true, family });
  const { page } = app;
  await openPair(page, 'Reed group blank', 'Ruff keyway');
  await page.keyboard.press('i');
  await page.getByText('It stops at the front: the left ward is in the way.').waitFor();
  await page.keyboard.press('i');
  await page.getByText('It stops at the front').waitFor({ state: 'detached' });
});

test('held askew a blank stops though it would fit, and is told so', async () => {
  app = await openApp({ sameWindow: true, family });
  const { page } = app;
  await openPair(page, 'Reed group blank', 'Heron keyway');
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('i');
  await page.getByText(/^It stops at the front: .+ From its best placement it goes in\.$/).waitFor();
});

test('a push is interrupted by Escape, by a press on the drawing and by moving the blank', async () => {
  app = await openApp({ sameWindow: true, family, reducedMotion: 'no-preference' });
  const { page } = app;
  await openPair(page, 'Reed group blank', 'Heron keyway');
  const coming = page.getByText('Reed group blank comes to Heron keyway …');
  const goOn = await holdFrames(page);
  // Its first frame is late, as on a busy machine: it begins at the beginning all the same.
  await page.getByRole('button', { name: 'Push it in' }).evaluate((key: HTMLElement, late) => {
    key.click();
    (window as unknown as { heldFrames: number }).heldFrames += late;
  }, WHOLE_PUSH);
  await coming.waitFor();
  await page.keyboard.press('Escape');
  await coming.waitFor({ state: 'detached' });
  expect(await drawing(page).isVisible()).toBe(true);
  await page.keyboard.press('i');
  await coming.waitFor();
  await page.keyboard.press('ArrowRight');
  await coming.waitFor({ state: 'detached' });
  expect(await reading(page, 'Sideways')).toBe('+0.010 mm');
  await page.keyboard.press('i');
  await coming.waitFor();
  const box = await drawing(page).boundingBox();
  if (!box) throw new Error('The drawing has no box.');
  await page.mouse.click(box.x + 30, box.y + 30);
  await coming.waitFor({ state: 'detached' });
  await goOn(WHOLE_PUSH);
  expect(await page.getByText('It goes in and lies on its seat.').count()).toBe(0);
});
