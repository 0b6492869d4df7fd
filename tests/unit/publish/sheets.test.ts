import { describe, expect, test } from 'vitest';
import { runInSlices } from '../../../src/jobs/job.ts';
import { judgeKept } from '../../../src/jobs/judge-kept.ts';
import { loadTypeface } from '../../../src/lettering/typeface.ts';
import { commonPassage } from '../../../src/passage/find-passage.ts';
import type { Passage } from '../../../src/passage/passage.ts';
import type { Mark } from '../../../src/publish/page.ts';
import { paperSize } from '../../../src/publish/paper.ts';
import { sheetGround } from '../../../src/publish/sheet-ground.ts';
import {
  type OrderOfAny,
  SHEET_NAMES,
  type SheetName,
  type SheetOrder,
  type SlidesOrder,
} from '../../../src/publish/sheet-order.ts';
import { layOutSheet } from '../../../src/publish/sheets.ts';
import { passageKey } from '../../../src/publish/slides-passage.ts';
import { passagesShown } from '../../../src/publish/slides-sheet.ts';
import { demoFamily } from '../../kit/demo-family.ts';

const still = { progress: () => {}, cancelled: () => false, pause: () => Promise.resolve(), now: () => 0 };
const family = demoFamily();
const typeface = await loadTypeface();
const plainGround = sheetGround(family, await runInSlices(judgeKept(family), still), typeface);
const ground = { ...plainGround, passages: await passagesOfSlides() };

/** Found once for all layouts, as they take long. */
async function passagesOfSlides(): Promise<Map<string, Passage>> {
  const openings = family.profiles.flatMap(({ id, kind, ring }) => (kind === 'opening' ? [{ id, ring }] : []));
  const found = new Map<string, Passage>();
  for (const chosen of passagesShown(plainGround, orderOf('slides') as SlidesOrder)) {
    const input = { openings, chosen, runningClearance: family.runningClearance };
    found.set(passageKey(chosen), await runInSlices(commonPassage(input), still));
  }
  return found;
}

function orderOf(sheet: SheetName, any: Partial<OrderOfAny> = {}): SheetOrder {
  const common: OrderOfAny = { paper: 'A4', turned: 'portrait', palette: 'colour', units: 'mm', ...any };
  switch (sheet) {
    case 'scale':
      return { ...common, sheet, enlarge: 6 };
    case 'answers':
      return { ...common, sheet, questions: 12, seed: 1 };
    default:
      return { ...common, sheet };
  }
}

function numbersIn(marks: readonly Mark[]): number[] {
  return marks.flatMap((mark) => {
    if (mark.kind === 'group') return [...numbersIn(mark.marks), ...(mark.clip ?? []).flatMap((s) => s.spots.flat())];
    if (mark.kind === 'text') return [...mark.spot, mark.size];
    return [...mark.strokes.flatMap((s) => s.spots.flat()), mark.line?.width ?? 0];
  });
}

describe.each(SHEET_NAMES)('the sheet %s', (sheet) => {
  test.each(['A4', 'A1'] as const)(
    'has pages of the size of %s, held either way, and every number on them is one',
    (paper) => {
      for (const turned of ['portrait', 'landscape'] as const) {
        const pages = layOutSheet(ground, orderOf(sheet, { paper, turned }));
        expect(pages.length).toBeGreaterThan(0);
        for (const page of pages) {
          if (sheet === 'slides') expect(page.width / page.height).toBeCloseTo(16 / 9, 3);
          else expect({ width: page.width, height: page.height }).toEqual(paperSize(paper, turned));
          expect(page.title).not.toBe('');
          expect(numbersIn(page.marks).every(Number.isFinite)).toBe(true);
        }
      }
    },
  );

  test('has no letter that the typeface has not, in either unit', () => {
    for (const units of ['mm', 'in'] as const) {
      const texts = (marks: readonly Mark[]): string[] =>
        marks.flatMap((m) => (m.kind === 'group' ? texts(m.marks) : [m.kind === 'text' ? m.text : '']));
      const pages = layOutSheet(ground, orderOf(sheet, { units }));
      expect(typeface.missing(pages.flatMap((page) => texts(page.marks)).join(' '))).toEqual([]);
    }
  });
});
