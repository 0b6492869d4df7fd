import { findingStrength, type StrengthQuestion } from '../strength/find-strength.ts';
import type { SectionStrength } from '../strength/strength.ts';
import { type Job, runInSlices } from './job.ts';

/** What is known of one of the sections: its first answer, its last one, or why there is none. */
export type ExaminedBlade =
  | {
      /** Which of the questions. */
      readonly index: number;
      readonly strength: SectionStrength;
      /** Whether the answer is as close as was asked for. */
      readonly last: boolean;
    }
  | { readonly index: number; readonly trouble: string };

/**
 * What each of several sections bears, one after the other in one thread: first an answer from the first mesh for all of
 * them, then the last one for each. Parts are answers as they come.
 *
 * @returns how many sections were solved.
 * @check tests/unit/jobs/examine-blades.test.ts
 */
export const examineBlades: Job<readonly StrengthQuestion[], number> = (questions, context) =>
  runInSlices(
    examining(questions, (blade) => context.part?.(blade)),
    context,
  );

/** Work on one section that is not done yet. */
interface OpenBlade {
  readonly index: number;
  readonly steps: ReturnType<typeof findingStrength>;
}

function* examining(questions: readonly StrengthQuestion[], tell: (blade: ExaminedBlade) => void) {
  const total = 2 * questions.length;
  let done = 0;
  let solved = 0;
  let open: OpenBlade[] = questions.map((question, index) => ({ index, steps: findingStrength(question) }));
  for (const toTheEnd of [false, true]) {
    const left: OpenBlade[] = [];
    for (const blade of open) {
      const ended = yield* going(blade, toTheEnd, { done: done++, total }, tell);
      if (ended === null) left.push(blade);
      else if (ended) solved++;
    }
    open = left;
  }
  return solved;
}

/** Goes on with one section up to its next answer, or to its end: whether it was solved, null where it is not done. */
function* going(
  { index, steps }: OpenBlade,
  toTheEnd: boolean,
  far: { done: number; total: number },
  tell: (blade: ExaminedBlade) => void,
): Generator<{ done: number; total: number }, boolean | null, void> {
  try {
    for (;;) {
      const step = steps.next();
      if (step.done) {
        tell({ index, strength: step.value, last: true });
        return true;
      }
      yield far;
      if (!step.value.part || toTheEnd) continue;
      tell({ index, strength: step.value.part, last: false });
      return null;
    }
  } catch (reason) {
    // One section that cannot be meshed keeps none of the others from its answer.
    tell({ index, trouble: reason instanceof Error ? reason.message : String(reason) });
    return false;
  }
}
