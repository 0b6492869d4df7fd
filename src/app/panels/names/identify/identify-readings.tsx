import type { Family } from '../../../../family/family.ts';
import { readingText, type Units } from '../../../../family/length-text.ts';
import type { Candidate } from '../../../../identify/identify.ts';
import { candidateName, sayPose } from '../../../../identify/say-identity.ts';
import { areaText } from '../../../state/names/identify-words.ts';
import { pickedCandidate } from '../../../state/names/identifying.ts';
import type { Fact } from '../../../state/profile-facts.ts';
import { FactList } from '../../fact-list.tsx';
import styles from '../../readings.module.css';
import { useSession, useStore } from '../../use-store.ts';
import { IdentifyActs } from './identify-acts.tsx';
import { IdentifyKeyways } from './identify-keyways.tsx';

/** The candidate that is looked at in figures, what can be done with the unknown, and how the answer is found. */
export function IdentifyReadings({ family }: { family: Family }) {
  const { identify, settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const state = useStore(identify, (s) => s);
  const candidate = pickedCandidate(state);
  return (
    <>
      {candidate && (
        <section className={styles.part} aria-labelledby="identify-figures">
          <h2 id="identify-figures" className={styles.title}>
            {candidateName(candidate, family.profiles)}
          </h2>
          <FactList facts={factsOf(candidate, units)} />
          {sayPose(candidate).map((words) => (
            <p key={words}>{words}</p>
          ))}
          {!candidate.careful && (
            <p className={styles.note}>
              It is far off and was laid in the rough: the figures may be a little too large.
            </p>
          )}
        </section>
      )}
      {state.unknown && state.run.phase === 'done' && (
        <>
          <IdentifyActs key={state.unknown.name} family={family} unknown={state.unknown} candidate={candidate} />
          <IdentifyKeyways family={family} />
        </>
      )}
      <HowItIsFound error={state.error} units={units} />
    </>
  );
}

function factsOf({ comparison }: Candidate, units: Units): Fact[] {
  const { most, mean, rms, areaApart } = comparison;
  return [
    { term: 'Greatest distance (Hausdorff)', value: readingText(most, units) },
    { term: 'Mean distance', value: readingText(mean, units) },
    { term: 'Root mean square', value: readingText(rms, units) },
    { term: 'Area of only one of them', value: areaText(areaApart, units) },
  ];
}

function HowItIsFound({ error, units }: { error: number; units: Units }) {
  const times = (count: number) => readingText(count * error, units);
  return (
    <section className={styles.part} aria-labelledby="identify-how">
      <h2 id="identify-how" className={styles.title}>
        How sure is it?
      </h2>
      <p>
        Each section is laid where the squares of the distances are least. The list goes by their root mean square,
        which a speck in a trace moves little.
      </p>
      <dl className={styles.note}>
        <dt>
          <b>Almost certainly</b>
        </dt>
        <dd>
          nowhere more than {times(2)} off, twice the drawing error, and the next section parted from it by {times(1)}{' '}
          or more
        </dd>
        <dt>
          <b>Probably</b>
        </dt>
        <dd>
          up to {times(6)} off, or the next parted by {times(0.5)} to {times(1)}
        </dd>
        <dt>
          <b>Could be either</b>
        </dt>
        <dd>the next parted by less than {times(0.5)}</dd>
        <dt>
          <b>Like none</b>
        </dt>
        <dd>more than {times(6)} off somewhere</dd>
      </dl>
    </section>
  );
}
