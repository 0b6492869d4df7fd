import { MARK_LETTERS } from '../../canvas/draw/picture-mark.tsx';
import { putMark, startPlacing } from '../../state/draw/underlay-editing.ts';
import { changeUnderlay, MARK_NAMES, type MarkName, type Underlay } from '../../state/draw/underlay-state.ts';
import { NumberField } from '../compare/conditions-number.tsx';
import { useSession } from '../use-store.ts';
import styles from './trace-panel.module.css';

/** A step that is made of marks. */
export type MarkStep = keyof typeof MARK_NAMES;

/** Where marks stand at first when they are placed without the pointer, as parts of the picture's width and height. */
const FIRST_PLACES: Readonly<Record<MarkName, readonly [number, number]>> = {
  scaleFrom: [0.25, 0.75],
  scaleTo: [0.75, 0.75],
  lineFrom: [0.5, 0.25],
  lineTo: [0.5, 0.75],
  corner1: [0.2, 0.2],
  corner2: [0.8, 0.2],
  corner3: [0.8, 0.8],
  corner4: [0.2, 0.8],
};

interface MarksProps {
  readonly id: string;
  readonly step: MarkStep;
  readonly underlay: Underlay;
}

/** Keys that set the marks of a step: by pressing on the picture, or put on it to be moved by numbers. */
export function MarkKeys({ id, step, underlay, label }: MarksProps & { readonly label: string }) {
  const session = useSession();
  const names: readonly MarkName[] = MARK_NAMES[step];
  const missing = names.filter((name) => !underlay.told.points[name]);
  const isPlacing = underlay.placing !== null && names.includes(underlay.placing);
  const { width, height } = underlay.image.size;
  const placeAll = () => {
    for (const name of missing)
      putMark(session, id, name, { x: FIRST_PLACES[name][0] * width, y: FIRST_PLACES[name][1] * height });
    changeUnderlay(session, id, { placing: null });
  };
  return (
    <span className={styles.keys}>
      <button
        type="button"
        className="key"
        aria-pressed={isPlacing}
        onClick={() => (isPlacing ? changeUnderlay(session, id, { placing: null }) : startPlacing(session, id, step))}
      >
        {label}
      </button>
      {missing.length > 0 && (
        <button
          type="button"
          className="key"
          title="Puts the marks on the picture, to be moved by their numbers"
          onClick={placeAll}
        >
          Type them
        </button>
      )}
    </span>
  );
}

/** The marks of a step in numbers: the twin of dragging them. */
export function MarkTable({ id, step, underlay }: MarksProps) {
  const session = useSession();
  const names: readonly MarkName[] = MARK_NAMES[step];
  const placed = names.flatMap((name) => {
    const at = underlay.held?.name === name ? underlay.held.at : underlay.told.points[name];
    return at ? [{ name, at }] : [];
  });
  if (placed.length === 0) return null;
  const { width, height } = underlay.image.size;
  return (
    <table className={styles.marks}>
      <thead>
        <tr>
          <td />
          <th scope="col">from left</th>
          <th scope="col">from top</th>
        </tr>
      </thead>
      <tbody>
        {placed.map(({ name, at }) => (
          <tr key={name}>
            <th scope="row">{MARK_LETTERS[name]}</th>
            <td>
              <PixelField
                label={`${MARK_LETTERS[name]} from left`}
                value={at.x}
                most={width}
                onChange={(x) => putMark(session, id, name, { ...at, x })}
              />
            </td>
            <td>
              <PixelField
                label={`${MARK_LETTERS[name]} from top`}
                value={at.y}
                most={height}
                onChange={(y) => putMark(session, id, name, { ...at, y })}
              />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface PixelFieldProps {
  readonly label: string;
  readonly value: number;
  readonly most: number;
  onChange(value: number): void;
}

function PixelField({ label, value, most, onChange }: PixelFieldProps) {
  return (
    <NumberField
      label={label}
      value={Number(value.toFixed(2))}
      unit="px"
      decimals={1}
      least={0}
      most={most}
      step={0.25}
      onChange={onChange}
    />
  );
}
