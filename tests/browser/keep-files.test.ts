// The browser's own dialogs for files close at once without a screen, so a stand-in gives out files in memory. A real
// download goes through the plain way, in family-files.test.ts and edited.test.ts.
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { openPair } from './compare-page.ts';
import { chooseCorner, moveCornerTo, openMenu, PLAIN } from './keep-page.ts';

let app: OpenedApp;

/** What the stand-in knows: the files, and how it is to behave. */
interface FakeDisk {
  files: Record<string, { text: string; lastModified: number }>;
  picked: string;
  permission: 'granted' | 'denied';
  broken: boolean;
}

/** Puts the stand-in into the page, before anything of the app runs. */
function installDisk(plain: string): void {
  const disk: FakeDisk = {
    files: { 'plain.json': { text: plain, lastModified: 1_000 } },
    picked: 'plain.json',
    permission: 'granted',
    broken: false,
  };
  const handle = (name: string) => ({
    name,
    getFile: async () =>
      new File([disk.files[name]?.text ?? ''], name, { lastModified: disk.files[name]?.lastModified ?? 0 }),
    queryPermission: async () => 'prompt',
    requestPermission: async () => disk.permission,
    createWritable: async () => {
      let written = '';
      return {
        write: async (text: string) => {
          if (disk.broken) throw new DOMException('The disk is full.', 'QuotaExceededError');
          written += text;
        },
        close: async () => {
          disk.files[name] = { text: written, lastModified: (disk.files[name]?.lastModified ?? 0) + 10 };
        },
      };
    },
  });
  const pick = async () => {
    if (disk.picked === '') throw new DOMException('The user aborted a request.', 'AbortError');
    return handle(disk.picked);
  };
  Object.assign(window, { disk, showSaveFilePicker: pick, showOpenFilePicker: async () => [await pick()] });
}

const change = (page: Page, to: Partial<FakeDisk>) =>
  page.evaluate((given) => Object.assign((window as unknown as { disk: FakeDisk }).disk, given), to);

const fileOnDisk = async (page: Page, name: string): Promise<typeof PLAIN> => {
  const text = await page.evaluate((n) => (window as unknown as { disk: FakeDisk }).disk.files[n].text, name);
  return JSON.parse(text) as typeof PLAIN;
};

const edited = (page: Page) => page.getByText('edited', { exact: true });

beforeEach(async () => {
  app = await openApp();
  const { page } = app;
  const plain = JSON.stringify({ format: 'sectionary-family', version: 1, units: 'mm', ...PLAIN });
  await page.evaluate(installDisk, plain);
  await openMenu(page, /^Open family/);
  await openPair(page, 'Bar blank', 'Slot keyway');
  await chooseCorner(page);
  await moveCornerTo(page, '2.01');
  await edited(page).waitFor();
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

test('Save writes back to the file that was opened, by menu and by Ctrl+S', async () => {
  const { page } = app;
  await page.getByRole('button', { name: 'Family ▾' }).click();
  await page.getByText('into plain.json').waitFor();
  await page.getByRole('button', { name: /^Save family into/ }).click();
  await edited(page).waitFor({ state: 'detached' });
  expect((await fileOnDisk(page, 'plain.json')).profiles[1].outline[2]).toEqual([2.01, 6]);
  await moveCornerTo(page, '2.02');
  await edited(page).waitFor();
  await page.keyboard.press('Control+s');
  await edited(page).waitFor({ state: 'detached' });
  expect((await fileOnDisk(page, 'plain.json')).profiles[1].outline[2]).toEqual([2.02, 6]);
});

test('a file that another program has changed since is not written over without a question', async () => {
  const { page } = app;
  const asked: string[] = [];
  let answer = false;
  page.on('dialog', (dialog) => {
    asked.push(dialog.message());
    return answer ? dialog.accept() : dialog.dismiss();
  });
  await change(page, { files: { 'plain.json': { text: '{"theirs": true}', lastModified: 5_000 } } });
  await page.keyboard.press('Control+s');
  await expect.poll(() => asked.length).toBe(1);
  expect(asked[0]).toBe(
    'plain.json was changed by another program since you opened or saved it. Write over those changes?',
  );
  expect(await fileOnDisk(page, 'plain.json')).toEqual({ theirs: true });
  await expect.poll(() => edited(page).count()).toBe(1);
  answer = true;
  await page.keyboard.press('Control+s');
  await edited(page).waitFor({ state: 'detached' });
  expect((await fileOnDisk(page, 'plain.json')).name).toBe('Plain');
});

test('Save as goes to another file, which Save writes from then on; a closed dialog changes nothing', async () => {
  const { page } = app;
  await change(page, { picked: '' });
  await openMenu(page, /^Save family as/);
  await expect.poll(() => edited(page).count()).toBe(1);
  await change(page, { picked: 'other.json' });
  await openMenu(page, /^Save family as/);
  await edited(page).waitFor({ state: 'detached' });
  await moveCornerTo(page, '2.03');
  await page.keyboard.press('Control+s');
  await edited(page).waitFor({ state: 'detached' });
  expect((await fileOnDisk(page, 'other.json')).profiles[1].outline[2]).toEqual([2.03, 6]);
  expect((await fileOnDisk(page, 'plain.json')).profiles[1].outline[2]).toEqual([2, 6]);
});

test('a file that may not or cannot be written is told, what was in it stays, and other ways are offered', async () => {
  const { page } = app;
  await change(page, { permission: 'denied' });
  await page.keyboard.press('Control+s');
  const notice = page.getByRole('alert', { name: 'Not saved as you wished' });
  await notice.getByText('The browser may not write plain.json.').waitFor();
  await notice.getByRole('button', { name: 'Put away' }).click();
  await change(page, { permission: 'granted', broken: true });
  await page.keyboard.press('Control+s');
  await notice.getByText('plain.json could not be written; what was in it before is still there.').waitFor();
  await takeScreenshots(page, 'keep-not-saved');
  expect((await fileOnDisk(page, 'plain.json')).profiles[1].outline[2]).toEqual([2, 6]);
  await expect.poll(() => edited(page).count()).toBe(1);
  const download = page.waitForEvent('download');
  await notice.getByRole('button', { name: 'Save into downloads' }).click();
  expect((await download).suggestedFilename()).toBe('plain.json');
  await edited(page).waitFor({ state: 'detached' });
});
