import type { MarksFault } from './marks-fault.ts';
import type { FourPoints, PlanePoint } from './plane-map.ts';

/** A corner nearer than this to the line through its two neighbours, in pixels, counts as in line with them. */
const LEAST_HEIGHT = 1;

/**
 * Why four marked corners are no picture of a rectangle: given in the order upper left, upper right, lower right, lower
 * left they must run clockwise as seen and make a convex figure.
 *
 * @check tests/unit/trace/picture-scale.test.ts
 */
export function fourCornersFault(corners: FourPoints): MarksFault | null {
  const turns = corners.map((corner, i) => {
    const before = corners[(i + 3) % 4];
    const after = corners[(i + 1) % 4];
    return heightOver(before, corner, after);
  });
  if (!turns.every(Number.isFinite)) return fault('a corner is no number', 'Mark all four corners.');
  const flat = turns.findIndex((height) => Math.abs(height) < LEAST_HEIGHT);
  if (flat >= 0)
    return fault(`corner ${flat + 1} is in line with its neighbours`, 'Mark the four corners of a rectangle.');
  const clockwise = turns.filter((height) => height > 0).length;
  if (clockwise === 4) return null;
  if (clockwise === 0)
    return fault(
      'the corners run the other way round, which would mirror the picture',
      'Mark upper left, upper right, lower right, lower left.',
    );
  if (clockwise === 2)
    return fault('the sides between the corners cross', 'Mark the corners in order round the rectangle.');
  return fault(
    'the four corners have a hollow, as no rectangle looks',
    'Mark the corners in order round the rectangle.',
  );
}

/** How far `corner` stands off the line from `before` to `after`, in pixels; positive where a clockwise walk turns there. */
function heightOver(before: PlanePoint, corner: PlanePoint, after: PlanePoint): number {
  const [ax, ay] = [corner.x - before.x, corner.y - before.y];
  const [bx, by] = [after.x - corner.x, after.y - corner.y];
  // y runs down, so a turn to the right, as seen, is positive.
  return (ax * by - ay * bx) / Math.max(1e-9, Math.hypot(after.x - before.x, after.y - before.y));
}

function fault(what: string, cure: string): MarksFault {
  return { of: 'rectangle', what, cure };
}
