import type { PassageInput } from '../../../passage/find-passage.ts';
import type { MillPassageInput } from '../../../passage/mill-passage.ts';
import type { Passage } from '../../../passage/passage.ts';
import type { JobOnItsWay } from '../job-on-its-way.ts';

/** The search for what keyways have in common; main.tsx names the real ones. */
export interface PassageDoors {
  /** In a thread of its own, which a cancel ends. */
  findPassage(
    input: PassageInput,
    onProgress: (done: number, total: number) => void,
  ): { readonly result: Promise<Passage>; cancel(): void };
  /** The same passage with a blank that straight cutters can mill; null where there is none. */
  millPassage(input: MillPassageInput, onProgress: (done: number, total: number) => void): JobOnItsWay<Passage | null>;
}
