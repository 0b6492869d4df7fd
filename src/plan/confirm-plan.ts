import type { Fit } from '../fit/fit.ts';
import { goesIn, judgeEntry, judgeFit } from '../fit/judge-fit.ts';
import { goesInTilted } from '../fit/judge-tilted.ts';
import { judgeTolerance, keptParts } from '../fit/judge-tolerance.ts';
import { measureWear, WEAR_ACCURACY } from '../fit/measure-wear.ts';
import { growOpening, OFFSET_ARC, shrinkBlank } from '../fit/offset-shapes.ts';
import { type Blank, prepareBlank } from '../fit/prepare-blank.ts';
import { type Opening, prepareOpening } from '../fit/prepare-opening.ts';
import { offset } from '../geom/clip.ts';
import { type Region, regionOf } from '../geom/region.ts';
import type { Ring } from '../geom/ring.ts';
import { sayMillimetres } from '../profile/check-milled.ts';
import type { AccessTable } from './access-table.ts';
import type { PairFault, PlanPair, TiltedPairs } from './drawn-plan.ts';
import type { PlanGap } from './plan-gap.ts';
import { sayDegrees } from './say-confirmed.ts';

/** A part to be judged. */
export interface PlannedPart {
  readonly id: string;
  readonly name: string;
  readonly ring: Ring;
}

/** What the fit core says of a drawn plan. */
export interface Confirmation {
  readonly faults: readonly PairFault[];
  readonly counts: { readonly wanted: number; readonly forbidden: number; readonly free: number };
  readonly clearance: PlanPair | null;
  readonly guard: PlanPair | null;
  /** The forbidden pairs that were looked at tilted, where they were. */
  readonly tilted: TiltedPairs | null;
}

/** What was found of all pairs, upright. */
type JudgedPairs = Pick<Confirmation, 'faults' | 'counts' | 'clearance'>;

/** Judging the pairs, measuring the guard margin and counting the pairs alike are a share each of all that is to be done. */
const SHARES = 3;

/** So many faults are told; the search for more ends. */
const MOST_FAULTS = 12;

/**
 * Judges every pair of a drawn plan by the fit core: a pair that must enter does so with the running clearance, and as the
 * fullest blank in the narrowest keyway; a forbidden one stays out as the leanest blank in the widest keyway.
 *
 * @param table rows are openings, columns blanks.
 * @yields how many looks are done, of how many.
 * @accuracy of the guard margin 1 um: of pairs that differ by less, and most are alike, only the first is measured, the others
 * are counted.
 * @check tests/laws/draw-plan.test.ts against an independent judge
 */
export function* confirmPlan(
  openings: readonly PlannedPart[],
  blanks: readonly PlannedPart[],
  table: AccessTable,
  gap: PlanGap,
): Generator<{ done: number; total: number }, Confirmation, void> {
  const judge = new PairJudge(openings, blanks, gap);
  const forbidden = cellsOf(table, 0);
  const pairs = cellsOf(table, 1).length + forbidden.length;
  const judged = yield* judgedPairs(judge, table);
  if (judged.faults.length > 0) return { ...judged, guard: null, tilted: null };
  const guard = yield* guardOf(judge, forbidden, pairs);
  const tilted =
    gap.tiltLimit && guard && Number.isFinite(guard.length)
      ? yield* tiltedPairs(judge, forbidden, guard.length, gap.tiltLimit)
      : null;
  return { ...judged, faults: tilted?.faults ?? [], guard, tilted };
}

/**
 * Judges the pairs of a table as {@link confirmPlan} does, without the guard margin and upright only.
 *
 * @returns the first faults.
 * @check tests/unit/plan/draw-plan.test.ts
 */
export function* pairFaults(
  openings: readonly PlannedPart[],
  blanks: readonly PlannedPart[],
  table: AccessTable,
  gap: PlanGap,
): Generator<{ done: number; total: number }, readonly PairFault[], void> {
  return (yield* judgedPairs(new PairJudge(openings, blanks, gap), table)).faults;
}

interface CellPlace {
  readonly i: number;
  readonly j: number;
}

function cellsOf(table: AccessTable, kind: 0 | 1 | null): CellPlace[] {
  return table.flatMap((row, i) => row.flatMap((cell, j) => (cell === kind ? [{ i, j }] : [])));
}

function* judgedPairs(
  judge: PairJudge,
  table: AccessTable,
): Generator<{ done: number; total: number }, JudgedPairs, void> {
  const [wanted, forbidden] = [cellsOf(table, 1), cellsOf(table, 0)];
  const counts = { wanted: wanted.length, forbidden: forbidden.length, free: cellsOf(table, null).length };
  const faults: PairFault[] = [];
  let clearance: PlanPair | null = null;
  for (const [n, { i, j }] of [...wanted, ...forbidden].entries()) {
    const isWanted = n < wanted.length;
    const { fit, fault } = isWanted ? judge.wanted(i, j) : judge.forbidden(i, j);
    if (fault) faults.push(fault);
    if (faults.length >= MOST_FAULTS) break;
    if (isWanted && fit.clearance < (clearance?.length ?? Number.POSITIVE_INFINITY))
      clearance = judge.pair(i, j, fit.clearance);
    yield { done: n + 1, total: SHARES * (wanted.length + forbidden.length) };
  }
  return { faults, counts, clearance };
}

/** So many pairs are looked at tilted at most. */
const MOST_TILTED = 12;

/** Pairs whose guard margin is within this of the least one, nanometres and as a share of it, count as at the margin. */
const AT_MARGIN = { length: 5_000, share: 0.02 };

/**
 * Looks at the forbidden pairs at the least guard margin tilted: a blank that goes in so as drawn is a fault, and one that
 * does so only as the leanest in the widest keyway is told.
 */
function* tiltedPairs(
  judge: PairJudge,
  forbidden: readonly CellPlace[],
  guard: number,
  limit: number,
): Generator<{ done: number; total: number }, TiltedPairs & { readonly faults: readonly PairFault[] }, void> {
  const worn = new LooserParts(judge.openings, judge.blanks, guard * (1 + AT_MARGIN.share) + AT_MARGIN.length);
  const near = forbidden.filter(({ i, j }) => worn.mayGoIn(i, j));
  const every = Math.max(1, near.length / MOST_TILTED);
  const picked = near.filter((_, n) => Math.floor(n / every) !== Math.floor((n - 1) / every));
  const faults: PairFault[] = [];
  let loosest: PlanPair | null = null;
  for (const { i, j } of picked) {
    const found = judge.tilted(i, j, limit);
    if (found === 'as drawn') faults.push(judge.tiltFault(i, j, limit));
    if (found === 'in tolerance') loosest ??= judge.pair(i, j, guard);
    yield { done: 1, total: 1 };
  }
  return { limit, looked: picked.length, ofPairs: near.length, loosest, faults };
}

/**
 * The forbidden pair that goes in with the least wear. Each better figure is looked for with parts worn just short of it:
 * by as much as the figure may be too great, so that pairs alike are not measured again.
 */
function* guardOf(
  judge: PairJudge,
  forbidden: readonly CellPlace[],
  pairs: number,
): Generator<{ done: number; total: number }, PlanPair | null, void> {
  let best: PlanPair | null = null;
  let worn: LooserParts | null = null;
  for (const [n, { i, j }] of forbidden.entries()) {
    if (!worn || worn.goesIn(i, j)) {
      const length = measureWear(judge.openings[i], judge.blanks[j].rings[0], 'both');
      if (length < (best?.length ?? Number.POSITIVE_INFINITY)) {
        best = judge.pair(i, j, length);
        worn = new LooserParts(judge.openings, judge.blanks, length - 2 * WEAR_ACCURACY);
      }
    }
    yield { done: pairs + Math.round(((n + 1) * pairs) / forbidden.length), total: SHARES * pairs };
  }
  if (!best) return null;
  const alike = yield* othersAlike(judge, forbidden, pairs, best.length);
  return alike > 0 ? { ...best, alike } : best;
}

/** How many other pairs go in with the wear at which the first does. */
function* othersAlike(
  judge: PairJudge,
  forbidden: readonly CellPlace[],
  pairs: number,
  least: number,
): Generator<{ done: number; total: number }, number, void> {
  const worn = new LooserParts(judge.openings, judge.blanks, least);
  let count = 0;
  for (const [n, { i, j }] of forbidden.entries()) {
    if (worn.goesIn(i, j)) count++;
    yield { done: 2 * pairs + Math.round(((n + 1) * pairs) / forbidden.length), total: SHARES * pairs };
  }
  return count - 1;
}

/**
 * All parts with so much taken off blanks and added to keyways, made when first needed. Most pairs are settled by shapes with
 * few corners, which are a little leaner and wider than the true ones: what stays out of those stays out.
 */
class LooserParts {
  private readonly wide = new Map<number, Opening | null>();
  private readonly lean = new Map<number, Blank | null>();
  private readonly wider = new Map<number, Opening | null>();
  private readonly leaner = new Map<number, Blank | null>();

  constructor(
    private readonly openings: readonly Opening[],
    private readonly blanks: readonly Blank[],
    private readonly off: number,
  ) {}

  goesIn(i: number, j: number): boolean {
    return this.mayGoIn(i, j) && this.certainlyGoesIn(i, j);
  }

  /** False only where the pair stays out for certain. */
  mayGoIn(i: number, j: number): boolean {
    const wider = once(this.wider, i, () => mitred(this.openings[i].region, this.off + OFFSET_ARC, prepareOpening));
    const leaner = once(this.leaner, j, () =>
      mitred(regionOf(this.blanks[j].rings[0]), -this.off - OFFSET_ARC, (region) =>
        prepareBlank(region.map(({ outer }) => outer)),
      ),
    );
    return !wider || !leaner || goesIn(wider, leaner);
  }

  private certainlyGoesIn(i: number, j: number): boolean {
    const wide = once(this.wide, i, () => growOpening(this.openings[i].region, this.off));
    const lean = once(this.lean, j, () => shrinkBlank(this.blanks[j].rings[0], this.off));
    return Boolean(wide && lean && goesIn(wide, lean));
  }
}

/** A region offset with sharp corners, made ready; null where nothing is left. */
function mitred<T>(region: Region, off: number, ready: (region: Region) => T): T | null {
  const made = offset(region, off, 'mitre');
  return made.length > 0 ? ready(made) : null;
}

/** Judges the pairs of a plan; prepared parts and those at the ends of their bands are made once. */
class PairJudge {
  readonly openings: readonly Opening[];
  readonly blanks: readonly Blank[];
  private readonly loosest: LooserParts;
  private readonly easiest = keptParts();

  constructor(
    private readonly openingParts: readonly PlannedPart[],
    private readonly blankParts: readonly PlannedPart[],
    private readonly gap: PlanGap,
  ) {
    this.openings = openingParts.map(({ ring }) => prepareOpening(ring));
    this.blanks = blankParts.map(({ ring }) => prepareBlank(ring));
    this.loosest = new LooserParts(this.openings, this.blanks, gap.tolerance);
  }

  pair(i: number, j: number, length: number): PlanPair {
    return { blank: this.blankParts[j].id, opening: this.openingParts[i].id, length };
  }

  wanted(i: number, j: number): { fit: Fit; fault: PairFault | null } {
    const { runningClearance, tolerance } = this.gap;
    const fit = judgeEntry(this.openings[i], this.blanks[j], runningClearance);
    const short = Math.max(runningClearance, 2 * tolerance) - fit.clearance - fit.accuracy;
    if (fit.verdict === 'enters' && short <= 0) return { fit, fault: null };
    if (fit.verdict !== 'blocked')
      return { fit, fault: this.fault(i, j, 'too-tight', `has ${this.um(short)} less clearance than it needs`) };
    const { clearance } = judgeFit(this.openings[i], this.blanks[j], runningClearance);
    return { fit, fault: this.fault(i, j, 'stays-out', `must enter and collides by ${this.um(-clearance)}`) };
  }

  forbidden(i: number, j: number): { fit: Fit; fault: PairFault | null } {
    const { runningClearance, tolerance } = this.gap;
    const [opening, blank] = [this.openings[i], this.blanks[j]];
    const fit = judgeEntry(opening, blank, runningClearance);
    if (fit.verdict !== 'blocked')
      return { fit, fault: this.fault(i, j, 'goes-in', `must not enter and does, with ${this.um(fit.clearance)}`) };
    if (!this.loosest.mayGoIn(i, j)) return { fit, fault: null };
    const bands = { blank: tolerance, opening: tolerance };
    if (judgeTolerance(opening, blank.rings, fit, bands, 0, this.easiest) === 'never') return { fit, fault: null };
    const wear = measureWear(opening, blank.rings[0], 'both');
    const words = `goes in as soon as both parts are ${this.um(wear)} off, within the tolerance of ${this.um(tolerance)}`;
    return { fit, fault: this.fault(i, j, 'goes-in', words) };
  }

  /** Whether a forbidden blank goes in tilted: as drawn, or as the leanest in the widest keyway only. */
  tilted(i: number, j: number, limit: number): 'as drawn' | 'in tolerance' | 'never' {
    const [opening, { rings }] = [this.openings[i], this.blanks[j]];
    const { tolerance } = this.gap;
    const [widest, leanest] = [this.easiest.widest(opening, tolerance), this.easiest.leanest(rings, tolerance)];
    if (widest && leanest.length > 0 && !goesInTilted(widest, leanest, limit)) return 'never';
    return goesInTilted(opening, rings, limit) ? 'as drawn' : 'in tolerance';
  }

  tiltFault(i: number, j: number, limit: number): PairFault {
    const words = `must not enter and does when it is tilted, within the tilt limit of ${sayDegrees(limit)}`;
    return this.fault(i, j, 'goes-in', words);
  }

  private um(nm: number): string {
    return sayMillimetres(Math.round(nm / 100) * 100);
  }

  private fault(i: number, j: number, kind: PairFault['kind'], words: string): PairFault {
    const [blank, opening] = [this.blankParts[j], this.openingParts[i]];
    return {
      blank: blank.id,
      opening: opening.id,
      kind,
      words: `“${blank.name}” in “${opening.name}” ${words}`,
    };
  }
}

function once<K, V>(kept: Map<K, V>, key: K, make: () => V): V {
  const known = kept.get(key);
  if (known !== undefined) return known;
  const made = make();
  kept.set(key, made);
  return made;
}
