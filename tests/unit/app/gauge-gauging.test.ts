import { expect, test } from 'vitest';
import { Gauging } from '../../../src/app/state/gauge/gauging.ts';
import { openingsOf } from '../../../src/family/family.ts';
import { uprightCurve } from '../../../src/gauge/thickness-curve.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import { demoFamily } from '../../kit/demo-family.ts';
import { fakeDoors, turn } from './fake-doors.ts';

function begin() {
  const { doors, gaugings } = fakeDoors();
  const gauging = new Gauging(doors.gauge);
  return { gauging, gaugings, state: () => gauging.store.getState() };
}

const FAMILY = demoFamily();
const OPENINGS = openingsOf(FAMILY);
const curveOf = (place: number) => uprightCurve(OPENINGS[place].id, OPENINGS[place].ring);
const all = OPENINGS.map((_, i) => curveOf(i));

test('curves are shown as they come, and kept when one looks away', async () => {
  const { gauging, gaugings, state } = begin();
  gauging.ask(FAMILY, 0);
  expect(state()).toMatchObject({ phase: 'finding', curves: [] });
  gaugings[0].part(curveOf(2));
  expect(state().curves.map(({ openingId }) => openingId)).toEqual([OPENINGS[2].id]);
  gaugings[0].finish({ curves: all });
  await turn();
  expect(state().phase).toBe('found');
  expect(state().curves.map(({ openingId }) => openingId)).toEqual(OPENINGS.map(({ id }) => id));
  gauging.ask(null, 0);
  gauging.ask(FAMILY, 0);
  expect(state().phase).toBe('found');
  expect(gaugings.length).toBe(1);
});

test('an edit asks for what it changed only', async () => {
  const { gauging, gaugings, state } = begin();
  gauging.ask(FAMILY, 0);
  gaugings[0].finish({ curves: all });
  await turn();
  const [first, ...others] = FAMILY.profiles;
  const edited = {
    ...FAMILY,
    profiles: [{ ...first, ring: [...first.ring] as unknown as typeof first.ring }, ...others],
  };
  gauging.ask(edited, 0);
  expect(gaugings[1].input.family.profiles.map(({ id }) => id)).toEqual([first.id]);
  expect(state().curves.length).toBe(OPENINGS.length - 1);
});

test('a stop keeps what is known, and going on asks for the rest; another tilt is another question', async () => {
  const { gauging, gaugings, state } = begin();
  gauging.ask(FAMILY, 0.03);
  gaugings[0].part(curveOf(0));
  gauging.stop();
  expect(gaugings[0].cancelled).toBe(true);
  expect(state()).toMatchObject({ phase: 'stopped' });
  expect(state().curves.length).toBe(1);
  gaugings[0].fail(new JobCancelled());
  await turn();
  gauging.again();
  expect(gaugings[1].input.family.profiles.length).toBe(OPENINGS.length - 1);
  gauging.ask(FAMILY, 0);
  expect(gaugings[1].cancelled).toBe(true);
  expect(gaugings[2].input.tiltLimit).toBe(0);
  expect(state().curves).toEqual([]);
});

test('a failure is told and may be tried again', async () => {
  const { gauging, gaugings, state } = begin();
  gauging.ask(FAMILY, 0);
  gaugings[0].fail(new Error('out of memory'));
  await turn();
  expect(state()).toMatchObject({ phase: 'failed', trouble: 'out of memory' });
  gauging.again();
  expect(state().phase).toBe('finding');
});
