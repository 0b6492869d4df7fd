import { useCallback, useMemo } from 'react';
import { entrantsOf, type Family, openingsOf } from '../../family/family.ts';
import { combOf } from '../state/fits-lookup.ts';
import { walkEntrants, walkOpenings } from '../state/selection-state.ts';
import { trayReach } from '../state/tray-reach.ts';
import styles from './tray.module.css';
import { TrayList } from './tray-list.tsx';
import { useSession, useStore } from './use-store.ts';

/** The family at the left of the window: everything that goes in, then the keyways. */
export function Tray({ family }: { family: Family }) {
  const reach = useMemo(() => trayReach(family), [family]);
  return (
    <nav className={styles.tray} aria-label="Tray">
      <Entrants family={family} reach={reach} />
      <Openings family={family} reach={reach} />
      {family.profiles.length === 0 && <p className={styles.none}>No section yet</p>}
    </nav>
  );
}

interface DrawerProps {
  readonly family: Family;
  readonly reach: { readonly x: number; readonly y: number };
}

function Entrants({ family, reach }: DrawerProps) {
  const { selection, results } = useSession();
  const entrantId = useStore(selection, (s) => s.entrantId);
  const fits = useStore(results, (s) => s.fits);
  const combs = useMemo(() => new Map(fits?.profiles.map((id, i) => [id, combOf(fits.fits[i])])), [fits]);
  const entrants = useMemo(() => entrantsOf(family), [family]);
  const onPick = useCallback((id: string) => selection.setState({ entrantId: id, part: 'entrant' }), [selection]);
  if (entrants.length === 0) return null;
  return (
    <section className={styles.entrants}>
      <h2 className={styles.heading}>Blanks and tools</h2>
      <TrayList
        label="Blanks and tools"
        profiles={entrants}
        pickedId={entrantId}
        reach={reach}
        combs={combs}
        onPick={onPick}
        onWalk={(steps) => walkEntrants(selection, family, steps)}
      />
    </section>
  );
}

function Openings({ family, reach }: DrawerProps) {
  const { selection } = useSession();
  const openingId = useStore(selection, (s) => s.openingId);
  const openings = useMemo(() => openingsOf(family), [family]);
  const onPick = useCallback((id: string) => selection.setState({ openingId: id, part: 'opening' }), [selection]);
  if (openings.length === 0) return null;
  return (
    <section className={styles.openings}>
      <h2 className={styles.heading}>Keyways</h2>
      <TrayList
        label="Keyways"
        profiles={openings}
        pickedId={openingId}
        reach={reach}
        onPick={onPick}
        onWalk={(steps) => walkOpenings(selection, family, steps)}
      />
    </section>
  );
}
