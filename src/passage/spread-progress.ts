type Progress = { done: number; total: number };

/** Parts of the whole that progress is told in. */
const WHOLE = 10_000;

/**
 * Steps whose progress is told as a stretch of the whole.
 *
 * @param from share of the whole at which they begin, 0 to 1; `to`: at which they end.
 * @returns what the steps return.
 * @check tests/unit/passage/demo-passage.test.ts
 */
export function* spreadProgress<Value>(
  steps: Generator<Progress, Value, void>,
  from: number,
  to: number,
): Generator<Progress, Value, void> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    const share = from + (to - from) * Math.min(1, step.value.done / step.value.total);
    yield { done: Math.round(share * WHOLE), total: WHOLE };
  }
}
