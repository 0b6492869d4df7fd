// What wear, tilt and tolerance may do to a fit.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { goesIn, judgeFit } from '../../src/fit/judge-fit.ts';
import { goesInTilted, judgeTilted } from '../../src/fit/judge-tilted.ts';
import { judgeTolerance } from '../../src/fit/judge-tolerance.ts';
import { entersWorn, measureWear, WEAR_ACCURACY } from '../../src/fit/measure-wear.ts';
import { growOpening, shrinkBlank } from '../../src/fit/offset-shapes.ts';
import { prepareBlank } from '../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../src/fit/prepare-opening.ts';
import { turnBlank } from '../../src/fit/turn-blank.ts';
import { fitOf, holds, holdsWith, RUNNING } from './blade-pairs.ts';

/** Lengths below are met to within the chords of arcs, nanometres. */
const ARCS = 100;

const LIMIT = (2 * Math.PI) / 180;

describe('wear', () => {
  test('never keeps out what goes in with less of it', () => {
    holdsWith(
      fc.tuple(fc.integer({ min: 0, max: 300 }), fc.integer({ min: 1, max: 200 })),
      ({ opening, blank }, [less, more]) => {
        const shape = prepareOpening(opening);
        const enters = (um: number) => entersWorn(shape, blank, 'both', um * 1e3);
        // A blank worn away altogether does not count as going in.
        const left = shrinkBlank(blank, (less + more) * 1e3) !== null;
        if (left && enters(less)) expect(enters(less + more)).toBe(true);
      },
      30,
    );
  });

  test('of the figure that is told lets the pair in, and a little less does not', () => {
    holds(({ opening, blank }) => {
      const shape = prepareOpening(opening);
      const wear = measureWear(shape, blank, 'both');
      if (wear === 0 || wear === Number.POSITIVE_INFINITY) return;
      expect(entersWorn(shape, blank, 'both', wear + 2 * WEAR_ACCURACY)).toBe(true);
      expect(entersWorn(shape, blank, 'both', Math.max(0, wear - 2 * WEAR_ACCURACY))).toBe(false);
    }, 12);
  });
});

describe('tilt', () => {
  test('within a limit never makes a fit worse, and never claims more than its bound', () => {
    holds(({ opening, blank }) => {
      const upright = fitOf(opening, blank);
      const tilted = judgeTilted(prepareOpening(opening), [blank], RUNNING, LIMIT);
      expect(tilted.clearance).toBeGreaterThanOrEqual(upright.clearance - upright.accuracy - tilted.accuracy);
      expect(Math.abs(tilted.placement.tilt)).toBeLessThanOrEqual(LIMIT);
      if (upright.verdict !== 'blocked') expect(tilted.verdict).not.toBe('blocked');
    }, 8);
  });

  test('blocked at every angle means blocked at each that is tried', () => {
    holdsWith(
      fc.double({ min: -1, max: 1, noNaN: true }),
      ({ opening, blank }, part) => {
        const shape = prepareOpening(opening);
        if (goesInTilted(shape, [blank], LIMIT)) return;
        expect(goesIn(shape, prepareBlank(turnBlank([blank], part * LIMIT)))).toBe(false);
      },
      40,
    );
  });
});

describe('the three-way answer', () => {
  const bands = fc.record({
    blank: fc.integer({ min: 0, max: 150 }).map((um) => um * 1e3),
    opening: fc.integer({ min: 0, max: 150 }).map((um) => um * 1e3),
  });

  test('agrees with the parts at the corners of the bands', () => {
    holdsWith(
      bands,
      ({ opening, blank }, band) => {
        const shape = prepareOpening(opening);
        const fit = judgeFit(shape, prepareBlank(blank), RUNNING);
        const word = judgeTolerance(shape, [blank], fit, band);
        const enters = (fuller: number, wider: number) => {
          const [made, open] = [shrinkBlank(blank, -fuller), growOpening(shape.region, wider)];
          return made !== null && open !== null && goesIn(open, made);
        };
        if (word === 'always') expect(enters(band.blank - ARCS, -(band.opening - ARCS))).toBe(true);
        if (word === 'never') expect(enters(-band.blank, band.opening)).toBe(false);
        const worst = enters(band.blank + ARCS, -(band.opening + ARCS));
        if (worst) expect(word).toBe('always');
      },
      40,
    );
  });

  test('wider bands never make an answer more certain', () => {
    holdsWith(
      fc.tuple(bands, bands),
      ({ opening, blank }, [narrow, more]) => {
        const shape = prepareOpening(opening);
        const fit = judgeFit(shape, prepareBlank(blank), RUNNING);
        const wide = { blank: narrow.blank + more.blank, opening: narrow.opening + more.opening };
        const [first, second] = [narrow, wide].map((band) => judgeTolerance(shape, [blank], fit, band));
        if (first === 'depends') expect(second).toBe('depends');
        else expect([first, 'depends']).toContain(second);
      },
      30,
    );
  });
});
