import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { explainOnce } from '../../../src/app/state/explain-once.ts';
import { moveByHand, shownPlacement } from '../../../src/app/state/hand-state.ts';
import type { Shelf } from '../../../src/app/state/kept-store.ts';
import { walkEntrants, walkOpenings } from '../../../src/app/state/selection-state.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import type { Family } from '../../../src/family/family.ts';
import { explainPlacement } from '../../../src/fit/explain-placement.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { fakeDoors } from './fake-doors.ts';

const LESSON = readFileSync(new URL('../../../profiles-demo/first-lesson.json', import.meta.url), 'utf8');

/** A session on the real core, whose jobs are held, so that nothing is judged but the pair looked at. */
function openSession(shelf: Shelf | null = null) {
  const fake = fakeDoors();
  const session = makeSession(fake.doors, shelf);
  const open = (text: string) => openText(session.documents, fake.doors, text, 'family.json');
  return { session, open, ...fake };
}

const picked = ({ session }: ReturnType<typeof openSession>) => {
  const { entrantId, openingId } = session.selection.getState();
  return [entrantId, openingId];
};

test('opening a family picks the first of its chart and has it judged', () => {
  const opened = openSession();
  expect(opened.open(LESSON)).toBe(true);
  expect(picked(opened)).toEqual(['heron-blank', 'heron-keyway']);
  expect(opened.session.results.getState()).toMatchObject({ phase: 'judging', total: 14 });
});

test('a refused file changes nothing but the notice, and a good one puts the notice away', () => {
  const { session, open, pairs } = openSession();
  open(LESSON);
  const before = session.documents.getState().document;
  expect(open('{ "format": ')).toBe(false);
  expect(session.documents.getState().document).toBe(before);
  expect(session.documents.getState().refusal?.faults.length).toBeGreaterThan(0);
  expect(pairs).toHaveLength(2);
  open(LESSON);
  expect(session.documents.getState().refusal).toBeNull();
});

test('what is picked stays picked where the next family has it', () => {
  const opened = openSession();
  opened.open(LESSON);
  opened.session.selection.setState({ entrantId: 'plover-blank', openingId: 'bittern-keyway' });
  opened.open(LESSON.replaceAll('bittern-keyway', 'other-keyway'));
  expect(picked(opened)).toEqual(['plover-blank', 'heron-keyway']);
});

test('a family without blanks leaves none picked', () => {
  const opened = openSession();
  opened.open(LESSON);
  const file = JSON.parse(LESSON) as { profiles: { kind: string }[] };
  opened.open(JSON.stringify({ ...file, profiles: file.profiles.filter((p) => p.kind === 'opening') }));
  expect(picked(opened)).toEqual([null, 'heron-keyway']);
});

test('walking goes round at both ends, and a new pair lies in its best placement', () => {
  const { session, open } = openSession();
  open(LESSON);
  const family = session.documents.getState().document?.family as Family;
  moveByHand(session.hand, undefined, { x: 5, y: -7 });
  moveByHand(session.hand, undefined, { x: 5, y: 0 });
  expect(shownPlacement(session.hand.getState(), undefined)).toEqual({ x: 10, y: -7, tilt: 0 });
  walkEntrants(session.selection, family, -1);
  expect(session.selection.getState().entrantId).toBe('strip-06');
  expect(session.hand.getState().placement).toBeNull();
  walkEntrants(session.selection, family, 1);
  expect(session.selection.getState().entrantId).toBe('heron-blank');
  walkOpenings(session.selection, family, -1);
  expect(session.selection.getState().openingId).toBe('plover-keyway');
});

test('settings outlive the session, and a shelf with nonsense on it is as good as an empty one', () => {
  const kept = new Map<string, string>();
  const shelf: Shelf = { getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => kept.set(key, value) };
  openSession(shelf).session.settings.setState({ units: 'in', theme: 'dark' });
  expect(openSession(shelf).session.settings.getState()).toEqual({ units: 'in', theme: 'dark' });
  for (const nonsense of ['', '{', '[]', '{"units":"cm","theme":4}'])
    expect(openSession({ getItem: () => nonsense, setItem: () => {} }).session.settings.getState()).toEqual({
      units: 'mm',
      theme: 'system',
    });
});

test('a shelf that is full or forbidden costs the memory of the settings and nothing else', () => {
  const refuse = () => {
    throw new Error('quota exceeded');
  };
  const { session } = openSession({ getItem: refuse, setItem: refuse });
  session.settings.setState({ units: 'in' });
  expect(session.settings.getState().units).toBe('in');
});

test('a placement is explained once, however many ask, and again for another pair', () => {
  let asked = 0;
  const explain = explainOnce((...pair) => {
    asked++;
    return explainPlacement(...pair);
  });
  const read = readFamily(LESSON);
  if (!read.ok) throw new Error('the lesson must be readable');
  const [heron, bittern, , blank] = read.document.family.profiles;
  const placement = { x: 50_000, y: 50_000, tilt: 0 };
  const first = explain(heron.ring, blank.ring, placement);
  expect(explain(heron.ring, blank.ring, placement)).toBe(first);
  expect(asked).toBe(1);
  expect(explain(bittern.ring, blank.ring, placement).gap).not.toBe(first.gap);
  expect(explain(heron.ring, blank.ring, { ...placement }).gap).toBe(first.gap);
  expect(asked).toBe(3);
});

test('details are asked for on the wall only, and only when the wall tells them', () => {
  const { session, open, details } = openSession();
  open(LESSON);
  expect(details).toEqual([]);
  session.selection.setState({ view: 'compare' });
  session.conditions.setState({ telling: 'parts' });
  expect(details).toEqual([]);
  session.selection.setState({ view: 'wall' });
  expect(details).toHaveLength(1);
  session.conditions.setState({ telling: 'margin' });
  expect(details[0].cancelled).toBe(true);
});
