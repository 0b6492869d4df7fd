import { useDeferredValue, useId, useMemo, useState } from 'react';
import type { MisleadingName, Rename } from '../../../../names/misleading-name.ts';
import { askQuestion } from '../../../state/names/asking.ts';
import { nameOf, type RenameGround, schemeOf, troubleWith } from '../../../state/names/check-rename.ts';
import { whatIs } from '../../../state/names/question-forms.ts';
import { rename } from '../../../state/names/register-editing.ts';
import { useSession } from '../../use-store.ts';
import styles from './misleading-finding.module.css';

interface MisleadingFindingProps {
  readonly finding: MisleadingName;
  readonly ground: RenameGround;
}

/** One finding: the names, what is wrong and why it matters, and what to call the things instead. */
export function MisleadingFinding({ finding, ground }: MisleadingFindingProps) {
  const session = useSession();
  const { texts, words, why, renames } = finding;
  return (
    <li className={styles.finding}>
      <p className={styles.names}>
        {texts.map((text) => (
          <button
            key={text}
            type="button"
            className={styles.name}
            title={`Ask what ${text} is`}
            onClick={() => askQuestion(session, whatIs(text))}
          >
            {text}
          </button>
        ))}
      </p>
      <p className={styles.words}>{words}</p>
      <p className={styles.why}>{why}</p>
      {renames.length > 0 ? (
        <RenameForm key={JSON.stringify(renames)} suggested={renames} ground={ground} />
      ) : (
        <p className={styles.why}>No better name can be suggested: rename one of them in the register.</p>
      )}
    </li>
  );
}

interface RenameFormProps {
  readonly suggested: readonly Rename[];
  readonly ground: RenameGround;
}

/** The suggested names, which may be edited or left out, and the key that takes them. */
function RenameForm({ suggested, ground }: RenameFormProps) {
  const session = useSession();
  const id = useId();
  const [typed, setTyped] = useState(() => suggested.map(({ to }) => to));
  const [left, setLeft] = useState<ReadonlySet<number>>(new Set());
  const wanted = useMemo(
    () => suggested.map(({ target }, i) => ({ target, to: typed[i].trim() })).filter((_, i) => !left.has(i)),
    [suggested, typed, left],
  );
  const asSuggested = left.size === 0 && suggested.every(({ to }, i) => typed[i] === to);
  // Typing goes on while a long register is looked through.
  const looked = useDeferredValue(wanted);
  const trouble = useMemo(
    () => (looked.length === 0 ? 'Tick a name.' : troubleWith(ground, looked, asSuggested)),
    [ground, looked, asSuggested],
  );
  const { family } = ground.knowledge;
  const submit = () => {
    const words = wanted.map(({ target, to }) => `“${nameOf(family, target)}” is called “${to}” now`).join(', ');
    if (wanted.length > 0 && wanted.every(({ to }) => to !== '')) rename(session, wanted, `${words}.`);
  };
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <ul className={styles.renames}>
        {suggested.map(({ target }, i) => (
          <RenameRow
            key={JSON.stringify(target)}
            old={nameOf(family, target)}
            where={schemeOf(family, target)}
            to={typed[i]}
            ticked={suggested.length > 1 ? !left.has(i) : null}
            troubleId={`${id}-trouble`}
            onTick={(ticked) => setLeft(withTick(left, i, ticked))}
            onType={(to) => setTyped(typed.with(i, to))}
          />
        ))}
      </ul>
      <button type="submit" className="key" aria-pressed={trouble === ''} disabled={wanted.some(({ to }) => to === '')}>
        {trouble === '' ? 'Rename' : 'Rename anyway'}
      </button>
      <p id={`${id}-trouble`} role="status" className={styles.trouble}>
        {trouble}
      </p>
    </form>
  );
}

interface RenameRowProps {
  readonly old: string;
  /** The list that it stands in, where another list has the same name. */
  readonly where: string;
  readonly to: string;
  /** Null where there is nothing to choose between. */
  readonly ticked: boolean | null;
  /** Where it is told what speaks against the names. */
  readonly troubleId: string;
  onTick(ticked: boolean): void;
  onType(to: string): void;
}

function RenameRow({ old, where, to, ticked, troubleId, onTick, onType }: RenameRowProps) {
  return (
    <li>
      {ticked !== null && (
        <input
          type="checkbox"
          aria-label={`Rename ${old}`}
          checked={ticked}
          onChange={(event) => onTick(event.target.checked)}
        />
      )}
      <span className={styles.old}>
        {old}
        {where && <span className={styles.where}> in “{where}”</span>}
      </span>
      <span aria-hidden="true">→</span>
      <input
        type="text"
        className={styles.to}
        aria-label={`New name for ${old}`}
        aria-describedby={troubleId}
        maxLength={200}
        value={to}
        disabled={ticked === false}
        onChange={(event) => onType(event.target.value)}
      />
    </li>
  );
}

function withTick(left: ReadonlySet<number>, place: number, ticked: boolean): Set<number> {
  const next = new Set(left);
  if (ticked) next.delete(place);
  else next.add(place);
  return next;
}
