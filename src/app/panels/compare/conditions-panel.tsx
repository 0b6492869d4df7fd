import { Fragment, type ReactNode, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import { bandsOf } from '../../../family/family.ts';
import { AS_DRAWN, type ConditionsState } from '../../state/conditions-state.ts';
import { PARTS_WORDS } from '../../state/pair-words.ts';
import { PartsMark } from '../parts-mark.tsx';
import readings from '../readings.module.css';
import type { ShownPair } from '../use-pair.ts';
import { useSession, useStore } from '../use-store.ts';
import { degreesText, threeWaySentence } from './compare-words.ts';
import styles from './conditions.module.css';
import { SMALL_LENGTHS } from './conditions-measure.ts';
import { TolerancePresets } from './conditions-presets.tsx';
import { Slider } from './conditions-slider.tsx';

/** Where the sliders end, in nanometres, and what the fields still take. */
const TOLERANCE = { end: 100_000, most: 500_000 };
const WEAR = { end: 200_000, most: 1_000_000 };
const MOST_TILT_DEG = 5;
const DEGREE = Math.PI / 180;

/** Sliders for tolerance, wear and tilt, with what they make of the pair for all parts in their bands. */
export function ConditionsPanel({ family, pair }: { family: Family; pair: ShownPair }) {
  const { settings, conditions } = useSession();
  const units = useStore(settings, (s) => s.units);
  // Another number makes the fields anew, without what was typed into them and not taken.
  const [redrawn, setRedrawn] = useState(0);
  const { threeWay, fit, bands } = pair;
  return (
    <section className={readings.part} aria-labelledby="reading-conditions">
      <h2 id="reading-conditions" className={readings.title}>
        Parts as made
      </h2>
      <p className={styles.answer} data-answer={threeWay}>
        <PartsMark answer={threeWay} size={24} />
        {PARTS_WORDS[threeWay].whole}
      </p>
      <p className={styles.sentence}>{threeWaySentence(threeWay, fit, bands, units)}</p>
      <Fragment key={redrawn}>
        <Tolerances family={family} pair={pair} />
        <WearSlider />
        <TiltSlider limit={family.tiltLimit} />
      </Fragment>
      <button
        type="button"
        className="key"
        title="New parts, upright, tolerances of the file"
        // A field that is left names its fault, which would push this key away from under the pointer.
        onMouseDown={(event) => event.preventDefault()}
        onClick={(event) => {
          event.currentTarget.focus();
          conditions.setState(AS_DRAWN);
          setRedrawn(redrawn + 1);
        }}
      >
        As drawn
      </button>
    </section>
  );
}

function Tolerances({ family, pair }: { family: Family; pair: ShownPair }) {
  const { conditions, settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const state = useStore(conditions, (s) => s);
  const { entrant, opening, bands } = pair;
  const file = bandsOf(family, entrant, opening);
  const xs = entrant.ring.map(({ x }) => x);
  const thickness = Math.max(...xs) - Math.min(...xs);
  const row = (what: string, field: 'blankTolerance' | 'openingTolerance', value: number, own: number) => (
    <LengthSlider
      name={`${what} ±`}
      label={`${what} tolerance ±`}
      value={value}
      {...TOLERANCE}
      onChange={(nm) => conditions.setState({ [field]: nm })}
    >
      <TolerancePresets
        label={`${what} tolerance`}
        set={state[field]}
        file={own}
        thickness={thickness}
        units={units}
        onChoose={(tolerance) => conditions.setState({ [field]: tolerance })}
      />
    </LengthSlider>
  );
  return (
    <>
      {row(entrant.kind === 'tool' ? 'Tool' : 'Blank', 'blankTolerance', bands.blank, file.blank)}
      {row('Keyway', 'openingTolerance', bands.opening, file.opening)}
    </>
  );
}

function WearSlider() {
  const { conditions } = useSession();
  const wear = useStore(conditions, (s) => s.wear);
  return (
    <LengthSlider
      name="Wear of each"
      label="Wear of each part"
      value={wear}
      {...WEAR}
      onChange={(nm) => conditions.setState({ wear: nm })}
    />
  );
}

interface LengthSliderProps {
  readonly name: string;
  readonly label: string;
  /** Nanometres, as are the ends. */
  readonly value: number;
  readonly end: number;
  readonly most: number;
  readonly children?: ReactNode;
  onChange(nm: number): void;
}

/** A slider for a small length, in the units of the window. */
function LengthSlider({ name, label, value, end, most, children, onChange }: LengthSliderProps) {
  const { settings } = useSession();
  const { unit, per, decimals, room, step } = SMALL_LENGTHS[useStore(settings, (s) => s.units)];
  return (
    <Slider
      name={name}
      label={label}
      value={value / per}
      unit={unit}
      decimals={decimals}
      room={room}
      step={step}
      end={Math.round(end / per / step) * step}
      most={Number((most / per).toPrecision(2))}
      onChange={(shown) => onChange(Math.round(shown * per))}
    >
      {children}
    </Slider>
  );
}

function TiltSlider({ limit }: { limit: number }) {
  const { conditions } = useSession();
  const tilt = useStore(conditions, (s) => s.tiltLimit);
  const set = (tiltLimit: ConditionsState['tiltLimit']) => conditions.setState({ tiltLimit });
  return (
    <Slider
      name="Tilt up to"
      label="Tilt up to"
      value={Number((tilt / DEGREE).toFixed(6))}
      unit="°"
      decimals={2}
      step={0.05}
      end={MOST_TILT_DEG}
      most={MOST_TILT_DEG}
      onChange={(degrees) => set(degrees * DEGREE)}
    >
      {limit > 0 && Math.abs(limit - tilt) > 1e-9 && (
        <button type="button" className={styles.offer} onClick={() => set(limit)}>
          as the file says, {degreesText(limit)}
        </button>
      )}
    </Slider>
  );
}
