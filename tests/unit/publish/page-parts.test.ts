import { expect, test } from 'vitest';
import { plugFace } from '../../../src/family/plug-face.ts';
import type { TextMeasure } from '../../../src/lettering/text-measure.ts';
import { emptyBlock, placeBlock } from '../../../src/publish/block.ts';
import { flowBlocks } from '../../../src/publish/flow-blocks.ts';
import type { Mark } from '../../../src/publish/page.ts';
import { framedPages, frameFor, roomIn } from '../../../src/publish/page-frame.ts';
import { layOutParagraph } from '../../../src/publish/paragraph.ts';
import { plugPicture } from '../../../src/publish/plug-picture.ts';
import { rememberedWidths } from '../../../src/publish/remembered-widths.ts';
import { layOutScaleBar } from '../../../src/publish/scale-bar.ts';
import { sectionPicture } from '../../../src/publish/section-picture.ts';
import { filled, rectangle } from '../../../src/publish/strokes.ts';
import { layOutTable } from '../../../src/publish/table.ts';
import { shortenText, wrapText, wrapUpTo } from '../../../src/publish/wrap-text.ts';
import { demoFamily, demoProfile } from '../../kit/demo-family.ts';
import { boundsOf, textsOf } from '../../kit/laid-out.ts';
import { plainFit } from '../../kit/told-ground.ts';

/** Every letter half an em wide. */
const measure: TextMeasure = { width: (text, size) => [...text].length * size * 0.5, missing: () => [] };

const room = { width: 10, size: 2 };

test('a text is broken at spaces, a long word between letters, and a no-break space holds', () => {
  expect(wrapText('one two three four', room, measure)).toEqual(['one two', 'three four']);
  expect(wrapText('abcdefghijklmnop', room, measure)).toEqual(['abcdefghij', 'klmnop']);
  expect(wrapText('a bcdefghijklmnop q', room, measure)).toEqual(['a', 'bcdefghijk', 'lmnop q']);
  expect(wrapText('about 100\u00a0% here', room, measure)).toEqual(['about', '100\u00a0% here']);
  expect(wrapText('', room, measure)).toEqual(['']);
  // A letter wider than the room stands alone, and what follows is not lost.
  expect(wrapText('ab cd', { ...room, width: 0.5 }, measure)).toEqual(['a', 'b', 'c', 'd']);
});

test('each line is as full as it can be, also where words set together are wider or narrower than apart', () => {
  const words =
    'a blank goes into every keyway whose wards its grooves let by and into no other of the whole family'.split(' ');
  for (const kern of [-0.4, 0, 0.7])
    for (let width = 8; width < 40; width += 0.9) {
      const kerned: TextMeasure = {
        ...measure,
        width: (text, size) => (text.length * 0.5 + (text.split(' ').length - 1) * kern) * size,
      };
      const fits = (line: string) => kerned.width(line, 2) <= width + 1e-9;
      const lines = wrapText(words.join(' '), { width, size: 2 }, kerned);
      expect(lines.join(' ')).toBe(words.join(' '));
      for (const [i, line] of lines.entries()) {
        expect(fits(line)).toBe(true);
        if (i + 1 < lines.length) expect(fits(`${line} ${lines[i + 1].split(' ')[0]}`)).toBe(false);
      }
    }
});

test('a text that has no room is shortened with an ellipsis, never by half a letter', () => {
  expect(shortenText('abcdefghij', room, measure)).toBe('abcdefghij');
  expect(shortenText('abcdefghijk', room, measure)).toBe('abcdefghi…');
  expect(wrapUpTo(2, 'one two three four five six', room, measure)).toEqual(['one two', 'three fou…']);
});

test('a text is measured once for all sizes, bold apart', () => {
  const asked: string[] = [];
  const counted = rememberedWidths({
    width: (text, size, bold = false) => {
      asked.push(`${text}${bold ? ' bold' : ''}`);
      return measure.width(text, size) * (bold ? 2 : 1);
    },
    missing: () => ['x'],
  });
  expect([counted.width('Heron', 2), counted.width('Heron', 4), counted.width('Heron', 4, true)]).toEqual([5, 10, 20]);
  expect(asked).toEqual(['Heron', 'Heron bold']);
  expect(counted.missing('Heron')).toEqual(['x']);
});

test('a paragraph is as high as its lines and keeps within its width', () => {
  const block = layOutParagraph('one two three four', { ...room, align: 'end' }, measure);
  expect(block.height).toBeCloseTo(2 * 2 * 1.28, 9);
  const texts = textsOf(block.marks, measure);
  expect(texts.map(({ what }) => what)).toEqual(['one two', 'three four']);
  for (const { maxX, minX } of texts) {
    expect(maxX).toBeCloseTo(10, 9);
    expect(minX).toBeGreaterThanOrEqual(-1e-9);
  }
});

test('a bar is as long as it says, to its outer edges', () => {
  const bar = layOutScaleBar(50, 10, '50 mm', { size: 3, measure });
  const areas = bar.marks
    .flatMap((mark) => (mark.kind === 'group' ? mark.marks : []))
    .filter(({ kind }) => kind === 'path');
  const { minX, maxX } = boundsOf(areas, measure);
  expect(maxX - minX).toBe(50);
});

test('a section is drawn at its scale: ten times 2.00 by 8.40 mm', () => {
  const picture = sectionPicture(demoProfile('heron-blank-5'), { scale: 10 });
  expect(picture.width).toBeCloseTo(20, 9);
  expect(picture.height).toBeCloseTo(84, 9);
  const { minX, maxX, minY, maxY } = boundsOf(picture.marks, measure);
  expect([minX, minY]).toEqual([0, 0]);
  expect(maxX).toBeCloseTo(20, 9);
  expect(maxY).toBeCloseTo(84, 9);
});

test('a tool has a colour of its own, alone and in a keyway, as in the window', () => {
  const tool = demoFamily().profiles.find(({ kind }) => kind === 'tool');
  const opening = demoProfile('bittern-keyway');
  if (!tool) throw new Error('The demo family has tools.');
  const fills = (marks: readonly Mark[]): (string | undefined)[] =>
    marks.flatMap((mark) => {
      if (mark.kind === 'group') return fills(mark.marks);
      return mark.kind === 'path' ? [mark.fill] : [];
    });
  const inPlug = plugPicture(
    opening,
    { profile: tool, fit: plainFit('enters') },
    { face: plugFace([opening]), scale: 4 },
  );
  for (const marks of [sectionPicture(tool, { scale: 10 }).marks, inPlug.marks]) {
    expect(fills(marks)).toContain('tool');
    expect(fills(marks)).not.toContain('blade');
  }
  expect(fills(sectionPicture(demoProfile('heron-blank-5'), { scale: 10 }).marks)).toContain('blade');
});

test('what does not go in is hatched where it would share space with the plug; what goes in is not', () => {
  const opening = demoProfile('bittern-keyway');
  const profile = demoProfile('heron-blank-5');
  const style = { face: plugFace([opening]), scale: 4 };
  const clips = (marks: readonly Mark[]): number =>
    marks.reduce((sum, mark) => (mark.kind === 'group' ? sum + (mark.clip ? 1 : 0) + clips(mark.marks) : sum), 0);
  const blocked = plugPicture(opening, { profile, fit: plainFit('blocked') }, style);
  expect(clips(blocked.marks)).toBe(1);
  expect(clips(plugPicture(opening, { profile, fit: plainFit('enters') }, style).marks)).toBe(0);
  expect(clips(plugPicture(opening, null, style).marks)).toBe(0);
  const { maxX, maxY } = boundsOf(blocked.marks, measure);
  expect(maxX).toBeLessThanOrEqual(blocked.width + 1e-9);
  expect(maxY).toBeLessThanOrEqual(blocked.height + 1e-9);
});

test('a table wraps its cells; each row is as high as its highest cell', () => {
  const columns = [
    { head: 'Name', width: 12 },
    { head: 'Words', width: 12 },
  ];
  const { head, rows } = layOutTable(
    columns,
    [
      ['one', 'one two three four five'],
      ['a', 'b'],
    ],
    { size: 2, measure },
  );
  expect(head.width).toBe(24);
  expect(rows[0].height).toBeGreaterThan(rows[1].height * 1.8);
  for (const { marks, height } of rows)
    for (const { maxY, maxX } of textsOf(marks, measure)) {
      expect(maxY).toBeLessThanOrEqual(height);
      expect(maxX).toBeLessThanOrEqual(24);
    }
});

test('blocks flow over pages; a heading goes with what it heads', () => {
  const block = (height: number) => ({ width: 10, height, marks: [filled([rectangle(0, 0, 10, height)], 'blade')] });
  const page = { x: 5, y: 5, width: 10, height: 20 };
  const pages = flowBlocks(
    [
      { block: block(12) },
      { block: block(4), keep: true, gap: 1 },
      { block: block(8) },
      { block: block(3), opens: true },
    ],
    page,
  );
  expect(pages.map((marks) => marks.length)).toEqual([1, 2, 1]);
  for (const marks of pages) {
    const { minY, maxY } = boundsOf(marks, measure);
    expect(minY).toBe(5);
    expect(maxY).toBeLessThanOrEqual(25);
  }
});

test('a frame tells title, family, date, page n of m and the caution, and leaves the same room on each page', () => {
  const order = { paper: 'A4', turned: 'portrait', palette: 'grey', units: 'mm', date: '26 November 2026' } as const;
  const frame = frameFor(order, 'Section chart', 'Polderwick College');
  const free = roomIn(frame, measure);
  const pages = framedPages(
    [{ marks: [] }, { marks: placeBlock(emptyBlock(1, 1), 0, 0), title: 'In words' }],
    frame,
    measure,
  );
  const words = pages.map(({ marks }) =>
    textsOf(marks, measure)
      .map(({ what }) => what)
      .join(' '),
  );
  expect(words[0]).toContain('Section chart');
  expect(words[1]).toContain('In words');
  for (const [i, text] of words.entries()) {
    expect(text).toContain('Polderwick College');
    expect(text).toContain('26 November 2026');
    expect(text).toContain(`Page ${i + 1} of 2`);
    expect(text).toContain('licensed locksmith');
  }
  for (const { marks } of pages)
    for (const { minY, maxY } of textsOf(marks, measure))
      expect(maxY <= free.y + 1e-9 || minY >= free.y + free.height - 1e-9).toBe(true);
});
