import { expect, test } from 'vitest';
import type { Shelf } from '../../../src/app/state/kept-store.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import { fakeDoors } from './fake-doors.ts';

function memory(): Shelf & { readonly kept: Map<string, string> } {
  const kept = new Map<string, string>();
  return { kept, getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => void kept.set(key, value) };
}

const open = (shelf: Shelf | null, tab: Shelf | null) => makeSession(fakeDoors().doors, shelf, tab);

test('a tab that is loaded again shows the sheets that it showed, a new one the first of each view', () => {
  const [shelf, tab] = [memory(), memory()];
  const before = open(shelf, tab);
  before.plan.setState({ sheet: 'strength' });
  before.gauge.setState({ sheet: 'tools', height: 6_000_000 });
  before.publish.setState({ sheet: 'slides' });
  before.names.setState({ sheet: 'register' });
  before.teach.setState({ sheet: 'quiz' });
  before.tiers.setState({ sheet: 'claims' });
  before.draw.setState({ form: 'mill' });
  before.conditions.setState({ telling: 'guard', wear: 20_000 });
  const again = open(shelf, tab);
  expect(again.plan.getState().sheet).toBe('strength');
  expect(again.gauge.getState()).toMatchObject({ sheet: 'tools', height: null });
  expect(again.publish.getState().sheet).toBe('slides');
  expect(again.names.getState().sheet).toBe('register');
  expect(again.teach.getState().sheet).toBe('quiz');
  expect(again.tiers.getState().sheet).toBe('claims');
  expect(again.draw.getState().form).toBe('mill');
  // What pairs are judged by is no look: it begins as drawn.
  expect(again.conditions.getState()).toMatchObject({ telling: 'guard', wear: 0 });
  expect(open(shelf, memory()).plan.getState().sheet).toBe('access');
});

test('how matrix, diagram and drawing sheet are liked is kept between visits', () => {
  const shelf = memory();
  const before = open(shelf, null);
  before.tiers.setState({ shown: 'matrix', matrixShare: 0.4, rowOrder: 'tier', cellSize: 'large', withTools: true });
  before.tiers.setState({ chosenOpenings: ['heron'] });
  const snap = { ...before.draw.getState().snap, grid: false, step: 50_000, edges: true };
  before.draw.setState({ snap, counterpart: false });
  const again = open(shelf, null);
  expect(again.tiers.getState()).toMatchObject({
    ...{ shown: 'matrix', matrixShare: 0.4, rowOrder: 'tier', columnOrder: 'chart', cellSize: 'large' },
    ...{ withTools: true, chosenOpenings: null },
  });
  expect(again.draw.getState()).toMatchObject({ snap, counterpart: false });
});

test('what the memory holds and makes no sense is as usual, field by field', () => {
  const shelf = memory();
  shelf.setItem('sectionary-tiers', '{"shown":"both sides","matrixShare":7,"rowOrder":"name","cellSize":3}');
  shelf.setItem('sectionary-draw', '{"snap":{"grid":true,"step":1},"counterpart":"no"}');
  const tab = memory();
  tab.setItem('sectionary-tab-plan', '{"sheet":"lake"}');
  tab.setItem('sectionary-tab-gauge', 'not JSON');
  const [session, usual] = [open(shelf, tab), open(null, null)];
  expect(session.tiers.getState()).toEqual({ ...usual.tiers.getState(), rowOrder: 'name' });
  expect(session.draw.getState()).toEqual(usual.draw.getState());
  expect(session.plan.getState()).toEqual(usual.plan.getState());
  expect(session.gauge.getState()).toEqual(usual.gauge.getState());
});
