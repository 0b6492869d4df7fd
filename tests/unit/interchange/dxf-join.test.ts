import { describe, expect, it } from 'vitest';
import type { Vertex } from '../../../src/geom/vertex.ts';
import type { Chain } from '../../../src/interchange/dxf/chain.ts';
import { dropDuplicates } from '../../../src/interchange/dxf/drop-duplicates.ts';
import { gatherNotes } from '../../../src/interchange/dxf/gather-notes.ts';
import { makePaths } from '../../../src/interchange/dxf/make-paths.ts';
import { drawnArea } from '../../cases/drawn-shape.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';

type Given = readonly (readonly [number, number, number?])[];

/** A line through points in micrometres, each with the bulge of the edge that leaves it. */
function chain(points: Given, more: Partial<Chain> = {}): Chain {
  const vertices: Vertex[] = points.map(([x, y, bulge = 0]) => ({ x: x * 1e3, y: y * 1e3, bulge }));
  return { vertices, closed: false, label: '', line: 1, firm: [true, true], ...more };
}

function join(chains: readonly Chain[]) {
  const notes = gatherNotes();
  const paths = makePaths(chains, notes);
  return { paths, closed: paths.filter((path) => path.closed), notes: notes.list().map(({ what }) => what) };
}

/** The four sides of a square of `size` um. */
const sides = (x: number, y: number, size: number): Chain[] => {
  const corners = [
    [x, y],
    [x + size, y],
    [x + size, y + size],
    [x, y + size],
  ] as const;
  return corners.map((corner, i) => chain([corner, corners[(i + 1) % 4]]));
};

describe('joining', () => {
  it('closes a gap of 1 um silently, of 10 um with a note, and no wider one', () => {
    const withGap = (um: number) =>
      join([
        chain([
          [0, 0],
          [2000, 0],
          [2000, 3000],
          [0, um],
        ]),
      ]);
    expect(withGap(1).notes).toEqual([]);
    expect(withGap(1).closed).toHaveLength(1);
    expect(withGap(9.9).notes.join()).toMatch(/gap of 9\.9 um at \(0, 0\) mm was closed/);
    expect(withGap(9.9).closed).toHaveLength(1);
    expect(withGap(10.1).closed).toHaveLength(0);
    expect(withGap(10.1).notes.join()).toMatch(/is open, its ends are 0\.0101 mm apart/);
  });

  it('keeps a point that the drawing gives where the other end is reckoned', () => {
    const arc = chain(
      [
        [2000, 0, 1],
        [2000, 4000.4],
      ],
      { firm: [false, false] },
    );
    const { closed } = join([
      chain([
        [0, 0],
        [2000, 0],
      ]),
      arc,
      chain([
        [2000, 4000],
        [0, 4000],
      ]),
      chain([
        [0, 4000],
        [0, 0],
      ]),
    ]);
    const corners = closed[0].vertices.map(({ x, y }) => `${x / 1e3},${y / 1e3}`).sort();
    expect(corners).toEqual(['0,0', '0,4000', '2000,0', '2000,4000']);
  });

  it('joins two squares that meet in a corner only where it is plain how', () => {
    const { closed, notes } = join([...sides(0, 0, 1000), ...sides(1000, 1000, 1000)]);
    expect(closed).toHaveLength(0);
    expect(notes.join()).toMatch(/more than two lines meet at \(1, 1\) mm/);
  });

  it('sets lines aside that lead nowhere, however many pieces they have', () => {
    const stray = [
      chain([
        [1000, 0],
        [1500, -500],
      ]),
      chain([
        [1500, -500],
        [1800, -500],
      ]),
      chain([
        [1800, -500],
        [1900, 0],
      ]),
    ];
    const { closed, paths } = join([...sides(0, 0, 1000), ...stray]);
    expect(closed).toHaveLength(1);
    expect(drawnArea(closed[0].vertices)).toBeCloseTo(1, 9);
    expect(paths).toHaveLength(2);
  });

  it('keeps pieces shorter than the tolerance in their place', () => {
    const [, , c, d] = sides(0, 0, 1000);
    const cut = [
      chain([
        [0, 0],
        [995, 0],
      ]),
      chain([
        [995, 0],
        [1000, 5],
      ]),
      chain([
        [1000, 5],
        [1000, 1000],
      ]),
    ];
    const { closed, notes } = join([cut[1], c, cut[0], d, cut[2]]);
    expect(notes).toEqual([]);
    expect(closed[0].vertices).toHaveLength(5);
  });

  it('joins within a layer before it looks at others', () => {
    const on = (label: string) => (piece: Chain) => ({ ...piece, label });
    const { closed } = join([...sides(0, 0, 1000).map(on('a')), ...sides(1000, 1000, 500).map(on('b'))]);
    expect(closed.map(({ label }) => label).sort()).toEqual(['a', 'b']);
    const mixed = sides(0, 0, 1000).map((piece, i) => on(i % 2 === 0 ? 'a' : 'b')(piece));
    expect(join(mixed).closed).toHaveLength(1);
  });

  it.each(Array.from({ length: 30 }, (_, i) => i))(
    'finds an outline whatever the order and direction, seed %i',
    (seed) => {
      const random = randomNumbers(seed);
      const count = random.whole(3, 30);
      const corners = Array.from({ length: count }, (_, i) => {
        const [angle, reach] = [(2 * Math.PI * i) / count, random.between(2000, 5000)];
        return [reach * Math.cos(angle), reach * Math.sin(angle), random.between(-0.2, 0.2)] as const;
      });
      const whole = chain(corners, { closed: true });
      const pieces = corners.map(([x, y, bulge], i): Chain => {
        const [u, v] = corners[(i + 1) % count];
        return random.chance(0.5)
          ? chain([
              [x, y, bulge],
              [u, v],
            ])
          : chain([
              [u, v, -bulge],
              [x, y],
            ]);
      });
      const { closed, notes, paths } = join(random.shuffled(pieces));
      expect(notes).toEqual([]);
      expect(paths).toHaveLength(1);
      expect(dropDuplicates([whole, { ...whole, ...closed[0] }]).kept).toHaveLength(1);
    },
  );
});

describe('duplicates', () => {
  it('are the same line run either way and a loop begun anywhere', () => {
    const line = chain([
      [0, 0, 0.5],
      [9, 0],
    ]);
    const back = chain([
      [9, 0, -0.5],
      [0, 0],
    ]);
    const bowed = chain([
      [0, 0, -0.5],
      [9, 0],
    ]);
    expect(dropDuplicates([line, back, bowed]).kept).toEqual([line, bowed]);
    const loop = chain(
      [
        [0, 0, 0.25],
        [9, 0],
        [9, 9],
      ],
      { closed: true },
    );
    const other = chain(
      [
        [9, 0, -0.25],
        [0, 0],
        [9, 9],
      ],
      { closed: true },
    );
    expect(dropDuplicates([loop, other]).dropped).toEqual([other]);
    const open = { ...loop, closed: false };
    expect(dropDuplicates([loop, open]).kept).toHaveLength(2);
  });
});
