import { useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { MisleadingName } from '../../../../names/misleading-name.ts';
import type { RenameGround } from '../../../state/names/check-rename.ts';
import { misleadingNow } from '../../../state/names/misleading-now.ts';
import { useSession, useStore } from '../../use-store.ts';
import { useKnowledge } from '../use-knowledge.ts';

/** The names that mislead, kept up to date. */
export function useMisleading(family: Family): readonly MisleadingName[] {
  const { results } = useSession();
  const knowledge = useKnowledge(family);
  const fits = useStore(results, (s) => s.fits);
  const judging = useStore(results, (s) => s.phase === 'judging');
  return misleadingNow(knowledge, fits, judging);
}

/** What new names are checked against; null where no family is open. */
export function useRenameGround(family: Family): RenameGround | null {
  const { doors, documents } = useSession();
  const knowledge = useKnowledge(family);
  const found = useMisleading(family);
  const file = useStore(documents, (s) => s.document?.file ?? null);
  return useMemo(() => (file ? { doors, file, knowledge, found } : null), [doors, file, knowledge, found]);
}
