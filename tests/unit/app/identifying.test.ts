import { readFileSync } from 'node:fs';
import { beforeEach, expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { undo } from '../../../src/app/state/edit-document.ts';
import { areaText, entryWords, keywayWords } from '../../../src/app/state/names/identify-words.ts';
import {
  addUnknown,
  bringUnknown,
  changeQuestion,
  dropUnknown,
  identifyProfile,
  identifyWhenNew,
  pickCandidate,
  pickedCandidate,
  stopIdentifying,
  tryInKeyways,
} from '../../../src/app/state/names/identifying.ts';
import { closeWindow, laidPaths, liesApart, pixelIn, wholeWindow } from '../../../src/app/state/names/laid-windows.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import { type Identification, identify } from '../../../src/identify/identify.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import { mirrorOutline } from '../../../src/profile/mirror-outline.ts';
import { compareOnce } from '../../kit/compare-once.ts';
import { demoProfile } from '../../kit/demo-family.ts';
import { boxOfMm } from '../../kit/shapes.ts';
import { fakeDoors } from './fake-doors.ts';

const DEMO = readFileSync('profiles-demo/polderwick.json', 'utf8');
const turn = () => new Promise((resolve) => setTimeout(resolve));

let doors: ReturnType<typeof fakeDoors>;
let session: ReturnType<typeof makeSession>;

beforeEach(() => {
  doors = fakeDoors();
  session = makeSession(doors.doors, null);
  openText(session.documents, doors.doors, DEMO, 'polderwick.json');
});

const family = () => {
  const { document } = session.documents.getState();
  if (!document) throw new Error('no family is open');
  return document.family;
};
const state = () => session.identify.getState();
const knotFromTip = () => mirrorOutline(demoProfile('knot-blank').ring, 'left-right');

/** Asks, and lets the last job give the true answer. */
async function ask(): Promise<Identification> {
  identifyWhenNew(session, family());
  const job = doors.identities.at(-1);
  if (!job) throw new Error('nothing was asked');
  const answer = identify(job.input);
  job.finish(answer);
  await turn();
  return answer;
}

function bringKnot(): void {
  expect(bringUnknown(session, { name: 'Found', kind: 'blank', source: 'file', vertices: knotFromTip() })).toBeNull();
}

test('an outline that is brought shows its sheet, and is compared with blanks and tools, once', async () => {
  bringKnot();
  expect(session.selection.getState().view).toBe('names');
  expect(session.names.getState().sheet).toBe('identify');
  await ask();
  expect(state().run).toMatchObject({ phase: 'done', answer: { likeness: 'certain' } });
  expect(doors.identities).toHaveLength(1);
  expect(doors.identities[0].input.profiles.some(({ kind }) => kind === 'opening')).toBe(false);
  identifyWhenNew(session, family());
  expect(doors.identities).toHaveLength(1);
  changeQuestion(session, { among: 'all' });
  identifyWhenNew(session, family());
  expect(doors.identities[1].input.profiles).toHaveLength(family().profiles.length);
});

test('one that crosses itself is told and changes nothing', () => {
  const [a, b, c, d] = boxOfMm(2, 8);
  const wrong = bringUnknown(session, { name: 'Bow', kind: 'blank', source: 'file', vertices: [a, c, b, d] });
  expect(wrong).toMatch(/^The outline .*\.$/);
  expect(state().unknown).toBeNull();
  expect(session.selection.getState().view).toBe('wall');
});

test('an outline from outside is taken to be as wrong as the command takes it, a section of the family less', () => {
  bringKnot();
  identifyWhenNew(session, family());
  expect(doors.identities[0].input.error).toBe(50_000);
  identifyProfile(session, demoProfile('rail-keyway'));
  identifyWhenNew(session, family());
  expect(doors.identities[1].input.error).toBe(10_000);
});

test('a profile of the family is compared with all others of its kind', () => {
  identifyProfile(session, demoProfile('rail-keyway'));
  identifyWhenNew(session, family());
  const ids = doors.identities[0].input.profiles.map(({ id }) => id);
  expect(ids).not.toContain('rail-keyway');
  expect(ids).toHaveLength(9);
});

test('cancel stops the job, says so, and a late answer shows nothing; it is not begun again unasked', async () => {
  bringKnot();
  identifyWhenNew(session, family());
  const [job] = doors.identities;
  stopIdentifying(session);
  expect(job.cancelled).toBe(true);
  expect(state().run.phase).toBe('stopped');
  job.finish(identify(job.input));
  await turn();
  expect(state().run.phase).toBe('stopped');
  identifyWhenNew(session, family());
  expect(doors.identities).toHaveLength(1);
});

test('a newer question takes the place of one on its way', async () => {
  bringKnot();
  identifyWhenNew(session, family());
  changeQuestion(session, { error: 5_000 });
  identifyWhenNew(session, family());
  const [first, second] = doors.identities;
  expect(first.cancelled).toBe(true);
  first.fail(new JobCancelled());
  await turn();
  expect(state().run.phase).toBe('running');
  second.finish(identify(second.input));
  await turn();
  expect(state().run.phase).toBe('done');
});

test('a thread that fails is told', async () => {
  bringKnot();
  identifyWhenNew(session, family());
  doors.identities[0].fail(new Error('out of memory'));
  await turn();
  expect(state().run).toEqual({ phase: 'failed', trouble: 'out of memory' });
});

test('added as it lies on the candidate it is seen from the bow again; undo takes it out', async () => {
  bringKnot();
  await ask();
  const before = family().profiles.length;
  expect(addUnknown(session, { name: 'Drawer find', kind: 'blank', laid: true })).toBeNull();
  const added = family().profiles.find(({ name }) => name === 'Drawer find');
  expect(added?.kind).toBe('blank');
  expect(compareOnce(added?.ring ?? [], demoProfile('knot-blank').ring, { mirrored: false, turned: false }).most).toBe(
    0,
  );
  expect(state().unknown?.profileId).toBe(added?.id);
  undo(session.documents);
  expect(family().profiles).toHaveLength(before);
});

test('it is tried in the keyways as it lies on the candidate', async () => {
  bringKnot();
  await ask();
  tryInKeyways(session, family());
  expect(state().keyways.phase).toBe('running');
  const pairs = doors.pairs.at(-1);
  expect(pairs?.input.entrants).toHaveLength(1);
  expect(pairs?.input.pairs).toHaveLength(2 * 10);
  // Another candidate: what comes late is not shown for it.
  pickCandidate(session, 1);
  expect(state().keyways.phase).toBe('none');
  pairs?.finish(10);
  await turn();
  expect(state().keyways.phase).toBe('none');
});

test('candidates are walked within the list', async () => {
  bringKnot();
  const { ranked } = await ask();
  pickCandidate(session, -1);
  expect(state().picked).toBe(0);
  pickCandidate(session, ranked.length);
  expect(state().picked).toBe(0);
  pickCandidate(session, 3);
  expect(pickedCandidate(state())).toBe(ranked[3]);
  dropUnknown(session);
  expect(state()).toMatchObject({ unknown: null, run: { phase: 'none' } });
});

test('another family has no unknown', () => {
  bringKnot();
  openText(session.documents, doors.doors, DEMO, 'polderwick.json');
  expect(state().unknown).toBeNull();
});

test('areas in both units; one above zero never reads as zero', () => {
  expect(areaText(0.4321e12, 'mm')).toBe('0.432 mm²');
  expect(areaText(1e6, 'mm')).toBe('under 0.001 mm²');
  expect(areaText(0, 'mm')).toBe('0.000 mm²');
  expect(areaText(25.4e6 ** 2 / 1000, 'in')).toBe('0.00100 in²');
});

test('what it would enter, and what the drawing error leaves of that', () => {
  const judged = (verdict: 'enters' | 'blocked') => ({ verdict }) as never;
  const answers = [
    { openingId: 'knot-keyway', fit: judged('enters'), threeWay: 'always' },
    { openingId: 'rail-keyway', fit: judged('enters'), threeWay: 'depends' },
    { openingId: 'ruff-keyway', fit: judged('blocked'), threeWay: 'depends' },
    { openingId: 'smew-keyway', fit: judged('blocked'), threeWay: 'never' },
  ] as const;
  expect(keywayWords(answers, family(), '0.050 mm')).toBe(
    'It goes into Knot keyway, also if it is drawn 0.050 mm wrong. Too close to call within the drawing error of ±0.050 mm: Rail keyway and Ruff keyway. It is blocked in Smew keyway.',
  );
  expect(keywayWords(answers.slice(3), family(), '0.050 mm')).toBe('It is blocked in Smew keyway.');
});

test('what the section itself goes into, where all of it is judged', () => {
  const judged = (verdict: 'tight' | 'blocked') => ({ verdict }) as never;
  const openings = ['knot-keyway', 'rail-keyway'];
  const known = { id: 'knot-blank', name: 'Knot blank' };
  const words = (row: readonly unknown[]) =>
    entryWords({ openings, profiles: ['knot-blank'], fits: [row as never] }, known, family());
  expect(words([judged('tight'), judged('blocked')])).toBe('Knot blank as the family has it goes into Knot keyway.');
  expect(words([judged('blocked'), judged('blocked')])).toBe(
    'Knot blank as the family has it goes into none of the keyways.',
  );
  expect(words([judged('tight'), undefined])).toBe('');
});

test('the place of the greatest distance is in the middle of its window, and large enough to be seen', () => {
  const known = demoProfile('knot-blank');
  const comparison = compareOnce(demoProfile('rail-blank').ring, known.ring);
  const size = { width: 640, height: 480 };
  const whole = wholeWindow(known, comparison, size);
  const close = closeWindow(comparison, size, whole);
  const [at, nearest] = [pixelIn(close, comparison.at), pixelIn(close, comparison.nearest)];
  expect((at.x + nearest.x) / 2).toBeCloseTo(close.left + close.width / 2, 6);
  expect(Math.hypot(at.x - nearest.x, at.y - nearest.y)).toBeGreaterThan(30);
  expect(close.left).toBeGreaterThanOrEqual(whole.width);
  for (const place of [...known.ring, ...comparison.laid].map((p) => pixelIn(whole, p))) {
    expect(place.x).toBeGreaterThan(0);
    expect(place.x).toBeLessThan(whole.width);
    expect(place.y).toBeGreaterThan(0);
    expect(place.y).toBeLessThan(size.height);
  }
  expect(laidPaths(comparison, known).onlyUnknown).toMatch(/^M/);
  expect(liesApart(compareOnce(known.ring, known.ring))).toBe(false);
});
