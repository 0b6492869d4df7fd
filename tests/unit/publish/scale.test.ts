import { beforeAll, expect, test } from 'vitest';
import { loadTypeface, type Typeface } from '../../../src/lettering/typeface.ts';
import type { Mark } from '../../../src/publish/page.ts';
import { scaleSheet } from '../../../src/publish/scale-sheet.ts';
import type { ScaleOrder } from '../../../src/publish/sheet-order.ts';
import { demoFamily } from '../../kit/demo-family.ts';
import { boundsOf, picturesOf, textsOf } from '../../kit/laid-out.ts';
import { toldGround } from '../../kit/told-ground.ts';

let typeface: Typeface;
beforeAll(async () => {
  typeface = await loadTypeface();
});

const order: ScaleOrder = {
  sheet: 'scale',
  paper: 'A4',
  turned: 'portrait',
  palette: 'colour',
  units: 'mm',
  enlarge: 8,
};

const sheet = (more: Partial<ScaleOrder> = {}) =>
  scaleSheet(
    toldGround(demoFamily(), (e, o) => (e === o ? 'enters' : 'blocked'), typeface),
    { ...order, ...more },
  );

const wordsOf = (marks: readonly Mark[]) =>
  textsOf(marks, typeface)
    .map(({ what }) => what)
    .join(' ');

test('a bar of 50 mm, and how to check it', () => {
  const [page] = sheet();
  const bar = page.marks.find((mark) => mark.kind === 'group' && mark.label?.startsWith('50 mm'));
  const areas = bar?.kind === 'group' ? bar.marks.filter(({ kind }) => kind === 'path') : [];
  const { minX, maxX } = boundsOf(areas, typeface);
  expect(maxX - minX).toBeCloseTo(50, 9);
  expect(wordsOf(page.marks)).toContain('lay a ruler along the bar');
});

test('a blank of 2.00 by 8.40 mm stands there at true size and eight times as large, with its dimensions', () => {
  const [page] = sheet({ opening: 'heron-keyway', blank: 'heron-blank-5' });
  const sizes = picturesOf(page.marks, typeface)
    .filter(({ what }) => what.includes('picture of the blank'))
    .map(({ minX, maxX, minY, maxY }) => [maxX - minX, maxY - minY]);
  expect(sizes).toHaveLength(2);
  expect(sizes[0][0]).toBeCloseTo(2, 9);
  expect(sizes[0][1]).toBeCloseTo(8.4, 9);
  expect(sizes[1][0]).toBeCloseTo(16, 9);
  expect(sizes[1][1]).toBeCloseTo(67.2, 9);
  const words = wordsOf(page.marks);
  for (const told of ['2.000 mm', '8.400 mm', '2.11 × 8.51 mm', '1:1', '8:1', '0.45 mm deep'])
    expect(words).toContain(told);
});

test('the head says whether anything is enlarged', () => {
  const headOf = (order: Parameters<typeof sheet>[0]) => wordsOf(sheet(order)[0].marks);
  expect(headOf({ enlarge: 8 })).toContain('Sections at true size and enlarged');
  expect(headOf({ enlarge: 1 })).not.toContain('and enlarged');
});

test('in inches, and with an enlargement that has no room made less and said so', () => {
  const words = sheet({ units: 'in', enlarge: 50 })
    .map(({ marks }) => wordsOf(marks))
    .join(' ');
  expect(words).toContain('78.7 thou');
  expect(words).toContain('50 times have no room');
});

test.each([
  ['A4', 'portrait', 9],
  ['A4', 'landscape', 6],
  ['Letter', 'landscape', 6],
  ['A1', 'portrait', 25],
] as const)('as much as fits on one page of %s %s where nobody says how much', (paper, turned, least) => {
  const more = { opening: 'bittern-keyway', blank: 'heron-blank-5', paper, turned, enlarge: undefined };
  const pages = sheet(more);
  expect(pages).toHaveLength(1);
  const [, enlarged] = picturesOf(pages[0].marks, typeface).filter(({ what }) => what.includes('picture of the blank'));
  const times = Math.round((enlarged.maxY - enlarged.minY) / 8.4);
  expect(times).toBeGreaterThanOrEqual(least);
  // Else 50 are the most there are, or one more would take a page more, or a second row of pictures.
  const tooMuch = sheet({ ...more, enlarge: times + 1 });
  const rows = picturesOf(tooMuch[0].marks, typeface).map(({ minY }) => Math.round(minY / 20));
  expect(times === 50 || tooMuch.length > 1 || new Set(rows).size > 1).toBe(true);
});

test('a collision is told above the floor of the keyway, as the table tells the ward that it meets', () => {
  const [page] = sheet({ opening: 'bittern-keyway', blank: 'heron-blank-5' });
  const words = wordsOf(page.marks);
  expect(words).toContain('Heights are above the floor of the keyway.');
  expect(words).toContain('Wards above the floor, grooves above the back; depth');
  const [, side, from, to] = words.match(/blocked by the (\w+) ward at ([\d.]+)–([\d.]+) mm/) ?? [];
  const rows = words.slice(words.lastIndexOf('Bittern keyway'), words.lastIndexOf('Heron blank'));
  const wards = [...rows.matchAll(/(\w+) ([\d.]+)–([\d.]+) mm, /g)].map(([, ...ward]) => ward);
  const near = (a: string, b: string) => Math.abs(Number(a) - Number(b)) <= 0.1001;
  expect(wards.some(([s, low, high]) => s === side && near(low, from) && near(high, to))).toBe(true);
});

test('a table that has no room under its pictures stands whole on the next page', () => {
  const pages = sheet({ turned: 'landscape', enlarge: 10, opening: 'bittern-keyway', blank: 'heron-blank-5' });
  expect(pages).toHaveLength(2);
  for (const words of ['Thinnest web', 'Bittern keyway', 'Heron blank, five chambers'])
    expect(wordsOf(pages[1].marks)).toContain(words);
});

test('the whole family: every section once at true size and once enlarged', () => {
  const pages = sheet({ all: true, enlarge: 4 });
  const pictures = pages
    .flatMap(({ marks }) => picturesOf(marks, typeface))
    .filter(({ what }) => what.includes('picture of the'));
  expect(pictures).toHaveLength(2 * demoFamily().profiles.length);
});
