import { type KeyboardEvent, useId } from 'react';
import type { BladeLimits } from '../../../../family/plan.ts';
import type { WardSite } from '../../../../plan/ward-sites.ts';
import { bladePath, type Frame, frameOf, sitePath } from '../../../state/plan/blade/blade-paths.ts';
import { bladeLookOf } from '../../../state/plan/blade/blade-state.ts';
import { siteByKey, siteLabel } from '../../../state/plan/blade/blade-words.ts';
import { useSize } from '../../use-size.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './blade-picture.module.css';
import type { BladeNow } from './use-blade-layout.ts';

/** The blade with every place for a ward, numbered; one is picked by pointer or by arrow keys. */
export function BladePicture({ now }: { now: BladeNow }) {
  const [element, size] = useSize<HTMLDivElement>();
  const frame = size && frameOf(now.blade, size);
  return (
    <div ref={element} className={styles.frame}>
      {frame && <Drawing now={now} frame={frame} />}
    </div>
  );
}

function Drawing({ now, frame }: { now: BladeNow; frame: Frame }) {
  const id = useId();
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const { blade, layout, picked } = now;
  const pick = (site: number) => bladeLookOf(session).setState({ site });
  const onKeyDown = (event: KeyboardEvent) => {
    const next = picked === null ? null : siteByKey(layout.sites, picked, event.key);
    if (next === null) return;
    event.preventDefault();
    event.stopPropagation();
    pick(next);
  };
  return (
    <>
      <svg className={styles.drawing} width={frame.width} height={frame.height} aria-hidden="true">
        <Zones now={now} frame={frame} hatch={`${id}-cuts`} />
      </svg>
      {layout.sites.length > 0 && (
        <div
          className={styles.sites}
          role="listbox"
          tabIndex={0}
          aria-label="Ward sites, lowest first"
          aria-activedescendant={picked === null ? undefined : `${id}-${picked}`}
          onKeyDown={onKeyDown}
        >
          <svg width={frame.width} height={frame.height} role="presentation">
            {layout.sites.map((site, i) => (
              <Site
                key={`${site.side} ${site.bottom}`}
                id={`${id}-${i}`}
                label={siteLabel(i, site, blade, units)}
                {...{ blade, site, frame }}
                place={i}
                picked={i === picked}
                onPick={() => pick(i)}
              />
            ))}
          </svg>
        </div>
      )}
    </>
  );
}

interface SiteProps {
  readonly id: string;
  readonly label: string;
  readonly blade: BladeLimits;
  readonly site: WardSite;
  readonly frame: Frame;
  readonly place: number;
  readonly picked: boolean;
  onPick(): void;
}

/** One place for a ward: its groove at every depth, and its number beside the blade. */
function Site({ id, label, blade, site, frame, place, picked, onPick }: SiteProps) {
  const { depths, side, bottom } = site;
  const y = frame.y(bottom + blade.grooveWidth / 2);
  const x = side === 'left' ? frame.x(0) - LABEL : frame.x(blade.thickness) + LABEL;
  return (
    <g id={id} role="option" aria-selected={picked} aria-label={label} className={styles.site} onClick={onPick}>
      <rect className={styles.reach} {...reachOf(blade, site, frame)} />
      {[...depths].reverse().map((depth) => (
        <path key={depth} d={sitePath(blade, site, depth, frame)} />
      ))}
      <circle cx={x} cy={y} r={RADIUS} />
      <text x={x} y={y} dy="0.36em">
        {place + 1}
      </text>
    </g>
  );
}

/** What the pointer may hit of a site: from its number to its root. */
function reachOf({ thickness, grooveDepth, grooveWidth }: BladeLimits, { side, bottom }: WardSite, frame: Frame) {
  const [out, root] =
    side === 'left'
      ? [frame.x(0) - LABEL - RADIUS, frame.x(grooveDepth)]
      : [frame.x(thickness) + LABEL + RADIUS, frame.x(thickness - grooveDepth)];
  const y = frame.y(bottom + grooveWidth);
  return { x: Math.min(out, root), width: Math.abs(root - out), y, height: frame.y(bottom) - y };
}

/** From a face of the blade to the middle of a site's number, and its size; pixels. */
const LABEL = 24;
const RADIUS = 13;

/** The plain blade, its centre line, and the heights that are kept free. */
function Zones({ now: { blade }, frame, hatch }: { now: BladeNow; frame: Frame; hatch: string }) {
  const { thickness, height, cutZone, backZone } = blade;
  const [left, right] = [frame.x(0), frame.x(thickness)];
  const cuts = Math.min(cutZone, height);
  return (
    <>
      <defs>
        <pattern id={hatch} width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect width="9" height="9" className={styles.blade} />
          <line x1="0" y1="0" x2="0" y2="9" className={styles.hatch} />
        </pattern>
      </defs>
      <path d={bladePath(blade, frame)} className={styles.blade} />
      {cuts > 0 && (
        <rect x={left} y={frame.y(height)} width={right - left} height={frame.px(cuts)} fill={`url(#${hatch})`} />
      )}
      <path d={bladePath(blade, frame)} className={styles.edge} />
      {backZone > 0 && backZone < height && (
        <line className={styles.limit} x1={left - 8} x2={right + 8} y1={frame.y(backZone)} y2={frame.y(backZone)} />
      )}
      {cuts > 0 && cuts < height && (
        <line
          className={styles.limit}
          x1={left - 8}
          x2={right + 8}
          y1={frame.y(height - cuts)}
          y2={frame.y(height - cuts)}
        />
      )}
      <line
        className={styles.centre}
        x1={(left + right) / 2}
        x2={(left + right) / 2}
        y1={frame.y(height)}
        y2={frame.y(0)}
      />
      {frame.px(cuts) > 24 && right - left > 44 && (
        <text className={styles.word} x={(left + right) / 2} y={frame.y(height - cuts / 2)} dy="0.36em">
          cuts
        </text>
      )}
    </>
  );
}
