import { useEffect, useRef } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { ConfirmedPlan } from '../../../state/plan/sections/drawn-sections.ts';
import { FIRST_PRINT, sectionsLookOf } from '../../../state/plan/sections/sections-state.ts';
import { plannedProfiles } from '../../../state/plan/sections/taken-standing.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './sections-keys.module.css';
import { TakeSectionsSheet } from './take-sections-sheet.tsx';
import type { FoundSections } from './use-sections.ts';

interface SectionsKeysProps {
  readonly family: Family;
  readonly found: FoundSections | null;
}

/** What can be done with what was found: take it, print it. */
export function SectionsKeys({ family, found }: SectionsKeysProps) {
  const session = useSession();
  const { documents } = session;
  const look = sectionsLookOf(session);
  const taking = useStore(look, (s) => s.taking);
  const setTaking = (next: ConfirmedPlan | null) => look.setState({ taking: next });
  const isTaken = useStore(documents, (s) => s.document !== null && plannedProfiles(s.document).length > 0);
  const confirmed = found?.confirmed ?? null;
  const printKey = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (look.getState().backFromPrint) printKey.current?.focus();
    look.setState({ backFromPrint: false });
  }, [look]);
  const canPrint = confirmed !== null || isTaken;
  return (
    <div className={styles.keys}>
      <button
        type="button"
        className="key"
        title={
          confirmed ? 'Put these sections into the family' : 'Only sections that are drawn and confirmed can be taken'
        }
        disabled={!confirmed}
        onClick={() => setTaking(confirmed)}
      >
        Take these sections…
      </button>
      <button
        ref={printKey}
        type="button"
        className="key"
        title="A sheet with areas, holders, sections, wards and the report"
        disabled={!canPrint}
        onClick={() => look.setState({ printing: FIRST_PRINT })}
      >
        Print…
      </button>
      {taking && (
        <TakeSectionsSheet
          family={family}
          confirmed={taking}
          drawn={found?.drawn ?? null}
          onClose={() => setTaking(null)}
        />
      )}
    </div>
  );
}
