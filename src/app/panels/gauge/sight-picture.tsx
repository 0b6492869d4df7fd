import type { Profile } from '../../../profile/profile.ts';
import type { OutlineSight } from '../../../profile/sight-line.ts';
import { boxAround } from '../../state/gauge/strip-in-hand.ts';
import { outlinePath } from '../draw/outline-path.ts';
import styles from './sight-picture.module.css';

/** Pixels round the keyway. */
const EDGE = 12;

interface SightPictureProps {
  readonly opening: Profile;
  readonly sight: OutlineSight;
  readonly height: number;
  readonly label: string;
}

/** A keyway with its centre line, the gap that one can look through, and the tips of its longest wards. */
export function SightPicture({ opening, sight, height, label }: SightPictureProps) {
  const box = boxAround(opening);
  const scale = (height - 2 * EDGE) / (box.maxY - box.minY);
  const width = (box.maxX - box.minX) * scale + 120;
  const x = (nm: number) => width / 2 + (nm - (box.minX + box.maxX) / 2) * scale;
  const y = (nm: number) => EDGE + (box.maxY - nm) * scale;
  const [from, to] = [Math.min(sight.from, sight.to), Math.max(sight.from, sight.to)];
  const tips = [sight.leftTip, sight.rightTip].filter((tip) => tip !== null);
  return (
    <svg className={styles.picture} width={width} height={height} role="img" aria-label={label}>
      <g transform={`translate(${x(0)} ${y(0)}) scale(${scale * 1e6} ${-scale * 1e6})`}>
        <path className={styles.keyway} d={outlinePath(opening.ring)} />
      </g>
      <rect
        className={styles.gap}
        data-passes={sight.strip <= 0 || undefined}
        x={x(from)}
        y={2}
        width={Math.max(1, x(to) - x(from))}
        height={height - 4}
      />
      <path className={styles.centreHalo} d={`M${x(sight.centre)} 0V${height}`} />
      <path className={styles.centre} d={`M${x(sight.centre)} 0V${height}`} />
      {tips.map((tip) => (
        <g key={`${tip.x} ${tip.y}`} className={styles.tip}>
          <circle className={styles.halo} cx={x(tip.x)} cy={y(tip.y)} r={6} />
          <circle cx={x(tip.x)} cy={y(tip.y)} r={6} />
        </g>
      ))}
    </svg>
  );
}
