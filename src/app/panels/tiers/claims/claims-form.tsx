import { type FormEvent, type KeyboardEvent, type RefObject, useEffect, useId, useMemo, useRef, useState } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { Refusal } from '../../../state/edit-document.ts';
import { draftFault, endChange, takeDraft } from '../../../state/tiers/claims-editing.ts';
import { suggestedNames } from '../../../state/tiers/claims-names.ts';
import { type ClaimDraft, claimsOf } from '../../../state/tiers/claims-state.ts';
import fields from '../../form-fields.module.css';
import { useSession, useStore } from '../../use-store.ts';
import styles from './claims-form.module.css';

/** One claim to be typed, or changed: two names, what is said, who says so. Enter takes it. */
export function ClaimsForm({ family, sources }: { family: Family; sources: readonly string[] }) {
  const store = claimsOf(useSession());
  const draft = useStore(store, (s) => s.draft);
  const changing = useStore(store, (s) => s.changing);
  const first = useRef<HTMLInputElement>(null);
  const { fault, set, onSubmit, onKeyDown } = useDraft(first);
  const blanks = useMemo(() => suggestedNames(family, 'blank'), [family]);
  const openings = useMemo(() => suggestedNames(family, 'opening'), [family]);
  const field = (label: string, part: 'blank' | 'opening' | 'by' | 'note', names: readonly string[]) => (
    <NameField
      label={label}
      value={draft[part]}
      names={names}
      field={part === 'blank' ? first : undefined}
      onChange={(text) => set({ [part]: text })}
    />
  );
  return (
    <form
      className={styles.form}
      aria-label={changing ? 'Change the claim' : 'A claim'}
      onSubmit={onSubmit}
      onKeyDown={onKeyDown}
    >
      {field('Blank or tool', 'blank', blanks)}
      <SaysField enters={draft.enters} onChange={(enters) => set({ enters })} />
      {field('Keyway', 'opening', openings)}
      {field('Who says so', 'by', sources)}
      {field('Note', 'note', [])}
      <FormKeys changing={changing !== null} />
      {fault && (
        <p role="alert" className={`${fields.fault} ${styles.fault}`}>
          {fault}
        </p>
      )}
    </form>
  );
}

function FormKeys({ changing }: { changing: boolean }) {
  const session = useSession();
  return (
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
  );
}

/** What the fields do; the focus goes to the first one with every claim that is begun or taken. */
function useDraft(first: RefObject<HTMLInputElement | null>) {
  const session = useSession();
  const store = claimsOf(session);
  const changing = useStore(store, (s) => s.changing);
  const typing = useStore(store, (s) => s.typing);
  const [fault, setFault] = useState('');
  // biome-ignore lint/correctness/useExhaustiveDependencies: another claim to be changed brings the focus here too
  useEffect(() => {
    if (typing) first.current?.focus();
  }, [typing, changing]);
  const set = (change: Partial<ClaimDraft>) => {
    setFault('');
    store.setState({ draft: { ...store.getState().draft, ...change } });
  };
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    setFault(draftFault(store.getState().draft) || refusalWords(takeDraft(session)));
    first.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Escape') return;
    if (changing) endChange(session);
    else store.setState({ typing: false });
  };
  return { fault, set, onSubmit, onKeyDown };
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
