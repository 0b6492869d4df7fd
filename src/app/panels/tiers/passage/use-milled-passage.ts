import { useEffect, useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { Passage } from '../../../../passage/passage.ts';
import { millInput, type PassageMilling, passageMillingOf } from '../../../state/tiers/passage-milling.ts';
import { useSession, useStore } from '../../use-store.ts';
import { useFoundPassage } from './use-passage.ts';

/** The passage as it is looked at: in any form, or milled. */
export interface MadePassage {
  /** Null while it is looked for, and where nothing can be milled. */
  readonly passage: Passage | null;
  readonly milling: PassageMilling;
  readonly phase: 'off' | 'finding' | 'found' | 'none' | 'stopped' | 'failed';
  readonly done: number;
  readonly total: number;
  readonly trouble: string;
}

/** Asks for the milled blank of the passage that was found, as long as the component is there. */
export function useAskedMilling(family: Family): MadePassage {
  const session = useSession();
  const { store, finding } = passageMillingOf(session);
  const state = useStore(store, (s) => s);
  const { found, current } = useFoundPassage();
  const free = current && found ? found.output : null;
  const input = useMemo(() => millInput(family, free, state), [family, free, state]);
  useEffect(() => finding.ask(input), [finding, input]);
  useEffect(() => () => finding.ask(null), [finding]);
  return useMadePassage();
}

/** The same for a component beside the one that asks. */
export function useMadePassage(): MadePassage {
  const session = useSession();
  const { store, finding } = passageMillingOf(session);
  const on = useStore(store, (s) => s.on);
  const { phase, found, done, total, trouble } = useStore(finding.store, (s) => s);
  const { found: foundFree, current } = useFoundPassage();
  const free = current && foundFree ? foundFree.output : null;
  const rest = { milling: finding, done, total, trouble };
  if (!on || !free?.blank) return { ...rest, passage: free, phase: 'off' };
  if (phase !== 'found' || found?.input.passage !== free)
    return { ...rest, passage: null, phase: phase === 'stopped' || phase === 'failed' ? phase : 'finding' };
  return { ...rest, passage: found.output, phase: found.output ? 'found' : 'none' };
}
