import { memo, useMemo } from 'react';
import type { CheckedClaim } from '../../../../claims/check-claims.ts';
import { type ClaimWords, claimMargin } from '../../../../claims/claim-sentence.ts';
import type { Claim } from '../../../../family/claim.ts';
import { claimReason } from '../../../state/tiers/claims-words.ts';
import { ClaimMark } from './claim-mark.tsx';
import styles from './claims-table.module.css';

interface ClaimRowProps {
  readonly row: CheckedClaim;
  /** Its place in the list. */
  readonly at: number;
  /** Pixels. */
  readonly top: number;
  readonly claims: readonly Claim[];
  readonly words: ClaimWords;
  /** Whether the tabulator key leads to it. */
  readonly active: boolean;
  readonly picked: boolean;
  readonly ticked: boolean;
}

/** One claim: its standing, what is said and by whom, the margin, and why. */
export const ClaimRow = memo(function ClaimRow(props: ClaimRowProps) {
  const { row, at, top, claims, words, active, picked, ticked } = props;
  const { claim, standing, against } = row;
  const reason = useMemo(() => claimReason(row, claims, words), [row, claims, words]);
  const margin = claimMargin(row, words);
  return (
    <tr
      aria-rowindex={at + 2}
      aria-selected={ticked}
      data-row={at}
      data-picked={picked}
      data-standing={standing}
      tabIndex={active ? 0 : -1}
      className={styles.row}
      style={{ transform: `translateY(${top}px)` }}
    >
      <td data-tick className={styles.tick} aria-label={ticked ? 'ticked' : 'not ticked'}>
        <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
          <rect x="1" y="1" width="18" height="18" />
          {ticked && <path d="M4.5 10.5l4 4.2 7-9" />}
        </svg>
      </td>
      <td className={styles.standing}>
        <ClaimMark standing={standing} size={20} />
        <span>
          {standing}
          {against.length > 0 && <small>disputed</small>}
        </span>
      </td>
      <td className={styles.claim}>
        <span
          className={styles.says}
          title={`${claim.blank} ${claim.enters ? 'enters' : 'does not enter'} ${claim.opening}`}
        >
          <b>{claim.blank}</b> <em data-enters={claim.enters}>{claim.enters ? 'enters' : 'does not enter'}</em>{' '}
          <b>{claim.opening}</b>
        </span>
        <small title={claim.by}>{claim.by ?? 'no source named'}</small>
      </td>
      <td className={styles.margin}>{margin || '–'}</td>
      <td className={styles.why} title={reason}>
        <span>{reason}</span>
      </td>
    </tr>
  );
});
