import { useState } from 'react';
import type { Family, FileUnits } from '../../../family/family.ts';
import type { FileFault } from '../../../interchange/json/file-fault.ts';
import { changeFamilyFields, newFamily, newPlan, noteOf } from '../../state/draw/section-editing.ts';
import { mayReplace } from '../exchange/may-replace.ts';
import {
  ChoiceField,
  LengthField,
  TextField,
  type TypedField,
  useTypedLength,
  useTypedNumber,
} from '../form-fields.tsx';
import { useSession, useStore } from '../use-store.ts';
import { FormSheet } from './section-sheets.tsx';

const UNITS = [
  ['mm', 'millimetres'],
  ['in', 'inches'],
] as const satisfies readonly (readonly [FileUnits, string])[];

const NO_NAME: FileFault = { path: 'name', what: 'The name is missing.', cure: 'Type what people call the family.' };
const NO_CLEARANCE: FileFault = {
  path: 'runningClearance',
  what: 'The running clearance is missing or below 0.',
  cure: 'Type the gap under which a fit is tight, such as 0.03 mm.',
};

/** What a family cannot be without; what is no length at all is told beside its field. */
function missing(name: string, { nm, fault }: TypedField): FileFault[] {
  const noClearance = fault === undefined && (nm === null || nm < 0);
  return [...(name.trim() === '' ? [NO_NAME] : []), ...(noClearance ? [NO_CLEARANCE] : [])];
}

/** Running clearance that a new family begins with, nanometres: 0.03 mm, 0.0012 in. */
const FIRST_CLEARANCE = { mm: 30_000, in: 30_480 } as const;

const STARTS = [
  ['sections', 'one plain blank and its keyway'],
  ['plan', 'a plan: no section yet'],
] as const;

/** Asks what a new family is called, and whether it begins with a plain blank and its keyway or with a plan. */
export function NewFamilySheet({ onClose }: { onClose(): void }) {
  const session = useSession();
  const shown = useStore(session.settings, (s) => s.units);
  const [name, setName] = useState('');
  const [start, setStart] = useState<'sections' | 'plan'>('sections');
  const [units, setUnits] = useState<FileUnits>(shown);
  const clearance = useTypedLength(FIRST_CLEARANCE[shown], shown);
  const [faults, setFaults] = useState<readonly FileFault[]>([]);
  const submit = () => {
    const wrong = missing(name, clearance);
    setFaults(wrong);
    if (wrong.length > 0 || clearance.fault || !mayReplace(session)) return;
    const begin = start === 'plan' ? newPlan : newFamily;
    if (begin(session, name.trim(), units, clearance.nm ?? 0)) {
      session.selection.setState({ view: start === 'plan' ? 'plan' : 'draw' });
      session.settings.setState({ units });
    }
    onClose();
  };
  return (
    <FormSheet title="New family" doIt="Begin family" faults={faults} onSubmit={submit} onClose={onClose}>
      <TextField label="Name" value={name} onChange={setName} autoFocus />
      <ChoiceField label="Begins with" value={start} choices={STARTS} onChange={setStart} />
      <ChoiceField label="Units of its file" value={units} choices={UNITS} onChange={setUnits} />
      <ClearanceField clearance={clearance} units={shown} />
    </FormSheet>
  );
}

/** What is said of the open family apart from its sections. */
export function FamilySheet({ family, onClose }: { family: Family; onClose(): void }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const file = useStore(session.documents, (s) => s.document?.file);
  const [name, setName] = useState(family.name);
  const clearance = useTypedLength(family.runningClearance, units);
  const tolerance = useTypedLength(file?.tolerance === undefined ? null : family.tolerance, units);
  const tilt = useTypedNumber(file?.tiltLimitDeg ?? null);
  const [note, setNote] = useState(() => noteOf(session));
  const [faults, setFaults] = useState<readonly FileFault[]>([]);
  const submit = () => {
    if (clearance.fault || tolerance.fault || tilt.fault) return;
    const wrong = missing(name, clearance);
    const refused =
      wrong.length > 0
        ? wrong
        : changeFamilyFields(session, {
            name: name.trim(),
            runningClearance: clearance.nm ?? 0,
            tolerance: tolerance.nm,
            tiltLimitDeg: tilt.value,
            note: note.trim() === '' ? null : note,
          });
    setFaults(refused ?? []);
    if (!refused) onClose();
  };
  return (
    <FormSheet title="The family" doIt="Change" faults={faults} onSubmit={submit} onClose={onClose}>
      <div data-wide="">
        <TextField label="Name" value={name} onChange={setName} autoFocus />
      </div>
      <ClearanceField clearance={clearance} units={units} />
      <LengthField
        label="Tolerance, to either side"
        text={tolerance.text}
        units={units}
        fault={tolerance.fault}
        hint="Of every section that states none"
        onChange={tolerance.set}
      />
      <LengthField
        label="Tilt limit, either way"
        text={tilt.text}
        units={units}
        unit="°"
        fault={tilt.fault}
        hint="2° where empty"
        onChange={tilt.set}
      />
      <div data-wide="">
        <TextField label="Note" value={note} lines={3} onChange={setNote} />
      </div>
    </FormSheet>
  );
}

function ClearanceField({ clearance, units }: { clearance: TypedField; units: FileUnits }) {
  return (
    <LengthField
      label="Running clearance"
      text={clearance.text}
      units={units}
      fault={clearance.fault}
      hint="A fit with less all round is tight"
      onChange={clearance.set}
    />
  );
}
