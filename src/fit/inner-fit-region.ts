import { type ConvexCell, cellOfBox } from '../geom/convex-cell.ts';
import type { Point } from '../geom/point.ts';
import { pointOf } from './contain-exactly.ts';
import { decideContact } from './decide-contact.ts';
import type { Blank } from './prepare-blank.ts';
import type { Opening } from './prepare-opening.ts';
import { subtractWindows, windowOf } from './subtract-windows.ts';

/** All translations that bring a blank into an opening; nanometres. */
export interface InnerFit {
  /** Convex cells that do not overlap: the part with area. */
  readonly cells: readonly ConvexCell[];
  /** Where there is no area: the corners of the contact, one for a point, two for a segment, more for several of them. */
  readonly contacts: readonly Point[];
  /** The window in which all of them lie, as a cell; null where the blank's box is larger than the opening's. */
  readonly window: ConvexCell | null;
}

/**
 * The inner-fit region {t : blank + t inside opening}, as cells, or as points where it has no area.
 * Both lists empty means blocked.
 */
export function innerFitRegion(opening: Opening, blank: Blank): InnerFit {
  const window = windowOf(opening, blank);
  const cells = subtractWindows(opening, blank);
  const near = cells.length > 0 ? [] : subtractWindows(opening.grown(), blank);
  return {
    cells,
    contacts: near.length > 0 ? decideContact(opening, blank, near).map(pointOf) : [],
    window: window && cellOfBox(window),
  };
}
