import { JobCancelled } from '../../../jobs/job.ts';
import type { PassageInput } from '../../../passage/find-passage.ts';
import type { Passage } from '../../../passage/passage.ts';
import type { JobOnItsWay } from '../doors.ts';
import type { Session } from '../session.ts';
import { makeStore, type Store } from '../store.ts';
import type { PassageDoors } from './passage-doors.ts';

/** How far the search for a passage has come. */
export interface FindingState {
  readonly phase: 'idle' | 'finding' | 'found' | 'stopped' | 'failed';
  readonly done: number;
  readonly total: number;
  /** Why it failed, in plain words; empty otherwise. */
  readonly trouble: string;
  /** What was asked last, and what was found last with what it was found for. */
  readonly asked: PassageInput | null;
  readonly found: { readonly input: PassageInput; readonly passage: Passage } | null;
}

const NOTHING: FindingState = { phase: 'idle', done: 0, total: 0, trouble: '', asked: null, found: null };

/** So many answers are kept, so that a look back costs nothing. */
const MOST_KEPT = 8;

/**
 * Finds passages in another thread, one at a time: another question cancels the one on its way. Answers are kept by what
 * was asked; the same outlines, chosen alike, are not searched twice.
 *
 * @check tests/unit/app/passage-finding.test.ts
 */
export class PassageFinding {
  readonly store: Store<FindingState> = makeStore(NOTHING);
  private readonly kept: { input: PassageInput; passage: Passage }[] = [];
  private job: JobOnItsWay<Passage> | null = null;

  constructor(private readonly doors: PassageDoors) {}

  /** Asks for a passage; null where nobody looks any more. */
  ask(input: PassageInput | null): void {
    const { asked } = this.store.getState();
    if (input !== null && asked !== null && isSame(input, asked)) return;
    this.drop();
    this.store.setState({ asked: input, phase: 'idle', trouble: '' });
    if (input !== null && input.chosen.length > 0) this.find(input);
  }

  /** Stops the search on its way; what was found before stays. */
  stop(): void {
    if (!this.job) return;
    this.drop();
    this.store.setState({ phase: 'stopped' });
  }

  /** Searches again after a stop or a failure. */
  again(): void {
    const { asked } = this.store.getState();
    if (asked && !this.job) this.find(asked);
  }

  private drop(): void {
    this.job?.cancel();
    this.job = null;
  }

  private find(input: PassageInput): void {
    const known = this.kept.find((one) => isSame(one.input, input));
    if (known) {
      this.store.setState({ phase: 'found', found: known });
      return;
    }
    this.store.setState({ phase: 'finding', done: 0, total: 0, trouble: '' });
    try {
      const job = this.doors.findPassage(input, (done, total) => {
        if (this.job === job) this.store.setState({ done, total });
      });
      this.job = job;
      job.result.then(
        (passage) => this.landed(job, { input, passage }),
        (reason) => this.fell(job, reason),
      );
    } catch (reason) {
      // A browser that allows no thread says so by throwing at once.
      this.store.setState({ phase: 'failed', trouble: troubleText(reason) });
    }
  }

  private landed(job: JobOnItsWay<Passage>, found: { input: PassageInput; passage: Passage }): void {
    this.kept.unshift(found);
    this.kept.splice(MOST_KEPT);
    if (this.job !== job) return;
    this.job = null;
    this.store.setState({ phase: 'found', found });
  }

  private fell(job: JobOnItsWay<Passage>, reason: unknown): void {
    if (this.job !== job) return;
    this.job = null;
    if (reason instanceof JobCancelled) this.store.setState({ phase: 'stopped' });
    else this.store.setState({ phase: 'failed', trouble: troubleText(reason) });
  }
}

function troubleText(reason: unknown): string {
  return reason instanceof Error ? reason.message : String(reason);
}

/** Whether two questions have the same answer: outlines are values, an unchanged one is the same object. */
function isSame(a: PassageInput, b: PassageInput): boolean {
  return (
    a.runningClearance === b.runningClearance &&
    a.chosen.length === b.chosen.length &&
    a.openings.length === b.openings.length &&
    a.chosen.every((id, i) => id === b.chosen[i]) &&
    a.openings.every(({ id, ring }, i) => id === b.openings[i].id && ring === b.openings[i].ring)
  );
}

const findings = new WeakMap<Session, PassageFinding>();

/** The search of a window. */
export function passageFindingOf(session: Session): PassageFinding {
  const known = findings.get(session) ?? new PassageFinding(session.doors.passage);
  findings.set(session, known);
  return known;
}
