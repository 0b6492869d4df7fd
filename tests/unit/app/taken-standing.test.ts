import { expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { undo } from '../../../src/app/state/edit-document.ts';
import { drawnSections } from '../../../src/app/state/plan/sections/drawn-sections.ts';
import {
  changedSince,
  heldAs,
  heldBlank,
  plannedProfiles,
  stoppingWards,
  takenStanding,
} from '../../../src/app/state/plan/sections/taken-standing.ts';
import { takeSections, takingCounts } from '../../../src/app/state/plan/sections/taking-sections.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import { entryMatrix } from '../../../src/family/entry-matrix.ts';
import type { Family } from '../../../src/family/family.ts';
import type { KnownFits } from '../../../src/family/known-fits.ts';
import { fakeDoors } from './fake-doors.ts';
import { CAMPUS, documentOf, drawn, questionOf, solved } from './planned-campus.ts';

const BY_HAND = {
  id: 'heron-keyway',
  kind: 'opening',
  name: 'Old keyway',
  outline: [
    [0, 0],
    [2, 0],
    [2, 8],
    [0, 8],
  ],
};

const question = questionOf(CAMPUS);
const answer = drawn(question, solved(question));
if (!answer.ok) throw new Error('the plan is not confirmed');
const confirmed = answer;
const sections = drawnSections(confirmed);

function opened(file: object = { ...CAMPUS, profiles: [BY_HAND] }) {
  const { doors } = fakeDoors();
  const session = makeSession(doors, null);
  openText(session.documents, doors, JSON.stringify(file), 'campus.json');
  const document = () => {
    const { document: now } = session.documents.getState();
    if (!now) throw new Error('nothing is open');
    return now;
  };
  return { session, document };
}

function turned(cell: 0 | 1 | null): 0 | 1 {
  return cell === 1 ? 0 : 1;
}

function judged(family: Family): KnownFits {
  const steps = entryMatrix(family);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

test('taking is one step of undo and keeps what was drawn by hand only where that is wished', () => {
  const { session, document } = opened();
  expect(takingCounts(session, confirmed)).toEqual({
    openings: 4,
    blanks: 7,
    replaced: 0,
    replacedOpenings: 0,
    namesakes: 0,
    others: 1,
  });
  expect(takeSections(session, confirmed, true)).toBeNull();
  expect(document().family.profiles).toHaveLength(12);
  expect(plannedProfiles(document())).toHaveLength(11);
  expect(takenStanding(document(), question, sections, null)).toEqual({ kind: 'same' });
  // The id was had by a section that was kept, so the planned keyway took another one and is still known.
  expect(heldAs(document().family, sections.openings[0])?.id).toBe('heron-keyway-2');
  expect(takingCounts(session, confirmed)).toMatchObject({ replaced: 11, others: 1 });
  undo(session.documents);
  expect(document().family.profiles).toHaveLength(1);
  expect(takenStanding(document(), question, sections, null)).toEqual({ kind: 'none' });
  expect(takeSections(session, confirmed, false)).toBeNull();
  expect(document().family.profiles).toHaveLength(11);
});

test('kept sections with the names of planned ones take other names where that is wished, in the same step of undo', () => {
  const alike = { ...BY_HAND, name: 'Heron keyway', section: 'Heron' };
  const { session, document } = opened({ ...CAMPUS, profiles: [alike] });
  expect(takingCounts(session, confirmed).namesakes).toBe(1);
  takeSections(session, confirmed, true, true);
  expect(document().file.profiles.find(({ planned }) => !planned)).toMatchObject({
    name: 'Heron keyway, before the plan',
    section: 'Heron, before the plan',
  });
  expect(document().family.profiles.filter(({ name }) => name === 'Heron keyway')).toHaveLength(1);
  undo(session.documents);
  expect(document().family.profiles.map(({ name }) => name)).toEqual(['Heron keyway']);
});

test('a section that was changed since it was taken is named', () => {
  const { session, document } = opened();
  takeSections(session, confirmed, true);
  expect(changedSince(document(), sections)).toEqual([]);
  const { file } = document();
  const at = file.profiles.findIndex(({ kind, planned }) => kind === 'blank' && planned);
  const { milled } = file.profiles[at];
  if (!milled) throw new Error('a planned blank is milled');
  const changed = { ...file.profiles[at], milled: { ...milled, height: milled.height - 0.2 } };
  const other = documentOf({ ...file, profiles: file.profiles.with(at, changed) });
  expect(changedSince(other, sections)).toEqual([changed.name]);
  expect(changedSince(other, null)).toEqual([]);
});

test('sections from an earlier search serve the plan where every judged pair is as it asks', () => {
  const { session, document } = opened();
  takeSections(session, confirmed, false);
  const other = { ...sections, blanks: sections.blanks.slice(1) };
  expect(takenStanding(document(), question, other, null)).toEqual({ kind: 'waiting' });
  expect(takenStanding(document(), question, other, judged(document().family))).toEqual({ kind: 'serves' });
});

test('a plan that was changed since finds the pairs, blanks and keyways that no longer belong to it', () => {
  const { session, document } = opened();
  takeSections(session, confirmed, false);
  const fits = judged(document().family);
  const alone = (holders: object) => questionOf({ ...CAMPUS, plan: { ...CAMPUS.plan, holders } });
  const more = alone([...CAMPUS.plan.holders, { id: 'cook', name: 'Cook', enters: ['knot', 'rail'] }]);
  expect(takenStanding(document(), more, null, fits)).toMatchObject({ kind: 'outdated', wrong: [], extra: [] });
  const fewer = alone([CAMPUS.plan.holders[0]]);
  const told = takenStanding(document(), fewer, null, fits);
  expect(told.kind === 'outdated' && told.extra).toHaveLength(1);
  // The same blanks, but the one of the Warden's must now stay out of Smew.
  const access = {
    ...question.access,
    table: question.access.table.map((row, s) => row.map((cell, b) => (s === 1 && b === 5 ? turned(cell) : cell))),
  };
  const wrong = takenStanding(document(), { ...question, access }, null, fits);
  expect(wrong.kind === 'outdated' && wrong.wrong.map(({ opening }) => opening.name)).toEqual(['Smew keyway']);
});

test('sections that are stopped by fewer wards than the plan now asks for are outdated', () => {
  const { session, document } = opened();
  takeSections(session, confirmed, false);
  const fits = judged(document().family);
  const twice = { access: question.access, plan: { ...question.plan, stops: 2 } };
  const told = takenStanding(document(), twice, null, fits);
  expect(told.kind).toBe('outdated');
  const wrong = told.kind === 'outdated' ? told.wrong : [];
  for (const { blank, opening, wanted } of wrong) {
    expect(wanted).toBe('stopped');
    expect(stoppingWards(opening, blank)).toBe(1);
  }
  expect(stoppingWards(sections.openings[0], sections.blanks[0])).toBe(0);
});

test('a blank is known by its id, also with a number behind it', () => {
  const named = (id: string) => ({ ...sections.blanks[0], id });
  expect(heldBlank([named('blank-knot-2')], 'blank-knot')?.id).toBe('blank-knot-2');
  expect(heldBlank([named('blank-knot-x')], 'blank-knot')).toBeUndefined();
  expect(documentOf(CAMPUS).family.profiles).toEqual([]);
});
