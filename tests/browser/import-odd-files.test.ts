import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { SVG_CASES, svgText } from '../cases/drawings/svg-cases.ts';
import { DXF_DRAWINGS, dxfDrawing } from '../cases/dxf-drawings.ts';
import { partOfDemo } from '../kit/demo-family.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { askedAbout, dropFiles, fileAt, type Incoming, listedSizes, refused } from './import-page.ts';

let app: OpenedApp;

beforeEach(async () => {
  app = await openApp({ sameWindow: true, family: partOfDemo('heron-keyway', 'heron-blank-5') });
  await app.page.locator('button[data-opening]').first().waitFor();
  await app.page.evaluate(() => {
    Object.assign(window, { executed: 0, alert: () => Object.assign(window, { executed: 1 }) });
  });
});

afterEach(async () => {
  // Nothing was asked of any other place, no rule of the page was offended, nothing threw.
  expect(app.problems).toEqual([]);
  await app.close();
});

/** Drops one file and tells what came of it: the sizes that are offered, or why it is refused. */
async function outcomeOf(file: Incoming): Promise<[number, number][] | string> {
  const { page } = app;
  await dropFiles(page, file);
  const dialog = page.getByRole('dialog', { name: `Import ${file.name}` });
  const notice = page.getByRole('alert', { name: 'File not opened' });
  await dialog.or(notice).waitFor();
  const offered = await dialog.isVisible();
  const outcome = offered ? await listedSizes(dialog) : ((await notice.textContent()) ?? '');
  await page.keyboard.press('Escape');
  await (offered ? dialog : notice).waitFor({ state: 'detached' });
  return outcome;
}

const near = (a: readonly number[], b: readonly number[]) => Math.max(...a.map((n, i) => Math.abs(n - b[i]))) < 0.011;

/** Whether every wanted size is among those offered. */
function expectSizes(file: string, offered: [number, number][] | string, wanted: readonly (readonly number[])[]): void {
  for (const size of wanted)
    expect({
      file,
      size,
      offered,
      found: typeof offered !== 'string' && offered.some((one) => near(one, size)),
    }).toEqual(expect.objectContaining({ file, found: true }));
}

describe('odd files through the dialog, at sizes worked out by hand', () => {
  const svgs = SVG_CASES.filter(({ paths }) => paths.some(({ area }) => area !== undefined)).slice(0, 24);
  test(`${svgs.length} drawings of the SVG corpus`, async () => {
    for (const { file, paths } of svgs) {
      const offered = await outcomeOf({ name: `${file}.svg`, content: svgText(file) });
      const wanted = paths.filter(({ area }) => area !== undefined).map(({ box: [, , w, h] }) => [w, h]);
      expectSizes(file, offered, wanted);
    }
  }, 600_000);

  const dxfs = DXF_DRAWINGS.filter(({ loops }) => loops.length > 0).filter((_, i) => i % 4 === 0);
  test(`${dxfs.length} drawings of the DXF corpus`, async () => {
    for (const { file, loops } of dxfs) {
      const offered = await outcomeOf({ name: `${file}.dxf`, content: dxfDrawing(file) });
      const wanted = loops.flatMap(({ width, height }) => (width && height ? [[width, height]] : []));
      expectSizes(file, offered, wanted);
    }
  }, 600_000);

  const tables = [
    'plain-commas.csv',
    'semicolons-decimal-comma.csv',
    'tabs-decimal-comma.tsv',
    'spaces.txt',
    'header-inches.csv',
    'old-line-ends.csv',
  ];
  test(`${tables.length} tables of points`, async () => {
    for (const file of tables) {
      const offered = await outcomeOf(fileAt(`tests/cases/drawings/csv/${file}`));
      expect({ file, offered }).toEqual({ file, offered: expect.arrayContaining([expect.any(Array)]) });
    }
  }, 300_000);
});

const XMLNS = 'xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"';
const SIZE = 'width="20mm" height="20mm" viewBox="0 0 20 20"';
const BLADE = '<rect id="blade" x="2" y="2" width="2" height="8"/>';

/** Files that try to run, to fetch or to swamp; what is expected: the blade among what is offered, or words. */
const HOSTILE: readonly (readonly [string, string, 'blade' | RegExp])[] = [
  ['script.svg', `<svg ${XMLNS} ${SIZE}><script>window.executed = 1; alert(1)</script>${BLADE}</svg>`, 'blade'],
  [
    'handler.svg',
    `<svg ${XMLNS} ${SIZE} onload="window.executed=1">${BLADE.replace('/>', ' onclick="alert(1)"/>')}</svg>`,
    'blade',
  ],
  [
    'fetches.svg',
    `<svg ${XMLNS} ${SIZE}><style>@import url(http://127.0.0.1:9/a.css); rect { fill: url(http://127.0.0.1:9/b.svg#c) }</style><image href="http://127.0.0.1:9/c.png" width="5" height="5"/><use xlink:href="http://127.0.0.1:9/d.svg#e"/>${BLADE}</svg>`,
    'blade',
  ],
  [
    'foreign.svg',
    `<svg ${XMLNS} ${SIZE}><foreignObject width="9" height="9"><iframe xmlns="http://www.w3.org/1999/xhtml" src="http://127.0.0.1:9/"></iframe></foreignObject>${BLADE}</svg>`,
    'blade',
  ],
  [
    'label.svg',
    `<svg ${XMLNS} ${SIZE}><rect id="&lt;img src=x onerror=alert(1)&gt;" x="2" y="2" width="2" height="8"/></svg>`,
    'blade',
  ],
  [
    'entity-bomb.svg',
    `<!DOCTYPE svg [<!ENTITY a "aaaaaaaaaa">${Array.from({ length: 12 }, (_, i) => `<!ENTITY a${i} "${`&a${i === 0 ? '' : i - 1};`.repeat(10)}">`).join('')}]><svg ${XMLNS} ${SIZE}><desc>&a11;</desc>${BLADE}</svg>`,
    /entit|DOCTYPE/i,
  ],
  [
    'external-entity.svg',
    `<!DOCTYPE svg [<!ENTITY e SYSTEM "file:///etc/passwd">]><svg ${XMLNS} ${SIZE}><desc>&e;</desc>${BLADE}</svg>`,
    /entit|DOCTYPE/i,
  ],
  ['not-a-number.svg', `<svg ${XMLNS} ${SIZE}><path d="M0 0L NaN 3 L 4 4z"/><path d="M1e999 0h2v8z"/></svg>`, /./],
  ['deep.svg', `<svg ${XMLNS} ${SIZE}>${'<g>'.repeat(30_000)}${BLADE}${'</g>'.repeat(30_000)}</svg>`, /./],
  ['uses-itself.svg', `<svg ${XMLNS} ${SIZE}><g id="a"><use href="#a"/></g>${BLADE}</svg>`, /./],
  ['cut-off.svg', `<svg ${XMLNS} ${SIZE}>${BLADE}<path d="M0 0`, /./],
  ['no-groups.dxf', '0\nSECTION\n2\nENTITIES\n0\nLWPOLYLINE\n90\n4\n10\n0\n20\n0\n10\n2\n0\nENDSEC\n0\nEOF\n', /./],
  ['not-a-number.dxf', '0\nSECTION\n2\nENTITIES\n0\nCIRCLE\n10\nNaN\n20\n0\n40\nInfinity\n0\nENDSEC\n0\nEOF\n', /./],
  ['odd-lines.dxf', '0\nSECTION\n2\nENTITIES\n0\nLINE\n10\n', /./],
  ['formulas.csv', '=HYPERLINK("http://127.0.0.1:9/","x"),@SUM(1)\n=cmd|"/c calc"!A1,+1\n', /./],
  ['formula-among-points.csv', 'x,y\n0,0\n2,0\n=1+1,8\n0,8\n', /./],
  ['binary.dxf', 'AnyProgram Binary DXF\r\n\x1a\0\0\0', /binary DXF/],
  ['program.exe', 'MZ\x90\0\x03\0\0\0', /not read here/],
  ['nothing.svg', '', /empty/],
  ['deep.json', '['.repeat(100_000), /./],
];

test(`${HOSTILE.length} hostile files are read without being run, or refused with words`, async () => {
  const { page } = app;
  for (const [name, content, wanted] of HOSTILE) {
    const outcome = await outcomeOf({ name, content });
    if (wanted === 'blade') expectSizes(name, outcome, [[2, 8]]);
    else if (typeof outcome === 'string')
      expect({ name, outcome }).toEqual({ name, outcome: expect.stringMatching(wanted) });
  }
  expect(await page.evaluate(() => (window as unknown as { executed: number }).executed)).toBe(0);
}, 600_000);

/** Drops a file that is made in the page, so that no test has to carry its megabytes. */
async function dropLarge(unit: string, times: number, name: string): Promise<void> {
  const data = await app.page.evaluateHandle(
    ([part, count, fileName, start, end]) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([start, ...Array<string>(count).fill(part), end], fileName));
      return transfer;
    },
    [unit, times, name, `<svg ${XMLNS} ${SIZE}>`, '</svg>'] as const,
  );
  await app.page.dispatchEvent('body', 'drop', { dataTransfer: data });
}

/** Writes down the size of everything that the page reads of a file from now on; returns what was read so far, bytes. */
async function watchReads(page: Page): Promise<() => Promise<number[]>> {
  await page.evaluate(() => {
    const sizes: number[] = [];
    Object.assign(window, { sizes });
    for (const way of ['text', 'arrayBuffer', 'stream'] as const) {
      const real = Blob.prototype[way] as () => never;
      Object.defineProperty(Blob.prototype, way, {
        value(this: Blob) {
          sizes.push(this.size);
          return real.call(this);
        },
      });
    }
  });
  return () => page.evaluate(() => (window as unknown as { sizes: number[] }).sizes);
}

test('a file of 50 MB is refused by its size, with the limit: no more than its head is read', async () => {
  const read = await watchReads(app.page);
  await dropLarge('<path d="M0 0h2v8h-2z"/>'.repeat(1_000), 2_100, 'fifty.svg');
  await (await refused(app.page)).getByText('has 51 MB, more than the 20 MB that are read').waitFor();
  expect(await read()).toEqual([65_536]);
}, 120_000);

test('while a file is read that never ends the page draws and answers, and a cancel ends it', async () => {
  const { page } = app;
  // In place of the thread's program one that never comes to an end once a file is handed to it.
  const program = /job-worker-[^/]*\.js$/;
  await page.route(program, (route) =>
    route.fulfill({ contentType: 'text/javascript', body: 'onmessage = () => { for (;;); };' }),
  );
  // The one pair of the family is judged by one thread; what is read has a thread of its own.
  await expect.poll(() => page.workers().length).toBe(1);
  await dropLarge('<path d="M0 0h2v8c0 1-2 1-2 0z"/>'.repeat(1_000), 560, 'large.svg');
  const reading = page.getByRole('dialog', { name: /^Reading large.svg/ });
  await reading.waitFor();
  await expect.poll(() => page.workers().length).toBe(2);
  // Only the other thread is held: the page goes on giving frames, and the keyboard goes from key to key.
  await page.evaluate(async () => {
    for (let frame = 0; frame < 10; frame++) await new Promise((done) => requestAnimationFrame(done));
  });
  await page.keyboard.press('Tab');
  const cancel = reading.getByRole('button', { name: 'Cancel' });
  await expect.poll(() => cancel.evaluate((key) => key === document.activeElement)).toBe(true);
  await page.unroute(program);
  await cancel.click();
  await reading.waitFor({ state: 'detached' });
  await expect.poll(() => page.workers().length).toBe(1);
  expect(await page.getByRole('dialog').count()).toBe(0);
  // The next file comes in as if nothing had been.
  await dropFiles(page, { name: 'small.svg', content: `<svg ${XMLNS} ${SIZE}>${BLADE}</svg>` });
  expect(await listedSizes(await askedAbout(page))).toEqual([[2, 8]]);
}, 120_000);
