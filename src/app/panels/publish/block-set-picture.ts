import type { DisplaySet, SolidPart } from '../../../print3d/display-set.ts';
import { BEDS_APART } from '../../../print3d/place-parts.ts';
import { type BedPlace, movedBy, type ShownSolid, type SolidPicture } from '../../canvas/solid/solid-picture.ts';

/**
 * All parts on their beds, as they will be printed.
 *
 * @param picked name of the part that is pointed out; null for none.
 * @check tests/unit/app/block-pictures.test.ts
 */
export function setPicture(set: DisplaySet, picked: string | null): SolidPicture {
  const beds = bedPlaces(set);
  const ends = set.parts.map(({ place, size }) => [0, 1, 2].map((i) => place[i] + size[i]));
  const most = (i: 0 | 1) =>
    Math.max(...beds.map((bed) => (i === 0 ? bed.x : bed.y) + bed.size[i]), ...ends.map((end) => end[i]));
  const least = (i: 0 | 1) =>
    Math.min(...beds.map((bed) => (i === 0 ? bed.x : bed.y)), ...set.parts.map(({ place }) => place[i]));
  return {
    solids: set.parts.map((part) => solidOf(part, part.name === picked)),
    beds,
    clashes: null,
    room: { least: [least(0), least(1), 0], most: [most(0), most(1), Math.max(1, ...ends.map((end) => end[2]))] },
  };
}

function solidOf(part: SolidPart, picked: boolean): ShownSolid {
  const { name, colour, letterColour, place } = part;
  return { id: name, mesh: part, pose: movedBy(place), fill: colour, letterFill: letterColour, picked };
}

function bedPlaces({ beds, bed }: DisplaySet): BedPlace[] {
  return Array.from({ length: beds }, (_, n) => ({ x: n * (bed[0] + BEDS_APART), y: 0, size: bed }));
}
