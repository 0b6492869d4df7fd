import type { Capacity, CapacityInput } from '../../../../capacity/capacity.ts';
import { AskedJob } from '../../asked-job.ts';
import type { Session } from '../../session.ts';
import type { CapacityDoors } from './capacity-doors.ts';
import { isSameEntry } from './capacity-sections.ts';

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

/** Rules are a value that a change makes anew; which blank goes in where is told by its cells. */
function isSame(a: CapacityInput, b: CapacityInput): boolean {
  return (
    a.rules === b.rules &&
    a.example === b.example &&
    a.sections === b.sections &&
    (a.goesIn && b.goesIn ? isSameEntry(a.goesIn, b.goesIn) : a.goesIn === b.goesIn)
  );
}

const countings = new WeakMap<Session, CountingCapacity>();

/** The count of a window. */
export function countingOf(session: Session): CountingCapacity {
  const known = countings.get(session) ?? new CountingCapacity(session.doors.capacity);
  countings.set(session, known);
  return known;
}
