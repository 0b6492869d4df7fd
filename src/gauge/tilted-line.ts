import type { Point } from '../geom/point.ts';
import { type FallingLine, higherOf, isPieceUnder, isUnder } from './falling-line.ts';
import { visitStances } from './stances.ts';
import { trapezoidsOf } from './trapezoids.ts';
import { turnedAbout } from './turn-points.ts';
import { bestOf, highest, thicknessBound, uprightLine } from './upright-line.ts';

/** How close a tilted line is, nanometres. */
export const TILTED_ACCURACY = 1_000;

/** A little less, so that the rounding of corners keeps within it. */
const SLACK = TILTED_ACCURACY - 2;

/** What would raise the line by less than this is left out, nanometres: else it would have thousands of corners. */
const LEAST_GAIN = 300;

/** Angles on either side of upright that are looked at before anything is bounded. */
const FIRST_LOOKS = 4;

/** A range of tilts: its middle and half its width, radians. */
interface TiltRange {
  readonly middle: number;
  readonly half: number;
}

/**
 * The greatest thickness of a strip that may be tilted by up to `limit` either way, against its height.
 *
 * Branch and bound over the tilt. A strip of thickness w and height h that is turned by d covers an unturned one of
 * thickness w' and height h' with w = w' cos d + h' sin d and h = h' cos d + w' sin d, about the same middle. So what goes in
 * at a tilt of a range goes in, made smaller by that much, at the middle of the range: the strips of the middle, made
 * larger by as much as half the range turns, bound those of the whole range. A range is done with when that bound lies
 * nowhere above the line that is known by more than {@link TILTED_ACCURACY}; else it is halved. Most parts of the opening
 * are done with by one corner of theirs, without a look at their walls.
 *
 * @param outline a simple polygon, nanometres.
 * @param limit radians, above 0.
 * @yields how much of the tilts is done with.
 * @returns the line; marks are the tilts at which its strips go in, counter-clockwise.
 * @accuracy every strip of the line goes in; at no tilt one that is taller and thicker by more than {@link TILTED_ACCURACY}.
 * @check tests/outside/gauge-tilt.test.ts, tests/laws/gauge.test.ts
 */
export function* tiltedLine(
  outline: readonly Point[],
  limit: number,
): Generator<{ done: number; total: number }, FallingLine, void> {
  const total = 2 * limit;
  let line = uprightLine(outline);
  for (let k = 1; k <= FIRST_LOOKS; k++)
    for (const tilt of [(-limit * k) / FIRST_LOOKS, (limit * k) / FIRST_LOOKS]) {
      line = higherOf(line, uprightLine(turnedAbout(outline, -tilt), tilt));
      yield { done: 0, total };
    }
  let done = 0;
  let open: TiltRange[] = [{ middle: 0, half: limit }];
  while (open.length > 0) {
    const next: TiltRange[] = [];
    for (const range of open) {
      const { middle, half } = range;
      const looked = lookAt(outline, range, line);
      line = looked.line;
      if (looked.bounded) done += 2 * half;
      else next.push({ middle: middle - half / 2, half: half / 2 }, { middle: middle + half / 2, half: half / 2 });
      yield { done: Math.min(done, total), total };
    }
    open = next;
  }
  return line;
}

/** Looks at the middle of a range: the line with what goes in there, and whether it bounds the whole range. */
function lookAt(
  outline: readonly Point[],
  { middle, half }: TiltRange,
  known: FallingLine,
): { line: FallingLine; bounded: boolean } {
  const [c, s] = [Math.cos(half), Math.sin(half)];
  const higher: FallingLine[] = [];
  visitStances(trapezoidsOf(turnedAbout(outline, -middle)), (foot, head, left, right) => {
    const height = head.high - foot.low;
    const thickness = thicknessBound(foot, head, left, right);
    if (thickness <= 0) return;
    if (isUnder(known, SLACK, height * c + thickness * s, thickness * c + height * s)) return;
    higher.push(bestOf(foot, head, left, right, middle));
  });
  const gains = higher.filter((one) => !isBoundedBy(known, LEAST_GAIN, one, 1, 0));
  const line = gains.length === 0 ? known : higherOf(known, highest(gains));
  return { line, bounded: higher.every((one) => isBoundedBy(line, SLACK, one, c, s)) };
}

/** Whether a line whose strips are made larger by a turn (cosine and sine) lies under the known one, within a slack. */
function isBoundedBy(
  known: FallingLine,
  slack: number,
  { heights, thicknesses }: FallingLine,
  c: number,
  s: number,
): boolean {
  for (let i = 0; i < heights.length; i++) {
    const k = Math.min(i + 1, heights.length - 1);
    const [h0, w0, h1, w1] = [heights[i], thicknesses[i], heights[k], thicknesses[k]];
    if (!isPieceUnder(known, slack, h0 * c + w0 * s, w0 * c + h0 * s, h1 * c + w1 * s, w1 * c + h1 * s)) return false;
  }
  return true;
}
