import type { EntryMatrix } from '../family/entry-matrix.ts';
import type { Fit, Verdict } from '../fit/fit.ts';

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
}

/** What `fit --json` prints. */
export interface FitJson {
  readonly openings: readonly string[];
  readonly profiles: readonly string[];
  readonly pairs: readonly PairJson[];
}

/**
 * A matrix in the units of people and other programs, pairs row by row.
 *
 * @check tests/unit/cli/fit-json.test.ts
 */
export function toFitJson({ openings, profiles, fits }: EntryMatrix): FitJson {
  const pairs = profiles.flatMap((profile, i) => openings.map((opening, k) => toPair(profile, opening, fits[i][k])));
  return { openings, profiles, pairs };
}

/** The text that `fit --json` prints: one pair to a line. */
export function writeFitJson({ openings, profiles, pairs }: FitJson): string {
  const lines = pairs.map((pair) => `    ${JSON.stringify(pair)}`);
  const list = lines.length > 0 ? `[\n${lines.join(',\n')}\n  ]` : '[]';
  return `{\n  "openings": ${JSON.stringify(openings)},\n  "profiles": ${JSON.stringify(profiles)},\n  "pairs": ${list}\n}\n`;
}

function toPair(profile: string, opening: string, fit: Fit): PairJson {
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
