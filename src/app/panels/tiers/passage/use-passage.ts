import { useEffect, useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { PassageInput } from '../../../../passage/find-passage.ts';
import type { Passage } from '../../../../passage/passage.ts';
import type { AskedJob, AskedState } from '../../../state/asked-job.ts';
import { chosenIds, passageInput } from '../../../state/tiers/passage-choice.ts';
import { passageFindingOf, standsIn } from '../../../state/tiers/passage-finding.ts';
import { useSession, useStore } from '../../use-store.ts';

/** A passage as far as it is found: that of what is asked now, or the one before of keyways that are as they were. */
export interface ShownPassage extends AskedState<PassageInput, Passage> {
  readonly finding: AskedJob<PassageInput, Passage>;
  /** Whether what was found is the answer to what is asked now. */
  readonly current: boolean;
}

/** Asks for the passage of some keyways as long as the component is there; ids in chart order. */
export function usePassage(family: Family, ids: readonly string[]): ShownPassage {
  const finding = passageFindingOf(useSession());
  const input = usePassageInput(family, ids);
  useEffect(() => finding.ask(input), [finding, input]);
  useEffect(() => () => finding.ask(null), [finding]);
  return useFoundPassage(family, ids);
}

/** The same for a component beside the one that asks. */
export function useFoundPassage(family: Family, ids: readonly string[]): ShownPassage {
  const finding = passageFindingOf(useSession());
  const state = useStore(finding.store, (s) => s);
  const input = usePassageInput(family, ids);
  const answer = finding.answerTo(input);
  const last = state.found && standsIn(state.found.input, input) ? state.found : null;
  const phase = state.phase === 'found' && !answer ? 'finding' : state.phase;
  return { ...state, phase, finding, found: answer ?? last, current: answer !== null };
}

/** What is asked now, the same value until it is another question. */
function usePassageInput(family: Family, ids: readonly string[]): PassageInput {
  const key = ids.join('\n');
  // biome-ignore lint/correctness/useExhaustiveDependencies: another list of the same ids is the same question
  return useMemo(() => passageInput(family, ids), [family, key]);
}

/** The chosen keyways of the Tiers view, in chart order. */
export function useChosenIds(family: Family): readonly string[] {
  const { tiers } = useSession();
  const chosen = useStore(tiers, (s) => s.chosenOpenings);
  return useMemo(() => chosenIds(family, chosen), [family, chosen]);
}
