import { useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { LessonStep } from '../../../../family/lesson.ts';
import { partsOf } from '../../../../teach/lesson-words.ts';
import { usePassage } from '../../tiers/passage/use-passage.ts';

/** Finds the common passage of the next step that shows one, so that a room need not wait for it; draws nothing. */
export function PassageAhead({ family, steps }: { family: Family; steps: readonly LessonStep[] }) {
  const next = steps.find(({ show }) => show === 'passage');
  const ids = useMemo(() => (next ? partsOf(family, next).openings.map(({ id }) => id) : []), [family, next]);
  usePassage(family, ids);
  return null;
}
