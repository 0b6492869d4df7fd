import { useState } from 'react';
import { countWord } from '../../../../family/count-word.ts';
import type { Family } from '../../../../family/family.ts';
import type { FileFault } from '../../../../interchange/json/file-fault.ts';
import type { ConfirmedPlan, DrawnSections } from '../../../state/plan/sections/drawn-sections.ts';
import {
  BEFORE_PLAN,
  type TakingCounts,
  takeSections,
  takingCounts,
} from '../../../state/plan/sections/taking-sections.ts';
import { FaultList } from '../../fault-list.tsx';
import { TickField } from '../../form-fields.tsx';
import { ModalSheet } from '../../modal-sheet.tsx';
import { useSession } from '../../use-store.ts';
import styles from './take-sections-sheet.module.css';
import { someOf, useChangedSince } from './taken-line.tsx';

interface TakeSectionsSheetProps {
  readonly family: Family;
  readonly confirmed: ConfirmedPlan;
  /** The sections of the plan as it is now; null while they are not drawn. */
  readonly drawn: DrawnSections | null;
  onClose(): void;
}

/** Asks what becomes of the other sections, and takes those of the plan. */
export function TakeSectionsSheet({ family, confirmed, drawn, onClose }: TakeSectionsSheetProps) {
  const session = useSession();
  const [counts] = useState(() => takingCounts(session, confirmed));
  const changed = useChangedSince(drawn);
  const [keepOthers, setKeepOthers] = useState(true);
  const [rename, setRename] = useState(counts.namesakes > 0);
  const [faults, setFaults] = useState<readonly FileFault[]>([]);
  const take = () => {
    const refused = takeSections(session, confirmed, keepOthers, rename);
    if (refused) setFaults(refused);
    else onClose();
  };
  const foot = (
    <>
      <span />
      <button type="button" className="key" onClick={onClose}>
        Cancel
      </button>
      <button type="button" className="key" data-first="" onClick={take}>
        Take {countWord(counts.openings, 'keyway')} and {countWord(counts.blanks, 'blank')}
      </button>
    </>
  );
  return (
    <ModalSheet title="Take these sections" foot={foot} onClose={onClose}>
      <div className={styles.body}>
        <p>
          {countWord(counts.openings, 'keyway')} and {countWord(counts.blanks, 'blank')} come into {family.name}; every
          view shows them from then on. It is one step of undo.
        </p>
        {counts.replaced > 0 && (
          <p>
            {countWord(counts.replacedOpenings, 'keyway')} and{' '}
            {countWord(counts.replaced - counts.replacedOpenings, 'blank')} taken before are replaced
            {changed.length > 0 && <b>, and with them what was changed since in {someOf(changed)}</b>}.
          </p>
        )}
        {counts.others > 0 && <KeptSections {...{ counts, keepOthers, setKeepOthers, rename, setRename }} />}
      </div>
      <FaultList faults={faults} />
    </ModalSheet>
  );
}

interface KeptSectionsProps {
  readonly counts: TakingCounts;
  readonly keepOthers: boolean;
  readonly rename: boolean;
  setKeepOthers(keep: boolean): void;
  setRename(rename: boolean): void;
}

/** What becomes of the sections that are not from a plan, and of their names. */
function KeptSections({ counts, keepOthers, rename, setKeepOthers, setRename }: KeptSectionsProps) {
  const { others, namesakes } = counts;
  return (
    <>
      <TickField
        label={`Keep the ${others === 1 ? 'one section' : `${others} sections`} that ${others === 1 ? 'is' : 'are'} not from a plan`}
        value={keepOthers}
        onChange={setKeepOthers}
      />
      {keepOthers && (
        <p>
          The plan keeps only its own sections apart; how they stand to the kept ones is seen on the wall once they are
          taken.
        </p>
      )}
      {keepOthers && namesakes > 0 && (
        <>
          <p>
            <b>
              {namesakes === 1
                ? 'One kept section has the name of a planned one.'
                : `${namesakes} kept sections have the names of planned ones.`}
            </b>
          </p>
          <TickField
            label={`Put “${BEFORE_PLAN}” behind the names of those that are kept`}
            value={rename}
            onChange={setRename}
          />
        </>
      )}
    </>
  );
}
