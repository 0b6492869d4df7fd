import { useDeferredValue, useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import { oneMoreSite } from '../../../../plan/one-more-site.ts';
import { takeRoom } from '../../../state/plan/blade/blade-editing.ts';
import { chordsText, gapFacts, moreRoomWords, siteFacts, siteName } from '../../../state/plan/blade/blade-words.ts';
import { FactList } from '../../fact-list.tsx';
import readings from '../../readings.module.css';
import { useSession, useStore } from '../../use-store.ts';
import styles from './blade-readings.module.css';
import { type BladeNow, useBladeLayout } from './use-blade-layout.ts';

/** The readings beside this: what the blades may be made like, and the places for wards. */
export function BladeReadings({ family }: { family: Family }) {
  const now = useBladeLayout(family);
  if (!now) return null;
  return (
    <>
      <PickedSite now={now} />
      <Binding now={now} />
      <Gap now={now} />
    </>
  );
}

function PickedSite({ now: { blade, gap, layout, picked } }: { now: BladeNow }) {
  const units = useStore(useSession().settings, (s) => s.units);
  if (picked === null) return null;
  return (
    <section className={readings.part} aria-labelledby="blade-site">
      <h2 id="blade-site" className={readings.title}>
        {siteName(picked)}
      </h2>
      <FactList facts={siteFacts(blade, gap, layout, picked, units)} />
    </section>
  );
}

/** Which limit keeps the number of sites down, and what one more would need. */
function Binding({ now: { blade, gap, layout, plan } }: { now: BladeNow }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const asked = useDeferredValue(blade);
  const more = useMemo(() => oneMoreSite(asked, gap, plan.depths), [asked, gap, plan.depths]);
  const isFaulty = layout.limits.some(({ kind }) => kind === 'fault');
  return (
    <section className={readings.part} aria-labelledby="blade-limits">
      <h2 id="blade-limits" className={readings.title}>
        {isFaulty ? 'What stands against it' : 'What limits the sites'}
      </h2>
      <ul className={styles.words}>
        {layout.limits.map(({ field, words, cure, kind }) => (
          <li key={`${field} ${words}`} data-kind={kind}>
            <b>
              {kind === 'fault' && <span aria-hidden="true">⚠ </span>}
              {words}.
            </b>{' '}
            {cure}
          </li>
        ))}
      </ul>
      {!isFaulty && more.length > 0 && (
        <>
          <h3>More sites need one of</h3>
          <ul className={styles.more}>
            {more.map((room) => (
              <li key={room.field}>
                <button type="button" className="key" onClick={() => takeRoom(session, blade, gap, room)}>
                  {moreRoomWords(room, units)}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
      {!isFaulty && more.length === 0 && <p>No single limit, changed by up to two fifths, gives one more site.</p>}
    </section>
  );
}

function Gap({ now: { gap, layout } }: { now: BladeNow }) {
  const { plan, settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  return (
    <section className={readings.part} aria-labelledby="blade-gap">
      <h2 id="blade-gap" className={readings.title}>
        Gap and stop
      </h2>
      <FactList facts={gapFacts(gap, layout, units)} />
      <p className={readings.note}>
        Keyways leave the running clearance and the tolerance of both parts all round their blades. A ward stops a blade
        for certain where it is deeper by two such gaps, the play to one side, by what the tolerance of both parts takes
        off the four surfaces that meet, and by {chordsText(gap, units)} kept for arcs that are judged as chords.
      </p>
      <button type="button" className="key" onClick={() => plan.setState({ sheet: 'sections' })}>
        Plan the sections
      </button>
    </section>
  );
}
