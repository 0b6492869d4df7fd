import { NM_PER_INCH, NM_PER_MM } from '../../geom/point.ts';

/** Nanometres in each unit that lengths are shown in. */
export const NM_OF_UNIT = { mm: NM_PER_MM, in: NM_PER_INCH } as const;

/** A ruler's division: `minor` between two strokes, `major` between two numbers, in nanometres. */
export interface RulerSteps {
  readonly minor: number;
  readonly major: number;
}

const LADDER = [1, 2, 5] as const;

/**
 * The finest 1-2-5 division of `unit` nanometres whose numbers stand at least `spacing` pixels apart, with
 * five or ten strokes to a number (two gives fours).
 */
export function rulerSteps(scale: number, unit: number, spacing: number): RulerSteps {
  for (let power = -4; power <= 3; power++) {
    for (const digit of LADDER) {
      const major = digit * 10 ** power * unit;
      if (major * scale >= spacing) return { major, minor: major / (digit === 2 ? 4 : 5) };
    }
  }
  return { major: 1e4 * unit, minor: 2e3 * unit };
}

/** The longest 1-2-5 length of `unit` nanometres that is at most `room` pixels, for a scale bar. */
export function scaleBarLength(scale: number, unit: number, room: number): number {
  let best = 1e-4 * unit;
  for (let power = -4; power <= 3; power++) {
    for (const digit of LADDER) {
      const length = digit * 10 ** power * unit;
      if (length * scale <= room) best = length;
    }
  }
  return best;
}
