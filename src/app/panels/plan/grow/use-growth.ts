import { useEffect, useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { GrowProposal, GrowReport } from '../../../../plan/grow.ts';
import type { GrowInput } from '../../../../plan/grow-family.ts';
import type { AskedState } from '../../../state/asked-job.ts';
import { growFindingOf } from '../../../state/plan/grow/grow-finding.ts';
import { growInput, growStateOf } from '../../../state/plan/grow/grow-state.ts';
import { useSession, useStore } from '../../use-store.ts';

/** Room to grow as far as it is found. */
export interface ShownGrowth extends AskedState<GrowInput, GrowReport> {
  /** The answer to what is asked now; null while it is looked for. */
  readonly report: GrowReport | null;
  readonly input: GrowInput | null;
  /** The proposal that is looked at. */
  readonly picked: GrowProposal | null;
}

/** Asks for the room of a family as long as the component is there. */
export function useAskedGrowth(family: Family): ShownGrowth {
  const finding = growFindingOf(useSession());
  const input = useGrowInput(family);
  useEffect(() => finding.ask(input), [finding, input]);
  useEffect(() => () => finding.ask(null), [finding]);
  return useGrowth(family);
}

/** The same for a component beside the one that asks. */
export function useGrowth(family: Family): ShownGrowth {
  const session = useSession();
  const finding = growFindingOf(session);
  const state = useStore(finding.store, (s) => s);
  const input = useGrowInput(family);
  const number = useStore(growStateOf(session), (s) => s.picked);
  const found = finding.answerTo(input);
  const report = found?.output ?? null;
  const picked = report?.proposals[number] ?? report?.proposals[0] ?? null;
  return { ...state, report, input: found?.input ?? null, picked };
}

/** What is asked now, the same value until it is another question. */
function useGrowInput(family: Family): GrowInput {
  const state = useStore(growStateOf(useSession()), (s) => s);
  const { first, second, allowed, top } = state;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is picked or typed is no other question
  return useMemo(() => growInput(family, state), [family, first, second, allowed, top]);
}
