import { useMemo } from 'react';
import { entrantsOf, type Family, openingsOf } from '../../family/family.ts';
import type { Fit } from '../../fit/fit.ts';
import type { Profile } from '../../profile/profile.ts';
import { walkEntrants, walkOpenings } from '../state/selection-state.ts';
import { trayReach } from '../state/tray-reach.ts';
import { EntrantStrip } from './entrant-strip.tsx';
import styles from './tray.module.css';
import { TrayList } from './tray-list.tsx';
import { useSession, useStore } from './use-store.ts';

/** The family at the left of the window: everything that goes in, then the keyways. */
export function Tray({ family }: { family: Family }) {
  const { selection, results } = useSession();
  const entrantId = useStore(selection, (s) => s.entrantId);
  const openingId = useStore(selection, (s) => s.openingId);
  const fits = useStore(results, (s) => s.fits);
  const reach = useMemo(() => trayReach(family), [family]);
  const rows = useMemo(() => new Map(fits?.profiles.map((id, i) => [id, fits.fits[i]])), [fits]);
  const entrants = entrantsOf(family);
  const openings = openingsOf(family);
  return (
    <nav className={styles.tray} aria-label="Tray">
      {entrants.length > 0 && (
        <section className={styles.entrants}>
          <h2 className={styles.heading}>Blanks and tools</h2>
          <TrayList
            label="Blanks and tools"
            profiles={entrants}
            pickedId={entrantId}
            reach={reach}
            detail={(p) => <EntrantDetail profile={p} fits={rows.get(p.id)} />}
            onPick={(id) => selection.setState({ entrantId: id })}
            onWalk={(steps) => walkEntrants(selection, family, steps)}
          />
        </section>
      )}
      {openings.length > 0 && (
        <section className={styles.openings}>
          <h2 className={styles.heading}>Keyways</h2>
          <TrayList
            label="Keyways"
            profiles={openings}
            pickedId={openingId}
            reach={reach}
            detail={() => null}
            onPick={(id) => selection.setState({ openingId: id })}
            onWalk={(steps) => walkOpenings(selection, family, steps)}
          />
        </section>
      )}
    </nav>
  );
}

function EntrantDetail({ profile, fits }: { profile: Profile; fits: readonly Fit[] | undefined }) {
  if (!fits || fits.length === 0) return <span className={styles.detail}>{profile.kind}</span>;
  const goesIn = fits.filter((f) => f.verdict !== 'blocked').length;
  return (
    <span className={styles.detail} title={`Goes into ${goesIn} of ${fits.length} keyways`}>
      <EntrantStrip fits={fits} width={88} />
      {goesIn}
      <span className="unseen"> of {fits.length} keyways</span>
    </span>
  );
}
