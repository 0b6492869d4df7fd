import { bandText, gapText, heightText, shiftText } from '../state/length-text.ts';
import { clashLetter } from '../state/pair-words.ts';
import type { Fact } from '../state/profile-facts.ts';
import { FactList } from './fact-list.tsx';
import styles from './readings.module.css';
import { type ShownPair, useShownPair } from './use-pair.ts';
import { useSession, useStore } from './use-store.ts';

/** What can be read off Compare: where the blank lies, what it collides with, where it is narrow, how far it can wander. */
export function CompareReadings() {
  const pair = useShownPair();
  if (!pair) return null;
  return (
    <>
      <PlacementReading pair={pair} />
      {pair.explanation.collisions.length > 0 ? <Collisions pair={pair} /> : <Narrowest pair={pair} />}
    </>
  );
}

function PlacementReading({ pair }: { pair: ShownPair }) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const { fit, placement, byHand, explanation } = pair;
  const facts: Fact[] = [
    { term: 'Sideways', value: shiftText(placement.x - (fit?.placement.x ?? 0), units) },
    { term: 'Up', value: shiftText(placement.y - (fit?.placement.y ?? 0), units) },
    explanation.gap < 0
      ? { term: 'Too deep by', value: gapText(explanation.gap, units) }
      : { term: 'Least gap', value: gapText(explanation.gap, units) },
  ];
  if (fit && fit.verdict !== 'blocked') {
    facts.push({ term: 'Play sideways', value: gapText(fit.play.lateral, units) });
    facts.push({ term: 'Play in height', value: gapText(fit.play.vertical, units) });
  }
  return (
    <section className={styles.part} aria-labelledby="reading-placement">
      <h2 id="reading-placement" className={styles.title}>
        {byHand ? 'Placed by hand' : 'Best placement'}
      </h2>
      <p className={styles.note}>Movement is counted from the best placement.</p>
      <FactList facts={facts} />
    </section>
  );
}

function Collisions({ pair }: { pair: ShownPair }) {
  const { doors, settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  return (
    <section className={styles.part} aria-labelledby="reading-collisions">
      <h2 id="reading-collisions" className={styles.title}>
        In the way
      </h2>
      <ol className={styles.places}>
        {pair.explanation.collisions.map((collision, i) => (
          <li key={clashLetter(i)} className={styles.clash}>
            <b>{clashLetter(i)}</b>
            <span>{doors.partName(collision)}</span>
            <b>{gapText(collision.depth, units)}</b>
            <span className={styles.soft}>at {bandText(collision.from, collision.to, units)}</span>
          </li>
        ))}
      </ol>
      <p className={styles.note}>How deep it would stand in the plug; heights from the back of the blade.</p>
    </section>
  );
}

function Narrowest({ pair }: { pair: ShownPair }) {
  const { doors, settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  return (
    <section className={styles.part} aria-labelledby="reading-narrow">
      <h2 id="reading-narrow" className={styles.title}>
        Where it is narrow
      </h2>
      <FactList
        facts={pair.explanation.contacts.map((contact) => ({
          term: doors.partName(contact),
          value: `at ${heightText(contact.height, units)}`,
        }))}
      />
      <p className={styles.note}>Heights are measured from the back of the blade.</p>
    </section>
  );
}
