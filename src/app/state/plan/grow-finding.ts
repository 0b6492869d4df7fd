import type { Family } from '../../../family/family.ts';
import { JobCancelled } from '../../../jobs/job.ts';
import type { GrowReport } from '../../../plan/grow.ts';
import type { GrowInput } from '../../../plan/grow-family.ts';
import type { JobOnItsWay } from '../job-on-its-way.ts';
import type { Session } from '../session.ts';
import { makeStore, type Store } from '../store.ts';
import type { GrowDoors } from './grow-doors.ts';

/** How far the search for room has come. */
export interface GrowFindingState {
  readonly phase: 'idle' | 'finding' | 'found' | 'stopped' | 'failed';
  readonly done: number;
  readonly total: number;
  /** Why it failed, in plain words; empty otherwise. */
  readonly trouble: string;
  readonly asked: GrowInput | null;
  /** What was found last, and for what. */
  readonly found: { readonly input: GrowInput; readonly report: GrowReport } | null;
}

const NOTHING: GrowFindingState = { phase: 'idle', done: 0, total: 0, trouble: '', asked: null, found: null };

/** So many answers are kept, so that a look back costs nothing. */
const MOST_KEPT = 6;

/**
 * Finds room to grow in another thread, one question at a time: another one cancels that on its way. Answers are kept by
 * what was asked.
 *
 * @check tests/unit/app/grow-finding.test.ts
 */
export class GrowFinding {
  readonly store: Store<GrowFindingState> = makeStore(NOTHING);
  private readonly kept: { input: GrowInput; report: GrowReport }[] = [];
  private job: JobOnItsWay<GrowReport> | null = null;

  constructor(private readonly doors: GrowDoors) {}

  /** Asks; null where nobody looks any more. */
  ask(input: GrowInput | null): void {
    const { asked } = this.store.getState();
    if (input !== null && asked !== null && isSame(input, asked)) return;
    this.drop();
    this.store.setState({ asked: input, phase: 'idle', trouble: '' });
    if (input !== null) this.find(input);
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

  private find(input: GrowInput): void {
    const known = this.kept.find((one) => isSame(one.input, input));
    if (known) {
      this.store.setState({ phase: 'found', found: known });
      return;
    }
    this.store.setState({ phase: 'finding', done: 0, total: 0, trouble: '' });
    try {
      const job = this.doors.growFamily(input, (done, total) => {
        if (this.job === job) this.store.setState({ done, total });
      });
      this.job = job;
      job.result.then(
        (report) => this.landed(job, { input, report }),
        (reason) => this.fell(job, reason),
      );
    } catch (reason) {
      // A browser that allows no thread says so by throwing at once.
      this.store.setState({ phase: 'failed', trouble: troubleText(reason) });
    }
  }

  private landed(job: JobOnItsWay<GrowReport>, found: { input: GrowInput; report: GrowReport }): void {
    this.kept.unshift(found);
    this.kept.splice(MOST_KEPT);
    if (this.job !== job) return;
    this.job = null;
    this.store.setState({ phase: 'found', found });
  }

  private fell(job: JobOnItsWay<GrowReport>, reason: unknown): void {
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
function isSame(a: GrowInput, b: GrowInput): boolean {
  return (
    a.top === b.top &&
    a.stops === b.stops &&
    String(a.between) === String(b.between) &&
    String(a.allowed) === String(b.allowed) &&
    isSameGround(a.family, b.family)
  );
}

function isSameGround(a: Family, b: Family): boolean {
  return (
    a === b ||
    (a.runningClearance === b.runningClearance &&
      a.tolerance === b.tolerance &&
      a.profiles.length === b.profiles.length &&
      a.profiles.every((profile, i) => {
        const other = b.profiles[i];
        const { id, kind, ring, tolerance } = profile;
        return id === other.id && kind === other.kind && ring === other.ring && tolerance === other.tolerance;
      }))
  );
}

const findings = new WeakMap<Session, GrowFinding>();

/** The search of a window. */
export function growFindingOf(session: Session): GrowFinding {
  const known = findings.get(session) ?? new GrowFinding(session.doors.grow);
  findings.set(session, known);
  return known;
}
