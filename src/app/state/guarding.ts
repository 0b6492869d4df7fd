import type { EntryMatrix } from '../../family/entry-matrix.ts';
import { entrantsOf, type Family } from '../../family/family.ts';
import { type FitCache, isMeasured } from '../../family/fit-cache.ts';
import type { GuardMargins } from '../../family/guard-margin.ts';
import { type KnownFits, knownFits } from '../../family/known-fits.ts';
import type { Fit } from '../../fit/fit.ts';
import { AS_DRAWN, conditionsFor } from './conditions-state.ts';
import type { Doors } from './doors.ts';
import { type Flight, fly } from './flight.ts';
import { makeStore, type Store } from './store.ts';

/** The guard margin of the open family. */
export interface GuardState {
  /** waiting: until every pair has been judged as drawn. */
  readonly phase: 'waiting' | 'measuring' | 'known' | 'failed';
  readonly margins: GuardMargins | null;
  /** Whether a blank is stopped by a keyway at all; true while that is not known. */
  readonly keepsOut: boolean;
}

const WAITING: GuardState = { phase: 'waiting', margins: null, keepsOut: true };

/** A guard margin costs many looks; it is only begun when nothing has changed for so long, milliseconds. */
const CALM_MS = 250;

/** A store in which no guard margin is known. */
export function makeGuardStore(): Store<GuardState> {
  return makeStore(WAITING);
}

/**
 * Finds the guard margin once a family is judged. It is that of new parts held upright, whatever the conditions are,
 * and is kept with the family, so that an undo has it at once.
 *
 * @check tests/unit/app/guarding.test.ts
 */
export class Guarding {
  private readonly kept = new WeakMap<Family, Pick<GuardState, 'margins' | 'keepsOut'>>();
  private family: Family | null = null;
  private flight: { readonly family: Family; readonly jobs: Flight } | null = null;
  private dropWait: (() => void) | null = null;

  constructor(
    private readonly store: Store<GuardState>,
    private readonly doors: Pick<Doors, 'guardFamily' | 'pace'>,
    private readonly cache: FitCache,
  ) {}

  /** A family is open; `settled` once its pairs have been judged and no edit is under way. */
  follow(family: Family, settled: boolean): void {
    const known = this.kept.get(family);
    const changed = family !== this.family;
    this.family = family;
    if (changed) this.flight?.jobs.cancel();
    if (known) this.store.setState({ phase: 'known', ...known });
    else if (changed) this.store.setState(WAITING);
    this.dropWait?.();
    this.dropWait = !known && settled ? this.doors.pace.later(CALM_MS, () => this.launch()) : null;
  }

  private launch(): void {
    const { family, flight } = this;
    if (!family || flight || this.store.getState().phase === 'failed') return;
    const known = knownFits(family, this.cache, conditionsFor(AS_DRAWN, family));
    if (!isWhole(known)) return;
    this.store.setState({ phase: 'measuring' });
    const land = (margins: GuardMargins) => {
      this.kept.set(family, { margins, keepsOut: keepsOut(family, known) });
      return margins;
    };
    const start = () => {
      const job = this.doors.guardFamily(family, known);
      return { ...job, result: job.result.then(land) };
    };
    this.flight = { family, jobs: fly([start], (ending) => this.ended(family, ending.kind === 'failed')) };
  }

  private ended(family: Family, failed: boolean): void {
    this.flight = null;
    const known = this.kept.get(family);
    if (family !== this.family) this.launch();
    else if (known) this.store.setState({ phase: 'known', ...known });
    else if (failed) this.store.setState({ phase: 'failed' });
    else this.launch();
  }
}

/** Whether every pair has been judged and measured. */
function isWhole(known: KnownFits): known is EntryMatrix {
  return known.fits.every((row) => row.every((fit: Fit | undefined) => fit !== undefined && isMeasured(fit)));
}

/** Whether any blank is stopped by any keyway. Tools do not count: the guard margin is not about them. */
function keepsOut(family: Family, { fits }: EntryMatrix): boolean {
  return entrantsOf(family).some(
    ({ kind }, i) => kind === 'blank' && fits[i].some(({ verdict }) => verdict === 'blocked'),
  );
}
