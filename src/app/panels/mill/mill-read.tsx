import { useState } from 'react';
import type { Units } from '../../../family/length-text.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { GrooveReading } from '../../../profile/read-grooves.ts';
import { leaveAsDrawn, readAsGrooves, takeGrooves } from '../../state/draw/made-section.ts';
import { millFor, millOf } from '../../state/draw/mill-state.ts';
import { grooveName, grooveSizes, grooveWord, lengthText, unexplainedText } from '../../state/draw/mill-words.ts';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import styles from './mill-panel.module.css';
import { LengthField } from './mill-size-field.tsx';

/** How far an outline may be off from what is milled, nanometres, until another tolerance is given. */
const TOLERANCE = { mm: 10_000, in: 12_700 } as const;

/** A tolerance finer than the chords of arcs, nanometres, would find faults that are none. */
const LEAST_TOLERANCE = 2_000;

/** A drawn outline: reads it as grooves, shows what was found and what it does not explain, and asks what to do. */
export function ReadGrooves({ profile }: { profile: Profile }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const { preview } = millFor(
    useStore(millOf(session), (s) => s),
    profile.id,
  );
  const [tolerance, setTolerance] = useState<number>(TOLERANCE[units]);
  const [refusal, setRefusal] = useState('');
  const shown = preview?.ring === profile.ring ? preview : null;
  const take = (nm: number) => {
    setRefusal(nm < LEAST_TOLERANCE ? `Give at least ${lengthText(LEAST_TOLERANCE, units)}.` : '');
    if (nm < LEAST_TOLERANCE) return;
    setTolerance(nm);
    if (shown) readAsGrooves(session, profile, nm);
  };
  return (
    <section className={readings.part} aria-labelledby="mill-read">
      <h2 id="mill-read" className={readings.title}>
        Read as grooves
      </h2>
      <p className={styles.soft}>{profile.name} is drawn by its outline. It can be read as a milled blade.</p>
      <div className={styles.sizes} data-units={units}>
        <LengthField
          name="Tolerance"
          label="How far the outline may be off"
          value={tolerance}
          units={units}
          fault={refusal}
          onTake={take}
        />
      </div>
      <button type="button" className="key" onClick={() => readAsGrooves(session, profile, tolerance)}>
        Read as grooves
      </button>
      {shown && <Found profile={profile} reading={shown.reading} units={units} />}
    </section>
  );
}

function Found({ profile, reading, units }: { profile: Profile; reading: GrooveReading; units: Units }) {
  const session = useSession();
  if (!reading.ok)
    return (
      <p className={styles.draft} role="status">
        <b>No milled blade:</b> {reading.what}. {reading.cure}
      </p>
    );
  const { milled } = reading;
  const size = `${lengthText(milled.thickness, units)} thick, ${lengthText(milled.height, units)} high`;
  const back = milled.backRadius > 0 ? `back radius ${lengthText(milled.backRadius, units)}` : 'a square back';
  return (
    <>
      <p role="status">
        A blade {size}, {back}, {countOf(milled.grooves.length, grooveWord(profile.kind))}.
      </p>
      <ol className={styles.grooves}>
        {milled.grooves.map((groove, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a groove is its place in the list
          <li key={i} className={styles.found}>
            <span className={styles.number}>{i + 1}</span>
            <span className={styles.what}>{grooveName(groove, milled.height, grooveWord(profile.kind))}</span>
            <span className={styles.line}>{grooveSizes(groove, units)}</span>
          </li>
        ))}
      </ol>
      <Unexplained reading={reading} units={units} />
      <span className={styles.keys}>
        <button type="button" className="key" onClick={() => takeGrooves(session, profile)}>
          Use the grooves
        </button>
        <button type="button" className="key" onClick={() => leaveAsDrawn(session)}>
          Leave as drawn
        </button>
      </span>
    </>
  );
}

function countOf(count: number, word: string): string {
  if (count === 0) return `no ${word}`;
  return count === 1 ? `1 ${word} or step` : `${count} ${word}s and steps`;
}

/** Most parts that are told one by one. */
const MOST_TOLD = 6;

function Unexplained({ reading, units }: { reading: Extract<GrooveReading, { ok: true }>; units: Units }) {
  const { unexplained, milled, shift } = reading;
  if (unexplained.length === 0) return <p className={styles.soft}>All of the outline is explained.</p>;
  return (
    <div className={styles.draft}>
      <p>
        <b>Not explained</b>, hatched on the sheet:
      </p>
      <ul className={styles.parts}>
        {unexplained.slice(0, MOST_TOLD).map((part) => (
          <li key={`${part.at.x} ${part.at.y}`}>{unexplainedText(part, milled, shift, units)}</li>
        ))}
        {unexplained.length > MOST_TOLD && <li>and {unexplained.length - MOST_TOLD} more, none further off</li>}
      </ul>
    </div>
  );
}
