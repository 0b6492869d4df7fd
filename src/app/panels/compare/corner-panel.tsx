import type { Point } from '../../../geom/point.ts';
import { editedVertices } from '../../state/draw/draw-state.ts';
import { describedBy } from '../../state/draw/mill-words.ts';
import readings from '../readings.module.css';
import type { ShownPair } from '../use-pair.ts';
import { useSession, useStore } from '../use-store.ts';
import { COORDINATES } from './conditions-measure.ts';
import { NumberField } from './conditions-number.tsx';
import { chosenCorner, editedProfile, pickCornerPart, putCorner, walkCorners } from './corner-editing.ts';
import styles from './corner-panel.module.css';
import { type CornerPart, cornersOf } from './corner-state.ts';

/** The chosen corner in numbers, while corners are moved; nothing else. */
export function CornerPanel({ pair }: { pair: ShownPair }) {
  const session = useSession();
  const { on, part, chosen, refusal } = useStore(cornersOf(session), (s) => s);
  if (!on) return null;
  const profile = editedProfile(pair, part);
  const { length } = editedVertices(profile);
  const number = Math.min(chosen, length - 1) + 1;
  return (
    <section className={readings.part} aria-labelledby="reading-corners">
      <h2 id="reading-corners" className={readings.title}>
        Move corners
      </h2>
      <PartKeys pair={pair} part={part} />
      <div className={styles.chosen}>
        <span className="key-row">
          <StepKey label="Previous corner" shortcut="[" onPress={() => walkCorners(session, pair, -1)} />
          <StepKey label="Next corner" shortcut="]" onPress={() => walkCorners(session, pair, 1)} />
        </span>
        <span aria-live="polite">
          Corner <b>{number}</b> of {length}
        </span>
      </div>
      <CornerFields pair={pair} />
      {refusal !== '' && (
        <p role="alert" className={styles.refusal}>
          Not taken: {refusal}. The last sound outline stays.
        </p>
      )}
      {profile.milled && (
        <p className={readings.note}>
          {profile.name} is described by {describedBy(profile)}. A moved corner makes it a drawn outline; undo brings
          them back.
        </p>
      )}
      <p className={readings.note}>
        [ and ] choose a corner, the arrow keys move it, Escape gives up. Edge {number} runs on from corner {number}.
      </p>
    </section>
  );
}

function PartKeys({ pair, part }: { pair: ShownPair; part: CornerPart }) {
  const session = useSession();
  const key = (value: CornerPart, label: string) => (
    <button
      type="button"
      className="key"
      aria-pressed={part === value}
      title={editedProfile(pair, value).name}
      onClick={() => pickCornerPart(session, value)}
    >
      {label}
    </button>
  );
  return (
    <fieldset className="key-row bare" aria-label="Corners of">
      {key('entrant', pair.entrant.kind === 'tool' ? 'Tool' : 'Blank')}
      {key('opening', 'Keyway')}
    </fieldset>
  );
}

function StepKey({ label, shortcut, onPress }: { label: string; shortcut: string; onPress(): void }) {
  return (
    <button type="button" className="key" title={`${label} (${shortcut})`} aria-label={label} onClick={onPress}>
      {shortcut}
    </button>
  );
}

/** A corner lies no further out than this, in nanometres. */
const FURTHEST = 47_000_000;

function CornerFields({ pair }: { pair: ShownPair }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const { part, chosen } = useStore(cornersOf(session), (s) => s);
  const { unit, per, decimals, step } = COORDINATES[units];
  const corner = chosenCorner(session, pair);
  const field = (axis: keyof Point, label: string) => (
    <tr>
      <th scope="row">{axis}</th>
      <td>
        <NumberField
          key={`${part} ${chosen} ${axis}`}
          label={label}
          value={corner[axis] / per}
          unit={unit}
          decimals={decimals}
          room={12}
          least={-Math.floor(FURTHEST / per)}
          most={Math.floor(FURTHEST / per)}
          step={step}
          onChange={(value) => putCorner(session, pair, { ...corner, [axis]: Math.round(value * per) })}
        />
      </td>
    </tr>
  );
  return (
    <table className={styles.table}>
      <tbody>
        {field('x', 'Corner x, to the right')}
        {field('y', 'Corner y, upwards')}
      </tbody>
    </table>
  );
}
