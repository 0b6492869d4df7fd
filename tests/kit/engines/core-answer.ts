import type { Fit } from '../../../src/fit/fit.ts';
import { type InnerFit, innerFitRegion } from '../../../src/fit/inner-fit-region.ts';
import { judgeFit } from '../../../src/fit/judge-fit.ts';
import { type Blank, prepareBlank } from '../../../src/fit/prepare-blank.ts';
import { type Opening, prepareOpening } from '../../../src/fit/prepare-opening.ts';
import type { ConvexCell } from '../../../src/geom/convex-cell.ts';
import type { Point } from '../../../src/geom/point.ts';
import type { Region } from '../../../src/geom/region.ts';
import { makeRing, type Ring } from '../../../src/geom/ring.ts';
import type { FitCase, OpeningShape } from '../../cases/fit-case.ts';

/** What the program under test says of a case. */
export interface CoreAnswer {
  readonly fit: Fit;
  readonly region: InnerFit;
  /** Area of the region, square nanometres. */
  readonly area: number;
}

/** Asks the program under test. */
export function coreAnswer({ opening, blank }: Pick<FitCase, 'opening' | 'blank'>, runningClearance = 0): CoreAnswer {
  const preparedOpening = coreOpening(opening);
  const preparedBlank = prepareBlank(ringOf(blank));
  const region = innerFitRegion(preparedOpening, preparedBlank);
  return {
    fit: judgeFit(preparedOpening, preparedBlank, runningClearance),
    region,
    area: region.cells.reduce((sum, cell) => sum + cellArea(cell), 0),
  };
}

/** An opening of the program under test. */
export function coreOpening(opening: OpeningShape): Opening {
  const region: Region = [
    { outer: ringOf(opening.outer), holes: opening.islands.map((island) => [...ringOf(island)].reverse()) },
  ];
  return prepareOpening(region);
}

/** A blank of the program under test. */
export function coreBlank(blank: readonly Point[]): Blank {
  return prepareBlank(ringOf(blank));
}

/** A ring of the program under test; throws where it refuses the outline. */
export function ringOf(outline: readonly Point[]): Ring {
  const made = makeRing(outline);
  if (!made.ok) throw new Error(`refused: ${made.fault.message}`);
  return made.ring;
}

function cellArea(cell: ConvexCell): number {
  let twice = 0;
  for (let i = 0; i < cell.length; i += 2) {
    const j = (i + 2) % cell.length;
    twice += (cell[i] - cell[0]) * (cell[j + 1] - cell[1]) - (cell[i + 1] - cell[1]) * (cell[j] - cell[0]);
  }
  return twice / 2;
}
