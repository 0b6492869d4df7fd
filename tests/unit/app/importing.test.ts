import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { undo } from '../../../src/app/state/edit-document.ts';
import { type DrawingImport, type FamilyImport, likelyScales } from '../../../src/app/state/exchange/import-state.ts';
import { Importing, type IncomingFile, LARGEST_FILE } from '../../../src/app/state/exchange/importing.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import { readDrawing } from '../../../src/jobs/read-drawing.ts';
import { fakeDoors, turn } from './fake-doors.ts';

const DEMO = readFileSync('profiles-demo/polderwick.json', 'utf8');

const NOW = { progress: () => {}, cancelled: () => false, pause: async () => {}, now: () => 0 };

const svg = (body: string, head = 'width="40mm" height="20mm" viewBox="0 0 40 20"') =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${head}>${body}</svg>`;
const blade = (x: number, id: string) => `<rect id="${id}" x="${x}" y="2" width="2" height="8"/>`;
const CROSSING = '<path id="crossing" d="M20 2l2 8h-2l2-8z"/>';
const GAPPED = '<path id="gapped" d="M30 2h2v8h-2v-7.9"/>';

function textFile(name: string, text: string, size = text.length): IncomingFile {
  return { name, size, head: async (n) => new TextEncoder().encode(text).slice(0, n), text: async () => text };
}

let doors: ReturnType<typeof fakeDoors>;
let session: ReturnType<typeof makeSession>;
let importing: Importing<IncomingFile>;
let pictures: string[];
let opened: string[];
let claimed: string[];
let identified: { name: string; vertices: readonly unknown[] }[];

beforeEach(() => {
  doors = fakeDoors();
  session = makeSession(doors.doors, null);
  openText(session.documents, doors.doors, DEMO, 'polderwick.json');
  pictures = [];
  opened = [];
  claimed = [];
  identified = [];
  importing = new Importing<IncomingFile>(session, {
    takePicture: ({ name }) => pictures.push(name),
    takeClaims: (name, text) => claimed.push(`${name}: ${text}`),
    openFamily: ({ name }) => opened.push(name),
    identify: (outline) => {
      identified.push(outline);
      return null;
    },
  });
});

const now = () => session.imports.getState().now;
const drawing = () => now() as DrawingImport;
const family = () => {
  const { document } = session.documents.getState();
  if (!document) throw new Error('no family is open');
  return document.family;
};

/** Lets the files be looked into and answers the last drawing job with the true reading. */
async function settle(): Promise<void> {
  await turn();
  const job = doors.drawings.at(-1);
  if (job && !job.cancelled) job.finish(await readDrawing(job.input, NOW));
  await turn();
}

async function take(...files: IncomingFile[]): Promise<void> {
  importing.take(files);
  await settle();
}

describe('a drawing', () => {
  test('gives one loop to be identified, and the family stays as it is', async () => {
    await take(textFile('two.svg', svg(blade(2, 'a') + blade(12, 'b'))));
    const before = family();
    importing.identifyLoop();
    expect(identified).toEqual([]);
    importing.chooseLoop(1, { ticked: false });
    importing.identifyLoop();
    expect(identified).toHaveLength(1);
    expect(identified[0]).toMatchObject({ name: 'A', kind: 'blank' });
    expect(identified[0].vertices).toHaveLength(4);
    expect(family()).toBe(before);
    expect(now().stage).toBe('none');
  });

  test('is shown with what is sound ticked, and added as one step of undo', async () => {
    const before = family();
    await take(textFile('sections.svg', svg(blade(2, 'Heron blank') + blade(8, 'Snipe keyway') + CROSSING + GAPPED)));
    expect(now().stage).toBe('drawing');
    expect(drawing().choices.map(({ ticked, kind, name, section }) => [ticked, kind, name, section])).toEqual([
      [true, 'blank', 'Heron blank', 'Heron'],
      [true, 'opening', 'Snipe keyway', 'Snipe'],
      [false, 'blank', 'Crossing', ''],
      [false, 'blank', 'Gapped', ''],
    ]);
    importing.addLoops();
    expect(now().stage).toBe('none');
    const added = family().profiles.slice(before.profiles.length);
    expect(added.map(({ name, kind, section }) => [name, kind, section])).toEqual([
      ['Heron blank', 'blank', 'Heron'],
      ['Snipe keyway', 'opening', 'Snipe'],
    ]);
    expect(session.selection.getState()).toMatchObject({ view: 'draw', entrantId: added[0].id, part: 'entrant' });
    undo(session.documents);
    expect(family().profiles).toEqual(before.profiles);
  });

  test('a gap is closed only once it is ticked', async () => {
    await take(textFile('gapped.svg', svg(GAPPED)));
    importing.addLoops();
    expect(drawing().choices[0].ticked).toBe(false);
    importing.chooseLoop(0, { ticked: true, name: 'Closed' });
    importing.addLoops();
    expect(family().profiles.at(-1)?.name).toBe('Closed');
  });

  test('the outline of a profile can be replaced, which is one step too', async () => {
    const [first] = family().profiles;
    await take(textFile('new.svg', svg(blade(2, 'new'))));
    importing.choose({ replacing: first.id });
    importing.addLoops();
    expect(family().profiles[0]).toMatchObject({ id: first.id, name: first.name });
    expect(family().profiles[0].milled).toBeUndefined();
    expect(family().profiles[0].ring).toHaveLength(4);
    undo(session.documents);
    expect(family().profiles[0]).toBe(first);
  });

  test('read with another scale it keeps what was chosen', async () => {
    await take(textFile('no-size.svg', svg(blade(2, 'Heron blank'), 'viewBox="0 0 40 20"')));
    expect(drawing().drawing).toMatchObject({ unitsStated: false });
    importing.chooseLoop(0, { name: 'Renamed' });
    importing.setScale(1e6);
    await settle();
    expect(drawing().drawing.loops[0].height).toBe(8e6);
    expect(drawing().choices[0]).toMatchObject({ name: 'Renamed', ticked: true });
    expect(drawing().input.nmPerUnit).toBe(1e6);
  });

  test('a scale that makes it far too large or small is doubted, and the likely ones are offered', async () => {
    await take(textFile('cad.svg', svg(blade(2, 'a'), 'width="1016mm" height="508mm" viewBox="0 0 40 20"')));
    expect(drawing().drawing.loops[0].fault?.kind).toBe('too-large');
    expect(likelyScales(drawing().drawing)).toMatchObject([{ name: 'millimetres', height: 8e6 }]);
    importing.setScale(1e6);
    await settle();
    expect(likelyScales(drawing().drawing)).toEqual([]);
    expect(drawing().choices[0].ticked).toBe(true);
  });

  test('a section that is drawn lying down is not doubted', async () => {
    await take(textFile('lying.svg', svg('<rect x="2" y="2" width="8" height="2"/>')));
    expect(likelyScales(drawing().drawing)).toEqual([]);
  });

  test('a border is not taken for a section, what it holds is', async () => {
    const frame = '<rect id="border" x="0" y="0" width="40" height="20"/>';
    await take(textFile('framed.svg', svg(frame + blade(2, 'a') + blade(8, 'b'))));
    expect(drawing().choices.map(({ ticked }) => ticked)).toEqual([false, true, true]);
  });

  test('an id becomes a name as a person writes it', async () => {
    await take(textFile('ids.svg', svg(blade(2, 'heron-blank') + blade(8, 'all_section_tool') + blade(14, 'R2-D'))));
    expect(drawing().choices.map(({ name, kind, section }) => [name, kind, section])).toEqual([
      ['Heron blank', 'blank', 'Heron'],
      ['All section tool', 'tool', ''],
      ['R2-D', 'blank', ''],
    ]);
  });

  test('loops without a label are called after the file, with a number', async () => {
    await take(textFile('rail.csv', 'x,y\n0,0\n2,0\n2,8\n\n5,0\n7,0\n7,8\n'));
    expect(drawing().choices.map(({ name }) => name)).toEqual(['rail 1', 'rail 2']);
  });
});

describe('refusals', () => {
  const refusal = () => session.documents.getState().refusal;

  test('what cannot be read is told, beside the others of the same lot, and changes nothing', async () => {
    const before = session.documents.getState().document;
    await take(textFile('letter.txt', 'Dear Anna, it rains.'), textFile('empty.svg', ''));
    expect(refusal()?.fileName).toBe('2 files');
    expect(refusal()?.faults.map(({ path }) => path)).toEqual(['letter.txt: file', 'empty.svg: file']);
    expect(session.documents.getState().document).toBe(before);
    expect(now().stage).toBe('none');
  });

  test('a file above the limit is refused before it is read', async () => {
    let read = 0;
    const file = { ...textFile('large.svg', svg(blade(2, 'a')), LARGEST_FILE + 1), text: async () => String(read++) };
    await take(file);
    expect(refusal()?.faults[0].what).toBe('has 21 MB, more than the 20 MB that are read');
    expect([read, doors.drawings.length]).toEqual([0, 0]);
  });

  test('a drawing that shows nothing, and a thread that fails, are told', async () => {
    await take(textFile('nothing.svg', svg('')));
    expect(refusal()?.faults[0].what).toMatch(/no line/);
    importing.take([textFile('broken.svg', svg(blade(2, 'a')))]);
    await turn();
    doors.drawings.at(-1)?.fail(new Error('out of memory'));
    await turn();
    expect(refusal()?.faults[0].what).toBe('cannot be read: out of memory');
  });

  test('a file that is gone is told', async () => {
    const gone = { ...textFile('gone.svg', ''), head: () => Promise.reject(new Error('gone')) };
    await take(gone);
    expect(refusal()?.faults[0].what).toBe('cannot be read');
  });
});

test('a cancel ends the job, and its late answer shows nothing', async () => {
  importing.take([textFile('slow.svg', svg(blade(2, 'a')))]);
  await turn();
  expect(now()).toEqual({ stage: 'reading', name: 'slow.svg' });
  importing.cancel();
  expect([now().stage, doors.drawings[0].cancelled]).toEqual(['none', true]);
  doors.drawings[0].fail(new JobCancelled());
  await turn();
  expect([now().stage, session.documents.getState().refusal]).toEqual(['none', null]);
});

test('several files come one after another; a picture goes to the hand that traces', async () => {
  await take(textFile('a.svg', svg(blade(2, 'a'))), textFile('b.svg', svg(blade(2, 'b'))));
  expect(session.imports.getState().waiting).toBe(1);
  importing.cancel();
  await settle();
  expect(drawing().name).toBe('b.svg');
  importing.cancel();
  await take({ ...textFile('scan.png', ''), head: async () => Uint8Array.from([137, 80, 78, 71, 13, 10, 26, 10]) });
  expect([now().stage, pictures]).toEqual(['none', ['scan.png']]);
});

describe('another family', () => {
  const other = JSON.stringify({ ...JSON.parse(DEMO), name: 'Sedge', profiles: JSON.parse(DEMO).profiles.slice(0, 2) });
  const changed = other.replace('"id":"', '"id":"new-');

  test('is asked about; opening it is the door of families', async () => {
    await take(textFile('sedge.json', other));
    expect((now() as FamilyImport).plan.rows.map(({ standing }) => standing)).toEqual(['same', 'same']);
    importing.openInstead();
    expect([opened, now().stage]).toEqual([['sedge.json'], 'none']);
  });

  test('its sections are added as chosen, as one step', async () => {
    const before = family();
    await take(textFile('sedge.json', changed));
    importing.beginMerge();
    const { rows } = (now() as FamilyImport).plan;
    expect(rows.map(({ standing }) => standing)).toEqual(['new', 'same']);
    importing.chooseSection(rows[1].id, 'add');
    importing.mergeSections();
    expect(family().profiles.length).toBe(before.profiles.length + 2);
    undo(session.documents);
    expect(family().profiles).toEqual(before.profiles);
  });

  test('a broken one is refused like any file', async () => {
    await take(textFile('broken.json', '{ "format": '));
    expect([now().stage, session.documents.getState().refusal?.fileName]).toEqual(['none', 'broken.json']);
  });
});

test('a table of claims is handed to the sheet of claims, and the next file comes', async () => {
  const list = 'blank,keyway,enters\nHeron,Smew,no\n';
  importing.take([textFile('chart.csv', list), textFile('wall.txt', list)]);
  await expect.poll(() => claimed).toEqual([`chart.csv: ${list}`, `wall.txt: ${list}`]);
  expect(now().stage).toBe('none');
});
