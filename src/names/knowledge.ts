import type { Family } from '../family/family.ts';
import type { Fit } from '../fit/fit.ts';
import type { Register } from './register.ts';

/** What is known of a family when a question about it is asked. */
export interface Knowledge {
  readonly family: Family;
  readonly register: Register;
  /** The fit of a blank or tool in a keyway, by their ids; undefined where it is not judged yet. */
  fitOf(entrantId: string, openingId: string): Fit | undefined;
  /**
   * Why: "blocked by the left ward at 3.1-4.0 mm, 0.42 mm too deep", or of a pair that goes in "the narrowest gap at the
   * left ward". The empty text where it is not known.
   */
  reason(entrantId: string, openingId: string): string;
  /** How a length is written for the reader, unit included; gets nanometres. */
  length(nm: number): string;
}
