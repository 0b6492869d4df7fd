import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page, Request } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { PROJECT_ROOT } from '../kit/install-when-needed.mjs';
import { type OpenedApp, openApp, WINDOW_SIZES } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { twoFrames } from '../kit/two-frames.ts';
import { demoFamily, knowledgeOf } from '../unit/teach/known-family.ts';
import { drawing, openFamily, rectangle, verdict } from './compare-page.ts';
import { textOf } from './wall-page.ts';

let app: OpenedApp;

const SIZES = Object.values(WINDOW_SIZES);
const SHOTS = join(PROJECT_ROOT, 'tests', 'browser', 'shots');

// One window for the whole file: a family that is opened takes the place of what the test before left behind.
beforeAll(async () => {
  app = await openApp({ address: '#teach' });
});

afterEach(() => expect(app.problems).toEqual([]));

afterAll(() => app.close());

interface TeachOptions {
  readonly size?: keyof typeof WINDOW_SIZES;
  readonly colorScheme?: 'light' | 'dark';
  readonly reducedMotion?: 'reduce' | 'no-preference';
}

const DEMO = JSON.parse(readFileSync(join(PROJECT_ROOT, 'profiles-demo', 'polderwick.json'), 'utf8'));
let opened = 0;

/** The window with a family of its own, or the demo, in Teach. */
async function openTeach(
  { size = 'large', colorScheme = 'light', reducedMotion = 'reduce' }: TeachOptions = {},
  family: object = DEMO,
): Promise<Page> {
  const { page } = app;
  opened++;
  await page.setViewportSize(WINDOW_SIZES[size]);
  await page.emulateMedia({ colorScheme, reducedMotion });
  await page.getByRole('button', { name: 'Wall', exact: true }).click();
  await openFamily(page, { ...family, name: `Taught ${opened}` });
  await page.getByText(`Taught ${opened}`, { exact: true }).first().waitFor();
  await page.locator('[data-judging="done"]').waitFor({ state: 'attached' });
  await page.getByRole('button', { name: 'Teach', exact: true }).click();
  await page.getByRole('button', { name: 'Lesson', exact: true }).click();
  return page;
}

const steps = (page: Page) => page.getByRole('list', { name: 'Steps of the lesson' });
const titles = (page: Page) => steps(page).locator('b').allTextContents();
const show = (page: Page) => page.getByRole('dialog', { name: /^Lesson:/ });
/** Where the lesson that is shown stands: "6.2" is the third state of the sixth step. */
const place = (page: Page) => show(page).evaluate((e) => `${e.dataset.step}.${e.dataset.build}`);
/** Waits until the picture of the step is there and no longer moves. */
async function settled(page: Page): Promise<void> {
  await page.locator('[data-push="coming"]').waitFor({ state: 'detached' });
  if ((await show(page).locator('article[data-show="passage"]').count()) > 0)
    await show(page).locator('[data-passage]').waitFor();
}

/** Writes down every state of a push from now on: on a busy machine one may be over before it is looked for. */
async function watchPushes(page: Page): Promise<() => Promise<string>> {
  await page.evaluate(() => {
    const states: string[] = [];
    Object.assign(window, { pushStates: states });
    const look = () => {
      const state = document.querySelector<HTMLElement>('[data-push]')?.dataset.push;
      if (state && state !== states.at(-1)) states.push(state);
    };
    const watch = { subtree: true, childList: true, attributes: true, attributeFilter: ['data-push'] };
    new MutationObserver(look).observe(document.body, watch);
  });
  return () => page.evaluate(() => (window as unknown as { pushStates: string[] }).pushStates.join(' '));
}

/** Strikes a key as a hand does, not waiting until the page has heard that it went down. */
async function tap(page: Page, key: string): Promise<void> {
  await Promise.all([page.keyboard.down(key), page.keyboard.up(key)]);
}

/** What a room could not read of a slide as it is drawn now: type under 22 pixels, a box that cuts what is in it. */
async function unreadable(page: Page): Promise<string[]> {
  await twoFrames(page);
  return show(page).evaluate((root) => {
    const faults: string[] = [];
    for (const e of root.querySelectorAll<HTMLElement>('article *')) {
      const own = [...e.childNodes].some((child) => child.nodeType === 3 && child.textContent?.trim());
      // The picture of another view is enlarged as a whole.
      const enlarged = e.closest('[data-passage] > div');
      const scale = enlarged ? new DOMMatrix(getComputedStyle(enlarged).transform).a : 1;
      const size = Number.parseFloat(getComputedStyle(e).fontSize) * scale;
      if (own && size < 22) faults.push(`${e.textContent}: ${size} px`);
      const clips = !e.closest('svg') && getComputedStyle(e).overflowY !== 'visible';
      if (clips && e.clientHeight > 0 && e.scrollHeight > e.clientHeight + 1) faults.push(`cut: ${e.textContent}`);
    }
    const title = root.querySelector('h1');
    if (innerWidth >= 1440 && title && Number.parseFloat(getComputedStyle(title).fontSize) < 48)
      faults.push('small title');
    return faults;
  });
}

test('the demo lesson is shown by keyboard through ten steps, every one readable at both sizes', async () => {
  const page = await openTeach();
  await page.locator('[data-present]').focus();
  await page.keyboard.press('p');
  await show(page).waitFor();
  mkdirSync(SHOTS, { recursive: true });
  const seen: string[] = [];
  for (;;) {
    await settled(page);
    const at = await place(page);
    if (seen.includes(at)) break;
    seen.push(at);
    // One change of size a step: the next one begins at the size that this one ended at.
    for (const size of seen.length % 2 === 1 ? SIZES : [...SIZES].reverse()) {
      await page.setViewportSize(size);
      await expect.poll(() => page.locator('article[data-show]').evaluate((e) => e.clientWidth)).toBe(size.width);
      await settled(page);
      await expect.poll(() => unreadable(page), { message: `${at}, ${size.width} pixels wide` }).toEqual([]);
      await page.screenshot({ path: join(SHOTS, `teach-show-${at}-${size.width}x${size.height}.png`) });
    }
    await page.keyboard.press(['ArrowRight', ' ', 'PageDown', 'Enter'][seen.length % 4]);
  }
  const whole = Array.from({ length: 10 }, (_, i) => `${i + 1}.0`);
  whole.splice(6, 0, '6.1', '6.2', '6.3');
  expect(seen).toEqual([...whole, '10.1']);
  expect(await graveAxeFindings(page)).toEqual([]);
  expect(await textOf(show(page).getByRole('status'))).toMatch(
    /^Causeway group blank does not enter Rail keyway: blocked by/,
  );
  await page.keyboard.press('Escape');
  await show(page).waitFor({ state: 'detached' });
  await expect.poll(() => page.evaluate(() => document.activeElement?.hasAttribute('data-present'))).toBe(true);
  // The step that was shown last is the picked one.
  await steps(page).locator('[data-step="10"][aria-current="step"]').waitFor();
});

test('back, jumps, the dark screen, the pointer and clicks; a blocked blank stops with its reason', async () => {
  const page = await openTeach({ reducedMotion: 'no-preference', colorScheme: 'dark' });
  await page.keyboard.press('F5');
  await show(page).waitFor();
  await page.keyboard.press('3');
  await page.getByText('go to 3').waitFor();
  const pushes = await watchPushes(page);
  await page.keyboard.press('Enter');
  await expect.poll(pushes).toBe('coming stopped');
  await show(page).getByText('right ward', { exact: true }).waitFor();
  await takeScreenshots(page, 'teach-show-dark-stopped');
  await page.keyboard.press('i');
  await expect.poll(pushes).toMatch(/^coming stopped coming/);
  await page.keyboard.press('PageUp');
  await page.locator('[data-push="in"]').waitFor();
  await page.keyboard.press('b');
  await page.getByText('The screen is dark. B brings the lesson back.').waitFor();
  await page.keyboard.press('Escape');
  await page.getByText('The screen is dark. B brings').waitFor({ state: 'detached' });
  expect(await place(page)).toBe('2.0');
  await page.mouse.click(1000, 400);
  await expect.poll(() => place(page)).toBe('3.0');
  await page.mouse.click(100, 400);
  await expect.poll(() => place(page)).toBe('2.0');
  const dot = show(page).locator('[data-seen]');
  await tap(page, 'l');
  await expect.poll(() => dot.getAttribute('data-seen')).toBe('true');
  await page.mouse.move(600, 300);
  await expect.poll(async () => (await dot.boundingBox())?.x ?? 0).toBeCloseTo(600 - 26, 0);
  await tap(page, 'l');
  await expect.poll(() => dot.getAttribute('data-seen')).toBe('false');
  // A button that is held and moved points, and is no click.
  await page.mouse.down();
  await page.mouse.move(700, 350, { steps: 4 });
  await expect.poll(() => dot.getAttribute('data-seen')).toBe('true');
  await page.mouse.up();
  await expect.poll(() => dot.getAttribute('data-seen')).toBe('false');
  expect(await place(page)).toBe('2.0');
  await page.keyboard.press('End');
  await expect.poll(() => place(page)).toBe('10.0');
  await page.keyboard.press('Home');
  await expect.poll(() => place(page)).toBe('1.0');
  // What lies under the lesson hears nothing.
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Delete');
  await page.keyboard.press('F5');
  expect(await place(page)).toBe('1.0');
  await page.getByRole('button', { name: 'End' }).click();
  await show(page).waitFor({ state: 'detached' });
  expect(await titles(page)).toHaveLength(10);
});

test('the script is edited by keyboard and pointer, each edit taken back by undo', async () => {
  const page = await openTeach({ size: 'small' });
  const before = await titles(page);
  await steps(page).locator('[data-step="2"]').click();
  await page.keyboard.press('Alt+ArrowDown');
  await expect.poll(() => titles(page)).toEqual([before[0], before[2], before[1], ...before.slice(3)]);
  await page.keyboard.press('d');
  await expect.poll(async () => (await titles(page)).length).toBe(11);
  await page.keyboard.press('Delete');
  await expect.poll(async () => (await titles(page)).length).toBe(10);
  const field = page.getByRole('textbox', { name: 'Title', exact: true });
  await field.fill('');
  await page.getByRole('alert').filter({ hasText: 'A step needs a title.' }).waitFor();
  await field.fill('Typed anew');
  await expect.poll(async () => (await titles(page))[3]).toBe('Typed anew');
  await steps(page).locator('[data-step="4"]').focus();
  for (let n = 0; n < 4; n++) await page.keyboard.press('Control+z');
  await expect.poll(() => titles(page)).toEqual(before);
  await page.getByRole('button', { name: 'Add step ▾' }).click();
  await page.getByRole('button', { name: /^Every keyway/ }).click();
  await steps(page).locator('[data-step="5"][aria-current="step"]').getByText('In every keyway').waitFor();
  await page.getByRole('combobox', { name: 'Blank or tool' }).selectOption({ label: 'Reed group blank' });
  await page
    .getByText('Without words of its own it says: Reed group blank goes into 3 of 10 keyways: Heron, Smew and Bittern.')
    .waitFor();
  await page.getByRole('checkbox', { name: 'all 10' }).uncheck();
  await page.getByRole('checkbox', { name: 'Smew' }).uncheck();
  await page
    .getByText('Reed group blank goes into 2 of 9 keyways: Heron and Bittern.', { exact: false })
    .first()
    .waitFor();
  await takeScreenshots(page, 'teach-script');
  await steps(page).locator('[data-step="5"]').dragTo(steps(page).locator('[data-step="1"]'));
  await expect.poll(async () => (await titles(page))[0]).toBe('In every keyway');
  expect(await graveAxeFindings(page)).toEqual([]);
});

test('a ready lesson is made from any family; a step whose section is gone says so, in the script and to the room', async () => {
  const plain = {
    name: 'Plain',
    runningClearance: 0.03,
    lesson: { title: 'Old', steps: [{ show: 'pair', title: 'Lost', blank: 'gone', opening: 'slot' }] },
    profiles: [
      { id: 'slot', kind: 'opening', name: 'Slot keyway', outline: rectangle(2.1, 6.6) },
      { id: 'wide', kind: 'opening', name: 'Wide keyway', outline: rectangle(3.1, 6.6) },
      { id: 'bar', kind: 'blank', name: 'Bar blank', outline: rectangle(3, 6) },
    ],
  };
  const page = await openTeach({}, plain);
  await page.getByText('! something is missing').waitFor();
  await page
    .getByRole('alert')
    .filter({ hasText: 'The blank "gone" is no longer in the family: pick another.' })
    .waitFor();
  await page.keyboard.press('p');
  await show(page).getByText('The blank of this step is not in this family.', { exact: true }).waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Make a lesson from this family' }).click();
  await expect
    .poll(() => titles(page))
    .toEqual([
      'What decides is the section',
      'Bar blank: in it goes',
      'The keyway next to it: it stops',
      'What all keyways have in common',
      'And now you: does it go in?',
    ]);
  await page.getByRole('status').filter({ hasText: 'Undo brings that back.' }).waitFor();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect.poll(() => titles(page)).toEqual(['Lost']);
});

test('a round of the quiz by keyboard: every answer agrees with the core, the end leads to Compare, the score is kept', async () => {
  const page = await openTeach();
  const { fitOf, family } = knowledgeOf(demoFamily('polderwick'));
  const idOf = (name: string) => family.profiles.find((profile) => profile.name === name)?.id ?? '';
  await page.getByRole('button', { name: 'Quiz', exact: true }).click();
  await page.getByText('10 questions.', { exact: false }).waitFor();
  const pending = new Set<Request>();
  page.on('request', (request) => pending.add(request));
  page.on('requestfinished', (request) => pending.delete(request));
  page.on('requestfailed', (request) => pending.delete(request));
  await page.keyboard.press('Enter');
  let right = 0;
  for (let n = 0; n < 10; n++) {
    await page
      .locator('section[data-told="false"]')
      .getByText(`Question ${n + 1} of 10`)
      .waitFor();
    if (n === 0) await takeScreenshots(page, 'teach-quiz-question');
    // Nobody guesses always the same.
    const saysIn = n % 2 === 0;
    await page.keyboard.press(['e', 'd', '1', '2'][n % 4]);
    const told = page.locator('section[data-told="true"]');
    await told.getByText(`Question ${n + 1} of 10`).waitFor();
    const sentence = await textOf(told.getByRole('status').locator('p').last());
    const [, blank, , keyway] =
      /^(.+?) (does not enter|enters) (.+?)(?: with | tightly: |: | in contact).*$/.exec(sentence) ?? [];
    const truth = fitOf(idOf(blank ?? ''), idOf(keyway ?? ''))?.verdict;
    expect(truth).toBeDefined();
    const isRight = saysIn === (truth !== 'blocked');
    if (isRight) right++;
    await told.getByText(isRight ? '✓ Right' : '✗ Wrong').waitFor();
    if (n === 0) await takeScreenshots(page, 'teach-quiz-answer');
    if (n === 9) expect(await graveAxeFindings(page)).toEqual([]);
    await page.keyboard.press('Enter');
  }
  await page.getByRole('heading', { name: `${right} of 10 right` }).waitFor();
  await takeScreenshots(page, 'teach-quiz-end');
  const wrong = page.locator('li', { has: page.getByRole('button', { name: 'Compare', exact: true }) });
  await expect.poll(() => wrong.count()).toBe(10 - right);
  if (right < 10) {
    const [blank, keyway] = (await textOf(wrong.first().locator('b'))).split(' in ');
    await wrong.first().getByRole('button', { name: 'Compare', exact: true }).click();
    await drawing(page).waitFor();
    expect(await verdict(page)).toContain(`${blank} in ${keyway}`);
    await page.getByRole('button', { name: 'Teach', exact: true }).click();
  }
  const score = page.locator('dl > div', { hasText: 'Right' }).locator('dd');
  await expect.poll(() => textOf(score)).toBe(`${right} of 10`);
  // A reload must not break off what is on its way.
  await expect.poll(() => pending.size).toBe(0);
  await page.reload();
  // The sheet that the tab showed comes back with it.
  await expect.poll(() => textOf(score)).toBe(`${right} of 10`);
  await page.getByRole('button', { name: 'Wipe the score' }).click();
  await expect.poll(() => textOf(score)).toBe('–');
});

test('the lesson fills the screen where the browser lets it, and gives it back', async () => {
  const alone = await openApp({ address: '#teach', fullScreen: true });
  const filled = () => alone.page.evaluate(() => document.fullscreenElement?.getAttribute('role') ?? '');
  await alone.page.getByRole('button', { name: /^Present/ }).click();
  await expect.poll(filled).toBe('dialog');
  await alone.page.keyboard.press('Escape');
  await expect.poll(filled).toBe('');
  expect(alone.problems).toEqual([]);
  await alone.close();
});

test('a family with nothing to ask, or without a lesson, says what is missing', async () => {
  const only = { id: 'bar', kind: 'blank', name: 'Bar blank', outline: rectangle(2, 6) };
  const page = await openTeach({}, { runningClearance: 0.03, profiles: [only] });
  await page.getByRole('heading', { name: 'No lesson yet' }).waitFor();
  // The title of the first step is what is typed first, without a frame in which a key would be lost.
  const focused = await page.getByRole('button', { name: 'Begin with one step' }).evaluate(async (key: HTMLElement) => {
    key.click();
    await Promise.resolve();
    return document.activeElement?.tagName;
  });
  expect(focused).toBe('TEXTAREA');
  await expect.poll(() => titles(page)).toEqual(['A few words']);
  // What is typed is kept after a rest with the field still open.
  await page.keyboard.type('Typed at once');
  await expect.poll(() => titles(page)).toEqual(['Typed at once']);
  await page.getByRole('button', { name: /^Undo/ }).and(page.locator(':enabled')).waitFor();
  await page.getByRole('button', { name: 'Quiz', exact: true }).click();
  await page.getByRole('heading', { name: 'Nothing to ask' }).waitFor();
});

test('a large family is shown to the room without a word too small: what has no room is counted', async () => {
  const slots = Array.from({ length: 60 }, (_, i) => ({
    id: `k${i}`,
    kind: 'opening',
    name: `Keyway ${i + 1}`,
    section: `Section ${i + 1}`,
    outline: rectangle(1 + i * 0.05, 6.6),
  }));
  const bar = { id: 'bar', kind: 'blank', name: 'Bar blank', outline: rectangle(3, 6) };
  const lesson = { title: 'Many', steps: [{ show: 'wall', title: 'Sixty keyways', blank: 'bar' }] };
  const many = { runningClearance: 0.03, profiles: [...slots, bar], lesson };
  const page = await openTeach({ size: 'small' }, many);
  await page.getByText('Sixty keyways').first().waitFor();
  await page.locator('[data-judging="done"]').waitFor({ state: 'attached' });
  await page.keyboard.press('p');
  await show(page)
    .getByText(/^and \d+ more keyways: /)
    .waitFor();
  // 3 mm of blank: the keyways from 3.05 mm on, and one in contact, take it.
  await show(page).getByText('Bar blank goes into 20 of 60 keyways.', { exact: true }).first().waitFor();
  await expect.poll(() => unreadable(page)).toEqual([]);
  await takeScreenshots(page, 'teach-show-many');
});
