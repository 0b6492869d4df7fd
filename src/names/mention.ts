import type { NameKind } from '../family/name-entry.ts';
import type { Resolution } from './resolve.ts';

/** A name in a question, with the words beside it that say what it is. */
export interface Mention {
  /** As it is written, without the words beside it. */
  readonly text: string;
  /** Where the name itself stands in the question, in characters. */
  readonly start: number;
  readonly end: number;
  /** The words that it takes with those beside it, by number; `to` is the one behind. */
  readonly from: number;
  readonly to: number;
  readonly kind: NameKind | null;
  readonly chambers: number | null;
  readonly resolution: Resolution;
  /** False for a word that may be no name at all: nothing comes near it, and it does not look like one. */
  readonly certain: boolean;
}
