import type { ReactNode } from 'react';
import styles from './conditions.module.css';
import { NumberField } from './conditions-number.tsx';

interface SliderProps {
  /** The short name that stands beside it. */
  readonly name: string;
  /** The whole name, for those who hear it. */
  readonly label: string;
  /** In the unit shown. */
  readonly value: number;
  readonly unit: string;
  readonly decimals: number;
  /** Most signs that the field shows. */
  readonly room?: number;
  readonly step: number;
  /** Where the slider ends; the field takes more, up to `most`. */
  readonly end: number;
  readonly most: number;
  /** Where the value may be taken from; stands beside the name. */
  readonly children?: ReactNode;
  onChange(value: number): void;
}

/** A number to be felt with a slider or typed exactly; both are the same value. */
export function Slider({ name, label, value, unit, decimals, room, step, end, most, children, onChange }: SliderProps) {
  const top = Math.max(end, value);
  return (
    <div className={styles.setting}>
      <div className={styles.top}>
        <span className={styles.name}>{name}</span>
        {children}
      </div>
      <div className={styles.line}>
        <input
          className={styles.slider}
          type="range"
          aria-label={label}
          aria-valuetext={`${Number(value.toFixed(decimals))} ${unit}`}
          min={0}
          max={top}
          step="any"
          value={value}
          onChange={(event) => onChange(rounded(event.target.valueAsNumber, step, top))}
          onKeyDown={(event) => {
            const next = afterKey(event.key, value, step, end);
            if (next === null) return;
            event.preventDefault();
            onChange(Math.min(most, rounded(next, step, Math.max(end, next))));
          }}
        />
        <NumberField
          label={label}
          value={value}
          unit={unit}
          decimals={decimals}
          room={room}
          least={0}
          most={most}
          step={step}
          onChange={onChange}
        />
      </div>
    </div>
  );
}

/** Keys of a slider as the browsers have them, in whole steps. */
const KEY_STEPS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
};

function afterKey(key: string, value: number, step: number, end: number): number | null {
  if (key === 'Home') return 0;
  if (key === 'End') return end;
  return Object.hasOwn(KEY_STEPS, key) ? value + KEY_STEPS[key] * step : null;
}

function rounded(value: number, step: number, top: number): number {
  const whole = Math.round(value / step) * step;
  return Math.max(0, Math.min(top, Number(whole.toFixed(9))));
}
