import type { ExaminedBlade } from '../../../../jobs/examine-blades.ts';
import { JobCancelled } from '../../../../jobs/job.ts';
import type { Profile } from '../../../../profile/profile.ts';
import type { SectionStrength } from '../../../../strength/strength.ts';
import type { JobOnItsWay } from '../../job-on-its-way.ts';
import type { Session } from '../../session.ts';
import { makeStore, type Store } from '../../store.ts';
import type { StrengthDoors } from './strength-doors.ts';

/** How far the examining of the blades has come. */
export interface ExaminingState {
  readonly phase: 'idle' | 'working' | 'done' | 'stopped';
  /** Outlines with an answer as close as asked, of how many different ones. */
  readonly done: number;
  readonly total: number;
  /** Outlines with an answer, be it a first one. */
  readonly begun: number;
  /** What is known, by the outline's key. */
  readonly known: ReadonlyMap<string, SectionStrength>;
  /** Keys of the outlines whose answer is as close as asked. */
  readonly close: ReadonlySet<string>;
  /** Why an outline could not be examined, by its key. */
  readonly failed: ReadonlyMap<string, string>;
  /** Why outlines that are wanted could not be examined, one for each of them. */
  readonly troubles: readonly string[];
}

const NOTHING: ExaminingState = {
  phase: 'idle',
  done: 0,
  total: 0,
  begun: 0,
  known: new Map(),
  close: new Set(),
  failed: new Map(),
  troubles: [],
};

/** So many outlines are kept; those of the longest ago go first. */
const MOST_KEPT = 400;

/** So many outlines go to one thread at a time: all of them are held there until the last one is done. */
const MOST_TOGETHER = 40;

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

/** Outlines that one thread has in hand. */
interface Batch {
  readonly keys: readonly string[];
  readonly job: JobOnItsWay<number>;
}

/**
 * Examines blades in other threads, shared out evenly, the picked one first: a first answer for each, then the last one
 * for each. Answers are kept by outline, so that an edit asks for nothing but what it changed.
 *
 * @check tests/unit/app/examining-strength.test.ts
 */
export class ExaminingStrength {
  readonly store: Store<ExaminingState> = makeStore(NOTHING);
  private wanted = new Map<string, Profile>();
  private first: string | null = null;
  private halted = false;
  private running: readonly Batch[] = [];

  constructor(
    private readonly doors: StrengthDoors,
    private readonly threads: () => number,
  ) {}

  /** Wants these blades examined, one of them first; an empty list where nobody looks any more. */
  follow(blades: readonly Profile[], first: Profile | null): void {
    this.wanted = new Map(blades.map((blade) => [outlineKey(blade), blade]));
    this.first = first && outlineKey(first);
    for (const batch of this.running)
      if (!batch.keys.some((key) => this.wanted.has(key))) {
        this.leave(batch);
        batch.job.cancel();
      }
    if (this.missing().length === 0) this.halted = false;
    this.go();
  }

  /** Ends what is on its way; what is known stays. */
  stop(): void {
    this.halted = true;
    const ended = this.running;
    this.running = [];
    for (const { job } of ended) job.cancel();
    this.tell();
  }

  /** Goes on after a stop, and tries again what failed. */
  again(): void {
    this.halted = false;
    this.store.setState({ failed: new Map() });
    this.go();
  }

  /** What has no close answer yet: the picked one first, then those without any answer. */
  private missing(): string[] {
    const { known, close, failed } = this.store.getState();
    const open = [...this.wanted.keys()].filter((key) => !close.has(key) && !failed.has(key));
    const rank = (key: string) => Number(key !== this.first) * (1 + Number(known.has(key)));
    return open.sort((a, b) => rank(a) - rank(b));
  }

  private go(): void {
    if (!this.halted) {
      const inHand = new Set(this.running.flatMap(({ keys }) => keys));
      const open = this.missing().filter((key) => !inHand.has(key));
      const free = Math.max(1, this.threads()) - this.running.length;
      const count = Math.max(0, Math.min(free, open.length));
      // Dealt out like cards, so that the first ones of the list come first in each thread.
      for (let hand = 0; hand < count; hand++)
        this.launch(open.filter((_, i) => i % count === hand).slice(0, MOST_TOGETHER));
    }
    this.tell();
  }

  private launch(keys: readonly string[]): void {
    const blades = keys.flatMap((key) => this.wanted.get(key) ?? []);
    try {
      const job = this.doors.examineBlades(
        blades.map(({ ring, drawn, milled }) => ({ ring, drawn, milled })),
        (blade) => this.hear(keys, blade),
      );
      const batch = { keys, job };
      this.running = [...this.running, batch];
      job.result.then(
        () => this.landed(batch),
        (reason) => this.fell(batch, reason),
      );
    } catch (reason) {
      // A browser that allows no thread says so by throwing at once.
      this.fail(this.missing(), wordsOf(reason));
    }
  }

  /** An answer for one outline; it holds even where nobody waits for it any more. */
  private hear(keys: readonly string[], blade: ExaminedBlade): void {
    const key = keys[blade.index];
    if ('trouble' in blade) this.fail([key], blade.trouble);
    else this.keep(key, blade.strength, blade.last);
    this.tell();
  }

  private keep(key: string, strength: SectionStrength, last: boolean): void {
    const state = this.store.getState();
    if (!last && state.close.has(key)) return;
    const known = new Map(state.known).set(key, strength);
    const close = last ? new Set(state.close).add(key) : state.close;
    const old = [...known.keys()].filter((one) => !this.wanted.has(one)).slice(0, Math.max(0, known.size - MOST_KEPT));
    for (const one of old) known.delete(one);
    this.store.setState({ known, close: new Set([...close].filter((one) => known.has(one))) });
  }

  private landed(batch: Batch): void {
    this.leave(batch);
    this.go();
  }

  private fell(batch: Batch, reason: unknown): void {
    if (!this.running.includes(batch)) return;
    this.leave(batch);
    if (reason instanceof JobCancelled) this.halted = true;
    else this.fail(batch.keys, wordsOf(reason));
    this.go();
  }

  private leave(batch: Batch): void {
    this.running = this.running.filter((one) => one !== batch);
  }

  private fail(keys: readonly string[], words: string): void {
    const { failed, close } = this.store.getState();
    const fresh = keys.filter((key) => !close.has(key)).map((key) => [key, words] as const);
    this.store.setState({ failed: new Map([...failed, ...fresh]) });
  }

  private tell(): void {
    const { known, close, failed } = this.store.getState();
    const keys = [...this.wanted.keys()];
    const count = (has: (key: string) => boolean) => keys.filter(has).length;
    this.store.setState({
      total: keys.length,
      done: count((key) => close.has(key)),
      begun: count((key) => known.has(key)),
      troubles: keys.flatMap((key) => failed.get(key) ?? []),
      phase: this.phase(),
    });
  }

  private phase(): ExaminingState['phase'] {
    if (this.wanted.size === 0) return 'idle';
    if (this.missing().length === 0) return 'done';
    return this.halted ? 'stopped' : 'working';
  }
}

function wordsOf(reason: unknown): string {
  return reason instanceof Error ? reason.message : String(reason);
}

const examinings = new WeakMap<Session, ExaminingStrength>();

/** The examining of a window. */
export function examiningOf(session: Session): ExaminingStrength {
  const known = examinings.get(session) ?? new ExaminingStrength(session.doors.strength, session.doors.threadCount);
  examinings.set(session, known);
  return known;
}
