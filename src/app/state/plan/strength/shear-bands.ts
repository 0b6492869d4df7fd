import type { ShearField } from '../../../../strength/strength.ts';

/** A picture of the shear: parts of the section between two levels, and the lines at the levels. */
export interface ShearBands {
  /** The levels, ascending, the first 0; the last band has no upper one. Unit of the field. */
  readonly levels: readonly number[];
  /** `bands[i]`: convex parts where the shear is at least `levels[i]` and less than the next; nanometres, x then y. */
  readonly bands: readonly (readonly Float64Array[])[];
  /** `lines[i]`: pieces of the line where the shear is `levels[i]`: x, y, x, y. */
  readonly lines: readonly (readonly Float64Array[])[];
}

/**
 * Cuts the triangles of a field at levels; within a triangle the shear is taken as even-sloped.
 *
 * @check tests/unit/app/shear-bands.test.ts: areas of the bands add up to the section's
 */
export function shearBands({ points, triangles, shear }: ShearField, levels: readonly number[]): ShearBands {
  const bands: Float64Array[][] = levels.map(() => []);
  const lines: Float64Array[][] = levels.map(() => []);
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [triangles[t], triangles[t + 1], triangles[t + 2]].map((n) => ({
      x: points[2 * n],
      y: points[2 * n + 1],
      value: shear[n],
    }));
    let rest: Corner[] = corners;
    for (let i = 0; i < levels.length && rest.length > 0; i++) {
      const next = levels[i + 1] ?? Number.POSITIVE_INFINITY;
      const part = clip(rest, next, -1);
      if (part.length > 2) bands[i].push(flat(part));
      rest = next === Number.POSITIVE_INFINITY ? [] : clip(rest, next, 1);
      const line = crossing(corners, levels[i]);
      if (line) lines[i].push(line);
    }
  }
  return { levels, bands, lines };
}

interface Corner {
  readonly x: number;
  readonly y: number;
  readonly value: number;
}

/** The part of a convex polygon where the value is above (1) or below (-1) a level. */
function clip(corners: readonly Corner[], level: number, side: 1 | -1): Corner[] {
  if (!Number.isFinite(level)) return [...corners];
  const kept: Corner[] = [];
  for (const [i, corner] of corners.entries()) {
    const next = corners[(i + 1) % corners.length];
    const [here, there] = [side * (corner.value - level), side * (next.value - level)];
    if (here >= 0) kept.push(corner);
    if (here * there < 0) kept.push(between(corner, next, level));
  }
  return kept;
}

function between(a: Corner, b: Corner, level: number): Corner {
  const share = (level - a.value) / (b.value - a.value);
  return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y), value: level };
}

/** The piece of a level's line within a triangle. */
function crossing(corners: readonly Corner[], level: number): Float64Array | null {
  const ends: Corner[] = [];
  for (const [i, corner] of corners.entries()) {
    const next = corners[(i + 1) % corners.length];
    if ((corner.value - level) * (next.value - level) < 0) ends.push(between(corner, next, level));
  }
  return ends.length === 2 ? flat(ends) : null;
}

function flat(corners: readonly Corner[]): Float64Array {
  return Float64Array.from(corners.flatMap(({ x, y }) => [x, y]));
}

/** Steps of a scale that people read at a glance: 1, 2 or 5 times a power of ten, about `count` of them up to `most`. */
export function roundLevels(most: number, count: number): number[] {
  const rough = most / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((m) => m * power).find((s) => s >= rough * 0.999) ?? 10 * power;
  return Array.from({ length: Math.max(1, Math.ceil(most / step - 1e-9)) }, (_, i) => i * step);
}
