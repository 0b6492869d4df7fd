import { useId, useState } from 'react';
import type { Plan } from '../../../family/plan.ts';
import { changePlan, MOST_RESERVE } from '../../state/plan/sections-choices.ts';
import { MOST_SECONDS } from '../../state/plan/sections-planning.ts';
import { sectionsLookOf } from '../../state/plan/sections-state.ts';
import { useSession, useStore } from '../use-store.ts';
import { ImproveKey } from './sections-head.tsx';
import styles from './sections-options.module.css';

const STOPS = [
  [1, '1 ward'],
  [2, '2 wards'],
  [3, '3 wards'],
] as const;

const DEPTHS = [
  [1, '1'],
  [2, '2'],
  [3, '3'],
  [4, '4'],
] as const;

/** What the wards must be like, and how long a search for less may take. */
export function SectionsOptions({ plan }: { plan: Plan }) {
  const session = useSession();
  const look = sectionsLookOf(session);
  const seconds = useStore(look, (s) => s.seconds);
  return (
    <fieldset className={`bare ${styles.options}`}>
      <legend className="unseen">What the wards must be like</legend>
      <Choice
        label="Stopped by"
        title="By how many wards, each enough by itself, a blank is stopped where it must not go in"
        value={plan.stops}
        choices={STOPS}
        onChange={(stops) => changePlan(session, { options: { stops } })}
      />
      <Choice
        label="Depths"
        title="How many depths a ward may have at one site; 1: it is there or not"
        value={plan.depths}
        choices={DEPTHS}
        onChange={(depths) => changePlan(session, { options: { depths } })}
      />
      <WholeNumber
        label="Reserve"
        title="Sections still to come that room is kept for"
        value={plan.reserve}
        least={0}
        most={MOST_RESERVE}
        onChange={(reserve) => changePlan(session, { options: { reserve } })}
      />
      <ImproveKey />
      <WholeNumber
        label="for"
        unit="s"
        title="How long Improve may look for fewer sites and less milling"
        value={seconds}
        least={1}
        most={MOST_SECONDS}
        onChange={(next) => look.setState({ seconds: next })}
      />
    </fieldset>
  );
}

interface ChoiceProps {
  readonly label: string;
  readonly title: string;
  readonly value: number;
  readonly choices: readonly (readonly [number, string])[];
  onChange(value: number): void;
}

function Choice({ label, title, value, choices, onChange }: ChoiceProps) {
  const id = useId();
  return (
    <span className={styles.option} title={title}>
      <label htmlFor={id}>{label}</label>
      <select id={id} className={styles.field} value={value} onChange={(event) => onChange(Number(event.target.value))}>
        {choices.map(([number, words]) => (
          <option key={number} value={number}>
            {words}
          </option>
        ))}
      </select>
    </span>
  );
}

interface WholeNumberProps {
  readonly label: string;
  readonly unit?: string;
  readonly title: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  onChange(value: number): void;
}

/** A whole number: taken when the field is left, by Enter, or by the arrows; what is none stays to be mended. */
function WholeNumber({ label, unit, title, value, least, most, onChange }: WholeNumberProps) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const number = typed === null ? value : Number(typed);
  const sound =
    typed === null || (typed.trim() !== '' && Number.isInteger(number) && number >= least && number <= most);
  const take = () => {
    if (!sound) return;
    if (number !== value) onChange(number);
    setTyped(null);
  };
  return (
    <span className={styles.option} title={title}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className={`${styles.field} ${styles.number}`}
        type="text"
        inputMode="numeric"
        autoComplete="off"
        value={typed ?? String(value)}
        aria-invalid={!sound}
        aria-describedby={sound ? undefined : `${id}-fault`}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          const step = { ArrowUp: 1, ArrowDown: -1 }[event.key] ?? 0;
          if (event.key === 'Enter') take();
          if (event.key === 'Escape') setTyped(null);
          if (step === 0 || !sound) return;
          event.preventDefault();
          setTyped(null);
          onChange(Math.min(most, Math.max(least, number + step)));
        }}
      />
      {unit && <span>{unit}</span>}
      {!sound && (
        <span id={`${id}-fault`} role="alert" className={styles.fault}>
          a whole number from {least} to {most}
        </span>
      )}
    </span>
  );
}
