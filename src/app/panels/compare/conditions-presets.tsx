import { useId } from 'react';
import { heightText, readingText, type Units } from '../../../family/length-text.ts';
import { presetTolerance, TOLERANCE_PRESETS } from '../../../profile/tolerance-grades.ts';
import styles from './conditions.module.css';

const FROM_FILE = 'file';
const OWN = 'own';

/** The standard of a preset: the first two words of its name. */
const standardOf = (name: string) => name.split(' ').slice(0, 2).join(' ');

/** Presets by the standard that publishes them. */
const STANDARDS = [...new Set(TOLERANCE_PRESETS.map(({ name }) => standardOf(name)))].map((standard) => ({
  standard,
  presets: TOLERANCE_PRESETS.filter(({ name }) => standardOf(name) === standard),
}));

interface PresetsProps {
  readonly label: string;
  /** What is set, in nanometres; null where the file's value holds. */
  readonly set: number | null;
  readonly file: number;
  /** The size whose tolerance is asked for: the thickness of the blade, in nanometres. */
  readonly thickness: number;
  readonly units: Units;
  onChoose(tolerance: number | null): void;
}

/** A list from which a tolerance is taken: the file's own, or a published grade for the blade's thickness. */
export function TolerancePresets({ label, set, file, thickness, units, onChoose }: PresetsProps) {
  const id = useId();
  const chosen = set === null ? FROM_FILE : (presetOf(set, thickness) ?? OWN);
  const choose = (name: string) => {
    if (name === FROM_FILE) return onChoose(null);
    const answer = presetTolerance(name, thickness);
    if (answer.ok) onChoose(answer.tolerance);
  };
  return (
    <>
      <select
        className={styles.presets}
        aria-label={`${label}: take it from`}
        aria-describedby={id}
        value={chosen}
        onChange={(event) => choose(event.target.value)}
      >
        <option value={FROM_FILE}>file: ±{readingText(file, units)}</option>
        {chosen === OWN && <option value={OWN}>Own value</option>}
        {STANDARDS.map(({ standard, presets }) => (
          <optgroup key={standard} label={`${standard}, at ${heightText(thickness, units)}`}>
            {presets.map(({ name }) => (
              <Preset key={name} name={name} thickness={thickness} units={units} />
            ))}
          </optgroup>
        ))}
      </select>
      <span id={id} className="unseen">
        Published grades for the blade's thickness, {heightText(thickness, units)}.
      </span>
    </>
  );
}

function Preset({ name, thickness, units }: { name: string; thickness: number; units: Units }) {
  const answer = presetTolerance(name, thickness);
  return (
    <option value={name} disabled={!answer.ok} title={answer.ok ? undefined : answer.what}>
      {name}
      {answer.ok ? `: ±${readingText(answer.tolerance, units)}` : ': none for this size'}
    </option>
  );
}

/** The first preset that gives just this tolerance. */
function presetOf(tolerance: number, thickness: number): string | null {
  const found = TOLERANCE_PRESETS.find(({ name }) => {
    const answer = presetTolerance(name, thickness);
    return answer.ok && answer.tolerance === tolerance;
  });
  return found?.name ?? null;
}
