import { beforeEach, expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { setPenVertex, takePen } from '../../../src/app/state/draw/pen-editing.ts';
import { judgePen, type PenFits } from '../../../src/app/state/pen-fits.ts';
import { makeSession, type Session } from '../../../src/app/state/session.ts';
import { type FakeDoors, fakeDoors } from './fake-doors.ts';

const MM = 1e6;
const slot = (id: string, wide: number) => ({
  id,
  kind: 'opening',
  name: `${id} keyway`,
  outline: [
    [0, 0],
    [wide, 0],
    [wide, 6.6],
    [0, 6.6],
  ],
});
const FAMILY = {
  format: 'sectionary-family',
  version: 1,
  name: 'Plain',
  units: 'mm',
  runningClearance: 0.03,
  profiles: [
    slot('narrow', 1.5),
    slot('wide', 2.1),
    {
      id: 'bar',
      kind: 'blank',
      name: 'Bar blank',
      outline: [
        [0, 0],
        [1, 0],
        [1, 6],
        [0, 6],
      ],
    },
  ],
};

let session: Session;
let fake: FakeDoors;
let shown: (PenFits | null)[] = [];

beforeEach(() => {
  fake = fakeDoors();
  shown = [];
  session = makeSession(fake.doors, null);
  openText(session.documents, session.doors, JSON.stringify(FAMILY), 'plain.json');
  session.selection.setState({ entrantId: 'bar', openingId: 'wide', part: 'entrant' });
});

const judge = () => judgePen(session, (fits) => shown.push(fits));
const set = (...places: [number, number][]) => {
  for (const [x, y] of places) setPenVertex(session, { x: x * MM, y: y * MM });
};

test('what the pen has begun is tried as if it were closed: the picked keyway first, then one a frame', () => {
  takePen(session);
  set([0, 0], [2, 0], [2, 6], [0, 6]);
  judge();
  // 2 mm in 2.1 mm keeps 0.050 mm to either side.
  expect(shown.at(-1)).toMatchObject({ kind: 'blank', tried: 1, of: 2, goesIn: 1 });
  expect(shown.at(-1)?.picked?.name).toBe('wide keyway');
  expect(shown.at(-1)?.picked?.fit.clearance).toBeCloseTo(50_000, -1);
  fake.nextFrame();
  expect(shown.at(-1)).toMatchObject({ tried: 2, goesIn: 1 });
  const count = shown.length;
  fake.nextFrame();
  expect(shown).toHaveLength(count);
});

test('a keyway is tried with the blanks, a stopped trial goes on no more', () => {
  takePen(session, { head: { kind: 'opening', name: 'Teal keyway' } });
  set([0, 0], [1.1, 0], [1.1, 7], [0, 7]);
  judge()();
  expect(shown.at(-1)).toMatchObject({ kind: 'opening', tried: 1, of: 1, goesIn: 1 });
  fake.nextFrame();
  expect(shown.at(-1)?.tried).toBe(1);
});

test('nothing is said of an outline that would cross, or of too little of one', () => {
  takePen(session);
  set([0, 0], [2, 0]);
  judge();
  expect(shown).toEqual([null]);
  set([0, 6], [2, 6]);
  judge();
  expect(shown).toEqual([null, null]);
});
