import type { Capacity, CapacityInput } from '../../../capacity/capacity.ts';
import { JobCancelled } from '../../../jobs/job.ts';
import type { JobOnItsWay } from '../job-on-its-way.ts';
import type { Session } from '../session.ts';
import { makeStore, type Store } from '../store.ts';
import type { CapacityDoors } from './capacity-doors.ts';

/** How far the count has come. */
export interface CountingState {
  readonly phase: 'idle' | 'counting' | 'counted' | 'stopped' | 'failed';
  readonly done: number;
  readonly total: number;
  /** Why it failed, in plain words; empty otherwise. */
  readonly trouble: string;
  /** What was counted last, and for what. */
  readonly counted: { readonly input: CapacityInput; readonly capacity: Capacity } | null;
}

const NOTHING: CountingState = { phase: 'idle', done: 0, total: 0, trouble: '', counted: null };

/**
 * Counts keys in another thread; another question ends the count on its way.
 *
 * @check tests/unit/app/counting-capacity.test.ts
 */
export class CountingCapacity {
  readonly store: Store<CountingState> = makeStore(NOTHING);
  private asked: CapacityInput | null = null;
  private job: JobOnItsWay<Capacity> | null = null;

  constructor(private readonly doors: CapacityDoors) {}

  /** Asks for a count; the same question object asks nothing new. Null where nobody looks any more. */
  ask(input: CapacityInput | null): void {
    if (input === this.asked) return;
    this.drop();
    this.asked = input;
    if (input === null) this.store.setState({ phase: 'idle' });
    else if (input === this.store.getState().counted?.input) this.store.setState({ phase: 'counted' });
    else this.count(input);
  }

  /** Ends the count on its way; what was counted before stays. */
  stop(): void {
    if (!this.job) return;
    this.drop();
    this.store.setState({ phase: 'stopped' });
  }

  /** Counts again after a stop or a failure. */
  again(): void {
    if (this.asked && !this.job) this.count(this.asked);
  }

  private drop(): void {
    this.job?.cancel();
    this.job = null;
  }

  private count(input: CapacityInput): void {
    this.store.setState({ phase: 'counting', done: 0, total: 0, trouble: '' });
    try {
      const job = this.doors.countCapacity(input, (done, total) => {
        if (this.job === job) this.store.setState({ done, total });
      });
      this.job = job;
      job.result.then(
        (capacity) => this.end(job, { phase: 'counted', counted: { input, capacity } }),
        (reason) => this.end(job, ending(reason)),
      );
    } catch (reason) {
      // A browser that allows no thread says so by throwing at once.
      this.store.setState(ending(reason));
    }
  }

  private end(job: JobOnItsWay<Capacity>, state: Partial<CountingState>): void {
    if (this.job !== job) return;
    this.job = null;
    this.store.setState(state);
  }
}

function ending(reason: unknown): Partial<CountingState> {
  if (reason instanceof JobCancelled) return { phase: 'stopped' };
  return { phase: 'failed', trouble: reason instanceof Error ? reason.message : String(reason) };
}

const countings = new WeakMap<Session, CountingCapacity>();

/** The count of a window. */
export function countingOf(session: Session): CountingCapacity {
  const known = countings.get(session) ?? new CountingCapacity(session.doors.capacity);
  countings.set(session, known);
  return known;
}
