import type { ConceptCount } from '../../../family/tiers.ts';
import { type Flight, fly } from '../flight.ts';
import { makeStore, type Store } from '../store.ts';
import type { TiersDoors } from './tiers-doors.ts';
import type { TiersOfFits } from './tiers-of-fits.ts';

/** How large the concept lattice of the family is, as far as it is known. */
export interface ConceptState {
  readonly phase: 'idle' | 'counting' | 'known' | 'failed';
  readonly count: ConceptCount | null;
}

/** Counting ends here: a lattice may have as many concepts as there are sets of keyways. */
export const MOST_CONCEPTS = 50_000;

/**
 * Counts the concepts behind a diagram in another thread; a count that is no longer wanted is cancelled.
 *
 * @check tests/unit/app/tiers-laying-out.test.ts
 */
export class CountingConcepts {
  readonly store: Store<ConceptState> = makeStore<ConceptState>({ phase: 'idle', count: null });
  private wanted: TiersOfFits | null = null;
  private counted: TiersOfFits | null = null;
  private flight: Flight | null = null;

  constructor(private readonly doors: Pick<TiersDoors, 'countConcepts'>) {}

  /** Counts those of a table; null where none are wanted. */
  follow(wanted: TiersOfFits | null): void {
    if (wanted === this.wanted) return;
    this.wanted = wanted;
    if (wanted === this.counted && wanted) return;
    if (this.flight) this.flight.cancel();
    else this.launch();
  }

  private launch(): void {
    const { wanted } = this;
    if (!wanted) return;
    this.store.setState({ phase: 'counting', count: null });
    const start = () => {
      const job = this.doors.countConcepts({ table: wanted.table, limit: MOST_CONCEPTS });
      return { ...job, result: job.result.then((count) => this.land(wanted, count)) };
    };
    this.flight = fly([start], (ending) => {
      this.flight = null;
      if (this.wanted !== wanted) this.launch();
      else if (ending.kind !== 'landed') this.store.setState({ phase: 'failed' });
    });
  }

  private land(wanted: TiersOfFits, count: ConceptCount): void {
    if (wanted !== this.wanted) return;
    this.counted = wanted;
    this.store.setState({ phase: 'known', count });
  }
}

/** The size of the lattice and what it means, in two sentences. */
export function conceptWords({ phase, count }: ConceptState): string {
  if (phase === 'failed') return 'The lattice behind the diagram could not be counted.';
  if (!count) return 'Counting the lattice behind the diagram …';
  const { concepts, capped, edges } = count;
  const size = capped
    ? `more than ${groupDigits(concepts)} nodes`
    : `${groupDigits(concepts)} nodes and ${groupDigits(edges)} lines`;
  return `The concept lattice behind the diagram has ${size}. Each node is a largest group of blanks and keyways that all go together.`;
}

/** Digits in groups of three. */
function groupDigits(value: number): string {
  return value.toLocaleString('en-GB');
}
