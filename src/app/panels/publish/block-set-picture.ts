import type { DisplaySet, SolidPart } from '../../../print3d/display-set.ts';
import { BEDS_APART } from '../../../print3d/place-parts.ts';
import {
  type BedPlace,
  boxCorners,
  movedBy,
  type ShownSolid,
  type SolidPicture,
} from '../../canvas/solid/solid-picture.ts';

/**
 * All parts on their beds, as they will be printed.
 *
 * @param only the number of the bed that is looked at, from 0; null for all.
 * @param picked name of the part that is pointed out; null for none.
 * @check tests/unit/app/block-pictures.test.ts
 */
export function setPicture(set: DisplaySet, picked: string | null, only: number | null): SolidPicture {
  const beds = bedPlaces(set).filter((_, n) => only === null || n === only);
  const parts = set.parts.filter(({ bed }) => only === null || bed === only);
  return {
    solids: parts.map((part) => solidOf(part, part.name === picked)),
    beds,
    clashes: null,
    // The parts fill the picture; of a bed that they leave empty, as much is seen as there is room for.
    room: parts.flatMap(({ place, size }) => boxCorners(movedBy(place), size)),
  };
}

function solidOf(part: SolidPart, picked: boolean): ShownSolid {
  const { name, colour, letterColour, place } = part;
  return { id: name, mesh: part, pose: movedBy(place), fill: colour, letterFill: letterColour, picked };
}

function bedPlaces({ beds, bed }: DisplaySet): BedPlace[] {
  return Array.from({ length: beds }, (_, n) => ({ x: n * (bed[0] + BEDS_APART), y: 0, size: bed }));
}
