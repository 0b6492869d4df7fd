import type { EntryMatrix } from '../family/entry-matrix.ts';
import type { GuardMargins } from '../family/guard-margin.ts';
import type { Collision, Contact, Fit, Verdict, WardSide } from '../fit/fit.ts';
import type { ThreeWay } from '../fit/judge-tolerance.ts';
import type { PairDetails } from '../jobs/describe-family.ts';
import type { FeatureJson, NumberFeature } from './outline-numbers.ts';

/** A place of narrowest gap, where the blank cannot have more room. */
export interface LimitJson {
  readonly side: WardSide;
  readonly ward: boolean;
  /** Height above the lowest point of the keyway. */
  readonly atMm: number;
  readonly gapUm: number;
  /** What of the blank and what of the opening come nearest; null under wear, which leaves no corner of the file. */
  readonly blank: FeatureJson | null;
  readonly opening: FeatureJson | null;
}

/** A part of the plug that the blank collides with in its best placement. */
export interface ObstacleJson {
  readonly side: WardSide;
  readonly ward: boolean;
  /** Height band above the lowest point of the keyway. */
  readonly fromMm: number;
  readonly toMm: number;
  readonly depthUm: number;
}

/** One pair as printed by `fit --json`; a suffix names the unit. */
export interface PairJson {
  readonly profile: string;
  readonly opening: string;
  readonly verdict: Verdict;
  /** The uniform gap in the best placement; minus the interference where blocked. To 0.1 um. */
  readonly clearanceUm: number;
  /** The move from the profile as drawn to its best place in the opening as drawn. To 1 nm and 0.0001 degrees. */
  readonly placement: { readonly dxMm: number; readonly dyMm: number; readonly tiltDeg: number };
  readonly playUm: { readonly lateral: number; readonly vertical: number };
  /** Of all parts within their tolerance, always some, or never any goes in. */
  readonly threeWay: ThreeWay;
  /** The narrowest first; empty where blocked. */
  readonly limits: readonly LimitJson[];
  /** The deepest first; empty where it goes in. */
  readonly blockedBy: readonly ObstacleJson[];
  /** The depth by which it still collides in the best placement; 0 where it goes in. */
  readonly interferenceUm: number;
  /** The share of drawn parts that go together, with its 95 % confidence interval; only with --draws. */
  readonly drawn?: { readonly share: number; readonly from: number; readonly to: number };
  /** How much higher the seated blank rides than the section's own; null where either does not go in. */
  readonly seatUm: number | null;
}

/** The two margins of a family with the pairs that set them; null where there is none. */
export interface MarginsJson {
  readonly guard: { readonly profile: string; readonly opening: string; readonly wearUm: number } | null;
  readonly clearance: { readonly profile: string; readonly opening: string; readonly clearanceUm: number } | null;
}

/** What `fit --json` prints. */
export interface FitJson {
  readonly openings: readonly string[];
  readonly profiles: readonly string[];
  readonly pairs: readonly PairJson[];
  /** Only where asked for. */
  readonly margins?: MarginsJson;
}

/** What the JSON of a matrix is made of. */
export interface FitJsonInput {
  readonly matrix: EntryMatrix;
  readonly details: readonly (readonly PairDetails[])[];
  /** Null where the corners judged are no longer those of the file. */
  readonly numberFeature: NumberFeature | null;
  readonly margins?: GuardMargins;
}

/**
 * A matrix in the units of people and other programs, pairs row by row.
 *
 * @check tests/unit/cli/fit-json.test.ts
 */
export function toFitJson({ matrix, details, numberFeature, margins }: FitJsonInput): FitJson {
  const { openings, profiles, fits } = matrix;
  const pairs = profiles.flatMap((profile, i) =>
    openings.map((opening, k) => ({
      ...toPair(profile, opening, fits[i][k]),
      ...toDetails(profile, opening, fits[i][k], details[i][k], numberFeature),
    })),
  );
  return { openings, profiles, pairs, ...(margins && { margins: toMargins(margins) }) };
}

/** The text that `fit --json` prints: one pair to a line. */
export function writeFitJson({ openings, profiles, pairs, margins }: FitJson): string {
  const lines = pairs.map((pair) => `    ${JSON.stringify(pair)}`);
  const list = lines.length > 0 ? `[\n${lines.join(',\n')}\n  ]` : '[]';
  const rest = margins ? `,\n  "margins": ${JSON.stringify(margins)}` : '';
  return `{\n  "openings": ${JSON.stringify(openings)},\n  "profiles": ${JSON.stringify(profiles)},\n  "pairs": ${list}${rest}\n}\n`;
}

function toPair(profile: string, opening: string, fit: Fit) {
  const { x, y, tilt } = fit.placement;
  return {
    profile,
    opening,
    verdict: fit.verdict,
    clearanceUm: clearanceUm(fit),
    placement: { dxMm: rounded(x / 1e6, 6), dyMm: rounded(y / 1e6, 6), tiltDeg: rounded((tilt * 180) / Math.PI, 4) },
    playUm: { lateral: rounded(fit.play.lateral / 1e3, 1), vertical: rounded(fit.play.vertical / 1e3, 1) },
  };
}

function toDetails(
  profile: string,
  opening: string,
  fit: Fit,
  { threeWay, explanation, seatOffset, drawn }: PairDetails,
  numberFeature: NumberFeature | null,
) {
  const blocked = fit.verdict === 'blocked';
  const toLimit = ({ blankFeature, openingFeature, ...contact }: Contact): LimitJson => ({
    ...toPlace(contact),
    blank: numberFeature?.(profile, blankFeature) ?? null,
    opening: numberFeature?.(opening, openingFeature) ?? null,
  });
  return {
    threeWay,
    limits: blocked ? [] : explanation.contacts.map(toLimit),
    blockedBy: blocked ? explanation.collisions.map(toObstacle) : [],
    interferenceUm: blocked ? -clearanceUm(fit) : 0,
    seatUm: seatOffset === null ? null : rounded(seatOffset / 1e3, 1),
    ...(drawn && {
      drawn: { share: rounded(drawn.share, 4), from: rounded(drawn.from, 4), to: rounded(drawn.to, 4) },
    }),
  };
}

function toPlace({ side, ward, height, gap }: Pick<Contact, 'side' | 'ward' | 'height' | 'gap'>) {
  return { side, ward, atMm: rounded(height / 1e6, 3), gapUm: rounded(gap / 1e3, 1) };
}

function toObstacle({ side, ward, from, to, depth }: Collision): ObstacleJson {
  return { side, ward, fromMm: rounded(from / 1e6, 3), toMm: rounded(to / 1e6, 3), depthUm: rounded(depth / 1e3, 1) };
}

function toMargins({ guard, clearance }: GuardMargins): MarginsJson {
  return {
    guard: guard && { profile: guard.profile, opening: guard.opening, wearUm: rounded(guard.length / 1e3, 1) },
    clearance: clearance && {
      profile: clearance.profile,
      opening: clearance.opening,
      clearanceUm: rounded(clearance.length / 1e3, 1),
    },
  };
}

/**
 * The margin of a fit in micrometres, to the nearest 0.1; a blocked pair stays below zero however small its
 * interference, so that the number never contradicts the verdict.
 */
export function clearanceUm(fit: Fit): number {
  const um = rounded(fit.clearance / 1e3, 1);
  return fit.verdict === 'blocked' ? Math.min(um, -0.1) : um;
}

/** Rounded to so many decimals; never minus zero. */
function rounded(value: number, decimals: number): number {
  const scale = 10 ** decimals;
  return Math.round(value * scale) / scale + 0;
}
