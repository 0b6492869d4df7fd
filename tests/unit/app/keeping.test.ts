import { beforeEach, describe, expect, test } from 'vitest';
import { isSafe, keepOf } from '../../../src/app/keep/keep-state.ts';
import { linkToFamily } from '../../../src/app/keep/share-link.ts';
import { keepingOf } from '../../../src/app/keep/start-keeping.ts';
import { listWorks } from '../../../src/app/keep/work-records.ts';
import { isEdited, openText } from '../../../src/app/state/document-state.ts';
import { commitFamily, dropEdit, endEdit, previewFamily, undo } from '../../../src/app/state/edit-document.ts';
import { SAMPLE_FAMILIES } from '../../../src/app/state/sample-families.ts';
import type { FamilyFile } from '../../../src/interchange/json/schema.ts';
import { beginWindow, FakeBrowser, FakeShelf, type FakeWindow, openWindow, quiet, tabMemory } from './fake-keep.ts';
import { closeWindow, comeToRest, fileOf, nameIn, noticesIn, press, rename, statusOf } from './fake-window.ts';

let shelf = new FakeShelf();
let browser = new FakeBrowser();

beforeEach(() => {
  shelf = new FakeShelf();
  browser = new FakeBrowser();
});

const [DEMO, LESSON] = SAMPLE_FAMILIES;
/** Its tab was closed, or its browser crashed. */
const close = (window: FakeWindow) => closeWindow(browser, window);

describe('the family that a window begins with', () => {
  test('is the demo, which is not kept before it is changed', async () => {
    const window = await openWindow(shelf, browser);
    expect([nameIn(window), statusOf(window), shelf.records.size]).toEqual(['Polderwick College', 'untouched', 0]);
    await rename(window, 'Changed');
    expect([statusOf(window), await listWorks(shelf)]).toMatchObject(['kept', [{ name: 'Changed', edited: true }]]);
  });

  /** A window whose shelf says nothing for longer than it waits, and what lets the shelf answer. */
  async function openLate() {
    const before = await openWindow(shelf, browser);
    await rename(before, 'Kept');
    await close(before);
    let answer = () => {};
    shelf.ready = new Promise((done) => {
      answer = done;
    });
    const { window } = beginWindow(shelf, browser);
    await quiet();
    window.calm();
    await quiet();
    expect([nameIn(window), statusOf(window), noticesIn(window)]).toEqual([
      'Polderwick College',
      'off',
      ['Nothing is kept in this browser'],
    ]);
    return {
      window,
      answer: async () => {
        answer();
        await quiet();
      },
    };
  }

  test('stays where the shelf answers late, and what was kept last is offered', async () => {
    const { window, answer } = await openLate();
    await answer();
    expect([nameIn(window), statusOf(window), noticesIn(window)]).toEqual([
      'Polderwick College',
      'untouched',
      ['The browser’s storage has answered late'],
    ]);
    await press(window, 'Open it');
    expect([nameIn(window), statusOf(window), noticesIn(window)]).toEqual(['Kept', 'kept', []]);
  });

  test('is kept beside what was there, once a late shelf answers, with what the pen has begun', async () => {
    const { window, answer } = await openLate();
    await rename(window, 'Begun meanwhile');
    await answer();
    const late = ['The browser’s storage has answered late'];
    expect([nameIn(window), statusOf(window), noticesIn(window)]).toEqual(['Begun meanwhile', 'kept', late]);
    expect((await listWorks(shelf)).map(({ name }) => name)).toEqual(['Begun meanwhile', 'Kept']);
    const other = await openLate();
    other.window.session.draw.setState({ pen: [], penFor: null });
    await other.answer();
    expect([nameIn(other.window), statusOf(other.window)]).toEqual(['Polderwick College', 'kept']);
  });

  test('is the file that was dropped while what is kept was being read', async () => {
    const before = await openWindow(shelf, browser);
    await rename(before, 'Kept');
    await close(before);
    const { window, started } = beginWindow(shelf, browser);
    shelf.beforeRecord = () => {
      const { documents, doors } = window.session;
      openText(documents, doors, DEMO.text.replace('Polderwick College', 'Dropped'), 'd.json');
    };
    await started;
    await quiet();
    expect([nameIn(window), statusOf(window)]).toEqual(['Dropped', 'kept']);
    expect((await listWorks(shelf)).map(({ name }) => name)).toEqual(['Dropped', 'Kept']);
  });

  test('is what was kept last, with its undo', async () => {
    const window = await openWindow(shelf, browser);
    await rename(window, 'One');
    await rename(window, 'Two');
    await close(window);
    const other = await openWindow(shelf, browser);
    expect([nameIn(other), statusOf(other), isEdited(other.session.documents.getState())]).toEqual([
      'Two',
      'kept',
      true,
    ]);
    undo(other.session.documents);
    expect(nameIn(other)).toBe('One');
    undo(other.session.documents);
    expect([nameIn(other), isEdited(other.session.documents.getState())]).toEqual(['Polderwick College', false]);
  });

  test('is what the tab showed before it was loaded again, kept or not', async () => {
    const memory = tabMemory();
    const window = await openWindow(shelf, browser, { memory });
    await rename(window, 'First');
    const second = await openWindow(shelf, browser);
    openText(
      second.session.documents,
      second.session.doors,
      DEMO.text.replace('Polderwick College', 'Second'),
      's.json',
    );
    await quiet();
    await close(window);
    await close(second);
    expect(nameIn(await openWindow(shelf, browser))).toBe('Second');
    const again = await openWindow(shelf, browser, { memory });
    expect(nameIn(again)).toBe('First');
    openText(again.session.documents, again.session.doors, LESSON.text, LESSON.fileName);
    await quiet();
    expect(statusOf(again)).toBe('untouched');
    expect(fileOf(await openWindow(shelf, browser, { memory }))).toEqual(JSON.parse(LESSON.text));
  });

  test('is the one of a link, before anything kept, and no file holds it', async () => {
    const window = await openWindow(shelf, browser);
    await rename(window, 'Passed on');
    const link = linkToFamily(window.session);
    if (!link?.ok) throw new Error('a link must be possible');
    await close(window);
    const other = await openWindow(new FakeShelf(), browser, { fragment: link.fragment });
    expect([nameIn(other), isEdited(other.session.documents.getState())]).toEqual(['Passed on', true]);
    const refused = await openWindow(shelf, browser, { fragment: link.fragment.slice(0, -20) });
    expect([nameIn(refused), refused.session.documents.getState().refusal?.fileName]).toEqual([
      'Passed on',
      'The link',
    ]);
  });

  test('that is too long for a link tells how many pictures it keeps, the likely cause', async () => {
    const window = await openWindow(shelf, browser);
    expect(linkToFamily(window.session)).toMatchObject({ ok: true, pictures: 0 });
    const { documents, doors } = window.session;
    const file = documents.getState().document?.file as FamilyFile;
    const noise = Array.from({ length: 60_000 }, (_, i) => Math.abs(Math.sin(i) * 1e9).toString(36)).join('');
    const image = `data:image/png;base64,iVBORw0KGgo${noise.replace(/[^0-9a-z]/g, '')}`;
    const [first, ...others] = file.profiles;
    const withPicture = { ...file, profiles: [{ ...first, picture: { image } }, ...others] };
    expect(commitFamily(documents, doors, withPicture)).toBeNull();
    expect(linkToFamily(window.session)).toMatchObject({ ok: false, pictures: 1 });
  });

  test('brings back what was picked and what the pen had begun', async () => {
    const window = await openWindow(shelf, browser);
    await rename(window, 'Desk');
    window.session.selection.setState({ entrantId: 'plover-blank', openingId: 'ruff-keyway', part: 'opening' });
    window.session.draw.setState({ pen: [{ x: 1, y: 2 }] });
    window.calm();
    await quiet();
    await close(window);
    const { session } = await openWindow(shelf, browser);
    expect(session.selection.getState()).toMatchObject({ entrantId: 'plover-blank', part: 'opening' });
    expect(session.draw.getState().pen).toEqual([{ x: 1, y: 2 }]);
  });
});

test('another family leaves what was picked and begun in the one before as it was', async () => {
  const window = await openWindow(shelf, browser);
  const { session } = window;
  await rename(window, 'First');
  const pen = [
    { x: 1, y: 2 },
    { x: 3, y: 4 },
  ];
  const penFor = { head: { kind: 'opening', name: 'Teal keyway' } } as const;
  session.selection.setState({ entrantId: 'plover-blank', part: 'entrant' });
  session.draw.setState({ pen, penFor, tool: 'pen' });
  openText(session.documents, session.doors, DEMO.text.replace('Polderwick College', 'Second'), 's.json');
  session.selection.setState({ entrantId: 'knot-blank' });
  await quiet();
  await comeToRest(window);
  expect(session.draw.getState()).toMatchObject({ pen: null, penFor: null });
  const first = (await listWorks(shelf)).find(({ name }) => name === 'First');
  if (!first) throw new Error('the first family must be kept');
  expect(first.desk).toMatchObject({ entrantId: 'plover-blank', pen, penFor });
  await keepingOf(session)?.open(first);
  await comeToRest(window);
  expect(session.draw.getState()).toMatchObject({ pen, penFor });
  expect(session.selection.getState().entrantId).toBe('plover-blank');
  const again = (await listWorks(shelf)).find(({ name }) => name === 'First');
  expect(again?.desk).toMatchObject({ pen, penFor });
});

test('a begun outline stays what it was for over a reload; a target that is gone is left out', async () => {
  for (const [penFor, found] of [
    [{ head: { kind: 'blank', name: 'Teal' } }, { head: { kind: 'blank', name: 'Teal' } }],
    [{ id: 'ruff-blank' }, { id: 'ruff-blank' }],
    [{ id: 'nobody' }, null],
  ] as const) {
    const own = new FakeShelf();
    const window = await openWindow(own, new FakeBrowser());
    await rename(window, 'Kept');
    window.session.draw.setState({ pen: [{ x: 1, y: 2 }], penFor });
    await comeToRest(window);
    const { session } = await openWindow(own, new FakeBrowser());
    expect(session.draw.getState().penFor).toEqual(found);
  }
});

test('a change counts as kept when it is written, not when the one before it is', async () => {
  const window = await openWindow(shelf, browser);
  await rename(window, 'First');
  const writes: (() => void)[] = [];
  const letGo = async () => {
    writes.shift()?.();
    await quiet();
  };
  shelf.waiting = writes;
  await rename(window, 'Second');
  await rename(window, 'Third');
  // The body of the second and its head.
  await letGo();
  await letGo();
  expect([statusOf(window), await listWorks(shelf)]).toMatchObject(['writing', [{ name: 'Second' }]]);
  shelf.waiting = null;
  await letGo();
  expect([statusOf(window), await listWorks(shelf)]).toMatchObject(['kept', [{ name: 'Third' }]]);
});

test('an outline that the pen has begun on the untouched demo is kept', async () => {
  const window = await openWindow(shelf, browser);
  window.session.draw.setState({ pen: [{ x: 1, y: 2 }] });
  await quiet();
  expect(statusOf(window)).toBe('kept');
  await close(window);
  const { session } = await openWindow(shelf, browser);
  expect(session.draw.getState().pen).toEqual([{ x: 1, y: 2 }]);
});

describe('a gesture', () => {
  test('that is broken off loses itself and nothing else', async () => {
    const window = await openWindow(shelf, browser);
    await rename(window, 'Before the drag');
    const { documents, doors } = window.session;
    const { document } = documents.getState();
    const writes = shelf.writes;
    for (let i = 0; i < 50; i++)
      if (document) previewFamily(documents, doors, { ...document.file, name: `Dragging ${i}` });
    await quiet();
    expect(shelf.writes).toBe(writes);
    // The window is gone in the middle.
    await close(window);
    const other = await openWindow(shelf, browser);
    expect(nameIn(other)).toBe('Before the drag');
    expect(other.session.documents.getState().past).toHaveLength(1);
  });

  test('that is ended is one step, and one that is given up none', async () => {
    const window = await openWindow(shelf, browser);
    const { documents, doors } = window.session;
    const drag = () => {
      const { document } = documents.getState();
      for (let i = 0; i < 9; i++) if (document) previewFamily(documents, doors, { ...document.file, name: `At ${i}` });
    };
    drag();
    endEdit(documents);
    await quiet();
    expect(await listWorks(shelf)).toMatchObject([{ name: 'At 8' }]);
    const writes = shelf.writes;
    drag();
    dropEdit(documents);
    await quiet();
    expect(shelf.writes).toBe(writes);
  });
});

describe('trouble with the store', () => {
  test('a full disk is told, nothing is overwritten, and the next write that succeeds puts it right', async () => {
    const window = await openWindow(shelf, browser);
    await rename(window, 'Kept');
    shelf.trouble = new DOMException('full', 'QuotaExceededError');
    await rename(window, 'Too much');
    expect([statusOf(window), noticesIn(window)]).toEqual(['full', ['The browser’s storage is full']]);
    expect(isSafe(keepOf(window.session).getState())).toBe(false);
    await press(window, 'Save family');
    expect(window.saved).toEqual(['family']);
    const records = new FakeShelf();
    for (const [key, value] of shelf.records) records.records.set(key, value);
    expect(nameIn(await openWindow(records, new FakeBrowser()))).toBe('Kept');
    shelf.trouble = null;
    await rename(window, 'Room again');
    expect([statusOf(window), noticesIn(window)]).toEqual(['kept', []]);
  });

  test.each([0, 1])('a crash before write number %i of a change leaves what was kept', async (writesLeft) => {
    const window = await openWindow(shelf, browser);
    await rename(window, 'One');
    await rename(window, 'Two');
    shelf.writesLeft = writesLeft;
    await rename(window, 'Three');
    shelf.writesLeft = null;
    await close(window);
    expect(nameIn(await openWindow(shelf, browser))).toBe('Two');
  });

  test('a store that cannot be read is told once, and the app goes on', async () => {
    const forbidden = new FakeShelf();
    forbidden.keys = () => Promise.reject(new DOMException('no', 'SecurityError'));
    const window = await openWindow(forbidden, browser);
    expect([nameIn(window), noticesIn(window)]).toEqual(['Polderwick College', ['Nothing is kept in this browser']]);
    await rename(window, 'Still works');
    expect([statusOf(window), nameIn(window)]).toEqual(['off', 'Still works']);
  });

  test('a damaged record is told and kept aside, the one before it is opened where there is one', async () => {
    const window = await openWindow(shelf, browser);
    await rename(window, 'One');
    await rename(window, 'Two');
    const [head] = await listWorks(shelf);
    await close(window);
    shelf.records.set(head.body, { nonsense: true });
    const older = await openWindow(shelf, browser);
    expect([nameIn(older), noticesIn(older)]).toEqual(['One', ['Not all could be opened as it was kept']]);
    await close(older);
    shelf.records.set(head.older ?? '', 7);
    const records = [...shelf.records.keys()];
    const window3 = await openWindow(shelf, browser);
    expect([nameIn(window3), noticesIn(window3)]).toEqual([
      'Polderwick College',
      ['Two could not be opened as it was kept'],
    ]);
    await press(window3, 'Save what is there');
    expect(window3.saved[0]).toContain('"nonsense": true');
    expect([...shelf.records.keys()]).toEqual(records);
  });
});
