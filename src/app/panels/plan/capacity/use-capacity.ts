import { useEffect, useMemo } from 'react';
import { type RuleFault, ruleFaults } from '../../../../capacity/bitting-rules.ts';
import type { Capacity, CapacityInput } from '../../../../capacity/capacity.ts';
import type { Family } from '../../../../family/family.ts';
import { type JudgedBlanks, judgedBlanks } from '../../../state/plan/capacity/capacity-sections.ts';
import {
  type CapacitySettings,
  capacitySettings,
  capacityStateOf,
} from '../../../state/plan/capacity/capacity-state.ts';
import { answerFor, countingOf } from '../../../state/plan/capacity/counting-capacity.ts';
import { isHalted } from '../../../state/results-state.ts';
import { useSession, useStore } from '../../use-store.ts';

/** What the Capacity sheet asks, and what is known of the answer. */
export interface ShownCapacity {
  readonly settings: CapacitySettings;
  readonly faults: readonly RuleFault[];
  /** What the sections are counted from; null for a family without blanks or keyways. */
  readonly judged: JudgedBlanks | null;
  /** Whether pairs are still being judged, so that nothing is counted yet. */
  readonly waiting: boolean;
  /** The last answer for these blanks and keyways; null before the first. */
  readonly capacity: Capacity | null;
  /** Whether it is the answer to what is asked now. */
  readonly current: boolean;
}

/** The settings of the Capacity sheet for a family. */
export function useCapacitySettings(family: Family): CapacitySettings {
  return capacitySettings(
    useStore(capacityStateOf(useSession()), (all) => all),
    family.name,
  );
}

/** Has the keys of a family counted as long as the component is there. */
export function useCapacity(family: Family): ShownCapacity {
  const counting = countingOf(useSession());
  const shown = useShownCapacity(family);
  const { settings, judged, faults, waiting } = shown;
  const { rules, example } = settings;
  const input = useMemo<CapacityInput | null>(() => {
    if (faults.length > 0 || waiting) return null;
    return { rules, goesIn: judged?.goesIn ?? null, ...(example !== null && { example }) };
  }, [rules, example, judged, faults, waiting]);
  // Two families without blanks ask the same, but the one that is opened has the answer of the other forgotten.
  // biome-ignore lint/correctness/useExhaustiveDependencies: another family is what has it asked anew
  useEffect(() => counting.ask(input), [counting, input, family]);
  useEffect(() => () => counting.ask(null), [counting]);
  return shown;
}

/** The same for a component beside the one that asks. */
export function useShownCapacity(family: Family): ShownCapacity {
  const session = useSession();
  const settings = useCapacitySettings(family);
  const { rules } = settings;
  const faults = useMemo(() => ruleFaults(rules), [rules]);
  const fits = useStore(session.results, (s) => s.fits);
  const judged = useMemo(() => judgedBlanks(family, fits), [family, fits]);
  const halted = useStore(session.results, (s) => isHalted(s.phase));
  const { phase, found } = useStore(countingOf(session).store, (s) => s);
  const waiting = judged !== null && judged.open > 0 && !halted;
  const capacity = useMemo(() => answerFor(found, judged), [found, judged]);
  return {
    settings,
    faults,
    judged,
    waiting,
    capacity,
    current: phase === 'found' && capacity !== null && faults.length === 0 && !waiting,
  };
}
