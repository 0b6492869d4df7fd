import { useMemo } from 'react';
import type { Family } from '../../family/family.ts';
import { readingText, wearLengthText } from '../../family/length-text.ts';
import { MEASURING, marginText, VERDICT_WORDS } from '../../family/margin-text.ts';
import type { Fit } from '../../fit/fit.ts';
import type { Profile } from '../../profile/profile.ts';
import { conditionsFor } from '../state/conditions-state.ts';
import { pairSentence } from '../state/pair-sentence.ts';
import { NOT_MEASURED, PARTS_WORDS, wearText } from '../state/pair-words.ts';
import type { Fact } from '../state/profile-facts.ts';
import { seatReading, seatText } from '../state/seat-reading.ts';
import { FactList } from './fact-list.tsx';
import styles from './readings.module.css';
import { useHalted } from './use-family.ts';
import { useSession, useStore } from './use-store.ts';
import { VerdictMark } from './verdict-mark.tsx';

interface PairReadingProps {
  readonly family: Family;
  readonly entrant: Profile;
  readonly opening: Profile;
  readonly fit: Fit | undefined;
}

/** The picked pair in words and figures, with the way to Compare. */
export function PairReading({ family, entrant, opening, fit }: PairReadingProps) {
  const { settings, selection } = useSession();
  const units = useStore(settings, (s) => s.units);
  const sentence = useSentence({ family, entrant, opening, fit });
  const seat = useSeatText({ family, entrant, opening, fit });
  const told = useToldFacts(opening);
  const pending = useHalted() ? NOT_MEASURED : MEASURING;
  return (
    <section className={styles.part} aria-labelledby="reading-pair">
      <h2 id="reading-pair" className={styles.title}>
        in {opening.name}
      </h2>
      {fit && (
        <p className={styles.verdict} data-verdict={fit.verdict}>
          <VerdictMark verdict={fit.verdict} size={26} />
          {VERDICT_WORDS[fit.verdict]}
          <span className={styles.margin}>{marginText(fit, units, pending, readingText)}</span>
        </p>
      )}
      <p>{sentence}</p>
      {seat && <p>{seat}</p>}
      {fit && told.length > 0 && <FactList facts={told} />}
      {fit && fit.verdict !== 'blocked' && (
        <FactList
          facts={[
            { term: 'Play sideways', value: readingText(fit.play.lateral, units) },
            { term: 'Play in height', value: readingText(fit.play.vertical, units) },
          ]}
        />
      )}
      <button
        type="button"
        className="key"
        title="Look at this pair large (Enter)"
        onClick={() => selection.setState({ view: 'compare' })}
      >
        Compare
      </button>
    </section>
  );
}

function useSentence({ family, entrant, opening, fit }: PairReadingProps): string {
  const { settings, doors, conditions } = useSession();
  const units = useStore(settings, (s) => s.units);
  const state = useStore(conditions, (s) => s);
  const halted = useHalted();
  return useMemo(() => {
    if (!fit) return 'Not judged.';
    return pairSentence(doors, { entrant, opening, fit, conditions: conditionsFor(state, family) }, units, halted);
  }, [doors, family, entrant, opening, fit, state, units, halted]);
}

/** How the blank rides beside the section's own; a tilted one has no height of its own, so nothing is said of it. */
function useSeatText({ family, entrant, opening }: PairReadingProps): string | null {
  const { settings, results, conditions } = useSession();
  const units = useStore(settings, (s) => s.units);
  const fits = useStore(results, (s) => s.fits);
  const tilted = useStore(conditions, (s) => s.tiltLimit > 0);
  const seat = tilted ? null : seatReading(family, fits, entrant, opening);
  if (!seat) return null;
  return `Pressed down by the pins it ${seatText(seat, units)}.`;
}

/** What the wall tells besides margins, of the picked pair in full. */
function useToldFacts(opening: Profile): Fact[] {
  const { settings, conditions, details } = useSession();
  const units = useStore(settings, (s) => s.units);
  const telling = useStore(conditions, (s) => s.telling);
  const threeWay = useStore(details, (s) => s.threeWay.get(opening.id));
  const wear = useStore(details, (s) => s.wear.get(opening.id));
  if (telling === 'parts') return [{ term: 'All parts', value: threeWay ? PARTS_WORDS[threeWay].whole : MEASURING }];
  if (telling !== 'guard') return [];
  const only = (length: number) => (Number.isFinite(length) ? wearLengthText(length, units) : 'never');
  const facts = [{ term: 'Wear of both', value: wearText(wear, units) }];
  if (!wear || wear.both === 0) return facts;
  return [
    ...facts,
    { term: 'Of the blank alone', value: only(wear.blank) },
    { term: 'Of the keyway alone', value: only(wear.keyway) },
  ];
}
