import { JobCancelled } from '../../../jobs/job.ts';
import type { DrawnPlan } from '../../../plan/drawn-plan.ts';
import type { WardPlan } from '../../../plan/ward-plan.ts';
import type { JobOnItsWay } from '../job-on-its-way.ts';
import type { Pace } from '../pace.ts';
import type { Session } from '../session.ts';
import { listenTo, makeStore, type Store } from '../store.ts';
import {
  depthsOf,
  inOrderOfNearness,
  type NearPlan,
  type NearQuestion,
  nearBlades,
  nearQuestions,
  stopsOf,
} from './near-plans.ts';
import type { SectionsDoors } from './sections-doors.ts';
import type { SectionsQuestion } from './sections-question.ts';

/** How far the drawing of what was found has come. */
export type PlanDrawing =
  | { readonly phase: 'none' }
  | { readonly phase: 'drawing'; readonly done: number; readonly total: number }
  | { readonly phase: 'stopped' }
  | { readonly phase: 'done'; readonly answer: DrawnPlan }
  | { readonly phase: 'failed'; readonly trouble: string };

/** What is asked, what was found, and what is being done about it. */
export interface PlanningState {
  readonly asked: SectionsQuestion | null;
  /** waiting: the hand is still changing the plan; answering: the answer at once; improving: the long search. */
  readonly phase: 'idle' | 'waiting' | 'answering' | 'improving' | 'found' | 'stopped' | 'failed';
  /** Seconds of the search, and of the time that it was given. */
  readonly done: number;
  readonly total: number;
  readonly trouble: string;
  /** The best so far; always an answer to what is asked now. */
  readonly found: WardPlan | null;
  /** Always a drawing of what was found. */
  readonly drawing: PlanDrawing;
  /** Where the blade has no room for what was found: changes that help; null while they are looked for. */
  readonly near: readonly NearPlan[] | null;
}

const NOTHING: PlanningState = {
  asked: null,
  phase: 'idle',
  done: 0,
  total: 0,
  trouble: '',
  found: null,
  drawing: { phase: 'none' },
  near: [],
};

/** An edit is waited out for so long, milliseconds. */
const CALM_MS = 200;

/** Answers to so many plans are kept, so that an undo finds its own again. */
const MOST_KEPT = 8;

/** Longest search, seconds. */
export const MOST_SECONDS = 600;

/**
 * Plans sections for whatever is asked last: a short answer at once, a longer search when it is wished for, and the
 * drawing of what was found. Another question clears what belongs to the one before, so that no figure is shown that
 * is not of the plan; a question that comes back (an undo) has its answer again.
 *
 * @check tests/unit/app/sections-planning.test.ts
 */
export class SectionsPlanning {
  readonly store: Store<PlanningState> = makeStore(NOTHING);
  private kept: { asked: SectionsQuestion; found: WardPlan; drawing: PlanDrawing }[] = [];
  private job: JobOnItsWay<unknown> | null = null;
  private dropTimer: (() => void) | null = null;
  /** Counts the jobs; a late word of an earlier one is not heard. */
  private turn = 0;

  constructor(
    private readonly doors: SectionsDoors,
    private readonly pace: Pick<Pace, 'later'>,
  ) {}

  /** Asks for the sections of a plan; null where there is none. The question that is asked already is not asked again. */
  ask(asked: SectionsQuestion | null): void {
    const before = this.store.getState();
    if (before.asked === asked) return;
    this.keep();
    this.drop();
    this.store.setState({ ...NOTHING, asked });
    if (asked === null || asked.hindrance) return;
    const known = this.kept.find((one) => one.asked === asked);
    if (known) {
      this.store.setState({ phase: 'found', found: known.found, drawing: known.drawing });
      this.settle();
      return;
    }
    this.store.setState({ phase: 'waiting' });
    // The first answer of a window is not waited for; an edit is, until the hand rests.
    if (before.asked === null) this.search('answering', 0);
    else this.dropTimer = this.pace.later(CALM_MS, () => this.search('answering', 0));
  }

  /** Looks for fewer sites and less milling for so many seconds. */
  improve(seconds: number): void {
    const { asked } = this.store.getState();
    if (!asked || asked.hindrance) return;
    this.drop();
    // A drawing on its way gives way to the search, and is begun anew after it.
    if (this.store.getState().drawing.phase === 'drawing') this.store.setState({ drawing: { phase: 'none' } });
    this.search('improving', seconds);
  }

  /** Stops what is on its way; the best so far stays. */
  stop(): void {
    const { drawing, found } = this.store.getState();
    if (!this.job && !this.dropTimer) return;
    this.drop();
    if (drawing.phase === 'drawing') {
      this.store.setState({ drawing: { phase: 'stopped' } });
      return;
    }
    this.store.setState({ phase: 'stopped' });
    if (found) this.settle();
  }

  /** Starts again what was stopped or failed. */
  again(): void {
    const { found } = this.store.getState();
    this.drop();
    if (found) this.settle();
    else this.search('answering', 0);
  }

  /** Forgets everything: another family is open. */
  forget(): void {
    this.drop();
    this.kept = [];
    this.store.setState(NOTHING);
  }

  private drop(): void {
    this.turn++;
    this.dropTimer?.();
    this.dropTimer = null;
    this.job?.cancel();
    this.job = null;
  }

  private keep(): void {
    const { asked, found, drawing } = this.store.getState();
    if (!asked || !found) return;
    this.kept = [{ asked, found, drawing }, ...this.kept.filter((one) => one.asked !== asked)].slice(0, MOST_KEPT);
  }

  private search(phase: 'answering' | 'improving', seconds: number): void {
    const { asked } = this.store.getState();
    this.dropTimer = null;
    if (!asked) return;
    const { plan, table, layout } = asked;
    const options = {
      stops: stopsOf(plan.stops),
      depths: depthsOf(plan.depths),
      mostSites: layout.sites.length,
      seconds,
    };
    this.store.setState({ phase, done: 0, total: seconds, trouble: '' });
    this.run(
      (set) =>
        this.doors.solve(
          { table, options },
          (part) => set((state) => withFound(state, part)),
          (done, total) => set({ done, total }),
        ),
      (found) => {
        this.store.setState((state) => ({ phase: 'found', ...withFound(state, found) }));
        this.settle();
      },
      (trouble) => this.store.setState(trouble === null ? { phase: 'stopped' } : { phase: 'failed', trouble }),
    );
  }

  /** Draws what was found, or looks for changes with which the blade has room for it. */
  private settle(): void {
    const { asked, found, drawing } = this.store.getState();
    if (!asked || !found) return;
    if (found.sites <= asked.layout.sites.length) {
      this.store.setState({ near: [] });
      if (drawing.phase !== 'done') this.draw();
      return;
    }
    this.store.setState({ near: null, drawing: { phase: 'none' } });
    this.lookNear(nearQuestions(asked), nearBlades(asked, found.sites));
  }

  private lookNear([next, ...rest]: readonly NearQuestion[], plans: readonly NearPlan[]): void {
    if (!next) {
      this.store.setState({ near: inOrderOfNearness(plans) });
      return;
    }
    const { change, table, options } = next;
    const room = options.mostSites;
    this.run(
      () =>
        this.doors.solve(
          { table, options },
          () => {},
          () => {},
        ),
      (found) => this.lookNear(rest, [...plans, { change, sites: found.sites, room }]),
      () => this.lookNear(rest, plans),
    );
  }

  private draw(): void {
    const { asked, found } = this.store.getState();
    if (!asked || !found) return;
    const { plan, access, gap } = asked;
    this.store.setState({ drawing: { phase: 'drawing', done: 0, total: 1 } });
    this.run(
      (set) =>
        this.doors.draw({ plan, access, wardPlan: found, gap }, (done, total) =>
          set({ drawing: { phase: 'drawing', done, total } }),
        ),
      (answer) => this.store.setState({ drawing: { phase: 'done', answer } }),
      (trouble) =>
        this.store.setState({ drawing: trouble === null ? { phase: 'stopped' } : { phase: 'failed', trouble } }),
    );
  }

  /** Runs a job; what it says once another has taken its place is not heard. */
  private run<Output>(
    start: (set: Store<PlanningState>['setState']) => JobOnItsWay<Output>,
    landed: (output: Output) => void,
    fell: (trouble: string | null) => void,
  ): void {
    const turn = ++this.turn;
    const isLatest = () => this.turn === turn;
    const set = (change: Parameters<Store<PlanningState>['setState']>[0]) => {
      if (isLatest()) this.store.setState(change);
    };
    try {
      const job = start(set as Store<PlanningState>['setState']);
      this.job = job;
      job.result.then(
        (output) => {
          if (!isLatest()) return;
          this.job = null;
          landed(output);
        },
        (reason) => {
          if (!isLatest()) return;
          this.job = null;
          fell(reason instanceof JobCancelled ? null : troubleText(reason));
        },
      );
    } catch (reason) {
      // A browser that allows no thread says so by throwing at once.
      fell(troubleText(reason));
    }
  }
}

/** The state with another plan found, where it is better; else with what it proves of the one that is there. */
function withFound({ found, drawing }: PlanningState, plan: WardPlan): Pick<PlanningState, 'found' | 'drawing'> {
  if (!found || isBetter(plan, found)) return { found: plan, drawing: { phase: 'none' } };
  if (plan.lowerBound <= found.lowerBound && !plan.proved) return { found, drawing };
  const { lowerBound, bound } = plan.lowerBound > found.lowerBound ? plan : found;
  return { found: { ...found, lowerBound, bound, proved: found.proved || lowerBound >= found.sites }, drawing };
}

function isBetter(plan: WardPlan, found: WardPlan): boolean {
  if (plan.sites !== found.sites) return plan.sites < found.sites;
  return plan.grooved < found.grooved;
}

function troubleText(reason: unknown): string {
  return reason instanceof Error ? reason.message : String(reason);
}

const plannings = new WeakMap<Session, SectionsPlanning>();

/** The planning of a window; another family begins anew. */
export function sectionsPlanningOf(session: Session): SectionsPlanning {
  const known = plannings.get(session);
  if (known) return known;
  const made = new SectionsPlanning(session.doors.sections, session.doors.pace);
  listenTo(
    session.documents,
    (s) => s.opened,
    () => made.forget(),
  );
  plannings.set(session, made);
  return made;
}
