import { type FormEvent, type ReactNode, useState } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { Candidate } from '../../../../identify/identify.ts';
import type { ProfileKind } from '../../../../profile/profile.ts';
import type { UnknownOutline } from '../../../state/names/identify-state.ts';
import { addUnknown, openInDraw } from '../../../state/names/identifying.ts';
import { ChoiceField, TextField, TickField } from '../../form-fields.tsx';
import styles from '../../readings.module.css';
import { useSession, useStore } from '../../use-store.ts';
import own from './identify-acts.module.css';

const KINDS: readonly (readonly [ProfileKind, string])[] = [
  ['blank', 'a blank'],
  ['tool', 'a tool'],
  ['opening', 'a keyway'],
];

interface IdentifyActsProps {
  readonly family: Family;
  readonly unknown: UnknownOutline;
  /** The section that is looked at; null where there is none to compare with. */
  readonly candidate: Candidate | null;
}

/** What can be done with the unknown: add it to the family, or see it and its candidate in Draw. */
export function IdentifyActs({ family, unknown, candidate }: IdentifyActsProps) {
  const session = useSession();
  const told = useStore(session.identify, (s) => s.told);
  const itself = family.profiles.find(({ id }) => id === unknown.profileId);
  const known = family.profiles.find(({ id }) => id === candidate?.ids[0]);
  const [adding, setAdding] = useState(false);
  return (
    <section className={styles.part} aria-labelledby="identify-acts">
      <h2 id="identify-acts" className={styles.title}>
        Go on
      </h2>
      <Keys>
        {itself ? (
          <button type="button" className="key" onClick={() => openInDraw(session, itself)}>
            Open it in Draw
          </button>
        ) : (
          <button type="button" className="key" aria-expanded={adding} onClick={() => setAdding(!adding)}>
            Add to the family…
          </button>
        )}
        {known && (
          <button type="button" className="key" onClick={() => openInDraw(session, known)}>
            {known.name} in Draw
          </button>
        )}
      </Keys>
      {!itself && adding && <AddForm unknown={unknown} candidate={candidate} onDone={() => setAdding(false)} />}
      <p role="status">{told}</p>
    </section>
  );
}

function Keys({ children }: { children: ReactNode }) {
  return <span className={own.keys}>{children}</span>;
}

interface AddFormProps {
  readonly unknown: UnknownOutline;
  readonly candidate: Candidate | null;
  onDone(): void;
}

function AddForm({ unknown, candidate, onDone }: AddFormProps) {
  const session = useSession();
  const [name, setName] = useState(unknown.name);
  const [kind, setKind] = useState<ProfileKind>(unknown.kind);
  const [laid, setLaid] = useState(true);
  const [fault, setFault] = useState('');
  const submit = (draw: boolean) => (event: Pick<FormEvent, 'preventDefault'>) => {
    event.preventDefault();
    const faults = addUnknown(session, { name: name.trim(), kind, laid });
    if (faults) {
      setFault(faults.map(({ what, cure }) => `${what}. ${cure}`).join(' '));
      return;
    }
    onDone();
    if (draw) session.selection.setState({ view: 'draw' });
  };
  const { mirrored, turned } = candidate?.comparison.pose ?? { mirrored: false, turned: 0 };
  const isTurned = mirrored || Math.abs(turned) > 1e-4;
  const none = name.trim() === '';
  return (
    <form className={own.form} onSubmit={submit(false)}>
      <TextField label="Name" value={name} autoFocus onChange={setName} />
      <ChoiceField label="As" value={kind} choices={KINDS} onChange={setKind} />
      {isTurned && (
        <TickField
          label={mirrored ? 'As it lies here: seen from the bow' : 'As it lies here: turned'}
          value={laid}
          onChange={setLaid}
        />
      )}
      {fault && <p role="alert">{fault}</p>}
      <span className={own.keys}>
        <button type="submit" className="key" disabled={none}>
          Add
        </button>
        <button type="button" className="key" disabled={none} onClick={submit(true)}>
          Add and open in Draw
        </button>
        <button type="button" className="key" onClick={onDone}>
          Cancel
        </button>
      </span>
    </form>
  );
}
