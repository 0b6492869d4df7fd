/** How far an outline is from one of the sections that it is compared with, nanometres. */
export interface Closeness {
  /** The Hausdorff distance. */
  readonly most: number;
  /** The root mean square distance. */
  readonly rms: number;
}

/** How sure it is what an unknown outline is. */
export type Likeness = 'certain' | 'probable' | 'either' | 'none';

/** What the closest sections say together. */
export interface LikenessAnswer {
  readonly likeness: Likeness;
  /** How many from the first of the ranking on may be it: 1 for `certain` and `probable`, more for `either`, else 0. */
  readonly count: number;
}

/**
 * What an outline may have been drawn wrong by where nobody says so, nanometres: a section of the family stands there as it
 * is meant; of one from outside it is not known how it was measured, and a file may hold a trace. Common practice, no source.
 */
export const USUAL_ERROR = { family: 10_000, outside: 50_000 } as const;

/** Up to so many times the drawing error is within it: it counts in both directions, at corners, and in the laying. */
const WITHIN = 2;

/** Beyond so many times the drawing error an outline is another section. */
const BEYOND = 6;

/** Sections this share of the drawing error apart cannot be told from each other; from the whole error on they can. */
const TOLD_APART = 0.5;

/**
 * How sure it is that an unknown outline is the section that it is closest to. With e the error that the unknown may have
 * been drawn with, h its Hausdorff and r its root mean square distance from a section, and the parting of two sections
 * the larger of (h2 - h1) / 2 and the root of r2^2 - r1^2:
 *
 * - `none`: h1 is more than 6 e.
 * - `either`: others are parted from the first by less than e / 2.
 * - `probable`: h1 is more than 2 e, or another is parted from the first by less than e.
 * - `certain`: all else.
 *
 * The root is the distance of the two sections from each other where the error of the unknown has nothing to do with
 * either; the half of the Hausdorff distances sees a small groove that hardly counts in a mean.
 *
 * @param ranked the closest first.
 * @param error nanometres, above 0.
 * @source a rule of our own; that squares of independent errors add is textbook statistics.
 * @check tests/unit/identify/judge-likeness.test.ts, tests/unit/identify/noisy-traces.test.ts
 */
export function judgeLikeness(ranked: readonly Closeness[], error: number): LikenessAnswer {
  if (ranked.length === 0 || ranked[0].most > BEYOND * error) return { likeness: 'none', count: 0 };
  const partings = ranked.slice(1).map((other) => partingOf(ranked[0], other));
  const alike = partings.filter((parting) => parting < TOLD_APART * error).length;
  if (alike > 0) return { likeness: 'either', count: 1 + alike };
  const sure = ranked[0].most <= WITHIN * error && partings.every((parting) => parting >= error);
  return { likeness: sure ? 'certain' : 'probable', count: 1 };
}

/** How far two sections are parted as the unknown sees them, nanometres; below 0 where the second is closer in all. */
export function partingOf(first: Closeness, second: Closeness): number {
  const squares = second.rms ** 2 - first.rms ** 2;
  return Math.max((second.most - first.most) / 2, Math.sign(squares) * Math.sqrt(Math.abs(squares)));
}
