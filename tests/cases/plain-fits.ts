import type { Point } from '../../src/geom/point.ts';
import { type FitCase, mm, plainOpening, rectangle } from './fit-case.ts';

/*
 * Fits with room to spare whose inner-fit region R is known in closed form.
 * Convex container: R is the container with each side moved inwards by the blank's support function.
 * L and T junction circles: D = 2[d+b+3r - sqrt(2(2r+b)(2r+d))] and D = ((b+r)^2 + r d + d^2/4)/(2r+b), with
 * r = 0 and legs of width 1: 1.171573 and 1.25 (handbook torsion formulas for junctions, Roark & Young, from
 * memory; both are plain geometry).
 */

const SQRT3 = Math.sqrt(3);

/** A regular hexagon with a vertex to the right, rounded to whole nanometres. */
export function hexagon(circumradius: number): Point[] {
  return Array.from({ length: 6 }, (_, i) => ({
    x: Math.round(circumradius * Math.cos((i * Math.PI) / 3)),
    y: Math.round(circumradius * Math.sin((i * Math.PI) / 3)),
  }));
}

const rectangleInRectangle: FitCase = {
  name: 'rectangle in rectangle',
  opening: plainOpening(rectangle(0, 0, 2_100_000, 8_500_000)),
  blank: rectangle(0, 0, 2_000_000, 8_400_000),
  known: {
    outcome: 'fits',
    clearance: 50_000,
    within: 0,
    area: 1e10,
    areaWithin: 0,
    pieces: 1,
    holes: 0,
    play: { lateral: 100_000, vertical: 100_000 },
    region: rectangle(0, 0, 100_000, 100_000),
    fitting: [
      { x: 0, y: 0 },
      { x: 100_000, y: 100_000 },
      { x: 50_000, y: 0 },
    ],
    colliding: [
      { x: -1, y: 0 },
      { x: 100_001, y: 50_000 },
      { x: 0, y: 100_001 },
    ],
  },
  why: 'R is the rectangle of the differences, 0.1 x 0.1 mm; its inscribed circle has radius 0.05 mm',
};

const hexagonInHexagon: FitCase = {
  name: 'hexagon in hexagon',
  opening: plainOpening(hexagon(4_000_000)),
  blank: hexagon(3_000_000),
  known: {
    outcome: 'fits',
    clearance: 500_000 * SQRT3,
    within: 2,
    area: 1.5 * SQRT3 * 1e12,
    areaWithin: 6e6,
    pieces: 1,
    holes: 0,
    play: { lateral: 2_000_000, vertical: 1_000_000 * SQRT3 },
    region: hexagon(1_000_000),
  },
  why: 'similar and alike turned: R is the hexagon of the difference, 1 mm; inscribed circle 1 mm x sqrt(3)/2; vertices rounded to 1 nm',
};

const triangleInTriangle: FitCase = {
  name: 'triangle in triangle',
  opening: plainOpening(
    mm([
      [0, 0],
      [8, 0],
      [0, 6],
    ]),
  ),
  blank: mm([
    [0, 0],
    [4, 0],
    [0, 3],
  ]),
  known: {
    outcome: 'fits',
    clearance: 1_000_000,
    within: 0,
    area: 6e12,
    areaWithin: 0,
    pieces: 1,
    holes: 0,
    play: { lateral: 4_000_000, vertical: 3_000_000 },
    region: mm([
      [0, 0],
      [4, 0],
      [0, 3],
    ]),
  },
  why: 'R is the 3-4-5 triangle of the differences; inradius 2A/P = 12/12 = 1 mm',
};

const stripInRectangle: FitCase = {
  name: 'strip in rectangle',
  opening: plainOpening(rectangle(-1_000_000, -1_000_000, 2_000_000, 8_000_000)),
  blank: rectangle(0, 0, 600_000, 6_000_000),
  known: {
    outcome: 'fits',
    clearance: 700_000,
    within: 0,
    area: 1.4e6 * 2e6,
    areaWithin: 0,
    pieces: 1,
    holes: 0,
    play: { lateral: 1_400_000, vertical: 2_000_000 },
  },
  why: 'R is 1.4 x 2.0 mm; the smaller half is the clearance',
};

/** An L with legs 1.5 mm wide around a 0.5 mm square leaves an L with legs 1 mm wide. */
const squareInL: FitCase = {
  name: 'square in an L',
  opening: plainOpening(
    mm([
      [0, 0],
      [6, 0],
      [6, 1.5],
      [1.5, 1.5],
      [1.5, 6],
      [0, 6],
    ]),
  ),
  blank: rectangle(0, 0, 500_000, 500_000),
  known: {
    outcome: 'fits',
    clearance: (2 - Math.SQRT2) * 1e6,
    within: 1,
    area: 10e12,
    areaWithin: 0,
    pieces: 1,
    holes: 0,
    play: { lateral: 5_500_000, vertical: 5_500_000 },
  },
  why: 'R is an L 5.5 x 5.5 with legs 1 mm: area 2 x 5.5 - 1; junction circle diameter 4 - 2 sqrt(2) = 1.171573',
};

const squareInT: FitCase = {
  name: 'square in a T',
  opening: plainOpening(
    mm([
      [0, 0],
      [6, 0],
      [6, 1.5],
      [3.75, 1.5],
      [3.75, 5],
      [2.25, 5],
      [2.25, 1.5],
      [0, 1.5],
    ]),
  ),
  blank: rectangle(0, 0, 500_000, 500_000),
  known: {
    outcome: 'fits',
    clearance: 625_000,
    within: 1,
    area: 9e12,
    areaWithin: 0,
    pieces: 1,
    holes: 0,
    play: { lateral: 5_500_000, vertical: 4_500_000 },
  },
  why: 'R is a T, flange 5.5 x 1, stem 1 x 3.5; junction circle diameter 1.25',
};

const twoChambers: FitCase = {
  name: 'two chambers and a neck too low',
  opening: plainOpening(
    mm([
      [0, 0],
      [3, 0],
      [3, 1],
      [5, 1],
      [5, 0],
      [9, 0],
      [9, 3.2],
      [5, 3.2],
      [5, 2],
      [3, 2],
      [3, 3],
      [0, 3],
    ]),
  ),
  blank: rectangle(0, 0, 2_000_000, 2_000_000),
  known: {
    outcome: 'fits',
    clearance: 600_000,
    within: 0,
    area: 1e12 + 2.4e12,
    areaWithin: 0,
    pieces: 2,
    holes: 0,
    play: { lateral: 2_000_000, vertical: 1_200_000 },
    fitting: mm([
      [0, 0],
      [1, 1],
      [5, 0],
      [7, 1.2],
    ]),
    colliding: mm([
      [3, 0.5],
      [1.1, 0.5],
      [4.9, 0.5],
    ]),
  },
  why: 'a chamber 3 x 3 leaves 1 x 1, the other, 4 x 3.2, leaves 2 x 1.2; the neck, 1 high, lets nothing through',
};

const neckAboveChamber: FitCase = {
  name: 'neck narrower than the blank with a chamber below',
  opening: plainOpening(
    mm([
      [0, 0],
      [3, 0],
      [3, 3],
      [2, 3],
      [2, 6],
      [1, 6],
      [1, 3],
      [0, 3],
    ]),
  ),
  blank: rectangle(0, 0, 2_000_000, 2_000_000),
  known: {
    outcome: 'fits',
    clearance: 500_000,
    within: 0,
    area: 1e12,
    areaWithin: 0,
    pieces: 1,
    holes: 0,
    play: { lateral: 1_000_000, vertical: 1_000_000 },
  },
  why: 'it could not be pushed in sideways through the neck, but goes in endwise: R is 1 x 1',
};

const roundTheIsland: FitCase = {
  name: 'opening with an island',
  opening: {
    outer: rectangle(0, 0, 6_000_000, 6_000_000),
    islands: [rectangle(2_500_000, 2_500_000, 1_000_000, 1_000_000)],
  },
  blank: rectangle(0, 0, 1_000_000, 1_000_000),
  known: {
    outcome: 'fits',
    clearance: 1.5e6 * (2 - Math.SQRT2),
    within: 1,
    area: 21e12,
    areaWithin: 0,
    pieces: 1,
    holes: 1,
    play: { lateral: 5_000_000, vertical: 5_000_000 },
    fitting: mm([
      [1.5, 1.5],
      [3.5, 2],
      [0, 0],
    ]),
    colliding: mm([
      [2.5, 2.5],
      [1.500001, 2],
      [3.4, 3.4],
    ]),
  },
  why: 'R is 5 x 5 less the open 2 x 2 square round the island; in a corner r = sqrt(2) (1.5 - r)',
};

const openAtTheBottom: FitCase = {
  name: 'opening closed by a line at the bottom',
  opening: plainOpening(
    mm([
      [-0.5, 0],
      [2.5, 0],
      [2.05, 0.9],
      [2.05, 8.5],
      [-0.05, 8.5],
      [-0.05, 0.9],
    ]),
  ),
  blank: rectangle(0, 0, 2_000_000, 8_400_000),
  known: {
    outcome: 'fits',
    clearance: 50_000,
    within: 0,
    area: 1e10,
    areaWithin: 0,
    pieces: 1,
    holes: 0,
    play: { lateral: 100_000, vertical: 100_000 },
  },
  why: 'the flare towards the open bottom binds nothing: walls 2.1 apart, 8.5 high',
};

/** Fits with area, closed form. */
export const plainFits: readonly FitCase[] = [
  rectangleInRectangle,
  hexagonInHexagon,
  triangleInTriangle,
  stripInRectangle,
  squareInL,
  squareInT,
  twoChambers,
  neckAboveChamber,
  roundTheIsland,
  openAtTheBottom,
];
