import { useEffect, useRef } from 'react';
import { type CheckedClaim, CLAIM_STANDINGS, claimsSummary, isFailing } from '../../../../claims/check-claims.ts';
import type { Family } from '../../../../family/family.ts';
import { checkingOf } from '../../../state/tiers/claims-checking.ts';
import { deleteClaims } from '../../../state/tiers/claims-editing.ts';
import type { SourceTally } from '../../../state/tiers/claims-rows.ts';
import { type ClaimsShown, claimsOf } from '../../../state/tiers/claims-state.ts';
import { AlteredLine } from '../../compare/altered-line.tsx';
import { useSession, useStore } from '../../use-store.ts';
import { ClaimMark } from './claim-mark.tsx';
import styles from './claims-head.module.css';
import { ReportMenu } from './claims-report.tsx';
import { tickAll } from './claims-table.tsx';
import { useStandings } from './use-claims.ts';

interface ClaimsHeadProps {
  readonly family: Family;
  readonly checked: readonly CheckedClaim[];
  readonly rows: readonly CheckedClaim[];
  readonly sources: readonly SourceTally[];
}

/** How the claims stand as a whole, which are listed, and what can be done with all of them. */
export function ClaimsHead({ family, checked, rows, sources }: ClaimsHeadProps) {
  return (
    <>
      <h2 className={styles.summary}>{claimsSummary(checked)}</h2>
      <AlteredLine />
      <Trouble />
      <div className={styles.line}>
        <StandingKeys checked={checked} />
        <AddKey />
        <PasteKey />
        <ReportMenu family={family} rows={rows} all={rows.length === checked.length} />
        <SourceChoice sources={sources} />
      </div>
    </>
  );
}

/** The key that brings the fields for one claim; the focus comes back to it when they go. */
function AddKey() {
  const store = claimsOf(useSession());
  const typing = useStore(store, (s) => s.typing);
  const key = useRef<HTMLButtonElement>(null);
  const was = useRef(typing);
  useEffect(() => {
    if (was.current && !typing && document.activeElement === document.body) key.current?.focus();
    was.current = typing;
  }, [typing]);
  return (
    <button
      ref={key}
      type="button"
      className="key"
      aria-expanded={typing}
      title="Type one claim in"
      onClick={() => store.setState({ typing: !typing })}
    >
      Add a claim
    </button>
  );
}

/** The key to the dialog for a table of claims. */
export function PasteKey() {
  const session = useSession();
  const paste = () => claimsOf(session).setState({ incoming: [{ name: '', text: '' }] });
  return (
    <button type="button" className="key" title="A list or a whole matrix, from a spreadsheet or a CSV" onClick={paste}>
      Paste a table…
    </button>
  );
}

/** What stands in the way of the checking, or how far it is. */
function Trouble() {
  const session = useSession();
  const { waiting, trouble } = useStore(checkingOf(session).store, (s) => s);
  if (trouble)
    return (
      <p role="alert" className={styles.trouble}>
        The tolerances could not be judged: {trouble}
      </p>
    );
  if (waiting === 0) return null;
  return <p className={styles.note}>Judging the tolerances of {waiting.toLocaleString('en')} pairs …</p>;
}

/** Which claims are listed: as keys where there is room, else as a list to choose from. */
function StandingKeys({ checked }: { checked: readonly CheckedClaim[] }) {
  const store = claimsOf(useSession());
  const shown = useStore(store, (s) => s.shown);
  const counts = useStandings(checked);
  const had = CLAIM_STANDINGS.filter((standing) => counts[standing] > 0 || shown === standing);
  const choices: { what: ClaimsShown; label: string }[] = [
    { what: 'all', label: `All ${checked.length.toLocaleString('en')}` },
    { what: 'failing', label: `To look at ${checked.filter(isFailing).length.toLocaleString('en')}` },
    ...had.map((what) => ({ what, label: `${what} ${counts[what].toLocaleString('en')}` })),
  ];
  const show = (what: ClaimsShown) => store.setState({ shown: what });
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset lays its keys out otherwise */}
      <div role="group" aria-label="Which claims are listed" className={styles.standings}>
        {choices.map(({ what, label }) => (
          <button key={what} type="button" className="key" aria-pressed={shown === what} onClick={() => show(what)}>
            {what !== 'all' && what !== 'failing' && <ClaimMark standing={what} size={16} />}
            {label}
          </button>
        ))}
      </div>
      <select
        className={`${styles.select} ${styles.narrow}`}
        aria-label="Which claims are listed"
        value={shown}
        onChange={({ target }) => show(choices.find(({ what }) => what === target.value)?.what ?? 'all')}
      >
        {choices.map(({ what, label }) => (
          <option key={what} value={what}>
            {label}
          </option>
        ))}
      </select>
    </>
  );
}

function SourceChoice({ sources }: { sources: readonly SourceTally[] }) {
  const store = claimsOf(useSession());
  const source = useStore(store, (s) => s.source);
  if (sources.length < 2 && source === null) return null;
  const value = source === null ? 'all' : `by ${source}`;
  return (
    <select
      className={styles.select}
      aria-label="Whose claims are listed"
      value={value}
      onChange={({ target }) => store.setState({ source: target.value === 'all' ? null : target.value.slice(3) })}
    >
      <option value="all">All sources</option>
      {sources.map(({ source: name, total }) => (
        <option key={name} value={`by ${name}`}>
          {name || 'no source named'} ({total})
        </option>
      ))}
    </select>
  );
}

const KEYS = 'In the list: Space ticks, Enter compares, F2 changes, Delete deletes.';

/** What can be done with the ticked claims, and what was done last. */
export function ClaimsFoot({ rows }: { rows: readonly CheckedClaim[] }) {
  const session = useSession();
  const store = claimsOf(session);
  const ticked = useStore(store, (s) => s.ticked);
  const said = useStore(store, (s) => s.said);
  return (
    <div className={styles.foot}>
      <p role="status">{ticked.size > 0 ? `${ticked.size.toLocaleString('en')} ticked.` : said}</p>
      {ticked.size === 0 && said === '' && <p className={styles.note}>{KEYS}</p>}
      {ticked.size > 0 && (
        <>
          <button type="button" className="key" onClick={() => deleteClaims(session, ticked)}>
            Delete ticked
          </button>
          <button type="button" className="key" onClick={() => tickAll(session, rows)}>
            {rows.every(({ claim }) => ticked.has(claim)) ? 'Tick none' : 'Tick all'}
          </button>
        </>
      )}
    </div>
  );
}
