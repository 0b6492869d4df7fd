import { beforeEach, describe, expect, test } from 'vitest';
import { spacedRows } from '../../../src/app/panels/draw/use-vertex-table.ts';
import { copyRows, pasteRows } from '../../../src/app/panels/draw/vertex-clipboard.ts';
import { lengthOf, shownLength, takeEntry } from '../../../src/app/panels/draw/vertex-entry.ts';
import { cellAfterTab, type TableKey, tableStep } from '../../../src/app/panels/draw/vertex-table-keys.ts';
import { openText } from '../../../src/app/state/document-state.ts';
import { chooseVertices, chosenNow, verticesInHand } from '../../../src/app/state/draw/draw-editing.ts';
import { undo } from '../../../src/app/state/edit-document.ts';
import { makeSession, type Session } from '../../../src/app/state/session.ts';
import { fakeDoors } from './fake-doors.ts';

const MM = 1e6;

const FAMILY = {
  format: 'sectionary-family',
  version: 1,
  name: 'Plain',
  units: 'mm',
  runningClearance: 0.03,
  profiles: [
    {
      id: 'bar',
      kind: 'blank',
      name: 'Bar',
      outline: [
        [0, 0],
        [2, 0],
        [2, 6],
        [0, 6],
      ],
    },
  ],
};

let session: Session;

beforeEach(() => {
  const { doors } = fakeDoors();
  session = makeSession(doors, null);
  openText(session.documents, doors, JSON.stringify(FAMILY), 'plain.json');
});

const points = () => verticesInHand(session).map(({ x, y }) => [x / MM, y / MM]);
const steps = () => session.documents.getState().past.length;

describe('an entry in the table of vertices', () => {
  test('a number is the coordinate, as one step of undo', () => {
    expect(takeEntry(session, 1, 'x', '2.5')).toBe('taken');
    expect(points()[1]).toEqual([2.5, 0]);
    expect(steps()).toBe(1);
    undo(session.documents);
    expect(points()[1]).toEqual([2, 0]);
  });

  test('a step goes to all chosen rows, where the cell is in one of them', () => {
    chooseVertices(session, [1, 2]);
    expect(takeEntry(session, 2, 'x', '-0.1')).toBe('taken');
    expect(points().map(([x]) => x)).toEqual([0, 1.9, 1.9, 0]);
    expect(takeEntry(session, 0, 'y', '-0.1')).toBe('taken');
    expect(points()[0]).toEqual([0, -0.1]);
    expect(points()[2]).toEqual([1.9, 6]);
    expect(steps()).toBe(2);
  });

  test.each([
    ['2.2 0.5', [2.2, 0.5]],
    ['2.2; 0.5', [2.2, 0.5]],
    ['2.2, 0.5', [2.2, 0.5]],
    ['@0.5 -0.5', [0.5, -0.5]],
    ['3<90', [0, 3]],
  ])('%s is a place, for both coordinates at once', (text, [x, y]) => {
    takeEntry(session, 1, 'x', text);
    if (text === '3<90') expect(session.draw.getState().refused?.words).toMatch(/^Not taken/);
    else expect(points()[1]).toEqual([x, y]);
  });

  test('what is no length is told, what crosses is refused; neither changes anything or is a step', () => {
    expect(takeEntry(session, 1, 'x', 'wide')).toEqual({ words: expect.stringMatching(/^Not a length/) });
    expect(takeEntry(session, 2, 'x', '-1')).toBe('taken');
    expect(takeEntry(session, 2, 'x', '=-1')).toBe('refused');
    expect(points()[2]).toEqual([1, 6]);
    expect(session.draw.getState().refused?.words).toMatch(/edge 2 crosses edge 4/);
    expect(steps()).toBe(1);
    expect(takeEntry(session, 1, 'x', '2')).toBe('taken');
    expect(steps()).toBe(1);
  });

  test('a radius or a bow makes an arc, 0 or "straight" takes it away', () => {
    expect(lengthOf(verticesInHand(session), 2, 'radius')).toBeNull();
    expect(takeEntry(session, 2, 'radius', '1')).toBe('taken');
    expect(lengthOf(verticesInHand(session), 2, 'bow')).toBeCloseTo(MM, 0);
    expect(takeEntry(session, 2, 'bow', '=-0.5')).toBe('taken');
    expect(lengthOf(verticesInHand(session), 2, 'radius')).toBeCloseTo(-1.25 * MM, 0);
    expect(takeEntry(session, 2, 'bow', '-0.25')).toBe('taken');
    expect(lengthOf(verticesInHand(session), 2, 'bow')).toBeCloseTo(-0.25 * MM, 0);
    expect(takeEntry(session, 2, 'radius', '0.9')).toMatchObject({
      words: expect.stringMatching(/Give at least 1 mm/),
    });
    expect(takeEntry(session, 2, 'radius', 'straight')).toBe('taken');
    expect(verticesInHand(session)[2].bulge).toBeUndefined();
    chooseVertices(session, [0, 2]);
    takeEntry(session, 0, 'bow', '0.1');
    expect(verticesInHand(session).map(({ bulge = 0 }) => Number(bulge.toFixed(9)))).toEqual([0.1, 0, 0.1, 0]);
  });

  test('lengths are shown in the units in force', () => {
    expect(shownLength(-1_234_567, 'mm')).toBe('−1.235');
    expect(shownLength(-100, 'mm')).toBe('0.000');
    expect(shownLength(2_540_000, 'in')).toBe('0.1000');
  });
});

describe('keys of the table', () => {
  const key = (name: string, more: Partial<TableKey> = {}): TableKey => ({
    key: name,
    shift: false,
    command: false,
    ...more,
  });
  const press = (row: number, column: number, pressed: TableKey, anchor = row) =>
    tableStep(session, { row, column }, anchor, verticesInHand(session).length, pressed);

  test('arrows walk cells and choose rows, and stop at the edges', () => {
    expect(press(0, 0, key('ArrowDown'))).toEqual({ kind: 'go', to: { row: 1, column: 0 } });
    expect(chosenNow(session)).toEqual([1]);
    expect(press(0, 0, key('ArrowUp'))).toEqual({ kind: 'go', to: { row: 0, column: 0 } });
    expect(press(3, 3, key('ArrowRight'))).toEqual({ kind: 'go', to: { row: 3, column: 3 } });
    expect(press(3, 0, key('ArrowLeft'))).toEqual({ kind: 'go', to: { row: 3, column: -1 } });
    expect(press(1, 2, key('End', { command: true }))).toEqual({ kind: 'go', to: { row: 3, column: 3 } });
  });

  test('with shift the choice reaches from where it began', () => {
    press(2, 0, key('ArrowDown', { shift: true }), 1);
    expect(chosenNow(session)).toEqual([1, 2, 3]);
    press(3, 0, key('ArrowUp', { shift: true, command: true }), 1);
    expect(chosenNow(session)).toEqual([0, 1]);
  });

  test('typing begins an entry, the row number takes none', () => {
    expect(press(0, 1, key('7'))).toEqual({ kind: 'edit', text: '7' });
    expect(press(0, 1, key('Enter'))).toEqual({ kind: 'edit', text: null });
    expect(press(0, -1, key('7'))).toBeNull();
    expect(press(0, 1, key('p'))).toBeNull();
    expect(press(0, 1, key('z', { command: true }))).toBeNull();
  });

  test('Insert adds and chooses, Delete removes the chosen or the row itself', () => {
    press(0, 0, key('Insert'));
    expect(points()[1]).toEqual([1, 0]);
    expect(chosenNow(session)).toEqual([1]);
    press(0, 0, key('Delete'));
    expect(points()).toHaveLength(4);
    chooseVertices(session, []);
    press(2, 0, key('Delete'));
    expect(points()).toEqual([
      [0, 0],
      [2, 0],
      [0, 6],
    ]);
    press(2, 0, key('Delete'));
    expect(points()).toHaveLength(3);
    expect(session.draw.getState().refused?.words).toMatch(/at least three/);
  });

  test('Tab goes along the row and on to the next, and ends at the last cell', () => {
    expect(cellAfterTab({ row: 0, column: 3 }, 4, false)).toEqual({ row: 1, column: 0 });
    expect(cellAfterTab({ row: 1, column: 0 }, 4, true)).toEqual({ row: 0, column: 3 });
    expect(cellAfterTab({ row: 3, column: 3 }, 4, false)).toBeNull();
    expect(cellAfterTab({ row: 0, column: 0 }, 4, true)).toBeNull();
  });
});

describe('copy and paste', () => {
  test('several chosen rows are replaced, else rows are added after the one in focus', () => {
    expect(pasteRows(session, 0, '1 -0.5')).toEqual({ done: true, words: '1 vertex pasted.' });
    expect(points()).toEqual([
      [0, 0],
      [1, -0.5],
      [2, 0],
      [2, 6],
      [0, 6],
    ]);
    chooseVertices(session, [1, 2]);
    expect(pasteRows(session, 1, '2.5\t0').done).toBe(true);
    expect(points()).toEqual([
      [0, 0],
      [2.5, 0],
      [2, 6],
      [0, 6],
    ]);
    expect(steps()).toBe(2);
  });

  test('what is copied replaces a whole outline elsewhere', () => {
    const text = copyRows(session);
    expect(text.split('\n')).toHaveLength(4);
    takeEntry(session, 0, 'x', '0.3');
    chooseVertices(session, [0, 1, 2, 3]);
    pasteRows(session, 0, text);
    expect(points()[0]).toEqual([0, 0]);
  });

  test('a bad block and a block that crosses change nothing', () => {
    expect(pasteRows(session, 0, '1 2\n3 x')).toMatchObject({ done: false, words: expect.stringMatching(/line 2/) });
    expect(pasteRows(session, 0, '5 7')).toEqual({ done: false, words: '' });
    expect(points()).toHaveLength(4);
    expect(steps()).toBe(0);
  });
});

test('of a thousand rows those in sight are drawn, and the one in focus', () => {
  const rows = spacedRows(28 * 500, 1000, 3);
  expect(rows.length).toBeLessThan(40);
  expect(rows[0]).toEqual({ row: 3, before: 3 });
  expect(rows.at(-1)?.row).toBe(1000);
  expect(rows.reduce((sum, { before }) => sum + before + 1, 0)).toBe(1001);
});
