import { bandText, heightText, readingText, shiftText } from '../../../family/length-text.ts';
import { clashLetter } from '../../state/pair-words.ts';
import type { Fact } from '../../state/profile-facts.ts';
import { FactList } from '../fact-list.tsx';
import styles from '../readings.module.css';
import { useFamily } from '../use-family.ts';
import { type ShownPair, useShownPair } from '../use-pair.ts';
import { useSession, useStore } from '../use-store.ts';
import own from './compare-readings.module.css';
import { bindingSentence, contactWords, degreesText, floorWords } from './compare-words.ts';
import { ConditionsPanel } from './conditions-panel.tsx';
import { CornerPanel } from './corner-panel.tsx';
import { DrawnParts } from './drawn-parts.tsx';
import { InnerFitMap } from './inner-fit-map.tsx';
import { WardList } from './ward-list.tsx';

/** Contacts are told as far as this from the narrowest, in nanometres. */
const ALSO_NARROW = 2_000;

/** What can be read off Compare: where the blank lies, what it collides with, where it is narrow, how far it can wander. */
export function CompareReadings() {
  const pair = useShownPair();
  const family = useFamily();
  if (!pair || !family) return null;
  return (
    <>
      <CornerPanel pair={pair} />
      <ConditionsPanel family={family} pair={pair} />
      <PlacementReading pair={pair} />
      {pair.explanation.collisions.length > 0 ? <Collisions pair={pair} /> : <Narrowest pair={pair} />}
      <WardList pair={pair} />
      <DrawnParts pair={pair} />
    </>
  );
}

function PlacementReading({ pair }: { pair: ShownPair }) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const { fit, placement, byHand, explanation } = pair;
  const facts: Fact[] = [
    { term: 'Sideways', value: shiftText(placement.x - fit.placement.x, units) },
    { term: 'Up', value: shiftText(placement.y - fit.placement.y, units) },
    explanation.gap < 0
      ? { term: 'Too deep by', value: readingText(explanation.gap, units) }
      : { term: 'Least gap', value: readingText(explanation.gap, units) },
  ];
  if (fit.verdict !== 'blocked') {
    facts.push({ term: 'Play sideways', value: readingText(fit.play.lateral, units) });
    facts.push({ term: 'Play in height', value: readingText(fit.play.vertical, units) });
  }
  if (placement.tilt !== 0) facts.push({ term: 'Tilt', value: degreesText(placement.tilt) });
  return (
    <section className={styles.part} aria-labelledby="reading-placement">
      <h2 id="reading-placement" className={styles.title}>
        {byHand ? 'Placed by hand' : 'Best placement'}
      </h2>
      <InnerFitMap pair={pair} />
      <FactList facts={facts} />
      <p className={styles.note}>Movement is counted from the best placement.</p>
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
            <b>{readingText(collision.depth, units)}</b>
            <span className={styles.soft}>at {bandText(collision.from, collision.to, units)}</span>
          </li>
        ))}
      </ol>
      {!pair.byHand && (
        <p className={styles.note}>Depth at the best placement: the overlap is shared out on all sides.</p>
      )}
      <p className={styles.note}>How deep it would stand in the plug; heights {floorWords(pair.conditions)}.</p>
    </section>
  );
}

/** What limits the blank where it lies: each contact with its side, its height and what touches what. */
function Narrowest({ pair }: { pair: ShownPair }) {
  const { doors, settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const { contacts } = pair.explanation;
  return (
    <section className={styles.part} aria-labelledby="reading-narrow">
      <h2 id="reading-narrow" className={styles.title}>
        Where it is narrow
      </h2>
      {!pair.byHand && <p>{bindingSentence(contacts, doors.partName)}</p>}
      <ol className={styles.places}>
        {contacts.map((contact) => (
          <li key={`${contact.side} ${contact.height}`} className={own.contact}>
            <span>{sentenceCase(contactWords(contact, doors.partName))}</span>
            <b>at {heightText(contact.height, units)}</b>
          </li>
        ))}
      </ol>
      <p className={styles.note}>
        All within {readingText(ALSO_NARROW, units)} of the narrowest. Heights are {floorWords(pair.conditions)}.
      </p>
    </section>
  );
}

function sentenceCase(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
