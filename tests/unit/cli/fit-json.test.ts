import { describe, expect, test } from 'vitest';
import { clearanceUm, type FitJsonInput, toFitJson, writeFitJson } from '../../../src/cli/fit-json.ts';
import type { Collision, Contact, Fit } from '../../../src/fit/fit.ts';
import type { PairDetails } from '../../../src/jobs/describe-family.ts';

const fitOf = (given: Partial<Fit>): Fit => ({
  verdict: 'enters',
  clearance: 52_140,
  accuracy: 50,
  placement: { x: 50_000.4, y: -0.2, tilt: 0 },
  seated: { x: 0, y: 0, tilt: 0 },
  play: { lateral: 104_000, vertical: 103_951 },
  ...given,
});

const CONTACT: Contact = {
  onBlank: { x: 0, y: 0 },
  onOpening: { x: 0, y: 0 },
  blankFeature: { kind: 'corner', index: 3 },
  openingFeature: { kind: 'edge', index: 7 },
  gap: 52_140,
  side: 'left',
  ward: true,
  height: 3_100_400,
};

const COLLISION: Collision = {
  region: [],
  side: 'right',
  ward: false,
  from: 3_099_700,
  to: 4_000_000,
  depth: 420_040,
};

const detailsOf = (given: Partial<PairDetails>): PairDetails => ({
  threeWay: 'always',
  explanation: { gap: 52_140, collisions: [], contacts: [CONTACT] },
  seatOffset: 0,
  ...given,
});

/** A matrix of one pair. */
const onePair = (fit: Partial<Fit>, details: Partial<PairDetails> = {}): FitJsonInput => ({
  matrix: { openings: ['o'], profiles: ['b'], fits: [[fitOf(fit)]] },
  details: [[detailsOf(details)]],
  numberFeature: (_, { kind, index }) => (kind === 'corner' ? { corner: index } : { edge: index }),
});

describe('the JSON of a matrix', () => {
  test('lengths leave the core in the units of their suffix, rounded, fields in their order', () => {
    const json = toFitJson(onePair({}, { seatOffset: -12_340 }));
    const pair = {
      profile: 'b',
      opening: 'o',
      verdict: 'enters',
      clearanceUm: 52.1,
      placement: { dxMm: 0.05, dyMm: 0, tiltDeg: 0 },
      playUm: { lateral: 104, vertical: 104 },
      threeWay: 'always',
      limits: [{ side: 'left', ward: true, atMm: 3.1, gapUm: 52.1, blank: { corner: 3 }, opening: { edge: 7 } }],
      blockedBy: [],
      interferenceUm: 0,
      seatUm: -12.3,
    };
    expect(json).toEqual({ openings: ['o'], profiles: ['b'], pairs: [pair] });
    expect(JSON.stringify(json.pairs[0])).toBe(JSON.stringify(pair));
    expect(Object.is(json.pairs[0].placement.dyMm, 0)).toBe(true);
  });

  test('a blocked pair has its interference above zero, what is in the way, no limits and no seat', () => {
    const json = toFitJson(
      onePair(
        { verdict: 'blocked', clearance: -252_140 },
        {
          threeWay: 'never',
          explanation: { gap: -420_040, collisions: [COLLISION], contacts: [CONTACT] },
          seatOffset: null,
        },
      ),
    );
    expect(json.pairs[0]).toMatchObject({
      threeWay: 'never',
      limits: [],
      blockedBy: [{ side: 'right', ward: false, fromMm: 3.1, toMm: 4, depthUm: 420 }],
      interferenceUm: 252.1,
      seatUm: null,
    });
  });

  test('rounding that looks like a collision does not stand in the way of what goes in', () => {
    const explanation = { gap: -6, collisions: [COLLISION], contacts: [] };
    const [pair] = toFitJson(onePair({ verdict: 'tight', clearance: 0 }, { explanation })).pairs;
    expect([pair.blockedBy, pair.limits, pair.interferenceUm]).toEqual([[], [], 0]);
  });

  test('under wear no corner has a number', () => {
    const [{ limits }] = toFitJson({ ...onePair({}), numberFeature: null }).pairs;
    expect([limits[0].blank, limits[0].opening]).toEqual([null, null]);
  });

  test('a tilt is given in degrees', () => {
    const placement = { x: 0, y: 0, tilt: Math.PI / 90 };
    expect(toFitJson(onePair({ placement })).pairs[0].placement.tiltDeg).toBe(2);
  });

  test('a blocked pair is below zero however little it collides, a contact is zero', () => {
    expect(clearanceUm(fitOf({ verdict: 'blocked', clearance: -12 }))).toBe(-0.1);
    expect(clearanceUm(fitOf({ verdict: 'blocked', clearance: -252_140 }))).toBe(-252.1);
    expect(Object.is(clearanceUm(fitOf({ verdict: 'tight', clearance: 0 })), 0)).toBe(true);
    expect(toFitJson(onePair({ verdict: 'blocked', clearance: -12 })).pairs[0].interferenceUm).toBe(0.1);
  });

  test('margins stand last, only where they were measured, null where there is none', () => {
    const guard = { profile: 'b', opening: 'o', length: 107_480 };
    const clearance = { profile: 'b', opening: 'o', length: 42_510 };
    expect(toFitJson({ ...onePair({}), margins: { guard, clearance } }).margins).toEqual({
      guard: { profile: 'b', opening: 'o', wearUm: 107.5 },
      clearance: { profile: 'b', opening: 'o', clearanceUm: 42.5 },
    });
    const none = toFitJson({ ...onePair({}), margins: { guard: null, clearance: null } });
    expect(none.margins).toEqual({ guard: null, clearance: null });
    expect(Object.keys(JSON.parse(writeFitJson(none)))).toEqual(['openings', 'profiles', 'pairs', 'margins']);
    expect(Object.keys(JSON.parse(writeFitJson(toFitJson(onePair({})))))).toEqual(['openings', 'profiles', 'pairs']);
  });

  test('pairs stand row by row, one to a line, and read back as the same value', () => {
    const row = [fitOf({}), fitOf({})];
    const details = [detailsOf({}), detailsOf({})];
    const json = toFitJson({
      ...onePair({}),
      matrix: { openings: ['o', 'p'], profiles: ['b', 'c'], fits: [row, row] },
      details: [details, details],
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
