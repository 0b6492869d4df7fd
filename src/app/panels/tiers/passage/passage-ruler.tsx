import type { Units } from '../../../../family/length-text.ts';
import type { Box } from '../../../../geom/point.ts';
import styles from './passage-picture.module.css';

interface PassageRulerProps {
  /** What is drawn, millimetres; the back of the blank lies on height 0. */
  readonly box: Box;
  readonly view: { readonly scale: number; readonly x: number; readonly y: number };
  readonly units: Units;
  /** Where the ruler's line stands, pixels. */
  readonly left: number;
}

const MM_PER_INCH = 25.4;

/** Steps between heights with a number, in the unit. */
const STEPS: Readonly<Record<Units, readonly number[]>> = { mm: [1, 2, 5, 10], in: [0.05, 0.1, 0.2, 0.5] };

/** Numbers stand at least this far apart, pixels. */
const APART = 24;

/** Heights above the back of the blank, at the left of the picture. */
export function PassageRuler({ box, view, units, left }: PassageRulerProps) {
  const per = units === 'in' ? MM_PER_INCH : 1;
  const step = STEPS[units].find((one) => one * per * view.scale >= APART) ?? STEPS[units][3];
  const first = Math.ceil(Math.max(0, box.minY) / per / step);
  const count = Math.max(0, Math.floor(box.maxY / per / step) - first + 1);
  const yOf = (value: number) => view.y - value * per * view.scale;
  return (
    <g className={styles.ruler}>
      <path d={`M${left} ${yOf(box.maxY / per)}V${yOf(Math.max(0, box.minY) / per)}`} />
      {Array.from({ length: count }, (_, i) => (first + i) * step).map((value) => (
        <g key={value}>
          <path d={`M${left - 7} ${yOf(value)}h14`} />
          <text x={left - 11} y={yOf(value) + 5} textAnchor="end">
            {value === 0 ? `0 ${units}` : value.toFixed(units === 'in' ? 2 : 0)}
          </text>
        </g>
      ))}
    </g>
  );
}
