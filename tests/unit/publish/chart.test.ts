import { beforeAll, expect, test } from 'vitest';
import { entrantsOf } from '../../../src/family/family.ts';
import { loadTypeface, type Typeface } from '../../../src/lettering/typeface.ts';
import type { Profile } from '../../../src/profile/profile.ts';
import { planChart } from '../../../src/publish/chart-parts.ts';
import { enteredRuns } from '../../../src/publish/chart-picture.ts';
import { chartContent } from '../../../src/publish/chart-rows.ts';
import { chartSheet } from '../../../src/publish/chart-sheet.ts';
import type { Page } from '../../../src/publish/page.ts';
import type { SheetGround } from '../../../src/publish/sheet-ground.ts';
import type { ChartOrder } from '../../../src/publish/sheet-order.ts';
import { largeFamily } from '../../cases/large-families.ts';
import { picturesOf, textsOf } from '../../kit/laid-out.ts';
import { toldGround } from '../../kit/told-ground.ts';

let typeface: Typeface;
beforeAll(async () => {
  typeface = await loadTypeface();
});

const order: ChartOrder = { sheet: 'chart', paper: 'A4', turned: 'landscape', palette: 'colour', units: 'mm' };

/** What the ward sites of a generated family say, which is not worked out from outlines. */
function bySites(openings: number, blanks: number): { ground: SheetGround; goesIn: readonly (readonly boolean[])[] } {
  const { family, goesIn } = largeFamily(openings, blanks, { lengths: 1 });
  return { ground: toldGround(family, (e, o) => (goesIn[e][o] ? 'enters' : 'blocked'), typeface), goesIn };
}

const wordsOf = ({ marks }: Page) => textsOf(marks, typeface).map(({ what }) => what);

test('what enters one keyway stands over it, what enters several has a line, what enters all is the last', () => {
  const { ground } = bySites(6, 12);
  const { columns, rows, outside } = chartContent(ground, order);
  expect(columns.map(({ name }) => name)).toEqual(['Heron', 'Smew', 'Bittern', 'Ruff', 'Plover', 'Knot']);
  expect(columns.map(({ base }) => base?.name).slice(0, 2)).toEqual(['Heron blank, 5 and 6 chambers', 'Smew blank']);
  expect(columns.every(({ base }) => base?.marks.filter((mark) => mark !== null).length === 1)).toBe(true);
  expect(rows[rows.length - 1]).toMatchObject({
    rank: 'all',
    name: 'All-section blank',
    words: 'enters all 6: Heron, Smew, Bittern, Ruff, Plover and Knot',
  });
  expect(rows.map(({ tier }) => tier)).toEqual([...rows.map(({ tier }) => tier)].sort((a, b) => a - b));
  expect(outside).toEqual([]);
});

// A tight blank stood under the marks of one that has its running clearance in the same keyways.
test('what is tight has a line of its own, beside what enters the same keyways', () => {
  const { family, goesIn } = largeFamily(6, 12, { lengths: 1 });
  const ids = entrantsOf(family).map(({ id }) => id);
  const of = (id: string) => family.profiles.find((profile) => profile.id === id);
  const twinOf = (id: string, name: string) => ({ ...of(id), id: `${id}-tight`, name }) as Profile;
  const all = ids[goesIn.findIndex((row) => row.every(Boolean))];
  const one = ids[goesIn.findIndex((row) => row.filter(Boolean).length === 1)];
  const twins = [twinOf(all, 'Thick probe'), twinOf(one, 'Thick base')];
  const known = { ...family, profiles: [...family.profiles, ...twins] };
  const rowOf = (e: number) => goesIn[[...ids, all, one].map((id) => ids.indexOf(id))[e]];
  const ground = toldGround(
    known,
    (e, o) => (rowOf(e)[o] ? (e < ids.length && 'enters') || 'tight' : 'blocked'),
    typeface,
  );
  const { columns, rows } = chartContent(ground, order);
  expect(rows.at(-1)?.rank).toBe('all');
  const told = new Map(rows.map(({ name, words }) => [name, words]));
  expect(told.get('All-section blank')).toMatch(/^enters all 6: /);
  expect(told.get('Thick probe')).toMatch(/^tight in all 6: /);
  expect(told.get('Thick base')).toMatch(/^tight in 1 of 6: /);
  expect(columns.flatMap(({ base }) => base?.marks.filter((mark) => mark !== null) ?? [])).toEqual(
    Array(6).fill('enters'),
  );
  const words = chartSheet(ground, order)
    .flatMap((page) => wordsOf(page))
    .join(' ');
  expect(words).toContain('Thick probe');
  expect(words).toContain('Thick base');
});

test('a section squeezed in later stands in between: what the family says, unless the order says otherwise', () => {
  const { ground } = bySites(6, 12);
  const [first, second] = ground.family.profiles;
  const said = { ...ground.family, profiles: ground.family.profiles.with(1, { ...second, inBetween: true }) };
  const raised = (of: Pick<ChartOrder, 'inBetween'>) =>
    chartContent({ ...ground, family: said }, { ...order, ...of })
      .columns.filter(({ isInBetween }) => isInBetween)
      .map(({ opening }) => opening.id);
  expect(raised({})).toEqual([second.id]);
  expect(raised({ inBetween: [first.id] })).toEqual([first.id]);
});

test('lines and words say what the ward sites say', () => {
  const { ground, goesIn } = bySites(6, 12);
  const { columns, rows } = chartContent(ground, order);
  for (const row of rows) {
    const i = ground.fits.profiles.indexOf(row.pictured[0].id);
    expect(row.marks.map((mark) => mark === 'enters')).toEqual(goesIn[i]);
    for (const [o, { name }] of columns.entries()) expect(row.allWords.includes(name)).toBe(goesIn[i][o]);
  }
});

test('one outline in two lengths is one blank of the chart with both lengths', () => {
  const { family } = largeFamily(6, 12, { lengths: 1 });
  const profiles = family.profiles.map((profile) =>
    profile.name === 'Heron blank' ? { ...profile, name: 'Heron blank, five chambers' } : profile,
  );
  const { goesIn } = largeFamily(6, 12, { lengths: 1 });
  const ground = toldGround({ ...family, profiles }, (e, o) => (goesIn[e][o] ? 'enters' : 'blocked'), typeface);
  expect(chartContent(ground, order).columns[0].base?.name).toBe('Heron blank, 5 and 6 chambers');
});

test('six sections stand on one page, with a mark for each pair that goes in', () => {
  const { ground, goesIn } = bySites(6, 12);
  const pages = chartSheet(ground, order);
  expect(pages).toHaveLength(1);
  // The blank in two lengths is one line of the chart; the legend has one mark more.
  const pairs = goesIn.slice(0, -1).flat().filter(Boolean).length;
  const marks = picturesOf(pages[0].marks, typeface).filter(({ what }) => what === '[enters]');
  expect(marks.length).toBeGreaterThanOrEqual(pairs);
});

test('40 sections run over pages: every mark stands once, lines say on which pages they go on', () => {
  const { ground, goesIn } = bySites(40, 60);
  const content = chartContent(ground, order);
  const plan = planChart(content, { width: 270, height: () => 130, zoom: 1, onePage: false }, typeface);
  expect(plan.parts.length).toBeGreaterThan(1);
  const shown = plan.parts.flatMap(({ rows, from, to }) =>
    rows.flatMap(({ marks }) => marks.slice(from, to).filter((mark) => mark !== null)),
  );
  const several = goesIn.filter((row) => row.filter(Boolean).length > 1);
  expect(shown).toHaveLength(several.flat().filter(Boolean).length);
  for (const { heights } of plan.parts) expect(heights.total).toBeLessThanOrEqual(130 + 1e-6);
  const pages = chartSheet(ground, order);
  const first = wordsOf(pages[0]).join(' ');
  expect(first).toContain('Keyways 1 to ');
  expect(first).toMatch(/also on pages? \d/);
  expect(pages.some(({ title }) => title.startsWith('Section chart, in words'))).toBe(true);
});

test('40 sections stand on one poster where that is ordered', () => {
  const { ground } = bySites(40, 60);
  const pages = chartSheet(ground, { ...order, paper: 'A1', onePage: true });
  expect(pages).toHaveLength(1);
  expect(wordsOf(pages[0]).filter((word) => word === 'Heron')).toHaveLength(1);
});

test('only neighbouring keyways that a line enters are joined', () => {
  expect(enteredRuns(['enters', null, 'enters', 'tight', null, null, 'enters'])).toEqual([
    [0, 0],
    [2, 3],
    [6, 6],
  ]);
  expect(enteredRuns([null, null])).toEqual([]);
});
