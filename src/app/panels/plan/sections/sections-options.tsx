import { useId } from 'react';
import { MOST_RESERVE, type Plan } from '../../../../family/plan.ts';
import { changePlan } from '../../../state/plan/sections/sections-choices.ts';
import { MOST_SECONDS } from '../../../state/plan/sections/sections-planning.ts';
import { sectionsLookOf } from '../../../state/plan/sections/sections-state.ts';
import { WholeNumberField } from '../../form-fields.tsx';
import { useSession, useStore } from '../../use-store.ts';
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
      <WholeNumberField
        inline
        label="Reserve"
        title="Sections still to come that room is kept for"
        value={plan.reserve}
        least={0}
        most={MOST_RESERVE}
        onChange={(reserve) => changePlan(session, { options: { reserve } })}
      />
      <ImproveKey />
      <WholeNumberField
        inline
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
