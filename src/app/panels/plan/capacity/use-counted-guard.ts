import { useEffect, useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { SettingPair } from '../../../../family/guard-margin.ts';
import { isAltered } from '../../../state/conditions-state.ts';
import {
  type CountedGuardInput,
  countedGuardInput,
  countedGuardOf,
} from '../../../state/plan/capacity/capacity-guard.ts';
import type { CountedSection } from '../../../state/plan/capacity/capacity-sections.ts';
import { useSession, useStore } from '../../use-store.ts';

/**
 * The guard margin of the counted sections among themselves: null where nothing near would let one in, 'waiting' while
 * it is looked for, 'altered' where pairs are judged worn or tilted, so that there is none to tell.
 */
export function useCountedGuard(
  family: Family,
  counted: readonly CountedSection[],
): SettingPair | null | 'waiting' | 'altered' {
  const session = useSession();
  const asked = countedGuardOf(session);
  const fits = useStore(session.results, (s) => (s.phase === 'done' ? s.fits : null));
  const altered = useStore(session.conditions, isAltered);
  const input = useMemo<CountedGuardInput | null>(
    () => (fits && !altered && counted.length > 1 ? countedGuardInput(family, counted, fits) : null),
    [family, counted, fits, altered],
  );
  useEffect(() => asked.ask(input), [asked, input]);
  useEffect(() => () => asked.ask(null), [asked]);
  useStore(asked.store, (s) => s);
  if (altered) return 'altered';
  const found = asked.answerTo(input);
  return found ? found.output.guard : 'waiting';
}
