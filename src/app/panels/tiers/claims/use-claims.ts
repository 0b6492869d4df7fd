import { useEffect, useMemo } from 'react';
import { type CheckedClaim, countStandings } from '../../../../claims/check-claims.ts';
import type { ClaimWords } from '../../../../claims/claim-sentence.ts';
import type { Family } from '../../../../family/family.ts';
import { isRunning } from '../../../state/results-state.ts';
import { checkingOf } from '../../../state/tiers/claims-checking.ts';
import { type ClaimMarkOfPair, claimMarks } from '../../../state/tiers/claims-marks.ts';
import { claimRows } from '../../../state/tiers/claims-rows.ts';
import { claimsOf } from '../../../state/tiers/claims-state.ts';
import { claimWords } from '../../../state/tiers/claims-words.ts';
import { useSession, useStore } from '../../use-store.ts';

/** The claims of a family, each as far as it can be told now. */
export function useCheckedClaims(family: Family): readonly CheckedClaim[] {
  const session = useSession();
  const checking = checkingOf(session);
  const fits = useStore(session.results, (s) => s.fits);
  const state = useStore(session.conditions, (s) => s);
  const version = useStore(checking.store, (s) => s.version);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another version is what more is known by
  return useMemo(() => checking.check({ family, fits, state }), [checking, family, fits, state, version]);
}

/** Has the tolerances of claimed pairs judged while the component that asks is on the page. */
export function useClaimsJudging(family: Family): void {
  const session = useSession();
  const checking = checkingOf(session);
  const fits = useStore(session.results, (s) => s.fits);
  const state = useStore(session.conditions, (s) => s);
  const settled = useStore(session.results, (s) => !isRunning(s.phase) && s.phase !== 'idle');
  useEffect(() => checking.follow({ family, fits, state, settled }), [checking, family, fits, state, settled]);
  useEffect(() => () => checking.follow(null), [checking]);
}

/** The same value again and again, so that a matrix without claims is not drawn anew with every verdict. */
const NO_MARKS: ReadonlyMap<string, ClaimMarkOfPair> = new Map();

/** What is claimed of each pair, for the cells of a matrix. */
export function useClaimMarks(family: Family): ReadonlyMap<string, ClaimMarkOfPair> {
  const checked = useCheckedClaims(family);
  return useMemo(() => (checked.length > 0 ? claimMarks(checked) : NO_MARKS), [checked]);
}

/** The claims that are listed, in the order of the list. */
export function useClaimRows(checked: readonly CheckedClaim[]): readonly CheckedClaim[] {
  const store = claimsOf(useSession());
  const shown = useStore(store, (s) => s.shown);
  const source = useStore(store, (s) => s.source);
  return useMemo(() => claimRows(checked, { shown, source }), [checked, shown, source]);
}

/** What reasons are worded with now. */
export function useClaimWords(family: Family): ClaimWords {
  const { doors, settings, conditions } = useSession();
  const units = useStore(settings, (s) => s.units);
  const state = useStore(conditions, (s) => s);
  return useMemo(() => claimWords(doors, family, state, units), [doors, family, state, units]);
}

/** How many claims stand how. */
export function useStandings(checked: readonly CheckedClaim[]) {
  return useMemo(() => countStandings(checked), [checked]);
}
