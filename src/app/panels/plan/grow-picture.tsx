import { boxOf, NM_PER_MM } from '../../../geom/point.ts';
import type { GrowProposal } from '../../../plan/grow.ts';
import { outlinePath } from '../draw/outline-path.ts';
import styles from './grow-picture.module.css';

interface GrowPictureProps {
  readonly proposal: Pick<GrowProposal, 'keyway' | 'blank'>;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
}

/** Room round the keyway, millimetres. */
const MARGIN = 0.5;

/** A proposed keyway in its plug, with its own blank in it. */
export function GrowPicture({ proposal: { keyway, blank }, width, height }: GrowPictureProps) {
  const [k, b] = [boxOf(keyway.ring), boxOf(blank.ring)];
  const size = { x: (k.maxX - k.minX) / NM_PER_MM + 2 * MARGIN, y: (k.maxY - k.minY) / NM_PER_MM + 2 * MARGIN };
  const scale = Math.min(width / size.x, height / size.y);
  const middle = (box: typeof k) => ({
    x: (box.minX + box.maxX) / 2 / NM_PER_MM,
    y: (box.minY + box.maxY) / 2 / NM_PER_MM,
  });
  const [at, own] = [middle(k), middle(b)];
  return (
    <svg className={styles.picture} width={width} height={height} aria-hidden="true">
      <g transform={`translate(${width / 2} ${height / 2}) scale(${scale} ${-scale}) translate(${-at.x} ${-at.y})`}>
        <path className={styles.keyway} d={outlinePath(keyway.ring)} />
        <path
          className={styles.blank}
          d={outlinePath(blank.ring)}
          transform={`translate(${at.x - own.x} ${at.y - own.y})`}
        />
      </g>
    </svg>
  );
}
