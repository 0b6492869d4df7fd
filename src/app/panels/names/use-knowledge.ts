import { useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import type { Answer } from '../../../names/answer.ts';
import type { Knowledge } from '../../../names/knowledge.ts';
import { answerTo } from '../../state/names/asking.ts';
import { knowledgeNow } from '../../state/names/knowledge-now.ts';
import { useSession, useStore } from '../use-store.ts';

/** What can be known of the open family now; another value when a fit, an outline, a condition or the units change. */
export function useKnowledge(family: Family): Knowledge {
  const { doors, results, conditions: store, settings } = useSession();
  const fits = useStore(results, (s) => s.fits);
  const conditions = useStore(store, (s) => s);
  const units = useStore(settings, (s) => s.units);
  return useMemo(
    () => knowledgeNow(doors, { family, fits, conditions, units }),
    [doors, family, fits, conditions, units],
  );
}

/** The answer to the question that was asked last; null before the first. */
export function useAnswer(knowledge: Knowledge): Answer | null {
  const asked = useStore(useSession().names, (s) => s.asked);
  return useMemo(() => (asked === '' ? null : answerTo(asked, knowledge)), [asked, knowledge]);
}
