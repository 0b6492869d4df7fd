import { useDeferredValue, useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import { conditionsFor } from '../../state/conditions-state.ts';
import { claimTold } from '../../state/tiers/claims-marks.ts';
import { toldWords } from '../../state/tiers/told-words.ts';
import { useHalted } from '../use-family.ts';
import { useSession, useStore } from '../use-store.ts';
import { useCheckedClaims } from './claims/use-claims.ts';
import styles from './tier-headline.module.css';

/** What is known of the row, pair, column or node that the pointer or the focus is on, else of the picked blank. */
export function TierHeadline({ family }: { family: Family }) {
  const { doors, tiers, selection, results, settings, conditions } = useSession();
  const pointed = useDeferredValue(useStore(tiers, (s) => s.pointed));
  const entrantId = useStore(selection, (s) => s.entrantId);
  const fits = useStore(results, (s) => s.fits);
  const units = useStore(settings, (s) => s.units);
  const state = useStore(conditions, (s) => s);
  const halted = useHalted();
  const { head, rest } = useMemo(
    () =>
      toldWords(doors, pointed ?? { entrantId, openingId: null }, {
        family,
        fits,
        conditions: conditionsFor(state, family),
        units,
        halted,
      }),
    [doors, pointed, entrantId, family, fits, state, units, halted],
  );
  const checked = useCheckedClaims(family);
  const claimed = pointed ? claimTold(checked, pointed.entrantId, pointed.openingId) : '';
  return (
    <div className={styles.band} data-told>
      <h1 className={styles.head}>{head}</h1>
      <p className={styles.rest}>
        {claimed && <b>{claimed} </b>}
        {rest}
      </p>
    </div>
  );
}
