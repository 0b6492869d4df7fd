// Matrix, answer sheet and slides: nothing over anything else, nothing cut, on every paper and with names of any length.
import { beforeAll, describe, expect, test } from 'vitest';
import { entrantsOf, type Family, openingsOf } from '../../../src/family/family.ts';
import type { Lesson } from '../../../src/family/lesson.ts';
import type { Verdict } from '../../../src/fit/fit.ts';
import { loadTypeface, type Typeface } from '../../../src/lettering/typeface.ts';
import type { Ink } from '../../../src/publish/inks.ts';
import type { Mark, Page, PathMark, TextMark } from '../../../src/publish/page.ts';
import { frameFor } from '../../../src/publish/page-frame.ts';
import { PAPER_NAMES } from '../../../src/publish/paper.ts';
import type { SheetGround } from '../../../src/publish/sheet-ground.ts';
import type { MatrixOrder, SheetOrder, SlidesOrder } from '../../../src/publish/sheet-order.ts';
import { layOutSheet } from '../../../src/publish/sheets.ts';
import { SLIDE_ROOM } from '../../../src/publish/slides-frame.ts';
import { lessonShown } from '../../../src/publish/slides-sheet.ts';
import { taughtGround } from '../../../src/publish/taught-ground.ts';
import { demoFamily } from '../../kit/demo-family.ts';
import { generatedGround, LONG, UNBROKEN } from '../../kit/generated-ground.ts';
import { boundsOf, pageFaults, textsOf } from '../../kit/laid-out.ts';
import { toldGround } from '../../kit/told-ground.ts';

let typeface: Typeface;
beforeAll(async () => {
  typeface = await loadTypeface();
});

const generated = (openings: number, blanks: number, rename?: (name: string, i: number) => string): SheetGround =>
  generatedGround(typeface, openings, blanks, rename);

const longNames = () => generated(6, 9, (name, i) => `${name} ${i % 3 === 0 ? UNBROKEN : LONG}`);
const byPlace = (e: number, o: number): Verdict => {
  if (e === o) return 'enters';
  return e > 8 && o < 4 ? 'tight' : 'blocked';
};
const demo = () => toldGround(demoFamily(), byPlace, typeface);

const usual = { palette: 'colour', units: 'mm', date: 'Thursday, 26 November 2026' } as const;
const a4 = { ...usual, paper: 'A4', turned: 'portrait' } as const;

function faultsOf(ground: SheetGround, order: SheetOrder): string[] {
  const { margin } = frameFor(order, '', '');
  const what = `${order.sheet} ${order.paper} ${order.turned} ${order.units}: `;
  return layOutSheet(ground, order).flatMap((page) => pageFaults(page, margin, typeface).map((fault) => what + fault));
}

function textMarksIn(marks: readonly Mark[]): TextMark[] {
  return marks.flatMap((mark) => {
    if (mark.kind === 'group') return textMarksIn(mark.marks);
    return mark.kind === 'text' ? [mark] : [];
  });
}

function areasIn(marks: readonly Mark[], ink: Ink): PathMark[] {
  return marks.flatMap((mark) => {
    if (mark.kind === 'group') return areasIn(mark.marks, ink);
    return mark.kind === 'path' && mark.fill === ink ? [mark] : [];
  });
}

const textsIn = (marks: readonly Mark[]) => textMarksIn(marks).map(({ text }) => text);

const textOf = ({ marks }: Page) => textsIn(marks).join(' ');

describe('matrix and answer sheet on every paper', () => {
  const families: Readonly<Record<string, () => SheetGround>> = {
    'three keyways': () => generated(3, 5),
    'the demo family': demo,
    'long names': longNames,
  };
  for (const [name, make] of Object.entries(families))
    test(name, () => {
      const ground = make();
      const faults: string[] = [];
      for (const [i, paper] of PAPER_NAMES.entries()) {
        const any = { ...usual, paper, turned: i % 2 === 0 ? 'portrait' : 'landscape' } as const;
        faults.push(...faultsOf(ground, { sheet: 'matrix', ...any }));
        faults.push(
          ...faultsOf(ground, { sheet: 'matrix', ...any, turned: 'landscape', units: 'in', blanksOnly: true }),
        );
        faults.push(...faultsOf(ground, { sheet: 'answers', ...any, questions: 7, seed: 5 }));
      }
      expect(faults.slice(0, 12)).toEqual([]);
    });

  test('64 keyways and 73 blanks', () => {
    const ground = generated(64, 73);
    const faults = [
      ...faultsOf(ground, { sheet: 'matrix', ...a4 }),
      ...faultsOf(ground, { sheet: 'matrix', ...usual, paper: 'A1', turned: 'landscape' }),
    ];
    expect(faults.slice(0, 12)).toEqual([]);
  });
});

describe('the matrix', () => {
  const order: MatrixOrder = { sheet: 'matrix', ...a4 };

  test('shows every pair once, and repeats the heads of rows and columns and the legend on every page', () => {
    const ground = generated(20, 40);
    const pages = layOutSheet(ground, order);
    expect(pages.length).toBeGreaterThan(1);
    const words = pages.flatMap(({ marks }) => textsIn(marks));
    const verdicts = words.filter((word) => word === 'enters' || word === 'tight' || word === 'blocked');
    expect(verdicts).toHaveLength(20 * 40);
    const goesIn = ground.table.goesIn.flat().filter(Boolean).length;
    expect(verdicts.filter((word) => word !== 'blocked')).toHaveLength(goesIn);
    for (const page of pages) {
      expect(textOf(page)).toContain('free all round');
      expect(textOf(page)).toMatch(/goes into \d+ of 20/);
    }
  });

  test('fills one page with three keyways in larger type than with ten', () => {
    const sizeOf = (ground: SheetGround) => {
      const pages = layOutSheet(ground, order);
      expect(pages).toHaveLength(1);
      return textMarksIn(pages[0].marks).find(({ text }) => text === '+0.050')?.size ?? 0;
    };
    expect(sizeOf(generated(3, 5))).toBeGreaterThan(sizeOf(demo()));
  });

  test('leaves tools out where asked', () => {
    const [all] = layOutSheet(demo(), order);
    const [blanks] = layOutSheet(demo(), { ...order, blanksOnly: true });
    expect(textOf(all)).toContain('Nose feeler');
    expect(textOf(blanks)).not.toContain('Nose feeler');
  });
});

describe('the answer sheet', () => {
  const order = { sheet: 'answers', ...a4, questions: 10, seed: 7 } as const;

  test('takes no page for a question or two that smaller pictures make room for', () => {
    const pages = layOutSheet(demo(), { ...order, questions: 12 });
    expect(pages.map(({ title }) => title)).toEqual([
      'Does it go in?, page 1 of 2',
      'Answers: does it go in?, page 2 of 2',
    ]);
  });

  test('asks without names, and answers on pages of their own', () => {
    const ground = demo();
    const pages = layOutSheet(ground, order);
    const first = pages.findIndex(({ title }) => title.startsWith('Answers'));
    expect(first).toBeGreaterThan(0);
    const names = ground.family.profiles.map(({ name }) => name);
    for (const page of pages.slice(0, first)) {
      const told = JSON.stringify(page.marks) + (page.told ?? []).join(' ');
      expect(names.filter((name) => told.includes(name))).toEqual([]);
    }
    const answers = pages.slice(first).map(textOf).join(' ');
    expect(answers.match(/goes in|does not go in/g)?.length).toBeGreaterThanOrEqual(10);
    expect(answers).toMatch(/does not enter/);
  });

  test('is the same for the same seed, another for another', () => {
    const ground = demo();
    expect(layOutSheet(ground, order)).toEqual(layOutSheet(ground, order));
    expect(layOutSheet(ground, { ...order, seed: 8 })).not.toEqual(layOutSheet(ground, order));
  });

  test('says so where the family has not so many pairs', () => {
    const pages = layOutSheet(generated(3, 5), { ...order, questions: 100 });
    expect(textOf(pages[0])).toMatch(/has no more pairs that differ/);
  });
});

describe('slides', () => {
  const order: SlidesOrder = { sheet: 'slides', ...a4 };

  /** Marks on a picture are meant to stand over it; texts may not stand over each other. */
  const slideFaults = (ground: SheetGround, of = order) =>
    layOutSheet(ground, of).flatMap((page) =>
      pageFaults(page, 3.4, typeface).filter((fault) => !/ over \[/.test(fault)),
    );

  /** Finding a passage of many keyways takes seconds; that of few is looked at as well. */
  const withoutPassages = (ground: SheetGround): SheetGround => {
    const lesson = lessonShown(taughtGround(ground, 'mm'));
    const steps = lesson.steps.filter(({ show }) => show !== 'passage');
    return { ...ground, family: { ...ground.family, lesson: { ...lesson, steps } } };
  };

  test('nothing stands over anything else, whatever the names', () => {
    for (const ground of [demo(), longNames(), generated(24, 40)])
      expect(slideFaults(withoutPassages(ground), { ...order, units: 'in' }).slice(0, 12)).toEqual([]);
    expect(slideFaults(generated(4, 6))).toEqual([]);
  });

  test('a question takes two slides, tiers one a row; each has its number', () => {
    const steps = [
      { show: 'question', title: 'Does it?', blank: 'heron-blank-5', opening: 'smew-keyway' },
      { show: 'tiers', title: 'Tiers' },
      { show: 'words', title: 'Ends', words: 'Thank you.' },
    ] as const;
    const { family, table } = demo();
    const lesson: Lesson = { title: 'Short', steps };
    const ground = toldGround({ ...family, lesson }, (e, o) => (table.goesIn[e][o] ? 'enters' : 'blocked'), typeface);
    const pages = layOutSheet(ground, order);
    const titles = pages.map(({ title }) => title);
    expect(titles.slice(0, 2)).toEqual(['Does it?', 'Does it?']);
    expect(textOf(pages[0])).not.toContain('blocked');
    expect(textOf(pages[1])).toContain('blocked');
    expect(titles.filter((title) => title === 'Tiers').length).toBeGreaterThan(1);
    expect(pages.map((page) => textsIn(page.marks).at(-1))).toEqual(pages.map((_, i) => `${i + 1} / ${pages.length}`));
    expect(pages.every(({ width, height }) => width * 9 === height * 16)).toBe(true);
  });

  test('blades of four tiers stand 18 mm high at least, a tenth of the slide', () => {
    const groups: Readonly<Record<string, readonly number[]>> = { reed: [0, 1, 2], dyke: [4, 5, 6], shore: [7, 8, 9] };
    const steps = [{ show: 'tiers', title: 'Tiers', words: LONG }] as const;
    const family: Family = { ...demoFamily(), lesson: { title: 'Tiers', steps } };
    const opens = openingsOf(family).map(({ id }) => id.replace('-keyway', ''));
    const entrants = entrantsOf(family).map(({ id }) => id.split('-')[0]);
    const goesIn = (blank: string, o: number) =>
      blank === opens[o] ||
      blank === 'polder' ||
      (blank === 'causeway' && o < 7) ||
      (groups[blank]?.includes(o) ?? false);
    const ground = toldGround(family, (e, o) => (goesIn(entrants[e], o) ? 'enters' : 'blocked'), typeface);
    const pages = layOutSheet(ground, order);
    expect(pages).toHaveLength(4);
    const blades = areasIn(pages[3].marks, 'blade').map(({ strokes }) => {
      const heights = strokes.flatMap(({ spots }) => spots.map(([, y]) => y));
      return Math.max(...heights) - Math.min(...heights);
    });
    expect(blades).toHaveLength(15);
    expect(Math.max(...blades)).toBeGreaterThan(18);
  });

  test.each([
    [9, LONG],
    [14, LONG],
    [14, ''],
    [24, LONG],
  ])('%i blanks, each over the last, keep clear of the lines and of the foot', (count, more) => {
    const { family } = generated(count, count, (name) => `${name} ${more}`.trim());
    const steps = [{ show: 'tiers', title: 'Tiers', words: LONG }] as const;
    const nested: Family = { ...family, lesson: { title: 'Tiers', steps } };
    const ground = toldGround(nested, (e, o) => (o <= e ? 'enters' : 'blocked'), typeface);
    const pages = layOutSheet(ground, order);
    expect(pages).toHaveLength(count);
    expect(slideFaults(ground)).toEqual([]);
    // The last two marks are the foot.
    const marks = pages[count - 1].marks.slice(0, -2);
    expect(boundsOf(marks, typeface).maxY).toBeLessThanOrEqual(SLIDE_ROOM.y + SLIDE_ROOM.height + 0.1);
    const spots = marks.flatMap((mark) =>
      mark.kind === 'path' && mark.line?.ink === 'soft' ? mark.strokes.flatMap((stroke) => stroke.spots) : [],
    );
    expect(spots.length).toBeGreaterThanOrEqual(2 * (count - 1));
    const names = textsOf(marks, typeface);
    const through = names.filter(({ minX, maxX, minY, maxY }) =>
      spots.some(([x, y]) => x > minX && x < maxX && y > minY + 0.05 && y < maxY - 0.05),
    );
    expect(through.map(({ what }) => what)).toEqual([]);
  });

  test('a step whose part is gone says so, and a text without end is made smaller, then shortened', () => {
    const steps = [
      { show: 'pair', title: 'Gone', blank: 'nobody', opening: 'smew-keyway' },
      { show: 'wall', title: LONG.repeat(3), words: LONG.repeat(20), blank: 'heron-blank-5' },
      { show: 'pair', title: UNBROKEN, words: LONG.repeat(20), blank: 'heron-blank-5', opening: 'heron-keyway' },
      { show: 'passage', title: 'None', openings: ['nowhere'] },
    ] as const;
    const ground = { ...demo(), family: { ...demoFamily(), lesson: { title: LONG.repeat(4), steps } } };
    const pages = layOutSheet(ground, order);
    expect(pages).toHaveLength(4);
    expect(textOf(pages[0])).toContain('The blank of this step is not in this family.');
    expect(slideFaults(ground)).toEqual([]);
  });

  test('a family without a lesson gets the one that Teach makes', () => {
    const ground = generated(5, 8);
    expect(ground.family.lesson).toBeUndefined();
    expect(layOutSheet(ground, order)[0].title).toBe('What decides is the section');
  });
});
