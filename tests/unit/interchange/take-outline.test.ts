import { describe, expect, test } from 'vitest';
import { signedArea } from '../../../src/geom/signed-area.ts';
import { makeDrawn, type Vertex } from '../../../src/geom/vertex.ts';
import type { Drawing, DrawnPath } from '../../../src/interchange/drawing.ts';
import { joinChains } from '../../../src/interchange/join-chains.ts';
import { type Placing, placeLoop } from '../../../src/interchange/place-loop.ts';
import { MANY_CORNERS, takeOutlines } from '../../../src/interchange/take-outline.ts';

const MM = 1e6;
const AS_DRAWN: Placing = { seenFrom: 'bow', quarters: 0, place: 'origin', lighter: false };

type Pair = readonly [number, number, number?];
const at = (points: readonly Pair[], dx = 0, dy = 0): Vertex[] =>
  points.map(([x, y, bulge]) => ({ x: (x + dx) * MM, y: (y + dy) * MM, ...(bulge ? { bulge } : {}) }));
const closed = (points: readonly Pair[], label = '', dx = 0, dy = 0): DrawnPath => ({
  vertices: at(points, dx, dy),
  closed: true,
  label,
});
const open = (points: readonly Pair[], label = ''): DrawnPath => ({ vertices: at(points), closed: false, label });
const drawing = (...paths: DrawnPath[]): Drawing => ({ paths, nmPerUnit: MM, unitsStated: true, notes: [] });
const loopsOf = (...paths: DrawnPath[]) => takeOutlines(drawing(...paths)).loops;

const BLADE: Pair[] = [
  [0, 0],
  [2, 0],
  [2, 8],
  [0, 8],
];
/** A blade with one groove in its left face and a rounded back. */
const GROOVED: Pair[] = [
  [0.5, 0],
  [1.5, 0, Math.tan(Math.PI / 8)],
  [2, 0.5],
  [2, 8],
  [0, 8],
  [0, 4],
  [0.6, 4],
  [0.6, 3],
  [0, 3],
  [0, 0.5, Math.tan(Math.PI / 8)],
];

describe('loops of a drawing', () => {
  test('a closed path far from the origin is measured and stands on its own box', () => {
    const [loop] = loopsOf(closed(GROOVED, 'Heron', 5_000, -300));
    expect(loop).toMatchObject({ label: 'Heron', width: 2 * MM, height: 8 * MM, gaps: [], fault: null, inside: null });
    expect(loop.corner).toEqual({ x: 5_000 * MM, y: -300 * MM });
    expect(placeLoop(loop, AS_DRAWN)).toEqual(at(GROOVED));
  });

  test('a clockwise path is turned round, its first vertex stays first', () => {
    const [loop] = loopsOf(closed([...BLADE].reverse()));
    expect(loop.vertices).toEqual(at([BLADE[3], BLADE[0], BLADE[1], BLADE[2]]));
  });

  test('the box of an arc that reaches further than its vertices counts', () => {
    const [loop] = loopsOf(
      closed([
        [1, 1, 1],
        [3, 1],
        [3, 4],
        [1, 4],
      ]),
    );
    expect([loop.width, loop.height]).toEqual([2 * MM, 4 * MM]);
    expect(Math.min(...loop.vertices.map(({ y }) => y))).toBe(MM);
  });

  test('the same loop drawn again, the other way round and with one vertex more, is told once', () => {
    const again = [
      [0, 8.0005],
      [2, 8],
      [2, 5],
      [2, 0],
      [0, 0],
    ] as Pair[];
    const loops = loopsOf(closed(BLADE, 'first'), closed(again, 'second'), closed(BLADE, 'third', 3));
    expect(loops.map(({ label, repeats }) => [label, repeats])).toEqual([
      ['first', 1],
      ['third', 0],
    ]);
  });

  test('two loops that differ by more than a micrometre are two', () => {
    expect(
      loopsOf(
        closed(BLADE),
        closed([
          [0, 0],
          [2, 0],
          [2, 8.003],
          [0, 8],
        ]),
      ),
    ).toHaveLength(2);
  });

  test('a loop in a loop in a frame names the smallest that holds it', () => {
    const frame = closed(
      [
        [-20, -20],
        [20, -20],
        [20, 20],
        [-20, 20],
      ],
      'frame',
    );
    const hole = closed(
      [
        [0.5, 1],
        [1.5, 1],
        [1, 2],
      ],
      'hole',
    );
    expect(loopsOf(frame, closed(BLADE, 'blade'), hole).map(({ inside }) => inside)).toEqual([null, 0, 1]);
  });

  test('what stands in frames of its own lies in no other, and is the same only under the same name', () => {
    const small = closed(
      [
        [0.5, 1],
        [1.5, 1],
        [1, 2],
      ],
      'small',
    );
    const { loops } = takeOutlines(
      drawing(closed(BLADE, 'five'), closed(BLADE, 'six'), closed(BLADE, 'six'), small),
      true,
    );
    expect(loops.map(({ label, inside, repeats }) => [label, inside, repeats])).toEqual([
      ['five', null, 0],
      ['six', null, 1],
      ['small', null, 0],
    ]);
  });

  test('a crossing loop is shown with the place of its crossing and is not sound', () => {
    const [loop] = loopsOf(
      closed([
        [10, 10],
        [12, 18],
        [12, 10],
        [10, 18],
      ]),
    );
    expect(loop.fault).toEqual({ kind: 'self-crossing', at: { x: MM, y: 4 * MM } });
    expect([loop.width, loop.height]).toEqual([2 * MM, 8 * MM]);
  });

  test('a loop beyond 47 mm is told as too large, with its size', () => {
    const [loop] = loopsOf(closed(BLADE.map(([x, y]): Pair => [x * 25.4, y * 25.4])));
    expect(loop.fault?.kind).toBe('too-large');
    expect(loop.height).toBeCloseTo(8 * 25.4 * MM, 0);
  });

  test('single lines and numbers that are none are left out and told', () => {
    const { loops, notes } = takeOutlines(
      drawing(
        closed(BLADE),
        open([
          [0, 0],
          [5, 5],
        ]),
        closed([
          [0, 0],
          [Number.NaN, 1],
          [1, 1],
        ]),
        open([
          [50, 0],
          [50, 9],
        ]),
      ),
    );
    expect(loops).toHaveLength(1);
    expect(notes.map(({ what }) => what)).toEqual([
      '1 path has coordinates that are no numbers',
      '2 lines enclose nothing and are left out',
    ]);
  });

  test('an empty drawing has no loops', () => {
    expect(takeOutlines(drawing())).toEqual({ loops: [], notes: [] });
  });

  test('very many corners: a lighter outline is offered that stays within its limit', () => {
    const points = Array.from({ length: 3_000 }, (_, i): Pair => {
      const turn = (2 * Math.PI * i) / 3_000;
      return [4 + Math.cos(turn), 4 + 3 * Math.sin(turn)];
    });
    const [loop] = loopsOf(closed(points));
    expect(loop.vertices).toHaveLength(3_000);
    const lighter = placeLoop(loop, { ...AS_DRAWN, lighter: true });
    expect(lighter.length).toBeLessThan(MANY_CORNERS);
    // The area between the two is at most the limit along the whole girth (about 13.4 mm), 450 nm wide.
    expect(Math.abs(signedArea(lighter) - signedArea(loop.vertices))).toBeLessThan(450 * 13.4 * MM);
  });
});

describe('open chains', () => {
  const sides = [
    open([BLADE[0], BLADE[1]], 'Snipe'),
    open([BLADE[2], BLADE[1]]),
    open([BLADE[3], BLADE[2]]),
    open([BLADE[3], BLADE[0]]),
  ];

  test('lines that meet make a closed loop without gaps, whichever way each runs', () => {
    const [loop, ...more] = loopsOf(...sides);
    expect(more).toEqual([]);
    expect(loop).toMatchObject({ label: 'Snipe', gaps: [], fault: null, width: 2 * MM, height: 8 * MM });
    expect(loop.vertices).toHaveLength(4);
  });

  test('an open chain says how wide its gap is', () => {
    const [loop] = loopsOf(
      open(
        [
          [0, 0.2],
          [0, 0],
          [2, 0],
          [2, 8],
          [0, 8],
          [0, 0.3],
        ],
        'Teal',
      ),
    );
    expect(loop.gaps.map(Math.round)).toEqual([0.1 * MM]);
    expect(loop.fault).toBeNull();
  });

  test('several chains with gaps between them tell each, the longest first', () => {
    const loops = loopsOf(
      open([
        [0, 0],
        [2, 0],
        [2, 8],
      ]),
      open([
        [1.95, 8],
        [0, 8],
        [0, 0.2],
      ]),
    );
    expect(loops).toHaveLength(1);
    expect(loops[0].gaps.map(Math.round)).toEqual([200_000, 50_000]);
  });

  test('chains that are far apart stay two', () => {
    const u = (dx: number) =>
      open([
        [dx, 8],
        [dx, 0],
        [dx + 2, 0],
        [dx + 2, 8],
      ]);
    expect(loopsOf(u(0), u(30)).map(({ gaps }) => gaps.map(Math.round))).toEqual([[2 * MM], [2 * MM]]);
  });

  test('an arc that is run back keeps to its side: vertices and signs as worked out by hand', () => {
    // Up the right side, over the top, down the left one, and a half circle below that bulges downwards (y = -1 at
    // its lowest). Drawn from left to right it turns left, drawn from right to left it turns right.
    const sides = open([
      [2, 0],
      [2, 5],
      [0, 5],
      [0, 0],
    ]);
    const outline = at([
      [2, 0],
      [2, 5],
      [0, 5],
      [0, 0, 1],
    ]);
    const forth = open([
      [0, 0, 1],
      [2, 0],
    ]);
    const back = open([
      [2, 0, -1],
      [0, 0],
    ]);
    for (const arc of [forth, back]) {
      const [loop] = joinChains([sides, arc]);
      expect(loop.gaps).toEqual([]);
      expect(loop.vertices).toEqual(outline);
    }
    expect(loopsOf(sides, back)[0].height).toBe(6 * MM);
  });

  test('ends 0.9 um apart are one point, ends 1.1 um apart are a gap', () => {
    const blade = (foot: number) =>
      open([
        [0, foot],
        [0, 8],
        [2, 8],
        [2, 0],
        [0, 0],
      ]);
    expect(loopsOf(blade(0.0009))[0].gaps).toEqual([]);
    expect(loopsOf(blade(0.0011))[0].gaps.map(Math.round)).toEqual([1_100]);
  });

  test('ends are brought together over 4 of a hundred of the span, not over 6', () => {
    // Two halves of a loop 10 wide, their ends the same distance apart at top and bottom.
    const halves = (gap: number) => [
      open([
        [0, 0],
        [-5, 0],
        [-5, 1],
        [0, 1],
      ]),
      open([
        [gap, 0],
        [5 + gap, 0],
        [5 + gap, 1],
        [gap, 1],
      ]),
    ];
    expect(loopsOf(...halves(0.4))).toHaveLength(1);
    expect(loopsOf(...halves(0.4))[0].gaps.map(Math.round)).toEqual([400_000, 400_000]);
    expect(loopsOf(...halves(0.65)).map(({ gaps }) => gaps.map(Math.round))).toEqual([[MM], [MM]]);
  });

  test('two loops of one box that differ inside it are two', () => {
    const grooved = (height: number) =>
      closed([...BLADE, [0, height + 1], [0.5, height + 1], [0.5, height], [0, height]]);
    expect(loopsOf(grooved(2), grooved(5)).map(({ repeats }) => repeats)).toEqual([0, 0]);
  });
});

describe('placing', () => {
  const [loop] = loopsOf(closed(GROOVED, '', 3, 4));

  test('seen from the tip, left and right change places', () => {
    const seen = placeLoop(loop, { ...AS_DRAWN, seenFrom: 'tip' });
    const made = makeDrawn(seen);
    expect(made.ok && made.drawn).toEqual(seen);
    expect(seen.some(({ x, y }) => x === 1.4 * MM && y === 3 * MM)).toBe(true);
    expect(signedArea(seen)).toBeCloseTo(signedArea(loop.vertices), 0);
  });

  test('a mirrored arc bows to the same side of its section, by hand', () => {
    // A half circle to the right of a slender blade: seen from the tip it is on the left.
    const [blade] = loopsOf(
      closed([
        [0, 0],
        [1, 0],
        [1, 2, 1],
        [1, 4],
        [1, 8],
        [0, 8],
      ]),
    );
    expect(placeLoop(blade, { ...AS_DRAWN, seenFrom: 'tip' })).toEqual(
      at([
        [2, 0],
        [2, 8],
        [1, 8],
        [1, 4, 1],
        [1, 2],
        [1, 0],
      ]),
    );
  });

  test('mirrored twice, or turned four times, it is itself to the nanometre', () => {
    const twice = placeLoop(
      { ...loop, vertices: placeLoop(loop, { ...AS_DRAWN, seenFrom: 'tip' }) },
      { ...AS_DRAWN, seenFrom: 'tip' },
    );
    expect(twice).toEqual(loop.vertices);
    let turned = loop;
    for (let i = 0; i < 4; i++) turned = { ...turned, vertices: placeLoop(turned, { ...AS_DRAWN, quarters: 1 }) };
    expect(turned.vertices).toEqual(loop.vertices);
    expect(placeLoop(loop, { ...AS_DRAWN, quarters: -1 })).toEqual(placeLoop(loop, { ...AS_DRAWN, quarters: 3 }));
  });

  test('a quarter turn to the left lays the blade on its left face', () => {
    const [plain] = loopsOf(closed(BLADE));
    const laid = placeLoop(plain, { ...AS_DRAWN, quarters: 1 });
    expect(laid).toEqual(
      at([
        [8, 0],
        [8, 2],
        [0, 2],
        [0, 0],
      ]),
    );
  });

  test("the drawing's place is kept where it is asked for", () => {
    expect(placeLoop(loop, { ...AS_DRAWN, place: 'drawing' })).toEqual(at(GROOVED, 3, 4));
  });
});
