import { randomFrom } from '../fit/monte-carlo.ts';
import type { AccessTable } from './access-table.ts';
import { fewerSites } from './fewer-sites.ts';
import { lessMilling } from './less-milling.ts';
import { askForSites } from './prove-sites.ts';
import { runClingo } from './run-clingo.ts';
import type { LowerBound } from './site-bounds.ts';
import { planOf, type SolveStart, startingToSolve } from './solve.ts';
import type { SolveOptions, WardPlan } from './ward-plan.ts';
import { searchFrom, type WardSearch } from './ward-search.ts';

/** What a long search needs of whoever runs it. */
export interface SolvePace {
  /** Milliseconds from any fixed moment. */
  now(): number;
  cancelled(): boolean;
  /** Lets others have their turn. */
  pause(): Promise<void>;
  /** Told how many seconds have gone. */
  tell(seconds: number): void;
  /** Given each better plan, and each plan about which more is known. */
  better(plan: WardPlan): void;
}

/** Longest work between two pauses, milliseconds. */
const SLICE_MS = 15;

/** Share of the time, and most of it in milliseconds, in which sites are left out before the exact solver is asked. */
const ALONE = { share: 0.1, most: 400 };

/** The exact solver's first turn for one number of sites, milliseconds; each further turn is twice as long. */
const FIRST_TURN_MS = 2_000;

/** Share of the time, and most of it in milliseconds, in which less milling is looked for. */
const MILLING = { share: 0.05, most: 800 };

/**
 * Solves a table for as long as the options say: at once, then by leaving sites out, then by the exact solver, which
 * finds wards on fewer sites or shows that there are none, while the search goes on beside it.
 *
 * @returns the last plan that was given to `better`; null for a table that is none, and after a cancel before the first plan; after a
 *   later one what it had.
 * @check tests/unit/jobs/solve-plan.test.ts
 */
export async function solveOn(table: AccessTable, options: SolveOptions, pace: SolvePace): Promise<WardPlan | null> {
  const start = await startInPieces(table, options, pace);
  return start ? new Solving(table, options, pace, start).run() : null;
}

/** The answer at once, with pauses; null for a table that is none, and after a cancel. */
async function startInPieces(table: AccessTable, options: SolveOptions, pace: SolvePace): Promise<SolveStart | null> {
  const steps = startingToSolve(table, options);
  for (let until = pace.now() + SLICE_MS; ; ) {
    const step = steps.next();
    if (step.done) return step.value;
    if (pace.now() < until) continue;
    await pace.pause();
    if (pace.cancelled()) return null;
    until = pace.now() + SLICE_MS;
  }
}

class Solving {
  private found: WardSearch;
  private bound: LowerBound;
  private plan: WardPlan;
  private note: string | undefined;
  private readonly began: number;
  private readonly until: number;
  private readonly random = randomFrom(11);

  constructor(
    private readonly table: AccessTable,
    private readonly options: SolveOptions,
    private readonly pace: SolvePace,
    private readonly start: SolveStart,
  ) {
    this.began = pace.now();
    this.until = this.began + 1_000 * options.seconds;
    this.found = start.found;
    this.bound = start.bound;
    this.plan = this.give();
  }

  async run(): Promise<WardPlan> {
    const partOf = ({ share, most }: typeof ALONE) => Math.min(most, 1_000 * this.options.seconds * share);
    await this.leaveSitesOut(this.pace.now() + partOf(ALONE));
    await this.askExactly();
    await this.millLess(this.pace.now() + partOf(MILLING));
    return this.plan;
  }

  private get open(): boolean {
    return this.found.sites > this.bound.sites && !this.over;
  }

  private get over(): boolean {
    return this.pace.cancelled() || this.pace.now() >= this.until;
  }

  /** Takes and gives out the present wards with what is known of the bound. */
  private give(): WardPlan {
    const plan = planOf(this.table, this.start.kernel, this.found, this.bound, this.options);
    this.plan = this.note === undefined ? plan : { ...plan, note: this.note };
    this.pace.better(this.plan);
    return this.plan;
  }

  private take(search: WardSearch): void {
    this.found = search;
    search.trim(this.random);
    this.give();
  }

  private async breathe(): Promise<void> {
    this.pace.tell((this.pace.now() - this.began) / 1_000);
    await this.pace.pause();
  }

  private async leaveSitesOut(until: number): Promise<void> {
    let fewer = this.open ? fewerSites(this.found, this.random) : null;
    while (fewer && this.open && this.pace.now() < until) {
      if (this.mendFor(fewer)) {
        this.take(fewer.search);
        fewer = this.open ? fewerSites(this.found, this.random) : null;
      }
      await this.breathe();
    }
  }

  /** Mends for one slice; true once nothing is lacking. */
  private mendFor(fewer: ReturnType<typeof fewerSites>): boolean {
    const until = this.pace.now() + SLICE_MS;
    while (fewer.search.lacking > 0 && this.pace.now() < until) for (let i = 0; i < 20; i++) fewer.step();
    return fewer.search.lacking === 0;
  }

  /** From both ends, by turns that grow: the fewest sites that are not excluded, and one less than found. */
  private async askExactly(): Promise<void> {
    for (let turn = FIRST_TURN_MS; this.open; turn *= 2) {
      const [low, high] = [this.bound.sites, this.found.sites - 1];
      const answered = await this.ask(low, turn);
      if (answered === 'end') return;
      if (answered === 'late' && high > low && this.open && (await this.ask(high, turn)) === 'end') return;
    }
  }

  private async ask(sites: number, turn: number): Promise<'said' | 'late' | 'end'> {
    const question = askForSites(this.start.setting, sites);
    const late = Math.min(this.until, this.pace.now() + turn);
    const fewer = this.found.sites - 1 > this.bound.sites ? fewerSites(this.found, this.random) : null;
    const meanwhile = () => {
      this.pace.tell((this.pace.now() - this.began) / 1_000);
      if (fewer && this.mendFor(fewer)) return true;
      return this.pace.cancelled() || this.pace.now() >= late;
    };
    const answer = await runClingo(question.programme, meanwhile, () => this.pace.pause());
    if (fewer?.search.lacking === 0) this.take(fewer.search);
    if (answer.kind === 'model') {
      const search = searchFrom(this.start.setting, sites, question.read(answer.atoms));
      if (search.lacking === 0 && search.sites < this.found.sites) this.take(search);
    }
    if (answer.kind === 'none') {
      this.bound = { sites: Math.max(this.bound.sites, sites + 1), bound: 'search' };
      this.give();
    }
    if (answer.kind !== 'unknown' || fewer?.search.lacking === 0) return 'said';
    if (answer.why === 'stopped') return 'late';
    this.note = answer.words;
    this.give();
    return 'end';
  }

  private async millLess(until: number): Promise<void> {
    const milling = lessMilling(this.found, this.random);
    while (!milling.done && this.pace.now() < until && !this.pace.cancelled()) {
      const slice = this.pace.now() + SLICE_MS;
      let better: WardSearch | null = null;
      while (!milling.done && this.pace.now() < slice) better = milling.step() ?? better;
      if (better) {
        const before = this.plan;
        const plan = planOf(this.table, this.start.kernel, better, this.bound, this.options);
        if (plan.grooved < before.grooved) {
          this.found = better;
          this.give();
        }
      }
      await this.breathe();
    }
  }
}
