import { JobCancelled } from '../../jobs/job.ts';
import { giveUp, type JobOnItsWay } from './job-on-its-way.ts';
import type { Session } from './session.ts';
import { makeStore, type Store } from './store.ts';
import { troubleText } from './trouble-text.ts';

/** How far the job of a question has come. */
export interface AskedState<Input, Output> {
  readonly phase: 'idle' | 'finding' | 'found' | 'stopped' | 'failed';
  readonly done: number;
  readonly total: number;
  /** Why it failed, in plain words; empty otherwise. */
  readonly trouble: string;
  readonly asked: Input | null;
  /** What was found last, and for what. */
  readonly found: { readonly input: Input; readonly output: Output } | null;
}

/** So many answers are kept, so that a look back costs nothing. */
const MOST_KEPT = 8;

/**
 * A question that is answered in another thread, one at a time: another question cancels the one on its way. Answers are
 * kept by what was asked.
 *
 * @check tests/unit/app/asked-job.test.ts
 */
export class AskedJob<Input, Output> {
  readonly store: Store<AskedState<Input, Output>> = makeStore<AskedState<Input, Output>>({
    phase: 'idle',
    done: 0,
    total: 0,
    trouble: '',
    asked: null,
    found: null,
  });
  private readonly kept: { input: Input; output: Output }[] = [];
  private job: JobOnItsWay<Output> | null = null;

  /**
   * @param start begins the job.
   * @param isSame whether two questions have the same answer.
   */
  constructor(
    private readonly start: (input: Input, onProgress: (done: number, total: number) => void) => JobOnItsWay<Output>,
    private readonly isSame: (a: Input, b: Input) => boolean,
  ) {}

  /** Asks; null where nobody looks any more. */
  ask(input: Input | null): void {
    const { asked } = this.store.getState();
    if (input !== null && asked !== null && this.isSame(input, asked)) return;
    this.drop();
    this.store.setState({ asked: input, phase: 'idle', trouble: '' });
    if (input !== null) this.find(input);
  }

  /**
   * What was found for this question, and for no other: what is drawn is asked for only afterwards, so that the answer
   * that came last may belong to what was drawn before.
   */
  answerTo(input: Input | null): { readonly input: Input; readonly output: Output } | null {
    const { phase, found } = this.store.getState();
    return phase === 'found' && found && input !== null && this.isSame(found.input, input) ? found : null;
  }

  /** Begins anew: another family is open, of which nothing that was found says anything. */
  forget(): void {
    this.drop();
    this.store.setState({ phase: 'idle', trouble: '', asked: null, found: null });
  }

  /** Stops the job on its way; what was found before stays. */
  stop(): void {
    if (!this.job) return;
    this.job.cancel();
    this.job = null;
    this.store.setState({ phase: 'stopped' });
  }

  /** Asks again after a stop or a failure. */
  again(): void {
    const { asked } = this.store.getState();
    if (asked !== null && !this.job) this.find(asked);
  }

  private drop(): void {
    const { job } = this;
    this.job = null;
    if (job) giveUp(job);
  }

  private find(input: Input): void {
    const known = this.kept.find((one) => this.isSame(one.input, input));
    if (known) {
      this.store.setState({ phase: 'found', found: known });
      return;
    }
    this.store.setState({ phase: 'finding', done: 0, total: 0, trouble: '' });
    try {
      const job = this.start(input, (done, total) => {
        if (this.job === job) this.store.setState({ done, total });
      });
      this.job = job;
      job.result.then(
        (output) => this.landed(job, { input, output }),
        (reason) => this.fell(job, reason),
      );
    } catch (reason) {
      // A browser that allows no thread says so by throwing at once.
      this.store.setState({ phase: 'failed', trouble: troubleText(reason) });
    }
  }

  private landed(job: JobOnItsWay<Output>, found: { input: Input; output: Output }): void {
    this.kept.unshift(found);
    this.kept.splice(MOST_KEPT);
    if (this.job !== job) return;
    this.job = null;
    this.store.setState({ phase: 'found', found });
  }

  private fell(job: JobOnItsWay<Output>, reason: unknown): void {
    if (this.job !== job) return;
    this.job = null;
    if (reason instanceof JobCancelled) this.store.setState({ phase: 'stopped' });
    else this.store.setState({ phase: 'failed', trouble: troubleText(reason) });
  }
}

/**
 * One asked job for each window, which begins anew with another family.
 *
 * @param make the job of a window, when it is first looked for.
 * @check tests/unit/app/asked-job.test.ts
 */
export function makeAskedJobs<Input, Output>(
  make: (session: Session) => AskedJob<Input, Output>,
): (session: Session) => AskedJob<Input, Output> {
  const jobs = new WeakMap<Session, AskedJob<Input, Output>>();
  return (session) => {
    const known = jobs.get(session);
    if (known) return known;
    const made = make(session);
    session.documents.subscribe((now, before) => {
      if (now.opened !== before.opened && now.document !== before.document) made.forget();
    });
    jobs.set(session, made);
    return made;
  };
}
