import { useState } from 'react';
import type { Family } from '../../../family/family.ts';
import type { FileFault } from '../../../interchange/json/file-fault.ts';
import type { ConfirmedPlan } from '../../state/plan/drawn-sections.ts';
import { countWord } from '../../state/plan/sections-words.ts';
import { takeSections, takingCounts } from '../../state/plan/taking-sections.ts';
import { TickField } from '../form-fields.tsx';
import { ModalSheet } from '../modal-sheet.tsx';
import { useSession } from '../use-store.ts';
import styles from './take-sections-sheet.module.css';

interface TakeSectionsSheetProps {
  readonly family: Family;
  readonly confirmed: ConfirmedPlan;
  onClose(): void;
}

/** Asks what becomes of the other sections, and takes those of the plan. */
export function TakeSectionsSheet({ family, confirmed, onClose }: TakeSectionsSheetProps) {
  const session = useSession();
  const [counts] = useState(() => takingCounts(session, confirmed));
  const [keepOthers, setKeepOthers] = useState(true);
  const [faults, setFaults] = useState<readonly FileFault[]>([]);
  const take = () => {
    const refused = takeSections(session, confirmed, keepOthers);
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
            {countWord(counts.replaced, 'section')} from an earlier plan {counts.replaced === 1 ? 'is' : 'are'}{' '}
            replaced.
          </p>
        )}
        {counts.others > 0 && (
          <TickField
            label={`Keep the ${counts.others === 1 ? 'one section' : `${counts.others} sections`} that ${counts.others === 1 ? 'is' : 'are'} not from a plan`}
            value={keepOthers}
            onChange={setKeepOthers}
          />
        )}
        {faults.length > 0 && (
          <ul role="alert" className={styles.faults}>
            {faults.map(({ path, what, cure }) => (
              <li key={path + what}>
                {path}: {what}. {cure}
              </li>
            ))}
          </ul>
        )}
      </div>
    </ModalSheet>
  );
}
