import type { Capacity, CapacityInput } from '../../../../capacity/capacity.ts';
import { AskedJob, makeAskedJobs } from '../../asked-job.ts';
import type { CapacityDoors } from './capacity-doors.ts';
import { isSameEntry, type JudgedBlanks } from './capacity-sections.ts';

/**
 * Counts keys in another thread; another question ends the count on its way.
 *
 * @check tests/unit/app/counting-capacity.test.ts
 */
export class CountingCapacity extends AskedJob<CapacityInput, Capacity> {
  constructor(doors: CapacityDoors) {
    super((input, tell) => doors.countCapacity(input, tell), isSame);
  }
}

/**
 * What was counted last, as far as it still tells something of a family: its numbers name blanks and keyways by their
 * places, so an answer for other cells names the wrong ones, or none that there are.
 *
 * @check tests/unit/app/counting-capacity.test.ts
 */
export function answerFor(
  found: { readonly input: CapacityInput; readonly output: Capacity } | null,
  judged: JudgedBlanks | null,
): Capacity | null {
  return found && isSameCells(found.input.goesIn, judged?.goesIn ?? null) ? found.output : null;
}

/** Rules are a value that a change makes anew; which blank goes in where is told by its cells. */
function isSame(a: CapacityInput, b: CapacityInput): boolean {
  return a.rules === b.rules && a.example === b.example && a.sections === b.sections && isSameCells(a.goesIn, b.goesIn);
}

function isSameCells(a: CapacityInput['goesIn'], b: CapacityInput['goesIn']): boolean {
  return a && b ? isSameEntry(a, b) : a === b;
}

/** The count of a window. */
export const countingOf = makeAskedJobs<CapacityInput, Capacity>(({ doors }) => new CountingCapacity(doors.capacity));
