import type { Tiers } from '../../../family/tiers.ts';
import type { Diagram } from '../../../jobs/lay-out-tiers.ts';
import { type Ending, type Flight, fly } from '../flight.ts';
import type { Pace } from '../pace.ts';
import { makeStore, type Store } from '../store.ts';
import { type DiagramNode, GAP } from './diagram-nodes.ts';
import type { TiersDoors } from './tiers-doors.ts';

/** A diagram to be laid out. */
export interface DiagramOrder {
  readonly tiers: Tiers;
  readonly nodes: readonly DiagramNode[];
  /** Room between tiers, pixels; as little as can be where none is given. */
  readonly gap?: number;
}

/** A diagram with its places. */
export interface LaidOut extends DiagramOrder {
  readonly layout: Diagram;
}

/** How far the diagram has come; what was laid out last stays until the next is there. */
export interface LayoutState {
  readonly phase: 'idle' | 'laying out' | 'ready' | 'stopped' | 'failed';
  /** Far enough under way to be told of. */
  readonly slow: boolean;
  readonly drawn: LaidOut | null;
  readonly trouble: string;
}

/** A layout that takes longer than this is told of, milliseconds. */
const PATIENCE_MS = 300;

/**
 * Lays the diagram out in another thread, one job at a time: a stale one is cancelled, and the latest wish is next.
 * Where only pictures or names have changed, the places stay and nothing is computed.
 *
 * @check tests/unit/app/tiers-laying-out.test.ts
 */
export class LayingOut {
  readonly store: Store<LayoutState> = makeStore<LayoutState>({ phase: 'idle', slow: false, drawn: null, trouble: '' });
  private order: DiagramOrder | null = null;
  private flight: { readonly order: DiagramOrder; readonly jobs: Flight } | null = null;
  private dropWait: (() => void) | null = null;

  constructor(
    private readonly doors: Pick<TiersDoors, 'layOut'>,
    private readonly pace: Pick<Pace, 'later'>,
  ) {}

  /** Lays out what is ordered. */
  follow(order: DiagramOrder): void {
    if (order === this.order) return;
    this.order = order;
    const { drawn } = this.store.getState();
    if (drawn && placesKey(drawn) === placesKey(order)) {
      this.flight?.jobs.cancel();
      this.settle({ phase: 'ready', drawn: { ...order, layout: drawn.layout } });
    } else if (!this.flight) this.launch();
    else if (placesKey(this.flight.order) !== placesKey(order)) this.flight.jobs.cancel();
  }

  /** Stops; what was laid out last stays. */
  stop(): void {
    this.settle({ phase: 'stopped' });
    this.flight?.jobs.cancel();
  }

  /** Goes on after a stop or a failure. */
  again(): void {
    if (this.order && !this.flight) this.launch();
  }

  /** Forgets what was laid out: another family is open. */
  clear(): void {
    this.order = null;
    this.flight?.jobs.cancel();
    this.settle({ phase: 'idle', drawn: null });
  }

  private launch(): void {
    const { order } = this;
    if (!order) return;
    this.store.setState({ phase: 'laying out', trouble: '' });
    this.dropWait ??= this.pace.later(PATIENCE_MS, () => this.store.setState({ slow: true }));
    const start = () => {
      const job = this.doors.layOut(inputOf(order));
      return { ...job, result: job.result.then((layout) => this.land(order, layout)) };
    };
    this.flight = { order, jobs: fly([start], (ending) => this.ended(ending)) };
  }

  /** What has come in is shown where it still belongs to what is ordered. */
  private land(order: DiagramOrder, layout: Diagram): void {
    const now = this.order;
    if (now && placesKey(now) === placesKey(order)) this.settle({ phase: 'ready', drawn: { ...now, layout } });
  }

  private ended(ending: Ending): void {
    this.flight = null;
    const { phase } = this.store.getState();
    if (phase !== 'laying out') return;
    if (ending.kind === 'failed') this.settle({ phase: 'failed', trouble: ending.trouble });
    else this.launch();
  }

  private settle(state: Partial<LayoutState>): void {
    this.dropWait?.();
    this.dropWait = null;
    this.store.setState({ slow: false, trouble: '', ...state });
  }
}

const keys = new WeakMap<DiagramOrder, string>();

/** The same text for diagrams that are laid out alike. */
function placesKey(order: DiagramOrder): string {
  const known = keys.get(order);
  if (known !== undefined) return known;
  const key = JSON.stringify(inputOf(order));
  keys.set(order, key);
  return key;
}

function inputOf({ tiers, nodes, gap = GAP.y }: DiagramOrder) {
  const boxes = nodes.map(({ id, width, height, tier }) => ({ id, width, height, tier }));
  return { nodes: boxes, covers: tiers.covers, gap: { x: GAP.x, y: gap } };
}
