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

test('in inches, and with an enlargement that has no room made less and said so', () => {
  const words = sheet({ units: 'in', enlarge: 50 })
    .map(({ marks }) => wordsOf(marks))
    .join(' ');
  expect(words).toContain('78.7 thou');
  expect(words).toContain('50 times have no room');
});

test('the whole family: every section once at true size and once enlarged', () => {
  const pages = sheet({ all: true, enlarge: 4 });
  const pictures = pages
    .flatMap(({ marks }) => picturesOf(marks, typeface))
    .filter(({ what }) => what.includes('picture of the'));
  expect(pictures).toHaveLength(2 * demoFamily().profiles.length);
});
