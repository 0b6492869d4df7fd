import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { twoFrames } from '../kit/two-frames.ts';
import { answersOnTheWall, enteredOnTheWall, headline, judged, pickEntrant, pickedEntrant } from './wall-page.ts';

/**
 * What the invented campus' own table of groove sites says (profiles-demo/README.md): a blank enters a keyway when its
 * sites include the keyway's. Written down by hand from that table, not computed.
 */
const ENTERS: Readonly<Record<string, readonly string[]>> = {
  'Heron blank, five chambers': ['Heron'],
  'Heron blank, six chambers': ['Heron'],
  'Smew blank': ['Smew'],
  'Bittern blank': ['Bittern'],
  'Ruff blank': ['Ruff'],
  'Plover blank': ['Plover'],
  'Knot blank': ['Knot'],
  'Curlew blank': ['Curlew'],
  'Rail blank': ['Rail'],
  'Avocet blank': ['Avocet'],
  'Dunlin blank': ['Dunlin'],
  'Reed group blank': ['Heron', 'Smew', 'Bittern'],
  'Dyke group blank': ['Plover', 'Knot', 'Curlew'],
  'Shore group blank': ['Rail', 'Avocet', 'Dunlin'],
  'Causeway group blank': ['Heron', 'Smew', 'Bittern', 'Ruff', 'Plover', 'Knot', 'Curlew'],
};

let app: OpenedApp;

// All tests walk the one window: what is judged stays judged.
beforeAll(async () => {
  app = await openApp();
  await judged(app.page);
});

/** Back to where a visit begins: the wall, the first keyway and the first blank picked, nothing focused. */
beforeEach(async () => {
  const { page } = app;
  await page.getByRole('navigation', { name: 'Views' }).getByRole('button', { name: 'Wall', exact: true }).click();
  await page.getByRole('listbox', { name: 'Keyways' }).getByRole('option', { name: 'Heron keyway' }).click();
  await pickEntrant(page, 'Heron blank, five chambers');
  await page.getByRole('heading', { level: 1, name: /^Heron blank, five chambers enters/ }).waitFor();
  await page.evaluate(() => (document.activeElement as HTMLElement).blur());
});

afterEach(() => expect(app.problems).toEqual([]));

afterAll(() => app.close());

test('the arrow keys walk every blank, and the wall says of each what the campus chart says', async () => {
  const { page } = app;
  for (const [name, openings] of Object.entries(ENTERS)) {
    expect(await pickedEntrant(page)).toBe(name);
    expect(await headline(page)).toBe(`${name} enters ${openings.length} of 10 keyways`);
    expect(await enteredOnTheWall(page)).toEqual(openings);
    expect(await page.locator('button[data-opening]').filter({ hasText: 'too deep' }).count()).toBe(
      10 - openings.length,
    );
    await page.keyboard.press('ArrowDown');
  }
  expect(await enteredOnTheWall(page)).toHaveLength(10);
});

test('a blank in its own keyway has the gap that the campus table gives it', async () => {
  const { page } = app;
  // Column "gap left round its own blank" of the table; arcs as chords may cost half a micrometre, the display another.
  const gaps = { Smew: '0.048', Bittern: '0.060', Ruff: '0.045', Plover: '0.052', Knot: '0.043', Curlew: '0.058' };
  for (const [section, gap] of Object.entries(gaps)) {
    await pickEntrant(page, `${section} blank`);
    const { margin } = (await answersOnTheWall(page))[section];
    expect(Math.abs(Number.parseFloat(margin) - Number(gap))).toBeLessThan(0.0011);
    expect(margin).toMatch(/^\+0\.\d{3} mm$/);
  }
});

test('left and right walk the blanks too, and the walk goes round', async () => {
  const { page } = app;
  await page.keyboard.press('ArrowRight');
  expect(await pickedEntrant(page)).toBe('Heron blank, six chambers');
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('ArrowLeft');
  expect(await pickedEntrant(page)).toBe('Nose feeler');
  expect(await headline(page)).toContain('Nose feeler');
});

test('cells take the keyboard: left and right go along the block, up and down still walk the blanks', async () => {
  const { page } = app;
  await page.locator('button[data-opening="heron-keyway"]').focus();
  // Read in the same task as the key, not a frame later: what is struck next is meant for this cell.
  const goRight = () =>
    page.evaluate(() => {
      const key = new KeyboardEvent('keydown', { key: 'ArrowRight', bubbles: true, cancelable: true });
      document.activeElement?.dispatchEvent(key);
      return document.activeElement?.getAttribute('data-opening');
    });
  expect([await goRight(), await goRight()]).toEqual(['smew-keyway', 'bittern-keyway']);
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => pickedEntrant(page)).toBe('Heron blank, six chambers');
  await page.getByRole('heading', { name: 'in Bittern keyway' }).waitFor();
});

test('Enter opens the picked pair from the tray and from nowhere in particular', async () => {
  const { page } = app;
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: /Heron blank, six chambers in Heron keyway: enters/ }).waitFor();
  await page.keyboard.press('Escape');
  await pickEntrant(page, 'Smew blank');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: /Smew blank in Heron keyway: blocked/ }).waitFor();
});

test('the readings tell the picked pair in a sentence, and the list of what it goes into picks keyways', async () => {
  const { page } = app;
  await pickEntrant(page, 'Reed group blank');
  const readings = page.getByRole('complementary', { name: 'Readings' });
  await readings.getByText(/^Reed group blank enters Heron keyway with 0\.05\d mm all round/).waitFor();
  // The keyway of the list: the family's own figures may name it too.
  await readings
    .getByRole('region', { name: /^goes into/ })
    .getByRole('button', { name: /Bittern/ })
    .click();
  await readings.getByRole('heading', { name: 'in Bittern keyway' }).waitFor();
  await page.getByRole('listbox', { name: 'Keyways' }).getByRole('option', { name: 'Plover keyway' }).click();
  await readings.getByText(/blocked by the .+ at \d\.\d–\d\.\d mm, 0\.\d{3} mm too deep/).waitFor();
});

test('inch units turn every length at once and are still there after a new visit', async () => {
  const { page } = app;
  await page.getByRole('button', { name: 'inch' }).click();
  const { Heron, Bittern } = await answersOnTheWall(page);
  // 0.055 mm / 0.0254 mm = 2.17 thousandths.
  expect(Heron.margin).toBe('+2.2 thou');
  expect(Bittern.margin).toMatch(/^\d+\.\d thou too deep$/);
  await page.getByText('0.079 × 0.331 in').waitFor();
  expect(await page.locator('main, aside').allInnerTexts()).not.toContain(' mm');
  await page.reload();
  await judged(page);
  expect((await answersOnTheWall(page)).Heron.margin).toBe('+2.2 thou');
  await page.getByRole('button', { name: 'mm', exact: true }).click();
  await expect.poll(async () => (await answersOnTheWall(page)).Heron.margin).toBe('+0.055 mm');
});

test('ten keyways fit both windows: no cell is cut, nothing is smaller than 14 pixels', async () => {
  const { page } = app;
  for (const size of [
    { width: 1440, height: 900 },
    { width: 1024, height: 700 },
  ]) {
    await page.setViewportSize(size);
    await twoFrames(page);
    const measure = () =>
      page.evaluate(() => {
        const block = document.querySelector('ul[aria-label="Display block"]')?.parentElement;
        const frame = block?.getBoundingClientRect();
        const cells = [...document.querySelectorAll('button[data-opening]')];
        const inside = cells.filter((cell) => {
          const box = cell.getBoundingClientRect();
          return frame && box.top >= frame.top - 1 && box.bottom <= frame.bottom + 1 && box.right <= frame.right + 1;
        });
        const cut = cells
          .flatMap((cell) => [...cell.querySelectorAll('span:not(.unseen)')])
          .filter((s) => s.scrollWidth > s.clientWidth + 1);
        const texts = [...document.querySelectorAll('body *')].filter((e) =>
          [...e.childNodes].some((n) => n.nodeType === 3 && n.textContent?.trim()),
        );
        return {
          inside: inside.length,
          cut: cut.filter((s) => getComputedStyle(s).display !== 'inline').map((s) => s.textContent),
          smallest: Math.min(...texts.map((e) => Number.parseFloat(getComputedStyle(e).fontSize))),
          scrolls:
            document.documentElement.scrollWidth > innerWidth || document.documentElement.scrollHeight > innerHeight,
        };
      });
    await expect.poll(measure).toEqual({ inside: 10, cut: [], smallest: 14, scrolls: false });
  }
});
