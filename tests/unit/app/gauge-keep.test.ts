import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { undo } from '../../../src/app/state/edit-document.ts';
import { keepStrip, roundStrip, stripName, thicknessHint } from '../../../src/app/state/gauge/keep-strip.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import { straightTool } from '../../../src/gauge/straight-tool.ts';
import { fakeDoors } from './fake-doors.ts';

const LESSON = readFileSync(new URL('../../../profiles-demo/first-lesson.json', import.meta.url), 'utf8');
const MM = 1e6;

function opened() {
  const { doors } = fakeDoors();
  const session = makeSession(doors, null);
  openText(session.documents, doors, LESSON, 'lesson.json');
  const profiles = () => session.documents.getState().document?.family.profiles ?? [];
  return { session, profiles };
}

test('a strip is kept as a straight tool of its size, is picked and in hand, and one undo takes it back', () => {
  const { session, profiles } = opened();
  const before = profiles().length;
  expect(keepStrip(session, 'Probe', { thickness: 0.942 * MM, height: 6 * MM })).toBe(null);
  const kept = profiles().at(-1);
  expect(kept).toMatchObject({ kind: 'tool', name: 'Probe' });
  expect(straightTool(kept?.ring ?? [])).toEqual({ thickness: 0.942 * MM, height: 6 * MM });
  expect(session.selection.getState()).toMatchObject({ entrantId: kept?.id, part: 'entrant' });
  expect(session.gauge.getState()).toMatchObject({ thickness: 0.942 * MM, height: 6 * MM });
  undo(session.documents);
  expect(profiles().length).toBe(before);
  expect(session.documents.getState().past).toEqual([]);
});

test('what is wrong with a strip is told, and the family stays as it was', () => {
  const { session, profiles } = opened();
  const before = profiles();
  expect(keepStrip(session, 'Probe', { thickness: 0, height: 6 * MM })?.length).toBeGreaterThan(0);
  expect(profiles()).toBe(before);
});

test('a strip is called by its size, by a name that is free', () => {
  const strip = { thickness: 0.94 * MM, height: 6 * MM };
  expect(stripName([], strip, 'mm')).toBe('Strip 0.94 x 6');
  expect(stripName([{ name: 'Strip 0.94 x 6' }], strip, 'mm')).toBe('Strip 0.94 x 6, 2');
  expect(stripName([], strip, 'in')).toBe('Strip 37 thou x 0.236 in');
  expect(stripName([], { ...strip, thickness: null }, 'mm')).toBe('Strip');
});

test('the thickest strip is kept in round figures, never thicker than it is', () => {
  expect(roundStrip(942_999.7, 'mm')).toBe(942_000);
  expect(roundStrip(942_999.7, 'in')).toBe(942_340);
  expect(roundStrip(400, 'mm')).toBe(null);
  expect(roundStrip(null, 'mm')).toBe(null);
});

test('a strip is called the thickest only at the height that it was found for', () => {
  const asked = { height: 6 * MM, thickest: 0.942 * MM };
  const hint = (thickness: number | null, height: number | null, of: Parameters<typeof thicknessHint>[1] = asked) =>
    thicknessHint({ thickness, height }, of);
  expect(hint(0.942 * MM, 6 * MM)).toBe('The thickest that goes in, touching.');
  for (const height of [2 * MM, null]) expect(hint(0.942 * MM, height)).toBe(undefined);
  expect(hint(0.9 * MM, 6 * MM)).toBe(undefined);
  expect(hint(null, 6 * MM, { ...asked, thickest: null })).toBe('The thickest that goes in is not known.');
  expect(hint(null, 6 * MM)).toBe(undefined);
});
