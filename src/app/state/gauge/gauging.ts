import { type Family, openingsOf } from '../../../family/family.ts';
import type { ThicknessCurve } from '../../../gauge/thickness-curve.ts';
import type { Ring } from '../../../geom/ring.ts';
import { JobCancelled } from '../../../jobs/job.ts';
import type { JobOnItsWay } from '../job-on-its-way.ts';
import type { Session } from '../session.ts';
import { makeStore, type Store } from '../store.ts';
import { troubleText } from '../trouble-text.ts';
import type { GaugeDoors } from './gauge-doors.ts';

/** How far the gauging of a family has come. */
export interface GaugingState {
  readonly phase: 'idle' | 'finding' | 'found' | 'stopped' | 'failed';
  /** Steps of the job on its way. */
  readonly done: number;
  readonly total: number;
  /** Why it failed, in plain words; empty otherwise. */
  readonly trouble: string;
  /** The curves that are known for what is asked, in chart order. */
  readonly curves: readonly ThicknessCurve[];
  /** What is asked; null where nobody looks. */
  readonly asked: { readonly family: Family; readonly tiltLimit: number } | null;
}

const NOTHING: GaugingState = { phase: 'idle', done: 0, total: 0, trouble: '', curves: [], asked: null };

/**
 * Finds the curves of a family's keyways in another thread. A curve is kept by its outline and the tilt limit, so that an
 * edit, or a go on after a stop, asks for nothing but what is missing.
 *
 * @check tests/unit/app/gauge-gauging.test.ts
 */
export class Gauging {
  readonly store: Store<GaugingState> = makeStore(NOTHING);
  private readonly known = new WeakMap<Ring, Map<number, ThicknessCurve>>();
  private job: JobOnItsWay<unknown> | null = null;

  constructor(private readonly doors: GaugeDoors) {}

  /** Asks for the curves of a family; null where nobody looks any more. */
  ask(family: Family | null, tiltLimit: number): void {
    const { asked } = this.store.getState();
    if (family === (asked?.family ?? null) && (family === null || tiltLimit === asked?.tiltLimit)) return;
    this.drop();
    if (family === null) {
      this.store.setState({ asked: null, phase: 'idle', trouble: '' });
      return;
    }
    this.store.setState({ asked: { family, tiltLimit }, trouble: '' });
    this.find();
  }

  /** Ends what is on its way; what is known stays. */
  stop(): void {
    if (!this.job) return;
    this.drop();
    this.store.setState({ phase: 'stopped' });
  }

  /** Goes on after a stop or a failure. */
  again(): void {
    if (!this.job) this.find();
  }

  private find(): void {
    const { asked } = this.store.getState();
    if (!asked) return;
    const { family, tiltLimit } = asked;
    const missing = openingsOf(family).filter(({ ring }) => !this.known.get(ring)?.has(tiltLimit));
    this.tell();
    if (missing.length === 0) {
      this.store.setState({ phase: 'found', trouble: '' });
      return;
    }
    this.store.setState({ phase: 'finding', done: 0, total: 0, trouble: '' });
    const rings = new Map(missing.map(({ id, ring }) => [id, ring]));
    const keep = (curve: ThicknessCurve) => {
      const ring = rings.get(curve.openingId);
      if (ring) this.known.set(ring, new Map(this.known.get(ring)).set(tiltLimit, curve));
    };
    try {
      this.launch({ family: { ...family, profiles: missing }, tiltLimit }, keep);
    } catch (reason) {
      // A browser that allows no thread says so by throwing at once.
      this.store.setState({ phase: 'failed', trouble: troubleText(reason) });
    }
  }

  private launch(
    input: { readonly family: Family; readonly tiltLimit: number },
    keep: (curve: ThicknessCurve) => void,
  ): void {
    const job = this.doors.gaugeFamily(
      input,
      (curve) => {
        // A late one is true of its outline all the same.
        keep(curve);
        if (this.job === job) this.tell();
      },
      (done, total) => {
        if (this.job === job) this.store.setState({ done, total });
      },
    );
    this.job = job;
    job.result.then(
      ({ curves }) => {
        for (const curve of curves) keep(curve);
        if (this.job !== job) return;
        this.job = null;
        this.tell();
        this.store.setState({ phase: 'found' });
      },
      (reason) => this.fell(job, reason),
    );
  }

  private fell(job: JobOnItsWay<unknown>, reason: unknown): void {
    if (this.job !== job) return;
    this.job = null;
    if (reason instanceof JobCancelled) this.store.setState({ phase: 'stopped' });
    else this.store.setState({ phase: 'failed', trouble: troubleText(reason) });
  }

  private drop(): void {
    const { job } = this;
    this.job = null;
    job?.cancel();
  }

  /** Shows the curves that are known of what is asked. */
  private tell(): void {
    const { asked } = this.store.getState();
    if (!asked) return;
    const curves = openingsOf(asked.family).flatMap(({ id, ring }) => {
      const curve = this.known.get(ring)?.get(asked.tiltLimit);
      if (!curve) return [];
      return curve.openingId === id ? curve : { ...curve, openingId: id };
    });
    this.store.setState({ curves });
  }
}

const gaugings = new WeakMap<Session, Gauging>();

/** The gauging of a window. */
export function gaugingOf(session: Session): Gauging {
  const known = gaugings.get(session) ?? new Gauging(session.doors.gauge);
  gaugings.set(session, known);
  return known;
}
