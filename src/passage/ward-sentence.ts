import type { FormatBand, FormatLength } from '../fit/fit-sentence.ts';
import type { GrooveFault, WardAnswer } from './ward-by-ward.ts';

const FAULTS: Readonly<Record<GrooveFault, string>> = {
  'too-shallow': 'is too shallow for it',
  'too-high': 'lies too high for it',
  'too-low': 'lies too low for it',
  'too-narrow': 'is too narrow for it',
};

/** "Left ward at 1.9-2.7 mm": a ward with its height above the back of the blank, or how far it lies below that. */
export function wardName({ side, from, to }: Pick<WardAnswer, 'side' | 'from' | 'to'>, band: FormatBand): string {
  const name = side === 'left' ? 'Left ward' : 'Right ward';
  return to > 0 ? `${name} at ${band(from, to)}` : `${name} ${band(-to, -from)} below the back`;
}

/**
 * How a blank gets by one ward, in words: "passes through the left groove at 1.9-2.7 mm, 0.055 mm spare".
 *
 * @check tests/unit/passage/ward-by-ward.test.ts
 */
export function passingWords({ passing }: WardAnswer, length: FormatLength, band: FormatBand): string {
  switch (passing.how) {
    case 'groove': {
      const { groove, spare } = passing;
      return `passes through the ${groove.side} groove at ${band(groove.from, groove.to)}, ${length(spare)} spare`;
    }
    case 'clear':
      return `the blade stays clear of it, ${length(passing.spare)} spare`;
    case 'short-groove': {
      const { groove, fault, bite } = passing;
      return `the ${groove.side} groove at ${band(groove.from, groove.to)} ${FAULTS[fault]}; it bites ${length(bite)}`;
    }
    case 'no-groove':
      return `no groove here; it bites ${length(passing.bite)}`;
  }
}
