import { entrantsOf, type Family, openingsOf } from '../../../family/family.ts';
import type { LessonStep } from '../../../family/lesson.ts';
import type { Profile } from '../../../profile/profile.ts';
import { stepFaults } from '../../../teach/check-lesson.ts';
import { plainWords } from '../../../teach/lesson-words.ts';
import { changeStepNow, type StepChange, typeIntoStep } from '../../state/teach/lesson-editing.ts';
import { ChoiceField, TickField } from '../form-fields.tsx';
import { useSession } from '../use-store.ts';
import { DraftField } from './draft-field.tsx';
import { SHOW_WORDS, SHOWS } from './show-words.ts';
import styles from './step-form.module.css';
import { useTeaching } from './use-teaching.ts';

interface StepFormProps {
  readonly family: Family;
  readonly step: LessonStep;
  /** Its number, from 0. */
  readonly at: number;
}

/** All that a step says and shows. */
export function StepForm({ family, step, at }: StepFormProps) {
  const session = useSession();
  const knowledge = useTeaching(family);
  const faults = stepFaults(family, step);
  const change = (changes: StepChange) => changeStepNow(session, at, changes);
  const plain = plainWords(step, knowledge);
  return (
    <div className={styles.form} data-step-form="">
      <DraftField
        label="Title"
        value={step.title}
        lines={2}
        take={(text) => typeIntoStep(session, at, { title: text })}
        needed="A step needs a title."
      />
      <DraftField
        label="Words"
        value={step.words ?? ''}
        lines={5}
        hint={step.words || plain === '' ? undefined : `Without words of its own it says: ${plain}`}
        take={(text) => typeIntoStep(session, at, { words: text === '' ? undefined : text })}
      />
      <ChoiceField
        label="Shows"
        value={step.show}
        choices={SHOWS.map((show) => [show, SHOW_WORDS[show].label] as const)}
        onChange={(show) => change({ show })}
      />
      <p className={styles.hint}>{capital(SHOW_WORDS[step.show].hint)}.</p>
      <ShownFields family={family} step={step} change={change} />
      {faults.map(({ field, words }) => (
        <p key={field} role="alert" className={styles.fault}>
          {words}
        </p>
      ))}
    </div>
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

interface ShownFieldsProps {
  readonly family: Family;
  readonly step: LessonStep;
  change(change: StepChange): void;
}

/** What a step of its kind shows. */
function ShownFields({ family, step, change }: ShownFieldsProps) {
  const pair = step.show === 'pair' || step.show === 'question';
  const several = step.show === 'wall' || step.show === 'passage';
  return (
    <>
      {(pair || step.show === 'wall' || step.show === 'tiers') && (
        <PickField
          label={step.show === 'tiers' ? 'Up to the blank' : 'Blank or tool'}
          none={step.show === 'tiers' ? 'all of them' : 'none picked'}
          id={step.blank}
          profiles={entrantsOf(family)}
          onPick={(blank) => change({ blank })}
        />
      )}
      {pair && (
        <PickField
          label="Keyway"
          none="none picked"
          id={step.opening}
          profiles={openingsOf(family)}
          onPick={(opening) => change({ opening })}
        />
      )}
      {several && <KeywaysField family={family} step={step} onChange={(openings) => change({ openings })} />}
      {step.show === 'pair' && (
        <TickField
          label="Push it in from the front"
          value={step.push === true}
          onChange={(push) => change({ push: push || undefined })}
        />
      )}
    </>
  );
}

interface PickFieldProps {
  readonly label: string;
  readonly none: string;
  readonly id: string | undefined;
  readonly profiles: readonly Profile[];
  onPick(id: string | undefined): void;
}

/** One profile out of a list; an id that is gone stands in it as that. */
function PickField({ label, none, id, profiles, onPick }: PickFieldProps) {
  const known = profiles.some((profile) => profile.id === id);
  const gone: [string, string][] = id !== undefined && !known ? [[id, `${id} (no longer there)`]] : [];
  const choices = [['', none] as const, ...gone, ...profiles.map((p) => [p.id, p.name] as const)];
  return (
    <ChoiceField label={label} value={id ?? ''} choices={choices} onChange={(next) => onPick(next || undefined)} />
  );
}

interface KeywaysFieldProps {
  readonly family: Family;
  readonly step: LessonStep;
  onChange(openings: readonly string[] | undefined): void;
}

/** All keyways, or some of them. */
function KeywaysField({ family, step, onChange }: KeywaysFieldProps) {
  const openings = openingsOf(family);
  const chosen = new Set(step.openings ?? openings.map(({ id }) => id));
  const tick = (id: string, on: boolean) => {
    const next = openings.filter((o) => (o.id === id ? on : chosen.has(o.id))).map((o) => o.id);
    onChange(next);
  };
  return (
    <fieldset className={styles.keyways}>
      <legend>Keyways</legend>
      <TickField
        label={`all ${openings.length}`}
        value={step.openings === undefined}
        onChange={(all) => onChange(all ? undefined : openings.map(({ id }) => id))}
      />
      {step.openings !== undefined && (
        <div className={styles.ticks}>
          {openings.map(({ id, section, name }) => (
            <TickField key={id} label={section ?? name} value={chosen.has(id)} onChange={(on) => tick(id, on)} />
          ))}
        </div>
      )}
    </fieldset>
  );
}
