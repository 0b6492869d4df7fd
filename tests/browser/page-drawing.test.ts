// A page as SVG, as PDF and on a canvas: Chromium draws the first and the last, poppler the PDF, and all three must show the
// same. The SVG file is opened as it lies on a disk, without the app, and measured there.

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page as BrowserPage } from 'playwright-core';
import { PNG } from 'pngjs';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startPdf } from '../../src/interchange/pdf/write.ts';
import { writePage } from '../../src/interchange/svg/write-page.ts';
import { loadTypeface } from '../../src/lettering/typeface.ts';
import { inkColour, type Palette } from '../../src/publish/inks.ts';
import { BAR, EVERY_MARK, LINES } from '../cases/every-mark.ts';
import { drawPdf } from '../kit/ask-poppler.ts';
import { browserOfThisLane } from '../kit/open-app.ts';

/** Points of the screen in a millimetre: twice those of CSS. */
const PER_MM = (2 * 96) / 25.4;

const folder = mkdtempSync(join(tmpdir(), 'page-drawing-'));
const typeface = await loadTypeface();
const problems: string[] = [];
let page: BrowserPage;

beforeAll(async () => {
  const browser = await browserOfThisLane();
  page = await browser.newPage({ deviceScaleFactor: 2, viewport: { width: 800, height: 600 } });
  page.on('console', (message) => problems.push(message.text()));
  page.on('request', (request) => {
    if (!/^(file|data):/.test(request.url())) problems.push(request.url());
  });
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Opens the page as a file. */
async function openSvg(palette: Palette): Promise<void> {
  const file = join(folder, `page-${palette}.svg`);
  writeFileSync(file, writePage(EVERY_MARK, palette, typeface, 'All there is'));
  await page.goto(pathToFileURL(file).href);
  await page.evaluate(() => Promise.all([...document.fonts].map((font) => font.load())));
}

/** The code that draws on a canvas, as one text whose value has its functions. */
async function canvasCode(): Promise<string> {
  const entry = join(import.meta.dirname, '../../src/app/canvas/page/draw-page.ts');
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    build: { write: false, minify: false, lib: { entry, formats: ['iife'], name: 'drawing' } },
  });
  const [output] = Array.isArray(built) ? built : [built];
  if (!('output' in output)) throw new Error('Nothing was built.');
  return `${output.output[0].code}\ndrawing`;
}

async function drawOnCanvas(palette: Palette): Promise<PNG> {
  const call = `(async (drawing) => {
    const page = ${JSON.stringify(EVERY_MARK)};
    const { width, height, perMm } = drawing.pagePoints(page, ${PER_MM});
    const canvas = new OffscreenCanvas(width, height);
    drawing.drawPage(page, '${palette}', canvas.getContext('2d'), perMm);
    const bytes = new Uint8Array(await (await canvas.convertToBlob()).arrayBuffer());
    return Array.from(bytes);
  })`;
  const bytes = await page.evaluate<number[]>(
    `${call}((() => { ${(await canvasCode()).replace(/\ndrawing$/, '')}; return drawing; })())`,
  );
  return PNG.sync.read(Buffer.from(bytes));
}

const SIZE = { width: Math.floor(EVERY_MARK.width * PER_MM), height: Math.floor(EVERY_MARK.height * PER_MM) };

async function shootSvg(): Promise<PNG> {
  const clip = { x: 0, y: 0, width: Math.floor(SIZE.width / 2), height: Math.floor(SIZE.height / 2) };
  return PNG.sync.read(await page.screenshot({ clip }));
}

async function drawAsPdf(palette: Palette): Promise<PNG> {
  const draft = await startPdf({ title: 'p', language: 'en' }, typeface, palette);
  draft.add(EVERY_MARK);
  return drawPdf(await draft.finish(), 1, PER_MM);
}

/** The three parts of the colour at a place; white outside. */
function colourAt({ width, height, data }: PNG, x: number, y: number): [number, number, number] {
  if (x < 0 || y < 0 || x >= width || y >= height) return [255, 255, 255];
  const at = 4 * (y * width + x);
  return [data[at], data[at + 1], data[at + 2]];
}

const apart = (a: readonly number[], b: readonly number[]) => Math.max(...a.map((value, i) => Math.abs(value - b[i])));

/** Whether something is drawn at most one point away. */
function isNearMark(png: PNG, x: number, y: number): boolean {
  for (let dy = -1; dy <= 1; dy++)
    for (let dx = -1; dx <= 1; dx++) if (apart(colourAt(png, x + dx, y + dy), [255, 255, 255]) > 60) return true;
  return false;
}

/** How many places are drawn well in one picture and are not near anything in the other, and how many have another colour. */
function compare(a: PNG, b: PNG): { drawn: number; lonely: number; otherColour: number } {
  const found = { drawn: 0, lonely: 0, otherColour: 0 };
  for (let y = 0; y < SIZE.height - 2; y++)
    for (let x = 0; x < SIZE.width - 2; x++) {
      const colour = colourAt(a, x, y);
      if (apart(colour, [255, 255, 255]) < 120) continue;
      found.drawn++;
      if (!isNearMark(b, x, y)) found.lonely++;
      else if (isInside(a, x, y) && isInside(b, x, y) && apart(colour, colourAt(b, x, y)) > 6) found.otherColour++;
    }
  return found;
}

/** Whether all round a place, two points deep, the colour is the same. */
function isInside(png: PNG, x: number, y: number): boolean {
  const colour = colourAt(png, x, y);
  for (let dy = -2; dy <= 2; dy++)
    for (let dx = -2; dx <= 2; dx++) if (apart(colour, colourAt(png, x + dx, y + dy)) > 2) return false;
  return true;
}

describe.each(['colour', 'grey'] as const)('in %s', (palette) => {
  test('SVG, PDF and canvas show the same', async () => {
    await openSvg(palette);
    const [svg, pdf, canvas] = [await shootSvg(), await drawAsPdf(palette), await drawOnCanvas(palette)];
    if (process.env.KEEP_PICTURES)
      for (const [name, png] of Object.entries({ svg, pdf, canvas }))
        writeFileSync(join(process.env.KEEP_PICTURES, `${palette}-${name}.png`), PNG.sync.write(png));
    for (const [a, b] of [
      [svg, pdf],
      [pdf, svg],
      [svg, canvas],
      [canvas, svg],
    ]) {
      const { drawn, lonely, otherColour } = compare(a, b);
      expect(drawn).toBeGreaterThan(10_000);
      expect(lonely / drawn).toBeLessThan(0.002);
      expect(otherColour).toBe(0);
    }
    // What is compared is there: the bar and the metal round the hole, but not the hole.
    const at = (x: number, y: number) => colourAt(svg, Math.round(x * PER_MM), Math.round(y * PER_MM));
    const hex = (colour: readonly number[]) => `#${colour.map((part) => part.toString(16).padStart(2, '0')).join('')}`;
    expect(hex(at(45, 22))).toBe(inkColour('ink', palette));
    expect(hex(at(12.5, 40))).toBe(inkColour('plug', palette));
    expect(hex(at(25, 40))).toBe('#ffffff');
    expect(hex(at(115, 40))).toBe(inkColour('blade', palette));
    expect(hex(at(115, 43))).toBe('#ffffff');
  });
});

describe('the SVG file', () => {
  test('is as large as its page, its bar measures 50 mm, and its text can be picked', async () => {
    await openSvg('colour');
    const seen = await page.evaluate(() => {
      const svg = document.documentElement as unknown as SVGSVGElement;
      const bar = svg.querySelector('path') as SVGPathElement;
      const line = svg.querySelector('text') as SVGTextElement;
      getSelection()?.selectAllChildren(line);
      const box = bar.getBoundingClientRect();
      return {
        page: { width: svg.getBoundingClientRect().width, height: svg.getBoundingClientRect().height },
        bar: { left: box.left, width: box.width },
        picked: getSelection()?.toString(),
        fonts: [...document.fonts].map((font) => `${font.weight} ${font.status}`).sort(),
        texts: [...svg.querySelectorAll('text')].map((text) => ({
          text: text.textContent ?? '',
          length: text.getComputedTextLength(),
        })),
        title: svg.querySelector('title')?.textContent,
        about: svg.querySelector('desc')?.textContent,
        styled: document.querySelectorAll('[style]').length,
      };
    });
    const css = 96 / 25.4;
    expect(seen.page.width / css).toBeCloseTo(EVERY_MARK.width, 2);
    expect(seen.page.height / css).toBeCloseTo(EVERY_MARK.height, 2);
    expect(seen.bar.width / css).toBeCloseTo(BAR.width, 2);
    expect(seen.bar.left / css).toBeCloseTo(BAR.left, 2);
    expect(seen.picked).toBe(LINES.plain);
    expect(seen.fonts).toEqual(['400 loaded', '400 loaded', '700 loaded']);
    expect([seen.title, seen.about, seen.styled]).toEqual([EVERY_MARK.title, 'All there is', 0]);
    // Lines take the width that they were measured with, in the browser's own setting.
    const sizes: Record<string, number> = {
      [LINES.plain]: 4,
      [LINES.kerned]: 6,
      [LINES.more]: 4,
      [LINES.signs]: 5,
      [LINES.turned]: 4,
    };
    expect(seen.texts.map(({ text }) => text)).toEqual(Object.keys(sizes));
    const longer = seen.texts.map(({ text, length }) => {
      const measured = typeface.width(text, sizes[text], text === LINES.kerned);
      return { text, longer: Math.abs(length - measured) < 0.1 ? 0 : length - measured };
    });
    expect(longer).toEqual(seen.texts.map(({ text }) => ({ text, longer: 0 })));
  });

  test('sets every pair of letters as wide as it was measured', async () => {
    const letters = 'AFKLOPRTVWYacdefgijkloqrstvwxyz0147.,-–“”‘’() /';
    const pairs = [...letters].flatMap((first) => [...letters].map((second) => first + second));
    const set = await page.evaluate((pairs) => {
      const pen = new OffscreenCanvas(1, 1).getContext('2d');
      if (!pen) throw new Error('There is no canvas.');
      pen.textRendering = 'geometricPrecision';
      return [400, 700].map((weight) => {
        pen.font = `${weight} 1000px 'Atkinson Hyperlegible Next'`;
        return pairs.map((pair) => pen.measureText(pair).width);
      });
    }, pairs);
    for (const bold of [false, true]) {
      const off = pairs.filter((pair, i) => Math.abs(typeface.width(pair, 1000, bold) - set[Number(bold)][i]) > 0.5);
      expect(off).toEqual([]);
    }
  });

  test('asks for nothing from elsewhere and complains of nothing', () => expect(problems).toEqual([]));
});
