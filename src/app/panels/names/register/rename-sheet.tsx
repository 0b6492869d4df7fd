import { useDeferredValue, useMemo, useState } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { FileFault } from '../../../../interchange/json/file-fault.ts';
import type { NameTarget } from '../../../../names/misleading-name.ts';
import { nameOf, troubleWith } from '../../../state/names/check-rename.ts';
import { rename } from '../../../state/names/register-editing.ts';
import { FormSheet } from '../../draw/section-sheets.tsx';
import { TextField } from '../../form-fields.tsx';
import { useSession } from '../../use-store.ts';
import styles from './rename-sheet.module.css';
import { useRenameGround } from './use-rename-ground.ts';

interface RenameSheetProps {
  readonly family: Family;
  readonly target: NameTarget;
  onClose(): void;
}

/** Asks for another name of a section or a profile; the old one stays in the register as superseded. */
export function RenameSheet({ family, target, onClose }: RenameSheetProps) {
  const session = useSession();
  const ground = useRenameGround(family);
  const old = nameOf(family, target);
  const [to, setTo] = useState(old);
  const [faults, setFaults] = useState<readonly FileFault[]>([]);
  // Typing goes on while a long register is looked through.
  const typed = useDeferredValue(to);
  const trouble = useMemo(
    () => (ground && typed !== old ? troubleWith(ground, [{ target, to: typed }]) : ''),
    [ground, target, typed, old],
  );
  const submit = () => {
    if (to.trim() === '') {
      setFaults([{ path: 'name', what: 'The name is missing.', cure: 'Type what it is to be called.' }]);
      return;
    }
    const refused =
      to.trim() === old ? null : rename(session, [{ target, to }], `“${old}” is called “${to.trim()}” now.`);
    setFaults(refused ?? []);
    if (!refused) onClose();
  };
  const of = target.of === 'section' ? 'Its keyways and blanks take the new name along where theirs holds it. ' : '';
  return (
    <FormSheet title={`Rename “${old}”`} doIt="Rename" faults={faults} onSubmit={submit} onClose={onClose}>
      <div data-wide="">
        <TextField label="New name" value={to} onChange={setTo} autoFocus />
      </div>
      <p data-wide="" role="status" className={styles.trouble}>
        {trouble}
      </p>
      <p data-wide="" className={styles.note}>
        {of}The old name stays in the register, superseded by the new one, so that old lists can still be read.
      </p>
    </FormSheet>
  );
}
