import { JobCancelled } from '../../../../jobs/job.ts';
import type { SolveInput } from '../../../../jobs/solve-plan.ts';
import type { DrawnPlan } from '../../../../plan/drawn-plan.ts';
import type { WardPlan } from '../../../../plan/ward-plan.ts';
import type { JobOnItsWay } from '../../job-on-its-way.ts';
import type { Pace } from '../../pace.ts';
import type { Session } from '../../session.ts';
import { listenTo, makeStore, type Store } from '../../store.ts';
import { troubleText } from '../../trouble-text.ts';
import {
  depthsOf,
  fewerSections,
  inOrderOfNearness,
  type NearPlan,
  type NearQuestion,
  nearBlades,
  nearQuestions,
  stopsOf,
} from './near-plans.ts';
import type { SectionsDoors } from './sections-doors.ts';
import { isSameSearch, type SectionsQuestion } from './sections-question.ts';

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
  /**
   * waiting: the hand is still changing the plan; answering: the answer at once; searching: looked for less by itself,
   * since the plan rests; improving: the long search that was asked for.
   */
  readonly phase: 'idle' | 'waiting' | 'answering' | 'searching' | 'improving' | 'found' | 'stopped' | 'failed';
  /** Seconds of the search, and of the time that it was given. */
  readonly done: number;
  readonly total: number;
  readonly trouble: string;
  /** The best so far; always an answer to what is asked now. */
  readonly found: WardPlan | null;
  /** What the search by itself found better; it takes the other's place once that search ends, so that nothing flickers. */
  readonly better: WardPlan | null;
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
  better: null,
  drawing: { phase: 'none' },
  near: [],
};

/** What is on its way is the solver's answer, which a rename leaves alone. */
const SEARCHES: readonly PlanningState['phase'][] = ['waiting', 'answering', 'improving'];

/** An edit is waited out for so long, milliseconds. */
const CALM_MS = 200;

/** A plan that has rested for so long is searched for less by itself, milliseconds, and for so many seconds. */
const REST_MS = 1_000;
const REST_SECONDS = 10;

/** Answers to so many plans are kept, so that an undo finds its own again. */
const MOST_KEPT = 8;

/** Longest search, seconds. */
export const MOST_SECONDS = 600;

/**
 * Plans sections for whatever is asked last: a short answer at once, the drawing of what was found, a search of its own
 * where fewer are not shown to fail, while it is watched, and a longer one when it is wished for. Another question clears
 * what belongs to the one before, so that no figure is shown that is not of the plan; one that asks the solver for the same
 * (a rename) takes over the wards, and the search goes on. A question that comes back (an undo) has its answer again.
 *
 * @check tests/unit/app/sections-planning.test.ts
 */
export class SectionsPlanning {
  readonly store: Store<PlanningState> = makeStore(NOTHING);
  private kept: { asked: SectionsQuestion; found: WardPlan; drawing: PlanDrawing }[] = [];
  private job: JobOnItsWay<unknown> | null = null;
  private dropTimer: (() => void) | null = null;
  /** Whether somebody looks at what is found, and nothing stands open that is about it. */
  private watched = false;
  /** What was searched for less, by itself or by wish; it is not begun again. */
  private readonly searched = new WeakSet<SectionsQuestion>();
  /** The number of sites that near plans were looked for. */
  private nearFor = -1;
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
    const isSame = asked !== null && !asked.hindrance && before.asked !== null && isSameSearch(before.asked, asked);
    if (isSame && this.takeOver(before.asked, asked)) return;
    this.drop();
    this.nearFor = -1;
    this.store.setState({ ...NOTHING, asked });
    if (asked === null || asked.hindrance) return;
    const known = this.knownOf(asked);
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

  /**
   * Takes what was found for a question over to one that asks the solver for the same. A search that was waited or wished
   * for goes on; what was found is drawn anew, since names and blades may be others.
   *
   * @returns false where there is nothing to take over.
   */
  private takeOver(before: SectionsQuestion, asked: SectionsQuestion): boolean {
    const state = this.store.getState();
    const isSearch = SEARCHES.includes(state.phase);
    const found = state.better ?? state.found;
    if (!isSearch && !found) return false;
    this.nearFor = -1;
    if (this.searched.has(before)) this.searched.add(asked);
    const known = this.knownOf(asked) ?? { found: null, drawing: NOTHING.drawing };
    const taken = found ? withFound({ ...state, ...known }, found) : known;
    const drawing = taken.drawing.phase === 'done' ? taken.drawing : NOTHING.drawing;
    this.store.setState({ asked, better: null, near: NOTHING.near, found: taken.found, drawing });
    if (isSearch) return true;
    this.drop();
    this.store.setState({ phase: 'found', trouble: '' });
    this.settle();
    return true;
  }

  private knownOf(asked: SectionsQuestion) {
    return this.kept.find((one) => one.asked === asked);
  }

  /** Whether the plan is looked at: only then it is searched for less by itself; what that found is taken up again then. */
  watch(isWatched: boolean): void {
    if (this.watched === isWatched) return;
    this.watched = isWatched;
    if (!isWatched) this.pauseSearch();
    else if (!this.takeBetter()) this.rest();
  }

  /** Looks for fewer sites and less milling for so many seconds. */
  improve(seconds: number): void {
    const { asked } = this.store.getState();
    if (!asked || asked.hindrance) return;
    this.drop();
    this.searched.add(asked);
    this.store.setState((state) => ({ ...(state.better && withFound(state, state.better)), better: null }));
    // A drawing on its way gives way to the search, and is begun anew after it.
    if (this.store.getState().drawing.phase === 'drawing') this.store.setState({ drawing: { phase: 'none' } });
    this.search('improving', seconds);
  }

  /** Stops what is on its way; the best so far stays. */
  stop(): void {
    const { asked, drawing, found, phase } = this.store.getState();
    if (!this.job && !this.dropTimer) return;
    this.drop();
    if (phase === 'searching') {
      if (asked) this.searched.add(asked);
      this.store.setState({ phase: 'found' });
      this.takeBetter();
      return;
    }
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
    const state = this.store.getState();
    const { asked, found, drawing } = { ...state, ...(state.better && withFound(state, state.better)) };
    if (!asked || !found) return;
    this.kept = [{ asked, found, drawing }, ...this.kept.filter((one) => one.asked !== asked)].slice(0, MOST_KEPT);
  }

  /** A plan that rests, is looked at and might do with less is searched by itself, once. */
  private rest(): void {
    const { asked, found, phase } = this.store.getState();
    if (!this.watched || this.job || !asked || !found || found.proved) return;
    if (phase !== 'found' || this.searched.has(asked)) return;
    this.dropTimer?.();
    this.dropTimer = this.pace.later(REST_MS, () => this.searchByItself(asked));
  }

  private searchByItself(asked: SectionsQuestion): void {
    const input = this.begin(asked, 'searching', REST_SECONDS);
    this.run(
      (set) =>
        this.doors.solve(
          input,
          (part) => set((state) => withBetter(state, part)),
          (done, total) => set({ done, total }),
        ),
      (found) => {
        this.searched.add(asked);
        this.store.setState((state) => ({ phase: 'found', ...withBetter(state, found) }));
        this.takeBetter();
      },
      () => {
        // Nobody asked for it, so nobody is told; Improve says what goes wrong.
        this.searched.add(asked);
        this.store.setState({ phase: 'found' });
        this.takeBetter();
      },
    );
  }

  /** Leaves the search by itself for now; it begins anew when the plan is looked at again. */
  private pauseSearch(): void {
    const { phase } = this.store.getState();
    if (phase !== 'searching' && (this.job || phase !== 'found')) return;
    this.drop();
    this.store.setState({ phase: 'found' });
  }

  /** Puts what the search by itself found better in place, and draws it; false where there is none. */
  private takeBetter(): boolean {
    const { better } = this.store.getState();
    if (!better) return false;
    this.store.setState((state) => ({ ...withFound(state, better), better: null }));
    this.settle();
    return true;
  }

  private begin(asked: SectionsQuestion, phase: PlanningState['phase'], seconds: number): SolveInput {
    this.dropTimer = null;
    this.store.setState({ phase, done: 0, total: seconds, trouble: '' });
    const { plan, table, layout } = asked;
    const [stops, depths] = [stopsOf(plan.stops), depthsOf(plan.depths)];
    return { table, options: { stops, depths, mostSites: layout.sites.length, seconds } };
  }

  private search(phase: 'answering' | 'improving', seconds: number): void {
    const { asked } = this.store.getState();
    if (!asked) return;
    const input = this.begin(asked, phase, seconds);
    this.run(
      (set) =>
        this.doors.solve(
          input,
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
      else this.rest();
      return;
    }
    // What would do is known already where a search went on and found no fewer.
    if (this.nearFor === found.sites && this.store.getState().near) {
      this.rest();
      return;
    }
    this.nearFor = found.sites;
    this.store.setState({ near: null, drawing: { phase: 'none' } });
    this.lookNear(nearQuestions(asked), nearBlades(asked, found.sites));
  }

  private lookNear([next, ...rest]: readonly NearQuestion[], plans: readonly NearPlan[]): void {
    if (!next) {
      this.lookForFewer(plans);
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

  /** What fewer sections, or shared ones, would do; the last of what is looked for near a plan. */
  private lookForFewer(plans: readonly NearPlan[]): void {
    const { asked } = this.store.getState();
    if (!asked) return;
    const { plan, table, layout } = asked;
    const options = {
      ...{ stops: stopsOf(plan.stops), depths: depthsOf(plan.depths) },
      ...{ mostSites: layout.sites.length, seconds: 0 },
    };
    const tell = (near: readonly NearPlan[]) => {
      this.store.setState({ near: inOrderOfNearness(near) });
      this.rest();
    };
    this.run(
      () => this.doors.near({ table, options }),
      (found) => tell([...plans, ...fewerSections(asked, found)]),
      () => tell(plans),
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
      (answer) => {
        this.store.setState({ drawing: { phase: 'done', answer } });
        this.rest();
      },
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

/** The state while it is searched by itself: what is shown stays, with what is proved of it; what is better waits. */
function withBetter(state: PlanningState, plan: WardPlan): Pick<PlanningState, 'found' | 'better'> {
  const { found, better } = state;
  if (!found) return { found, better };
  const bound = withFound(state, { ...plan, sites: found.sites, grooved: found.grooved });
  // Of two that are alike the later one, about which more is known.
  const isNext = isBetter(plan, found) && !(better && isBetter(better, plan));
  return { found: bound.found, better: isNext ? plan : better };
}

function isBetter(plan: WardPlan, found: WardPlan): boolean {
  if (plan.sites !== found.sites) return plan.sites < found.sites;
  return plan.grooved < found.grooved;
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
