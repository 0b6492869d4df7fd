import { memo } from 'react';
import { middleOf } from '../../family/plug-face.ts';
import type { Profile } from '../../profile/profile.ts';
import { outlinePath } from './draw/outline-path.ts';
import styles from './section-thumb.module.css';

interface SectionThumbProps {
  readonly profile: Profile;
  /** Half the width and half the height of the largest profile of the tray, in millimetres. */
  readonly reachX: number;
  readonly reachY: number;
  readonly width: number;
  readonly height: number;
}

/** A small picture of a section, all of a tray at one scale. */
export const SectionThumb = memo(function SectionThumb({ profile, reachX, reachY, width, height }: SectionThumbProps) {
  const scale = Math.min((width - 4) / 2 / reachX, (height - 4) / 2 / reachY);
  const middle = middleOf(profile);
  return (
    <svg className={styles.thumb} data-kind={profile.kind} width={width} height={height} aria-hidden="true">
      <path
        d={outlinePath(profile.ring)}
        transform={`translate(${width / 2} ${height / 2}) scale(${scale} ${-scale}) translate(${-middle.x} ${-middle.y})`}
      />
    </svg>
  );
});
