import type { CSSProperties } from 'react';
import { VERDICT_WORDS } from '../../../family/margin-text.ts';
import type { Verdict } from '../../../fit/fit.ts';
import type { ThreeWay } from '../../../fit/judge-tolerance.ts';
import type { Profile } from '../../../profile/profile.ts';
import { headlineOf, partsHeadlineOf, partsTallyOf, tallyOf } from '../../state/fits-lookup.ts';
import { PARTS_WORDS } from '../../state/pair-words.ts';
import { AnswerMark } from '../answer-mark.tsx';
import { AlteredLine } from '../compare/altered-line.tsx';
import { useHalted, usePickedRow, useWornAway } from '../use-family.ts';
import { useSession, useStore } from '../use-store.ts';
import { TellsKeys } from './tells-keys.tsx';
import styles from './wall-head.module.css';

interface TallyEntry {
  readonly mark: Verdict | ThreeWay;
  readonly word: string;
  readonly count: number;
}

/** The line that the back of the room reads, and the tally below it, which is the key to the marks as well. */
export function WallHead({ entrant, openingCount }: { entrant: Profile | null; openingCount: number }) {
  const { conditions, details } = useSession();
  const parts = useStore(conditions, (s) => s.telling === 'parts');
  const trouble = useStore(details, (s) => s.trouble);
  const counts = useCounts(parts);
  const whole = counts.of > 0 && counts.of === openingCount;
  const wornAway = useWornAway(entrant);
  const halted = useHalted();
  const counted = whole ? counts.headline : null;
  const waiting = halted ? triedText(counts.of, openingCount) : tryingText;
  const text = headText(entrant, openingCount, wornAway ? wornAwayText : (counted ?? waiting));
  return (
    <header className={styles.head}>
      <h1 className={styles.line} style={{ '--letters': text.length } as CSSProperties}>
        {text}
      </h1>
      <p className="unseen" role="status">
        {entrant && whole ? text : ''}
      </p>
      {entrant && openingCount > 0 && (
        <div className={styles.below}>
          <ul className={styles.tally} aria-label="Tally">
            {counts.entries.map(({ mark, word, count }) => (
              <li key={mark} data-verdict={mark}>
                <AnswerMark mark={mark} size={22} />
                {word} <b>{whole ? count : '–'}</b>
              </li>
            ))}
            <li className={styles.hint} aria-hidden="true">
              <kbd>↑</kbd> <kbd>↓</kbd> next blank
            </li>
          </ul>
          <TellsKeys />
        </div>
      )}
      <AlteredLine />
      {trouble && <p role="alert">These figures could not be had: {trouble}</p>}
      {!entrant && <p className={styles.advice}>Make one in Draw, import one, or plan the family.</p>}
    </header>
  );
}

/** What the tally lists, how many keyways it counts, and the headline that goes with it. */
function useCounts(parts: boolean): { entries: TallyEntry[]; of: number; headline: (name: string) => string } {
  const { details } = useSession();
  const row = usePickedRow();
  const threeWay = useStore(details, (s) => s.threeWay);
  if (parts) {
    const tally = partsTallyOf(threeWay);
    const entries = (['always', 'depends', 'never'] as const).map((mark) => ({
      mark,
      word: PARTS_WORDS[mark].word,
      count: tally[mark],
    }));
    return { entries, of: tally.of, headline: (name) => partsHeadlineOf(name, tally) };
  }
  const tally = tallyOf(row);
  const entries = (['enters', 'tight', 'blocked'] as const).map((mark) => ({
    mark,
    word: VERDICT_WORDS[mark],
    count: tally[mark],
  }));
  return { entries, of: tally.of, headline: (name) => headlineOf(name, tally) };
}

function wornAwayText(name: string): string {
  return `Nothing would be left of ${name}`;
}

function tryingText(name: string): string {
  return `Trying ${name} …`;
}

/** What is said of a row that a stop left open. */
function triedText(count: number, of: number): (name: string) => string {
  return (name) => `${name} was tried in ${count} of ${of} keyways`;
}

function headText(entrant: Profile | null, openingCount: number, headline: (name: string) => string): string {
  if (!entrant) return 'No blank or tool in this family';
  if (openingCount === 0) return entrant.name;
  return headline(entrant.name);
}
