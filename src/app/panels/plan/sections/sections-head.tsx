import type { ReactNode } from 'react';
import type { SectionsQuestion } from '../../../state/plan/sections/sections-question.ts';
import { sectionsLookOf } from '../../../state/plan/sections/sections-state.ts';
import { boundWords, demandWords, foundWords, millingWords } from '../../../state/plan/sections/sections-words.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './sections-head.module.css';
import { type FoundSections, useSectionsPlanning } from './use-sections.ts';

interface SectionsHeadProps {
  readonly question: SectionsQuestion;
  readonly found: FoundSections | null;
  /** What can be done with it. */
  readonly children: ReactNode;
}

/** What was found in one line, what it is for, and what shows that fewer sites do not do. */
export function SectionsHead({ question, found, children }: SectionsHeadProps) {
  const room = question.layout.sites.length;
  const wards = found?.found ?? null;
  const isOver = wards !== null && wards.sites > room;
  return (
    <div className={styles.head}>
      <div className={styles.line}>
        <h1 className={styles.title} data-over={isOver || undefined} aria-live="polite">
          {wards ? foundWords(wards, room) : 'Laying out wards …'}
        </h1>
        {children}
      </div>
      <p className={styles.words}>
        {demandWords(question)} {wards && told(wards, room)}
      </p>
    </div>
  );
}

function told(wards: FoundSections['found'], room: number): string {
  const bound = boundWords(wards);
  const fewest = wards.proved ? 'Fewest' : `At least ${wards.lowerBound}`;
  const least = bound === '' ? '' : `${fewest} ${bound}.`;
  const has = wards.sites > room ? '' : `The blade has room for ${room}; ${millingWords(wards)} to mill in all blanks.`;
  return `${has} ${least}`.trim();
}

/** The id of the key below. */
export const IMPROVE_KEY = 'sections-improve';

/** Starts the long search; while it is on its way the progress line has the key that stops it. */
export function ImproveKey() {
  const planning = useSectionsPlanning();
  const look = sectionsLookOf(useSession());
  const seconds = useStore(look, (s) => s.seconds);
  const phase = useStore(planning.store, (s) => s.phase);
  // Only said to be disabled while it searches, so that the keys' focus stays on it.
  const isBusy = phase === 'improving' || phase === 'answering' || phase === 'waiting';
  const isReady = useStore(planning.store, (s) => s.found !== null);
  return (
    <button
      id={IMPROVE_KEY}
      type="button"
      className={`key ${styles.improve}`}
      title="Look longer for fewer sites and less milling, and for a proof that fewer do not do; a plan that rests is looked at for ten seconds by itself"
      disabled={!isReady}
      aria-disabled={isBusy}
      onClick={() => !isBusy && planning.improve(seconds)}
    >
      Improve
    </button>
  );
}
