import { useMemo } from 'react';
import type { Family } from '../../family/family.ts';
import type { Fit } from '../../fit/fit.ts';
import type { Profile } from '../../profile/profile.ts';
import { goingIn } from '../state/going-in.ts';
import { gapText } from '../state/length-text.ts';
import { pairSentence } from '../state/pair-sentence.ts';
import { marginText, VERDICT_WORDS } from '../state/pair-words.ts';
import { profileFacts } from '../state/profile-facts.ts';
import { FactList } from './fact-list.tsx';
import styles from './readings.module.css';
import { usePickedPair, usePickedRow } from './use-family.ts';
import { useSession, useStore } from './use-store.ts';
import { VerdictMark } from './verdict-mark.tsx';

/** What can be read off the wall: the blank in hand, how it does in the picked keyway, and all that it goes into. */
export function WallReadings({ family }: { family: Family }) {
  const { entrant, opening } = usePickedPair();
  const row = usePickedRow();
  return (
    <>
      {entrant && <EntrantReading entrant={entrant} />}
      {!entrant && opening && <OpeningReading opening={opening} />}
      {entrant && opening && <PairReading entrant={entrant} opening={opening} fit={row.get(opening.id)} />}
      {entrant && row.size > 0 && <GoingIn family={family} row={row} />}
    </>
  );
}

function OpeningReading({ opening }: { opening: Profile }) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  return (
    <section className={styles.part} aria-labelledby="reading-opening">
      <h2 id="reading-opening" className={styles.title}>
        {opening.name}
      </h2>
      <FactList facts={profileFacts(opening, units)} />
    </section>
  );
}

function EntrantReading({ entrant }: { entrant: Profile }) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  return (
    <section className={styles.part} aria-labelledby="reading-entrant">
      <h2 id="reading-entrant" className={styles.title}>
        {entrant.name}
      </h2>
      <FactList facts={profileFacts(entrant, units)} />
    </section>
  );
}

function GoingIn({ family, row }: { family: Family; row: ReadonlyMap<string, Fit> }) {
  const { settings, selection } = useSession();
  const units = useStore(settings, (s) => s.units);
  const inside = useMemo(() => goingIn(family, row), [family, row]);
  return (
    <section className={styles.part} aria-labelledby="reading-inside">
      <h2 id="reading-inside" className={styles.title}>
        goes into {inside.length} of {row.size}
      </h2>
      <ul className={styles.pairs}>
        {inside.map(({ opening, fit }) => (
          <li key={opening.id}>
            <button
              type="button"
              className={styles.pair}
              title={`Pick the ${opening.name}`}
              onClick={() => selection.setState({ openingId: opening.id })}
            >
              <VerdictMark verdict={fit.verdict} size={18} />
              <span className={styles.grow}>{opening.section ?? opening.name}</span>
              <span>{marginText(fit, units)}</span>
            </button>
          </li>
        ))}
      </ul>
      <p className={styles.note}>
        Tight: it goes in, with less than {gapText(family.runningClearance, units)} all round.
      </p>
    </section>
  );
}

function PairReading({ entrant, opening, fit }: { entrant: Profile; opening: Profile; fit: Fit | undefined }) {
  const { settings, selection, doors } = useSession();
  const units = useStore(settings, (s) => s.units);
  const sentence = useMemo(
    () => (fit ? pairSentence(doors, entrant, opening, fit, units) : 'Not judged yet.'),
    [doors, entrant, opening, fit, units],
  );
  return (
    <section className={styles.part} aria-labelledby="reading-pair">
      <h2 id="reading-pair" className={styles.title}>
        in {opening.name}
      </h2>
      {fit && (
        <p className={styles.verdict} data-verdict={fit.verdict}>
          <VerdictMark verdict={fit.verdict} size={26} />
          {VERDICT_WORDS[fit.verdict]}
          <span className={styles.margin}>{marginText(fit, units)}</span>
        </p>
      )}
      <p>{sentence}</p>
      {fit && fit.verdict !== 'blocked' && (
        <FactList
          facts={[
            { term: 'Play sideways', value: gapText(fit.play.lateral, units) },
            { term: 'Play in height', value: gapText(fit.play.vertical, units) },
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
