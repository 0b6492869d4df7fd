import type { CSSProperties } from 'react';
import type { Verdict } from '../../fit/fit.ts';
import type { Profile } from '../../profile/profile.ts';
import { headlineOf, type Tally, tallyOf } from '../state/fits-lookup.ts';
import { VERDICT_WORDS } from '../state/pair-words.ts';
import { usePickedRow } from './use-family.ts';
import { VerdictMark } from './verdict-mark.tsx';
import styles from './wall-head.module.css';

const VERDICTS: readonly Verdict[] = ['enters', 'tight', 'blocked'];

/** The line that the back of the room reads, and the tally below it, which is the key to the marks as well. */
export function WallHead({ entrant, openingCount }: { entrant: Profile | null; openingCount: number }) {
  const tally = tallyOf(usePickedRow());
  const text = headText(entrant, openingCount, tally);
  return (
    <header className={styles.head}>
      <h1 className={styles.line} style={{ '--letters': text.length } as CSSProperties}>
        {text}
      </h1>
      <p className="unseen" role="status">
        {entrant && tally.of > 0 ? text : ''}
      </p>
      {entrant && openingCount > 0 && (
        <ul className={styles.tally} aria-label="Tally">
          {VERDICTS.map((verdict) => (
            <li key={verdict} data-verdict={verdict}>
              <VerdictMark verdict={verdict} size={22} />
              {VERDICT_WORDS[verdict]} <b>{tally.of > 0 ? tally[verdict] : '–'}</b>
            </li>
          ))}
          <li className={styles.hint} aria-hidden="true">
            <kbd>↑</kbd> <kbd>↓</kbd> next blank
          </li>
        </ul>
      )}
      {!entrant && (
        <p className={styles.advice}>Add profiles of the kind “blank” or “tool” to its file and open it again.</p>
      )}
    </header>
  );
}

function headText(entrant: Profile | null, openingCount: number, tally: Tally): string {
  if (!entrant) return 'No blank or tool in this family';
  if (openingCount === 0) return entrant.name;
  if (tally.of === 0) return `Trying ${entrant.name} …`;
  return headlineOf(entrant.name, tally);
}
