import type { Units } from '../../../family/length-text.ts';
import type { ProfileKind } from '../../../profile/profile.ts';
import { DRAWING_UNITS, type DrawingImport, likelyScales } from '../../state/exchange/import-state.ts';
import type { Importing, IncomingFile } from '../../state/exchange/importing.ts';
import { NM_OF_UNIT } from '../../tools/ruler-steps.ts';
import { NumberField } from '../compare/conditions-number.tsx';
import styles from './import-questions.module.css';
import { scaleWords } from './import-words.ts';

/** What a loop may become, as the list calls it. */
export const KINDS: readonly { readonly kind: ProfileKind; readonly label: string }[] = [
  { kind: 'blank', label: 'Blank' },
  { kind: 'opening', label: 'Keyway' },
  { kind: 'tool', label: 'Tool' },
];

interface QuestionsProps {
  readonly now: DrawingImport;
  readonly units: Units;
  readonly importing: Importing<IncomingFile>;
}

/** What the drawing cannot say itself: its scale where it states none, from where it is seen, what its loops are. */
export function ImportQuestions(props: QuestionsProps) {
  return (
    <div className={styles.questions}>
      <ScaleDoubt {...props} />
      <ScaleQuestion {...props} />
      <SeenQuestion {...props} />
      <TurnQuestion {...props} />
    </div>
  );
}

/** Offers the scales at which the loops would be as tall as a blade, where they are far from it. */
function ScaleDoubt({ now, units, importing }: QuestionsProps) {
  const loop = now.drawing.loops[now.pointed];
  const height = Math.max(loop.width, loop.height);
  const likely = likelyScales(now.drawing);
  const doubtful = height < 2.5 * NM_OF_UNIT.mm || height > 20 * NM_OF_UNIT.mm;
  if (likely.length === 0 && !(doubtful && now.drawing.loops.length === 1)) return null;
  return (
    <div className={styles.doubt} role="status">
      <p>
        <b>Look at the scale.</b> A blade is some 5 to 12 mm tall, number {now.pointed + 1} comes out at{' '}
        {heightIn(height, units)}.{likely.length === 0 && ' Type its true height below.'}
      </p>
      {likely.map(({ name, nm, height: then }) => (
        <button key={name} type="button" className="key" onClick={() => importing.setScale(nm)}>
          Read it in {name}: {heightIn(then, units)}
        </button>
      ))}
    </div>
  );
}

function heightIn(nm: number, units: Units): string {
  const value = nm / NM_OF_UNIT[units];
  return `${Number(value.toPrecision(4))} ${units}`;
}

function ScaleQuestion({ now, units, importing }: QuestionsProps) {
  const { nmPerUnit, unitsStated, loops } = now.drawing;
  const set = now.input.nmPerUnit;
  const byHand = set !== undefined;
  const known = DRAWING_UNITS.find(({ nm }) => byHand && Math.abs(nm - set) < nm * 1e-9);
  const per = NM_OF_UNIT[units];
  // As it is seen: a quarter turn lays it down or sets it up.
  const height = now.placing.quarters % 2 === 0 ? loops[now.pointed].height : loops[now.pointed].width;
  const own = unitsStated && !byHand ? ` (${scaleWords(nmPerUnit)})` : '';
  const value = known?.name ?? (byHand ? 'typed' : 'own');
  const change = (name: string) => {
    if (name === 'own') importing.setScale(null);
    const unit = DRAWING_UNITS.find((one) => one.name === name);
    if (unit) importing.setScale(unit.nm);
  };
  return (
    <div className={styles.question}>
      <label className={styles.units}>
        The drawing is in
        <select className={styles.select} value={value} onChange={(event) => change(event.target.value)}>
          <option value="own">
            {unitsStated || byHand ? `what it says${own}` : `not said: ${scaleWords(nmPerUnit)}`}
          </option>
          {DRAWING_UNITS.map(({ name }) => (
            <option key={name}>{name}</option>
          ))}
          {value === 'typed' && <option value="typed">{scaleWords(nmPerUnit)}</option>}
        </select>
      </label>
      <span className={styles.height}>
        Number {now.pointed + 1} is tall
        <NumberField
          key={now.pointed}
          label={`Height of number ${now.pointed + 1}`}
          value={height / per}
          unit={units}
          decimals={3}
          room={9}
          least={Number((100_000 / per).toFixed(4))}
          most={Math.floor((47 * NM_OF_UNIT.mm * 100) / per) / 100}
          step={units === 'in' ? 0.005 : 0.1}
          onChange={(typed) => importing.setScale((nmPerUnit * typed * per) / height)}
        />
      </span>
    </div>
  );
}

function SeenQuestion({ now, importing }: QuestionsProps) {
  const { placing } = now;
  const key = (seenFrom: 'bow' | 'tip', label: string, title: string) => (
    <button
      type="button"
      className="key"
      title={title}
      aria-pressed={placing.seenFrom === seenFrom}
      onClick={() => importing.choose({ placing: { ...placing, seenFrom } })}
    >
      {label}
    </button>
  );
  return (
    <fieldset className={`bare ${styles.question}`}>
      <legend>It shows the section as seen from</legend>
      <span className="key-row">
        {key('bow', 'Bow', 'From the bow, or a keyway from the front: taken as it is')}
        {key('tip', 'Tip', 'From the tip, or a keyway from behind: left and right change places')}
      </span>
    </fieldset>
  );
}

function TurnQuestion({ now, importing }: QuestionsProps) {
  const { placing } = now;
  return (
    <fieldset className={`bare ${styles.question}`}>
      <legend>Turned to the left by</legend>
      <span className="key-row">
        {[0, 1, 2, 3].map((quarters) => (
          <button
            key={quarters}
            type="button"
            className="key"
            aria-pressed={placing.quarters === quarters}
            onClick={() => importing.choose({ placing: { ...placing, quarters } })}
          >
            {quarters * 90}°
          </button>
        ))}
      </span>
      <label className={styles.place}>
        <input
          type="checkbox"
          checked={placing.place === 'drawing'}
          onChange={(event) =>
            importing.choose({ placing: { ...placing, place: event.target.checked ? 'drawing' : 'origin' } })
          }
        />
        Keep its place
      </label>
    </fieldset>
  );
}

/** What all loops become, each of which may still be something else. */
export function KindQuestion({ now, importing }: Omit<QuestionsProps, 'units'>) {
  if (now.replacing !== null) return null;
  return (
    <fieldset className={`bare ${styles.kinds}`}>
      <legend className="unseen">All of them are</legend>
      <span aria-hidden="true">All are</span>
      <span className="key-row">
        {KINDS.map(({ kind, label }) => (
          <button
            key={kind}
            type="button"
            className="key"
            aria-pressed={now.choices.every((choice) => choice.kind === kind)}
            onClick={() => importing.choose({ choices: now.choices.map((choice) => ({ ...choice, kind })) })}
          >
            {label}s
          </button>
        ))}
      </span>
    </fieldset>
  );
}
