import { useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import type { Knowledge } from '../../../names/knowledge.ts';
import { misleadingNames } from '../../../names/misleading.ts';
import type { MisleadingName } from '../../../names/misleading-name.ts';
import type { RenameGround } from '../../state/names/check-rename.ts';
import { useSession, useStore } from '../use-store.ts';
import { useKnowledge } from './use-knowledge.ts';

const found = new WeakMap<Knowledge, readonly MisleadingName[]>();

/** The names that mislead; looked for once for what is known, whoever asks. */
export function useMisleading(knowledge: Knowledge): readonly MisleadingName[] {
  return useMemo(() => {
    const known = found.get(knowledge);
    if (known) return known;
    const now = misleadingNames(knowledge);
    found.set(knowledge, now);
    return now;
  }, [knowledge]);
}

/** What new names are checked against; null where no family is open. */
export function useRenameGround(family: Family): RenameGround | null {
  const { doors, documents } = useSession();
  const knowledge = useKnowledge(family);
  const misleading = useMisleading(knowledge);
  const file = useStore(documents, (s) => s.document?.file ?? null);
  return useMemo(
    () => (file ? { doors, file, knowledge, found: misleading } : null),
    [doors, file, knowledge, misleading],
  );
}
