import { describe, expect, test } from 'vitest';
import { containsExactly, rationalOf } from '../../../src/fit/contain-exactly.ts';
import { goesIn, judgeEntry, judgeFit, UNMEASURED } from '../../../src/fit/judge-fit.ts';
import { prepareBlank } from '../../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../../src/fit/prepare-opening.ts';
import type { Region } from '../../../src/geom/region.ts';
import { polygonPair } from '../../cases/polygon-pairs.ts';
import { judge } from '../../kit/judge.ts';
import { boxOfMm, ringOfMm, soundRing } from '../../kit/shapes.ts';

const blade = boxOfMm(2, 8.4);
/** A slot that leaves the blade `gap` nanometres on either side, and ample height. */
const slotFor = (gap: number) => boxOfMm(2 + (2 * gap) / 1e6, 9);

describe('the verdict', () => {
  test('exactly the running clearance enters, a nanometre less is tight', () => {
    expect(judge(slotFor(40_000), blade, 40_000).verdict).toBe('enters');
    expect(judge(slotFor(39_998.5), blade, 40_000).verdict).toBe('tight');
    expect(judge(slotFor(40_001), blade, 40_000).verdict).toBe('enters');
    expect(judge(slotFor(40_000), blade, 40_002).verdict).toBe('tight');
  });

  test('on a slant and in corners the border is as sharp', () => {
    const hexagon = (radius: number) =>
      soundRing(
        Array.from({ length: 6 }, (_, i) => ({
          x: radius * Math.cos((Math.PI * i) / 3),
          y: radius * Math.sin((Math.PI * i) / 3),
        })),
      );
    const gap = 1e5 * Math.sqrt(0.75);
    expect(judge(hexagon(4e6), hexagon(3.9e6), gap - 2).verdict).toBe('enters');
    expect(judge(hexagon(4e6), hexagon(3.9e6), gap + 3).verdict).toBe('tight');
  });

  test('contact is tight with clearance 0, a nanometre short is blocked', () => {
    expect(judge(slotFor(0), blade)).toMatchObject({ verdict: 'tight', clearance: 0, accuracy: 0 });
    expect(judge(slotFor(0.5), blade)).toMatchObject({ verdict: 'tight', clearance: 0.5 });
    expect(judge(slotFor(-0.5), blade).verdict).toBe('blocked');
    expect(judge(slotFor(-0.5), blade).clearance).toBeLessThan(0);
  });

  test('a neck narrower than the blank does not matter: blades go in endwise', () => {
    const keyhole = ringOfMm([
      [0, 0],
      [3, 0],
      [3, 3],
      [2, 3],
      [2, 6],
      [1, 6],
      [1, 3],
      [0, 3],
    ]);
    expect(judge(keyhole, boxOfMm(2, 2))).toMatchObject({ verdict: 'enters', clearance: 500_000 });
  });

  test('undercut dovetails: the blank equal to its keyway is a contact, thinned by 20 um it enters', () => {
    const dovetail = (head: number) =>
      ringOfMm([
        [0, 0],
        [2, 0],
        [2, 8.4],
        [0, 8.4],
        [0, 5],
        [0.6, 5 + head],
        [0.6, 4 - head],
        [0, 4],
      ]);
    expect(judge(dovetail(0.2), dovetail(0.2))).toMatchObject({ verdict: 'tight', clearance: 0 });
    expect(judge(dovetail(0.2), dovetail(0.1)).verdict).toBe('blocked');
    const slim = ringOfMm([
      [0.02, 0.02],
      [1.98, 0.02],
      [1.98, 8.38],
      [0.02, 8.38],
      [0.02, 5.1],
      [0.62, 5.3],
      [0.62, 3.7],
      [0.02, 3.9],
    ]);
    expect(judge(dovetail(0.2), slim, 10_000).verdict).toBe('enters');
  });

  test('the smallest profiles: one nanometre square', () => {
    const speck = (size: number) => boxOfMm(size / 1e6, size / 1e6);
    expect(judge(speck(1), speck(1))).toMatchObject({ verdict: 'tight', clearance: 0 });
    expect(judge(speck(2), speck(1))).toMatchObject({ verdict: 'tight', clearance: 0.5 });
    expect(judge(speck(1), speck(2)).verdict).toBe('blocked');
  });

  test('a keyway round an island', () => {
    const outer = boxOfMm(6, 6);
    const island = ringOfMm([
      [2.5, 2.5],
      [3.5, 2.5],
      [3.5, 3.5],
      [2.5, 3.5],
    ]);
    const opening: Region = [{ outer, holes: [[...island].reverse()] }];
    expect(judge(opening, boxOfMm(2, 2)).verdict).toBe('enters');
    expect(judge(opening, boxOfMm(2.5, 2.5))).toMatchObject({ verdict: 'tight', clearance: 0 });
    expect(judge(opening, boxOfMm(2.500001, 2.500001)).verdict).toBe('blocked');
  });
});

describe('play and the seated placement', () => {
  test('play is what the boxes leave; seated is at the bottom, half way across', () => {
    const fit = judge(boxOfMm(2.1, 8.7), blade);
    expect(fit.play).toEqual({ lateral: 100_000, vertical: 300_000 });
    expect(fit.seated.x).toBeCloseTo(50_000, 3);
    expect(fit.seated.y).toBeCloseTo(0, 3);
  });

  test('seated beside a sill in the middle of the floor, not on it: one of the two lowest places', () => {
    const sill = ringOfMm([
      [0, 0],
      [0.8, 0],
      [0.8, 1],
      [1.3, 1],
      [1.3, 0],
      [2.1, 0],
      [2.1, 8.5],
      [0, 8.5],
    ]);
    const { seated } = judge(sill, boxOfMm(0.6, 6));
    expect(seated.y).toBeCloseTo(0, 3);
    const places = [seated.x, 1.5e6 - seated.x].filter((x) => x >= 0 && x <= 0.2e6);
    expect(places).toHaveLength(1);
  });

  test('play counts the piece of the best placement only', () => {
    const opening = ringOfMm([
      [0, 0],
      [3, 0],
      [3, 1],
      [5, 1],
      [5, 0],
      [9, 0],
      [9, 3.2],
      [5, 3.2],
      [5, 2],
      [3, 2],
      [3, 3],
      [0, 3],
    ]);
    const { play } = judge(opening, boxOfMm(2, 2));
    expect(play.lateral).toBeCloseTo(2e6, 3);
    expect(play.vertical).toBeCloseTo(1.2e6, 3);
  });

  test('two parts of a piece joined by a strip thinner than a tenth of a nanometre are one piece', () => {
    const { opening, blank } = polygonPair(435);
    const { play } = judge(soundRing(opening.outer), soundRing(blank));
    expect(play.lateral / 1e6).toBeCloseTo(4.66195, 4);
    expect(play.vertical / 1e6).toBeCloseTo(4.185434, 4);
  });

  test('in contact the play is the length of the contact', () => {
    expect(judge(slotFor(0), blade).play).toEqual({ lateral: 0, vertical: 600_000 });
    expect(judge(blade, blade).play).toEqual({ lateral: 0, vertical: 0 });
  });

  test('three equal chambers in contact: no play', () => {
    const opening = ringOfMm([
      [0, 0],
      [2, 0],
      [2, 0.5],
      [4, 0.5],
      [4, 0],
      [6, 0],
      [6, 0.5],
      [8, 0.5],
      [8, 0],
      [10, 0],
      [10, 2],
      [8, 2],
      [8, 1.5],
      [6, 1.5],
      [6, 2],
      [4, 2],
      [4, 1.5],
      [2, 1.5],
      [2, 2],
      [0, 2],
    ]);
    expect(judge(opening, boxOfMm(2, 2)).play).toEqual({ lateral: 0, vertical: 0 });
  });

  test('blocked: none', () => {
    expect(judge(slotFor(-1000), blade).play).toEqual({ lateral: 0, vertical: 0 });
  });
});

describe('cheaper questions', () => {
  const [opening, tooSmall] = [prepareOpening(slotFor(50_000)), prepareOpening(slotFor(-50_000))];
  const blank = prepareBlank(blade);

  test('entry alone agrees with the whole answer, and leaves a blocked pair unmeasured', () => {
    expect(judgeEntry(opening, blank, 40_000)).toEqual(judgeFit(opening, blank, 40_000));
    expect(judgeEntry(tooSmall, blank, 40_000)).toBe(UNMEASURED);
  });

  test('whether it goes in at all, contact included', () => {
    expect(goesIn(opening, blank)).toBe(true);
    expect(goesIn(tooSmall, blank)).toBe(false);
    expect(goesIn(prepareOpening(slotFor(0)), blank)).toBe(true);
    expect(goesIn(prepareOpening(slotFor(-0.5)), blank)).toBe(false);
  });

  test('a prepared shape answers the same every time', () => {
    const first = judgeFit(tooSmall, blank, 40_000);
    judgeFit(tooSmall, prepareBlank(boxOfMm(3, 3)), 40_000);
    expect(judgeFit(tooSmall, blank, 40_000)).toEqual(first);
  });
});

test('the seat over a sill is on one side of it, not in the middle', () => {
  const sill: [number, number][] = [
    [0, 0],
    [0.8, 0],
    [0.8, 1],
    [1.3, 1],
    [1.3, 0],
    [2.1, 0],
    [2.1, 8.5],
    [0, 8.5],
  ];
  const fit = judgeFit(prepareOpening(ringOfMm(sill)), prepareBlank(boxOfMm(0.6, 6)), 40_000);
  expect(fit.seated.y).toBeCloseTo(0, 6);
  const inside = containsExactly([ringOfMm(sill)], boxOfMm(0.6, 6), rationalOf(fit.seated));
  expect(inside).toBe(true);
});
