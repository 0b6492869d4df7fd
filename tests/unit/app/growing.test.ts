import { readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { undo } from '../../../src/app/state/edit-document.ts';
import { growInput, growStateOf } from '../../../src/app/state/plan/grow/grow-state.ts';
import { addGrown, nameTrouble, proposedName } from '../../../src/app/state/plan/grow/growing.ts';
import { sectionsQuestion } from '../../../src/app/state/plan/sections/sections-question.ts';
import { takenStanding } from '../../../src/app/state/plan/sections/taken-standing.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import { entryMatrix } from '../../../src/family/entry-matrix.ts';
import type { GrowReport } from '../../../src/plan/grow.ts';
import { judge } from '../../kit/judge.ts';
import { roomOf } from '../../kit/room-of.ts';
import { finish } from '../../kit/traced.ts';
import { fakeDoors } from './fake-doors.ts';

const COLLEGE = JSON.parse(readFileSync('profiles-demo/polderwick.json', 'utf8'));
const PLAN = JSON.parse(readFileSync('profiles-demo/polderwick-plan.json', 'utf8')).plan;
const KEPT = ['heron', 'bittern', 'polder'];
const TEXT = JSON.stringify({
  ...COLLEGE,
  claims: [],
  names: [],
  plan: undefined,
  lesson: undefined,
  profiles: COLLEGE.profiles.filter(({ id }: { id: string }) => KEPT.some((name) => id.startsWith(name))),
});

function opened(text = TEXT) {
  const { doors } = fakeDoors();
  const session = makeSession(doors, null);
  openText(session.documents, doors, text, 'college.json');
  const family = session.documents.getState().document?.family;
  if (!family) throw new Error('not sound');
  growStateOf(session).setState({ first: 'heron-keyway', second: 'bittern-keyway' });
  return { session, family, input: growInput(family, growStateOf(session).getState()) };
}

let report: GrowReport;
beforeAll(() => {
  report = roomOf(opened().input);
}, 120_000);

test('a proposal is added as keyway and blank beside its neighbour, in one step of undo, as it was judged', () => {
  const { session, family, input } = opened();
  const [proposal] = report.proposals;
  expect(addGrown(session, family, { input, report, proposal }, ' Teal ')).toBeNull();
  const after = session.documents.getState().document?.family.profiles ?? [];
  expect(after.map(({ name }) => name)).toEqual([
    'Heron keyway',
    'Teal keyway',
    'Bittern keyway',
    'Heron blank, five chambers',
    'Heron blank, six chambers',
    'Teal blank',
    'Bittern blank',
    'Polder all-section blank',
  ]);
  const keyway = after.find(({ name }) => name === 'Teal keyway');
  expect(after.filter(({ inBetween }) => inBetween)).toEqual([keyway]);
  const goes = after
    .filter(({ kind, ring }) => kind === 'blank' && keyway && judge(keyway.ring, ring).verdict !== 'blocked')
    .map(({ name }) => name);
  expect(goes).toEqual(['Teal blank', 'Polder all-section blank']);
  const blank = after.find(({ name }) => name === 'Teal blank');
  expect(session.selection.getState().entrantId).toBe(blank?.id);
  for (const { kind, section, ring } of after)
    if (kind === 'opening' && blank)
      expect(judge(ring, blank.ring).verdict).toBe(section === 'Teal' ? 'enters' : 'blocked');
  undo(session.documents);
  expect(session.documents.getState().document?.family.profiles).toHaveLength(family.profiles.length);
});

test('the name that is proposed is good; none, a taken one, one that looks alike and one that joins others are not', () => {
  const { session, family, input } = opened();
  const [proposal] = report.proposals;
  expect(nameTrouble(family, proposedName(family), proposal)).toBe('');
  expect(nameTrouble(family, '  ', proposal)).toMatch(/Type a name/);
  expect(nameTrouble(family, 'heron', proposal)).toMatch(/is taken/);
  expect(nameTrouble(family, 'Hemn', proposal)).toBe('');
  expect(nameTrouble(family, 'Bittem', proposal)).toMatch(/looks like a name that is taken/);
  expect(nameTrouble(family, 'HerBit', proposal)).toMatch(/would mislead/);
  expect(addGrown(session, family, { input, report, proposal }, 'Heron')).toMatch(/is taken/);
  expect(session.documents.getState().past).toHaveLength(0);
});

test('keyways and group blanks that are gone are left out of the question', () => {
  const { family } = opened();
  const state = growStateOf(opened().session).getState();
  expect(growInput(family, { ...state, second: 'gone' }).between).toBeNull();
  expect(growInput(family, { ...state, allowed: ['gone'] }).allowed).toEqual([]);
});

/** The same sections as those that a plan asked for. */
function plannedText(): string {
  const { profiles, ...rest } = JSON.parse(TEXT);
  const ids: Record<string, string> = {
    'heron-blank-5': 'blank-heron',
    'bittern-blank': 'blank-bittern',
    'polder-all-section-blank': 'blank-all-sections',
  };
  return JSON.stringify({
    ...rest,
    profiles: profiles
      .filter(({ id }: { id: string }) => id !== 'heron-blank-6')
      .map((one: { id: string }) => ({ ...one, id: ids[one.id] ?? one.id, planned: true })),
    plan: {
      areas: [
        { id: 'heron', name: 'Heron' },
        { id: 'bittern', name: 'Bittern' },
      ],
      holders: [
        { id: 'warden', name: 'Warden', enters: ['heron', 'bittern'] },
        { id: 'cook', name: 'Cook', enters: ['heron'] },
      ],
      blade: { ...PLAN.blade },
      reserve: 2,
    },
  });
}

// The plan went on keeping room for two, its areas lacked the section, and so did the cards at the doors.
test('a section that is added to a planned family becomes an area of the plan, which the family then keeps', () => {
  const text = plannedText();
  const { session, family, input } = opened(text);
  const planned = { ...report, tops: ['blank-all-sections'] };
  expect(addGrown(session, family, { input, report: planned, proposal: report.proposals[0] }, 'Teal')).toBeNull();
  const { document } = session.documents.getState();
  if (!document?.family.plan) throw new Error('no plan');
  expect(document.family.plan.areas.at(-1)).toEqual({ id: 'teal', name: 'Teal' });
  expect(document.family.plan.reserve).toBe(1);
  expect(document.family.plan.holders.map(({ enters }) => enters)).toEqual([['heron', 'bittern', 'teal'], ['heron']]);
  expect(session.selection.getState().entrantId).toBe('blank-teal');
  const question = sectionsQuestion(document.family);
  if (!question) throw new Error('no question');
  const standing = takenStanding(document, question, null, finish(entryMatrix(document.family)));
  expect(standing).toEqual({ kind: 'serves' });
  undo(session.documents);
  expect(session.documents.getState().document?.family.plan).toEqual(family.plan);
});
