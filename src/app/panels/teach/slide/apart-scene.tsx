import { useId } from 'react';
import type { PlugFace } from '../../../../family/plug-face.ts';
import type { Profile } from '../../../../profile/profile.ts';
import { halfSizeOf } from '../../../state/teach/half-size.ts';
import { SectionThumb } from '../../section-thumb.tsx';
import { ClashHatch, PlugPicture } from '../../wall/plug-picture.tsx';
import { sceneScale } from './pair-scene.tsx';
import styles from './slide.module.css';

interface ApartSceneProps {
  readonly entrant: Profile;
  readonly opening: Profile;
  readonly face: PlugFace;
  readonly width: number;
  readonly height: number;
}

/** A blank and a keyway beside each other at one scale, before it is told whether they go together. */
export function ApartScene({ entrant, opening, face, width, height }: ApartSceneProps) {
  const hatch = `${useId()}hatch`;
  const half = halfSizeOf(entrant);
  const [wide, tall] = [2 * half.x, 2 * half.y];
  const blankShare = wide / (wide + 2 * face.half + 1);
  const pxPerMm = Math.min(sceneScale(face, width * (1 - blankShare) - 30, height), (height - 12) / tall);
  const blank = { width: Math.ceil(wide * pxPerMm) + 12, height: Math.ceil(tall * pxPerMm) + 12 };
  return (
    <div className={styles.apart} style={{ width, height }} aria-hidden="true">
      <ClashHatch pxPerMm={pxPerMm / 2} name={hatch} />
      <SectionThumb profile={entrant} reachX={half.x} reachY={half.y} width={blank.width} height={blank.height} />
      <PlugPicture
        opening={opening}
        entrant={null}
        fit={undefined}
        tone="unknown"
        face={face}
        pxPerMm={pxPerMm}
        width={Math.ceil(2 * face.half * pxPerMm) + 10}
        height={Math.ceil(2 * face.radius * pxPerMm) + 10}
        glides={false}
        hatch={hatch}
      />
    </div>
  );
}
