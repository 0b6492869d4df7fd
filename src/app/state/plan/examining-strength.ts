import { JobCancelled } from '../../../jobs/job.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { SectionStrength } from '../../../strength/strength.ts';
import type { JobOnItsWay } from '../job-on-its-way.ts';
import type { Session } from '../session.ts';
import { makeStore, type Store } from '../store.ts';
import type { StrengthDoors } from './strength-doors.ts';

/** How far the examining of the blades has come. */
export interface ExaminingState {
  readonly phase: 'idle' | 'working' | 'done' | 'stopped';
  /** Outlines that are known, of how many different ones. */
  readonly done: number;
  readonly total: number;
  /** What is known, by the outline's key. */
  readonly known: ReadonlyMap<string, SectionStrength>;
  /** Why an outline could not be examined, by its key. */
  readonly failed: ReadonlyMap<string, string>;
}

const NOTHING: ExaminingState = { phase: 'idle', done: 0, total: 0, known: new Map(), failed: new Map() };

/** So many outlines are kept; those of the longest ago go first. */
const MOST_KEPT = 400;

const keys = new WeakMap<Profile, string>();

/** What tells outlines apart: profiles of one shape have one key. */
export function outlineKey(profile: Profile): string {
  const known = keys.get(profile);
  if (known !== undefined) return known;
  const { ring, drawn, milled } = profile;
  const key = JSON.stringify(milled ?? drawn ?? ring);
  keys.set(profile, key);
  return key;
}

/**
 * Examines blades in other threads, a few at a time, the picked one first. Answers are kept by outline, so that an edit
 * asks for nothing but what it changed.
 *
 * @check tests/unit/app/examining-strength.test.ts
 */
export class ExaminingStrength {
  readonly store: Store<ExaminingState> = makeStore(NOTHING);
  private wanted = new Map<string, Profile>();
  private first: string | null = null;
  private halted = false;
  private readonly running = new Map<string, JobOnItsWay<SectionStrength>>();

  constructor(
    private readonly doors: StrengthDoors,
    private readonly threads: () => number,
  ) {}

  /** Wants these blades examined, one of them first; an empty list where nobody looks any more. */
  follow(blades: readonly Profile[], first: Profile | null): void {
    this.wanted = new Map(blades.map((blade) => [outlineKey(blade), blade]));
    this.first = first && outlineKey(first);
    for (const [key, job] of this.running)
      if (!this.wanted.has(key)) {
        this.running.delete(key);
        job.cancel();
      }
    if (this.missing().length === 0) this.halted = false;
    this.go();
  }

  /** Ends what is on its way; what is known stays. */
  stop(): void {
    this.halted = true;
    for (const job of this.running.values()) job.cancel();
    this.running.clear();
    this.tell();
  }

  /** Goes on after a stop, and tries again what failed. */
  again(): void {
    this.halted = false;
    this.store.setState({ failed: new Map() });
    this.go();
  }

  private missing(): string[] {
    const { known, failed } = this.store.getState();
    const open = [...this.wanted.keys()].filter((key) => !known.has(key) && !failed.has(key));
    return open.sort((a, b) => Number(b === this.first) - Number(a === this.first));
  }

  private go(): void {
    if (!this.halted)
      for (const key of this.missing()) {
        if (this.running.size >= Math.max(1, this.threads())) break;
        if (!this.running.has(key)) this.launch(key);
      }
    this.tell();
  }

  private launch(key: string): void {
    const blade = this.wanted.get(key);
    if (!blade) return;
    const { ring, drawn, milled } = blade;
    try {
      const job = this.doors.findStrength({ ring, drawn, milled });
      this.running.set(key, job);
      job.result.then(
        (strength) => this.landed(key, job, strength),
        (reason) => this.fell(key, job, reason),
      );
    } catch (reason) {
      // A browser that allows no thread says so by throwing at once.
      this.fail(key, reason);
    }
  }

  private landed(key: string, job: JobOnItsWay<SectionStrength>, strength: SectionStrength): void {
    const known = new Map(this.store.getState().known).set(key, strength);
    for (const old of known.keys()) if (known.size > MOST_KEPT && !this.wanted.has(old)) known.delete(old);
    this.store.setState({ known });
    if (this.running.get(key) === job) this.running.delete(key);
    this.go();
  }

  private fell(key: string, job: JobOnItsWay<SectionStrength>, reason: unknown): void {
    if (this.running.get(key) !== job) return;
    this.running.delete(key);
    if (reason instanceof JobCancelled) this.halted = true;
    else this.fail(key, reason);
    this.go();
  }

  private fail(key: string, reason: unknown): void {
    const words = reason instanceof Error ? reason.message : String(reason);
    this.store.setState({ failed: new Map(this.store.getState().failed).set(key, words) });
  }

  private tell(): void {
    const { known } = this.store.getState();
    const total = this.wanted.size;
    const done = [...this.wanted.keys()].filter((key) => known.has(key)).length;
    this.store.setState({ done, total, phase: this.phase() });
  }

  private phase(): ExaminingState['phase'] {
    if (this.wanted.size === 0) return 'idle';
    if (this.missing().length === 0) return 'done';
    return this.halted ? 'stopped' : 'working';
  }
}

const examinings = new WeakMap<Session, ExaminingStrength>();

/** The examining of a window. */
export function examiningOf(session: Session): ExaminingStrength {
  const known = examinings.get(session) ?? new ExaminingStrength(session.doors.strength, session.doors.threadCount);
  examinings.set(session, known);
  return known;
}
