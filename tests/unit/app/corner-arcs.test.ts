import { beforeEach, expect, test } from 'vitest';
import {
  beginCorner,
  type CornerPair,
  chosenCorner,
  finishCorner,
  moveCorner,
  putCorner,
  walkCorners,
} from '../../../src/app/panels/compare/corner-editing.ts';
import { shownCorners } from '../../../src/app/panels/compare/corner-places.ts';
import { cornersOf } from '../../../src/app/panels/compare/corner-state.ts';
import { openText } from '../../../src/app/state/document-state.ts';
import { editedVertices } from '../../../src/app/state/draw/draw-state.ts';
import { undo } from '../../../src/app/state/edit-document.ts';
import { makeSession, type Session } from '../../../src/app/state/session.ts';
import { fakeDoors } from './fake-doors.ts';

const MM = 1e6;

/** A slot and a blank with a half circle on top: four corners each, the third with an arc. */
const FAMILY = {
  format: 'sectionary-family',
  version: 1,
  name: 'Arches',
  units: 'mm',
  runningClearance: 0.03,
  profiles: [
    {
      id: 'slot',
      kind: 'opening',
      name: 'Slot',
      outline: [
        [0, 0],
        [2.1, 0],
        [2.1, 6],
        [0, 6],
      ],
    },
    {
      id: 'arch',
      kind: 'blank',
      name: 'Arch',
      outline: [
        [0, 0],
        [2, 0],
        [2, 4, 1],
        [0, 4],
      ],
    },
  ],
};

let session: Session;

beforeEach(() => {
  const { doors } = fakeDoors();
  session = makeSession(doors, null);
  openText(session.documents, doors, JSON.stringify(FAMILY), 'arches.json');
  cornersOf(session).setState({ on: true, part: 'entrant', chosen: 2 });
});

function pairNow(): CornerPair {
  const { profiles } = session.documents.getState().document?.family ?? { profiles: [] };
  return { opening: profiles[0], entrant: profiles[1], placement: { x: 0, y: 0, tilt: 0 } };
}

test('the corners of an outline with arcs are its vertices, not the chords', () => {
  expect(shownCorners(pairNow(), cornersOf(session).getState())?.points).toHaveLength(4);
  expect(chosenCorner(session, pairNow())).toMatchObject({ x: 2 * MM, y: 4 * MM });
  walkCorners(session, pairNow(), 2);
  expect(cornersOf(session).getState().chosen).toBe(0);
});

test('a moved corner keeps the arc that begins at it, and those elsewhere; undo brings it back', () => {
  putCorner(session, pairNow(), { x: 2 * MM, y: 4.2 * MM });
  expect(editedVertices(pairNow().entrant)[2]).toEqual({ x: 2 * MM, y: 4.2 * MM, bulge: 1 });
  cornersOf(session).setState({ chosen: 0 });
  beginCorner(session, pairNow());
  moveCorner(session, { x: -0.01 * MM, y: 0 });
  finishCorner(session);
  expect(editedVertices(pairNow().entrant).map(({ bulge = 0 }) => bulge)).toEqual([0, 0, 1, 0]);
  undo(session.documents);
  undo(session.documents);
  expect(editedVertices(pairNow().entrant)[2]).toEqual({ x: 2 * MM, y: 4 * MM, bulge: 1 });
});
