import { expect, test } from 'vitest';
import {
  askedHeightText,
  askedThicknessText,
  exactHeightText,
  HEIGHT_MEASURES,
  spareText,
  THICKNESS_MEASURES,
  tallestText,
  thicknessFigure,
  thicknessText,
  typedText,
  withUnit,
} from '../../../src/app/state/gauge/gauge-lengths.ts';
import { fromTightAt, shownCurves } from '../../../src/app/state/gauge/shown-gauge.ts';
import {
  holdTool,
  pinchInHand,
  usualHeight,
  usualTilt,
  verdictInHand,
} from '../../../src/app/state/gauge/strip-in-hand.ts';
import { tickAll, tickOpening } from '../../../src/app/state/gauge/tick-openings.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import { readLength } from '../../../src/app/tools/draw/typed-length.ts';
import { openingsOf } from '../../../src/family/family.ts';
import { pinchOnCurve } from '../../../src/gauge/pinch.ts';
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

test('what holds a strip is found once for a height, and anew for another one', () => {
  const [opening] = OPENINGS;
  const curve = uprightCurve(opening.id, opening.ring);
  const pinch = pinchInHand(curve, opening, 6 * MM);
  expect(pinch).toEqual(pinchOnCurve(curve, opening.ring, 6 * MM));
  expect(pinchInHand(curve, opening, 6 * MM)).toBe(pinch);
  expect(pinchInHand(curve, opening, 5 * MM)).toEqual(pinchOnCurve(curve, opening.ring, 5 * MM));
  expect(pinchInHand(curve, opening, 20 * MM)).toBeNull();
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

test('what was asked for is told as asked, the tallest is rounded down', () => {
  expect(askedHeightText(8_000_400, 'mm')).toBe('8.0004 mm');
  expect(askedHeightText(6_000_000, 'mm')).toBe('6 mm');
  expect(askedHeightText(5_994_400, 'in')).toBe('0.236 in');
  expect(askedHeightText(6_000_000, 'in')).toBe('0.236 in');
  expect(askedHeightText(5_996_940, 'in')).toBe('0.2361 in');
  expect(exactHeightText(6_000_000, 'in')).toBe('0.23622 in');
  expect(askedThicknessText(800_000, 'mm')).toBe('0.80 mm');
  expect(askedThicknessText(800_400, 'mm')).toBe('0.8004 mm');
  expect(askedThicknessText(558_800, 'in')).toBe('22.0 thou');
  expect(tallestText(8_200_600, 'mm')).toBe('8.2 mm');
  expect(tallestText(8_000_000, 'mm')).toBe('8 mm');
  expect(tallestText(20_000_000, 'mm')).toBe('20 mm');
  expect(tallestText(8_000_000, 'in')).toBe('0.3149 in');
});

test('nothing is told as 0 that is not', () => {
  expect(thicknessText(400, 'mm')).toBe('less than 0.001 mm');
  expect(thicknessFigure(2_000, 'in')).toBe('less than 0.1 thou');
  expect(tallestText(400, 'mm')).toBe('less than 0.001 mm');
  expect(thicknessText(0, 'mm')).toBe('0.00 mm');
});

test('the verdict on the strip in hand follows strip and running clearance', () => {
  const opening = OPENINGS.find(({ id }) => id === 'rail-keyway') ?? OPENINGS[0];
  const curve = uprightCurve(opening.id, opening.ring);
  const verdictOf = (thickness: number, gap: number) =>
    verdictInHand(curve, opening, { thickness: thickness * MM, height: 6 * MM }, gap);
  expect(verdictOf(0.8, 40_000)).toBe('tight');
  expect(verdictOf(0.8, 20_000)).toBe('enters');
  expect(verdictOf(0.85, 20_000)).toBe('blocked');
  expect(verdictOf(0.76, 40_000)).toBe('enters');
});

test('what is spare is rounded down, what is too much up', () => {
  expect(spareText(50_900, 'mm')).toBe('+0.050 mm');
  expect(spareText(-50_100, 'mm')).toBe('−0.051 mm');
  expect(spareText(-50_000, 'mm')).toBe('−0.050 mm');
  expect(spareText(-200, 'mm')).toBe('−0.001 mm');
  expect(spareText(-200, 'in')).toBe('−0.1 thou');
  expect(spareText(200, 'mm')).toBe('+<0.001 mm');
  expect(spareText(0, 'mm')).toBe('0.000 mm');
});
