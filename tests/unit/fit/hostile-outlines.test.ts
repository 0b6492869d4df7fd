import { describe, expect, test, vi } from 'vitest';
import { TooDetailed } from '../../../src/fit/free-space.ts';
import { judgeFit } from '../../../src/fit/judge-fit.ts';
import { prepareBlank } from '../../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../../src/fit/prepare-opening.ts';
import type { Ring } from '../../../src/geom/ring.ts';
import { soundRing } from '../../kit/shapes.ts';

// A busy machine must not fail a correct answer.
vi.setConfig({ testTimeout: 60_000 });

const judge = (opening: Ring, blank: Ring) => judgeFit(prepareOpening(opening), prepareBlank(blank), 40_000);

/** A regular polygon about the origin. */
function wheel(corners: number, radius: number): Ring {
  const angle = (i: number) => (2 * Math.PI * i) / corners;
  return soundRing(
    Array.from({ length: corners }, (_, i) => ({ x: radius * Math.cos(angle(i)), y: radius * Math.sin(angle(i)) })),
  );
}

/** A rectangle whose right side zigzags so many times. */
function comb(teeth: number, width: number, height: number, depth: number): Ring {
  const right = Array.from({ length: teeth }, (_, i) => ({
    x: width - (i % 2) * depth,
    y: (height * (i + 0.5)) / teeth,
  }));
  return soundRing([{ x: 0, y: 0 }, { x: width, y: 0 }, ...right, { x: width, y: height }, { x: 0, y: height }]);
}

describe('outlines that nobody draws by hand', () => {
  test('five thousand vertices in five thousand: the gap of two circles, within the stated accuracy', () => {
    const fit = judge(wheel(5_000, 4e6), wheel(5_000, 3.9e6));
    expect(fit.verdict).toBe('enters');
    expect(fit.accuracy).toBeGreaterThan(50);
    expect(fit.accuracy).toBeLessThanOrEqual(2_100);
    expect(Math.abs(fit.clearance - 100_000)).toBeLessThanOrEqual(fit.accuracy + 10);
  });

  test('the same outline of five thousand vertices still just touches', () => {
    expect(judge(wheel(5_000, 4e6), wheel(5_000, 4e6))).toMatchObject({ verdict: 'tight', clearance: 0 });
  });

  test('an outline just below the number of vertices that are simplified touches itself too', () => {
    // Spikes keep it from being simplified; its grown copy has more vertices than itself.
    const spiked = soundRing(
      Array.from({ length: 590 }, (_, i) => i).flatMap((i) => {
        const at = (angle: number, radius: number) => ({ x: radius * Math.cos(angle), y: radius * Math.sin(angle) });
        const angle = (2 * Math.PI * i) / 590;
        return i % 100 === 0 ? [at(angle, 4e6), at(angle + 0.002, 4.4e6)] : [at(angle, 4e6)];
      }),
    );
    expect(judge(spiked, spiked)).toMatchObject({ verdict: 'tight', clearance: 0 });
  });

  test('a jagged side against a plain one is judged as it is', () => {
    const fit = judge(
      comb(5_000, 2.1e6, 8.5e6, 2e4),
      soundRing([
        { x: 0, y: 0 },
        { x: 2e6, y: 0 },
        { x: 2e6, y: 8.4e6 },
        { x: 0, y: 8.4e6 },
      ]),
    );
    // 2.1 less the teeth of 0.02 less 2.0 mm: 40 um on either side.
    expect(Math.abs(fit.clearance - 40_000)).toBeLessThan(60);
  });

  test('jagged against jagged is refused in words, not worked at for ever', () => {
    expect(() => judge(comb(5_000, 2.1e6, 8.5e6, 2e4), comb(5_000, 2e6, 8.4e6, 2e4))).toThrow(TooDetailed);
  });

  test('slits without width and needles of one nanometre', () => {
    const needle = soundRing([
      { x: 0, y: 0 },
      { x: 1, y: 0 },
      { x: 1, y: 8e6 },
      { x: 0, y: 8e6 },
    ]);
    expect(judge(needle, needle)).toMatchObject({ verdict: 'tight', clearance: 0 });
    expect(judge(wheel(60, 4.2e6), needle).verdict).toBe('enters');
    expect(judge(needle, wheel(60, 1e6)).verdict).toBe('blocked');
  });

  test('a thing of one nanometre goes into the largest opening there is', () => {
    const tiny = soundRing([
      { x: 0, y: 0 },
      { x: 2, y: 0 },
      { x: 0, y: 2 },
    ]);
    const vast = soundRing([
      { x: -47e6, y: -47e6 },
      { x: 47e6, y: -47e6 },
      { x: 47e6, y: 47e6 },
      { x: -47e6, y: 47e6 },
    ]);
    const fit = judge(vast, tiny);
    expect(fit.verdict).toBe('enters');
    expect(fit.clearance).toBeGreaterThan(46.9e6);
    expect(judge(tiny, vast).verdict).toBe('blocked');
  });
});
