import { describe, expect, test } from 'vitest';
import type { Fit } from '../../../src/fit/fit.ts';
import { verifyFit } from '../../../src/fit/verify-fit.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import { keywayPair } from '../../cases/keyway-pairs.ts';
import { judge } from '../../kit/judge.ts';
import { boxOfMm, ringOfMm, soundRing, wardedKeyway } from '../../kit/shapes.ts';

const blade = boxOfMm(2, 8.4);
const roomy = boxOfMm(2.1, 8.5);
const warded = wardedKeyway(0.6);

/** The faults found in a right fit after it was falsified. */
function faultsOf(opening: Ring, blank: Ring, falsify: (fit: Fit) => Partial<Fit>): string[] {
  const fit = judge(opening, blank);
  expect(verifyFit(opening, blank, fit)).toEqual([]);
  return verifyFit(opening, blank, { ...fit, ...falsify(fit) });
}

describe('a right fit is confirmed', () => {
  test.each([
    ['entering', roomy, blade],
    ['tight', boxOfMm(2.02, 8.5), blade],
    ['in contact', boxOfMm(2, 8.5), blade],
    ['equal', warded, warded],
    ['blocked by a ward', warded, blade],
    ['blocked all round', blade, boxOfMm(2.3, 9)],
    ['blocked by a nanometre', boxOfMm(1.999999, 8.5), blade],
  ])('%s', (_, opening, blank) => {
    expect(verifyFit(opening, blank, judge(opening, blank))).toEqual([]);
  });

  test('in random keyways', () => {
    for (let seed = 0; seed < 8; seed++) {
      const pair = keywayPair(seed, 20);
      const [opening, blank] = [soundRing(pair.opening.outer), soundRing(pair.blank)];
      expect(verifyFit(opening, blank, judge(opening, blank))).toEqual([]);
    }
  });
});

describe('a wrong fit is told, in words', () => {
  test('more clearance than there is', () => {
    const faults = faultsOf(roomy, blade, ({ clearance }) => ({ clearance: clearance + 20 }));
    expect(faults.join()).toContain('less than the stated');
  });

  test('less clearance than there is', () => {
    const faults = faultsOf(roomy, blade, ({ clearance }) => ({ clearance: clearance - 3_000 }));
    expect(faults.join()).toContain('exists');
  });

  test.each([
    [60_000, 0],
    [0, -60_000],
  ])('a placement in the plug: moved by (%i, %i)', (x, y) => {
    const faults = faultsOf(roomy, blade, ({ placement }) => ({
      placement: { ...placement, x: placement.x + x, y: placement.y + y },
    }));
    expect(faults.join()).toContain('not inside');
  });

  test('a placement that is good but not the best, with the best clearance', () => {
    const faults = faultsOf(roomy, blade, ({ placement }) => ({
      placement: { ...placement, x: placement.x + 20_000 },
    }));
    expect(faults.join()).toContain('less than the stated');
  });

  test('a turned placement', () => {
    const faults = faultsOf(roomy, blade, ({ placement }) => ({ placement: { ...placement, tilt: 0.05 } }));
    expect(faults.length).toBeGreaterThan(0);
  });

  test('blocked made to enter', () => {
    const faults = faultsOf(warded, blade, () => ({ verdict: 'enters', clearance: 50_000 }));
    expect(faults.join()).toContain('not inside');
  });

  test('blocked made a contact', () => {
    const faults = faultsOf(warded, blade, () => ({ verdict: 'tight', clearance: 0 }));
    expect(faults.join()).toContain('not inside');
  });

  test('entering made blocked', () => {
    const faults = faultsOf(roomy, blade, () => ({ verdict: 'blocked', clearance: -200_000 }));
    expect(faults.join()).toContain('already goes in');
  });

  test('entering made blocked by almost nothing', () => {
    const faults = faultsOf(roomy, blade, () => ({ verdict: 'blocked', clearance: -300, accuracy: 300 }));
    expect(faults.join()).toContain('already goes in');
  });

  test('too little interference', () => {
    const faults = faultsOf(warded, blade, ({ clearance }) => ({ clearance: clearance + 5_000 }));
    expect(faults.join()).toContain('deeper than the stated');
  });

  test('too much interference', () => {
    const faults = faultsOf(warded, blade, ({ clearance }) => ({ clearance: clearance - 5_000 }));
    expect(faults.join()).toContain('already goes in');
  });

  test('the placement of another collision', () => {
    const faults = faultsOf(warded, blade, ({ placement }) => ({
      placement: { ...placement, x: placement.x + 50_000 },
    }));
    expect(faults.join()).toContain('deeper than the stated');
  });
});

describe('regions and parts', () => {
  test('a keyway with an island is checked as one', () => {
    const island = ringOfMm([
      [2.5, 2.5],
      [3.5, 2.5],
      [3.5, 3.5],
      [2.5, 3.5],
    ]);
    const opening = [{ outer: boxOfMm(6, 6), holes: [[...island].reverse()] }];
    const blank = boxOfMm(2, 2);
    const fit = judge(opening, blank);
    expect(verifyFit(opening, blank, fit)).toEqual([]);
    const over = { ...fit, placement: { ...fit.placement, x: 2e6, y: 2e6 } };
    expect(verifyFit(opening, blank, over).length).toBeGreaterThan(0);
  });
});
