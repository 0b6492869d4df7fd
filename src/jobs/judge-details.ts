import type { Conditions } from '../fit/conditions.ts';
import type { Fit } from '../fit/fit.ts';
import { blankUnder, openingUnder } from '../fit/judge-pair.ts';
import { type Bands, judgeTolerance, type ThreeWay } from '../fit/judge-tolerance.ts';
import { measureWear } from '../fit/measure-wear.ts';
import { type Opening, prepareOpening } from '../fit/prepare-opening.ts';
import type { Ring } from '../geom/ring.ts';
import { type Job, runInSlices } from './job.ts';
import { type PackedOutline, unpackOutline } from './packed-outline.ts';

/** One entrant against some openings, with the fits already found. */
export interface DetailsInput {
  readonly entrant: PackedOutline;
  readonly openings: readonly PackedOutline[];
  /** One for each opening, under the conditions. */
  readonly fits: readonly Fit[];
  /** One for each opening. */
  readonly bands: readonly Bands[];
  readonly conditions: Conditions;
  /** Whether wear is measured too, which costs about 20 ms a blocked pair. */
  readonly wear: boolean;
}

/** What tolerance and wear make of one pair. */
export interface PairDetail {
  /** The number of the opening in the input. */
  readonly opening: number;
  readonly threeWay: ThreeWay;
  /** Null where it was not asked for. */
  readonly wear: WearFigures | null;
}

/** The uniform wear at which new parts first go together, nanometres; 0 where they do, Infinity where none does it. */
export interface WearFigures {
  readonly blank: number;
  readonly keyway: number;
  /** Of both parts by as much each: the guard of the pair. */
  readonly both: number;
}

/** Tolerance and wear of one entrant in some openings, handed over one by one as they come. */
export const judgeDetails: Job<DetailsInput, PairDetail[]> = (input, context) =>
  runInSlices(
    detailed(input, (detail) => context.part?.(detail)),
    context,
  );

function* detailed(
  input: DetailsInput,
  tell: (detail: PairDetail) => void,
): Generator<{ done: number; total: number }, PairDetail[], void> {
  const total = input.openings.length;
  const ring = unpackOutline(input.entrant);
  const worn = blankUnder(ring, input.conditions);
  const details: PairDetail[] = [];
  for (const [opening, packed] of input.openings.entries()) {
    const outline = unpackOutline(packed);
    const fit = input.fits[opening];
    const shape = openingUnder(outline, input.conditions);
    const threeWay = judgeTolerance(shape, worn, fit, input.bands[opening], input.conditions.tiltLimit);
    yield { done: opening, total };
    const wear = input.wear ? wearOf(prepareOpening(outline), ring) : null;
    details.push({ opening, threeWay, wear });
    tell(details[opening]);
    yield { done: opening + 1, total };
  }
  return details;
}

function wearOf(opening: Opening, blank: Ring): WearFigures {
  return {
    blank: measureWear(opening, blank, 'blank'),
    keyway: measureWear(opening, blank, 'keyway'),
    both: measureWear(opening, blank, 'both'),
  };
}
