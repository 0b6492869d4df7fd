import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import type { Shelf } from '../../../src/app/state/kept-store.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import { fakeDoors } from './fake-doors.ts';

const LESSON = readFileSync(new URL('../../../profiles-demo/first-lesson.json', import.meta.url), 'utf8');
const OTHER = JSON.stringify({ ...JSON.parse(LESSON), name: 'Dunmere' });

function visit(kept: Map<string, string>) {
  const shelf: Shelf = { getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => void kept.set(key, value) };
  const { doors } = fakeDoors();
  const session = makeSession(doors, shelf);
  return { ...session, open: (text: string) => openText(session.documents, doors, text, 'family.json') };
}

test('the strip in hand, the tilt and the measure come back with the family, in this window and in the next', () => {
  const kept = new Map<string, string>();
  const before = visit(kept);
  before.open(LESSON);
  const strip = { height: 6e6, thickness: 710_000, tiltLimit: 0.03, withBlanks: true, measure: 'mean' } as const;
  before.gauge.setState({ ...strip, ticked: ['heron-keyway'], pointed: 'heron-keyway' });
  before.open(OTHER);
  expect(before.gauge.getState()).toMatchObject({ height: null, thickness: null, tiltLimit: 0, measure: 'height' });
  before.gauge.setState({ height: 4e6 });
  before.open(LESSON);
  expect(before.gauge.getState()).toMatchObject({ ...strip, ticked: null, pointed: null });
  const again = visit(kept);
  again.open(OTHER);
  expect(again.gauge.getState()).toMatchObject({ height: 4e6, thickness: null });
  again.open(LESSON);
  expect(again.gauge.getState()).toMatchObject(strip);
});

test('what was kept and is no length, no tilt or no measure is as usual', () => {
  const { name } = JSON.parse(LESSON) as { name: string };
  const wrong = { height: -1, thickness: 'thin', tiltLimit: 7, withBlanks: 1, measure: 'weight' };
  const session = visit(new Map([['sectionary-gauge', JSON.stringify({ [name]: wrong })]]));
  const usual = session.gauge.getState();
  session.open(LESSON);
  expect(session.gauge.getState()).toEqual(usual);
});
