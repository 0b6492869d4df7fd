import { useId, useState } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { Units } from '../../../../family/length-text.ts';
import { USE_TORQUE } from '../../../../strength/materials.ts';
import { type StrengthRow, strengthHeadline } from '../../../state/plan/strength/strength-rows.ts';
import { isTorque, MOST_TORQUE_NM, setStrength } from '../../../state/plan/strength/strength-state.ts';
import { IN_LB_PER_NM, torqueNumber, torqueText, torqueUnit } from '../../../state/plan/strength/strength-words.ts';
import fields from '../../form-fields.module.css';
import { useSession, useStore } from '../../use-store.ts';
import { MaterialChoice } from './material-choice.tsx';
import styles from './strength-head.module.css';
import { useStrengthSettings } from './use-strength.ts';

/** What holds for all blades: the headline, the material, the torque. */
export function StrengthHead({ family, rows }: { family: Family; rows: readonly StrengthRow[] }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const { materialId, torqueNm } = useStrengthSettings(family);
  return (
    <header className={styles.head}>
      <h1 className={styles.title}>{strengthHeadline(rows, torqueText(torqueNm, units))}</h1>
      <div className={styles.choices}>
        <MaterialChoice id={materialId} onChoose={(id) => setStrength(session, family.name, { materialId: id })} />
        <TorqueField
          key={units}
          units={units}
          torqueNm={torqueNm}
          onChange={(nm) => setStrength(session, family.name, { torqueNm: nm })}
        />
      </div>
    </header>
  );
}

interface TorqueFieldProps {
  readonly units: Units;
  readonly torqueNm: number;
  onChange(nm: number): void;
}

/** The torque that blades are compared with, and a key that brings the figure of the standard back. */
function TorqueField({ units, torqueNm, onChange }: TorqueFieldProps) {
  const id = useId();
  const [text, setText] = useState(torqueNumber(torqueNm, units));
  const [fault, setFault] = useState('');
  const put = (typed: string) => {
    setText(typed);
    const nm = Number(typed.replace(',', '.')) / (units === 'in' ? IN_LB_PER_NM : 1);
    const sound = typed.trim() !== '' && isTorque(nm);
    setFault(sound ? '' : `Give a torque above 0, up to ${torqueText(MOST_TORQUE_NM, units)}.`);
    if (sound) onChange(nm);
  };
  const usual = torqueNm === USE_TORQUE.nm;
  return (
    <div className={fields.field}>
      <label htmlFor={id}>Compared with</label>
      <span className={fields.length}>
        <input
          id={id}
          className={fields.number}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={text}
          aria-invalid={fault !== ''}
          aria-describedby={`${id}-about`}
          onChange={(event) => put(event.target.value)}
        />
        <span>{torqueUnit(units)}</span>
        {!usual && (
          <button type="button" className="key" onClick={() => put(torqueNumber(USE_TORQUE.nm, units))}>
            {torqueText(USE_TORQUE.nm, units)}
          </button>
        )}
      </span>
      <span id={`${id}-about`} className={fault ? fields.fault : fields.hint} role={fault ? 'alert' : undefined}>
        {fault || (usual ? `${USE_TORQUE.standard}, quoted from a summary` : 'your own figure')}
      </span>
    </div>
  );
}
