import type { PassageInput } from '../../../passage/find-passage.ts';
import type { Passage } from '../../../passage/passage.ts';

/** The search for what keyways have in common; main.tsx names the real one. */
export interface PassageDoors {
  /** In a thread of its own, which a cancel ends. */
  findPassage(
    input: PassageInput,
    onProgress: (done: number, total: number) => void,
  ): { readonly result: Promise<Passage>; cancel(): void };
}
