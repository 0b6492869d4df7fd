import { describe, expect, test } from 'vitest';
import { clearanceUm, toFitJson, writeFitJson } from '../../../src/cli/fit-json.ts';
import type { Fit } from '../../../src/fit/fit.ts';

const fitOf = (given: Partial<Fit>): Fit => ({
  verdict: 'enters',
  clearance: 52_140,
  accuracy: 50,
  placement: { x: 50_000.4, y: -0.2, tilt: 0 },
  seated: { x: 0, y: 0, tilt: 0 },
  play: { lateral: 104_000, vertical: 103_951 },
  ...given,
});

describe('the JSON of a matrix', () => {
  test('lengths leave the core in the units of their suffix, rounded', () => {
    const json = toFitJson({ openings: ['o'], profiles: ['b'], fits: [[fitOf({})]] });
    expect(json).toEqual({
      openings: ['o'],
      profiles: ['b'],
      pairs: [
        {
          profile: 'b',
          opening: 'o',
          verdict: 'enters',
          clearanceUm: 52.1,
          placement: { dxMm: 0.05, dyMm: 0, tiltDeg: 0 },
          playUm: { lateral: 104, vertical: 104 },
        },
      ],
    });
    expect(Object.is(json.pairs[0].placement.dyMm, 0)).toBe(true);
  });

  test('a tilt is given in degrees', () => {
    const placement = { x: 0, y: 0, tilt: Math.PI / 90 };
    expect(
      toFitJson({ openings: ['o'], profiles: ['b'], fits: [[fitOf({ placement })]] }).pairs[0].placement.tiltDeg,
    ).toBe(2);
  });

  test('a blocked pair is below zero however little it collides, a contact is zero', () => {
    expect(clearanceUm(fitOf({ verdict: 'blocked', clearance: -12 }))).toBe(-0.1);
    expect(clearanceUm(fitOf({ verdict: 'blocked', clearance: -252_140 }))).toBe(-252.1);
    expect(Object.is(clearanceUm(fitOf({ verdict: 'tight', clearance: 0 })), 0)).toBe(true);
  });

  test('pairs stand row by row, one to a line, and read back as the same value', () => {
    const json = toFitJson({
      openings: ['o', 'p'],
      profiles: ['b', 'c'],
      fits: [
        [fitOf({}), fitOf({})],
        [fitOf({}), fitOf({})],
      ],
    });
    expect(json.pairs.map((pair) => pair.profile + pair.opening)).toEqual(['bo', 'bp', 'co', 'cp']);
    const text = writeFitJson(json);
    expect(JSON.parse(text)).toEqual(json);
    expect(text.split('\n').filter((line) => line.includes('"verdict"'))).toHaveLength(4);
    expect(JSON.parse(writeFitJson({ openings: [], profiles: [], pairs: [] }))).toEqual({
      openings: [],
      profiles: [],
      pairs: [],
    });
  });
});
