import { describe, expect, test } from 'vitest';
import { checkMilled, type MillFaultKind } from '../../../src/profile/check-milled.ts';
import { millOutline } from '../../../src/profile/mill-outline.ts';
import type { Groove, Milled } from '../../../src/profile/profile.ts';

const MM = 1e6;
const DEG = Math.PI / 180;

/** A groove in millimetres and degrees. */
function groove(side: Groove['side'], bottom: number, width: number, depth: number, flankDeg = 0, root = 0): Groove {
  return {
    side,
    bottom: Math.round(bottom * MM),
    width: Math.round(width * MM),
    depth: Math.round(depth * MM),
    flank: flankDeg * DEG,
    rootRadius: Math.round(root * MM),
  };
}

const blade = (grooves: Groove[], given: Partial<Milled> = {}): Milled => ({
  thickness: 2 * MM,
  height: 8.4 * MM,
  backRadius: 0,
  grooves,
  ...given,
});

interface Case {
  name: string;
  milled: Milled;
  kind: MillFaultKind;
  grooves: number[];
  field: string;
  words: RegExp;
}

const left = groove('left', 1, 1, 0.5);

const CASES: Case[] = [
  {
    name: 'no thickness',
    milled: blade([], { thickness: 0 }),
    kind: 'bad-size',
    grooves: [],
    field: 'thickness',
    words: /thickness.*greater than 0/,
  },
  {
    name: 'negative height',
    milled: blade([], { height: -1 }),
    kind: 'bad-size',
    grooves: [],
    field: 'height',
    words: /height.*greater than 0/,
  },
  {
    name: 'a thickness that is no number',
    milled: blade([], { thickness: Number.NaN }),
    kind: 'bad-size',
    grooves: [],
    field: 'thickness',
    words: /thickness/,
  },
  {
    name: 'negative back radius',
    milled: blade([], { backRadius: -1 }),
    kind: 'bad-size',
    grooves: [],
    field: 'backRadius',
    words: /back radius/,
  },
  {
    name: 'a groove without width',
    milled: blade([left, groove('left', 4, 0, 0.5)]),
    kind: 'bad-size',
    grooves: [1],
    field: 'width',
    words: /width.*greater than 0/,
  },
  {
    name: 'a groove without depth',
    milled: blade([groove('left', 4, 1, 0)]),
    kind: 'bad-size',
    grooves: [0],
    field: 'depth',
    words: /depth.*greater than 0/,
  },
  {
    name: 'a flank that leans the wrong way',
    milled: blade([groove('left', 4, 1, 0.5, -5)]),
    kind: 'bad-size',
    grooves: [0],
    field: 'flank',
    words: /flank angle/,
  },
  {
    name: 'a flat flank',
    milled: blade([groove('left', 4, 1, 0.5, 90)]),
    kind: 'bad-size',
    grooves: [0],
    field: 'flank',
    words: /90 degrees/,
  },
  {
    name: 'a negative root radius',
    milled: blade([groove('left', 4, 1, 0.5, 0, -0.1)]),
    kind: 'bad-size',
    grooves: [0],
    field: 'rootRadius',
    words: /root radius/,
  },
  {
    name: 'a groove below the back',
    milled: blade([groove('left', -0.2, 1, 0.5)]),
    kind: 'groove-off-blade',
    grooves: [0],
    field: 'bottom',
    words: /-0\.2 mm to 0\.8 mm, off the blade/,
  },
  {
    name: 'a groove beyond the upper edge',
    milled: blade([left, groove('right', 8, 1, 0.5)]),
    kind: 'groove-off-blade',
    grooves: [1],
    field: 'width',
    words: /8 mm to 9 mm, off the blade.*8\.4 mm/,
  },
  {
    name: 'a groove over the whole face',
    milled: blade([groove('left', 0, 8.4, 0.5)]),
    kind: 'groove-off-blade',
    grooves: [0],
    field: 'width',
    words: /whole face/,
  },
  {
    name: 'a groove through the blade',
    milled: blade([groove('left', 4, 1, 2.3)]),
    kind: 'groove-through-blade',
    grooves: [0],
    field: 'depth',
    words: /through the blade: depth 2\.3 mm, thickness 2 mm/,
  },
  {
    name: 'a groove just as deep as the blade is thick',
    milled: blade([groove('left', 4, 1, 2)]),
    kind: 'groove-through-blade',
    grooves: [0],
    field: 'depth',
    words: /through the blade/,
  },
  {
    name: 'flanks that meet',
    milled: blade([groove('left', 4, 1, 0.8, 35)]),
    kind: 'flanks-meet',
    grooves: [0],
    field: 'flank',
    words: /flanks meet before the root/,
  },
  {
    name: 'overlapping grooves',
    milled: blade([left, groove('left', 1.8, 1, 0.5)]),
    kind: 'grooves-overlap',
    grooves: [1, 0],
    field: 'bottom',
    words: /left face overlap from 1\.8 mm to 2 mm/,
  },
  {
    name: 'grooves that touch',
    milled: blade([left, groove('left', 2, 1, 0.5)]),
    kind: 'grooves-overlap',
    grooves: [1, 0],
    field: 'bottom',
    words: /touch at 2 mm/,
  },
  {
    name: 'left and right grooves that meet',
    milled: blade([groove('left', 3, 1, 1.1), groove('right', 3.5, 1, 0.9)]),
    kind: 'web-gone',
    grooves: [1, 0],
    field: 'depth',
    words: /meet at height 3\.5 mm: no web/,
  },
  {
    name: 'deep grooves whose corners touch',
    milled: blade([groove('left', 3, 1, 1.2), groove('right', 4, 1, 1.2)]),
    kind: 'web-gone',
    grooves: [1, 0],
    field: 'depth',
    words: /meet at height 4 mm/,
  },
  {
    name: 'a root radius larger than the depth',
    milled: blade([groove('left', 4, 1, 0.3, 0, 0.4)]),
    kind: 'root-radius-too-large',
    grooves: [0],
    field: 'rootRadius',
    words: /root radius 0\.4 mm is too large.*0\.3 mm long/,
  },
  {
    name: 'a root radius larger than half the root',
    milled: blade([left, groove('right', 4, 0.6, 0.5, 0, 0.31)]),
    kind: 'root-radius-too-large',
    grooves: [1],
    field: 'rootRadius',
    words: /need 0\.62 mm of an edge that is 0\.6 mm/,
  },
  {
    name: 'a back radius larger than half the blade',
    milled: blade([], { backRadius: 1.1 * MM }),
    kind: 'back-radius-too-large',
    grooves: [],
    field: 'backRadius',
    words: /back radius is too large/,
  },
  {
    name: 'a groove cut into the rounded back',
    milled: blade([groove('left', 0.3, 1, 0.5)], { backRadius: 0.5 * MM }),
    kind: 'back-radius-too-large',
    grooves: [],
    field: 'backRadius',
    words: /need 0\.5 mm of an edge that is 0\.3 mm/,
  },
];

describe('faults of a milled blade', () => {
  test.each(CASES)('$name', ({ milled, kind, grooves, field, words }) => {
    const faults = checkMilled(milled);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ kind, grooves, field });
    expect(faults[0].message).toMatch(words);
    expect(faults[0].cure.length).toBeGreaterThan(10);
    expect(millOutline(milled)).toEqual(faults[0]);
  });

  test('several faults are told together', () => {
    const faults = checkMilled(blade([groove('left', 4, 1, 2.3), groove('right', 8, 1, 0.5), left, left]));
    expect(faults.map((f) => f.kind)).toEqual(['groove-through-blade', 'groove-off-blade', 'grooves-overlap']);
  });

  test('lengths are written as the reader asks', () => {
    const [fault] = checkMilled(blade([groove('left', 4, 1, 2.54)]), (nm) => `${nm / 25.4e6} in`);
    expect(fault.message).toContain('depth 0.1 in');
  });

  test('of a keyway they speak of its wards', () => {
    const words = (grooves: Groove[]) => {
      const [{ message, cure }] = checkMilled(blade(grooves), undefined, 'opening');
      return `${message}. ${cure}`;
    };
    expect(words([groove('left', 4, 0.5, 0.6, 30)])).toMatch(/a ward 0\.5 mm wide loses .* Make the ward wider/);
    expect(words([groove('left', 4, 1, 2.3)])).toMatch(/the ward goes through the keyway/);
    expect(words([groove('left', 3, 1, 1.1), groove('right', 3, 1, 1.1)])).toMatch(/no passage is left/);
  });

  test('a flank that leans the wrong way is an under-cut, which is drawn as an outline', () => {
    const cureOf = (flank: number) => checkMilled(blade([groove('left', 4, 1, 0.5, flank)]))[0].cure;
    expect(cureOf(-15)).toMatch(/draw an under-cut as an outline/);
    expect(cureOf(95)).not.toMatch(/under-cut/);
  });

  test('grooves at different heights may pass the middle: the blade stays in one piece', () => {
    expect(checkMilled(blade([groove('left', 3, 1, 1.2), groove('right', 4.1, 1, 1.2)]))).toEqual([]);
  });

  test('leaning flanks leave room that square flanks do not', () => {
    const pair = (flankDeg: number) => [groove('left', 3, 1, 1.1, flankDeg), groove('right', 3.95, 1, 1.1, flankDeg)];
    expect(checkMilled(blade(pair(0))).map((f) => f.kind)).toEqual(['web-gone']);
    expect(checkMilled(blade(pair(20)))).toEqual([]);
  });
});
