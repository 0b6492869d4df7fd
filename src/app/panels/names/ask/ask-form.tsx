import { useEffect, useId, useMemo, useState } from 'react';
import { entrantsOf, type Family, openingsOf } from '../../../../family/family.ts';
import type { Role } from '../../../../names/resolve.ts';
import { askQuestion } from '../../../state/names/asking.ts';
import {
  formTitle,
  type NameGroup,
  namesFor,
  QUESTION_FORMS,
  type QuestionForm,
  standsForProfile,
} from '../../../state/names/question-forms.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './ask-form.module.css';

/** The name picked for each gap of a form, by the form's place. */
type Picks = readonly (readonly string[])[];

const KIND_LABELS = {
  keyway: 'Keyways',
  section: 'Sections',
  blank: 'Blanks',
  tool: 'Tools',
  series: 'Series',
} as const;

const PART_LABELS = { entrant: 'blank or tool', opening: 'keyway', any: 'name' } as const;

/** A question put together from lists: a form, and a name for each gap in it. Each pick asks at once. */
export function AskForm({ family }: { family: Family }) {
  const session = useSession();
  const id = useId();
  const [place, setPlace] = useState(0);
  const [picks, setPicks] = usePicks(family);
  const form = QUESTION_FORMS[place];
  const { words, slots } = form;
  const groups = useMemo(() => form.slots.map((slot) => namesFor(family, slot)), [family, form]);
  const ready = slots.every((_, i) => picks[place][i] !== undefined);
  const pick = (gap: number, name: string) => {
    const names = slots.map((_, i) => (i === gap ? name : picks[place][i]));
    setPicks(picks.with(place, names));
    askQuestion(session, form.question(names));
  };
  return (
    <form
      className={styles.form}
      aria-label="The question put together from lists"
      onSubmit={(event) => {
        event.preventDefault();
        askQuestion(session, form.question(picks[place]));
      }}
    >
      <label htmlFor={`${id}-form`} className={styles.lead}>
        Or pick
      </label>
      <select
        id={`${id}-form`}
        className={styles.select}
        value={place}
        onChange={({ target }) => setPlace(Number(target.value))}
      >
        {QUESTION_FORMS.map((one, i) => (
          <option key={one.label} value={i}>
            {formTitle(one)}
          </option>
        ))}
      </select>
      {slots.map((slot, i) => (
        <span key={`${words[i]} ${slot}`} className={styles.gap}>
          <span aria-hidden="true">{words[i]}</span>
          <NamePick
            label={`${words[i]}: ${PART_LABELS[slot ?? 'any']}`}
            value={picks[place][i] ?? ''}
            groups={groups[i]}
            onPick={(name) => pick(i, name)}
          />
        </span>
      ))}
      <button type="submit" className="key" disabled={!ready}>
        Ask this
      </button>
    </form>
  );
}

interface NamePickProps {
  readonly label: string;
  readonly value: string;
  readonly groups: readonly NameGroup[];
  onPick(name: string): void;
}

function NamePick({ label, value, groups, onPick }: NamePickProps) {
  return (
    <select
      className={styles.select}
      aria-label={label}
      value={value}
      disabled={groups.length === 0}
      onChange={(event) => onPick(event.target.value)}
    >
      {groups.map(({ kind, names }) => (
        <optgroup key={kind} label={KIND_LABELS[kind]}>
          {names.map((name) => (
            <option key={name}>{name}</option>
          ))}
        </optgroup>
      ))}
    </select>
  );
}

/** The names picked for each form: to begin with, and after a pick elsewhere, those of the picked blank and keyway. */
function usePicks(family: Family): [Picks, (picks: Picks) => void] {
  const { selection } = useSession();
  const entrantId = useStore(selection, (s) => s.entrantId);
  const openingId = useStore(selection, (s) => s.openingId);
  const [picks, setPicks] = useState<Picks>(() => QUESTION_FORMS.map(() => []));
  useEffect(() => {
    setPicks((before) => QUESTION_FORMS.map((form, i) => followed(form, before[i], { family, entrantId, openingId })));
  }, [family, entrantId, openingId]);
  return [picks, setPicks];
}

interface Picked {
  readonly family: Family;
  readonly entrantId: string | null;
  readonly openingId: string | null;
}

/**
 * Keeps each name that still stands for something; the first of a part is the picked one's, a second one of the same part
 * is another.
 */
function followed({ slots }: QuestionForm, names: readonly string[], picked: Picked): string[] {
  const taken: string[] = [];
  for (const [i, slot] of slots.entries()) {
    const isFirst = slots.indexOf(slot) === i;
    const name = isFirst ? firstName(slot, names[i], picked) : otherName(slot, names[i], picked.family, taken);
    if (name === undefined) return [];
    taken.push(name);
  }
  return taken;
}

function firstName(slot: Role | null, name: string | undefined, picked: Picked): string | undefined {
  const { family, entrantId, openingId } = picked;
  if (slot === null) return isKnown(family, name) ? name : family.profiles.find(({ id }) => id === entrantId)?.name;
  const id = slot === 'entrant' ? entrantId : openingId;
  if (name !== undefined && id !== null && standsForProfile(family, name, id)) return name;
  return family.profiles.find((profile) => profile.id === id)?.name;
}

function otherName(slot: Role | null, name: string | undefined, family: Family, taken: readonly string[]) {
  if (isKnown(family, name)) return name;
  const pool = slot === 'opening' ? openingsOf(family) : entrantsOf(family);
  return pool.find((profile) => !taken.includes(profile.name))?.name;
}

function isKnown(family: Family, name: string | undefined): boolean {
  return name !== undefined && family.profiles.some(({ id }) => standsForProfile(family, name, id));
}
