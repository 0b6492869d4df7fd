import { useMemo } from 'react';
import type { CheckedClaim } from '../../../../claims/check-claims.ts';
import { claimMargin } from '../../../../claims/claim-sentence.ts';
import type { NamedSide } from '../../../../claims/resolve-claims.ts';
import type { Family } from '../../../../family/family.ts';
import { changeClaim, countText, deleteClaims, deleteSource, putName } from '../../../state/tiers/claims-editing.ts';
import { tallySources } from '../../../state/tiers/claims-rows.ts';
import { claimsOf } from '../../../state/tiers/claims-state.ts';
import { claimReason } from '../../../state/tiers/claims-words.ts';
import { trayReach } from '../../../state/tray-reach.ts';
import styles from '../../readings.module.css';
import { SectionThumb } from '../../section-thumb.tsx';
import { useSession, useStore } from '../../use-store.ts';
import { ClaimMark } from './claim-mark.tsx';
import own from './claims-readings.module.css';
import { useCheckedClaims, useClaimWords } from './use-claims.ts';

/** The readings beside the claims: the picked one in full, and the sources. */
export function ClaimsReadings({ family }: { family: Family }) {
  const store = claimsOf(useSession());
  const picked = useStore(store, (s) => s.picked);
  const checked = useCheckedClaims(family);
  const row = useMemo(() => checked.find(({ claim }) => claim === picked), [checked, picked]);
  return (
    <>
      {row && <PickedClaim family={family} row={row} />}
      {!row && checked.length > 0 && (
        <section className={styles.part}>
          <p className={styles.note}>Pick a claim to read why it stands as it does.</p>
        </section>
      )}
      {checked.length > 0 && <Sources checked={checked} />}
      <section className={styles.part}>
        <h2 className={styles.title}>What the words mean</h2>
        <p>
          <b>Confirmed</b>: all parts within their tolerance do as it says. <b>Contradicted</b>: none does.{' '}
          <b>Too close to call</b>: some do and some do not.
        </p>
      </section>
    </>
  );
}

function PickedClaim({ family, row }: { family: Family; row: CheckedClaim }) {
  const session = useSession();
  const words = useClaimWords(family);
  const { claim, standing, pair } = row;
  const reason = useMemo(() => claimReason(row, family.claims ?? [], words), [row, family, words]);
  const margin = claimMargin(row, words);
  return (
    <section className={styles.part} aria-labelledby="reading-claim">
      <h2 id="reading-claim" className={own.title}>
        {claim.blank} <span>{claim.enters ? 'enters' : 'does not enter'}</span> {claim.opening}
      </h2>
      <p className={styles.note}>{claim.by ? `says ${claim.by}` : 'no source named'}</p>
      <p className={own.standing} data-standing={standing}>
        <ClaimMark standing={standing} size={26} />
        {standing}
        {margin && <span className={styles.margin}>{margin}</span>}
      </p>
      <p>{reason}</p>
      {claim.note && <p className={own.remark}>{claim.note}</p>}
      {pair && <PairThumbs family={family} ids={[pair.entrantId, pair.openingId]} />}
      <Candidates named={row.blank} />
      <Candidates named={row.opening} />
      <span className={own.keys}>
        {pair && (
          <button
            type="button"
            className="key"
            title="Look at this pair large (Enter)"
            onClick={() => session.selection.setState({ ...idsOf(pair), view: 'compare' })}
          >
            Compare
          </button>
        )}
        <button type="button" className="key" title="F2" onClick={() => changeClaim(session, claim)}>
          Change
        </button>
        <button type="button" className="key" title="Delete" onClick={() => deleteClaims(session, [claim])}>
          Delete
        </button>
      </span>
    </section>
  );
}

function idsOf({ entrantId, openingId }: { entrantId: string; openingId: string }) {
  return { entrantId, openingId };
}

/** The blank and the keyway that the names stand for. */
function PairThumbs({ family, ids }: { family: Family; ids: readonly string[] }) {
  const { x, y } = useMemo(() => trayReach(family), [family]);
  const profiles = ids.flatMap((id) => family.profiles.find((profile) => profile.id === id) ?? []);
  return (
    <ul className={own.thumbs}>
      {profiles.map((profile) => (
        <li key={profile.id}>
          <SectionThumb profile={profile} reachX={x} reachY={y} width={52} height={84} />
          {profile.name}
        </li>
      ))}
    </ul>
  );
}

/** Names that may be meant by one that is not found or ambiguous: one press writes it in all claims that use it. */
function Candidates({ named: { side, text, standing, candidates } }: { named: NamedSide }) {
  const session = useSession();
  if (standing === 'found' || candidates.length === 0) return null;
  return (
    <div className={own.candidates}>
      <p className={styles.note}>“{text}” is meant as</p>
      {candidates.map((name) => (
        <button
          key={name}
          type="button"
          className="key"
          title={`Write “${name}” in all claims that say “${text}”`}
          onClick={() => putName(session, side, text, name)}
        >
          {name}
        </button>
      ))}
    </div>
  );
}

/** Who claims how much, and how much of it does not hold. */
function Sources({ checked }: { checked: readonly CheckedClaim[] }) {
  const session = useSession();
  const store = claimsOf(session);
  const source = useStore(store, (s) => s.source);
  const tallies = useMemo(() => tallySources(checked), [checked]);
  return (
    <section className={styles.part} aria-labelledby="reading-sources">
      <h2 id="reading-sources" className={styles.title}>
        Sources
      </h2>
      <ul className={styles.pairs}>
        {tallies.map(({ source: name, total, failing }) => (
          <li key={name} className={own.source}>
            <button
              type="button"
              className={styles.setting}
              aria-pressed={source === name}
              title={source === name ? 'List all sources' : 'List only these'}
              onClick={() => store.setState({ source: source === name ? null : name })}
            >
              <span className={styles.grow}>{name || 'no source named'}</span>
              <span className={styles.by}>
                {countText(total)}, {failing === 0 ? 'none to look at' : `${failing.toLocaleString('en')} to look at`}
              </span>
            </button>
            <button
              type="button"
              className="key"
              aria-label={`Delete all of ${name || 'no source named'}`}
              title="Delete all that this source claims; undo brings it back"
              onClick={() => deleteSource(session, name)}
            >
              ✕
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
