import { useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import type { KnownFits } from '../../../family/known-fits.ts';
import type { Lesson } from '../../../family/lesson.ts';
import { stepFaults } from '../../../teach/check-lesson.ts';
import { partsOf, wordsOf } from '../../../teach/lesson-words.ts';
import type { TeachingKnowledge } from '../../../teach/teaching-knowledge.ts';
import { tierRows } from '../../../teach/tier-rows.ts';
import { useTeaching } from '../../panels/teach/use-teaching.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import type { ShowPlace } from '../../state/teach/show-place.ts';

interface PresenterWordsProps {
  readonly family: Family;
  readonly lesson: Lesson;
  readonly place: ShowPlace;
  readonly dark: boolean;
}

/** Each step as it is read out, for those who cannot see it. */
export function PresenterWords({ family, lesson, place, dark }: PresenterWordsProps) {
  const { results } = useSession();
  const fits = useStore(results, (s) => s.fits);
  const knowledge = useTeaching(family);
  const words = useMemo(() => spoken(lesson, place, knowledge, fits), [lesson, place, knowledge, fits]);
  return (
    <p className="unseen" role="status">
      {dark ? 'The screen is dark.' : words}
    </p>
  );
}

function spoken(
  { steps }: Lesson,
  { step: at, build }: ShowPlace,
  knowledge: TeachingKnowledge,
  fits: KnownFits | null,
): string {
  const step = steps[at];
  if (!step) return '';
  const { blank, opening } = partsOf(knowledge.family, step);
  const answer = blank && opening ? knowledge.sentence(blank.id, opening.id) : '';
  if (step.show === 'question' && build > 0) return answer;
  const row = step.show === 'tiers' ? tierRows(knowledge.family, fits, step.blank).rows[build] : undefined;
  const rowWords = row ? `${row.words}: ${row.plates.map(({ name }) => name).join(', ')}.` : '';
  if (build > 0) return rowWords;
  const said = wordsOf(step, knowledge);
  const faults = stepFaults(knowledge.family, step).map(({ words }) => words);
  const more = step.show === 'pair' && answer !== said ? answer : rowWords;
  return [`Step ${at + 1} of ${steps.length}: ${step.title}.`, said, more, ...faults].filter(Boolean).join(' ');
}
