import { type AnswerOf, type CheckedClaim, checkClaims } from '../../../claims/check-claims.ts';
import { partsFromFit } from '../../../claims/parts-from-fit.ts';
import { makeNameFinder, type ResolvedClaim, resolveClaims } from '../../../claims/resolve-claims.ts';
import type { Family } from '../../../family/family.ts';
import { isMeasured } from '../../../family/fit-cache.ts';
import type { KnownFits } from '../../../family/known-fits.ts';
import type { Fit } from '../../../fit/fit.ts';
import type { Bands, ThreeWay } from '../../../fit/judge-tolerance.ts';
import type { Ring } from '../../../geom/ring.ts';
import { type PackedOutline, packOutline } from '../../../jobs/packed-outline.ts';
import { registerOf } from '../../../names/register.ts';
import type { Profile } from '../../../profile/profile.ts';
import { bandsFor, type ConditionsState, conditionsFor } from '../conditions-state.ts';
import type { Doors } from '../doors.ts';
import { type Ending, type Flight, fly } from '../flight.ts';
import { makeStore, type Store } from '../store.ts';

/** What claims are to be checked against. */
export interface ClaimsOrder {
  readonly family: Family;
  readonly fits: KnownFits | null;
  readonly state: ConditionsState;
  /** Whether no more fits are on their way: tolerances are judged only then. */
  readonly settled: boolean;
}

/** How far the checking has come. */
export interface CheckingState {
  /** Grows with what is known. */
  readonly version: number;
  /** Pairs whose tolerances are being judged. */
  readonly waiting: number;
  /** Why they could not be judged, in plain words; empty otherwise. */
  readonly trouble: string;
}

/** A pair that claims speak of and whose answer for all parts has to be looked at. */
interface Wanted {
  readonly entrant: Profile;
  readonly opening: Profile;
  readonly fit: Fit;
  readonly bands: Bands;
}

const NO_CLAIMS: readonly ResolvedClaim[] = [];

/**
 * Checks the claims of a window's family. Names are looked up once a family; what the clearance says is there at once;
 * where the ends of the tolerance bands have to be looked at, other threads do it once the fits are known. Answers are
 * kept by the fit that they belong to, so that an edit of one outline leaves the others' known.
 *
 * @check tests/unit/app/claims-checking.test.ts
 */
export class ClaimsChecking {
  readonly store: Store<CheckingState> = makeStore<CheckingState>({ version: 0, waiting: 0, trouble: '' });
  private readonly known = new WeakMap<Fit, Map<string, ThreeWay>>();
  private readonly packed = new WeakMap<Ring, PackedOutline>();
  private resolvedFor: { family: Family; resolved: readonly ResolvedClaim[] } | null = null;
  private checkedFor: { key: readonly unknown[]; checked: readonly CheckedClaim[] } | null = null;
  private order: ClaimsOrder | null = null;
  private flight: Flight | null = null;
  private failed: KnownFits | null = null;
  private dropFrame: (() => void) | null = null;

  constructor(private readonly doors: Pick<Doors, 'claims' | 'threadCount' | 'pace'>) {}

  /** Every claim as far as it can be told now; the same value until something else is known. */
  check({ family, fits, state }: Omit<ClaimsOrder, 'settled'>): readonly CheckedClaim[] {
    const key = [family, fits, state, this.store.getState().version];
    const before = this.checkedFor;
    if (before?.key.every((part, i) => part === key[i])) return before.checked;
    const checked = checkClaims(this.resolve(family), this.answers(family, fits, state));
    this.checkedFor = { key, checked };
    return checked;
  }

  /** Judges the tolerances that are missing; null where nobody looks at the claims. */
  follow(order: ClaimsOrder | null): void {
    this.order = order;
    if (!order) this.flight?.cancel();
    this.launch();
  }

  private resolve(family: Family): readonly ResolvedClaim[] {
    const { claims } = family;
    if (!claims || claims.length === 0) return NO_CLAIMS;
    if (this.resolvedFor?.family === family) return this.resolvedFor.resolved;
    const resolved = resolveClaims(makeNameFinder(family, registerOf(family)), claims);
    this.resolvedFor = { family, resolved };
    return resolved;
  }

  private answers(family: Family, fits: KnownFits | null, state: ConditionsState): AnswerOf {
    const rows = placesOf(fits?.profiles ?? []);
    const columns = placesOf(fits?.openings ?? []);
    const profiles = new Map(family.profiles.map((profile) => [profile.id, profile]));
    return (entrantId, openingId) => {
      const fit = fits?.fits[rows.get(entrantId) ?? -1]?.[columns.get(openingId) ?? -1];
      const [entrant, opening] = [profiles.get(entrantId), profiles.get(openingId)];
      if (!fit || !entrant || !opening) return { fit, parts: undefined };
      return { fit, parts: this.partsOf(fit, bandsFor(state, family, entrant, opening)) };
    };
  }

  private partsOf(fit: Fit, bands: Bands): ThreeWay | undefined {
    if (!isMeasured(fit)) return undefined;
    return partsFromFit(fit, bands) ?? this.known.get(fit)?.get(bandsKey(bands));
  }

  private launch(): void {
    const { order } = this;
    if (!order?.settled || !order.fits || this.flight || this.failed === order.fits) return;
    const wanted = this.wanted(order);
    if (wanted.length === 0) return;
    this.store.setState({ waiting: wanted.length, trouble: '' });
    const threads = Math.max(1, this.doors.threadCount());
    const dealt = Array.from({ length: threads }, (_, t) => wanted.filter((_pair, n) => n % threads === t));
    const starters = dealt.filter((part) => part.length > 0).map((part) => () => this.start(order, part));
    const { fits } = order;
    this.flight = fly(starters, (ending) => this.ended(ending, fits));
  }

  /** The pairs that claims speak of and that are not known, each fit once. */
  private wanted({ family, fits, state }: ClaimsOrder): Wanted[] {
    const answerOf = this.answers(family, fits, state);
    const profiles = new Map(family.profiles.map((profile) => [profile.id, profile]));
    const wanted = new Map<Fit, Wanted>();
    for (const { blank, opening } of this.resolve(family))
      for (const entrantId of blank.ids)
        for (const openingId of opening.ids) {
          const { fit, parts } = answerOf(entrantId, openingId);
          const [entrant, keyway] = [profiles.get(entrantId), profiles.get(openingId)];
          if (!fit || parts !== undefined || !isMeasured(fit) || !entrant || !keyway || wanted.has(fit)) continue;
          wanted.set(fit, { entrant, opening: keyway, fit, bands: bandsFor(state, family, entrant, keyway) });
        }
    return [...wanted.values()];
  }

  private start({ family, state }: ClaimsOrder, wanted: readonly Wanted[]) {
    const entrants = [...new Set(wanted.map(({ entrant }) => entrant.ring))];
    const openings = [...new Set(wanted.map(({ opening }) => opening.ring))];
    const rows = new Map(entrants.map((ring, i) => [ring, i]));
    const columns = new Map(openings.map((ring, k) => [ring, k]));
    const pairs = wanted.flatMap(({ entrant, opening }) => [
      rows.get(entrant.ring) ?? 0,
      columns.get(opening.ring) ?? 0,
    ]);
    const input = {
      openings: openings.map((ring) => this.pack(ring)),
      entrants: entrants.map((ring) => this.pack(ring)),
      pairs: Uint32Array.from(pairs),
      fits: wanted.map(({ fit }) => fit),
      bands: wanted.map(({ bands }) => bands),
      conditions: conditionsFor(state, family),
    };
    return this.doors.claims.judgeTolerances(input, ({ first, answers }) => {
      for (const [n, parts] of answers.entries()) this.keep(wanted[first + n], parts);
      this.store.setState((s) => ({ waiting: Math.max(0, s.waiting - answers.length) }));
      this.dropFrame ??= this.doors.pace.frame(() => this.show());
    });
  }

  private pack(ring: Ring): PackedOutline {
    const packed = this.packed.get(ring) ?? packOutline('', ring);
    this.packed.set(ring, packed);
    return packed;
  }

  private keep({ fit, bands }: Wanted, parts: ThreeWay): void {
    const own = this.known.get(fit) ?? new Map<string, ThreeWay>();
    this.known.set(fit, own.set(bandsKey(bands), parts));
  }

  private ended(ending: Ending, fits: KnownFits): void {
    this.flight = null;
    if (ending.kind === 'failed') this.failed = fits;
    this.show({ waiting: 0, trouble: ending.kind === 'failed' ? ending.trouble : '' });
    this.launch();
  }

  private show(change: Partial<CheckingState> = {}): void {
    this.dropFrame?.();
    this.dropFrame = null;
    this.store.setState((s) => ({ ...change, version: s.version + 1 }));
  }
}

function placesOf(ids: readonly string[]): ReadonlyMap<string, number> {
  return new Map(ids.map((id, i) => [id, i]));
}

function bandsKey({ blank, opening }: Bands): string {
  return `${blank} ${opening}`;
}

const checkings = new WeakMap<object, ClaimsChecking>();

/** What checks the claims of a window. */
export function checkingOf(session: { readonly doors: Doors }): ClaimsChecking {
  const known = checkings.get(session);
  if (known) return known;
  const made = new ClaimsChecking(session.doors);
  checkings.set(session, made);
  return made;
}
