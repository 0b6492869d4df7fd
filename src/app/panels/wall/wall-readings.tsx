import { useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import { readingText } from '../../../family/length-text.ts';
import { MEASURING, marginText } from '../../../family/margin-text.ts';
import type { Fit } from '../../../fit/fit.ts';
import type { Profile } from '../../../profile/profile.ts';
import { goingIn } from '../../state/going-in.ts';
import { profileFacts } from '../../state/profile-facts.ts';
import { FactList } from '../fact-list.tsx';
import { PairReading } from '../pair-reading.tsx';
import styles from '../readings.module.css';
import { usePickedPair, usePickedRow } from '../use-family.ts';
import { useSession, useStore } from '../use-store.ts';
import { VerdictMark } from '../verdict-mark.tsx';
import { GuardReading } from './guard-reading.tsx';

/** What can be read off the wall: the blank in hand, how it does in the picked keyway, and all that it goes into. */
export function WallReadings({ family }: { family: Family }) {
  const { entrant, opening } = usePickedPair();
  const row = usePickedRow();
  return (
    <>
      {entrant && <EntrantReading entrant={entrant} />}
      {!entrant && opening && <OpeningReading opening={opening} />}
      {entrant && opening && (
        <PairReading family={family} entrant={entrant} opening={opening} fit={row.get(opening.id)} />
      )}
      {entrant && row.size > 0 && <GoingIn family={family} row={row} />}
      {entrant && opening && <GuardReading family={family} />}
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
              <span>{marginText(fit, units, MEASURING, readingText)}</span>
            </button>
          </li>
        ))}
      </ul>
      <p className={styles.note}>
        A margin below {readingText(family.runningClearance, units)} all round, the running clearance, is called tight.
      </p>
    </section>
  );
}
