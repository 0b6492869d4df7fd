import type { FileUnits } from '../../family/family.ts';
import { toFileLength } from '../../family/file-length.ts';
import type { PictureMarks, PicturePoint } from '../../trace/picture-scale.ts';
import type { FourPoints } from '../../trace/plane-map.ts';
import { toNanometres } from './file-units.ts';
import type { PictureFile } from './schema.ts';

/** A kept picture as the app holds it: the picture as a data address, where it lies, how strongly it is shown. */
export interface KeptPicture {
  readonly image: string;
  readonly marks: PictureMarks;
  /** 0 to 1. */
  readonly opacity: number;
}

/** How strongly a picture is shown where the file does not say. */
export const USUAL_OPACITY = 0.6;

type Pair = [number, number];

const pair = ({ x, y }: PicturePoint): Pair => [round(x), round(y)];
const point = ([x, y]: readonly number[]): PicturePoint => ({ x, y });

/** Places in a picture are kept to a thousandth of a pixel. */
function round(pixels: number): number {
  return Number(pixels.toFixed(3)) + 0;
}

/**
 * A picture as a family file keeps it.
 *
 * @param before the field as it stands, whose unknown fields are kept.
 * @check tests/unit/interchange/picture-file.test.ts
 */
export function writePicture(
  { image, marks, opacity }: KeptPicture,
  units: FileUnits,
  before?: PictureFile,
): PictureFile {
  const { scale: _scale, rectangle: _rectangle, line: _line, turnDeg: _turn, ...kept } = before ?? {};
  const { scale, rectangle, line, turn, middle } = marks;
  const length = (nm: number) => toFileLength(nm, units);
  return {
    ...kept,
    image,
    ...(scale && { scale: { from: pair(scale.from), to: pair(scale.to), distance: length(scale.distance) } }),
    ...(rectangle && {
      rectangle: {
        corners: rectangle.corners.map(pair),
        width: length(rectangle.width),
        height: length(rectangle.height),
      },
    }),
    ...(line && { line: { from: pair(line.from), to: pair(line.to), lies: line.lies } }),
    ...(turn !== 0 && { turnDeg: Number(((turn * 180) / Math.PI).toFixed(6)) }),
    middle: [length(middle.x), length(middle.y)],
    opacity: Number(opacity.toFixed(3)),
  };
}

/** What a family file keeps of a picture; lengths in nanometres, angles in radians. */
export function readPicture(file: PictureFile, units: FileUnits): KeptPicture {
  const { image, scale, rectangle, line, turnDeg = 0, middle = [0, 0], opacity = USUAL_OPACITY } = file;
  const length = (value: number) => toNanometres(value, units);
  const marks: PictureMarks = {
    ...(scale && { scale: { from: point(scale.from), to: point(scale.to), distance: length(scale.distance) } }),
    ...(rectangle && {
      rectangle: {
        corners: rectangle.corners.map(point) as unknown as FourPoints,
        width: length(rectangle.width),
        height: length(rectangle.height),
      },
    }),
    ...(line && { line: { from: point(line.from), to: point(line.to), lies: line.lies } }),
    turn: (turnDeg * Math.PI) / 180,
    middle: { x: length(middle[0]), y: length(middle[1]) },
  };
  return { image, marks, opacity };
}
