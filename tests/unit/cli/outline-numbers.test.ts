import { describe, expect, test } from 'vitest';
import { numberFeatures } from '../../../src/cli/outline-numbers.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { familyValue } from '../../cases/bad-files/nearly-sound.ts';

/** Five corners, counter-clockwise, none like another. */
const OUTLINE = [
  [0, 0],
  [2, 0.1],
  [2.2, 8],
  [1, 8.4],
  [0.1, 7.9],
];

function documentOf(outline: number[][], units = 'mm') {
  const scaled = units === 'mm' ? outline : outline.map(([x, y]) => [x / 25.4, y / 25.4]);
  const profiles = [{ id: 'p', kind: 'blank', name: 'P', outline: scaled }];
  const read = readFamily(JSON.stringify(familyValue({ units, profiles })));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.document;
}

/** The file's outline written from any point on, either way round, closed or not. */
const written = (first: number, clockwise: boolean, closed: boolean) => {
  const turned = OUTLINE.map((_, i) => OUTLINE[(first + i) % OUTLINE.length]);
  const outline = clockwise ? turned.reverse() : turned;
  return closed ? [...outline, outline[0]] : outline;
};

describe('corners and edges by the numbers of the file', () => {
  const ways = [0, 1, 2, 3, 4].flatMap((first) =>
    [false, true].flatMap((clockwise) => [false, true].map((closed) => ({ first, clockwise, closed }))),
  );

  test.each(ways)('corner n is the point n: from point $first, clockwise $clockwise, closed $closed', (way) => {
    for (const units of ['mm', 'in']) {
      const document = documentOf(written(way.first, way.clockwise, way.closed), units);
      const number = numberFeatures(document);
      const outline = document.file.profiles[0].outline ?? [];
      const { ring } = document.family.profiles[0];
      const scale = units === 'mm' ? 1e6 : 25.4e6;
      const inFile = (n: number) => outline[n].map((length = 0) => Math.round(length * scale));
      for (const [i, { x, y }] of ring.entries()) {
        const corner = number('p', { kind: 'corner', index: i });
        if (!('corner' in corner)) throw new Error('a corner was asked for');
        expect(inFile(corner.corner)).toEqual([x, y]);
        const edge = number('p', { kind: 'edge', index: i });
        if (!('edge' in edge)) throw new Error('an edge was asked for');
        const next = ring[(i + 1) % ring.length];
        const ends = [inFile(edge.edge), inFile((edge.edge + 1) % ring.length)].sort();
        expect(ends).toEqual(
          [
            [x, y],
            [next.x, next.y],
          ].sort(),
        );
      }
    }
  });

  test('a milled profile keeps the numbers of its outline', () => {
    const milled = { thickness: 2, height: 8, grooves: [] };
    const profiles = [{ id: 'm', kind: 'blank', name: 'M', milled }];
    const read = readFamily(JSON.stringify(familyValue({ profiles })));
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    const number = numberFeatures(read.document);
    expect(number('m', { kind: 'corner', index: 3 })).toEqual({ corner: 3 });
    expect(number('m', { kind: 'edge', index: 2 })).toEqual({ edge: 2 });
  });
});

test('what touches an arc is told as the edge that the arc is, either way round', () => {
  // A slot whose upper end is a half circle: edge 2 of the file, or edge 1 where it is written the other way round.
  const ways = [
    {
      outline: [
        [0, 0],
        [2, 0],
        [2, 8, 1],
        [0, 8],
      ],
      arc: 2,
      after: 3,
    },
    {
      outline: [
        [0, 0],
        [0, 8, -1],
        [2, 8],
        [2, 0],
      ],
      arc: 1,
      after: 1,
    },
  ];
  for (const { outline, arc, after } of ways) {
    const read = readFamily(
      JSON.stringify(familyValue({ units: 'mm', profiles: [{ id: 'p', kind: 'blank', name: 'P', outline }] })),
    );
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    const { ring } = read.document.family.profiles[0];
    const number = numberFeatures(read.document);
    const top = ring.reduce((best, { y }, i) => (y > ring[best].y ? i : best), 0);
    expect(number('p', { kind: 'corner', index: top })).toEqual({ edge: arc });
    expect(number('p', { kind: 'edge', index: top })).toEqual({ edge: arc });
    const [left] = ring.flatMap(({ x, y }, i) => (x === 0 && y === 8e6 ? [i] : []));
    expect(number('p', { kind: 'corner', index: left })).toEqual({ corner: after });
  }
});
