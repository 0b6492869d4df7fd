import { expect, test } from 'vitest';
import { placeAfter } from '../../../src/app/panels/gauge/tools-table-keys.ts';
import { cellSentence } from '../../../src/app/state/gauge/cell-sentence.ts';
import { spareNumber } from '../../../src/app/state/gauge/gauge-lengths.ts';
import { toolsOf } from '../../../src/app/state/gauge/strip-in-hand.ts';
import { countWords, pressedOrder, shownTools, sortedTools } from '../../../src/app/state/gauge/tool-rows.ts';
import type { ToolTable } from '../../../src/gauge/tool-table.ts';
import { demoFamily } from '../../kit/demo-family.ts';

const TOOLS = toolsOf(demoFamily());
const [thin, middle, thick, shaped] = TOOLS;

const cell = (openingId: string, verdict: 'enters' | 'tight' | 'blocked', spare: number | null, clearance: number) => ({
  ...{ openingId, verdict, spare, clearance },
});

const TABLE: ToolTable = {
  openings: ['a', 'b'],
  rows: [
    { toolId: thin.id, strip: null, cells: [cell('a', 'enters', 200, 100), cell('b', 'enters', 300, 150)] },
    { toolId: middle.id, strip: null, cells: [cell('a', 'tight', 10, 5), cell('b', 'enters', 400, 200)] },
    { toolId: thick.id, strip: null, cells: [cell('a', 'blocked', -500, -Infinity), cell('b', 'tight', 20, 10)] },
    { toolId: shaped.id, strip: null, cells: [cell('a', 'enters', null, 120), cell('b', 'blocked', null, -90)] },
  ],
};

test('a tool is told by its worst keyway; a shaped one has no spare thickness', () => {
  const rows = shownTools(TOOLS, TABLE);
  expect(rows.map(({ verdict }) => verdict)).toEqual(['enters', 'tight', 'blocked', 'blocked']);
  expect(rows.map(({ spare }) => spare)).toEqual([200, 10, -500, null]);
  expect(rows.map(({ enters }) => enters)).toEqual([2, 2, 1, 1]);
  expect(rows.map(countWords)).toEqual([
    'enters 2 of 2',
    'enters 2 of 2, 1 tight',
    'enters 1 of 2, 1 tight',
    'enters 1 of 2',
  ]);
  expect(rows.map(({ straight }) => straight)).toEqual([true, true, true, false]);
  expect(shownTools(TOOLS, null).every(({ verdict, cells }) => verdict === null && cells.length === 0)).toBe(true);
});

test('a tool in a keyway is told with the figure of the table, and with what makes it tight', () => {
  const opening = { ...thin, name: 'Chapel keyway' };
  const tall = cell('a', 'tight', 380_900, 30_700);
  expect(spareNumber(380_900, 'mm')).toBe('+0.380');
  expect(cellSentence(tall, opening, 'height', 'mm')).toBe(
    'In Chapel keyway it could be thicker by 0.380 mm, but its height leaves it only 0.031 mm all round. Straight: gauged by the curve.',
  );
  expect(cellSentence(tall, opening, 'thickness', 'mm')).toContain(
    'by 0.380 mm, and keeps 0.031 mm all round. Straight',
  );
  expect(cellSentence(cell('a', 'tight', 0, 0), opening, 'both', 'mm')).toContain('it touches on both sides.');
  expect(cellSentence(cell('a', 'blocked', -500_200, -Infinity), opening, null, 'mm')).toBe(
    'Too thick for Chapel keyway: −0.501 mm.',
  );
});

test('rows are sorted by what is asked, equal ones as in the family', () => {
  const rows = shownTools(TOOLS, TABLE);
  const ids = (order: Parameters<typeof sortedTools>[1]) => sortedTools(rows, order).map(({ tool }) => tool.id);
  expect(ids({ by: 'family', down: false })).toEqual(TOOLS.map(({ id }) => id));
  expect(ids({ by: 'size', down: true })[0]).toBe(thick.id);
  expect(ids({ by: 'count', down: false })).toEqual([thick.id, shaped.id, thin.id, middle.id]);
  expect(ids({ by: 'opening', openingId: 'a', down: true })).toEqual([shaped.id, thin.id, middle.id, thick.id]);
  expect(ids({ by: 'name', down: false })[0]).toBe(shaped.id);
});

test('a second press on a head turns the order round', () => {
  const first = pressedOrder({ by: 'family', down: false }, { by: 'opening', openingId: 'a', down: true });
  expect(first).toEqual({ by: 'opening', openingId: 'a', down: true });
  expect(pressedOrder(first, { by: 'opening', openingId: 'a', down: true })).toEqual({ ...first, down: false });
  expect(pressedOrder(first, { by: 'opening', openingId: 'b', down: true })).toMatchObject({
    openingId: 'b',
    down: true,
  });
});

test('keys walk head, names and cells and stop at the edges', () => {
  const after = (row: number, column: number, key: string) => placeAfter({ row, column }, key, 4, 10);
  expect(after(0, 1, 'ArrowUp')).toEqual({ row: -1, column: 1 });
  expect(after(-1, 1, 'ArrowUp')).toEqual({ row: -1, column: 1 });
  expect(after(3, 10, 'ArrowDown')).toEqual({ row: 3, column: 10 });
  expect(after(3, 10, 'ArrowRight')).toEqual({ row: 3, column: 10 });
  expect(after(2, 5, 'Home')).toEqual({ row: 2, column: 0 });
  expect(after(2, 5, 'End')).toEqual({ row: 2, column: 10 });
  expect(after(2, 5, 'x')).toBe(null);
});
