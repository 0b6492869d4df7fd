import { useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import { ClaimsForm } from '../../panels/tiers/claims/claims-form.tsx';
import { ClaimsFoot, ClaimsHead, PasteKey } from '../../panels/tiers/claims/claims-head.tsx';
import { ClaimsPaste } from '../../panels/tiers/claims/claims-paste.tsx';
import { ClaimsTable } from '../../panels/tiers/claims/claims-table.tsx';
import { useCheckedClaims, useClaimRows, useClaimsJudging } from '../../panels/tiers/claims/use-claims.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { tallySources } from '../../state/tiers/claims-rows.ts';
import { claimsOf } from '../../state/tiers/claims-state.ts';
import styles from './claims.module.css';

/** What charts and colleagues say, checked: typed, pasted or imported, those that fail first. */
export function ClaimsSheet({ family }: { family: Family }) {
  const store = claimsOf(useSession());
  useClaimsJudging(family);
  const checked = useCheckedClaims(family);
  const rows = useClaimRows(checked);
  const [incoming] = useStore(store, (s) => s.incoming);
  const typing = useStore(store, (s) => s.typing);
  const sources = useMemo(() => tallySources(checked), [checked]);
  const named = useMemo(() => sources.flatMap(({ source }) => source || []), [sources]);
  return (
    <div className={styles.sheet}>
      <div className={styles.top}>
        {checked.length > 0 && <ClaimsHead family={family} checked={checked} rows={rows} sources={sources} />}
        {(typing || checked.length === 0) && <ClaimsForm family={family} sources={named} />}
      </div>
      {checked.length === 0 && <NoClaims />}
      {checked.length > 0 && rows.length === 0 && (
        <p className={styles.none}>No claim is of that standing and source.</p>
      )}
      {rows.length > 0 && <ClaimsTable family={family} rows={rows} />}
      {checked.length > 0 && <ClaimsFoot rows={rows} />}
      {incoming && <ClaimsPaste key={`${incoming.name} ${incoming.text.length}`} family={family} incoming={incoming} />}
    </div>
  );
}

function NoClaims() {
  return (
    <section className={styles.empty}>
      <h2>Nothing is claimed yet</h2>
      <p>
        Put down what a chart, a catalogue or a colleague says: which blank enters which keyway, by the names that they
        use. Each claim is checked against the outlines at once. Type one above, drop a CSV on this window, or paste a
        list or a whole matrix.
      </p>
      <PasteKey />
    </section>
  );
}
