import { useEffect, useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { PassageInput } from '../../../../passage/find-passage.ts';
import type { Passage } from '../../../../passage/passage.ts';
import type { AskedState } from '../../../state/asked-job.ts';
import { chosenIds, passageInput } from '../../../state/tiers/passage-choice.ts';
import { type PassageFinding, passageFindingOf } from '../../../state/tiers/passage-finding.ts';
import { useSession, useStore } from '../../use-store.ts';

/** A passage as far as it is found. */
export interface ShownPassage extends AskedState<PassageInput, Passage> {
  readonly finding: PassageFinding;
  /** Whether what was found is the answer to what is asked now. */
  readonly current: boolean;
}

/** Asks for the passage of some keyways as long as the component is there; ids in chart order. */
export function usePassage(family: Family, ids: readonly string[]): ShownPassage {
  const session = useSession();
  const finding = passageFindingOf(session);
  const key = ids.join('\n');
  // biome-ignore lint/correctness/useExhaustiveDependencies: another list of the same ids is the same question
  const input = useMemo(() => passageInput(family, ids), [family, key]);
  useEffect(() => finding.ask(input), [finding, input]);
  useEffect(() => () => finding.ask(null), [finding]);
  return useFoundPassage();
}

/** The same for a component beside the one that asks. */
export function useFoundPassage(): ShownPassage {
  const finding = passageFindingOf(useSession());
  const state = useStore(finding.store, (s) => s);
  return { ...state, finding, current: state.phase === 'found' && state.found !== null };
}

/** The chosen keyways of the Tiers view, in chart order. */
export function useChosenIds(family: Family): readonly string[] {
  const { tiers } = useSession();
  const chosen = useStore(tiers, (s) => s.chosenOpenings);
  return useMemo(() => chosenIds(family, chosen), [family, chosen]);
}
