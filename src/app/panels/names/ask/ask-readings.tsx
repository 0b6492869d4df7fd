import { useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import styles from '../../readings.module.css';
import { useSession, useStore } from '../../use-store.ts';
import { KindGlossary } from '../kind-glossary.tsx';
import { ThingReading } from '../thing-reading.tsx';
import { useAnswer, useKnowledge } from '../use-knowledge.ts';

/** More things than this are looked up one by one. */
const MOST_READ = 3;

/** What the names in the answer stand for, and what a name can name. */
export function AskReadings({ family }: { family: Family }) {
  const answer = useAnswer(useKnowledge(family));
  const asked = useStore(useSession().names, (s) => s.asked);
  const named = useMemo(() => {
    if (!answer || answer.kind === 'choose') return [];
    const ids = answer.pair ? [answer.pair.entrantId, answer.pair.openingId] : answer.profiles;
    return ids.flatMap((id) => family.profiles.find((profile) => profile.id === id) ?? []).slice(0, MOST_READ);
  }, [answer, family]);
  return (
    <>
      {named.map((profile) => (
        <ThingReading key={profile.id} family={family} profile={profile} />
      ))}
      <KindGlossary />
      {asked === '' && (
        <section className={styles.part}>
          <h2 className={styles.title}>How to ask</h2>
          <p>By any name that the family, the register or a list uses. Capitals, spaces and hyphens do not count.</p>
          <p>Digits are never guessed: 105 is not offered for 106.</p>
        </section>
      )}
      <section className={styles.part}>
        <p className={styles.note}>
          An answer is about the outlines in this family. A real blank or plug may differ: try it, or ask the maker.
        </p>
      </section>
    </>
  );
}
