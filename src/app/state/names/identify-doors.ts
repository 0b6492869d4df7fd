import type { Identification, Question } from '../../../identify/identify.ts';

/** The operation that ranks a family's sections for an unknown outline; main.tsx names the real one. */
export interface IdentifyDoors {
  /** In another thread. */
  identifyOutline(
    question: Question,
    onProgress: (done: number, total: number) => void,
  ): {
    readonly result: Promise<Identification>;
    cancel(): void;
  };
}
