import { useId, useMemo } from 'react';
import { readingText } from '../../../../family/length-text.ts';
import type { Comparison } from '../../../../identify/compare-outlines.ts';
import type { Profile } from '../../../../profile/profile.ts';
import {
  closeWindow,
  type LaidPaths,
  type LaidWindow,
  laidPaths,
  liesApart,
  pixelIn,
  type WindowSize,
  wholeWindow,
} from '../../../state/names/laid-windows.ts';
import { useSize } from '../../use-size.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './identify-picture.module.css';

interface IdentifyPictureProps {
  readonly unknownName: string;
  readonly known: Profile;
  readonly comparison: Comparison;
}

/** The unknown on a section: both outlines, what only one of them has, and the place where they are furthest apart. */
export function IdentifyPicture({ unknownName, known, comparison }: IdentifyPictureProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const [frame, size] = useSize<HTMLDivElement>();
  const parts = useMemo(() => laidPaths(comparison, known), [comparison, known]);
  const far = liesApart(comparison);
  // A file is often called like the section that is in it.
  const shownName = unknownName === known.name ? 'the unknown' : unknownName;
  const words = far
    ? `${unknownName} laid on ${known.name}: ${readingText(comparison.most, units)} apart at most`
    : `${unknownName} lies on ${known.name} everywhere`;
  return (
    <figure className={styles.figure}>
      <div ref={frame} className={styles.frame}>
        {size && size.width > 40 && size.height > 40 && (
          <svg className={styles.picture} width={size.width} height={size.height} role="img" aria-label={words}>
            <Views parts={parts} known={known} comparison={comparison} size={size} far={far}>
              {readingText(comparison.most, units)}
            </Views>
          </svg>
        )}
      </div>
      <Legend unknownName={shownName} knownName={known.name} far={far} />
    </figure>
  );
}

interface ViewsProps {
  readonly parts: LaidPaths;
  readonly known: Profile;
  readonly comparison: Comparison;
  readonly size: WindowSize;
  readonly far: boolean;
  readonly children: string;
}

/** The whole at the left; at the right, where there is anything to see, the place of the greatest distance enlarged. */
function Views({ parts, known, comparison, size, far, children }: ViewsProps) {
  const whole = wholeWindow(known, comparison, size);
  const close = far ? closeWindow(comparison, size, whole) : null;
  return (
    <>
      <View parts={parts} window={whole} />
      {close && (
        <>
          <Spot comparison={comparison} window={whole} close={close} />
          <View parts={parts} window={close} framed />
          <FarMark comparison={comparison} window={close}>
            {children}
          </FarMark>
        </>
      )}
    </>
  );
}

/** Both outlines in a window, and what only one of them covers. */
function View({ parts, window, framed = false }: { parts: LaidPaths; window: LaidWindow; framed?: boolean }) {
  const id = useId();
  const { left, top, width, height, middle, pxPerMm } = window;
  return (
    <g>
      <clipPath id={`${id}clip`}>
        <rect x={left} y={top} width={width} height={height} />
      </clipPath>
      <Patterns id={id} pxPerMm={pxPerMm} />
      <g clipPath={`url(#${id}clip)`}>
        {framed && <rect className={styles.ground} x={left} y={top} width={width} height={height} />}
        <g
          transform={`translate(${left + width / 2} ${top + height / 2}) scale(${pxPerMm} ${-pxPerMm}) translate(${-middle.x} ${-middle.y})`}
        >
          <path className={styles.body} d={parts.known} />
          {parts.onlyKnown && <path d={parts.onlyKnown} fill={`url(#${id}known)`} />}
          {parts.onlyUnknown && <path d={parts.onlyUnknown} fill={`url(#${id}unknown)`} />}
          <path className={styles.known} d={parts.known} />
          <path className={styles.unknown} d={parts.laid} />
        </g>
      </g>
      {framed && <rect className={styles.rim} x={left} y={top} width={width} height={height} />}
    </g>
  );
}

/** Stripes for what only the unknown covers, dots for what only the section covers; pixels wide at any scale. */
function Patterns({ id, pxPerMm }: { id: string; pxPerMm: number }) {
  const scale = `scale(${1 / pxPerMm})`;
  return (
    <defs>
      <pattern
        id={`${id}unknown`}
        width="7"
        height="7"
        patternUnits="userSpaceOnUse"
        patternTransform={`${scale} rotate(45)`}
      >
        <rect className={styles.stripeGround} width="7" height="7" />
        <rect className={styles.stripe} width="3.5" height="7" />
      </pattern>
      <pattern id={`${id}known`} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform={scale}>
        <rect className={styles.dotGround} width="6" height="6" />
        <circle className={styles.dot} cx="3" cy="3" r="1.7" />
      </pattern>
    </defs>
  );
}

/** Pixels between a frame and the edge of the picture. */
const RIM = 4;

/** Where in the whole the enlarged place is. */
function Spot({ comparison, window, close }: { comparison: Comparison; window: LaidWindow; close: LaidWindow }) {
  const { x, y } = pixelIn(window, {
    x: (comparison.at.x + comparison.nearest.x) / 2,
    y: (comparison.at.y + comparison.nearest.y) / 2,
  });
  const half = Math.max(9, ((close.width / close.pxPerMm) * window.pxPerMm) / 2);
  // What would be cut at the edge of the picture is drawn along it.
  const [left, right] = [Math.max(RIM, x - half), Math.min(close.left - 2 * RIM, x + half)];
  const [top, bottom] = [Math.max(RIM, y - half), Math.min(window.height - RIM, y + half)];
  return (
    <g>
      <path className={styles.leader} d={`M${right} ${top}L${close.left} ${close.top}`} />
      <path className={styles.leader} d={`M${right} ${bottom}L${close.left} ${close.top + close.height}`} />
      <rect className={styles.spot} x={left} y={top} width={right - left} height={bottom - top} />
    </g>
  );
}

/** The greatest distance, drawn from one outline to the other, with its figure. */
function FarMark({ comparison, window, children }: { comparison: Comparison; window: LaidWindow; children: string }) {
  const [from, to] = [pixelIn(window, comparison.at), pixelIn(window, comparison.nearest)];
  const wide = 9.5 * children.length + 14;
  const x = Math.min(window.left + window.width - wide - 4, Math.max(window.left + 4, (from.x + to.x) / 2 - wide / 2));
  const below = Math.max(from.y, to.y) + 14;
  const y = below + 28 < window.top + window.height ? below : Math.min(from.y, to.y) - 40;
  return (
    <g>
      <path className={styles.halo} d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
      <path className={styles.distance} d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
      <circle className={styles.end} cx={from.x} cy={from.y} r="5" />
      <circle className={styles.end} cx={to.x} cy={to.y} r="5" />
      <rect className={styles.plate} x={x} y={y} width={wide} height="27" />
      <text className={styles.figureText} x={x + wide / 2} y={y + 19}>
        {children}
      </text>
    </g>
  );
}

/** What the lines and the hatches mean. */
function Legend({ unknownName, knownName, far }: { unknownName: string; knownName: string; far: boolean }) {
  const id = useId();
  return (
    <figcaption className={styles.legend}>
      <svg width="0" height="0" aria-hidden="true" className={styles.hidden}>
        <Patterns id={id} pxPerMm={1} />
      </svg>
      <span>
        <svg width="30" height="14" aria-hidden="true">
          <path className={styles.known} d="M0 7H30" />
        </svg>
        {knownName}
      </span>
      <span>
        <svg width="30" height="14" aria-hidden="true">
          <path className={styles.unknown} d="M0 7H30" />
        </svg>
        {unknownName}
      </span>
      {far && (
        <>
          <span>
            <svg width="30" height="14" aria-hidden="true">
              <rect width="30" height="14" fill={`url(#${id}known)`} />
            </svg>
            only {knownName}
          </span>
          <span>
            <svg width="30" height="14" aria-hidden="true">
              <rect width="30" height="14" fill={`url(#${id}unknown)`} />
            </svg>
            only {unknownName}
          </span>
        </>
      )}
    </figcaption>
  );
}
