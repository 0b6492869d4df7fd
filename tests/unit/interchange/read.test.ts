import { describe, expect, test } from 'vitest';
import { bandsOf } from '../../../src/family/family.ts';
import { boxOf } from '../../../src/geom/point.ts';
import { signedArea } from '../../../src/geom/signed-area.ts';
import { type FamilyDocument, MAX_FAULTS, readFamily } from '../../../src/interchange/json/read.ts';
import { familyValue } from '../../cases/bad-files/nearly-sound.ts';

function documentOf(value: unknown): FamilyDocument {
  const read = readFamily(typeof value === 'string' ? value : JSON.stringify(value));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.document;
}

function faultsOf(value: unknown) {
  const read = readFamily(typeof value === 'string' ? value : JSON.stringify(value));
  return read.ok ? [] : read.faults;
}

const opening = (outline: unknown, more: object = {}) => ({ id: 'o', kind: 'opening', name: 'O', outline, ...more });
const RECTANGLE = [
  [0, 0],
  [2.1, 0],
  [2.1, 8.5],
  [0, 8.5],
];

/** The family file that the format's description gives as its example, word for word. */
const EXAMPLE = `{ "format": "sectionary-family", "version": 1, "name": "...", "units": "mm",
  "runningClearance": 0.04,
  "profiles": [
    { "id": "quill-keyway", "kind": "opening", "section": "Quill", "name": "Quill keyway", "outline": [[0,0],[2.1,0],[2.1,8.5],[0,8.5]] },
    { "id": "quill-blank",  "kind": "blank",   "section": "Quill", "name": "Quill blank",
      "milled": { "thickness": 2.0, "height": 8.4, "grooves": [ { "side": "left", "bottom": 1.2, "width": 0.9, "depth": 0.6 } ] } },
    { "id": "strip", "kind": "tool", "name": "Strip 0.6 x 6", "outline": [[0,0],[0.6,0],[0.6,6],[0,6]] } ] }`;

describe('reading a family file', () => {
  test('the example of the format is read in the core’s terms', () => {
    const { family } = documentOf(EXAMPLE);
    expect(family).toMatchObject({ name: '...', units: 'mm', runningClearance: 40_000 });
    expect(family.profiles.map((p) => [p.id, p.kind, p.section])).toEqual([
      ['quill-keyway', 'opening', 'Quill'],
      ['quill-blank', 'blank', 'Quill'],
      ['strip', 'tool', undefined],
    ]);
    expect(family.profiles[0].ring).toEqual([
      { x: 0, y: 0 },
      { x: 2_100_000, y: 0 },
      { x: 2_100_000, y: 8_500_000 },
      { x: 0, y: 8_500_000 },
    ]);
    expect(family.profiles[0].milled).toBeUndefined();
    expect(family.profiles[1].ring).toHaveLength(8);
    expect(family.profiles[1].milled?.grooves).toEqual([
      { side: 'left', bottom: 1_200_000, width: 900_000, depth: 600_000, flank: 0, rootRadius: 0 },
    ]);
  });

  test('clockwise outlines and a repeated closing point give the same ring', () => {
    const clockwise = [RECTANGLE[0], RECTANGLE[3], RECTANGLE[2], RECTANGLE[1]];
    const rings = [RECTANGLE, [...RECTANGLE, RECTANGLE[0]], clockwise].map(
      (outline) => documentOf(familyValue({ profiles: [opening(outline)] })).family.profiles[0].ring,
    );
    expect(rings[1]).toEqual(rings[0]);
    expect(rings[2]).toEqual(rings[0]);
    expect(signedArea(rings[2])).toBeGreaterThan(0);
  });

  test('decimals become the whole nanometres that were meant', () => {
    const outline = [
      [0.1, 0.2],
      [1.005, 0.3],
      [2.675, 4.35],
      [1.1, 8.4],
    ];
    const { ring } = documentOf(familyValue({ profiles: [opening(outline)] })).family.profiles[0];
    expect(ring.map((p) => [p.x, p.y])).toEqual([
      [100_000, 200_000],
      [1_005_000, 300_000],
      [2_675_000, 4_350_000],
      [1_100_000, 8_400_000],
    ]);
  });

  test('inches are exactly 25.4 mm, for outlines, grooves and running clearance', () => {
    const inch = documentOf(
      familyValue({
        units: 'in',
        runningClearance: 0.0015,
        profiles: [
          opening([
            [0, 0],
            [0.079, 0],
            [0.079, 0.331],
            [0, 0.331],
          ]),
          {
            id: 'b',
            kind: 'blank',
            name: 'B',
            milled: {
              thickness: 0.0787,
              height: 0.33,
              backRadius: 0.01,
              grooves: [{ side: 'right', bottom: 0.05, width: 0.03, depth: 0.02, flankDeg: 10, rootRadius: 0.004 }],
            },
          },
        ],
      }),
    ).family;
    expect(inch.runningClearance).toBe(38_100);
    expect(boxOf(inch.profiles[0].ring)).toEqual({ minX: 0, minY: 0, maxX: 2_006_600, maxY: 8_407_400 });
    expect(inch.profiles[1].milled).toMatchObject({ thickness: 1_998_980, height: 8_382_000, backRadius: 254_000 });
    expect(inch.profiles[1].milled?.grooves[0]).toMatchObject({ bottom: 1_270_000, rootRadius: 101_600 });
    expect(inch.profiles[1].milled?.grooves[0].flank).toBeCloseTo(Math.PI / 18, 12);
  });

  test('tolerance and tilt limit are read in the core’s terms, with their defaults where not given', () => {
    const value = familyValue({
      tolerance: 0.02,
      tiltLimitDeg: 3,
      profiles: [opening(RECTANGLE, { tolerance: 0.0075 })],
    });
    const { family, file } = documentOf(value);
    expect(family.tolerance).toBe(20_000);
    expect(family.tiltLimit).toBeCloseTo(Math.PI / 60, 15);
    expect(family.profiles[0].tolerance).toBe(7_500);
    expect(file).toEqual(value);
    const plain = documentOf(familyValue()).family;
    expect([plain.tolerance, plain.profiles[0].tolerance]).toEqual([0, undefined]);
    expect(plain.tiltLimit).toBeCloseTo(Math.PI / 90, 15);
  });

  test('a tolerance or tilt limit may be 0, or as large as the limit', () => {
    const family = (tolerance: number, tiltLimitDeg: number) =>
      documentOf(familyValue({ tolerance, tiltLimitDeg, profiles: [opening(RECTANGLE, { tolerance })] })).family;
    expect(family(0, 0)).toMatchObject({ tolerance: 0, tiltLimit: 0 });
    expect(family(0, 0).profiles[0].tolerance).toBe(0);
    expect(family(1, 15).tolerance).toBe(1_000_000);
    expect(family(1, 15).tiltLimit).toBeCloseTo(Math.PI / 12, 15);
  });

  test('a tolerance too large does not hide what is wrong with the outline of the same profile', () => {
    const crossed = [
      [0, 0],
      [2, 2],
      [2, 0],
      [0, 2],
    ];
    const faults = faultsOf(familyValue({ profiles: [opening(crossed, { tolerance: 5 })] }));
    expect(faults.map((fault) => fault.path)).toEqual(['profiles[0].tolerance', 'profiles[0].outline[0]']);
  });

  test('the bands of a pair are each part’s own, or the family’s', () => {
    const blank = { id: 'b', kind: 'blank', name: 'B', outline: RECTANGLE };
    const { family } = documentOf(
      familyValue({ tolerance: 0.02, profiles: [opening(RECTANGLE, { tolerance: 0 }), blank] }),
    );
    const [o, b] = family.profiles;
    expect(bandsOf(family, b, o)).toEqual({ blank: 20_000, opening: 0 });
    expect(bandsOf({ ...family, tolerance: 5 }, o, b)).toEqual({ blank: 0, opening: 5 });
  });

  test('chambers, section and a place in between are kept, note stays in the file', () => {
    const said = { chambers: 5, section: 'Heron', inBetween: true };
    const document = documentOf(familyValue({ profiles: [opening(RECTANGLE, { ...said, note: 'as measured' })] }));
    expect(document.family.profiles[0]).toMatchObject(said);
    expect(document.file.profiles[0].note).toBe('as measured');
  });

  test('the file keeps every value as written, unknown fields at every level included', () => {
    const value = familyValue({
      campus: { name: 'Polderwick College', rooms: [1, 2, { deep: null }] },
      constructor: 'kept',
      profiles: [
        {
          ...opening([
            [0, 0],
            [2, 0],
            [2, 8],
            [0, 0],
          ]),
          drawnBy: 'hand',
          prototype: true,
        },
        {
          id: 'b',
          kind: 'blank',
          name: 'B',
          milled: {
            thickness: 2,
            height: 8,
            steel: 'yes',
            grooves: [{ side: 'left', bottom: 1, width: 1, depth: 0.5, cutter: 7 }],
          },
        },
      ],
    });
    expect(documentOf(value).file).toEqual(value);
  });

  test('a byte-order mark in front is no fault', () => {
    expect(documentOf(`\uFEFF${EXAMPLE}`).family.profiles).toHaveLength(3);
  });

  test('coordinates up to 47.453131 mm are read, either side of the origin', () => {
    const outline = [
      [-47.453131, -47.453131],
      [47.453131, -47.453131],
      [47.453131, 47.453131],
    ];
    expect(documentOf(familyValue({ profiles: [opening(outline)] })).family.profiles[0].ring[0].x).toBe(-47_453_131);
    outline[1] = [47.453132, -47.453131];
    expect(faultsOf(familyValue({ profiles: [opening(outline)] }))[0].path).toBe('profiles[0].outline[1]');
  });

  test('an outline of 10,000 points is read', () => {
    const outline = Array.from({ length: 10_000 }, (_, i) => {
      const angle = (2 * Math.PI * i) / 10_000;
      return [4 * Math.cos(angle), 4 * Math.sin(angle)];
    });
    expect(
      documentOf(familyValue({ profiles: [opening([...outline, outline[0]])] })).family.profiles[0].ring,
    ).toHaveLength(10_000);
  });

  test('an outline jagged all over, with more corners than can be judged, is refused with its path', () => {
    const teeth = Array.from({ length: 1_200 }, (_, i) => [2 - (i % 2) * 0.02, (8 * (i + 0.5)) / 1_200]);
    const faults = faultsOf(familyValue({ profiles: [opening([[0, 0], [2, 0], ...teeth, [2, 8], [0, 8]])] }));
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ path: 'profiles[0].outline' });
    expect(faults[0].what).toMatch(/more than 1000 corners/);
  });

  test('faults of shape, geometry and ids are told together, in the order of the file', () => {
    const faults = faultsOf(
      familyValue({
        profiles: [
          opening([
            [0, 0],
            [2, 2],
            [2, 0],
            [0, 2],
          ]),
          opening(RECTANGLE, { kind: 'key' }),
          {
            id: 'b',
            kind: 'blank',
            name: 'B',
            milled: { thickness: 2, height: 8, grooves: [{ side: 'left', bottom: 1, width: 1, depth: 3 }] },
          },
        ],
      }),
    );
    expect(faults.map((fault) => fault.path)).toEqual([
      'profiles[0].outline[0]',
      'profiles[1].kind',
      'profiles[2].milled.grooves[0].depth',
      'profiles[1].id',
    ]);
  });

  test('an unknown unit does not hide what is wrong inside the profiles', () => {
    const paths = faultsOf(familyValue({ units: 'cm', profiles: [opening([[0, 0]])] })).map((fault) => fault.path);
    expect(paths).toEqual(['units', 'profiles[0].outline']);
  });

  test('many faults are told up to a number, then that there are more', () => {
    const profiles = Array.from({ length: 500 }, (_, i) =>
      opening(
        [
          [0, 0],
          [1, 0],
          ['x', 1],
        ],
        { id: `p${i}` },
      ),
    );
    const faults = faultsOf(familyValue({ profiles }));
    expect(faults).toHaveLength(MAX_FAULTS + 1);
    expect(faults[MAX_FAULTS]).toMatchObject({ path: 'file', what: expect.stringMatching(/more faults/) });
  });

  test('100,000 points are refused', () => {
    const points = Array.from({ length: 100_000 }, (_, i) => [i * 1e-4, (i % 7) * 1e-3]);
    const text = JSON.stringify(familyValue({ profiles: [opening(points)] }));
    expect(readFamily(text).ok).toBe(false);
  });

  test.each([undefined, null, 7, {}, []])('what is not text (%j) is a fault, not a crash', (given) => {
    expect(readFamily(given as unknown as string).ok).toBe(false);
  });
});
