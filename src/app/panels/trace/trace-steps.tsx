import type { Units } from '../../../family/length-text.ts';
import { clearMarks, tell } from '../../state/draw/underlay-editing.ts';
import { MARK_NAMES, type MarkName, type Underlay } from '../../state/draw/underlay-state.ts';
import { NM_OF_UNIT } from '../../tools/ruler-steps.ts';
import type { Measure } from '../compare/conditions-measure.ts';
import { NumberField } from '../compare/conditions-number.tsx';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import { MarkKeys, type MarkStep, MarkTable } from './trace-marks.tsx';
import styles from './trace-panel.module.css';

/** How known distances are entered. */
const DISTANCES: Readonly<Record<Units, Measure>> = {
  mm: { unit: 'mm', per: NM_OF_UNIT.mm, decimals: 2, step: 0.01 },
  in: { unit: 'thou', per: NM_OF_UNIT.in / 1000, decimals: 1, step: 1 },
};

interface StepProps {
  readonly id: string;
  readonly underlay: Underlay;
}

/** Two points and how far apart they are. */
export function ScaleStep({ id, underlay }: StepProps) {
  const session = useSession();
  const measure = useMeasure();
  const { distanceByRectangle, scaleFrom } = underlay.frame;
  const { distance } = underlay.told;
  const off = distanceByRectangle ? (distanceByRectangle / distance - 1) * 100 : null;
  return (
    <>
      <MarkKeys id={id} step="scale" underlay={underlay} label="Set two points" />
      <Asking
        underlay={underlay}
        step="scale"
        words={['Press on one end of a known distance.', 'Press on its other end.']}
      />
      <LengthField
        label="Distance from A to B"
        value={distance}
        onChange={(to) => tell(session, id, { distance: to })}
      />
      <MarkTable id={id} step="scale" underlay={underlay} />
      {scaleFrom === 'assumed' && (
        <p className={readings.note}>Until a distance is known the picture is taken as 25 mm high.</p>
      )}
      {distanceByRectangle !== null && off !== null && (
        <p className={readings.note}>
          By the size of the rectangle it would be {(distanceByRectangle / measure.per).toFixed(3)} {measure.unit},{' '}
          {Math.abs(off).toFixed(2)} % {off < 0 ? 'less' : 'more'}. The two points count.
        </p>
      )}
      <TakeAway id={id} step="scale" underlay={underlay} />
    </>
  );
}

/** A turn, typed or by a line that should be upright or level. */
export function TurnStep({ id, underlay }: StepProps) {
  const session = useSession();
  const { turn, lies } = underlay.told;
  const key = (value: 'upright' | 'level', label: string) => (
    <button
      type="button"
      className="key"
      aria-pressed={lies === value}
      onClick={() => tell(session, id, { lies: value })}
    >
      {label}
    </button>
  );
  return (
    <>
      <div className={styles.field}>
        <span>Turn to the left</span>
        <NumberField
          label="Turn to the left"
          value={Number(((turn * 180) / Math.PI).toFixed(4))}
          unit="°"
          decimals={1}
          least={-180}
          most={180}
          step={0.1}
          onChange={(degrees) => tell(session, id, { turn: (degrees * Math.PI) / 180 })}
        />
      </div>
      <MarkKeys id={id} step="turn" underlay={underlay} label="Set a line" />
      <Asking
        underlay={underlay}
        step="turn"
        words={['Press on one end of a straight line.', 'Press on its other end.']}
      />
      <fieldset className="key-row bare" aria-label="The line should be">
        {key('upright', 'Upright')}
        {key('level', 'Level')}
      </fieldset>
      <MarkTable id={id} step="turn" underlay={underlay} />
      <TakeAway id={id} step="turn" underlay={underlay} />
    </>
  );
}

const CORNER_WORDS = ['upper left', 'upper right', 'lower right', 'lower left'].map(
  (which) => `Press on the ${which} corner of the rectangle, as it should stand.`,
);

/** Four corners of a known rectangle. */
export function PerspectiveStep({ id, underlay }: StepProps) {
  const session = useSession();
  const { width, height } = underlay.told;
  return (
    <>
      <p className={readings.note}>
        For a photograph taken aslant: a rectangle of known size that lies in the same plane.
      </p>
      <MarkKeys id={id} step="perspective" underlay={underlay} label="Set four corners" />
      <Asking underlay={underlay} step="perspective" words={CORNER_WORDS} />
      <LengthField label="Width" value={width} onChange={(to) => tell(session, id, { width: to })} />
      <LengthField label="Height" value={height} onChange={(to) => tell(session, id, { height: to })} />
      <MarkTable id={id} step="perspective" underlay={underlay} />
      <TakeAway id={id} step="perspective" underlay={underlay} />
    </>
  );
}

/** What the next press sets. */
function Asking({ underlay, step, words }: { underlay: Underlay; step: MarkStep; words: readonly string[] }) {
  const names: readonly MarkName[] = MARK_NAMES[step];
  const at = underlay.placing ? names.indexOf(underlay.placing) : -1;
  return (
    <p role="status" className={at < 0 ? undefined : styles.ask}>
      {at < 0 ? '' : `${words[at]} Escape gives up.`}
    </p>
  );
}

function TakeAway({ id, step, underlay }: StepProps & { readonly step: MarkStep }) {
  const session = useSession();
  const names: readonly MarkName[] = MARK_NAMES[step];
  if (!names.some((name) => underlay.told.points[name])) return null;
  return (
    <span className={styles.keys}>
      <button type="button" className="key" onClick={() => clearMarks(session, id, step)}>
        Take the marks away
      </button>
    </span>
  );
}

function useMeasure(): Measure {
  const units = useStore(useSession().settings, (s) => s.units);
  return DISTANCES[units];
}

/** A known length, typed in the unit in force. */
export function LengthField(props: { label: string; value: number; onChange(nm: number): void }) {
  const { unit, per, decimals, step } = useMeasure();
  return (
    <div className={styles.field}>
      <span>{props.label}</span>
      <NumberField
        label={props.label}
        value={Number((props.value / per).toFixed(4))}
        unit={unit}
        decimals={decimals}
        least={Number((10_000 / per).toFixed(4))}
        most={Math.floor(1e9 / per)}
        step={step}
        onChange={(value) => props.onChange(Math.round(value * per))}
      />
    </div>
  );
}
