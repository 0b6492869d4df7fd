import { expect, test } from 'vitest';
import { checkMilled } from '../../../src/profile/check-milled.ts';
import {
  addGroove,
  copyOfGroove,
  freeStretches,
  grooveKind,
  mirrorMilled,
  moveToOtherFace,
  newGroove,
  newStep,
  removeGroove,
  setBladeSize,
  setGroove,
} from '../../../src/profile/edit-milled.ts';
import type { Groove, Milled } from '../../../src/profile/profile.ts';

const MM = 1e6;
const USUAL = { width: 0.8 * MM, depth: 0.6 * MM, step: 10_000 };

const left: Groove = { side: 'left', bottom: 2 * MM, width: MM, depth: 0.5 * MM, flank: 0, rootRadius: 0 };
const topStep: Groove = { ...left, side: 'right', bottom: 7 * MM, width: MM };
const blade: Milled = { thickness: 2 * MM, height: 8 * MM, backRadius: 0.4 * MM, grooves: [left, topStep] };

test('sizes are set; a step at the top goes along with the height and keeps its width', () => {
  expect(setBladeSize(blade, 'thickness', 2.2 * MM)).toEqual({ ...blade, thickness: 2.2 * MM });
  const taller = setBladeSize(blade, 'height', 9 * MM);
  expect(taller.grooves[1]).toEqual({ ...topStep, bottom: 8 * MM });
  expect(setBladeSize(taller, 'height', 8 * MM)).toEqual(blade);
});

test('a step at the top stays there when its width or bottom is set', () => {
  expect(setGroove(blade, 1, 'width', 1.5 * MM).grooves[1]).toMatchObject({ bottom: 6.5 * MM, width: 1.5 * MM });
  expect(setGroove(blade, 1, 'bottom', 6 * MM).grooves[1]).toMatchObject({ bottom: 6 * MM, width: 2 * MM });
  expect(setGroove(blade, 0, 'depth', 0.7 * MM).grooves[0]).toEqual({ ...left, depth: 0.7 * MM });
});

test('edits invert: adding and removing, moving across twice, mirroring twice', () => {
  expect(removeGroove(addGroove(blade, { ...left, bottom: 5 * MM }), 2)).toEqual(blade);
  expect(moveToOtherFace(moveToOtherFace(blade, 0), 0)).toEqual(blade);
  expect(moveToOtherFace(blade, 0).grooves[0].side).toBe('right');
  expect(mirrorMilled(mirrorMilled(blade))).toEqual(blade);
  expect(mirrorMilled(blade).grooves.map((g) => g.side)).toEqual(['right', 'left']);
});

test('a face is free between its grooves and above the rounded back', () => {
  expect(freeStretches(blade, 'left')).toEqual([
    { from: 0.4 * MM, to: 2 * MM },
    { from: 3 * MM, to: 8 * MM },
  ]);
  expect(freeStretches(blade, 'right')).toEqual([{ from: 0.4 * MM, to: 7 * MM }]);
});

test('five new grooves and a step can always be milled into a plain blade', () => {
  let milled: Milled = { ...blade, grooves: [] };
  for (const side of ['left', 'right', 'left', 'right', 'left'] as const) {
    const groove = newGroove(milled, side, USUAL);
    if (!groove) throw new Error('no room');
    milled = addGroove(milled, groove);
    expect(checkMilled(milled)).toEqual([]);
  }
  const step = newStep(milled, 'right', 'back', USUAL);
  if (!step) throw new Error('no room for a step');
  milled = addGroove(milled, step);
  expect(grooveKind(step, milled.height)).toBe('step at the back');
  expect(checkMilled(milled)).toEqual([]);
  expect(newStep(milled, 'right', 'back', USUAL)).toBeNull();
});

test('a copy goes where there is room, on the other face where its own is full', () => {
  expect(copyOfGroove(blade, 0, USUAL.step)).toMatchObject({ side: 'left', bottom: 5 * MM });
  const full = { ...blade, grooves: [{ ...left, bottom: 1 * MM, width: 5 * MM }] };
  expect(copyOfGroove(full, 0, USUAL.step)).toMatchObject({ side: 'right' });
  const both = {
    ...full,
    grooves: [...full.grooves, { ...left, side: 'right' as const, bottom: 1 * MM, width: 5 * MM }],
  };
  expect(copyOfGroove(both, 0, USUAL.step)).toBeNull();
});

test('a face without room takes no groove', () => {
  const full: Milled = { ...blade, backRadius: 0, grooves: [{ ...left, bottom: 0, width: 7.99 * MM }] };
  expect(newGroove(full, 'left', USUAL)).toBeNull();
});
