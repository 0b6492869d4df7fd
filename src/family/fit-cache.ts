import type { Conditions } from '../fit/conditions.ts';
import type { Fit } from '../fit/fit.ts';
import type { Ring } from '../geom/ring.ts';

/** Most fits that a cache keeps: a family of 200 by 200 judged twice over. */
const MOST_FITS = 80_000;

/** Most outlines whose content is remembered; beyond that, old names are given up and their fits judged again. */
const MOST_OUTLINES = 20_000;

/**
 * Fits by the content of what was judged: an outline that comes back (an undo, a copy under another name, a blank that
 * differs only in length) is not judged again, and an edit makes only its own row or column unknown.
 */
export class FitCache {
  private readonly fits = new Map<string, Fit>();
  private readonly names = new Map<string, string>();
  private readonly known = new WeakMap<Ring, string>();
  private count = 0;

  /** A short name for the content of an outline: equal outlines have equal names. */
  nameOf(ring: Ring): string {
    const known = this.known.get(ring);
    if (known !== undefined) return known;
    const content = ring.map(({ x, y }) => `${x} ${y}`).join(' ');
    const name = this.names.get(content) ?? `o${++this.count}`;
    if (this.names.size >= MOST_OUTLINES) this.names.clear();
    this.names.set(content, name);
    this.known.set(ring, name);
    return name;
  }

  get(opening: Ring, entrant: Ring, conditions: Conditions): Fit | undefined {
    return this.fits.get(this.keyOf(opening, entrant, conditions));
  }

  /** Keeps a fit; an unmeasured one never replaces a measured one. */
  set(opening: Ring, entrant: Ring, conditions: Conditions, fit: Fit): void {
    const key = this.keyOf(opening, entrant, conditions);
    const old = this.fits.get(key);
    if (old && isMeasured(old)) return;
    if (!old && this.fits.size >= MOST_FITS) this.fits.delete(this.fits.keys().next().value as string);
    this.fits.set(key, fit);
  }

  private keyOf(opening: Ring, entrant: Ring, { runningClearance, tiltLimit, wear }: Conditions): string {
    return `${this.nameOf(opening)} ${this.nameOf(entrant)} ${runningClearance} ${tiltLimit} ${wear}`;
  }
}

/** Whether the margin of a fit is known: a blocked pair may have been judged without its interference. */
export function isMeasured(fit: Fit): boolean {
  return Number.isFinite(fit.clearance);
}
