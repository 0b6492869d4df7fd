import { useMemo } from 'react';
import type { Capacity } from '../../../../capacity/capacity.ts';
import type { Family } from '../../../../family/family.ts';
import { alikeWords } from '../../../../family/guard-margin.ts';
import { heightText, wearLengthText } from '../../../../family/length-text.ts';
import {
  type CountedSection,
  countedSections,
  type JudgedBlanks,
  type SharedBlank,
  sharedBlanks,
  uncountedKeyways,
} from '../../../state/plan/capacity/capacity-sections.ts';
import { growthSentences } from '../../../state/plan/capacity/capacity-words.ts';
import { pickProfile } from '../../../state/selection-state.ts';
import { Cautions } from '../../cautions.tsx';
import styles from '../../readings.module.css';
import { useSession, useStore } from '../../use-store.ts';
import lists from './capacity-readings.module.css';
import { useCapacitySettings, useShownCapacity } from './use-capacity.ts';
import { useCountedGuard } from './use-counted-guard.ts';

/** So many names of a list are said. */
const MOST_NAMED = 8;

/** No more wear than this is tried, nanometres: see `src/fit/measure-wear.ts`. */
const MOST_WEAR = 4_000_000;

/** The readings beside the number of keys: which sections are counted, what they share, what one more brings. */
export function CapacityReadings({ family }: { family: Family }) {
  const { capacity, current, judged } = useShownCapacity(family);
  return (
    <>
      {capacity && current && (
        <>
          {judged && <Sections family={family} capacity={capacity} judged={judged} />}
          <Growth capacity={capacity} />
        </>
      )}
      <section className={styles.part}>
        <Cautions about="capacity" />
      </section>
    </>
  );
}

interface SectionsProps {
  readonly family: Family;
  readonly capacity: Capacity;
  readonly judged: JudgedBlanks;
}

function Sections({ family, capacity, judged }: SectionsProps) {
  const { chambers } = useCapacitySettings(family).rules;
  const counted = useMemo(
    () => countedSections(family, capacity, judged, chambers),
    [family, capacity, judged, chambers],
  );
  const shared = useMemo(() => sharedBlanks(family, counted, judged), [family, counted, judged]);
  const { selection } = useSession();
  const others = uncountedKeyways(family, counted);
  const { count, sections } = capacity;
  const proved = !sections || sections.atMost === count;
  return (
    <section className={styles.part} aria-labelledby="reading-sections" data-sections={count}>
      <h2 id="reading-sections" className={styles.title}>
        {count === 1 ? '1 section counts' : `${count} sections exclude each other`}
      </h2>
      <p>
        {proved
          ? 'No more can: this is proved.'
          : `The largest set that was found; no more than ${sections.atMost} can.`}{' '}
        Each has a blank that enters its own keyway and none of the others, as judged.
      </p>
      <ul className={lists.list}>
        {counted.slice(0, MOST_NAMED * 2).map(({ keyway, blank, tooShort }) => (
          <li key={keyway.id}>
            <button
              type="button"
              className={lists.pick}
              title={`Pick ${keyway.name}`}
              onClick={() => pickProfile(selection, keyway)}
            >
              <b>{keyway.name}</b> {blank.name}
              {tooShort && `, too short for ${chambers} chambers`}
            </button>
          </li>
        ))}
        {counted.length > MOST_NAMED * 2 && <li>and {counted.length - MOST_NAMED * 2} more</li>}
      </ul>
      <Guard family={family} counted={counted} />
      {others.length > 0 && (
        <p>
          Not counted: {namesOf(others)}. No blank of theirs stays out of all the others, so their bittings are shared.
        </p>
      )}
      {judged.open > 0 && <p>{judged.open} pairs are not judged; they count as going in.</p>}
      {shared.length > 0 && <Shared shared={shared} of={counted.length} />}
    </section>
  );
}

/** Blanks that enter several of the counted sections. */
function Shared({ shared, of }: { shared: readonly SharedBlank[]; of: number }) {
  return (
    <>
      <h3 className={lists.sub}>Blanks that share their bittings</h3>
      <p>A bitting that is given on one of these is taken in every keyway that the blank enters.</p>
      <ul className={lists.list}>
        {shared.slice(0, MOST_NAMED).map(({ blank, keyways }) => (
          <li key={blank.id} title={keyways.map(({ name }) => name).join(', ')}>
            <b>{blank.name}</b> in {keyways.length === of ? 'all' : keyways.length} of {of}
          </li>
        ))}
        {shared.length > MOST_NAMED && <li>and {shared.length - MOST_NAMED} more</li>}
      </ul>
    </>
  );
}

/** The least wear that would let a key of one counted section into the keyway of another. */
function Guard({ family, counted }: { family: Family; counted: readonly CountedSection[] }) {
  const units = useStore(useSession().settings, (s) => s.units);
  const guard = useCountedGuard(family, counted);
  const nameOf = (id: string) => family.profiles.find((profile) => profile.id === id)?.name ?? id;
  if (guard === 'altered' || counted.length < 2) return null;
  if (guard === 'waiting') return <p data-guard="waiting">Smallest guard margin between them …</p>;
  if (guard === null)
    return (
      <p data-guard="none">
        No wear up to {heightText(MOST_WEAR, units)} lets one of these blanks into another keyway.
      </p>
    );
  return (
    <p data-guard="known">
      Smallest guard margin between them: <b>{wearLengthText(guard.length, units)}</b>, {nameOf(guard.profile)} into{' '}
      {nameOf(guard.opening)}
      {alikeWords(guard)}. So much wear, of blank and keyway each, and one first goes in.
    </p>
  );
}

function Growth({ capacity }: { capacity: Capacity }) {
  const sentences = growthSentences(capacity);
  return (
    <section className={styles.part} aria-labelledby="reading-growth">
      <h2 id="reading-growth" className={styles.title}>
        What one more brings
      </h2>
      {sentences.length === 0 && <p>No bitting keeps these rules.</p>}
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p className={styles.note}>
        A master key system uses a part of these: each level above the change keys takes its share.
      </p>
    </section>
  );
}

function namesOf(profiles: readonly { readonly name: string }[]): string {
  const names = profiles.slice(0, MOST_NAMED).map(({ name }) => name);
  const more = profiles.length - names.length;
  return more > 0 ? `${names.join(', ')} and ${more} more` : names.join(', ');
}
