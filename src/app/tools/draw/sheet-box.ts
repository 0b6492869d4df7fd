import { type Box, boxOf, type Point } from '../../../geom/point.ts';

/** An upright box on the sheet, nanometres. */
export type SheetBox = Box;

/** The box round some outlines and some boxes. */
export function boxRound(outlines: readonly (readonly Point[])[], boxes: readonly Box[]): Box {
  const corners = boxes.flatMap(({ minX, minY, maxX, maxY }) => [
    { x: minX, y: minY },
    { x: maxX, y: maxY },
  ]);
  return boxOf([...outlines.flat(), ...corners]);
}
