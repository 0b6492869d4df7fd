import { expect, test } from 'vitest';
import {
  HEIGHT_MEASURES,
  THICKNESS_MEASURES,
  thicknessText,
  typedText,
  withUnit,
} from '../../../src/app/state/gauge/gauge-lengths.ts';
import { fromTightAt, shownCurves } from '../../../src/app/state/gauge/shown-gauge.ts';
import { holdTool, usualHeight, usualTilt } from '../../../src/app/state/gauge/strip-in-hand.ts';
import { tickAll, tickOpening } from '../../../src/app/state/gauge/tick-openings.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import { readLength } from '../../../src/app/tools/draw/typed-length.ts';
import { openingsOf } from '../../../src/family/family.ts';
import { uprightCurve } from '../../../src/gauge/thickness-curve.ts';
import { demoFamily } from '../../kit/demo-family.ts';
import { fakeDoors } from './fake-doors.ts';

const FAMILY = demoFamily();
const OPENINGS = openingsOf(FAMILY);
const MM = 1e6;

test('the height that is asked first is that of the first tool, else seven tenths of the lowest keyway', () => {
  expect(usualHeight(FAMILY)).toBe(6 * MM);
  const lowest = Math.min(
    ...OPENINGS.map(({ ring }) => Math.max(...ring.map((p) => p.y)) - Math.min(...ring.map((p) => p.y))),
  );
  const height = usualHeight({ ...FAMILY, profiles: OPENINGS });
  expect(height).toBeLessThanOrEqual(0.7 * lowest);
  expect(height % (0.1 * MM)).toBe(0);
  expect(usualHeight({ ...FAMILY, profiles: [] })).toBe(5 * MM);
});

test('the tilt that is tried first is that of the family, else 2 degrees', () => {
  expect(usualTilt(FAMILY)).toBe(FAMILY.tiltLimit);
  expect(usualTilt({ ...FAMILY, tiltLimit: 0 })).toBeCloseTo(Math.PI / 90, 12);
});

test('a straight tool is taken in hand with its size, a shaped one with its height alone', () => {
  const session = makeSession(fakeDoors().doors, null);
  holdTool(session, FAMILY, 'strip-131');
  expect(session.gauge.getState()).toMatchObject({ height: 6 * MM, thickness: 1.31 * MM });
  expect(session.selection.getState().entrantId).toBe('strip-131');
  holdTool(session, FAMILY, 'nose-feeler');
  expect(session.gauge.getState().thickness).toBe(null);
  expect(session.gauge.getState().height).toBeGreaterThan(8 * MM);
});

test('the limit is there once all curves are, and keyways are told from tight to wide', () => {
  const some = OPENINGS.slice(1).map(({ id, ring }) => uprightCurve(id, ring));
  expect(shownCurves(FAMILY, some)).toMatchObject({ complete: false, limit: null });
  const shown = shownCurves(
    FAMILY,
    OPENINGS.map(({ id, ring }) => uprightCurve(id, ring)),
  );
  expect(shown.complete).toBe(true);
  const order = fromTightAt(shown, 6 * MM).map(({ most }) => most);
  expect(order).toEqual([...order].sort((a, b) => a - b));
  expect(order[0]).toBeCloseTo(0.75 * MM, -2);
});

test('all ticked is the same as nothing chosen', () => {
  const session = makeSession(fakeDoors().doors, null);
  const ticked = () => session.gauge.getState().ticked;
  tickOpening(session, OPENINGS, OPENINGS[0].id);
  expect(ticked()?.length).toBe(OPENINGS.length - 1);
  tickOpening(session, OPENINGS, OPENINGS[0].id);
  expect(ticked()).toBe(null);
  tickAll(session, false);
  expect(ticked()).toEqual([]);
});

test('a bare number is in the unit of its field, thousandths of an inch for a thickness', () => {
  const read = (text: string, measure: (typeof THICKNESS_MEASURES)['in']) =>
    readLength(withUnit(text, measure), 'mm', null);
  expect(read('22', THICKNESS_MEASURES.in)).toMatchObject({ ok: true, nm: 558_800 });
  expect(read('20+2', THICKNESS_MEASURES.in)).toMatchObject({ ok: true, nm: 558_800 });
  expect(read('0.55 mm', THICKNESS_MEASURES.in)).toMatchObject({ ok: true, nm: 550_000 });
  expect(read('0.25', HEIGHT_MEASURES.in)).toMatchObject({ ok: true, nm: 6_350_000 });
  expect(read('0,71', THICKNESS_MEASURES.mm)).toMatchObject({ ok: true, nm: 710_000 });
  expect(read('thin', THICKNESS_MEASURES.mm)).toMatchObject({ ok: false });
});

test('the thickest that goes in is never told as more than it is', () => {
  expect(thicknessText(550_999, 'mm')).toBe('0.55 mm');
  expect(thicknessText(766_000, 'mm')).toBe('0.766 mm');
  // 0.75 mm is 29.5275 thousandths.
  expect(thicknessText(750_000, 'in')).toBe('29.5 thou');
  expect(typedText(558_800, THICKNESS_MEASURES.in)).toBe('22');
});
