import type { Family } from '../../../../family/family.ts';
import { useSession, useStore } from '../../use-store.ts';
import { ClaimMark } from './claim-mark.tsx';
import styles from './claim-marks-key.module.css';
import { useCheckedClaims, useStandings } from './use-claims.ts';

const FAILING = [
  ['contradicted', 'wrong'],
  ['too close to call', 'too close'],
] as const;

/** What the marks of claims in the matrix mean and how many claims fail: legend and switch in one; none where none fails. */
export function ClaimMarksKey({ family }: { family: Family }) {
  const { tiers } = useSession();
  const counts = useStandings(useCheckedClaims(family));
  const isOn = useStore(tiers, (s) => s.claimMarks);
  const failing = FAILING.filter(([standing]) => counts[standing] > 0);
  if (failing.length === 0) return null;
  return (
    <label className={styles.key} title="Marks the pairs of which a claim says otherwise or is too close to call">
      <input type="checkbox" checked={isOn} onChange={() => tiers.setState({ claimMarks: !isOn })} />
      Claims:
      {failing.map(([standing, words]) => (
        <span key={standing} className={styles.part}>
          <ClaimMark standing={standing} size={16} />
          {counts[standing]} {words}
        </span>
      ))}
    </label>
  );
}
