import { middleOf } from '../../../family/plug-face.ts';
import type { Pinch, Touch } from '../../../gauge/pinch.ts';
import type { Point } from '../../../geom/point.ts';
import type { Profile } from '../../../profile/profile.ts';
import { outlinePath } from '../draw/outline-path.ts';
import styles from './pinch-picture.module.css';

interface PinchPictureProps {
  readonly opening: Profile;
  /** Width and height of the largest keyway of the family, nanometres: all are drawn at one scale. */
  readonly reach: { readonly width: number; readonly height: number };
  /** The strip where it stands and what holds it; null where none goes in. */
  readonly pinch: Pinch | null;
  readonly width: number;
  readonly height: number;
  /** What is written beside the height and over the thickness of the strip. */
  readonly heightText: string;
  readonly thicknessText: string;
  /** The picture in words. */
  readonly label: string;
}

/** Room for the thickness above and for the height on the left, pixels; and below and on the right. */
const TOP = 40;
const SIDE = 42;
const EDGE = 14;

/** One keyway with the thickest strip in it, and marks where the keyway holds it. */
export function PinchPicture(props: PinchPictureProps) {
  const { opening, reach, pinch, width, height, label } = props;
  const perMm = Math.max(
    1,
    Math.min((width - 2 * SIDE) / (reach.width / 1e6), (height - TOP - EDGE) / (reach.height / 1e6)),
  );
  const middle = middleOf(opening);
  const origin = { x: width / 2, y: TOP + (height - TOP - EDGE) / 2 };
  const at = ({ x, y }: Point) => ({
    x: origin.x + (x / 1e6 - middle.x) * perMm,
    y: origin.y - (y / 1e6 - middle.y) * perMm,
  });
  return (
    <svg className={styles.picture} width={width} height={height} role="img" aria-label={label}>
      <g transform={`translate(${origin.x} ${origin.y}) scale(${perMm} ${-perMm})`}>
        <g transform={`translate(${-middle.x} ${-middle.y})`}>
          <path className={styles.keyway} d={outlinePath(opening.ring)} />
          {pinch && <path className={styles.strip} d={outlinePath(pinch.strip)} />}
          <path className={styles.edge} d={outlinePath(opening.ring)} />
        </g>
      </g>
      {pinch?.touches.map((touch) => (
        <TouchMark key={keyOf(touch)} from={at(touch.from)} to={at(touch.to)} />
      ))}
      {pinch && <Across places={pinch.across.map(at)} />}
      {pinch && <Measures {...props} corners={pinch.strip.map(at)} />}
    </svg>
  );
}

interface Place {
  readonly x: number;
  readonly y: number;
}

const keyOf = ({ side, from, to }: Touch) => `${side} ${from.x} ${from.y} ${to.x} ${to.y}`;

/** A thick line where the plug touches the strip, a dot where that is one place. */
function TouchMark({ from, to }: { from: Place; to: Place }) {
  const path = `M${from.x} ${from.y}L${to.x} ${to.y}`;
  return (
    <g className={styles.touch}>
      <path className={styles.halo} d={path} />
      <path d={path} />
    </g>
  );
}

/** Length of an arrow that points at the strip, pixels. */
const ARROW = 26;

/** Two arrows, from the left and from the right, at the places that set the thickness. */
function Across({ places }: { places: readonly Place[] }) {
  const [left, right] = places;
  if (!left || !right) return null;
  const arrow = ({ x, y }: Place, way: number) =>
    `M${x - way * ARROW} ${y}H${x - way * 3}m${-way * 9} -7l${way * 9} 7l${-way * 9} 7`;
  const path = arrow(left, 1) + arrow(right, -1);
  return (
    <g className={styles.across}>
      <path className={styles.halo} d={path} />
      <path d={path} />
    </g>
  );
}

/** The strip's height at its left, and its thickness above the keyway. */
function Measures({ corners, heightText, thicknessText }: PinchPictureProps & { corners: readonly Place[] }) {
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const side = SIDE - 14;
  const over = TOP - 6;
  return (
    <g className={styles.measures}>
      <path d={`M${side} ${top}V${bottom}M${side - 6} ${top}h12M${side - 6} ${bottom}h12`} />
      <path className={styles.lead} d={`M${side} ${top}H${left}M${side} ${bottom}H${left}`} />
      <text transform={`translate(${side - 8} ${(top + bottom) / 2}) rotate(-90)`} textAnchor="middle">
        {heightText}
      </text>
      <path d={`M${left} ${over}v-9M${right} ${over}v-9M${left} ${over - 5}H${right}`} />
      <path className={styles.lead} d={`M${left} ${over}V${top}M${right} ${over}V${top}`} />
      <text x={(left + right) / 2} y={19} textAnchor="middle" className={styles.thickness}>
        {thicknessText}
      </text>
    </g>
  );
}
