import { memo, useId } from 'react';
import { isMeasured } from '../../../family/fit-cache.ts';
import type { Fit, Verdict } from '../../../fit/fit.ts';
import type { Profile } from '../../../profile/profile.ts';
import { middleOf, type PlugFace, plugFacePath } from '../../state/plug-face.ts';
import { outlinePath } from '../draw/outline-path.ts';
import styles from './plug-picture.module.css';

/** Name of the hatch that stands in {@link ClashHatch}. */
const HATCH = 'clash-hatch';

/** All of the plane but the opening: an outer frame far away and the opening as its hole. */
const FAR_FRAME = 'M-999 -999H999V999H-999Z';

interface PlugPictureProps {
  readonly opening: Profile;
  readonly entrant: Profile | null;
  readonly fit: Fit | undefined;
  /** How the plug is outlined. */
  readonly tone: Verdict | 'unknown';
  readonly face: PlugFace;
  readonly pxPerMm: number;
  readonly width: number;
  readonly height: number;
  /** Whether another blank is seen to be laid in; off where there are too many plugs to move at once. */
  readonly glides: boolean;
}

/** The end of one plug with its keyway, and the blank lying in it at its best placement; overlap is hatched. */
export function PlugPicture(props: PlugPictureProps) {
  const { opening, entrant, fit, tone, face, pxPerMm, width, height, glides } = props;
  const outside = `${useId()}out`;
  const middle = middleOf(opening);
  return (
    <svg className={styles.picture} data-verdict={tone} width={width} height={height} aria-hidden="true">
      <g transform={`translate(${width / 2} ${height / 2}) scale(${pxPerMm} ${-pxPerMm})`}>
        <path className={styles.plug} d={plugFacePath(face)} />
        <g transform={`translate(${-middle.x} ${-middle.y})`}>
          <Keyway path={outlinePath(opening.ring)} outside={outside} />
          {entrant && fit && isMeasured(fit) && (
            <LaidBlank
              key={glides ? entrant.id : 'blank'}
              opening={opening}
              entrant={entrant}
              fit={fit}
              outside={outside}
              glides={glides}
            />
          )}
        </g>
      </g>
    </svg>
  );
}

/** The opening, and under the name given all that is not the opening, to clip by: neither changes with the blank. */
const Keyway = memo(function Keyway({ path, outside }: { path: string; outside: string }) {
  return (
    <>
      <path className={styles.keyway} d={path} />
      <clipPath id={outside}>
        <path d={FAR_FRAME + path} clipRule="evenodd" />
      </clipPath>
    </>
  );
});

interface LaidBlankProps {
  readonly opening: Profile;
  readonly entrant: Profile;
  readonly fit: Fit;
  readonly outside: string;
  readonly glides: boolean;
}

function LaidBlank({ opening, entrant, fit, outside, glides }: LaidBlankProps) {
  const inside = `${useId()}in`;
  const blank = outlinePath(entrant.ring);
  const place = placementTransform(fit);
  return (
    <g className={glides ? styles.laid : undefined}>
      <path className={styles.blank} data-kind={entrant.kind} d={blank} transform={place} />
      {fit.verdict === 'blocked' && (
        <>
          <clipPath id={inside}>
            <path d={blank} transform={place} />
          </clipPath>
          <g clipPath={`url(#${outside})`}>
            <path className={styles.clash} d={blank} transform={place} fill={`url(#${HATCH})`} />
          </g>
          <path className={styles.clashEdge} d={outlinePath(opening.ring)} clipPath={`url(#${inside})`} />
        </>
      )}
    </g>
  );
}

/** SVG transform of a fit's placement, in millimetres and degrees. */
function placementTransform({ placement: { x, y, tilt } }: Fit): string {
  return `translate(${x / 1e6} ${y / 1e6}) rotate(${(tilt * 180) / Math.PI})`;
}

/** The hatch for overlaps, one for a whole wall; seven pixels wide whatever the wall's scale. */
export function ClashHatch({ pxPerMm }: { pxPerMm: number }) {
  return (
    <svg className={styles.definitions} width="0" height="0" aria-hidden="true">
      <pattern
        id={HATCH}
        width="7"
        height="7"
        patternUnits="userSpaceOnUse"
        patternTransform={`scale(${1 / pxPerMm}) rotate(45)`}
      >
        <rect className={styles.hatchGround} width="7" height="7" />
        <rect className={styles.hatchStripe} width="3.6" height="7" />
      </pattern>
    </svg>
  );
}
