import { useEffect, useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { GrowProposal, GrowReport } from '../../../../plan/grow.ts';
import type { GrowInput } from '../../../../plan/grow-family.ts';
import type { AskedState } from '../../../state/asked-job.ts';
import { type GrowFinding, growFindingOf } from '../../../state/plan/grow/grow-finding.ts';
import { growInput, growStateOf } from '../../../state/plan/grow/grow-state.ts';
import { useSession, useStore } from '../../use-store.ts';

/** Room to grow as far as it is found. */
export interface ShownGrowth extends AskedState<GrowInput, GrowReport> {
  readonly finding: GrowFinding;
  /** The answer to what is asked now; null while it is looked for. */
  readonly report: GrowReport | null;
  readonly input: GrowInput | null;
  /** The proposal that is looked at. */
  readonly picked: GrowProposal | null;
}

/** Asks for the room of a family as long as the component is there. */
export function useAskedGrowth(family: Family): ShownGrowth {
  const session = useSession();
  const finding = growFindingOf(session);
  const state = useStore(growStateOf(session), (s) => s);
  const { first, second, allowed, top } = state;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is picked or typed is no other question
  const input = useMemo(() => growInput(family, state), [family, first, second, allowed, top]);
  useEffect(() => finding.ask(input), [finding, input]);
  useEffect(() => () => finding.ask(null), [finding]);
  return useGrowth();
}

/** The same for a component beside the one that asks. */
export function useGrowth(): ShownGrowth {
  const session = useSession();
  const finding = growFindingOf(session);
  const state = useStore(finding.store, (s) => s);
  const number = useStore(growStateOf(session), (s) => s.picked);
  const found = state.phase === 'found' ? state.found : null;
  const report = found?.output ?? null;
  const picked = report?.proposals[number] ?? report?.proposals[0] ?? null;
  return { ...state, finding, report, input: found?.input ?? null, picked };
}
