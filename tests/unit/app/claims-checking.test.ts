import { expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { undo } from '../../../src/app/state/edit-document.ts';
import { makeSession, type Session } from '../../../src/app/state/session.ts';
import { ClaimsChecking } from '../../../src/app/state/tiers/claims-checking.ts';
import {
  changeClaim,
  claimsNow,
  deleteClaims,
  deleteSource,
  dropRepeated,
  putName,
  takeClaims,
  takeDraft,
} from '../../../src/app/state/tiers/claims-editing.ts';
import { claimMarkKey, claimMarks } from '../../../src/app/state/tiers/claims-marks.ts';
import {
  oddNames,
  seemsSwapped,
  suggestedNames,
  withNames,
  withSource,
} from '../../../src/app/state/tiers/claims-names.ts';
import { claimRows, tallySources } from '../../../src/app/state/tiers/claims-rows.ts';
import { claimsOf, endIncoming, showIncoming } from '../../../src/app/state/tiers/claims-state.ts';
import { claimsReportText, claimWords } from '../../../src/app/state/tiers/claims-words.ts';
import { countStandings } from '../../../src/claims/check-claims.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import { judgeTolerances, type TolerancesInput, type TolerancesPart } from '../../../src/jobs/judge-tolerances.ts';
import { slotFile } from '../../cases/slot-family.ts';
import { type FakeDoors, fakeDoors, settle, turn } from './fake-doors.ts';

const [chart, list] = ["Porter's chart", 'Stores list'];
const says = (blank: string, enters: boolean, opening: string, by: string) => ({ blank, opening, enters, by });

/** Gaps each side in mm, against 0.04 of both tolerances: Heron 0.05 in its own, 0.15 in Smew; Smew 0.035 and -0.065. */
const SLOTS = slotFile(
  [
    { id: 'heron-keyway', name: 'Heron keyway', section: 'Heron', width: 1.1 },
    { id: 'smew-keyway', name: 'Smew keyway', section: 'Smew', width: 1.3 },
  ],
  [
    { id: 'heron-5', name: 'Heron blank, five chambers', section: 'Heron', width: 1, chambers: 5 },
    { id: 'heron-6', name: 'Heron blank, six chambers', section: 'Heron', width: 1, chambers: 6 },
    { id: 'smew-blank', name: 'Smew blank', section: 'Smew', width: 1.23 },
  ],
  {
    tolerance: 0.02,
    claims: [
      says('Heron', true, 'Heron', chart),
      says('Smew', true, 'Heron', chart),
      says('Smew', true, 'Smew', list),
      says('Heron', true, 'Smew', list),
      says('Smew', false, 'Heron', list),
      says('Hern', true, 'Heron', list),
    ],
  },
);

/** The family open and judged, its tolerances not. */
async function opened() {
  const fake = fakeDoors();
  const session = makeSession(fake.doors, null);
  openText(session.documents, fake.doors, SLOTS, 'slots.json');
  for (let n = 0; n < fake.pairs.length; n++) await settle(fake.pairs[n]);
  fake.calm();
  for (let n = 0; n < fake.pairs.length; n++) if (fake.pairs[n].input.measured) await settle(fake.pairs[n]);
  const checking = new ClaimsChecking(fake.doors);
  return { fake, session, checking };
}

function orderOf({ documents, results, conditions }: Session, settled = true) {
  const family = documents.getState().document?.family;
  if (!family) throw new Error('no family');
  return { family, fits: results.getState().fits, state: conditions.getState(), settled };
}

/** Answers the held jobs truly. */
async function answer(fake: FakeDoors): Promise<void> {
  for (const job of fake.tolerances.splice(0)) {
    const parts = await partsOf(job.input);
    for (const part of parts) job.part(part);
    job.finish(job.input.pairs.length / 2);
  }
  await turn();
}

async function partsOf(input: TolerancesInput): Promise<TolerancesPart[]> {
  const parts: TolerancesPart[] = [];
  const part = (value: unknown) => parts.push(value as TolerancesPart);
  await judgeTolerances(input, { progress() {}, part, cancelled: () => false, pause: async () => {}, now: () => 0 });
  return parts;
}

test('what the clearance says is there at once, the rest when other threads have looked', async () => {
  const { fake, session, checking } = await opened();
  expect(countStandings(checking.check(orderOf(session)))).toMatchObject({
    ...{ confirmed: 2, 'too close to call': 1, 'not judged yet': 2, 'name not found': 1 },
  });
  checking.follow(orderOf(session));
  // One pair is claimed twice, and the blanks of one outline have one fit.
  expect(fake.tolerances.map(({ input }) => input.fits.length)).toEqual([1]);
  expect(checking.store.getState().waiting).toBe(1);
  await answer(fake);
  const checked = checking.check(orderOf(session));
  expect(countStandings(checked)).toMatchObject({ confirmed: 3, contradicted: 1, 'too close to call': 1 });
  expect(checking.check(orderOf(session))).toBe(checked);
  expect(checking.store.getState()).toMatchObject({ waiting: 0, trouble: '' });
  checking.follow(orderOf(session));
  expect(fake.tolerances).toHaveLength(0);
});

test('nothing is begun while fits are on their way, and a look is given up when nobody looks', async () => {
  const { fake, session, checking } = await opened();
  checking.follow(orderOf(session, false));
  expect(fake.tolerances).toHaveLength(0);
  checking.follow(orderOf(session));
  checking.follow(null);
  expect(fake.tolerances.map(({ cancelled }) => cancelled)).toEqual([true]);
  for (const job of fake.tolerances.splice(0)) job.fail(new JobCancelled());
  await turn();
  expect(checking.store.getState().waiting).toBe(0);
  checking.follow(orderOf(session));
  expect(fake.tolerances).toHaveLength(1);
});

test('a failure is told and not begun again by itself', async () => {
  const { fake, session, checking } = await opened();
  checking.follow(orderOf(session));
  for (const job of fake.tolerances.splice(0)) job.fail(new Error('no threads'));
  await turn();
  expect(checking.store.getState().trouble).toBe('no threads');
  checking.follow(orderOf(session));
  expect(fake.tolerances).toHaveLength(0);
});

test('claims are typed, changed, renamed and deleted, each a step of undo', async () => {
  const { session } = await opened();
  const store = claimsOf(session);
  const draft = { blank: 'Herm', opening: 'Smew', enters: false, by: 'me', note: '' };
  store.setState({ draft });
  expect(takeDraft(session)).toBe(null);
  expect(claimsNow(session).at(-1)).toEqual({ blank: 'Herm', opening: 'Smew', enters: false, by: 'me' });
  expect(store.getState()).toMatchObject({ draft: { blank: '', by: 'me' }, picked: claimsNow(session).at(-1) });
  putName(session, 'blank', 'Herm', 'Heron');
  expect(claimsNow(session).at(-1)?.blank).toBe('Heron');
  expect(store.getState()).toMatchObject({
    said: '“Herm” is now “Heron” in 1 claim.',
    picked: claimsNow(session).at(-1),
  });
  changeClaim(session, claimsNow(session)[6]);
  store.setState({ draft: { ...store.getState().draft, enters: true, note: 'heard' } });
  takeDraft(session);
  expect(claimsNow(session)[6]).toEqual({ blank: 'Heron', opening: 'Smew', enters: true, by: 'me', note: 'heard' });
  deleteClaims(session, claimsNow(session).slice(0, 2));
  expect(claimsNow(session)).toHaveLength(5);
  deleteSource(session, list);
  expect(claimsNow(session)).toHaveLength(1);
  for (let n = 0; n < 5; n++) undo(session.documents);
  expect(claimsNow(session)).toHaveLength(6);
});

test('a table is taken as one step, with what was there already told', async () => {
  const { session } = await opened();
  const [first] = claimsNow(session);
  takeClaims(session, [first, { blank: 'Heron', opening: 'Knot', enters: false }]);
  expect(claimsOf(session).getState().said).toBe('1 claim added; 1 claim was there already.');
  undo(session.documents);
  expect(claimsNow(session)).toHaveLength(6);
  dropRepeated(session);
  expect(claimsOf(session).getState().said).toBe('No claim is repeated.');
});

test('a claim that names nothing is refused by the file and told', async () => {
  const { session } = await opened();
  claimsOf(session).setState({ draft: { blank: ' ', opening: 'Smew', enters: true, by: '', note: '' } });
  expect(takeDraft(session)?.[0].path).toBe('claims[6].blank');
  expect(claimsNow(session)).toHaveLength(6);
});

test('tables come one after the other, and are forgotten with the family', async () => {
  const { fake, session } = await opened();
  showIncoming(session, 'a.csv', 'a');
  showIncoming(session, 'b.csv', 'b');
  expect([session.selection.getState().view, session.tiers.getState().sheet]).toEqual(['tiers', 'claims']);
  endIncoming(session);
  expect(claimsOf(session).getState().incoming).toEqual([{ name: 'b.csv', text: 'b' }]);
  openText(session.documents, fake.doors, SLOTS, 'again.json');
  expect(claimsOf(session).getState().incoming).toEqual([]);
});

test('rows: those that fail first, by standing and source; marks by pair; a report in words', async () => {
  const { fake, session, checking } = await opened();
  checking.follow(orderOf(session));
  await answer(fake);
  const checked = checking.check(orderOf(session));
  const all = claimRows(checked, { shown: 'all', source: null });
  expect(all.map(({ standing }) => standing)).toEqual([
    ...['contradicted', 'too close to call', 'name not found', 'confirmed', 'confirmed', 'confirmed'],
  ]);
  expect(claimRows(checked, { shown: 'failing', source: chart })).toHaveLength(1);
  expect(claimRows(checked, { shown: 'confirmed', source: list })).toHaveLength(2);
  expect(tallySources(checked)).toEqual([
    { source: chart, total: 2, failing: 1, contradicted: 1 },
    { source: list, total: 4, failing: 2, contradicted: 0 },
  ]);
  const marks = claimMarks(checked);
  const markOf = (entrant: string, opening: string) => marks.get(claimMarkKey(entrant, opening));
  expect(markOf('smew-blank', 'heron-keyway')).toEqual({ standing: 'contradicted', count: 2, disputed: true });
  expect(markOf('heron-5', 'heron-keyway')).toEqual({ standing: 'confirmed', count: 1, disputed: false });
  expect(markOf('heron-6', 'heron-keyway')?.standing).toBe('confirmed');
  expect(markOf('nobody', 'heron-keyway')).toBe(undefined);
  const { family, state } = orderOf(session);
  const text = claimsReportText(family, all, family.claims ?? [], claimWords(fake.doors, family, state, 'mm'));
  expect(text.split('\n')[0]).toBe(
    'Slots: 6 claims: 3 confirmed, 1 contradicted, 1 too close to call, 1 name not found',
  );
  expect(text.split('\n')[1]).toMatch(
    /^contradicted: Smew enters Heron \(Porter's chart\)\. It does not go in: blocked by the .* wall .*too deep/,
  );
  expect(text.split('\n')[1]).toContain('Stores list says the opposite.');
});

test('names of a table: suggested, odd ones told, put in their place; a matrix the wrong way round is known', async () => {
  const { session } = await opened();
  const { family } = orderOf(session);
  expect(suggestedNames(family, 'opening')[0]).toBe('Heron keyway');
  expect(suggestedNames(family, 'blank')).toEqual(expect.arrayContaining(['Smew blank', 'Heron']));
  const claims = [
    { blank: 'Hern', opening: 'Smew', enters: true },
    { blank: 'Hern', opening: 'Heron', enters: false, by: 'x' },
  ];
  const [odd] = oddNames(family, claims);
  expect(odd).toMatchObject({ text: 'Hern', side: 'blank', count: 2, candidates: ['Heron'] });
  const names = new Map([['blank\nHern', 'Heron']]);
  expect(withSource(withNames(claims, names), ' chart ').map(({ blank, by }) => [blank, by])).toEqual([
    ['Heron', 'chart'],
    ['Heron', 'x'],
  ]);
  const across = [{ blank: 'Heron keyway', opening: 'Smew blank', enters: true }];
  expect([seemsSwapped(family, across), seemsSwapped(family, claims)]).toEqual([true, false]);
});
