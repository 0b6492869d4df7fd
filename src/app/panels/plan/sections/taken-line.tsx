import { useMemo } from 'react';
import { countWord } from '../../../../family/count-word.ts';
import type { DrawnSections } from '../../../state/plan/sections/drawn-sections.ts';
import type { SectionsQuestion } from '../../../state/plan/sections/sections-question.ts';
import { sectionsLookOf } from '../../../state/plan/sections/sections-state.ts';
import {
  changedSince,
  type TakenStanding,
  takenStanding,
  type WrongPair,
} from '../../../state/plan/sections/taken-standing.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './taken-line.module.css';

interface TakenLineProps {
  readonly question: SectionsQuestion;
  /** The sections of the plan as it is now; null while they are not drawn. */
  readonly drawn: DrawnSections | null;
}

/** How the planned sections that the family holds stand to its plan as it is now. */
export function TakenLine(props: TakenLineProps) {
  const session = useSession();
  const standing = useTakenStanding(props);
  const said = useStore(sectionsLookOf(session), (s) => s.said);
  const changed = useChangedSince(props.drawn);
  const words = changed.length > 0 ? changedWords(changed) : standingWords(standing);
  if (words === '' && said === '') return null;
  const isOld = standing.kind === 'outdated';
  return (
    <p className={styles.line} data-taken={standing.kind} role="status">
      {isOld && (
        <svg className={styles.sign} viewBox="0 0 24 24" aria-hidden="true">
          <path d="M12 3 22 21H2Z M12 10v5 M12 17.4v1.2" />
        </svg>
      )}
      <span>{[said, words].filter((text) => text !== '').join(' ')}</span>
    </p>
  );
}

/** See {@link changedSince}. */
export function useChangedSince(drawn: DrawnSections | null): readonly string[] {
  const { documents } = useSession();
  const document = useStore(documents, (s) => s.document);
  return useMemo(() => (document ? changedSince(document, drawn) : []), [document, drawn]);
}

function changedWords(names: readonly string[]): string {
  const one = names.length === 1;
  return `${someOf(names)} ${one ? 'is' : 'are'} not as drawn here: changed or added since the sections were taken. Taking them again puts what is drawn here in ${one ? 'its' : 'their'} place.`;
}

/** See {@link takenStanding}. */
function useTakenStanding({ question, drawn }: TakenLineProps): TakenStanding {
  const { documents, results } = useSession();
  const document = useStore(documents, (s) => s.document);
  const fits = useStore(results, (s) => s.fits);
  return useMemo(
    () => (document ? takenStanding(document, question, drawn, fits) : { kind: 'none' }),
    [document, question, drawn, fits],
  );
}

function standingWords(standing: TakenStanding): string {
  if (standing.kind === 'same') return 'These sections are in the family.';
  if (standing.kind === 'serves')
    return 'The family holds sections that were planned before; they do what this plan asks. Take these sections to replace them.';
  if (standing.kind !== 'outdated') return '';
  return `The planned sections in the family no longer belong to this plan: ${whyOutdated(standing)}. Take these sections to replace them.`;
}

function whyOutdated({ wrong, missing, extra }: Extract<TakenStanding, { kind: 'outdated' }>): string {
  const [first] = wrong;
  if (first) {
    const more = wrong.length > 1 ? `, and ${countWord(wrong.length - 1, 'pair')} more` : '';
    return `${first.blank.name} ${WRONG_WORDS[first.wanted](first.opening.name)}${more}`;
  }
  const told = [
    missing.length > 0 ? `without ${someOf(missing)}` : '',
    extra.length > 0 ? `with ${someOf(extra)} that it does not ask for` : '',
  ];
  return told.filter((words) => words !== '').join(', ');
}

const WRONG_WORDS: Readonly<Record<WrongPair['wanted'], (keyway: string) => string>> = {
  enters: (keyway) => `must enter ${keyway} and does not`,
  blocked: (keyway) => `must not enter ${keyway} and does`,
  stopped: (keyway) => `is stopped in ${keyway} by fewer wards than are asked for`,
};

/** "Heron blank", "Heron blank and Smew blank", "Heron blank, Smew blank and 3 more". */
export function someOf(names: readonly string[]): string {
  const [first, second] = names;
  if (names.length === 1) return first;
  return names.length === 2 ? `${first} and ${second}` : `${first}, ${second} and ${names.length - 2} more`;
}
