import type { EntryMatrix } from '../../family/entry-matrix.ts';
import type { Family } from '../../family/family.ts';
import type { Doors, RunningJudgement } from './doors.ts';
import { makeStore, type Store } from './store.ts';

/** How far the judging of the family has come. */
export type JudgingPhase = 'idle' | 'running' | 'done' | 'stopped' | 'failed';

/** What is known about the pairs of the open family. */
export interface ResultsState {
  readonly phase: JudgingPhase;
  readonly done: number;
  readonly total: number;
  /** The judged matrix; null until the job has come back. */
  readonly fits: EntryMatrix | null;
  /** Why the judging failed, in plain words; empty otherwise. */
  readonly trouble: string;
}

const NOTHING_KNOWN: ResultsState = { phase: 'idle', done: 0, total: 0, fits: null, trouble: '' };

/** A store in which nothing has been judged. */
export function makeResultsStore(): Store<ResultsState> {
  return makeStore(NOTHING_KNOWN);
}

/** Starts and stops the matrix job and keeps its answers; at most one job is on its way. */
export interface Judging {
  start(family: Family): void;
  stop(): void;
}

/**
 * Ties the matrix job to a results store. Starting again cancels the job on its way, and whatever a
 * cancelled job still sends is thrown away, so that an old family's answers never land on a new one.
 *
 * @check tests/unit/app/results-state.test.ts
 */
export function makeJudging(store: Store<ResultsState>, doors: Pick<Doors, 'judgeFamily'>): Judging {
  let current: { readonly job: RunningJudgement | null } | null = null;
  const drop = () => {
    current?.job?.cancel();
    current = null;
  };
  const start = (family: Family) => {
    drop();
    store.setState({ ...NOTHING_KNOWN, phase: 'running' });
    const mine = { job: null as RunningJudgement | null };
    current = mine;
    const isCurrent = () => current === mine;
    const fail = (reason: unknown) => {
      if (isCurrent()) store.setState({ phase: 'failed', trouble: troubleText(reason) });
    };
    try {
      mine.job = doors.judgeFamily(family, (done, total) => {
        if (isCurrent()) store.setState({ done, total });
      });
      mine.job.result.then((fits) => isCurrent() && store.setState({ phase: 'done', fits }), fail);
    } catch (reason) {
      // A browser that allows no worker says so by throwing at once.
      fail(reason);
    }
  };
  const stop = () => {
    if (store.getState().phase !== 'running') return;
    drop();
    store.setState({ phase: 'stopped' });
  };
  return { start, stop };
}

function troubleText(reason: unknown): string {
  return reason instanceof Error ? reason.message : String(reason);
}
