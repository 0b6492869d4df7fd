import type { GrowProposal } from '../../../../plan/grow.ts';
import { growFrame } from '../../../state/plan/grow/grow-frame.ts';
import { outlinePath } from '../../draw/outline-path.ts';
import styles from './grow-picture.module.css';

interface GrowPictureProps {
  readonly proposal: Pick<GrowProposal, 'keyway' | 'blank'>;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
}

/** A proposed keyway in its plug, with its own blank in it. */
export function GrowPicture({ proposal, width, height }: GrowPictureProps) {
  const frame = growFrame(proposal, width, height);
  return (
    <svg className={styles.picture} width={width} height={height} aria-hidden="true">
      <g transform={frame.keyway}>
        <path className={styles.keyway} d={outlinePath(proposal.keyway.ring)} />
        <path className={styles.blank} d={outlinePath(proposal.blank.ring)} transform={frame.blank} />
      </g>
    </svg>
  );
}
