import type { BadFile } from './bad-file.ts';
import { family, outlineProfile, SQUARE, withOutline } from './nearly-sound.ts';

/** A regular polygon of many points, all different, radius 4. */
const circle = (count: number) =>
  Array.from({ length: count }, (_, i) => [
    4 * Math.cos((2 * Math.PI * i) / count),
    4 * Math.sin((2 * Math.PI * i) / count),
  ]);

/** Outlines that are no simple polygon. */
export const OUTLINES: BadFile[] = [
  {
    name: 'an outline of two points',
    text: withOutline(SQUARE.slice(0, 2)),
    path: 'profiles[1].outline',
    words: /2 entries, must have at least 3/,
    byShape: true,
  },
  {
    name: 'two points and a closing one',
    text: withOutline([
      [0, 0],
      [2, 0],
      [0, 0],
    ]),
    path: 'profiles[1].outline',
    words: /2 different vertices/,
  },
  {
    name: 'a point of one number',
    text: withOutline([[0, 0], [2], [2, 8]]),
    path: 'profiles[1].outline[1]',
    words: /1 entry, must have at least 2/,
    byShape: true,
  },
  {
    name: 'a point of four numbers',
    text: withOutline([
      [0, 0],
      [2, 0, 0, 1],
      [2, 8],
    ]),
    path: 'profiles[1].outline[1]',
    words: /4 entries, must have at most 3/,
    byShape: true,
  },
  {
    name: 'a bulge in words',
    text: withOutline([
      [0, 0],
      [2, 0, 'round'],
      [2, 8],
    ]),
    path: 'profiles[1].outline[1][2]',
    words: /round.*must be a number/,
    byShape: true,
  },
  {
    name: 'a bulge of nearly a whole circle',
    text: withOutline([
      [0, 0],
      [2, 0, 101],
      [2, 8],
    ]),
    path: 'profiles[1].outline[1][2]',
    words: /at most 100/,
    byShape: true,
  },
  {
    name: 'an arc that runs into the opposite wall',
    text: withOutline([
      [0, 0],
      [2, 0, -0.6],
      [2, 8],
      [0, 8],
    ]),
    path: 'profiles[1].outline[1]',
    words: /edge 1 crosses edge 3/,
  },
  {
    name: 'a point with names',
    text: withOutline([{ x: 0, y: 0 }, [2, 0], [2, 8]]),
    path: 'profiles[1].outline[0]',
    words: /an object.*pair of numbers/,
    byShape: true,
  },
  {
    name: 'a coordinate in words',
    text: withOutline([
      [0, 0],
      ['2', 0],
      [2, 8],
    ]),
    path: 'profiles[1].outline[1][0]',
    words: /heron-keyway: .*"2".*a number/,
    byShape: true,
  },
  {
    name: 'a coordinate that is null',
    text: withOutline([
      [0, 0],
      [2, null],
      [2, 8],
    ]),
    path: 'profiles[1].outline[1][1]',
    words: /null.*a number/,
    byShape: true,
  },
  {
    name: 'a coordinate beyond all numbers',
    text: withOutline(SQUARE).replace('[2,0]', '[1e400,0]').replace('[2,0]', '[1e400,0]'),
    path: 'profiles[0].outline[1][0]',
    words: /Infinity.*a number/,
    byShape: true,
  },
  {
    name: 'a coordinate of 1e9',
    text: withOutline([
      [0, 0],
      [1e9, 0],
      [2, 8],
    ]),
    path: 'profiles[1].outline[1]',
    words: /heron-keyway: lies more than 47\.45 mm/,
  },
  {
    name: 'an inch outline just too large',
    text: family({
      units: 'in',
      profiles: [
        outlineProfile([
          [0, 0],
          [1.87, 0],
          [1, 1],
        ]),
      ],
    }),
    path: 'profiles[0].outline[1]',
    words: /more than 1\.868 in/,
  },
  {
    name: 'a self-crossing outline',
    text: withOutline([
      [0, 0],
      [4, 0],
      [4, 4],
      [1, -1],
    ]),
    path: /^profiles\[1\]\.outline\[\d\]$/,
    words: /crosses edge \d at \(.* mm, .* mm\)/,
  },
  {
    name: 'a bow-tie',
    text: withOutline([
      [0, 0],
      [2, 2],
      [2, 0],
      [0, 2],
    ]),
    path: 'profiles[1].outline[0]',
    words: /edge 0 crosses edge 2 at \(1 mm, 1 mm\)/,
  },
  {
    name: 'an outline without area',
    text: withOutline([
      [0, 0],
      [1, 1],
      [3, 3],
    ]),
    path: 'profiles[1].outline[0]',
    words: /encloses nothing/,
  },
  {
    name: 'a spike that runs back on itself',
    text: withOutline([
      [0, 0],
      [4, 0],
      [4, 4],
      [2, 4],
      [2, 6],
      [2, 4],
      [0, 4],
    ]),
    path: /^profiles\[1\]\.outline\[\d\]$/,
    words: /same point|runs back/,
  },
  {
    name: 'a vertex on another edge',
    text: withOutline([
      [0, 0],
      [4, 0],
      [4, 4],
      [2, 0],
      [0, 4],
    ]),
    path: 'profiles[1].outline[3]',
    words: /vertex 3 lies on edge 0/,
  },
  {
    name: 'a point used twice',
    text: withOutline([
      [0, 0],
      [2, 2],
      [4, 0],
      [4, 4],
      [2, 2],
      [0, 4],
    ]),
    path: /^profiles\[1\]\.outline\[[14]\]$/,
    words: /vertex 1 and vertex 4 are the same point/,
  },
  {
    name: 'a point repeated in a row',
    text: withOutline([
      [0, 0],
      [2, 0],
      [2, 0],
      [2, 8],
    ]),
    path: 'profiles[1].outline[2]',
    words: /is the same point as profiles\[1\]\.outline\[1\]/,
  },
  {
    name: 'all points the same',
    text: withOutline([
      [1, 1],
      [1, 1],
      [1, 1],
      [1, 1],
    ]),
    path: /^profiles\[1\]\.outline\[\d\]$/,
    words: /same point/,
  },
  {
    name: 'a closing point given twice',
    text: withOutline([...SQUARE, [0, 0], [0, 0]]),
    path: 'profiles[1].outline[0]',
    words: /same point/,
  },
  {
    name: '10,001 points',
    text: withOutline(circle(10_001)),
    path: 'profiles[1].outline',
    words: /10001.*more than 10000/,
  },
  {
    name: '100,000 points',
    text: withOutline(circle(100_000)),
    path: 'profiles[1].outline',
    words: /100000 points, more than 10000/,
    byShape: true,
  },
];
