import type { Family } from '../../family/family.ts';
import { type FitCache, isMeasured } from '../../family/fit-cache.ts';
import { dealPairs, type KnownFits, knownFits, missingPairs } from '../../family/known-fits.ts';
import type { Conditions } from '../../fit/conditions.ts';
import { boxOf } from '../../geom/point.ts';
import type { PairsPart } from '../../jobs/judge-pairs.ts';
import { AS_DRAWN, conditionsFor } from './conditions-state.ts';
import type { Doors } from './doors.ts';
import { FitTable, sameConditions } from './fit-table.ts';
import { type Ending, type Flight, fly } from './flight.ts';
import { packedOf } from './packed-outlines.ts';
import { isRunning, type ResultsState } from './results-state.ts';
import type { Store } from './store.ts';

/** What is to be judged, and which pair is looked at. */
export interface JudgingOrder {
  readonly family: Family;
  readonly conditions: Conditions;
  readonly entrantId: string | null;
  readonly openingId: string | null;
}

/** Figures of blocked pairs are not begun before nothing has changed for so long, milliseconds: verdicts follow a hand. */
const CALM_MS = 50;

/** A pair with more edges against edges than this would keep the page waiting; another thread judges it. */
const MOST_EDGE_PAIRS = 30_000;

type Stage = 'judging' | 'measuring';

type JudgingDoors = Pick<Doors, 'judgePairs' | 'judgeNow' | 'shapesUnder' | 'threadCount' | 'pace'>;

const NONE: ReadonlySet<string> = new Set();

/**
 * Keeps the results of a window true to what is open. What the cache knows is there at once, then the pair looked at,
 * then verdicts, then the figures of blocked pairs, each time the picked row first. One flight of jobs is on its way
 * at a time; a stale one is cancelled, and the next starts when it has heard. What a cancelled job still sends is true
 * of its outlines and goes into the cache, never into the table of another family.
 *
 * @check tests/unit/app/judging.test.ts
 */
export class Judging {
  private order: JudgingOrder | null = null;
  private table: FitTable | null = null;
  private flight: Flight | null = null;
  private stage: Stage = 'judging';
  private landed = 0;
  private dropFrame: (() => void) | null = null;
  private dropWait: (() => void) | null = null;
  private calm = false;
  private wornAway: ReadonlySet<string> = NONE;

  constructor(
    private readonly store: Store<ResultsState>,
    private readonly doors: JudgingDoors,
    private readonly cache: FitCache,
  ) {}

  /** Judges what is ordered; a new pick only changes what comes first. */
  follow(order: JudgingOrder): void {
    const before = this.order;
    const same =
      before !== null && before.family === order.family && sameConditions(before.conditions, order.conditions);
    this.order = order;
    if (!same) {
      this.table = FitTable.following(this.table, order.family, order.conditions, this.cache);
      this.wornAway = wornAwayIn(this.table, this.doors);
    }
    const found = this.judgePicked();
    if (!same) this.begin();
    else if (found) this.show();
    if (same && before.entrantId !== order.entrantId && this.isRowWanting()) this.launch();
  }

  /** What is known of a family new and upright, whatever its pairs are judged under now. */
  knownAsDrawn(family: Family): KnownFits {
    return knownFits(family, this.cache, conditionsFor(AS_DRAWN, family));
  }

  /** Goes on with what a stop or a failure left open. */
  again(): void {
    if (this.table) this.begin();
  }

  /** Stops; what has been found stays. */
  stop(): void {
    if (!isRunning(this.store.getState().phase)) return;
    this.dropWait?.();
    this.flight?.cancel();
    this.show({ phase: 'stopped' });
  }

  private begin(): void {
    this.stage = 'judging';
    this.calm = false;
    this.dropWait?.();
    this.launch();
  }

  /** Starts what is missing, once the flight before has ended. */
  private launch(): void {
    const { table, order } = this;
    if (!table || !order) return;
    this.show({ phase: this.stage, trouble: '' });
    if (this.flight) this.flight.cancel();
    else this.launchStage(table, order);
  }

  private launchStage(table: FitTable, order: JudgingOrder): void {
    table.refresh(this.cache);
    const pairs = this.missing(table, order.entrantId);
    if (pairs.length === 0) this.nextStage();
    else if (this.stage === 'measuring' && !this.calm) this.waitForCalm();
    else this.send(table, pairs);
  }

  private missing(table: FitTable, first: string | null): Uint32Array {
    const pairs = missingPairs(table.known(), this.stage === 'measuring', first);
    if (this.wornAway.size === 0) return pairs;
    return pairs.filter((_, at) => !this.wornAway.has(table.entrants[pairs[at - (at % 2)]].id));
  }

  private send(table: FitTable, pairs: Uint32Array): void {
    const { cache, doors, stage } = this;
    this.landed = 0;
    this.show({ phase: stage, done: 0, total: pairs.length / 2 });
    const { conditions } = table;
    const openings = table.openings.map(({ ring }) => packedOf(cache, ring));
    const entrants = table.entrants.map(({ ring }) => packedOf(cache, ring));
    const measured = stage === 'measuring';
    this.flight = fly(
      dealPairs(pairs, doors.threadCount()).map(
        (dealt) => () =>
          doors.judgePairs({ openings, entrants, pairs: dealt, conditions, measured }, (part) =>
            this.land(table, dealt, part),
          ),
      ),
      (ending) => this.ended(ending, table, stage),
    );
  }

  private land(table: FitTable, pairs: Uint32Array, { first, fits }: PairsPart): void {
    const current = table === this.table;
    for (const [n, fit] of fits.entries()) {
      const [i, k] = pairs.subarray(2 * (first + n));
      this.cache.set(table.openings[k].ring, table.entrants[i].ring, table.conditions, fit);
      if (current) table.put(i, k, fit);
    }
    if (!current) return;
    this.landed += fits.length;
    this.dropFrame ??= this.doors.pace.frame(() => this.show({ done: this.landed }));
  }

  private ended(ending: Ending, table: FitTable, stage: Stage): void {
    this.flight = null;
    const { phase } = this.store.getState();
    if (!isRunning(phase)) this.show();
    else if (ending.kind === 'failed') this.show({ phase: 'failed', trouble: ending.trouble });
    else if (ending.kind === 'landed' && table === this.table && stage === this.stage) this.nextStage();
    else this.launch();
  }

  private nextStage(): void {
    if (this.stage === 'measuring') this.show({ phase: 'done' });
    else {
      this.stage = 'measuring';
      this.launch();
    }
  }

  private waitForCalm(): void {
    this.dropWait?.();
    this.dropWait = this.doors.pace.later(CALM_MS, () => {
      this.calm = true;
      this.launch();
    });
  }

  /** Judges the pair looked at on this thread, where that is quick; whether something was found. */
  private judgePicked(): boolean {
    const { table, order } = this;
    if (!table || !order || order.conditions.tiltLimit > 0) return false;
    const i = table.entrants.findIndex(({ id }) => id === order.entrantId);
    const k = table.openings.findIndex(({ id }) => id === order.openingId);
    if (i < 0 || k < 0) return false;
    const [entrant, opening] = [table.entrants[i].ring, table.openings[k].ring];
    const known = table.get(i, k);
    if ((known && isMeasured(known)) || entrant.length * opening.length > MOST_EDGE_PAIRS) return false;
    if (this.wornAway.has(table.entrants[i].id)) return false;
    const fit = this.doors.judgeNow(opening, entrant, order.conditions);
    this.cache.set(opening, entrant, order.conditions, fit);
    table.put(i, k, fit);
    return true;
  }

  /** Whether the picked row is open while the judging runs, so that it should come before the others. */
  private isRowWanting(): boolean {
    const { table, order, stage } = this;
    if (!table || !order || !isRunning(this.store.getState().phase)) return false;
    const row = table.known().fits[table.entrants.findIndex(({ id }) => id === order.entrantId)];
    return !!row?.some((fit) => !fit || (stage === 'measuring' && !isMeasured(fit)));
  }

  /** Shows all that is known, together with what else has changed: one update of the store at most. */
  private show(change: Partial<ResultsState> = {}): void {
    this.dropFrame?.();
    this.dropFrame = null;
    const now = this.store.getState();
    const next: ResultsState = { ...now, wornAway: this.wornAway, ...change, fits: this.table?.known() ?? null };
    const keys = Object.keys(next) as (keyof ResultsState)[];
    if (keys.some((key) => now[key] !== next[key])) this.store.setState(next);
  }
}

/** Ids of the entrants of which the wear of the conditions leaves nothing. Only what is thin is looked at. */
function wornAwayIn(
  { entrants, openings, conditions }: FitTable,
  { shapesUnder }: Pick<Doors, 'shapesUnder'>,
): ReadonlySet<string> {
  if (conditions.wear === 0 || openings.length === 0) return NONE;
  const gone = entrants.filter(({ ring }) => {
    const box = boxOf(ring);
    const thin = Math.min(box.maxX - box.minX, box.maxY - box.minY) <= 2 * conditions.wear;
    return thin && shapesUnder(openings[0].ring, ring, conditions).entrant.length === 0;
  });
  return gone.length === 0 ? NONE : new Set(gone.map(({ id }) => id));
}
