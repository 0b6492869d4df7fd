import { difference } from '../../src/geom/clip.ts';
import { boundariesOf, type Region, regionOf } from '../../src/geom/region.ts';
import { signedArea } from '../../src/geom/signed-area.ts';
import { keywayPair } from '../cases/keyway-pairs.ts';
import { polygonPair } from '../cases/polygon-pairs.ts';
import { boxOfMm, ringOfMm, soundRing } from './shapes.ts';

/** A square frame: one patch with one hole. */
export const frame = difference(
  regionOf(boxOfMm(9, 9)),
  regionOf(
    ringOfMm([
      [3, 3],
      [6, 3],
      [6, 6],
      [3, 6],
    ]),
  ),
);
const withMiddles = regionOf(
  ringOfMm([
    [0, 0],
    [1, 0],
    [2, 0],
    [3, 0],
    [3, 1],
    [3, 2],
    [1.5, 2],
    [0, 2],
    [0, 1],
  ]),
);
const two: Region = [
  ...regionOf(boxOfMm(1, 1)),
  ...regionOf(
    ringOfMm([
      [5, 5],
      [6, 5],
      [5, 6],
    ]),
  ),
];

/** Regions of all kinds by name: holes, collinear vertices, several patches, random outlines, plugs round keyways. */
export const namedRegions: readonly (readonly [string, Region])[] = [
  ['a frame', frame],
  ['vertices in the middle of edges', withMiddles],
  ['two patches', two],
  ...Array.from({ length: 40 }, (_, seed): [string, Region] => [
    `polygon ${seed}`,
    regionOf(soundRing(polygonPair(seed).opening.outer)),
  ]),
  ...Array.from({ length: 20 }, (_, seed): [string, Region] => [
    `plug round keyway ${seed}`,
    difference(
      regionOf(
        ringOfMm([
          [-20, -20],
          [20, -20],
          [20, 20],
          [-20, 20],
        ]),
      ),
      regionOf(soundRing(keywayPair(seed, 60).opening.outer)),
    ),
  ]),
];

/** Area of a region, holes taken off, square nanometres. */
export function areaOfRegion(region: Region): number {
  return boundariesOf(region).reduce((sum, ring) => sum + signedArea(ring), 0);
}
