import { useMemo, useState } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { FileFault } from '../../../../interchange/json/file-fault.ts';
import type { NameFile } from '../../../../interchange/json/schema.ts';
import { sectionsOf } from '../../../../names/register.ts';
import { NAME_KINDS } from '../../../state/names/name-rows.ts';
import { addEntry, changeEntry } from '../../../state/names/register-editing.ts';
import { FormSheet } from '../../draw/section-sheets.tsx';
import { ChoiceField, LengthField, TextField, useTypedNumber } from '../../form-fields.tsx';
import { useSession, useStore } from '../../use-store.ts';

interface EntrySheetProps {
  readonly family: Family;
  /** Place of the entry in the register of the file; null for a new one. */
  readonly index: number | null;
  onClose(): void;
}

const KINDS = NAME_KINDS.map((kind) => [kind, kind] as const);

const NO_NAME: FileFault = { path: 'name', what: 'The name is missing.', cure: 'Type it as it is written.' };
const NOTHING_NAMED: FileFault = {
  path: 'section',
  what: 'Nothing says what the name stands for.',
  cure: 'Pick a section or a profile, or type by which name it is superseded.',
};
const BAD_CHAMBERS: FileFault = {
  path: 'chambers',
  what: 'The number of chambers must be a whole one from 1 to 12.',
  cure: 'Type 5, 6 or 7, or leave it empty.',
};

/** Asks what a name of the register is and what it stands for. */
export function EntrySheet({ family, index, onClose }: EntrySheetProps) {
  const session = useSession();
  const entry = useStore(session.documents, (s) => (index === null ? undefined : s.document?.file.names?.[index]));
  const { next, readable, fields } = useEntryFields(family, entry);
  const [faults, setFaults] = useState<readonly FileFault[]>([]);
  const submit = () => {
    if (!readable) return;
    const wrong = entryFaults(next);
    const take = () => (index === null ? addEntry(session, next) : changeEntry(session, index, next));
    const refused = wrong.length > 0 ? wrong : take();
    setFaults(refused ?? []);
    if (!refused) onClose();
  };
  const title = index === null ? 'Add a name' : `Name “${entry?.text ?? ''}”`;
  const doIt = index === null ? 'Add' : 'Change';
  return (
    <FormSheet title={title} doIt={doIt} faults={faults} onSubmit={submit} onClose={onClose}>
      {fields}
    </FormSheet>
  );
}

/** The fields of the form, and the entry that they come to; `readable` is false where a number is nonsense. */
function useEntryFields(family: Family, entry: NameFile | undefined) {
  const [text, setText] = useState(entry?.text ?? '');
  const [kind, setKind] = useState<NameFile['kind']>(entry?.kind ?? 'blank');
  const [stands, setStands] = useState(() => choiceOf(entry));
  const [scheme, setScheme] = useState(entry?.scheme ?? '');
  const chambers = useTypedNumber(entry?.chambers ?? null);
  const [now, setNow] = useState(entry?.supersededBy ?? '');
  const [note, setNote] = useState(entry?.note ?? '');
  const choices = useMemo(() => standsChoices(family, entry), [family, entry]);
  const schemes = useMemo(() => [...new Set((family.names ?? []).flatMap((one) => one.scheme ?? []))], [family]);
  const next: NameFile = {
    text: text.trim(),
    kind,
    ...named(stands),
    ...(scheme.trim() === '' ? {} : { scheme: scheme.trim() }),
    ...(chambers.value === null ? {} : { chambers: chambers.value }),
    ...(now.trim() === '' ? {} : { supersededBy: now.trim() }),
    ...(note.trim() === '' ? {} : { note }),
  };
  const fields = (
    <>
      <TextField label="Name, as it is written" value={text} onChange={setText} autoFocus />
      <ChoiceField label="What it names" value={kind} choices={KINDS} onChange={setKind} />
      <div data-wide="">
        <ChoiceField label="Stands for" value={stands} choices={choices} onChange={setStands} />
      </div>
      <TextField label="Scheme or list" value={scheme} hint={schemesHint(schemes)} onChange={setScheme} />
      <LengthField
        label="Chambers, if it says a length"
        text={chambers.text}
        units="mm"
        unit="pins"
        fault={chambers.fault && 'Not a number: type 5, 6 or 7.'}
        onChange={chambers.set}
      />
      <TextField label="Superseded by" value={now} hint={NOW_HINT} onChange={setNow} />
      <TextField label="Note" value={note} lines={2} onChange={setNote} />
    </>
  );
  return { next, readable: !chambers.fault, fields };
}

const NOW_HINT = 'The name that is used now, if it is an old one';

function entryFaults({ text, chambers, section, profile, supersededBy }: NameFile): FileFault[] {
  const faults: FileFault[] = [];
  if (text === '') faults.push(NO_NAME);
  if (section === undefined && profile === undefined && supersededBy === undefined) faults.push(NOTHING_NAMED);
  if (chambers !== undefined && !(Number.isInteger(chambers) && chambers >= 1 && chambers <= 12))
    faults.push(BAD_CHAMBERS);
  return faults;
}

function schemesHint(schemes: readonly string[]): string {
  return schemes.length === 0 ? 'Who uses the name, such as a price list' : `In use: ${schemes.slice(0, 4).join(', ')}`;
}

/** A choice of the list "Stands for", as its value: a section, a profile by its id, or nothing. */
function choiceOf(entry: NameFile | undefined): string {
  if (entry?.profile !== undefined) return `profile ${entry.profile}`;
  return entry?.section === undefined ? '' : `section ${entry.section}`;
}

function named(choice: string): Pick<NameFile, 'section' | 'profile'> {
  if (choice.startsWith('section ')) return { section: choice.slice('section '.length) };
  return choice.startsWith('profile ') ? { profile: choice.slice('profile '.length) } : {};
}

/** Every section and profile of the family; also what an entry stands for though the family has it no longer. */
function standsChoices(family: Family, entry: NameFile | undefined): (readonly [string, string])[] {
  const choices: (readonly [string, string])[] = [
    ['', 'nothing itself: an old name, superseded by another'],
    ...sectionsOf(family).map((section) => [`section ${section}`, `${section} section`] as const),
    ...family.profiles.map(({ id, name }) => [`profile ${id}`, name] as const),
  ];
  const own = choiceOf(entry);
  if (!choices.some(([value]) => value === own)) {
    const { section, profile } = named(own);
    choices.push([own, `${section ?? profile}, no longer in the family`]);
  }
  return choices;
}
