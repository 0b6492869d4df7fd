import { readFileSync } from 'node:fs';
import type { Download, Locator, Page } from 'playwright-core';

/** A file that comes in: its name and its bytes or text. */
export interface Incoming {
  readonly name: string;
  readonly content: string | Buffer;
}

/** A file of the repository. */
export function fileAt(path: string): Incoming {
  return { name: path.slice(path.lastIndexOf('/') + 1), content: readFileSync(path) };
}

/** Picks files through Import… in the Family menu, as a user does. */
export async function importThroughMenu(page: Page, ...files: Incoming[]): Promise<void> {
  await page.getByRole('button', { name: 'Family ▾' }).click();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: /^Import…/ }).click(),
  ]);
  await chooser.setFiles(files.map(({ name, content }) => ({ name, mimeType: '', buffer: Buffer.from(content) })));
}

/** Drops files on the middle of the window. */
export async function dropFiles(page: Page, ...files: Incoming[]): Promise<void> {
  const listed = files.map(({ name, content }) => [name, Buffer.from(content).toString('base64')]);
  const data = await page.evaluateHandle((list) => {
    const transfer = new DataTransfer();
    for (const [name, base64] of list) {
      const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
      transfer.items.add(new File([bytes], name));
    }
    return transfer;
  }, listed);
  await page.dispatchEvent('body', 'dragover', { dataTransfer: data });
  await page.getByText('Drop to open or import').waitFor();
  await page.dispatchEvent('body', 'drop', { dataTransfer: data });
}

/** Puts a text into the clipboard and pastes it with the keyboard, outside of any field. */
export async function pasteText(page: Page, text: string): Promise<void> {
  await page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
  await page.keyboard.press('Control+V');
}

/** The dialog that asks about a drawing; waits for it. */
export async function askedAbout(page: Page): Promise<Locator> {
  const dialog = page.getByRole('dialog', { name: /^Import / });
  await dialog.waitFor();
  return dialog;
}

/** What the dialog lists, one line a loop: what stands in its row, without the fields. */
export async function listedLoops(dialog: Locator): Promise<string[]> {
  const rows = dialog.getByRole('list', { name: 'Loops of the drawing' }).getByRole('listitem');
  return rows.evaluateAll((items) =>
    items.map((item) => [...item.querySelectorAll('p')].map((line) => line.textContent).join(' | ')),
  );
}

/** Width and height of every listed loop, millimetres with two decimals. */
export async function listedSizes(dialog: Locator): Promise<[number, number][]> {
  const lines = await listedLoops(dialog);
  return lines.map((line) => {
    const found = /([\d.]+) × ([\d.]+) mm/.exec(line);
    return [Number(found?.[1]), Number(found?.[2])];
  });
}

/** The notice of what was refused; waits for it. */
export async function refused(page: Page): Promise<Locator> {
  const notice = page.getByRole('alert', { name: 'File not opened' });
  await notice.waitFor();
  return notice;
}

/** Presses Add in the dialog and waits until it is gone. */
export async function add(dialog: Locator): Promise<void> {
  await dialog.getByRole('button', { name: /^Add / }).click();
  await dialog.waitFor({ state: 'detached' });
}

export interface SavedProfile {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly section?: string;
  readonly outline?: number[][];
}

/** The profiles of the open family, as it is saved. */
export async function savedProfiles(page: Page): Promise<SavedProfile[]> {
  await page.getByRole('button', { name: 'Family ▾' }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: /^Save family(?! as)/ }).click(),
  ]);
  return JSON.parse(await textOfDownload(download)).profiles;
}

/** The text of a file that was put into the downloads. */
export async function textOfDownload(download: Download): Promise<string> {
  return readFileSync(await download.path(), 'utf8');
}
