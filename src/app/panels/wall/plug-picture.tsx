import { memo, useId } from 'react';
import { isMeasured } from '../../../family/fit-cache.ts';
import { middleOf, type PlugFace, plugFacePath } from '../../../family/plug-face.ts';
import type { Fit, Verdict } from '../../../fit/fit.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { Pushed } from '../../tools/compare/pushing.ts';
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
  /** A push from the front that is under way or has ended; the blank simply lies in the keyway where absent. */
  readonly pushed?: Pushed | null;
  /** The name of the hatch, where a page has hatches of several scales. */
  readonly hatch?: string;
}

/** The end of one plug with its keyway, and the blank lying in it at its best placement; overlap is hatched. */
export function PlugPicture(props: PlugPictureProps) {
  const { opening, entrant, fit, tone, face, pxPerMm, width, height, glides, pushed = null, hatch = HATCH } = props;
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
              glides={glides && !pushed}
              pushed={pushed}
              hatch={hatch}
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
  readonly pushed: Pushed | null;
  readonly hatch: string;
}

function LaidBlank({ opening, entrant, fit, outside, glides, pushed, hatch }: LaidBlankProps) {
  const inside = `${useId()}in`;
  const blank = outlinePath(entrant.ring);
  const place = pushed ? pushedTransform(entrant, fit, pushed) : placementTransform(fit.placement);
  const lit = !pushed || (pushed.phase === 'stopped' && pushed.lit);
  return (
    <g className={glides ? styles.laid : undefined} opacity={pushed ? seenOf(pushed) : undefined}>
      {pushed && pushed.phase !== 'in' && (
        <path className={styles.shadow} d={blank} transform={`${shadowOffset(pushed)} ${place}`} />
      )}
      <path className={styles.blank} data-kind={entrant.kind} d={blank} transform={place} />
      {pushed?.phase === 'in' && (
        <path className={styles.shade} d={blank} transform={place} opacity={SHADED * pushed.down} />
      )}
      {lit && fit.verdict === 'blocked' && (
        <>
          <clipPath id={inside}>
            <path d={blank} transform={place} />
          </clipPath>
          <g clipPath={`url(#${outside})`}>
            <path className={styles.clash} d={blank} transform={place} fill={`url(#${hatch})`} />
          </g>
          <path className={styles.clashEdge} d={outlinePath(opening.ring)} clipPath={`url(#${inside})`} />
        </>
      )}
    </g>
  );
}

/** How much larger than its true size a blank sets out that comes from the eye's side of the plug. */
const NEARER = 0.45;
/** How much of it is seen then, so that the keyway is seen behind it. */
const FAINT = 0.35;
/** A blank that is in lies in the shade of the keyway. */
const SHADED = 0.34;

/** The blank on its way: larger before the plug, at true size at its face, and down to its seat when it is in. */
function pushedTransform(entrant: Profile, { placement, seated }: Fit, pushed: Pushed): string {
  if (pushed.phase === 'in') {
    const between = (from: number, to: number) => from + (to - from) * pushed.down;
    return placementTransform({ ...placement, x: between(placement.x, seated.x), y: between(placement.y, seated.y) });
  }
  const size = pushed.phase === 'coming' ? 1 + NEARER * (1 - pushed.near) : 1;
  const { x, y } = middleOf(entrant);
  return `${placementTransform(placement)} translate(${x} ${y}) scale(${size}) translate(${-x} ${-y})`;
}

function seenOf(pushed: Pushed): number {
  return pushed.phase === 'coming' ? FAINT + (1 - FAINT) * pushed.near : 1;
}

/** The shadow on the plug's face: the further before it the blank is, the further off it falls; millimetres. */
function shadowOffset(pushed: Pushed): string {
  const off = pushed.phase === 'coming' ? 0.09 + 0.5 * (1 - pushed.near) : 0.09;
  return `translate(${off} ${-off})`;
}

/** SVG transform of a placement, in millimetres and degrees. */
function placementTransform({ x, y, tilt }: Fit['placement']): string {
  return `translate(${x / 1e6} ${y / 1e6}) rotate(${(tilt * 180) / Math.PI})`;
}

/** The hatch for overlaps, one for a whole wall; seven pixels wide whatever the wall's scale. */
export function ClashHatch({ pxPerMm, name = HATCH }: { pxPerMm: number; name?: string }) {
  return (
    <svg className={styles.definitions} width="0" height="0" aria-hidden="true">
      <pattern
        id={name}
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
