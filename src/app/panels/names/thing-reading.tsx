import { useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import { registerOf, type Sense } from '../../../names/register.ts';
import { profilesOf } from '../../../names/resolve.ts';
import type { Profile } from '../../../profile/profile.ts';
import { profileFacts } from '../../state/profile-facts.ts';
import { pickProfile } from '../../state/selection-state.ts';
import { trayReach } from '../../state/tray-reach.ts';
import { FactList } from '../fact-list.tsx';
import readings from '../readings.module.css';
import { SectionThumb } from '../section-thumb.tsx';
import { useSession, useStore } from '../use-store.ts';
import styles from './thing-reading.module.css';

/** One section of the family: its picture, its facts, and what else it is called. */
export function ThingReading({ family, profile }: { family: Family; profile: Profile }) {
  const { settings, selection } = useSession();
  const units = useStore(settings, (s) => s.units);
  const reach = useMemo(() => trayReach(family), [family]);
  const others = useMemo(() => otherNames(family, profile), [family, profile]);
  return (
    <section className={readings.part} aria-label={profile.name}>
      <div className={styles.head}>
        <SectionThumb profile={profile} reachX={reach.x} reachY={reach.y} width={44} height={86} />
        <h2 className={readings.title}>
          <button
            type="button"
            className={styles.pick}
            title={`Pick ${profile.name} in the tray`}
            onClick={() => pickProfile(selection, profile)}
          >
            {profile.name}
          </button>
        </h2>
      </div>
      <FactList facts={profileFacts(profile, units)} />
      {others.length > 0 && (
        <>
          <h3 className={styles.also}>Also called</h3>
          <ul className={styles.names}>
            {others.map(({ text, scheme, supersededBy, index, source }) => (
              <li key={`${source} ${index} ${text}`}>
                {text}
                <span>{[scheme, supersededBy && `now ${supersededBy}`].filter(Boolean).join(', ')}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

/** More of them fill the readings without being read. */
const MOST_TOLD = 12;

/** The names of the register that stand for this profile and no other of its kind, at most a dozen. */
function otherNames(family: Family, profile: Profile): Sense[] {
  const entries = registerOf(family).senses.filter(({ source, kind }) => source === 'register' && kind !== 'section');
  const own = entries.filter((sense) => profilesOf(family, sense).some(({ id }) => id === profile.id));
  return own.slice(0, MOST_TOLD);
}
