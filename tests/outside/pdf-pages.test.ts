// Outside truth: what poppler (pdftotext, pdffonts, pdfinfo, pdftoppm; 22.12 in Debian 12) finds in the PDF files that we write.
// Paper sizes: ISO 216 (A4 210 mm x 297 mm, A3, A1) and ANSI/ASME Y14.1 (Letter 8.5 in x 11 in), from memory.

import { describe, expect, test } from 'vitest';
import type { Family } from '../../src/family/family.ts';
import { startPdf } from '../../src/interchange/pdf/write.ts';
import { publishSheets } from '../../src/jobs/publish-sheets.ts';
import { loadTypeface } from '../../src/lettering/typeface.ts';
import { boxMissing } from '../../src/publish/box-missing.ts';
import type { Mark, Page } from '../../src/publish/page.ts';
import { paperSize } from '../../src/publish/paper.ts';
import { BAR, EVERY_MARK, LINES } from '../cases/every-mark.ts';
import { drawPdf, pdfFonts, pdfInfo, pdfStructure, pdfText } from '../kit/ask-poppler.ts';
import { demoFamily, demoProfile } from '../kit/demo-family.ts';

const typeface = await loadTypeface();

async function write(pages: readonly Page[], date?: Date): Promise<Uint8Array> {
  const draft = await startPdf({ title: 'Žluva & co', language: 'en-GB', date }, typeface, 'colour');
  for (const page of pages) draft.add(page);
  return draft.finish();
}

const everyMark = await write([EVERY_MARK]);

/** First and last column, and first and last row, that hold a dark point, in millimetres of the part. */
function darkBounds({ width, height, data }: { width: number; height: number; data: Buffer }, perMm: number) {
  const dark = Array.from({ length: width * height }, (_, i) => i).filter((i) => data[4 * i] < 128);
  const columns = dark.map((i) => i % width);
  const rows = dark.map((i) => Math.floor(i / width));
  const span = (values: number[]) => {
    const least = values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
    const most = values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
    return { from: least / perMm, to: (most + 1) / perMm };
  };
  return { across: span(columns), down: span(rows) };
}

describe('scale', () => {
  const MM = 72 / 25.4;

  test.each([
    ['A4', 'portrait', 210, 297],
    ['A4', 'landscape', 297, 210],
    ['A3', 'landscape', 420, 297],
    ['A1', 'portrait', 594, 841],
    ['Letter', 'portrait', 8.5 * 25.4, 11 * 25.4],
  ] as const)('%s %s is as large as the standard says', async (paper, turned, width, height) => {
    const page: Page = { title: 'p', ...paperSize(paper, turned), marks: [] };
    const { sizes } = pdfInfo(await write([page, page]));
    expect(sizes).toHaveLength(2);
    for (const size of sizes) {
      expect(size[0]).toBeCloseTo(width * MM, 2);
      expect(size[1]).toBeCloseTo(height * MM, 2);
    }
  });

  test('a bar of 50 mm measures 50 mm to 0.1 mm where it is drawn, and stands where it was put', () => {
    const perMm = 40;
    const part = { left: BAR.left - 5, top: BAR.top - 3, width: BAR.width + 10, height: BAR.height + 6 };
    const { across, down } = darkBounds(drawPdf(everyMark, 1, perMm, part), perMm);
    expect(Math.abs(across.to - across.from - 50)).toBeLessThan(0.1);
    expect(Math.abs(down.to - down.from - BAR.height)).toBeLessThan(0.1);
    expect(Math.abs(across.from - 5)).toBeLessThan(0.1);
    expect(Math.abs(down.from - 3)).toBeLessThan(0.1);
  });
});

describe('for whoever hears the page', () => {
  test('it says its language, its title and what is a heading, a paragraph, a picture and a table', async () => {
    const cell = (part: 'head' | 'cell', text: string): Mark => ({
      kind: 'group',
      part,
      marks: [{ kind: 'text', spot: [20, 60], text, size: 4 }],
    });
    const page: Page = {
      ...EVERY_MARK,
      marks: [
        ...EVERY_MARK.marks,
        { kind: 'text', spot: [10, 10], text: 'A heading', size: 6, heading: 1 },
        { kind: 'text', spot: [10, 95], text: 'first line', size: 4 },
        { kind: 'text', spot: [10, 100], text: 'second line', size: 4 },
        { kind: 'group', part: 'row', marks: [cell('head', 'Heron'), cell('cell', 'enters')] },
      ],
    };
    const pdf = await write([page]);
    expect(pdfInfo(pdf).facts.get('Tagged')).toBe('yes');
    const said = pdfStructure(pdf).map((line) => line.trim());
    const heads = ['Document', 'Sect "Every kind of mark <&>"', 'H1 (block)', '"A heading"', 'Figure'];
    expect(said.slice(0, 5)).toEqual(heads);
    expect(said).toContain('"first line second line"');
    expect(said.slice(said.indexOf('Table (block)'))).toEqual([
      'Table (block)',
      'TR',
      'TH:',
      '/Scope /Row',
      '"Heron"',
      'TD',
      '"enters"',
    ]);
    const plain = Buffer.from(pdf).toString('latin1');
    expect(plain).toContain('/Alt (A clipped bar)');
    expect(plain).toContain('/Lang (en-GB)');
  });
});

describe('the sheet at true size', () => {
  test.each(['mm', 'in'] as const)('has a bar of 50 mm that measures 50 mm where it is drawn, in %s', async (units) => {
    const context = { progress: () => {}, cancelled: () => false, pause: () => Promise.resolve(), now: () => 0 };
    const { opening, family } = onePair();
    const sheet = {
      sheet: 'scale',
      paper: 'Letter',
      turned: 'portrait',
      palette: 'colour',
      units,
      enlarge: 6,
    } as const;
    const { pages = [] } = await publishSheets({ family, sheet: { ...sheet, opening }, as: 'pages' }, context);
    const { pdf = new Uint8Array() } = await publishSheets(
      { family, sheet: { ...sheet, opening }, as: 'pdf' },
      context,
    );
    const bar = barOf(pages[0].marks);
    if (!bar) throw new Error('There is no bar.');
    const perMm = 40;
    const part = { left: bar.left - 5, top: bar.top + 0.05, width: 60, height: 0.1 };
    const { across } = darkBounds(drawPdf(pdf, 1, perMm, part), perMm);
    expect(Math.abs(across.to - across.from - 50)).toBeLessThan(0.1);
    expect(pdfText(pdf)).toContain('50 mm');
  });
});

/** A keyway and its blank alone, so that there is little to judge. */
function onePair(): { family: Family; opening: string } {
  const family = demoFamily();
  const opening = demoProfile('heron-keyway');
  const blank = family.profiles.find(({ kind, section }) => kind === 'blank' && section === opening.section);
  return {
    opening: opening.id,
    family: { ...family, plan: undefined, profiles: blank ? [opening, blank] : [opening] },
  };
}

/** Where the group of the bar has its upper left corner, after its words. */
function barOf(marks: readonly Mark[]): { left: number; top: number } | null {
  for (const mark of marks) {
    if (mark.kind !== 'group') continue;
    const first = mark.marks[0];
    const spots = first?.kind === 'path' ? first.strokes[0].spots : [];
    const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)];
    if (mark.label?.includes('50 mm') && spots.length === 4) return { left: Math.min(...xs), top: Math.min(...ys) };
    const inner = barOf(mark.marks);
    if (inner) return inner;
  }
  return null;
}

describe('text', () => {
  test('every line is found by the extractor, those with letters of both files and with signs too', () => {
    const text = pdfText(everyMark);
    for (const line of [LINES.plain, LINES.kerned, LINES.more, LINES.signs]) expect(text).toContain(line);
    expect(text.replace(/\s+/g, '')).toContain(LINES.turned.replace(/ /g, ''));
  });

  test('all fonts are embedded as parts, with the letters that they stand for', () => {
    const fonts = pdfFonts(everyMark);
    expect(fonts.map(({ name }) => name.replace(/^.*\+/, '')).sort()).toEqual([
      'AtkinsonHyperlegibleNext-Bold',
      'AtkinsonHyperlegibleNext-Regular',
      'AtkinsonHyperlegibleNext-Regular',
    ]);
    for (const font of fonts)
      expect(font).toMatchObject({ embedded: true, subset: true, unicode: true, type: 'CID TrueType' });
  });

  test('letters that the typeface has not are boxes, and the rest of the line is text', async () => {
    const page: Page = { ...EVERY_MARK, marks: [{ kind: 'text', spot: [10, 20], text: 'Reed → Dyke 鷺', size: 10 }] };
    const bytes = await write([boxMissing(page, typeface.setLine)]);
    expect(typeface.missing('Reed → Dyke 鷺')).toEqual(['→', '鷺']);
    expect(pdfText(bytes).replace(/\s+/g, ' ').trim()).toBe('Reed Dyke');
    const [box, gap] = ['→', ' '].map((letter) => {
      const left = 10 + typeface.width('Reed ', 10) + (letter === ' ' ? typeface.width('→', 10) : 0);
      const png = drawPdf(bytes, 1, 20, { left, top: 10, width: typeface.width(letter, 10), height: 12 });
      return png.data.filter((value, i) => i % 4 === 0 && value < 128).length;
    });
    expect(box).toBeGreaterThan(300);
    expect(gap).toBe(0);
  });
});

describe('the document', () => {
  test('tells its title and language, no date, and is the same every time', async () => {
    const { facts } = pdfInfo(everyMark);
    expect(facts.get('Title')).toBe('Žluva & co');
    expect([...facts.keys()].filter((name) => /date/i.test(name))).toEqual([]);
    expect(Buffer.from(everyMark).toString('latin1')).toContain('/Lang (en-GB)');
    expect(Buffer.compare(Buffer.from(await write([EVERY_MARK])), Buffer.from(everyMark))).toBe(0);
  });

  test('tells a date that is given', async () => {
    const { facts } = pdfInfo(await write([EVERY_MARK], new Date('2030-05-14T00:00:00Z')));
    expect(facts.get('CreationDate')).toMatch(/May 14 .*2030/);
  });

  test('is a sound file without pages and without marks too', async () => {
    expect(pdfInfo(await write([])).facts.get('Pages')).toBe('1');
    expect(pdfText(await write([{ title: '', width: 50, height: 50, marks: [] }])).trim()).toBe('');
  });
});
