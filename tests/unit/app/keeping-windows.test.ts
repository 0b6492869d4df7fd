import { beforeEach, describe, expect, test } from 'vitest';
import { isSafe, keepOf } from '../../../src/app/keep/keep-state.ts';
import { keepingOf } from '../../../src/app/keep/start-keeping.ts';
import { listWorks } from '../../../src/app/keep/work-records.ts';
import { openText } from '../../../src/app/state/document-state.ts';
import { undo } from '../../../src/app/state/edit-document.ts';
import { SAMPLE_FAMILIES } from '../../../src/app/state/sample-families.ts';
import { FakeBrowser, FakeShelf, type FakeWindow, openWindow, quiet, tabMemory } from './fake-keep.ts';
import { closeWindow, comeToRest, nameIn, noticesIn, press, rename, statusOf } from './fake-window.ts';

let shelf = new FakeShelf();
let browser = new FakeBrowser();

beforeEach(() => {
  shelf = new FakeShelf();
  browser = new FakeBrowser();
});

const [, LESSON] = SAMPLE_FAMILIES;
/** Its tab was closed, or its browser crashed. */
const close = (window: FakeWindow) => closeWindow(browser, window);

describe('two windows on one family', () => {
  let first: FakeWindow;
  let second: FakeWindow;
  beforeEach(async () => {
    first = await openWindow(shelf, browser);
    await rename(first, 'Of the first');
    second = await openWindow(shelf, browser);
  });

  test('the second is told, and does not overwrite the first', async () => {
    expect([nameIn(second), statusOf(second), noticesIn(second)]).toEqual([
      'Of the first',
      'elsewhere',
      ['This family is open in another tab'],
    ]);
    await rename(second, 'Of the second');
    await rename(first, 'Of the first, later');
    expect(await listWorks(shelf)).toMatchObject([{ name: 'Of the first, later' }]);
    expect(isSafe(keepOf(second.session).getState())).toBe(false);
  });

  test('the second keeps a copy, with undo and snapshots of its own', async () => {
    await rename(second, 'Of the second');
    await press(second, 'Keep as a copy');
    await rename(first, 'Of the first, later');
    const names = (await listWorks(shelf)).map(({ name }) => name);
    expect(names.sort()).toEqual(['Of the first, later', 'Of the second']);
    expect([statusOf(second), noticesIn(second)]).toEqual(['kept', []]);
  });

  test('the second takes over what the first has done up to then, and the first is told', async () => {
    await rename(first, 'At last');
    await press(second, 'Take over here');
    expect([nameIn(second), statusOf(second), noticesIn(second)]).toEqual(['At last', 'kept', []]);
    expect([statusOf(first), noticesIn(first)]).toEqual(['taken', ['Another tab has taken this family over']]);
    await rename(first, 'Too late');
    await rename(second, 'Mine now');
    expect(await listWorks(shelf)).toMatchObject([{ name: 'Mine now' }]);
    undo(second.session.documents);
    expect(nameIn(second)).toBe('At last');
  });

  test('what the second changed before it took over is kept as a copy', async () => {
    await rename(second, 'Changed in the second');
    await rename(first, 'Changed in the first');
    await press(second, 'Take over here');
    expect([nameIn(second), noticesIn(second)]).toEqual([
      'Changed in the first',
      ['Your changes here are kept as a copy'],
    ]);
    const names = (await listWorks(shelf)).map(({ name }) => name);
    expect(names.sort()).toEqual(['Changed in the first', 'Changed in the second (copy)']);
  });

  test('where the first changed nothing meanwhile, the second goes on with its own changes', async () => {
    await rename(second, 'Changed in the second');
    await press(second, 'Take over here');
    expect([nameIn(second), statusOf(second)]).toEqual(['Changed in the second', 'kept']);
    expect(await listWorks(shelf)).toMatchObject([{ name: 'Changed in the second' }]);
  });

  test('a first that does not answer loses the family', async () => {
    browser.deaf = true;
    await press(second, 'Take over here');
    expect(statusOf(second)).toBe('elsewhere');
    second.calm();
    await quiet();
    expect([statusOf(second), statusOf(first)]).toEqual(['kept', 'taken']);
    await rename(first, 'Too late');
    expect(await listWorks(shelf)).toMatchObject([{ name: 'Of the first' }]);
  });

  test('when the first is closed the second has the family: at once where it changed nothing, else when it says so', async () => {
    const third = await openWindow(shelf, browser);
    await rename(third, 'Of the third');
    await rename(first, 'At the end');
    await close(first);
    await comeToRest(second, third);
    expect([nameIn(second), statusOf(second)]).toEqual(['At the end', 'kept']);
    await close(second);
    await comeToRest(third);
    expect([statusOf(third), noticesIn(third)]).toEqual(['elsewhere', ['The other tab has been closed']]);
    await press(third, 'Take over here');
    expect([nameIn(third), statusOf(third)]).toEqual(['At the end', 'kept']);
    expect((await listWorks(shelf)).map(({ name }) => name).sort()).toEqual(['At the end', 'Of the third (copy)']);
  });

  test('a first that is only loaded again has its family back, whoever waits for it', async () => {
    const memory = tabMemory();
    memory.setItem('sectionary-tab', `work:${keepOf(first.session).getState().workId}`);
    await close(first);
    const again = await openWindow(shelf, browser, { memory });
    await comeToRest(second);
    expect([statusOf(again), statusOf(second)]).toEqual(['kept', 'elsewhere']);
    await rename(again, 'After the reload');
    expect(await listWorks(shelf)).toMatchObject([{ name: 'After the reload' }]);
  });

  test('another family in the second is kept as any other, and the first goes on', async () => {
    openText(second.session.documents, second.session.doors, LESSON.text, LESSON.fileName);
    await quiet();
    await rename(second, 'A lesson');
    await rename(first, 'Still the first');
    expect([statusOf(first), statusOf(second), noticesIn(second)]).toEqual(['kept', 'kept', []]);
    expect((await listWorks(shelf)).map(({ name }) => name).sort()).toEqual(['A lesson', 'Still the first']);
  });

  test('a writer whose right was taken without a word writes nothing', async () => {
    const keeping = keepingOf(second.session);
    const [head] = await listWorks(shelf);
    // As in a browser without locks: both believe that they may write.
    await keeping?.parts.shelf.update(`head/${head.id}`, (old) => ({ ...(old as object), writer: 'somebody else' }));
    await rename(first, 'Not mine any more');
    expect([statusOf(first), await listWorks(shelf)]).toMatchObject(['taken', [{ name: 'Of the first' }]]);
  });
});
