import { describe, expect, test } from 'vitest';
import { pageKey } from '../../../src/app/state/publish/page-keys.ts';
import { pageWords, tinyTypeWords } from '../../../src/app/state/publish/page-words.ts';
import {
  cardSubject,
  makeSheetChoiceStore,
  orderOf,
  PAPER_SHEETS,
  type SheetSubjects,
  slidesOrder,
  USUAL_SHEET,
} from '../../../src/app/state/publish/sheet-choice.ts';
import {
  fileNameOf,
  lackFor,
  missingWords,
  pageSizeText,
  subjectName,
} from '../../../src/app/state/publish/sheet-words.ts';
import { stepOfSlide } from '../../../src/app/state/publish/slide-step.ts';
import type { Family } from '../../../src/family/family.ts';
import { orderFault } from '../../../src/publish/order-fault.ts';
import { demoFamily } from '../../kit/demo-family.ts';

const family = demoFamily();
const opening = family.profiles.find(({ kind }) => kind === 'opening');
const tool = family.profiles.find(({ kind }) => kind === 'tool');
const blanks = family.profiles.filter(({ kind }) => kind === 'blank');

const SUBJECTS: SheetSubjects = {
  openingId: null,
  entrantId: null,
  wholeFamily: false,
  holderId: null,
  everyCard: null,
  units: 'mm',
  today: '1 March 2026',
};

/** The demo family with what a plan of two holders adds. */
const planned: Family = {
  ...family,
  plan: {
    areas: [],
    holders: [{ id: 'porter', name: 'Night porter', enters: [] }],
    baseBlanks: true,
    allSection: false,
    reserve: 0,
    stops: 1,
    depths: 1,
    blade: {
      thickness: 2e6,
      height: 8e6,
      backRadius: 0,
      cutZone: 0,
      backZone: 0,
      grooveWidth: 1e6,
      heightStep: 1e6,
      grooveDepth: 5e5,
      depthStep: 0,
      flank: 0,
      rootRadius: 0,
      sides: 'both',
    },
  },
};

describe('the choice that the browser keeps', () => {
  function shelfWith(text: string | null) {
    let kept = text;
    return {
      getItem: () => kept,
      setItem: (_key: string, value: string) => {
        kept = value;
      },
    };
  }

  test('comes back as it was left', () => {
    const shelf = shelfWith(null);
    const turned = { ...USUAL_SHEET.turned, matrix: 'portrait' as const };
    makeSheetChoiceStore(shelf).setState({
      sheet: 'scale',
      paper: 'A1',
      turned,
      palette: 'grey',
      enlarge: 20,
      units: 'in',
    });
    expect(makeSheetChoiceStore(shelf).getState()).toEqual({
      ...USUAL_SHEET,
      sheet: 'scale',
      paper: 'A1',
      turned,
      palette: 'grey',
      enlarge: 20,
      units: 'in',
    });
  });

  test.each([
    ['nothing', null],
    ['no JSON', '{'],
    ['a list', '[1]'],
    [
      'fields of other kinds',
      '{"sheet":"slides","paper":"A9","turned":7,"palette":1,"enlarge":3,"questions":0,"seed":1.5}',
    ],
    ['numbers beyond their limits', '{"questions":1e9,"seed":-4,"dated":"yes","onePage":1}'],
  ])('of %s it is as usual', (_what, text) => {
    expect(makeSheetChoiceStore(shelfWith(text)).getState()).toEqual(USUAL_SHEET);
  });

  test('what is sound of it is kept beside what is not', () => {
    const store = makeSheetChoiceStore(shelfWith('{"sheet":"card","paper":"A9","turned":{"card":"landscape"}}'));
    expect(store.getState()).toEqual({
      ...USUAL_SHEET,
      sheet: 'card',
      turned: { ...USUAL_SHEET.turned, card: 'landscape' },
    });
  });
});

describe('orders', () => {
  test.each(PAPER_SHEETS)('of the sheet "%s" as usual can be met by the demo family', (sheet) => {
    const order = orderOf({ ...USUAL_SHEET, sheet }, SUBJECTS, family);
    expect(order.sheet).toBe(sheet);
    expect(orderFault(family, order)).toBeNull();
  });

  test('the day is on them unless it is not wanted, the unit is that of the window unless another is', () => {
    expect(orderOf(USUAL_SHEET, SUBJECTS, family)).toMatchObject({ date: '1 March 2026', units: 'mm' });
    const order = orderOf({ ...USUAL_SHEET, dated: false, units: 'in' }, SUBJECTS, family);
    expect(order.units).toBe('in');
    expect('date' in order).toBe(false);
    expect(slidesOrder({ ...USUAL_SHEET, dated: false }, 'in', 'today')).not.toHaveProperty('date');
  });

  test('the true-size sheet is of what is picked, and an id that the family lost is left out', () => {
    const scale = { ...USUAL_SHEET, sheet: 'scale' as const };
    const picked = { ...SUBJECTS, openingId: opening?.id ?? '', entrantId: tool?.id ?? '' };
    expect(orderOf(scale, picked, family)).toMatchObject({ opening: opening?.id, blank: tool?.id });
    const gone = orderOf(scale, { ...SUBJECTS, openingId: 'gone', entrantId: 'gone' }, family);
    expect(gone).not.toHaveProperty('opening');
    expect(gone).not.toHaveProperty('blank');
  });

  test('a card is for the picked blank, for the first one where a tool is picked, or for a holder', () => {
    expect(cardSubject(family, { ...SUBJECTS, entrantId: blanks[2].id })).toBe(blanks[2].id);
    expect(cardSubject(family, { ...SUBJECTS, entrantId: tool?.id ?? '' })).toBe(blanks[0].id);
    expect(cardSubject(planned, { ...SUBJECTS, holderId: 'porter' })).toBe('porter');
    expect(cardSubject(family, { ...SUBJECTS, holderId: 'porter' })).toBe(blanks[0].id);
  });

  test('of all there is: the family at true size, the cards of all holders or all blanks', () => {
    const whole = { ...SUBJECTS, wholeFamily: true, openingId: opening?.id ?? '' };
    const scale = orderOf({ ...USUAL_SHEET, sheet: 'scale' }, whole, family);
    expect(scale).toMatchObject({ all: true });
    expect(scale).not.toHaveProperty('opening');
    expect(subjectName(family, scale)).toBe('the whole family');
    const cards = (everyCard: 'holders' | 'blanks', of: Family) =>
      orderOf({ ...USUAL_SHEET, sheet: 'card' }, { ...SUBJECTS, everyCard, holderId: 'porter' }, of);
    expect(cards('holders', planned)).toMatchObject({ every: 'holders' });
    expect(cards('holders', planned)).not.toHaveProperty('of');
    expect(fileNameOf(planned, cards('blanks', planned), 'pdf')).toBe(
      'Polderwick College - all blanks - door-side card.pdf',
    );
    // A family that lost its plan has no holders: a card for a blank is made.
    expect(cards('holders', { ...family, plan: undefined })).toMatchObject({ of: blanks[0].id });
  });

  test('where there are tools only they are not left out', () => {
    const tools = { ...family, profiles: family.profiles.filter(({ kind }) => kind !== 'blank') };
    const order = orderOf({ ...USUAL_SHEET, blanksOnly: true }, SUBJECTS, tools);
    expect(orderFault(tools, order)).toBeNull();
  });
});

describe('words', () => {
  test('what a family lacks is told for each sheet, and nothing where it lacks nothing', () => {
    const kinds = (...some: string[]) => ({
      ...family,
      plan: undefined,
      profiles: family.profiles.filter(({ kind }) => some.includes(kind)),
    });
    expect(lackFor('chart', family)).toBeNull();
    expect(lackFor('chart', kinds())?.title).toBe('This family has no keyways');
    expect(lackFor('chart', kinds('blank'))?.title).toBe('This family has no keyways');
    expect(lackFor('matrix', kinds('opening'))?.title).toBe('This family has no blanks');
    expect(lackFor('card', kinds('opening', 'tool'))?.title).toBe('No blank to make a card for');
    expect(lackFor('slides', { ...family, lesson: undefined })?.title).toBe('No lesson yet');
  });

  test('files are called by family, subject and sheet, with the number of a page of several', () => {
    const chart = orderOf(USUAL_SHEET, SUBJECTS, family);
    expect(fileNameOf(family, chart, 'pdf')).toBe('Polderwick College - section chart.pdf');
    expect(fileNameOf(family, chart, 'svg', [3, 12])).toBe('Polderwick College - section chart 03.svg');
    const card = orderOf({ ...USUAL_SHEET, sheet: 'card' }, { ...SUBJECTS, holderId: 'porter' }, planned);
    expect(fileNameOf(planned, card, 'pdf')).toBe('Polderwick College - Night porter - door-side card.pdf');
    const odd = { ...family, name: ' ../a:b*c?<>| ' };
    expect(fileNameOf(odd, chart, 'pdf')).toBe('a b c - section chart.pdf');
    expect(fileNameOf({ ...family, name: '///' }, chart, 'pdf')).toBe('Family - section chart.pdf');
  });

  test('a sheet of the whole family has no subject, a pair has both names', () => {
    expect(subjectName(family, orderOf(USUAL_SHEET, SUBJECTS, family))).toBe('');
    const pair = { ...SUBJECTS, openingId: opening?.id ?? '', entrantId: blanks[0].id };
    const order = orderOf({ ...USUAL_SHEET, sheet: 'scale' }, pair, family);
    expect(subjectName(family, order)).toBe(`${blanks[0].name} in ${opening?.name}`);
  });

  test('the size of a page has the digits that its paper has', () => {
    expect(pageSizeText(210, 297, 'mm')).toBe('210 × 297 mm');
    expect(pageSizeText(215.9, 279.4, 'mm')).toBe('215.9 × 279.4 mm');
    expect(pageSizeText(215.9, 279.4, 'in')).toBe('8.5 × 11 in');
  });

  test('missing letters are named, at most a dozen', () => {
    expect(missingWords([])).toBeNull();
    expect(missingWords(['鍵'])).toContain('no letter for “鍵”.');
    expect(missingWords([...'abcdefghijklmn'])).toContain('“l” and 2 others');
  });

  test('tiny type on a chart is told with what helps', () => {
    const text = { kind: 'text' as const, spot: [0, 0] as const, text: 'Heron', size: 0.9 };
    const page = { title: 'Page', width: 10, height: 10, marks: [{ kind: 'group' as const, marks: [text] }] };
    const large = { ...page, marks: [{ ...text, size: 2.4 }] };
    expect(tinyTypeWords([large, page], { sheet: 'chart', paper: 'A4' })).toBe(
      'The smallest words on this chart are only 0.9 mm high: choose a larger paper.',
    );
    expect(tinyTypeWords([page], { sheet: 'chart', paper: 'A1' })).toContain('several pages');
    expect(tinyTypeWords([large], { sheet: 'chart', paper: 'A4' })).toBeNull();
    expect(tinyTypeWords([page], { sheet: 'matrix', paper: 'A4' })).toBeNull();
  });

  test('a page is read by what it tells of itself, else by its texts and the labels of its groups', () => {
    const text = (words: string) => ({ kind: 'text' as const, spot: [0, 0] as const, text: words, size: 3 });
    const page = {
      title: 'Page',
      width: 10,
      height: 10,
      marks: [
        text('Head'),
        { kind: 'group' as const, label: 'Heron keyway', marks: [text('inside')] },
        { kind: 'group' as const, marks: [text('Foot'), text(' ')] },
      ],
    };
    expect(pageWords(page)).toEqual(['Head', 'Heron keyway', 'Foot']);
    expect(pageWords({ ...page, told: ['One line'] })).toEqual(['One line']);
  });
});

describe('keys', () => {
  const at = (page: number) => ({
    page,
    zoom: 'fit' as const,
    wholeFamily: false,
    holderId: null,
    everyCard: null,
    printing: false,
  });

  test('turn pages and stop at the ends; with one page they are the browser’s', () => {
    expect(pageKey('PageDown', at(0), 3)).toEqual({ page: 1 });
    expect(pageKey('PageDown', at(2), 3)).toEqual({ page: 2 });
    expect(pageKey('PageUp', at(0), 3)).toEqual({ page: 0 });
    expect(pageKey('PageDown', at(0), 1)).toBeNull();
  });

  test('go on from the last page where there are fewer now', () => {
    expect(pageKey('PageUp', at(9), 3)).toEqual({ page: 1 });
  });

  test('set the size, and leave other keys alone', () => {
    expect(pageKey('1', at(0), 1)).toEqual({ zoom: 'true' });
    expect(pageKey('F', at(0), 1)).toEqual({ zoom: 'fit' });
    expect(pageKey('ArrowDown', at(0), 3)).toBeNull();
  });
});

test('a slide belongs to the step whose title it has, also where a step has several and titles come twice', () => {
  const step = (title: string) => ({ show: 'words' as const, title });
  const steps = [step('A'), step('Tiers'), step('Question'), step('A')];
  const titles = ['A', 'Tiers', 'Tiers', 'Tiers', 'Question', 'Question', 'A'];
  expect(titles.map((_, i) => stepOfSlide(steps, titles, i))).toEqual([0, 1, 1, 1, 2, 2, 3]);
  expect(stepOfSlide(steps, ['elsewhere'], 0)).toBe(0);
});
