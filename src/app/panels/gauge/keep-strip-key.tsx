import { useState } from 'react';
import type { Family } from '../../../family/family.ts';
import type { FileFault } from '../../../interchange/json/file-fault.ts';
import { keepStrip, roundStrip, stripName, thicknessHint } from '../../state/gauge/keep-strip.ts';
import { FormSheet } from '../draw/section-sheets.tsx';
import { LengthField, TextField, useFollowingLength, useTypedLength } from '../form-fields.tsx';
import { useSession, useStore } from '../use-store.ts';
import { useGauge } from './use-gauge.ts';

interface KeepStripProps {
  readonly family: Family;
  /** Nanometres; null where none is known. */
  readonly height: number | null;
  readonly thickness: number | null;
  /** The thickest strip that enters what it is for, taken where no thickness is in hand; nanometres. */
  readonly most: number | null;
}

/** Keeps the strip that the sheet Thickness has in hand. */
export function KeepStripInHand({ family }: { family: Family }) {
  const { height, thickness, most } = useGauge(family);
  return <KeepStripKey family={family} height={height} thickness={thickness} most={most} />;
}

/** Makes a strip a tool of the family, once it has a name. */
export function KeepStripKey(props: KeepStripProps) {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <button
        type="button"
        className="key"
        title="Adds a straight tool of this height and thickness to the family"
        onClick={() => setOpen(true)}
      >
        Keep as a tool…
      </button>
      {isOpen && <KeepStripSheet {...props} onClose={() => setOpen(false)} />}
    </>
  );
}

function KeepStripSheet({ family, most, onClose, ...strip }: KeepStripProps & { onClose(): void }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const thickest = roundStrip(most, units);
  // While the curves are being found the thickest is not known; the field shows it once it is.
  const thickness = useFollowingLength(strip.thickness ?? thickest, units);
  const height = useTypedLength(strip.height, units);
  const sizes = { thickness: thickness.nm, height: height.nm };
  const usual = stripName(family.profiles, sizes, units);
  const [typed, setTyped] = useState<string | null>(null);
  const [faults, setFaults] = useState<readonly FileFault[]>([]);
  const name = typed ?? usual;
  const submit = () => {
    if (thickness.fault || height.fault) return;
    const wrong = faultsOf(name, thickness.nm, height.nm);
    if (wrong.length > 0 || thickness.nm === null || height.nm === null) {
      setFaults(wrong);
      return;
    }
    const refused = keepStrip(session, name.trim(), { thickness: thickness.nm, height: height.nm });
    if (refused) setFaults(refused);
    else onClose();
  };
  return (
    <FormSheet title="Keep a strip as a tool" doIt="Keep it" faults={faults} onSubmit={submit} onClose={onClose}>
      <TextField label="Name" value={name} onChange={setTyped} autoFocus />
      <LengthField label="Height" text={height.text} units={units} fault={height.fault} onChange={height.set} />
      <LengthField
        label="Thickness"
        text={thickness.text}
        units={units}
        fault={thickness.fault}
        hint={thicknessHint(sizes, { height: strip.height, thickest })}
        onChange={thickness.set}
      />
    </FormSheet>
  );
}

/** What is still missing before a strip can be kept. */
function faultsOf(name: string, thickness: number | null, height: number | null): FileFault[] {
  const size = (path: string, nm: number | null) =>
    nm !== null && nm > 0 ? [] : [{ path, what: `The ${path} must be more than 0.`, cure: 'Type a length.' }];
  const called =
    name.trim() === '' ? [{ path: 'name', what: 'The name is missing.', cure: 'Type what people call it.' }] : [];
  return [...called, ...size('height', height), ...size('thickness', thickness)];
}
