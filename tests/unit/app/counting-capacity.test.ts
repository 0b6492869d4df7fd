import { expect, test } from 'vitest';
import { answerFor, CountingCapacity } from '../../../src/app/state/plan/capacity/counting-capacity.ts';
import { USUAL_RULES } from '../../../src/capacity/bitting-rules.ts';
import type { Capacity } from '../../../src/capacity/capacity.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import { fakeDoors, turn } from './fake-doors.ts';

const QUESTION = { rules: USUAL_RULES, goesIn: null };
const ANSWER = { keys: 753_754n } as Capacity;

function begin() {
  const { doors, capacities } = fakeDoors();
  const counting = new CountingCapacity(doors.capacity);
  return { counting, capacities, state: () => counting.store.getState() };
}

test('counts what is asked, keeps the answer, and does not count it again', async () => {
  const { counting, capacities, state } = begin();
  counting.ask(QUESTION);
  expect(state().phase).toBe('finding');
  capacities[0].finish(ANSWER);
  await turn();
  expect(state()).toMatchObject({ phase: 'found', found: { input: QUESTION, output: ANSWER } });
  counting.ask(null);
  expect(state().phase).toBe('idle');
  counting.ask(QUESTION);
  expect(state().phase).toBe('found');
  expect(capacities.length).toBe(1);
});

test('another question ends the one on its way, whose answer is not taken', async () => {
  const { counting, capacities, state } = begin();
  counting.ask(QUESTION);
  counting.ask({ ...QUESTION, example: 2n });
  expect(capacities.map(({ cancelled }) => cancelled)).toEqual([true, false]);
  capacities[0].finish(ANSWER);
  await turn();
  expect(state().phase).toBe('finding');
});

test('may be stopped and begun again; a failure is told', async () => {
  const { counting, capacities, state } = begin();
  counting.ask(QUESTION);
  counting.stop();
  expect([state().phase, capacities[0].cancelled]).toEqual(['stopped', true]);
  counting.again();
  capacities[1].fail(new Error('no thread'));
  await turn();
  expect(state()).toMatchObject({ phase: 'failed', trouble: 'no thread' });
  counting.again();
  capacities[2].fail(new JobCancelled());
  await turn();
  expect(state().phase).toBe('stopped');
});

test('the same rules and the same entries are the same question; an entry more is another one', async () => {
  const { counting, capacities, state } = begin();
  counting.ask({ ...QUESTION, goesIn: [[true, false]] });
  counting.ask({ ...QUESTION, goesIn: [[true, false]] });
  expect(capacities.length).toBe(1);
  capacities[0].finish(ANSWER);
  await turn();
  counting.ask({ ...QUESTION, goesIn: [[true, true]] });
  expect([state().phase, capacities.length]).toEqual(['finding', 2]);
  counting.ask({ ...QUESTION, goesIn: null });
  counting.ask({ ...QUESTION, rules: { ...USUAL_RULES, chambers: 5 } });
  expect(capacities.length).toBe(4);
});

// The Capacity sheet broke down when another family was opened beside an answer: its places named blanks that were gone.
test('an answer for other blanks and keyways is none, even where it came last', () => {
  const judged = (goesIn: boolean[][]) => ({ blanks: [], openings: [], goesIn, open: 0 });
  const found = {
    input: {
      ...QUESTION,
      goesIn: [
        [true, false],
        [false, true],
      ],
    },
    output: ANSWER,
  };
  expect(
    answerFor(
      found,
      judged([
        [true, false],
        [false, true],
      ]),
    ),
  ).toBe(ANSWER);
  expect(answerFor(found, judged([[true]]))).toBe(null);
  expect(answerFor(found, null)).toBe(null);
  expect(answerFor({ ...found, input: QUESTION }, null)).toBe(ANSWER);
  expect(answerFor(null, null)).toBe(null);
});
