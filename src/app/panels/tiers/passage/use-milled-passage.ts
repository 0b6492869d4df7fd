import { useEffect, useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { MillPassageInput } from '../../../../passage/mill-passage.ts';
import type { Passage } from '../../../../passage/passage.ts';
import { millInput, type PassageMilling, passageMillingOf } from '../../../state/tiers/passage-milling.ts';
import { useSession, useStore } from '../../use-store.ts';
import { useChosenIds, useFoundPassage } from './use-passage.ts';

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
  const { finding } = passageMillingOf(useSession());
  const { input } = useMilling(family);
  useEffect(() => finding.ask(input), [finding, input]);
  useEffect(() => () => finding.ask(null), [finding]);
  return useMadePassage(family);
}

/** The same for a component beside the one that asks. */
export function useMadePassage(family: Family): MadePassage {
  const { finding } = passageMillingOf(useSession());
  const { phase, done, total, trouble } = useStore(finding.store, (s) => s);
  const { free, input } = useMilling(family);
  const rest = { milling: finding, done, total, trouble };
  if (!input) return { ...rest, passage: free, phase: 'off' };
  const found = finding.answerTo(input);
  if (!found) return { ...rest, passage: null, phase: phase === 'stopped' || phase === 'failed' ? phase : 'finding' };
  return { ...rest, passage: found.output, phase: found.output ? 'found' : 'none' };
}

/** The passage in any form, and what is asked of the cutter for it; null where it may have any form, or there is none. */
function useMilling(family: Family): { free: Passage | null; input: MillPassageInput | null } {
  const state = useStore(passageMillingOf(useSession()).store, (s) => s);
  const { found, current } = useFoundPassage(family, useChosenIds(family));
  const free = current && found ? found.output : null;
  const input = useMemo(() => millInput(family, free, state), [family, free, state]);
  return { free, input };
}
