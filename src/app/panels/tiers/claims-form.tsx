import { type FormEvent, type KeyboardEvent, type RefObject, useEffect, useId, useMemo, useRef, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import { draftFault, endChange, type Refusal, takeDraft } from '../../state/tiers/claims-editing.ts';
import { suggestedNames } from '../../state/tiers/claims-names.ts';
import { type ClaimDraft, claimsOf } from '../../state/tiers/claims-state.ts';
import fields from '../form-fields.module.css';
import { useSession, useStore } from '../use-store.ts';
import styles from './claims-form.module.css';

/** One claim to be typed, or changed: two names, what is said, who says so. Enter takes it. */
export function ClaimsForm({ family, sources }: { family: Family; sources: readonly string[] }) {
  const session = useSession();
  const store = claimsOf(session);
  const draft = useStore(store, (s) => s.draft);
  const changing = useStore(store, (s) => s.changing);
  const [fault, setFault] = useState('');
  const first = useRef<HTMLInputElement>(null);
  const blanks = useMemo(() => suggestedNames(family, 'blank'), [family]);
  const openings = useMemo(() => suggestedNames(family, 'opening'), [family]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another claim to be changed brings the focus here too
  useEffect(() => first.current?.focus(), [changing]);
  const set = (change: Partial<ClaimDraft>) => {
    setFault('');
    store.setState({ draft: { ...draft, ...change } });
  };
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    const lacking = draftFault(draft) || refusalWords(takeDraft(session));
    setFault(lacking);
    first.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Escape') return;
    if (changing) endChange(session);
    else store.setState({ typing: false });
  };
  return (
    <form
      className={styles.form}
      aria-label={changing ? 'Change the claim' : 'A claim'}
      onSubmit={onSubmit}
      onKeyDown={onKeyDown}
    >
      <NameField
        label="Blank or tool"
        value={draft.blank}
        names={blanks}
        field={first}
        onChange={(blank) => set({ blank })}
      />
      <SaysField enters={draft.enters} onChange={(enters) => set({ enters })} />
      <NameField label="Keyway" value={draft.opening} names={openings} onChange={(opening) => set({ opening })} />
      <NameField label="Who says so" value={draft.by} names={sources} onChange={(by) => set({ by })} />
      <NameField label="Note" value={draft.note} names={[]} onChange={(note) => set({ note })} />
      <span className={styles.keys}>
        <button type="submit" className="key" title="Enter">
          {changing ? 'Change' : 'Add'}
        </button>
        {changing && (
          <button type="button" className="key" title="Leave it as it is (Escape)" onClick={() => endChange(session)}>
            Leave
          </button>
        )}
      </span>
      {fault && (
        <p role="alert" className={`${fields.fault} ${styles.fault}`}>
          {fault}
        </p>
      )}
    </form>
  );
}

/** Why it was refused, in words; empty where it was not. */
function refusalWords(refusal: Refusal): string {
  return refusal
    ? refusal
        .slice(0, 3)
        .map(({ what, cure }) => `${what}. ${cure}`)
        .join(' ')
    : '';
}

interface NameFieldProps {
  readonly label: string;
  readonly value: string;
  readonly names: readonly string[];
  readonly field?: RefObject<HTMLInputElement | null>;
  onChange(value: string): void;
}

/** A name, with those that are known to choose from. */
function NameField({ label, value, names, field, onChange }: NameFieldProps) {
  const id = useId();
  return (
    <div className={fields.field}>
      <label htmlFor={id}>{label}</label>
      <input
        ref={field}
        id={id}
        type="text"
        className={fields.text}
        maxLength={200}
        autoComplete="off"
        spellCheck={false}
        list={names.length > 0 ? `${id}-names` : undefined}
        value={value}
        onChange={(event) => onChange(event.target.value)}
      />
      {names.length > 0 && (
        <datalist id={`${id}-names`}>
          {names.map((name) => (
            <option key={name} value={name} />
          ))}
        </datalist>
      )}
    </div>
  );
}

function SaysField({ enters, onChange }: { enters: boolean; onChange(enters: boolean): void }) {
  const id = useId();
  return (
    <div className={fields.field}>
      <label htmlFor={id}>Says</label>
      <select
        id={id}
        className={fields.select}
        value={enters ? 'yes' : 'no'}
        onChange={(event) => onChange(event.target.value === 'yes')}
      >
        <option value="yes">enters</option>
        <option value="no">does not enter</option>
      </select>
    </div>
  );
}
