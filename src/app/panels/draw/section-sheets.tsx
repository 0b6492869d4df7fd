import { type FormEvent, type ReactNode, useEffect, useId, useRef, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import type { FileFault } from '../../../interchange/json/file-fault.ts';
import type { Profile, ProfileKind } from '../../../profile/profile.ts';
import { takePen } from '../../state/draw/pen-editing.ts';
import { addPlainSection, changeSection, noteOf } from '../../state/draw/section-editing.ts';
import { usualSize } from '../../state/draw/usual-size.ts';
import { ChoiceField, LengthField, TextField, useTypedLength, useTypedNumber } from '../form-fields.tsx';
import { ModalSheet } from '../modal-sheet.tsx';
import { useSession, useStore } from '../use-store.ts';
import styles from './section-sheets.module.css';
import { exactLength, toldLength } from './vertex-entry.ts';

const KINDS = [
  ['opening', 'Keyway'],
  ['blank', 'Blank'],
  ['tool', 'Tool'],
] as const satisfies readonly (readonly [ProfileKind, string])[];

/** It is told of the field that a file calls `section`. */
const SHARED = 'Of a keyway and its blanks, such as Heron';

interface SheetProps {
  onClose(): void;
}

/** Asks what a new section is called, what it is, and what it begins with. */
export function NewSectionSheet({ family, afterId, onClose }: SheetProps & { family: Family; afterId: string | null }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const [kind, setKind] = useState<ProfileKind>('opening');
  const [name, setName] = useState('');
  const [section, setSection] = useState('');
  const [start, setStart] = useState<'plain' | 'pen'>('plain');
  const usual = usualSize(family, kind, units);
  const width = useTypedLength(usual.width, units);
  const height = useTypedLength(usual.height, units);
  const changeKind = (next: ProfileKind) => {
    setKind(next);
    // A size that was typed stays.
    const [before, now] = [usual, usualSize(family, next, units)];
    if (width.nm === before.width) width.set(exactLength(now.width, units));
    if (height.nm === before.height) height.set(exactLength(now.height, units));
  };
  const [faults, setFaults] = useState<readonly FileFault[]>([]);
  const submit = () => {
    const head = {
      kind,
      name: name.trim(),
      ...(section.trim() === '' ? {} : { section: section.trim() }),
      ...(afterId === null ? {} : { afterId }),
    };
    const wrong = sizeFaults(start, width.nm, height.nm);
    if (head.name === '') wrong.unshift(NO_NAME);
    if (wrong.length > 0) {
      setFaults(wrong);
      return;
    }
    session.selection.setState({ view: 'draw' });
    if (start === 'pen') takePen(session, { head });
    const refused = start === 'pen' ? null : addPlainSection(session, head, width.nm ?? 0, height.nm ?? 0);
    if (refused) setFaults(refused);
    else onClose();
  };
  return (
    <FormSheet title="New section" doIt="Add section" faults={faults} onSubmit={submit} onClose={onClose}>
      <TextField label="Name" value={name} onChange={setName} autoFocus />
      <ChoiceField label="Kind" value={kind} choices={KINDS} onChange={changeKind} />
      <TextField label="Shared name, if any" value={section} hint={SHARED} onChange={setSection} />
      <ChoiceField label="Begin with" value={start} choices={STARTS} onChange={setStart} />
      {start === 'plain' && (
        <>
          <LengthField label="Thickness" text={width.text} units={units} fault={width.fault} onChange={width.set} />
          <LengthField label="Height" text={height.text} units={units} fault={height.fault} onChange={height.set} />
        </>
      )}
    </FormSheet>
  );
}

const STARTS = [
  ['plain', 'a plain blade or slot'],
  ['pen', 'the pen, vertex by vertex'],
] as const;

const NO_NAME: FileFault = { path: 'name', what: 'The name is missing.', cure: 'Type what people call it.' };

function sizeFaults(start: string, width: number | null, height: number | null): FileFault[] {
  const missing = (path: string, nm: number | null) =>
    start === 'plain' && (nm === null || nm <= 0)
      ? [{ path, what: `The ${path} must be more than 0.`, cure: 'Type a length.' }]
      : [];
  return [...missing('thickness', width), ...missing('height', height)];
}

/** What is said of a section apart from its shape. */
export function SectionSheet({ family, profile, onClose }: SheetProps & { family: Family; profile: Profile }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const [kind, setKind] = useState(profile.kind);
  const [name, setName] = useState(profile.name);
  const [section, setSection] = useState(profile.section ?? '');
  const chambers = useTypedNumber(profile.chambers ?? null);
  const tolerance = useTypedLength(profile.tolerance ?? null, units);
  const [note, setNote] = useState(() => noteOf(session, profile.id));
  const [faults, setFaults] = useState<readonly FileFault[]>([]);
  const submit = () => {
    if (chambers.fault || tolerance.fault) return;
    if (name.trim() === '') {
      setFaults([NO_NAME]);
      return;
    }
    const refused = changeSection(session, profile.id, {
      kind,
      name: name.trim(),
      section: section.trim() || null,
      chambers: chambers.value,
      tolerance: tolerance.nm,
      note: note.trim() === '' ? null : note,
    });
    if (refused) setFaults(refused);
    else onClose();
  };
  const told = `The family's where empty: ${toldLength(family.tolerance, units)}`;
  return (
    <FormSheet title={profile.name} doIt="Change" faults={faults} onSubmit={submit} onClose={onClose}>
      <TextField label="Name" value={name} onChange={setName} autoFocus />
      <ChoiceField label="Kind" value={kind} choices={KINDS} onChange={setKind} />
      <TextField label="Shared name, if any" value={section} hint={SHARED} onChange={setSection} />
      <LengthField
        label="Chambers, if known"
        text={chambers.text}
        units={units}
        unit="pins"
        fault={chambers.fault}
        onChange={chambers.set}
      />
      <LengthField
        label="Tolerance, to either side"
        text={tolerance.text}
        units={units}
        fault={tolerance.fault}
        hint={told}
        onChange={tolerance.set}
      />
      <div data-wide="">
        <TextField label="Note" value={note} lines={3} onChange={setNote} />
      </div>
    </FormSheet>
  );
}

interface FormSheetProps extends SheetProps {
  readonly title: string;
  readonly doIt: string;
  readonly faults: readonly FileFault[];
  readonly children: ReactNode;
  onSubmit(): void;
}

/** A sheet with a form: its first field has the focus, Enter does it, Escape closes it without a change. */
export function FormSheet({ title, doIt, faults, children, onSubmit, onClose }: FormSheetProps) {
  const id = useId();
  const form = useRef<HTMLFormElement>(null);
  // What was wrong is told until something is changed; each refusal is a list of its own, also one of the same faults.
  const [answered, setAnswered] = useState<readonly FileFault[] | null>(null);
  const told = faults === answered ? [] : faults;
  useEffect(() => {
    const first = form.current?.querySelector<HTMLInputElement>('[data-first]');
    first?.focus();
    first?.select();
  }, []);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    onSubmit();
  };
  const foot = (
    <>
      <button type="button" className="key" onClick={onClose}>
        Cancel
      </button>
      <button type="submit" form={id} className="key" aria-pressed="true">
        {doIt}
      </button>
    </>
  );
  return (
    <ModalSheet title={title} foot={foot} onClose={onClose}>
      <form
        ref={form}
        id={id}
        className={styles.form}
        onSubmit={submit}
        onChange={() => setAnswered(faults)}
        noValidate
      >
        {children}
        {told.length > 0 && (
          <ul role="alert" className={styles.faults}>
            {told.map(({ path, what, cure }) => (
              <li key={`${path} ${what}`}>
                {sentence(what)} {cure}
              </li>
            ))}
          </ul>
        )}
      </form>
    </ModalSheet>
  );
}

function sentence(what: string): string {
  const words = what.charAt(0).toUpperCase() + what.slice(1);
  return /[.!?]$/.test(words) ? words : `${words}.`;
}
