import { type ReactNode, useId, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import { HEIGHT_MEASURES, THICKNESS_MEASURES } from '../../state/gauge/gauge-lengths.ts';
import { MOST_TILT_DEG } from '../../state/gauge/gauge-state.ts';
import { usualTilt } from '../../state/gauge/strip-in-hand.ts';
import fields from '../form-fields.module.css';
import { useSession, useStore } from '../use-store.ts';
import { useTyped } from '../use-typed.ts';
import styles from './gauge-bar.module.css';
import { GaugeLengthField } from './gauge-length-field.tsx';
import { useStripHeight } from './use-gauge.ts';

interface GaugeBarProps {
  readonly family: Family;
  readonly withHeight?: boolean;
  readonly withThickness: boolean;
  /** What else is asked on the sheet. */
  readonly children?: ReactNode;
}

/** What is asked: the height of the strip, a thickness, and how far it may tilt. */
export function GaugeBar({ family, withHeight = true, withThickness, children }: GaugeBarProps) {
  const { gauge, settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const thickness = useStore(gauge, (s) => s.thickness);
  const height = useStripHeight(family);
  return (
    <div className={styles.bar}>
      {withHeight && (
        <GaugeLengthField
          label="Strip, height"
          nm={height}
          measure={HEIGHT_MEASURES[units]}
          mayBeEmpty={false}
          onTake={(nm) => gauge.setState({ height: nm })}
        />
      )}
      {withThickness && (
        <GaugeLengthField
          label="thickness"
          nm={thickness}
          measure={THICKNESS_MEASURES[units]}
          mayBeEmpty
          onTake={(nm) => gauge.setState({ thickness: nm })}
        />
      )}
      <TiltKeys family={family} />
      {children}
    </div>
  );
}

const DEGREE = Math.PI / 180;

/** Upright, or tilted up to a limit. */
function TiltKeys({ family }: { family: Family }) {
  const { gauge } = useSession();
  const tilt = useStore(gauge, (s) => s.tiltLimit);
  const [last, setLast] = useState(() => (tilt > 0 ? tilt : usualTilt(family)));
  const put = (limit: number) => {
    setLast(limit);
    gauge.setState({ tiltLimit: limit });
  };
  return (
    <div className={styles.tilt}>
      <fieldset className={`key-row ${styles.keys}`}>
        <legend className="unseen">How the strip stands</legend>
        <button
          type="button"
          className="key"
          aria-pressed={tilt === 0}
          onClick={() => gauge.setState({ tiltLimit: 0 })}
        >
          Upright
        </button>
        <button type="button" className="key" aria-pressed={tilt > 0} onClick={() => put(last)}>
          Tilted
        </button>
      </fieldset>
      {tilt > 0 && <TiltField degrees={tilt / DEGREE} onTake={(degrees) => put(degrees * DEGREE)} />}
    </div>
  );
}

function TiltField({ degrees, onTake }: { degrees: number; onTake(degrees: number): void }) {
  const id = useId();
  const shown = String(Number(degrees.toFixed(3)));
  const [typed, setTyped] = useTyped(shown);
  const [refused, setRefused] = useState(false);
  const text = typed ?? shown;
  const number = Number(text.trim().replace(',', '.').replace(/°$/, ''));
  const sound = text.trim() !== '' && number > 0 && number <= MOST_TILT_DEG;
  const take = () => {
    if (typed === null) return;
    setRefused(!sound);
    if (!sound) return;
    setTyped(null);
    if (number !== degrees) onTake(number);
  };
  return (
    <div className={styles.field}>
      <label htmlFor={id}>up to</label>
      <input
        id={id}
        className={`${fields.number} ${styles.degrees}`}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        value={text}
        aria-invalid={refused && !sound}
        aria-describedby={refused && !sound ? `${id}-fault` : undefined}
        onChange={(event) => {
          setRefused(false);
          setTyped(event.target.value);
        }}
        onBlur={take}
        onKeyDown={({ key }) => {
          if (key === 'Enter') take();
          if (key === 'Escape') setTyped(null);
        }}
      />
      <span>°</span>
      {refused && !sound && (
        <span id={`${id}-fault`} role="alert" className={`${fields.fault} ${styles.fault}`}>
          Type degrees above 0, up to {MOST_TILT_DEG}.
        </span>
      )}
    </div>
  );
}
