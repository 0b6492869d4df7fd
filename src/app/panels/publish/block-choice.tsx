import { useId } from 'react';
import type { Profile } from '../../../profile/profile.ts';
import { TickField } from '../form-fields.tsx';
import styles from './block-settings-form.module.css';

interface BlockChoiceProps {
  readonly title: string;
  readonly profiles: readonly Profile[];
  readonly chosen: readonly string[];
  onChoose(ids: readonly string[]): void;
}

/** Which sections of one kind are in the set. */
export function BlockChoice({ title, profiles, chosen, onChoose }: BlockChoiceProps) {
  const id = useId();
  const toggle = (one: string, is: boolean) =>
    onChoose(profiles.map((profile) => profile.id).filter((other) => (other === one ? is : chosen.includes(other))));
  return (
    <section className={styles.choice} aria-labelledby={id}>
      <div className={styles.choiceHead}>
        <h3 id={id}>
          {title}: {chosen.length} of {profiles.length}
        </h3>
        <span className="key-row">
          <button type="button" className="key" onClick={() => onChoose(profiles.map((profile) => profile.id))}>
            All<span className="unseen"> {title}</span>
          </button>
          <button type="button" className="key" onClick={() => onChoose([])}>
            None<span className="unseen"> of {title}</span>
          </button>
        </span>
      </div>
      <div className={styles.ticks}>
        {profiles.map((profile) => (
          <TickField
            key={profile.id}
            label={profile.name}
            value={chosen.includes(profile.id)}
            onChange={(is) => toggle(profile.id, is)}
          />
        ))}
      </div>
    </section>
  );
}
