import type { DisplaySet, SolidPart } from '../../../print3d/display-set.ts';
import { BEDS_APART, placeOnBed } from '../../../print3d/place-parts.ts';
import { BED_RULE } from '../../canvas/solid/bed-lines.ts';
import {
  type BedPlace,
  boxCorners,
  movedBy,
  type ShownSolid,
  type SolidPicture,
} from '../../canvas/solid/solid-picture.ts';

/**
 * All parts on their beds, as they will be printed. Several beds lie in rows, about as wide as deep, the first at the back
 * left.
 *
 * @param only the number of the bed that is looked at, from 0; null for all.
 * @param picked name of the part that is pointed out; null for none.
 * @check tests/unit/app/block-pictures.test.ts
 */
export function setPicture(set: DisplaySet, picked: string | null, only: number | null): SolidPicture {
  const parts = set.parts.filter(({ bed }) => only === null || bed === only);
  const beds = bedPlaces(set, parts, only);
  const placeOf = (part: SolidPart) => {
    const at = beds[only === null ? part.bed : 0];
    const [x, y, z] = placeOnBed(part, set.bed);
    return movedBy([x + at.x, y + at.y, z]);
  };
  return {
    solids: parts.map((part) => solidOf(part, placeOf(part), part.name === picked)),
    beds,
    clashes: null,
    target: null,
    room: [
      ...parts.flatMap((part) => boxCorners(placeOf(part), part.size)),
      ...beds.flatMap(({ x, y, drawn: [wide, deep] }) => boxCorners(movedBy([x, y, 0]), [wide, deep, 0])),
    ],
  };
}

function solidOf(part: SolidPart, pose: ShownSolid['pose'], picked: boolean): ShownSolid {
  const { name, colour, letterColour } = part;
  return { id: name, mesh: part, pose, fill: colour, letterFill: letterColour, picked };
}

function bedPlaces({ beds, bed }: DisplaySet, parts: readonly SolidPart[], only: number | null): BedPlace[] {
  if (only !== null || beds === 1) return [{ x: 0, y: 0, size: bed, drawn: drawnOf(bed, parts) }];
  const columns = bedsInRow(beds, bed);
  return Array.from({ length: beds }, (_, n) => ({
    x: (n % columns) * (bed[0] + BEDS_APART),
    // A later row is nearer: boards come last, and hide nothing behind them.
    y: -Math.floor(n / columns) * (bed[1] + BEDS_APART),
    size: bed,
    drawn: bed,
  }));
}

/** So many beds in a row that all of them take a field about as wide as deep. */
function bedsInRow(beds: number, [wide, deep]: readonly [number, number]): number {
  const longest = (columns: number) => Math.max(columns * wide, Math.ceil(beds / columns) * deep);
  const numbers = Array.from({ length: beds }, (_, n) => n + 1);
  return numbers.reduce((best, columns) => (longest(columns) < longest(best) ? columns : best), 1);
}

/** Of one bed, all of it, or less where the parts would be small on it: what they take, and one rule more. */
function drawnOf(bed: readonly [number, number], parts: readonly SolidPart[]): readonly [number, number] {
  const taken = [0, 1].map((axis) => {
    const ends = parts.map((part) => placeOnBed(part, bed)[axis] + part.size[axis]);
    return Math.min(bed[axis], (Math.floor(Math.max(0, ...ends) / BED_RULE) + 2) * BED_RULE - 1);
  });
  return taken.every((length, axis) => length > MOST_OF * bed[axis]) ? bed : [taken[0], taken[1]];
}

/** Parts that take more than this share of a bed both ways are shown on all of it. */
const MOST_OF = 0.6;
