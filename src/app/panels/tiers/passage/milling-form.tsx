import { useId, useState } from 'react';
import type { Family } from '../../../../family/family.ts';
import { passageMillingOf } from '../../../state/tiers/passage-milling.ts';
import { ChoiceField, LengthField, type TypedField, useTypedLength, useTypedNumber } from '../../form-fields.tsx';
import form from '../../plan/grow/grow-form.module.css';
import styles from '../../readings.module.css';
import { useSession, useStore } from '../../use-store.ts';

/** Whether the blank may have any form, or is what one straight cutter mills from a plain blade. */
export function MillingForm({ family }: { family: Family }) {
  const session = useSession();
  const { store } = passageMillingOf(session);
  const on = useStore(store, (s) => s.on);
  const units = useStore(session.settings, (s) => s.units);
  return (
    <section className={styles.part} aria-labelledby="reading-milling">
      <h2 id="reading-milling" className={styles.title}>
        How the blank is made
      </h2>
      <ChoiceField
        label="Form"
        value={on ? 'milled' : 'free'}
        choices={[
          ['free', 'Any form'],
          ['milled', 'Straight milling cutter'],
        ]}
        onChange={(form) => store.setState({ on: form === 'milled' })}
      />
      {on && <CutterFields key={`${family.name} ${units}`} />}
    </section>
  );
}

const MOST_FLANK_DEG = 60;

/** What is typed of the cutter; other units or another family begin it anew. */
function CutterFields() {
  const session = useSession();
  const { store } = passageMillingOf(session);
  const units = useStore(session.settings, (s) => s.units);
  const { cutter, plain } = store.getState();
  const id = useId();
  const width = useTypedLength(cutter.leastWidth, units);
  const root = useTypedLength(cutter.rootRadius, units);
  const step = useTypedLength(cutter.depthStep, units);
  const thickness = useTypedLength(plain.thickness, units);
  const height = useTypedLength(plain.height, units);
  const flank = useTypedNumber(Math.round((cutter.flank * 18_000) / Math.PI) / 100);
  const [fault, setFault] = useState('');
  const take = () => {
    const wrong = faultOf({ flank: flank.value, root: root.nm, width: width.nm, step: step.nm });
    const typed = [width, root, step, thickness, height, flank].some((field) => field.fault);
    setFault(typed ? 'One of the fields is no length.' : wrong);
    if (typed || wrong || flank.value === null || root.nm === null || width.nm === null || step.nm === null) return;
    store.setState({
      cutter: { flank: (flank.value * Math.PI) / 180, rootRadius: root.nm, leastWidth: width.nm, depthStep: step.nm },
      plain: { thickness: thickness.nm, height: height.nm },
    });
  };
  const field = (label: string, typed: TypedField, hint?: string) => (
    <LengthField label={label} text={typed.text} units={units} fault={typed.fault} hint={hint} onChange={typed.set} />
  );
  return (
    <form
      className={form.form}
      aria-describedby={fault ? id : undefined}
      onSubmit={(event) => {
        event.preventDefault();
        take();
      }}
    >
      {field('Least width of a groove', width)}
      {field('Root radius', root)}
      {field('Step of the depth', step)}
      <LengthField
        label="Lean of the flanks"
        text={flank.text}
        units={units}
        unit="°"
        fault={flank.fault}
        onChange={flank.set}
      />
      {field('Thickness of the plain blade', thickness, 'Empty: as much as there is room for.')}
      {field('Height of the plain blade', height, 'Empty: as much as there is room for.')}
      {fault && (
        <p id={id} role="alert">
          {fault}
        </p>
      )}
      <button type="submit" className="key">
        Mill with these
      </button>
    </form>
  );
}

interface TypedCutter {
  readonly flank: number | null;
  readonly root: number | null;
  readonly width: number | null;
  readonly step: number | null;
}

/** What is wrong with the cutter, and what to type; empty where nothing is. */
function faultOf({ flank, root, width, step }: TypedCutter): string {
  if (flank === null || flank < 0 || flank > MOST_FLANK_DEG) return `Type a lean from 0 to ${MOST_FLANK_DEG}°.`;
  if (root === null || root < 0) return 'Type a root radius; 0 for sharp corners.';
  if (width === null || width < 0) return 'Type the least width of a groove.';
  if (step === null || step <= 0) return 'Type a step of the depth above 0.';
  return '';
}
