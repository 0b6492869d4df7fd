import { describe, expect, test } from 'vitest';
import { type EntryMatrix, entryMatrix } from '../../../src/family/entry-matrix.ts';
import type { Family } from '../../../src/family/family.ts';
import { JobCancelled, type JobContext, JobRefused, runInSlices } from '../../../src/jobs/job.ts';
import { judgeKept } from '../../../src/jobs/judge-kept.ts';
import { publishSheets } from '../../../src/jobs/publish-sheets.ts';
import { loadTypeface } from '../../../src/lettering/typeface.ts';
import { marginsNeeded } from '../../../src/publish/margins-needed.ts';
import { sheetGround } from '../../../src/publish/sheet-ground.ts';
import type { OrderOfAny, SheetOrder } from '../../../src/publish/sheet-order.ts';
import { layOutSheet } from '../../../src/publish/sheets.ts';
import { demoFamily } from '../../kit/demo-family.ts';

const any: OrderOfAny = { paper: 'A4', turned: 'portrait', palette: 'colour', units: 'mm' };
const family = demoFamily();

function contextOf(told: [number, number][] = [], cancelled = () => false): JobContext {
  const progress = (done: number, total: number) => told.push([done, total]);
  return { progress, cancelled, pause: () => Promise.resolve(), now: () => performance.now() };
}

/** The demo family again and again, under names of their own: a long chart, judged quickly. */
function repeated(times: number): Family {
  const profiles = Array.from({ length: times }, (_, n) =>
    family.profiles.map((profile) => ({ ...profile, id: `${profile.id}-${n}`, name: `${profile.name} ${n + 1}` })),
  );
  return { ...family, lesson: undefined, profiles: profiles.flat() };
}

describe('a publication', () => {
  test('has the same pages in every form', async () => {
    const sheet = { ...any, sheet: 'matrix' } as const;
    const { pages = [], missingLetters } = await publishSheets({ family, sheet, as: 'pages' }, contextOf());
    const { svg = [], pageCount } = await publishSheets({ family, sheet, as: 'svg' }, contextOf());
    const { pdf = new Uint8Array() } = await publishSheets({ family, sheet, as: 'pdf' }, contextOf());
    expect(pages.length).toBeGreaterThan(0);
    expect([svg.length, pageCount]).toEqual([pages.length, pages.length]);
    for (const [i, text] of svg.entries()) expect(text).toContain(`page ${i + 1} of ${pages.length}`);
    expect(
      Buffer.from(pdf)
        .toString('latin1')
        .match(/\/Type \/Page\b/g),
    ).toHaveLength(pages.length);
    expect(missingLetters).toEqual([]);
  });

  test('of slides is also one HTML file, of the matrix also a table', async () => {
    const { html = '' } = await publishSheets({ family, sheet: { ...any, sheet: 'slides' }, as: 'html' }, contextOf());
    expect(html).toMatch(/^<!doctype html>/i);
    const { csv = '' } = await publishSheets({ family, sheet: { ...any, sheet: 'matrix' }, as: 'csv' }, contextOf());
    expect(csv.trimEnd().split('\n')).toHaveLength(1 + family.profiles.filter(({ kind }) => kind !== 'opening').length);
  });

  test('tells letters that are missing, each once', async () => {
    const profiles = family.profiles.map((profile, i) =>
      profile.kind === 'opening' ? { ...profile, name: `鷺${i}`, section: `鷺${i}` } : profile,
    );
    const sheet = { ...any, sheet: 'matrix' } as const;
    const { missingLetters } = await publishSheets(
      { family: { ...family, profiles }, sheet, as: 'pages' },
      contextOf(),
    );
    expect(missingLetters).toEqual(['鷺']);
  });

  test('takes fits that are known as they are', async () => {
    const judged = await runInSlices(judgeKept(family), contextOf());
    const fit = judged.fits.flat().find(({ verdict }) => verdict === 'enters');
    if (!fit) throw new Error('Nothing enters.');
    const moved = { ...family, profiles: family.profiles.map((p) => ({ ...p, id: `${p.id}-b` })), runningClearance: 1 };
    const known = {
      openings: judged.openings.map((id) => `${id}-b`),
      profiles: judged.profiles.map((id) => `${id}-b`),
      fits: judged.fits.map((row) => row.map(() => fit)),
    };
    const sheet = { ...any, sheet: 'matrix' } as const;
    const { csv = '' } = await publishSheets({ family: moved, sheet, as: 'csv', known }, contextOf());
    expect(csv).not.toContain('blocked');
  });

  test('of what only tells who goes in is the same without the depths of what stays out', async () => {
    const typeface = await loadTypeface();
    const fitsFor = (sheet: SheetOrder) =>
      runInSlices(entryMatrix(family, undefined, undefined, marginsNeeded(family, sheet)), contextOf());
    const all = await runInSlices(entryMatrix(family), contextOf());
    const pages = (sheet: SheetOrder, fits: EntryMatrix) => layOutSheet(sheetGround(family, fits, typeface), sheet);
    const pair = { opening: 'bittern-keyway', blank: 'heron-blank-5' };
    const sheets: SheetOrder[] = [
      { ...any, sheet: 'chart' },
      { ...any, sheet: 'scale', enlarge: 4, all: true },
      { ...any, sheet: 'scale', enlarge: 4, ...pair },
    ];
    const measured: number[] = [];
    for (const sheet of sheets) {
      const fits = await fitsFor(sheet);
      expect(pages(sheet, fits)).toEqual(pages(sheet, all));
      const blocked = fits.fits.flat().filter(({ verdict }) => verdict === 'blocked');
      measured.push(blocked.filter(({ clearance }) => Number.isFinite(clearance)).length);
    }
    expect(measured).toEqual([0, 0, 1]);
    expect(marginsNeeded(family, { ...any, sheet: 'matrix' })(pair.blank, pair.opening)).toBe(true);
  });

  test('that cannot be met is refused in words', async () => {
    const sheet = { ...any, sheet: 'card', of: 'none' } as const;
    const refused = publishSheets({ family, sheet, as: 'pdf' }, contextOf());
    await expect(refused).rejects.toThrow(JobRefused);
    await expect(refused).rejects.toThrow('"none"');
  });
});

describe('a long chart', () => {
  const sheet = { ...any, sheet: 'chart' } as const;

  test('tells how far it is, page by page', async () => {
    const told: [number, number][] = [];
    const { pageCount } = await publishSheets({ family: repeated(16), sheet, as: 'pdf' }, contextOf(told));
    expect(pageCount).toBeGreaterThan(20);
    expect(told.at(-1)).toEqual([pageCount, pageCount]);
    expect(told.filter(([, total]) => total === pageCount).length).toBeGreaterThanOrEqual(pageCount);
  });

  test('stops between two pages when it is asked to', async () => {
    const told: [number, number][] = [];
    const stopping = publishSheets(
      { family: repeated(16), sheet, as: 'svg' },
      contextOf(told, () => told.some(([done, total]) => done === 3 && total < 1000)),
    );
    await expect(stopping).rejects.toThrow(JobCancelled);
    expect(told.at(-1)?.[0]).toBe(3);
  });
});
