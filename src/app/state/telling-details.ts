import { type Family, openingsOf } from '../../family/family.ts';
import type { FitCache } from '../../family/fit-cache.ts';
import type { Fit } from '../../fit/fit.ts';
import type { Bands, ThreeWay } from '../../fit/judge-tolerance.ts';
import type { DetailsInput, PairDetail, WearFigures } from '../../jobs/judge-details.ts';
import type { Profile } from '../../profile/profile.ts';
import { bandsFor, type ConditionsState, conditionsFor, isAltered } from './conditions-state.ts';
import type { Doors, JobOnItsWay } from './doors.ts';
import { type Ending, type Flight, fly } from './flight.ts';
import { packedOf } from './packed-outlines.ts';
import type { RowDetails } from './row-details.ts';
import type { Store } from './store.ts';

/** Whose details are wanted: one blank or tool, with what is known of its fits by opening id. */
export interface DetailsOrder {
  readonly family: Family;
  readonly state: ConditionsState;
  readonly entrant: Profile;
  readonly row: ReadonlyMap<string, Fit>;
}

/** One pair of the picked row, with the names under which its details are kept. */
interface Wanted {
  readonly opening: Profile;
  readonly fit: Fit;
  readonly bands: Bands;
  readonly partsKey: string;
  readonly wearKey: string;
}

/** Most pairs whose details are kept. */
const MOST_KEPT = 80_000;

const NEW_ENOUGH: WearFigures = { blank: 0, keyway: 0, both: 0 };

/**
 * Finds what the wall tells besides margins: the answer for all parts, or the wear at which a blocked blank goes in.
 * Details are kept by the content of the pair, so they outlive a walk along the blanks; jobs for a row that is no
 * longer wanted are cancelled.
 *
 * @check tests/unit/app/telling-details.test.ts
 */
export class TellingDetails {
  private readonly threeWays = new Map<string, ThreeWay>();
  private readonly wears = new Map<string, WearFigures>();
  private order: DetailsOrder | null = null;
  private pairs: readonly Wanted[] = [];
  private flight: { readonly subject: string; readonly jobs: Flight } | null = null;
  private failure: { readonly subject: string; readonly trouble: string } | null = null;
  private dropFrame: (() => void) | null = null;

  constructor(
    private readonly store: Store<RowDetails>,
    private readonly doors: Pick<Doors, 'judgeDetails' | 'threadCount' | 'pace'>,
    private readonly cache: FitCache,
  ) {}

  /** Tells the details of what is ordered; null where none are wanted. */
  follow(order: DetailsOrder | null): void {
    this.order = order;
    this.pairs = order ? this.pairsOf(order) : [];
    const subject = this.subject();
    if (this.failure?.subject !== subject) this.failure = null;
    if (this.flight && this.flight.subject !== subject) this.flight.jobs.cancel();
    this.show();
    this.launch();
  }

  /** What a flight is for; it is stale once this changes. A row that only fills up stays the same subject. */
  private subject(): string {
    if (!this.order) return '';
    const { family, state, entrant } = this.order;
    return JSON.stringify([this.cache.nameOf(entrant.ring), state, family.runningClearance]);
  }

  private pairsOf({ family, state, entrant, row }: DetailsOrder): Wanted[] {
    const { runningClearance, tiltLimit, wear } = conditionsFor(state, family);
    const own = this.cache.nameOf(entrant.ring);
    return openingsOf(family).flatMap((opening) => {
      const fit = row.get(opening.id);
      if (!fit) return [];
      const bands = bandsFor(state, family, entrant, opening);
      const wearKey = `${this.cache.nameOf(opening.ring)} ${own}`;
      const partsKey = `${wearKey} ${runningClearance} ${tiltLimit} ${wear} ${bands.blank} ${bands.opening}`;
      return [{ opening, fit, bands, wearKey, partsKey }];
    });
  }

  /** Starts jobs for what is missing, once the flight before has ended. */
  private launch(): void {
    const { order } = this;
    if (!order || this.flight || this.failure) return;
    const missing = this.pairs.filter((pair) => !this.isKnown(order, pair));
    if (missing.length === 0) return;
    const threads = Math.max(1, this.doors.threadCount());
    const dealt = Array.from({ length: threads }, (_, t) => missing.filter((_pair, n) => n % threads === t));
    const starters = dealt.filter((pairs) => pairs.length > 0).map((pairs) => () => this.startJob(order, pairs));
    const subject = this.subject();
    this.flight = { subject, jobs: fly(starters, (ending) => this.ended(ending, subject)) };
  }

  private isKnown({ state }: DetailsOrder, { partsKey, wearKey, fit }: Wanted): boolean {
    if (state.telling === 'parts') return this.threeWays.has(partsKey);
    return goesInNew(state, fit) || this.wears.has(wearKey);
  }

  private startJob({ family, state, entrant }: DetailsOrder, pairs: readonly Wanted[]): JobOnItsWay<unknown> {
    const input: DetailsInput = {
      entrant: packedOf(this.cache, entrant.ring),
      openings: pairs.map(({ opening }) => packedOf(this.cache, opening.ring)),
      fits: pairs.map(({ fit }) => fit),
      bands: pairs.map(({ bands }) => bands),
      conditions: conditionsFor(state, family),
      wear: state.telling === 'guard',
    };
    return this.doors.judgeDetails(input, (detail) => this.land(pairs[detail.opening], detail));
  }

  private land({ partsKey, wearKey }: Wanted, { threeWay, wear }: PairDetail): void {
    keep(this.threeWays, partsKey, threeWay);
    if (wear) keep(this.wears, wearKey, wear);
    this.dropFrame ??= this.doors.pace.frame(() => this.show());
  }

  private ended(ending: Ending, subject: string): void {
    this.flight = null;
    if (ending.kind === 'failed' && subject === this.subject()) this.failure = { subject, trouble: ending.trouble };
    this.show();
    this.launch();
  }

  private show(): void {
    this.dropFrame?.();
    this.dropFrame = null;
    const { order, pairs } = this;
    const threeWay = new Map<string, ThreeWay>();
    const wear = new Map<string, WearFigures>();
    for (const { opening, fit, partsKey, wearKey } of pairs) {
      const parts = this.threeWays.get(partsKey);
      if (parts) threeWay.set(opening.id, parts);
      const worn = order && goesInNew(order.state, fit) ? NEW_ENOUGH : this.wears.get(wearKey);
      if (worn) wear.set(opening.id, worn);
    }
    this.store.setState({ threeWay, wear, trouble: this.failure?.trouble ?? '' });
  }
}

/** Whether the fit itself says that new parts go together; one of worn or tilted parts does not. */
function goesInNew(state: ConditionsState, fit: Fit): boolean {
  return fit.verdict !== 'blocked' && !isAltered(state);
}

/** Keeps a value; the oldest one makes room. */
function keep<Value>(kept: Map<string, Value>, key: string, value: Value): void {
  kept.set(key, value);
  if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value as string);
}
