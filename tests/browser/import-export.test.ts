import { afterEach, beforeEach, expect, test } from 'vitest';
import { makeDrawn } from '../../src/geom/vertex.ts';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { add, askedAbout, dropFiles, type SavedProfile, savedProfiles, textOfDownload } from './import-page.ts';
import { pickEntrant } from './wall-page.ts';

/** A family with a drawn blank that has an arc, a keyway of odd nanometres and one in plain corners. */
const FAMILY = {
  format: 'sectionary-family',
  version: 1,
  name: 'Sedge Hall',
  units: 'mm',
  runningClearance: 0.05,
  profiles: [
    {
      id: 'rail-keyway',
      kind: 'opening',
      name: 'Rail keyway',
      section: 'Rail',
      outline: [
        [0, 0],
        [2.123457, 0],
        [2.123457, 8.5],
        [0, 8.5],
        [0, 4.000001],
        [0.7, 3.6],
      ],
    },
    {
      id: 'rail-blank',
      kind: 'blank',
      name: 'Rail blank',
      section: 'Rail',
      outline: [
        [0.4, 0],
        [1.6, 0, 0.414213562373],
        [2, 0.4],
        [2, 8.4],
        [0, 8.4],
        [0, 4],
        [0.6, 3.7, -0.2],
        [0, 3.2],
        [0, 0.4, 0.414213562373],
      ],
    },
    {
      id: 'strip',
      kind: 'tool',
      name: 'Strip',
      outline: [
        [0, 0],
        [0.5, 0],
        [0.5, 6],
        [0, 6],
      ],
    },
  ],
};

let app: OpenedApp;

beforeEach(async () => {
  app = await openApp({ context: { permissions: ['clipboard-read', 'clipboard-write'] } });
  await app.page.locator('button[data-opening]').first().waitFor();
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

async function openFamily(): Promise<void> {
  const { page } = app;
  await dropFiles(page, { name: 'sedge.json', content: JSON.stringify(FAMILY) });
  await page.getByRole('dialog').getByRole('button', { name: 'Open it' }).click();
  await page.getByText('Sedge Hall', { exact: true }).first().waitFor();
}

async function openExport() {
  const { page } = app;
  await page.getByRole('button', { name: 'Family ▾' }).click();
  await page.getByRole('button', { name: /^Export…/ }).click();
  const dialog = page.getByRole('dialog', { name: 'Export sections' });
  await dialog.waitFor();
  return dialog;
}

/** The polygon of a saved outline, nanometres, its box standing on 0, 0. */
function polygonOf({ outline = [] }: SavedProfile) {
  const made = makeDrawn(
    outline.map(([x, y, bulge = 0]) => ({
      x: Math.round(x * 1e6),
      y: Math.round(y * 1e6),
      ...(bulge ? { bulge } : {}),
    })),
  );
  if (!made.ok) throw new Error(made.fault.message);
  const [minX, minY] = [Math.min(...made.ring.map(({ x }) => x)), Math.min(...made.ring.map(({ y }) => y))];
  return made.ring.map(({ x, y }) => ({ x: x - minX, y: y - minY }));
}

/** Greatest distance of a corner of one polygon from the other polygon, nanometres. */
function apart(a: ReturnType<typeof polygonOf>, b: ReturnType<typeof polygonOf>): number {
  const off = (p: { x: number; y: number }) =>
    Math.min(
      ...b.map((q, i) => {
        const r = b[(i + 1) % b.length];
        const [ux, uy] = [r.x - q.x, r.y - q.y];
        const t = Math.min(1, Math.max(0, ((p.x - q.x) * ux + (p.y - q.y) * uy) / (ux * ux + uy * uy)));
        return Math.hypot(p.x - q.x - t * ux, p.y - q.y - t * uy);
      }),
    );
  return Math.max(...a.map(off));
}

for (const [format, units] of [
  ['SVG', 'Millimetres'],
  ['DXF', 'Inches'],
  ['CSV', 'Millimetres'],
] as const)
  test(`sections exported as ${format} come back through the app within a micrometre`, async () => {
    const { page } = app;
    await openFamily();
    const dialog = await openExport();
    await dialog.getByRole('button', { name: 'Tick all' }).click();
    await dialog.getByRole('radio', { name: new RegExp(`^${format}`) }).check();
    await dialog.getByRole('button', { name: units }).click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      dialog.getByRole('button', { name: `Save ${format}` }).click(),
    ]);
    const name = `Sedge Hall.${format.toLowerCase()}`;
    expect(download.suggestedFilename()).toBe(name);
    await dialog.getByText(`${name} is in your downloads.`).waitFor();
    const text = await textOfDownload(download);
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'detached' });

    await dropFiles(page, { name, content: text });
    const asked = await askedAbout(page);
    await asked.getByText('3 sections will be added.').waitFor();
    await add(asked);
    const profiles = await savedProfiles(page);
    expect(profiles).toHaveLength(6);
    for (const written of FAMILY.profiles) {
      const back = profiles.filter(({ name: called }) => called === written.name).at(-1);
      expect(back).toMatchObject({ kind: written.kind });
      const [one, other] = [polygonOf(written as SavedProfile), polygonOf(back as SavedProfile)];
      expect(Math.max(apart(one, other), apart(other, one))).toBeLessThan(1_000);
    }
  }, 180_000);

test('the picked profile is ticked at first; a text form can be copied; the sheet is accessible', async () => {
  const { page } = app;
  await openFamily();
  await pickEntrant(page, /^Strip/);
  const dialog = await openExport();
  await expect.poll(() => dialog.getByRole('checkbox', { checked: true }).count()).toBe(1);
  expect(await dialog.getByRole('checkbox', { name: /^Strip/ }).isChecked()).toBe(true);
  expect(await graveAxeFindings(page)).toEqual([]);
  await dialog.getByRole('button', { name: 'Copy SVG' }).click();
  await dialog.getByText('It is in the clipboard.').waitFor();
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  expect(copied).toMatch(/<svg[\s\S]*mm"/);
  await dialog.getByRole('radio', { name: /^DXF/ }).check();
  await expect.poll(() => dialog.getByRole('button', { name: /^Copy/ }).count()).toBe(0);
  await dialog.getByRole('button', { name: 'Tick none' }).click();
  expect(await dialog.getByRole('button', { name: 'Save DXF' }).isDisabled()).toBe(true);
  await dialog.getByText('Nothing is ticked.').waitFor();
}, 120_000);

test('another family is asked about, and its sections are added as chosen, as one step', async () => {
  const { page } = app;
  await openFamily();
  const [keyway, blank, strip] = FAMILY.profiles;
  const other = {
    ...FAMILY,
    name: 'Reed Hall',
    runningClearance: 0.03,
    profiles: [
      keyway,
      { ...blank, outline: strip.outline },
      { ...strip, outline: keyway.outline },
      { ...strip, id: 'new-strip', name: 'Strip' },
    ],
  };
  await dropFiles(page, { name: 'reed.json', content: JSON.stringify(other) });
  await page.getByRole('dialog', { name: 'reed.json is another family' }).waitFor();
  await page.getByRole('button', { name: /^Add its sections/ }).click();
  const dialog = page.getByRole('dialog', { name: 'Add the sections of Reed Hall to Sedge Hall' });
  await dialog.waitFor();
  await dialog.getByText('Reed Hall has a running clearance of 0.03 mm, Sedge Hall of 0.05 mm').waitFor();
  const rows = dialog.getByRole('row');
  const words = (await rows.allTextContents()).slice(1);
  expect(words.map((row) => /there already|clash|new(?=the name|Add)/.exec(row)?.[0])).toEqual([
    'there already',
    'clash',
    'clash',
    'new',
  ]);
  expect(words[3]).toContain('the name is also that of strip');
  expect(await graveAxeFindings(page)).toEqual([]);
  await dialog.getByRole('combobox', { name: /Strip, id strip$/ }).selectOption('Replace ours');
  await dialog.getByText('2 sections will be added, 1 replaced.').waitFor();
  await dialog.getByRole('button', { name: 'Add to Sedge Hall' }).click();
  await dialog.waitFor({ state: 'detached' });
  const merged = await savedProfiles(page);
  expect(merged.map(({ id }) => id)).toEqual(['rail-keyway', 'rail-blank', 'strip', 'rail-blank-2', 'new-strip']);
  expect(merged[2].outline).toEqual(keyway.outline);
  await page.getByRole('button', { name: 'Undo' }).click();
  expect(await savedProfiles(page)).toEqual(FAMILY.profiles);
}, 120_000);
