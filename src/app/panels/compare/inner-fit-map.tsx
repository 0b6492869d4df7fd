import { type ReactNode, useMemo } from 'react';
import { readingText, shiftText } from '../../../family/length-text.ts';
import type { InnerFit } from '../../../fit/inner-fit-region.ts';
import { type MapMark, mapView, markOf, pointsOf } from '../../tools/compare/map-view.ts';
import { type DrawingView, toPixels } from '../../tools/drawing-view.ts';
import { scaleBarLength } from '../../tools/ruler-steps.ts';
import type { ShownPair } from '../use-pair.ts';
import { useSession, useStore } from '../use-store.ts';
import { SMALL_LENGTHS } from './conditions-measure.ts';
import styles from './inner-fit-map.module.css';
import { useMapDrag } from './inner-fit-map-drag.ts';

/** Side of the map in its own pixels. */
const SIDE = 240;
/** How far from the edge a mark is held. */
const INSET = 12;

/** Every placement of the blank in the keyway as a map; the dot on it is the blank, and can be dragged. */
export function InnerFitMap({ pair }: { pair: ShownPair }) {
  const { doors } = useSession();
  const { opening, entrant, conditions, fit, placement } = pair;
  const innerFit = useMemo(
    () => doors.innerFitNow(opening.ring, entrant.ring, conditions, placement.tilt),
    [doors, opening, entrant, conditions, placement.tilt],
  );
  const view = useMemo(() => mapView(innerFit, fit.placement, SIDE), [innerFit, fit]);
  const empty = innerFit.cells.length === 0 && innerFit.contacts.length === 0;
  const drag = useMapDrag(view, SIDE, placement);
  const now = markOf(view, placement, SIDE, INSET);
  return (
    <figure className={styles.figure}>
      <div
        className={styles.map}
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the map takes the arrow keys, as its label says
        tabIndex={0}
        data-map="placements"
        aria-label="Map of placements. The arrow keys move the blank; Home lays it in its best placement."
        aria-describedby="map-status"
        {...drag}
      >
        <svg viewBox={`0 0 ${SIDE} ${SIDE}`} aria-hidden="true">
          <Axes view={view} best={fit.placement} />
          {empty ? <Window innerFit={innerFit} view={view} /> : <Region innerFit={innerFit} view={view} />}
          <Marks pair={pair} view={view} empty={empty} />
          <Now at={now} free={pair.explanation.gap >= 0} />
          <ScaleMark view={view} />
        </svg>
      </div>
      <figcaption>
        <p id="map-status" className={empty ? styles.empty : styles.status}>
          <MapStatus pair={pair} empty={empty} off={now.off} />
        </p>
        <Legend empty={empty} />
      </figcaption>
    </figure>
  );
}

function MapStatus({ pair, empty, off }: { pair: ShownPair; empty: boolean; off: boolean }) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  if (empty) return <>No placement: the map is empty{off ? '; the blank lies beyond its edge' : ''}.</>;
  const { fit, placement, explanation } = pair;
  const at = `${shiftText(placement.x - fit.placement.x, units)} sideways, ${shiftText(placement.y - fit.placement.y, units)} up`;
  if (off) return <>Beyond the edge of the map: {at}.</>;
  if (explanation.gap < 0) return <>Not free at {at}.</>;
  return (
    <>
      Free at {at}: {readingText(explanation.gap, units)} left.
    </>
  );
}

/** Lines through the best placement, from which movement is counted. */
function Axes({ view, best }: { view: DrawingView; best: { x: number; y: number } }) {
  const { px, py } = toPixels(view, best);
  return (
    <path
      className={styles.axes}
      d={`M${px.toFixed(1)} 0V${SIDE}M0 ${py.toFixed(1)}H${SIDE}`}
      vectorEffect="non-scaling-stroke"
    />
  );
}

/** The region as one shape: its cells under their own outlines, so that no seam shows. Without area, dot or segment. */
function Region({ innerFit: { cells, contacts }, view }: { innerFit: InnerFit; view: DrawingView }) {
  if (cells.length === 0) return <path className={styles.contact} d={`${pathOf(contacts, view)}Z`} />;
  const path = cells.map((cell) => `${pathOf(pointsOf(cell), view)}Z`).join('');
  return (
    <>
      <path className={styles.edge} d={path} />
      <path className={styles.region} d={path} />
    </>
  );
}

function Window({ innerFit, view }: { innerFit: InnerFit; view: DrawingView }) {
  return innerFit.window && <path className={styles.window} d={`${pathOf(pointsOf(innerFit.window), view)}Z`} />;
}

function pathOf(points: readonly { x: number; y: number }[], view: DrawingView): string {
  return points
    .map((point, i) => {
      const { px, py } = toPixels(view, point);
      return `${i === 0 ? 'M' : 'L'}${px.toFixed(2)} ${py.toFixed(2)}`;
    })
    .join('');
}

/** The best placement as a ring, with the largest circle that fits the region, and the seat as a tee on its foot. */
function Marks({ pair: { fit }, view, empty }: { pair: ShownPair; view: DrawingView; empty: boolean }) {
  const best = markOf(view, fit.placement, SIDE, INSET);
  const seat = markOf(view, fit.seated, SIDE, INSET);
  return (
    <g>
      {!empty && <circle className={styles.clear} cx={best.px} cy={best.py} r={fit.clearance * view.scale} />}
      {!empty && <path className={styles.seat} d={seatPath(seat)} />}
      <circle className={styles.best} cx={best.px} cy={best.py} r={11} />
    </g>
  );
}

function seatPath({ px, py }: { px: number; py: number }): string {
  return `M${px - 8} ${py}H${px + 8}M${px} ${py}V${py - 10}`;
}

/** Where the blank lies: a round dot where it is free, a square one where it is not. */
function Now({ at: { px, py, off }, free }: { at: MapMark; free: boolean }) {
  if (free && !off) return <circle className={styles.free} cx={px} cy={py} r={6.5} data-now="free" />;
  const box = { x: px - 6.5, y: py - 6.5, width: 13, height: 13 };
  return <rect className={off ? styles.off : styles.clash} {...box} data-now={off ? 'off' : 'clash'} />;
}

/** The scale of the map: a bar of a round length. */
function ScaleMark({ view }: { view: DrawingView }) {
  const { settings } = useSession();
  const { unit, per } = SMALL_LENGTHS[useStore(settings, (s) => s.units)];
  const length = scaleBarLength(view.scale, per, 90);
  const wide = length * view.scale;
  const y = SIDE - 8;
  return (
    <g className={styles.scale}>
      <path d={`M8 ${y - 5}V${y}H${8 + wide}V${y - 5}`} />
      <text x={8 + wide / 2} y={y - 6} textAnchor={wide < 56 ? 'start' : 'middle'} dx={wide < 56 ? -wide / 2 : 0}>
        {Number((length / per).toPrecision(2))} {unit}
      </text>
    </g>
  );
}

function Legend({ empty }: { empty: boolean }) {
  const item = (name: string, mark: ReactNode) => (
    <li>
      <svg width="22" height="22" viewBox="-11 -11 22 22" aria-hidden="true">
        {mark}
      </svg>
      {name}
    </li>
  );
  return (
    <ul className={styles.legend}>
      {item('now', <circle className={styles.free} r={6.5} />)}
      {item(empty ? 'least too deep' : 'best', <circle className={styles.best} r={9} />)}
      {empty && item('where it would have to lie', <path className={styles.window} d="M-8 -8H8V8H-8Z" />)}
      {!empty && item('seat', <path className={styles.seat} d={seatPath({ px: 0, py: 5 })} />)}
    </ul>
  );
}
