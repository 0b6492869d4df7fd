import { expect, test } from 'vitest';
import { ExaminingStrength, outlineKey } from '../../../src/app/state/plan/strength/examining-strength.ts';
import { strengthHeadline, strengthRows } from '../../../src/app/state/plan/strength/strength-rows.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import type { Profile } from '../../../src/profile/profile.ts';
import { findingStrength } from '../../../src/strength/find-strength.ts';
import { USUAL_MATERIAL } from '../../../src/strength/materials.ts';
import type { SectionStrength } from '../../../src/strength/strength.ts';
import { demoFamily, demoProfile } from '../../kit/demo-family.ts';
import { fakeDoors, turn } from './fake-doors.ts';

const HERON_5 = demoProfile('heron-blank-5');
const HERON_6 = demoProfile('heron-blank-6');
const RUFF = demoProfile('ruff-blank');
const STRIP = demoProfile('strip-175');
const SMEW = demoProfile('smew-blank');

/** An answer whose figures do not matter. */
const ANSWER = { area: 1 } as SectionStrength;
const CLOSER = { area: 2 } as SectionStrength;

/** A coarse answer for a plain strip. */
function solved({ ring }: Profile): SectionStrength {
  const steps = findingStrength({ ring, gap: 0.1, mostTriangles: 500 });
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

function begin(threads = 1) {
  const { doors, strengths } = fakeDoors();
  const examining = new ExaminingStrength(doors.strength, () => threads);
  return { examining, strengths, state: () => examining.store.getState() };
}

const rings = (job: { input: readonly { ring: unknown }[] }) => job.input.map(({ ring }) => ring);

test('the picked blade comes first, blades of one outline are examined once', async () => {
  const { examining, strengths, state } = begin();
  examining.follow([HERON_5, HERON_6, RUFF], RUFF);
  expect(outlineKey(HERON_5)).toBe(outlineKey(HERON_6));
  expect(state()).toMatchObject({ phase: 'working', begun: 0, done: 0, total: 2 });
  expect(strengths.map(rings)).toEqual([[RUFF.ring, HERON_5.ring]]);
  strengths[0].part({ index: 0, strength: ANSWER, last: false });
  strengths[0].part({ index: 1, strength: ANSWER, last: false });
  expect(state()).toMatchObject({ phase: 'working', begun: 2, done: 0 });
  strengths[0].part({ index: 0, strength: ANSWER, last: true });
  strengths[0].part({ index: 1, strength: CLOSER, last: true });
  expect(state()).toMatchObject({ phase: 'done', begun: 2, done: 2, total: 2 });
  expect(state().known.get(outlineKey(HERON_5))).toBe(CLOSER);
  strengths[0].finish(2);
  await turn();
  expect(strengths.length).toBe(1);
});

test('outlines are dealt out to as many threads as there are, evenly', () => {
  const { examining, strengths } = begin(2);
  examining.follow([HERON_5, RUFF, SMEW, STRIP], SMEW);
  expect(strengths.map(rings)).toEqual([
    [SMEW.ring, RUFF.ring],
    [HERON_5.ring, STRIP.ring],
  ]);
});

test('an edit asks for what it changed only, and ends what nobody wants', async () => {
  const { examining, strengths, state } = begin(2);
  examining.follow([HERON_5, RUFF], RUFF);
  expect(strengths.map(rings)).toEqual([[RUFF.ring], [HERON_5.ring]]);
  strengths[0].part({ index: 0, strength: ANSWER, last: true });
  strengths[0].finish(1);
  await turn();
  examining.follow([{ ...RUFF }, SMEW], SMEW);
  expect(strengths[1].cancelled).toBe(true);
  expect(strengths.slice(2).map(rings)).toEqual([[SMEW.ring]]);
  expect(state()).toMatchObject({ done: 1, total: 2 });
});

test('may be stopped and taken up again; what is known stays, and first answers are brought closer', async () => {
  const { examining, strengths, state } = begin();
  examining.follow([HERON_5, RUFF, SMEW], null);
  strengths[0].part({ index: 0, strength: ANSWER, last: false });
  strengths[0].part({ index: 1, strength: ANSWER, last: true });
  examining.stop();
  expect(strengths[0].cancelled).toBe(true);
  strengths[0].fail(new JobCancelled());
  await turn();
  expect(state()).toMatchObject({ phase: 'stopped', begun: 2, done: 1 });
  examining.again();
  expect(state().phase).toBe('working');
  expect(rings(strengths[1])).toEqual([SMEW.ring, HERON_5.ring]);
  strengths[1].part({ index: 0, strength: ANSWER, last: true });
  strengths[1].part({ index: 1, strength: ANSWER, last: true });
  expect(state()).toMatchObject({ phase: 'done', done: 3 });
});

test('a blade that cannot be solved is told, the others go on, and it can be tried again', async () => {
  const { examining, strengths, state } = begin();
  examining.follow([HERON_5, RUFF], null);
  strengths[0].part({ index: 0, trouble: 'no mesh' });
  strengths[0].part({ index: 1, strength: ANSWER, last: true });
  strengths[0].finish(1);
  await turn();
  expect([...state().failed.values()]).toEqual(['no mesh']);
  expect(state().phase).toBe('done');
  examining.again();
  expect(strengths.slice(1).map(rings)).toEqual([[HERON_5.ring]]);
  strengths[1].fail(new Error('out of memory'));
  await turn();
  expect([...state().failed.values()]).toEqual(['out of memory']);
  expect(state().troubles).toEqual(['out of memory']);
  // Nobody is told of it once the blade is not wanted any more.
  examining.follow([RUFF], null);
  expect(state().troubles).toEqual([]);
});

test('rows tell what is known of each blade, and the headline counts', () => {
  const family = demoFamily();
  const section = solved(STRIP);
  const state = { known: new Map([[outlineKey(STRIP), section]]), failed: new Map([[outlineKey(SMEW), 'no mesh']]) };
  const rows = strengthRows(family, state, USUAL_MATERIAL, 2.5);
  const row = (id: string) => rows.find(({ profile }) => profile.id === id);
  expect(rows.some(({ profile }) => profile.kind === 'opening')).toBe(false);
  expect(row('strip-175')).toMatchObject({ section, verdict: 'part-plastic', trouble: '' });
  expect(row('smew-blank')).toMatchObject({ section: null, verdict: null, trouble: 'no mesh' });
  expect(strengthHeadline(rows, '2.50 N m')).toBe(
    'So far none of 1 blade bears 2.50 N m without yielding; none twists through',
  );
  // An answer for one blade leaves the rows of the others the same.
  const more = { ...state, known: new Map(state.known).set(outlineKey(RUFF), section) };
  const changed = strengthRows(family, more, USUAL_MATERIAL, 2.5).filter((one, i) => one !== rows[i]);
  expect(changed.map(({ profile }) => profile.id)).toEqual(['ruff-blank']);
  const gentle = strengthRows(family, state, USUAL_MATERIAL, 0.1);
  expect(strengthHeadline(gentle, '0.10 N m')).toMatch(/^So far 1 of 1 blade bears 0\.10 N m/);
  const strip = gentle.filter(({ profile }) => profile.id === 'strip-175');
  expect(strengthHeadline([...strip, ...strip], '0.10 N m')).toBe(
    '2 of 2 blades bear 0.10 N m without yielding; none twists through',
  );
  const much = strengthRows(family, state, USUAL_MATERIAL, 50).filter(({ profile }) => profile.id === 'strip-175');
  expect(strengthHeadline(much, '50.0 N m')).toBe('None of 1 blade bears 50.0 N m without yielding; 1 twists through');
});
