import type { EntryMatrix } from '../family/entry-matrix.ts';
import { bandsOf, entrantsOf, type Family, openingsOf } from '../family/family.ts';
import { seatOffset } from '../family/seat-offset.ts';
import type { Conditions } from '../fit/conditions.ts';
import { type Explanation, explainPlacement } from '../fit/explain-placement.ts';
import { blankUnder, openingUnder } from '../fit/judge-pair.ts';
import { judgeTolerance, type ThreeWay } from '../fit/judge-tolerance.ts';
import type { Share } from '../fit/monte-carlo.ts';
import { sampleParts } from '../fit/sample-parts.ts';
import { type Job, runInSlices } from './job.ts';

/** What is told of a pair besides its fit. */
export interface PairDetails {
  /** For all parts within their tolerance. */
  readonly threeWay: ThreeWay;
  /** What limits the clearance, or what is in the way, at the best placement. */
  readonly explanation: Explanation;
  /** The share of drawn pairs that go together; only where draws were asked for. */
  readonly drawn?: Share;
  /** How much higher the seated blank rides than the section's own, nanometres; null where that means nothing. */
  readonly seatOffset: number | null;
}

/** What a description is made of. */
export interface DescribeInput {
  readonly family: Family;
  readonly matrix: EntryMatrix;
  readonly conditions: Conditions;
  /** One tolerance for every part in place of those of the family, nanometres. */
  readonly tolerance?: number;
  /** How many pairs of new, upright parts to draw for each pair; none where not given. */
  readonly draws?: number;
}

/** Every run draws the same parts. */
const SEED = 1;

/** The details of every pair of a judged matrix, `[profile][opening]`, under the conditions it was judged under. */
export const describeFamily: Job<DescribeInput, PairDetails[][]> = (input, context) =>
  runInSlices(described(input), context);

function* described(input: DescribeInput): Generator<{ done: number; total: number }, PairDetails[][], void> {
  const { family, matrix, conditions, tolerance, draws } = input;
  const openings = openingsOf(family).map((profile) => ({ profile, shape: openingUnder(profile.ring, conditions) }));
  const entrants = entrantsOf(family);
  const rows: PairDetails[][] = [];
  for (const [i, profile] of entrants.entries()) {
    const blank = blankUnder(profile.ring, conditions);
    const row: PairDetails[] = [];
    for (const [k, opening] of openings.entries()) {
      const fit = matrix.fits[i][k];
      const bands =
        tolerance === undefined ? bandsOf(family, profile, opening.profile) : { blank: tolerance, opening: tolerance };
      row.push({
        threeWay: judgeTolerance(opening.shape, blank, fit, bands, conditions.tiltLimit),
        explanation: explainPlacement(opening.shape.region, blank, fit.placement),
        ...(draws && { drawn: sampleParts(opening.shape, profile.ring, bands, draws, SEED) }),
        seatOffset: seatOffset(family, matrix, profile, opening.profile),
      });
      yield { done: i * openings.length + row.length, total: entrants.length * openings.length };
    }
    rows.push(row);
  }
  return rows;
}
