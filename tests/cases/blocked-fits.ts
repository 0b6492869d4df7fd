import { type FitCase, mm, plainOpening, rectangle } from './fit-case.ts';

/*
 * Pairs that do not go, with the interference in closed form: the least over all placements of the greatest
 * distance of a point of the blank from the opening (directed Hausdorff distance under translation).
 */

const tooWide: FitCase = {
  name: 'blank wider than the slot',
  opening: plainOpening(rectangle(0, 0, 2_000_000, 8_500_000)),
  blank: rectangle(0, 0, 2_120_000, 8_400_000),
  known: { outcome: 'blocked', interference: 60_000, within: 0, area: 0, areaWithin: 0 },
  why: 'too wide by d = 0.12 mm: half of it stands in either wall',
};

const tooWideAndTooHigh: FitCase = {
  name: 'square larger than the square hole',
  opening: plainOpening(rectangle(0, 0, 2_000_000, 2_000_000)),
  blank: rectangle(0, 0, 2_100_000, 2_100_000),
  known: { outcome: 'blocked', interference: 50_000 * Math.SQRT2, within: 0, area: 0, areaWithin: 0 },
  why: 'centred, each corner is d/2 out both ways, d/sqrt(2) from the hole; any other place brings one corner further out',
};

const halfAMicrometre: FitCase = {
  name: 'square half a micrometre larger than the square hole',
  opening: plainOpening(rectangle(0, 0, 1_999_500, 1_999_500)),
  blank: rectangle(0, 0, 2_000_000, 2_000_000),
  known: { outcome: 'blocked', interference: 250 * Math.SQRT2, within: 0, area: 0, areaWithin: 0 },
  why: 'as above, d = 500 nm: where growing the hole by offsets is rounded to whole nanometres, a stated bound must allow for that',
};

const byOneNanometre: FitCase = {
  name: 'two nanometres too wide',
  opening: plainOpening(rectangle(0, 0, 2_000_000, 8_500_000)),
  blank: rectangle(0, 0, 2_000_002, 8_400_000),
  known: { outcome: 'blocked', interference: 1, within: 0, area: 0, areaWithin: 0 },
  why: 'half of 2 nm',
};

const wardInTheWay: FitCase = {
  name: 'one ward and no groove',
  opening: plainOpening(
    mm([
      [0, 0],
      [2.1, 0],
      [2.1, 8.5],
      [0, 8.5],
      [0, 5],
      [0.5, 5],
      [0.5, 4],
      [0, 4],
    ]),
  ),
  blank: rectangle(0, 0, 2_000_000, 8_400_000),
  known: { outcome: 'blocked', interference: 200_000, within: 0, area: 0, areaWithin: 0 },
  why: '1.6 mm between ward and wall, blank 2.0: half of 0.4 in either; the ward, 1 mm high, is thick enough to count',
};

const thinWard: FitCase = {
  name: 'a thin ward counts by half its height',
  opening: plainOpening(
    mm([
      [0, 0],
      [2.1, 0],
      [2.1, 8.5],
      [0, 8.5],
      [0, 5],
      [0.5, 5],
      [0.5, 4.9],
      [0, 4.9],
    ]),
  ),
  blank: rectangle(0, 0, 2_000_000, 8_400_000),
  known: { outcome: 'blocked', interference: 50_000, within: 0, area: 0, areaWithin: 0 },
  why: 'no point of a ward 0.1 mm high is further than 0.05 from the opening, and the blank must cover some of its middle by 0.05 or more',
};

const wardWithAHead: FitCase = {
  name: 'a ward with a head deep inside the blank',
  opening: plainOpening(
    mm([
      [0, 0],
      [3, 0],
      [3, 8.5],
      [0, 8.5],
      [0, 4.3],
      [0.5, 4.3],
      [0.5, 4.5],
      [0.9, 4.5],
      [0.9, 4],
      [0.5, 4],
      [0.5, 4.2],
      [0, 4.2],
    ]),
  ),
  blank: rectangle(0, 0, 2_900_000, 8_400_000),
  known: { outcome: 'blocked', interference: 203_125, within: 0, area: 0, areaWithin: 0 },
  why:
    "the head, 0.4 x 0.5, is covered whole, though the blank's own outline meets only the stem, 0.1 high; furthest from the opening is " +
    'the point 0.2 + e from the far side and as far from the ends of the stem: (0.2 + e)^2 = (0.2 - e)^2 + 0.05^2, e = 0.003125',
};

const invertedWindow: FitCase = {
  name: 'blank higher than the opening',
  opening: plainOpening(rectangle(0, 0, 2_100_000, 8_000_000)),
  blank: rectangle(0, 0, 2_000_000, 8_400_000),
  known: { outcome: 'blocked', interference: 200_000, within: 0, area: 0, areaWithin: 0 },
  why: 'too high by 0.4 mm, half at either end',
};

const lengthways: FitCase = {
  name: 'neck one nanometre too narrow',
  opening: plainOpening(
    mm([
      [0, 0],
      [3, 0],
      [3, 2],
      [2.4, 2],
      [2.4, 4],
      [3, 4],
      [3, 6],
      [0, 6],
      [0, 4],
      [0.6, 4],
      [0.6, 2],
      [0, 2],
    ]),
  ),
  blank: [
    ...mm([
      [0.2, 0],
      [2.8, 0],
      [2.8, 1.8],
    ]),
    { x: 2_400_001, y: 1_800_000 },
    { x: 2_400_001, y: 4_200_000 },
    ...mm([
      [2.8, 4.2],
      [2.8, 5.8],
      [0.2, 5.8],
      [0.2, 4.2],
    ]),
    { x: 599_999, y: 4_200_000 },
    { x: 599_999, y: 1_800_000 },
    ...mm([[0.2, 1.8]]),
  ],
  known: { outcome: 'blocked', interference: 1, within: 0, area: 0, areaWithin: 0 },
  why: 'a waist 1 nm too wide on either side, everything else clear by 0.2 mm',
};

/** Blocked pairs, closed form. */
export const blockedFits: readonly FitCase[] = [
  tooWide,
  tooWideAndTooHigh,
  halfAMicrometre,
  byOneNanometre,
  wardInTheWay,
  thinWard,
  wardWithAHead,
  invertedWindow,
  lengthways,
];
