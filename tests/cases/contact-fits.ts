import { type FitCase, mm, plainOpening, rectangle } from './fit-case.ts';

/*
 * Fits that a method working by area alone loses: the inner-fit region R is not empty but has no area, or has
 * area within a nanometre of none. Clearance 0, and not blocked.
 */

/** A keyway with one ward on either side, 2 x 8.4 mm. */
const WARDED = mm([
  [0, 0],
  [2, 0],
  [2, 3],
  [1.4, 3],
  [1.4, 4],
  [2, 4],
  [2, 8.4],
  [0, 8.4],
  [0, 6],
  [0.5, 6],
  [0.5, 5.2],
  [0, 5.2],
]);

/** A dovetailed ward: wider where it ends in the keyway than at the wall. */
const DOVETAILED = mm([
  [0, 0],
  [2, 0],
  [2, 8.4],
  [0, 8.4],
  [0, 5],
  [0.6, 5.2],
  [0.6, 4],
  [0, 4.2],
]);

const equalWarded: FitCase = {
  name: 'blank equal to its opening',
  opening: plainOpening(WARDED),
  blank: WARDED,
  known: {
    outcome: 'contact',
    clearance: 0,
    within: 0,
    area: 0,
    areaWithin: 0,
    play: { lateral: 0, vertical: 0 },
    region: [{ x: 0, y: 0 }],
    fitting: [{ x: 0, y: 0 }],
    colliding: [
      { x: 1, y: 0 },
      { x: -1, y: 0 },
      { x: 0, y: 1 },
      { x: 0, y: -1 },
    ],
  },
  why: 'as wide and as high as the opening: R is one point',
};

const equalDovetail: FitCase = {
  name: 'undercut blank equal to its opening',
  opening: plainOpening(DOVETAILED),
  blank: DOVETAILED.map((p) => ({ x: p.x - 700_000, y: p.y + 300_000 })),
  known: {
    outcome: 'contact',
    clearance: 0,
    within: 0,
    area: 0,
    areaWithin: 0,
    play: { lateral: 0, vertical: 0 },
    region: [{ x: 700_000, y: -300_000 }],
    fitting: [{ x: 700_000, y: -300_000 }],
    colliding: [
      { x: 700_001, y: -300_000 },
      { x: 0, y: 0 },
    ],
  },
  why: 'the same shape elsewhere: R is the point that lays one on the other',
};

const exactlyAsWide: FitCase = {
  name: 'slot exactly as wide as the blank',
  opening: plainOpening(rectangle(0, 0, 2_000_000, 8_500_000)),
  blank: rectangle(0, 0, 2_000_000, 8_400_000),
  known: {
    outcome: 'contact',
    clearance: 0,
    within: 0,
    area: 0,
    areaWithin: 0,
    play: { lateral: 0, vertical: 100_000 },
    region: [
      { x: 0, y: 0 },
      { x: 0, y: 100_000 },
    ],
    fitting: [
      { x: 0, y: 0 },
      { x: 0, y: 43_210 },
      { x: 0, y: 100_000 },
    ],
    colliding: [
      { x: 1, y: 50_000 },
      { x: -1, y: 50_000 },
      { x: 0, y: 100_001 },
    ],
  },
  why: 'R is the upright segment of the height difference',
};

const exactlyAsHigh: FitCase = {
  name: 'slot exactly as high as the blank',
  opening: plainOpening(rectangle(0, 0, 2_100_000, 8_400_000)),
  blank: rectangle(0, 0, 2_000_000, 8_400_000),
  known: {
    outcome: 'contact',
    clearance: 0,
    within: 0,
    area: 0,
    areaWithin: 0,
    play: { lateral: 100_000, vertical: 0 },
    region: [
      { x: 0, y: 0 },
      { x: 100_000, y: 0 },
    ],
    fitting: [{ x: 99_999, y: 0 }],
    colliding: [{ x: 0, y: 1 }],
  },
  why: 'R is the level segment of the width difference',
};

const slantedSlot: FitCase = {
  name: 'slanted slot exactly as wide as the blank',
  opening: plainOpening(
    mm([
      [0, 0],
      [2, 0],
      [8, 8],
      [6, 8],
    ]),
  ),
  blank: mm([
    [0, 0],
    [2, 0],
    [5, 4],
    [3, 4],
  ]),
  known: {
    outcome: 'contact',
    clearance: 0,
    within: 0,
    area: 0,
    areaWithin: 0,
    play: { lateral: 3_000_000, vertical: 4_000_000 },
    region: mm([
      [0, 0],
      [3, 4],
    ]),
    fitting: mm([
      [0, 0],
      [1.5, 2],
      [3, 4],
    ]),
    colliding: [
      { x: 1_500_001, y: 2_000_000 },
      { x: 3, y: 3 },
    ],
  },
  why: 'both are slanted 3 to 4 and 2 mm wide: R is the segment from (0, 0) to (3, 4)',
};

const wardedSegment: FitCase = {
  name: 'groove exactly as deep as the ward',
  opening: plainOpening(WARDED),
  blank: mm([
    [0, 0],
    [2, 0],
    [2, 2.9],
    [1.4, 2.9],
    [1.4, 4.1],
    [2, 4.1],
    [2, 8.3],
    [0, 8.3],
    [0, 6.1],
    [0.5, 6.1],
    [0.5, 5.1],
    [0, 5.1],
  ]),
  known: {
    outcome: 'contact',
    clearance: 0,
    within: 0,
    area: 0,
    areaWithin: 0,
    play: { lateral: 0, vertical: 100_000 },
    region: mm([
      [0, 0],
      [0, 0.1],
    ]),
    fitting: mm([
      [0, 0],
      [0, 0.1],
    ]),
    colliding: [
      { x: 0, y: -1 },
      { x: 0, y: 100_001 },
      { x: 1, y: 0 },
    ],
  },
  why: 'as wide as the opening, grooves 0.1 mm clear above and below: R is the segment from (0, 0) to (0, 0.1)',
};

const diamondInSquare: FitCase = {
  name: 'diamond touching all four sides',
  opening: plainOpening(rectangle(-1_000_000, -1_000_000, 2_000_000, 2_000_000)),
  blank: mm([
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ]),
  known: {
    outcome: 'contact',
    clearance: 0,
    within: 0,
    area: 0,
    areaWithin: 0,
    play: { lateral: 0, vertical: 0 },
    region: [{ x: 0, y: 0 }],
    fitting: [{ x: 0, y: 0 }],
    colliding: [{ x: 1, y: 1 }],
  },
  why: 'corner against side, four times: R is a point although no two sides touch',
};

const twoEqualChambers: FitCase = {
  name: 'two chambers exactly as large as the blank',
  opening: plainOpening(
    mm([
      [0, 0],
      [2, 0],
      [2, 0.5],
      [4, 0.5],
      [4, 0],
      [6, 0],
      [6, 2],
      [4, 2],
      [4, 1.5],
      [2, 1.5],
      [2, 2],
      [0, 2],
    ]),
  ),
  blank: rectangle(0, 0, 2_000_000, 2_000_000),
  known: {
    outcome: 'contact',
    clearance: 0,
    within: 0,
    area: 0,
    areaWithin: 0,
    play: { lateral: 0, vertical: 0 },
    fitting: mm([
      [0, 0],
      [4, 0],
    ]),
    colliding: mm([
      [2, 0],
      [1, 0],
      [0.000001, 0],
    ]),
  },
  why: 'R is two points 4 mm apart',
};

const channelAsWide: FitCase = {
  name: 'chamber with a channel exactly as wide as the blank',
  opening: plainOpening(
    mm([
      [0, 0],
      [4, 0],
      [4, 4],
      [3, 4],
      [3, 8],
      [1, 8],
      [1, 4],
      [0, 4],
    ]),
  ),
  blank: rectangle(0, 0, 2_000_000, 2_000_000),
  known: {
    outcome: 'fits',
    clearance: 1_000_000,
    within: 0,
    area: 4e12,
    areaWithin: 0,
    pieces: 1,
    holes: 0,
    fitting: mm([
      [0, 0],
      [2, 2],
      [1, 4],
      [1, 6],
    ]),
    colliding: [
      { x: 1_000_001, y: 5_000_000 },
      { x: 2_000_000, y: 2_000_001 },
    ],
  },
  why: 'R is the square 2 x 2 of the chamber and, standing on it, the segment of the channel, which adds no area',
};

const oneNanometreLoose: FitCase = {
  name: 'one nanometre loose',
  opening: plainOpening(rectangle(0, 0, 2_000_001, 8_500_000)),
  blank: rectangle(0, 0, 2_000_000, 8_400_000),
  known: {
    outcome: 'fits',
    clearance: 0.5,
    within: 0,
    area: 1e5,
    areaWithin: 0,
    play: { lateral: 1, vertical: 100_000 },
    fitting: [{ x: 1, y: 0 }],
  },
  why: 'R is 1 nm x 0.1 mm',
};

const tiny: FitCase = {
  name: 'ten-nanometre square',
  opening: plainOpening(rectangle(0, 0, 10, 10)),
  blank: rectangle(0, 0, 4, 4),
  known: { outcome: 'fits', clearance: 3, within: 0, area: 36, areaWithin: 0, play: { lateral: 6, vertical: 6 } },
  why: 'R is 6 x 6 nm',
};

const huge: FitCase = {
  name: 'as large as the core accepts',
  opening: plainOpening(rectangle(-47_000_000, -47_000_000, 94_000_000, 94_000_000)),
  blank: rectangle(-46_999_000, -46_999_000, 93_998_000, 93_998_000),
  known: {
    outcome: 'fits',
    clearance: 1000,
    within: 0,
    area: 4e6,
    areaWithin: 0,
    play: { lateral: 2000, vertical: 2000 },
  },
  why: 'R is 2 x 2 um although the squares are 94 mm wide, where products of differences leave the exact doubles',
};

/** Contact and near-contact, closed form. */
export const contactFits: readonly FitCase[] = [
  equalWarded,
  equalDovetail,
  exactlyAsWide,
  exactlyAsHigh,
  slantedSlot,
  wardedSegment,
  diamondInSquare,
  twoEqualChambers,
  channelAsWide,
  oneNanometreLoose,
  tiny,
  huge,
];
