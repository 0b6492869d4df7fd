import { useMemo, useState } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { FileFault } from '../../../../interchange/json/file-fault.ts';
import type { Rename } from '../../../../names/misleading-name.ts';
import { type NamingScheme, nameByScheme, schemeFault } from '../../../../names/naming-scheme.ts';
import { nameOf } from '../../../state/names/check-rename.ts';
import { rename } from '../../../state/names/register-editing.ts';
import { FormSheet } from '../../draw/section-sheets.tsx';
import { ChoiceField, LengthField, TextField, useTypedNumber } from '../../form-fields.tsx';
import { useFamily } from '../../use-family.ts';
import { useSession } from '../../use-store.ts';
import styles from './naming-scheme-sheet.module.css';

const KINDS = [
  ['words', 'words, one for each section'],
  ['numbers', 'numbers with gaps, in chart order'],
] as const;

/** Asks for a rule by which all sections, keyways and blanks of the open family are named, and shows every new name. */
export function NamingSchemeSheet({ onClose }: { onClose(): void }) {
  const family = useFamily();
  return family ? <SchemeForm family={family} onClose={onClose} /> : null;
}

function SchemeForm({ family, onClose }: { family: Family; onClose(): void }) {
  const session = useSession();
  const { scheme, fields } = useScheme();
  const fault = schemeFault(scheme);
  const renames = useMemo(() => nameByScheme(family, scheme), [family, scheme]);
  const [refused, setRefused] = useState<readonly FileFault[]>([]);
  const submit = () => {
    if (fault || renames.length === 0) return;
    const words = renames.length === 1 ? 'One name was changed.' : `${renames.length} names were changed.`;
    const faults = rename(session, renames, words);
    setRefused(faults ?? []);
    if (!faults) onClose();
  };
  return (
    <FormSheet title="Name the sections" doIt="Rename" faults={refused} onSubmit={submit} onClose={onClose}>
      {fields}
      <p data-wide="" role="status" className={fault ? styles.fault : styles.note}>
        {fault ?? previewWords(renames)}
      </p>
      {!fault && renames.length > 0 && <Preview family={family} renames={renames} />}
      <p data-wide="" className={styles.note}>
        No name joins two sections, tells a length by its number, or looks like another. Tools keep their names. Old
        names stay in the register, superseded by the new ones; it is one step of undo.
      </p>
    </FormSheet>
  );
}

function previewWords(renames: readonly Rename[]): string {
  if (renames.length === 0) return 'Everything is named so already.';
  return renames.length === 1 ? 'One name changes:' : `${renames.length} names change:`;
}

/** Another scheme as it is typed, and the fields for it. */
function useScheme() {
  const [by, setBy] = useState<NamingScheme['by']>('words');
  const [words, setWords] = useState('');
  const [prefix, setPrefix] = useState('K');
  const first = useTypedNumber(10);
  const step = useTypedNumber(10);
  const [from, gap] = [first.value ?? Number.NaN, step.value ?? Number.NaN];
  const scheme = useMemo<NamingScheme>(() => {
    if (by === 'numbers') return { by, prefix, first: from, step: gap };
    return { by, words: words.split(/[,;\n]/).flatMap((word) => word.trim() || []) };
  }, [by, words, prefix, from, gap]);
  const fields = (
    <>
      <div data-wide="">
        <ChoiceField label="Name sections by" value={by} choices={KINDS} onChange={setBy} />
      </div>
      {by === 'words' && (
        <div data-wide="">
          <TextField
            label="Words of your own, if any"
            value={words}
            lines={2}
            hint="Parted by commas, in chart order; plain words of ours are taken behind them"
            onChange={setWords}
            autoFocus
          />
        </div>
      )}
      {by === 'numbers' && (
        <>
          <TextField label="Before the number" value={prefix} hint="Letters, or nothing" onChange={setPrefix} />
          <span />
          <LengthField
            label="First number"
            text={first.text}
            units="mm"
            unit="for the first section"
            fault={first.fault}
            onChange={first.set}
          />
          <LengthField
            label="Step"
            text={step.text}
            units="mm"
            unit="from one to the next"
            fault={step.fault}
            hint="10 leaves nine numbers for sections squeezed in later"
            onChange={step.set}
          />
        </>
      )}
    </>
  );
  return { scheme, fields };
}

function Preview({ family, renames }: { family: Family; renames: readonly Rename[] }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a list that scrolls must take the keyboard
    <section data-wide="" className={styles.frame} tabIndex={0} aria-label="Old and new names">
      <table className={styles.names}>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Now</th>
            <th scope="col">New</th>
          </tr>
        </thead>
        <tbody>
          {renames.map(({ target, to }) => (
            <tr key={JSON.stringify(target)}>
              <td>{kindOf(family, target)}</td>
              <td>{nameOf(family, target)}</td>
              <td>{to}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function kindOf(family: Family, target: Rename['target']): string {
  if (target.of === 'section') return 'section';
  if (target.of === 'register') return 'entry';
  const kind = family.profiles.find(({ id }) => id === target.id)?.kind;
  return kind === 'opening' ? 'keyway' : (kind ?? '');
}
