import { useMemo, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import type { Profile } from '../../../profile/profile.ts';
import { counterpartOf, freshName, makeCounterpart } from '../../state/draw/made-section.ts';
import { lengthText } from '../../state/draw/mill-words.ts';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import styles from './mill-panel.module.css';
import { LengthField } from './mill-size-field.tsx';

/** Makes the keyway of a blank, or the blank of a keyway, by a clearance that is asked for. */
export function CounterpartKey({ family, profile }: { family: Family; profile: Profile }) {
  const [open, setOpen] = useState(false);
  const what = profile.kind === 'opening' ? 'blank of this keyway' : `keyway of this ${profile.kind}`;
  return (
    <section className={readings.part} aria-label={`Make the ${what}`}>
      <button type="button" className="key" aria-expanded={open} onClick={() => setOpen(!open)}>
        Make the {what}…
      </button>
      {open && <CounterpartForm family={family} profile={profile} onDone={() => setOpen(false)} />}
    </section>
  );
}

interface CounterpartFormProps {
  readonly family: Family;
  readonly profile: Profile;
  onDone(): void;
}

/** A clearance that leaves nothing to run in, nanometres, is no clearance. */
const LEAST_CLEARANCE = 1_000;

function CounterpartForm({ family, profile, onDone }: CounterpartFormProps) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const [clearance, setClearance] = useState(Math.max(LEAST_CLEARANCE, family.runningClearance));
  const [refusal, setRefusal] = useState('');
  const result = useMemo(() => counterpartOf(profile, clearance), [profile, clearance]);
  const take = (nm: number) => {
    setRefusal(nm < LEAST_CLEARANCE ? `Give a clearance of at least ${lengthText(LEAST_CLEARANCE, units)}.` : '');
    if (nm >= LEAST_CLEARANCE) setClearance(nm);
  };
  const make = () => {
    const words = makeCounterpart(session, profile, clearance);
    if (words === null) onDone();
    else setRefusal(words);
  };
  return (
    <>
      <div className={styles.sizes} data-units={units}>
        <LengthField
          name="Clearance"
          label="Clearance all round"
          value={clearance}
          units={units}
          fault={refusal}
          onTake={take}
        />
      </div>
      <p className={styles.soft}>
        {result.ok
          ? `Adds “${freshName(family.profiles, result.made.name)}” with this gap all round. ${result.made.told.join(' ')}`
          : `Cannot be made: ${result.what}. ${result.cure}`}
      </p>
      <button type="button" className="key" disabled={!result.ok} onClick={make}>
        {profile.kind === 'opening' ? 'Add the blank' : 'Add the keyway'}
      </button>
    </>
  );
}
