import type { MillFault } from '../../../profile/check-milled.ts';
import type { GrooveField } from '../../../profile/edit-milled.ts';
import { reachesBack, reachesTop } from '../../../profile/mill-corners.ts';
import type { Groove, Milled, Profile } from '../../../profile/profile.ts';
import {
  addNewGroove,
  addNewStep,
  chooseGroove,
  chosenGroove,
  duplicateGroove,
  putGroove,
  takeOutGroove,
  turnGroove,
} from '../../state/draw/mill-editing.ts';
import { millOf } from '../../state/draw/mill-state.ts';
import { faultAt, grooveName, grooveSizes, grooveWord } from '../../state/draw/mill-words.ts';
import { useSession, useStore } from '../use-store.ts';
import styles from './mill-panel.module.css';
import { AngleField, LengthField } from './mill-size-field.tsx';

interface GrooveListProps {
  readonly profile: Profile;
  readonly milled: Milled;
  readonly faults: readonly MillFault[];
}

/** The grooves, one row each; the chosen row opens its sizes. Keys add grooves and steps. */
export function GrooveList({ profile, milled, faults }: GrooveListProps) {
  const session = useSession();
  const chosen = chosenGroove(
    useStore(millOf(session), (s) => s),
    profile,
  );
  const word = grooveWord(profile.kind);
  return (
    <>
      {/* Over the list: a groove more must not push its own keys under the pointer. */}
      <AddKeys profile={profile} />
      {milled.grooves.length === 0 && <p className={styles.soft}>No {word} yet.</p>}
      <ol className={styles.grooves}>
        {[...milled.grooves.keys()].map((i) => (
          <li key={i} className={styles.groove} data-chosen={i === chosen} data-fault={hasFault(faults, i)}>
            <GrooveHead
              profile={profile}
              milled={milled}
              index={i}
              isChosen={i === chosen}
              isFaulty={hasFault(faults, i)}
            />
            {i === chosen && <GrooveFields profile={profile} milled={milled} index={i} faults={faults} />}
          </li>
        ))}
      </ol>
    </>
  );
}

const hasFault = (faults: readonly MillFault[], index: number) => faults.some((f) => f.grooves.includes(index));

interface GrooveHeadProps {
  readonly profile: Profile;
  readonly milled: Milled;
  readonly index: number;
  readonly isChosen: boolean;
  readonly isFaulty: boolean;
}

function GrooveHead({ profile, milled, index, isChosen, isFaulty }: GrooveHeadProps) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const groove = milled.grooves[index];
  return (
    <button
      type="button"
      className={styles.head}
      aria-expanded={isChosen}
      onClick={() => chooseGroove(session, profile, isChosen ? null : index)}
    >
      <span className={styles.number}>{index + 1}</span>
      <span className={styles.what}>
        {grooveName(groove, milled.height, grooveWord(profile.kind))}
        {isFaulty && <span className={styles.mark}> ✕ not sound</span>}
      </span>
      {!isChosen && <span className={styles.line}>{grooveSizes(groove, units)}</span>}
    </button>
  );
}

const FIELDS: readonly [GrooveField, string][] = [
  ['bottom', 'Bottom'],
  ['width', 'Width'],
  ['depth', 'Depth'],
  ['flank', 'Flank °'],
  ['rootRadius', 'Root r'],
];

/** Whole names, as they are read out. */
const WHOLE_NAMES: Readonly<Record<GrooveField, string>> = {
  bottom: 'bottom',
  width: 'width',
  depth: 'depth',
  flank: 'flank angle',
  rootRadius: 'root radius',
};

function GrooveFields({ profile, milled, index, faults }: GrooveListProps & { index: number }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const groove = milled.grooves[index];
  const word = grooveWord(profile.kind);
  return (
    <div className={styles.open}>
      <div className={styles.sizes} data-units={units}>
        {FIELDS.filter(([field]) => !(field === 'bottom' && reachesBack(groove))).map(([field, name]) => {
          const Field = field === 'flank' ? AngleField : LengthField;
          return (
            <Field
              key={`${index} ${field}`}
              name={name}
              label={`${word === 'ward' ? 'Ward' : 'Groove'} ${index + 1} ${WHOLE_NAMES[field]}`}
              value={groove[field]}
              units={units}
              fault={faultAt(faults, index, field)}
              onTake={(value) => putGroove(session, profile, index, field, value)}
            />
          );
        })}
      </div>
      <GrooveKeys profile={profile} index={index} groove={groove} height={milled.height} />
    </div>
  );
}

interface GrooveKeysProps {
  readonly profile: Profile;
  readonly index: number;
  readonly groove: Groove;
  readonly height: number;
}

function GrooveKeys({ profile, index, groove, height }: GrooveKeysProps) {
  const session = useSession();
  const isStep = reachesBack(groove) || reachesTop(groove, height);
  return (
    <span className={styles.keys}>
      <button type="button" className="key" onClick={() => turnGroove(session, profile, index)}>
        Other face
      </button>
      {!isStep && (
        <button type="button" className="key" onClick={() => duplicateGroove(session, profile, index)}>
          Duplicate
        </button>
      )}
      <button type="button" className="key" onClick={() => takeOutGroove(session, profile, index)}>
        Remove
      </button>
    </span>
  );
}

function AddKeys({ profile }: { profile: Profile }) {
  const session = useSession();
  const word = grooveWord(profile.kind);
  return (
    <fieldset className="bare" aria-label={`Add a ${word} or a step`}>
      <div className={styles.add}>
        <span className={styles.name}>Add {word}</span>
        <span className="key-row">
          <AddKey
            word="Left"
            label={`Add ${word} on the left`}
            onPress={() => addNewGroove(session, profile, 'left')}
          />
          <AddKey
            word="Right"
            label={`Add ${word} on the right`}
            onPress={() => addNewGroove(session, profile, 'right')}
          />
        </span>
        {(['back', 'top'] as const).flatMap((end) => [
          <span key={`${end} name`} className={styles.name}>
            Step at {end}
          </span>,
          <span key={end} className="key-row">
            {(['left', 'right'] as const).map((side) => (
              <AddKey
                key={side}
                word={side === 'left' ? 'Left' : 'Right'}
                label={`Add step at the ${end} on the ${side}`}
                onPress={() => addNewStep(session, profile, side, end)}
              />
            ))}
          </span>,
        ])}
      </div>
    </fieldset>
  );
}

function AddKey({ word, label, onPress }: { word: string; label: string; onPress(): void }) {
  return (
    <button type="button" className="key" aria-label={label} title={label} onClick={onPress}>
      {word}
    </button>
  );
}
