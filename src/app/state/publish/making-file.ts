import { JobCancelled } from '../../../jobs/job.ts';
import { giveUp, type JobOnItsWay } from '../job-on-its-way.ts';
import type { Session } from '../session.ts';
import { makeStore, type Store } from '../store.ts';
import { troubleText } from '../trouble-text.ts';
import type { TellProgress } from './publish-doors.ts';

/** How far the file that is being made has come. */
export interface MakingState {
  readonly phase: 'idle' | 'finding' | 'stopped' | 'failed';
  /** What is made, as a key says it: "PDF". */
  readonly what: string;
  readonly done: number;
  readonly total: number;
  readonly trouble: string;
  /** What came of the last one, for the user. */
  readonly said: string;
}

const NOTHING: MakingState = { phase: 'idle', what: '', done: 0, total: 0, trouble: '', said: '' };

/** A file to be made: a job, and what is done with what it gives. */
export interface Making<Output> {
  readonly what: string;
  start(tell: TellProgress): JobOnItsWay<Output>;
  /** Hands the file over; what it answers is told the user. */
  take(output: Output): Promise<string>;
}

/**
 * Makes one file at a time in another thread; another wish takes the place of the one on its way.
 *
 * @check tests/unit/app/publish-making.test.ts
 */
export class MakingFile {
  readonly store: Store<MakingState> = makeStore(NOTHING);
  private job: JobOnItsWay<unknown> | null = null;
  private turn = 0;
  private begin: (() => Promise<void>) | null = null;

  /** Makes a file and hands it over; ends once that is done, given up or has failed. */
  make<Output>(making: Making<Output>): Promise<void> {
    this.begin = () => this.run(making);
    return this.begin();
  }

  /** Ends what is on its way; nothing is handed over. */
  stop(): void {
    if (!this.job) return;
    this.turn += 1;
    this.job.cancel();
    this.job = null;
    this.store.setState(this.stopped());
  }

  /** Makes the same file after a stop or a failure. */
  again(): void {
    if (!this.job) void this.begin?.();
  }

  /**
   * Takes back what was said of the last file, and the way to make it again: it was of something else. One that is on
   * its way is still handed over.
   */
  forget(): void {
    this.begin = null;
    const { phase, said } = this.store.getState();
    if (phase !== 'finding' && (phase !== 'idle' || said !== '')) this.store.setState(NOTHING);
  }

  /** Begins anew: another family is open, and nothing of the one before it is handed over any more. */
  drop(): void {
    this.turn += 1;
    if (this.job) giveUp(this.job);
    this.job = null;
    this.begin = null;
    this.store.setState(NOTHING);
  }

  /** What is told of a stopped file; that of something else cannot be made again. */
  private stopped(): Partial<MakingState> {
    const { what } = this.store.getState();
    return this.begin ? { phase: 'stopped' } : { ...NOTHING, said: `Stopped: no ${what} was saved.` };
  }

  private failed(trouble: string): Partial<MakingState> {
    const { what } = this.store.getState();
    return this.begin ? { phase: 'failed', trouble } : { ...NOTHING, said: `No ${what} was saved: ${trouble}.` };
  }

  private async run<Output>({ what, start, take }: Making<Output>): Promise<void> {
    if (this.job) giveUp(this.job);
    this.job = null;
    this.turn += 1;
    const { turn } = this;
    // Of one that another took the place of, or that was stopped, nothing is told.
    const tell = (state: Partial<MakingState>) => {
      if (turn === this.turn) this.store.setState(state);
    };
    tell({ ...NOTHING, what, phase: 'finding' });
    try {
      this.job = start((done, total) => tell({ done, total }));
      const output = (await this.job.result) as Output;
      if (turn !== this.turn) return;
      this.job = null;
      tell({ ...NOTHING, said: await take(output) });
    } catch (reason) {
      // A browser that allows no thread says so by throwing at once.
      if (turn === this.turn) this.job = null;
      tell(reason instanceof JobCancelled ? this.stopped() : this.failed(troubleText(reason)));
    }
  }
}

/**
 * What makes files, one for each window; with another family it begins anew.
 *
 * @check tests/unit/app/publish-making.test.ts
 */
export function makeMakings(): (session: Session) => MakingFile {
  const makings = new WeakMap<Session, MakingFile>();
  return (session) => {
    const known = makings.get(session);
    if (known) return known;
    const made = new MakingFile();
    session.documents.subscribe((now, before) => {
      if (now.opened !== before.opened && now.document !== before.document) made.drop();
    });
    makings.set(session, made);
    return made;
  };
}

/** What makes the files of a window. */
export const makingFileOf = makeMakings();
