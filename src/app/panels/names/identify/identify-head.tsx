import { sizeText } from '../../../../family/length-text.ts';
import type { Among } from '../../../../identify/identify.ts';
import { outlineBox } from '../../../../profile/outline-box.ts';
import type { UnknownOutline } from '../../../state/names/identify-state.ts';
import { SOURCE_WORDS } from '../../../state/names/identify-words.ts';
import { changeQuestion, dropUnknown } from '../../../state/names/identifying.ts';
import { readLength } from '../../../tools/draw/typed-length.ts';
import { ChoiceField, LengthField, TickField, useTypedLength } from '../../form-fields.tsx';
import { useSession, useStore } from '../../use-store.ts';
import styles from './identify-head.module.css';

const AMONG: readonly (readonly [Among, string])[] = [
  ['entrants', 'blanks and tools'],
  ['openings', 'keyways'],
  ['all', 'all sections'],
];

/** What is asked: the unknown outline, with what it is compared, and how wrong it may be. */
export function IdentifyHead({ unknown }: { unknown: UnknownOutline }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const { among, mirrored, turned } = useStore(session.identify, (s) => s);
  const { minX, maxX, minY, maxY } = outlineBox(unknown.vertices);
  return (
    <section className={styles.head} aria-label="The unknown outline">
      <div className={styles.unknown}>
        <p className={styles.name}>
          <b>{unknown.name}</b>{' '}
          <span>
            {SOURCE_WORDS[unknown.source]}, {sizeText(maxX - minX, maxY - minY, units).replaceAll(' ', '\u00a0')}
          </span>
        </p>
        <button
          type="button"
          className="key"
          title="Put this one away and bring another outline"
          onClick={() => dropUnknown(session)}
        >
          Another outline…
        </button>
      </div>
      <div className={styles.options}>
        <ChoiceField
          label="Compare with"
          value={among}
          choices={AMONG}
          onChange={(next) => changeQuestion(session, { among: next })}
        />
        <ErrorField key={`${unknown.name} ${unknown.source} ${units}`} />
        <TickField
          label="Mirrored (tip view)"
          value={mirrored}
          onChange={(next) => changeQuestion(session, { mirrored: next })}
        />
        <TickField label="Turned" value={turned} onChange={(next) => changeQuestion(session, { turned: next })} />
      </div>
    </section>
  );
}

/** A drawing that is wrong by more than this says nothing about a blade, nanometres. */
const MOST_ERROR = 1_000_000;
const LEAST_ERROR = 1_000;

function ErrorField() {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const typed = useTypedLength(session.identify.getState().error, units);
  const isOut = typed.nm !== null && !isUsable(typed.nm);
  const range = units === 'mm' ? 'From 0.001 to 1 mm.' : 'From 0.00004 to 0.039 in.';
  const change = (text: string) => {
    typed.set(text);
    const read = readLength(text, units, null);
    if (text.trim() !== '' && read.ok && isUsable(read.nm)) changeQuestion(session, { error: read.nm });
  };
  return (
    <LengthField
      label="Drawing error, ±"
      text={typed.text}
      units={units}
      fault={typed.fault ?? (isOut ? range : undefined)}
      onChange={change}
    />
  );
}

function isUsable(nm: number): boolean {
  return nm >= LEAST_ERROR && nm <= MOST_ERROR;
}
