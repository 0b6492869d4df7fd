import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { passageInput } from '../../../src/app/state/tiers/passage-choice.ts';
import { PassageFinding, standsIn } from '../../../src/app/state/tiers/passage-finding.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import type { Passage } from '../../../src/passage/passage.ts';
import { fakeDoors } from './fake-doors.ts';

const read = readFamily(readFileSync('profiles-demo/first-lesson.json', 'utf8'));
if (!read.ok) throw new Error('the first lesson is not sound');
const { family } = read.document;
const ids = family.profiles.filter(({ kind }) => kind === 'opening').map(({ id }) => id);

const EMPTY: Passage = {
  members: [],
  common: [],
  area: 0,
  sure: null,
  blank: null,
  none: { why: 'nothing-shared' },
  entries: [],
  clearance: 0,
};

const settled = () => new Promise((done) => setTimeout(done));

test('one search at a time: another question cancels the one on its way, whose late answer is kept but not shown', async () => {
  const { doors, passages } = fakeDoors();
  const finding = new PassageFinding(doors.passage);
  finding.ask(passageInput(family, ids));
  finding.ask(passageInput(family, ids.slice(0, 1)));
  expect(passages.map(({ cancelled }) => cancelled)).toEqual([true, false]);
  passages[0].finish(EMPTY);
  await settled();
  expect(finding.store.getState()).toMatchObject({ phase: 'finding', found: null });
  passages[1].finish(EMPTY);
  await settled();
  expect(finding.store.getState().phase).toBe('found');
  finding.ask(passageInput(family, ids));
  expect(passages).toHaveLength(2);
  expect(finding.store.getState().found?.input.chosen).toEqual(ids);
});

test('a search can be stopped and taken up again; nothing chosen asks for none', async () => {
  const { doors, passages } = fakeDoors();
  const finding = new PassageFinding(doors.passage);
  finding.ask(passageInput(family, []));
  expect(passages).toHaveLength(0);
  finding.ask(passageInput(family, ids));
  finding.stop();
  passages[0].fail(new JobCancelled());
  await settled();
  expect(finding.store.getState().phase).toBe('stopped');
  finding.again();
  expect(passages).toHaveLength(2);
  passages[1].fail(new Error('no memory'));
  await settled();
  expect(finding.store.getState()).toMatchObject({ phase: 'failed', trouble: 'no memory' });
});

// The picture of another family's keyways stood under the words of the one that was open.
test('a passage stands in for another only while its keyways are there as they were', () => {
  const all = passageInput(family, ids);
  const some = passageInput(family, ids.slice(0, 2));
  expect(standsIn(some, all)).toBe(true);
  expect(standsIn(all, some)).toBe(true);
  const without = { ...family, profiles: family.profiles.filter(({ id }) => id !== ids[1]) };
  expect(standsIn(some, passageInput(without, [ids[0]]))).toBe(false);
  const again = readFamily(readFileSync('profiles-demo/first-lesson.json', 'utf8'));
  expect(again.ok && standsIn(all, passageInput(again.document.family, ids))).toBe(false);
});
