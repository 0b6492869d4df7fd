import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import {
  dragGroove,
  dropGroove,
  giveUpGroove,
  grooveCursor,
  nudgeGroove,
  pressGroove,
} from '../../../src/app/panels/mill/mill-dragging.ts';
import { openText } from '../../../src/app/state/document-state.ts';
import { leaveAsDrawn, makeCounterpart, readAsGrooves, takeGrooves } from '../../../src/app/state/draw/made-section.ts';
import {
  addNewGroove,
  addNewStep,
  chosenGroove,
  draftOf,
  dropDraft,
  duplicateGroove,
  mirrorBlade,
  putBladeSize,
  putGroove,
  setLeastWeb,
  takeOutGroove,
  turnGroove,
} from '../../../src/app/state/draw/mill-editing.ts';
import { millFor, millOf } from '../../../src/app/state/draw/mill-state.ts';
import { describedBy } from '../../../src/app/state/draw/mill-words.ts';
import { undo } from '../../../src/app/state/edit-document.ts';
import { makeSession, type Session } from '../../../src/app/state/session.ts';
import { millHandles } from '../../../src/app/tools/draw/groove-under-pointer.ts';
import { toPixels } from '../../../src/app/tools/drawing-view.ts';
import type { Profile } from '../../../src/profile/profile.ts';
import { fakeDoors } from './fake-doors.ts';

const MM = 1e6;
const text = readFileSync('profiles-demo/polderwick.json', 'utf8');
/** A hundred pixels a millimetre. */
const VIEW = { scale: 1e-4, x: 100, y: 900 };

let session: Session;
const profileOf = (id: string): Profile => {
  const found = session.documents.getState().document?.family.profiles.find((p) => p.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};
const heron = () => profileOf('heron-blank-6');
const steps = () => session.documents.getState().past.length;

beforeEach(() => {
  session = makeSession(fakeDoors().doors, null);
  openText(session.documents, session.doors, text, 'polderwick.json');
});

test('a milled profile is described by its grooves, a keyway by its wards, a plain blade by its sizes', () => {
  const plain = { thickness: 2 * MM, height: 6 * MM, backRadius: 0, grooves: [] };
  expect(describedBy(heron())).toBe('its grooves');
  expect(describedBy({ ...heron(), kind: 'opening' })).toBe('its wards');
  expect(describedBy({ kind: 'tool', milled: plain })).toBe('its sizes');
});

describe('editing grooves', () => {
  test('each edit is one step of undo, and undo brings back the very blade', () => {
    const before = heron();
    putGroove(session, heron(), 0, 'depth', 0.65 * MM);
    expect(heron().milled?.grooves[0].depth).toBe(0.65 * MM);
    putBladeSize(session, heron(), 'thickness', 2.05 * MM);
    mirrorBlade(session, heron());
    turnGroove(session, heron(), 1);
    addNewGroove(session, heron(), 'left');
    duplicateGroove(session, heron(), 0);
    takeOutGroove(session, heron(), 0);
    expect(steps()).toBe(7);
    for (let i = 0; i < 7; i++) undo(session.documents);
    expect(heron()).toBe(before);
  });

  test('a size that cannot be milled is kept as a draft with its fault; a later one may mend it, as one step', () => {
    const before = heron();
    expect(putGroove(session, heron(), 0, 'depth', 2.5 * MM)).toBe(false);
    expect(heron()).toBe(before);
    const draft = draftOf(millOf(session).getState(), heron());
    expect(draft?.faults[0]).toMatchObject({ kind: 'groove-through-blade', field: 'depth', grooves: [0] });
    expect(steps()).toBe(0);
    expect(putBladeSize(session, heron(), 'thickness', 3.5 * MM)).toBe(true);
    expect(heron().milled).toMatchObject({ thickness: 3.5 * MM });
    expect(heron().milled?.grooves[0].depth).toBe(2.5 * MM);
    expect(steps()).toBe(1);
  });

  test('a draft is void once the profile is another one, and can be dropped', () => {
    putGroove(session, heron(), 1, 'width', 0.65 * MM);
    putGroove(session, heron(), 0, 'depth', 2.5 * MM);
    undo(session.documents);
    expect(draftOf(millOf(session).getState(), heron())).toBeNull();
    putGroove(session, heron(), 0, 'depth', 2.5 * MM);
    expect(dropDraft(session, heron())).toBe(true);
    expect(draftOf(millOf(session).getState(), heron())).toBeNull();
  });

  test('sizes that cannot be milled are told of where another section is picked', () => {
    const state = () => millOf(session).getState();
    session.selection.setState({ entrantId: 'heron-blank-6', part: 'entrant' });
    putGroove(session, heron(), 0, 'flank', -15 * (Math.PI / 180));
    expect(draftOf(state(), heron())?.faults[0].cure).toMatch(/under-cut/);
    session.selection.setState({ entrantId: 'smew-blank', part: 'entrant' });
    expect(state()).toMatchObject({
      id: 'smew-blank',
      draft: null,
      letGo: `${heron().name}: the sizes that could not be milled are dropped; its last sound blade stays.`,
    });
    session.selection.setState({ entrantId: 'heron-blank-6', part: 'entrant' });
    expect(draftOf(state(), heron())).toBeNull();
  });

  test('words on sizes that were let go stay while sections are walked through, until something is done', () => {
    const told = (id: string) => millFor(millOf(session).getState(), id).letGo;
    const pick = (id: string) => session.selection.setState({ entrantId: id, part: 'entrant' });
    const letGo = (id: string, next: string) => {
      pick(id);
      putGroove(session, profileOf(id), 0, 'depth', 9 * MM);
      pick(next);
    };
    letGo('heron-blank-6', 'smew-blank');
    pick('heron-blank-5');
    expect(told('heron-blank-5')).toMatch(`${heron().name}: the sizes`);
    letGo('heron-blank-5', 'heron-blank-6');
    expect(told('heron-blank-6')).toMatch(`${profileOf('heron-blank-5').name}: the sizes`);
    // An edit ends them for good, also one that cannot be milled or is no milling.
    putGroove(session, heron(), 0, 'depth', 9 * MM);
    expect(told('heron-blank-6')).toBe('');
    pick('smew-blank');
    expect(told('smew-blank')).not.toBe('');
    setLeastWeb(session, 0.5 * MM);
    expect(told('smew-blank')).toBe('');
    letGo('heron-blank-5', 'smew-blank');
    expect(told('smew-blank')).not.toBe('');
    openText(session.documents, session.doors, text, 'again.json');
    expect(told('smew-blank')).toBe('');
    pick('heron-blank-6');
    pick('smew-blank');
    expect(told('smew-blank')).toBe('');
  });

  test('a new groove is chosen; a removed one leaves its neighbour chosen; no room is said', () => {
    addNewGroove(session, heron(), 'right');
    expect(chosenGroove(millOf(session).getState(), heron())).toBe(3);
    takeOutGroove(session, heron(), 3);
    expect(chosenGroove(millOf(session).getState(), heron())).toBe(2);
    addNewStep(session, heron(), 'left', 'top');
    addNewStep(session, heron(), 'left', 'top');
    expect(millOf(session).getState().told).toBe('There is no room for a step at the top on the left.');
  });

  test('the least web is set and taken back', () => {
    setLeastWeb(session, 0.5 * MM);
    expect(session.documents.getState().document?.family.leastWeb).toBe(0.5 * MM);
    expect(session.documents.getState().document?.file.leastWeb).toBe(0.5);
    setLeastWeb(session, null);
    expect(session.documents.getState().document?.file).not.toHaveProperty('leastWeb');
  });
});

describe('dragging a groove', () => {
  const handleOf = (part: string, groove: number | null) => {
    const { milled } = heron();
    const handle = milled && millHandles(milled).find((h) => h.part === part && h.groove === groove);
    if (!handle) throw new Error(`no handle ${part}`);
    return toPixels(VIEW, handle.at);
  };

  test('the whole groove moves in hundredths, one step of undo, chosen as it is taken', () => {
    const before = heron().milled?.grooves[0].bottom ?? 0;
    const at = handleOf('place', 0);
    expect(grooveCursor(session, heron(), VIEW, at)).toBe('ns-resize');
    expect(pressGroove(session, heron(), VIEW, { px: at.px + 3, py: at.py + 2 })).toBe(true);
    for (let up = 1; up <= 20; up++) dragGroove(session, VIEW, { px: at.px + 3, py: at.py + 2 - up * 1.04 }, false);
    dropGroove(session);
    expect((heron().milled?.grooves[0].bottom ?? 0) - before).toBe(0.21 * MM);
    expect(chosenGroove(millOf(session).getState(), heron())).toBe(0);
    expect(steps()).toBe(1);
  });

  test('edges change the width, the root the depth, fine steps are thousandths', () => {
    const before = heron().milled?.grooves[0];
    if (!before) throw new Error('no groove');
    const drag = (part: string, dx: number, dy: number, fine = false) => {
      const at = handleOf(part, 0);
      pressGroove(session, heron(), VIEW, at);
      dragGroove(session, VIEW, { px: at.px + dx, py: at.py - dy }, fine);
      dropGroove(session);
    };
    drag('high', 0, 10);
    drag('low', 0, -10);
    drag('root', 10, 0);
    expect(heron().milled?.grooves[0]).toMatchObject({
      bottom: before.bottom - 0.1 * MM,
      width: before.width + 0.2 * MM,
      depth: before.depth + 0.1 * MM,
    });
    drag('root', 0.13, 0, true);
    expect(heron().milled?.grooves[0].depth).toBe(before.depth + 0.101 * MM);
  });

  test('what cannot be milled is not followed; the last sound blade stays and is the step', () => {
    const before = heron();
    const at = handleOf('root', 0);
    pressGroove(session, heron(), VIEW, at);
    dragGroove(session, VIEW, { px: at.px + 20, py: at.py }, false);
    const sound = heron().milled?.grooves[0].depth;
    dragGroove(session, VIEW, { px: at.px + 400, py: at.py }, false);
    expect(draftOf(millOf(session).getState(), heron())).not.toBeNull();
    dropGroove(session);
    expect(heron().milled?.grooves[0].depth).toBe(sound);
    expect(steps()).toBe(1);
    undo(session.documents);
    expect(heron()).toBe(before);
  });

  test('picking another blank ends a drag, and undo in the middle of one takes it back for good', () => {
    const before = heron();
    const drag = (dx: number) => dragGroove(session, VIEW, { px: at.px + dx, py: at.py }, false);
    const at = handleOf('root', 0);
    session.selection.setState({ entrantId: before.id, part: 'entrant' });
    pressGroove(session, heron(), VIEW, at);
    drag(10);
    const milled = heron().milled;
    expect(milled).not.toEqual(before.milled);
    session.selection.setState({ entrantId: 'heron-blank-5' });
    drag(20);
    expect(heron().milled).toBe(milled);
    expect(steps()).toBe(1);
    session.selection.setState({ entrantId: before.id });
    undo(session.documents);
    pressGroove(session, heron(), VIEW, at);
    drag(10);
    undo(session.documents);
    drag(20);
    dropGroove(session);
    expect(heron()).toBe(before);
    expect(steps()).toBe(0);
    expect(session.documents.getState().future).toHaveLength(1);
  });

  test('Escape gives a drag up', () => {
    const before = heron();
    const at = handleOf('height', null);
    pressGroove(session, heron(), VIEW, at);
    dragGroove(session, VIEW, { px: at.px, py: at.py - 30 }, false);
    expect(heron().milled?.height).toBe((before.milled?.height ?? 0) + 0.3 * MM);
    expect(giveUpGroove(session)).toBe(true);
    expect(heron()).toBe(before);
    expect(giveUpGroove(session)).toBe(false);
  });

  test('a press on nothing takes nothing; arrow keys move the chosen groove', () => {
    expect(pressGroove(session, heron(), VIEW, { px: 5, py: 5 })).toBe(false);
    expect(nudgeGroove(session, heron(), 'ArrowUp', false)).toBe(false);
    const before = heron().milled?.grooves[1];
    if (!before) throw new Error('no groove');
    const at = handleOf('place', 1);
    pressGroove(session, heron(), VIEW, at);
    dropGroove(session);
    expect(steps()).toBe(0);
    expect(nudgeGroove(session, heron(), 'ArrowUp', true)).toBe(true);
    expect(heron().milled?.grooves[1].bottom).toBe(before.bottom + 0.1 * MM);
    // It is on the right: its root goes in to the left.
    expect(nudgeGroove(session, heron(), 'ArrowLeft', false)).toBe(true);
    expect(heron().milled?.grooves[1].depth).toBe(before.depth + 0.01 * MM);
    expect(steps()).toBe(2);
  });
});

describe('the other half of a pair', () => {
  test('the keyway of a blank is added after it, picked, and one step', () => {
    expect(makeCounterpart(session, heron(), 0.055 * MM)).toBeNull();
    const { document } = session.documents.getState();
    const place = document?.family.profiles.findIndex((p) => p.id === heron().id) ?? -1;
    const made = document?.family.profiles[place + 1];
    expect(made).toMatchObject({ kind: 'opening', name: 'Heron keyway (2)', section: 'Heron' });
    expect(made?.milled).toMatchObject({ thickness: 2.11 * MM, height: 8.51 * MM });
    expect(session.selection.getState()).toMatchObject({ openingId: made?.id, part: 'opening' });
    expect(steps()).toBe(1);
  });

  test('a clearance that leaves nothing is told and changes nothing', () => {
    expect(makeCounterpart(session, profileOf('heron-keyway'), 2 * MM)).toMatch(/smaller clearance/);
    expect(steps()).toBe(0);
  });
});

describe('reading a drawn outline', () => {
  test('a strip is a blade without grooves, used as one step; leaving it changes nothing', () => {
    readAsGrooves(session, profileOf('strip-131'), 10_000);
    expect(leaveAsDrawn(session)).toBe(true);
    expect(steps()).toBe(0);
    readAsGrooves(session, profileOf('strip-131'), 10_000);
    takeGrooves(session, profileOf('strip-131'));
    expect(profileOf('strip-131').milled).toEqual({
      thickness: 1.31 * MM,
      height: 6 * MM,
      backRadius: 0,
      grooves: [],
    });
    expect(profileOf('strip-131').drawn).toBeUndefined();
    expect(steps()).toBe(1);
    undo(session.documents);
    expect(profileOf('strip-131').milled).toBeUndefined();
  });
});
