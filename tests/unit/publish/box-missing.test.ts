import { describe, expect, test } from 'vitest';
import { loadTypeface } from '../../../src/lettering/typeface.ts';
import { boxMissing } from '../../../src/publish/box-missing.ts';
import type { GroupMark, Page, PathMark, TextMark } from '../../../src/publish/page.ts';

const typeface = await loadTypeface();

function pageWith(mark: Omit<TextMark, 'kind'>): Page {
  return { title: 'p', width: 100, height: 100, marks: [{ kind: 'text', ...mark }] };
}

function boxed(mark: Omit<TextMark, 'kind'>): { label?: string; texts: TextMark[]; boxes: PathMark[] } {
  const [group] = boxMissing(pageWith(mark), typeface.setLine).marks as [GroupMark];
  return {
    label: group.label,
    texts: group.marks.filter((m) => m.kind === 'text'),
    boxes: group.marks.filter((m) => m.kind === 'path'),
  };
}

describe('boxes for missing letters', () => {
  test('a page with all its letters is the same page', () => {
    const page = pageWith({ spot: [1, 2], text: 'Łódź, Reed ½', size: 4 });
    expect(boxMissing(page, typeface.setLine)).toBe(page);
  });

  test('the rest of the line stands before and behind the box, where the line is measured to be', () => {
    const { label, texts, boxes } = boxed({ spot: [10, 20], text: 'Łódź→Reed', size: 4 });
    expect(label).toBe('Łódź→Reed');
    expect(texts.map(({ text }) => text)).toEqual(['Łódź', 'Reed']);
    expect(texts[0].spot).toEqual([10, 20]);
    expect(texts[1].spot[0]).toBeCloseTo(10 + typeface.width('Łódź→', 4), 9);
    const xs = boxes[0].strokes[0].spots.map(([x]) => x);
    expect(Math.min(...xs)).toBeGreaterThan(10 + typeface.width('Łódź', 4));
    expect(Math.max(...xs)).toBeLessThan(texts[1].spot[0]);
  });

  test.each([
    ['middle', 0.5],
    ['end', 1],
  ] as const)('a line that is set from its %s stays there', (align, before) => {
    const { texts } = boxed({ spot: [50, 20], text: 'Reed→', size: 4, align });
    expect(texts[0]).toMatchObject({ align: 'start' });
    expect(texts[0].spot[0]).toBeCloseTo(50 - before * typeface.width('Reed→', 4), 9);
  });

  test('a turned line goes on in its own direction', () => {
    const { texts, boxes } = boxed({ spot: [50, 20], text: '→Reed', size: 10, turned: 90 });
    expect(texts[0].spot[0]).toBeCloseTo(50, 9);
    expect(texts[0].spot[1]).toBeCloseTo(20 + typeface.width('→', 10), 9);
    // Clockwise by a quarter: what was above the line is now to its right.
    expect(Math.max(...boxes[0].strokes[0].spots.map(([x]) => x))).toBeCloseTo(50 + 6.6, 9);
  });

  test('also within groups, whose clip and label stay; control signs become spaces', () => {
    const page: Page = {
      ...pageWith({ spot: [0, 0], text: '', size: 1 }),
      marks: [
        { kind: 'group', label: 'g', clip: [], marks: [{ kind: 'text', spot: [0, 0], text: 'a\u0007b', size: 1 }] },
      ],
    };
    expect(boxMissing(page, typeface.setLine).marks).toEqual([
      { kind: 'group', label: 'g', clip: [], marks: [{ kind: 'text', spot: [0, 0], text: 'a b', size: 1 }] },
    ]);
  });
});
