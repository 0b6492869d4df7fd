import { useState } from 'react';
import { type Box, NM_PER_MM, type Point } from '../../geom/point.ts';
import { edgePoints } from '../../geom/vertex.ts';
import type { DrawnLoop } from '../../interchange/take-outline.ts';
import { type DrawingImport, isSound } from '../state/import-state.ts';
import styles from './import-picture.module.css';
import { useSize } from './use-size.ts';

/** Pixels left free round the drawing, and below it for the keys. */
const MARGIN = 28;
const FOOT = 56;

/** Where the loops stand on the picture: nanometres of the drawing, seen and turned as chosen, to pixels. */
interface Stand {
  see(point: Point): Point;
  toPixel(seen: Point): Point;
  /** Pixels in a nanometre. */
  readonly scale: number;
}

interface ImportPictureProps {
  readonly now: DrawingImport;
  onToggle(loop: number): void;
}

/** All loops of a drawing, as they will be seen; a press on one ticks it. The list beside it is its accessible twin. */
export function ImportPicture({ now, onToggle }: ImportPictureProps) {
  const [frame, size] = useSize<HTMLDivElement>();
  const [near, setNear] = useState(false);
  const { loops } = now.drawing;
  const shown = near ? [loops[now.pointed]] : loops;
  const stand = size && size.width > 0 && size.height > 0 && standOf(shown, now.placing, size.width, size.height);
  return (
    <div className={styles.frame}>
      <div ref={frame} className={styles.paper} aria-hidden="true">
        {stand && (
          <svg className={styles.picture} aria-hidden="true">
            {drawingOrder(loops).map((i) => (
              <LoopShape key={i} i={i} now={now} stand={stand} onToggle={onToggle} />
            ))}
            {loops.map((loop, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a loop is known by its number only
              <LoopNumber key={i} i={i} loop={loop} pointed={i === now.pointed} stand={stand} />
            ))}
          </svg>
        )}
      </div>
      {loops.length > 1 && (
        <fieldset className={`key-row bare ${styles.zoom}`} aria-label="The picture shows">
          <button type="button" className="key" aria-pressed={!near} onClick={() => setNear(false)}>
            Whole drawing
          </button>
          <button type="button" className="key" aria-pressed={near} onClick={() => setNear(true)}>
            Number {now.pointed + 1}
          </button>
        </fieldset>
      )}
    </div>
  );
}

/** Large loops first, so that those inside lie on top and can be pressed. */
function drawingOrder(loops: readonly DrawnLoop[]): number[] {
  const area = (i: number) => loops[i].width * loops[i].height;
  return loops.map((_, i) => i).sort((a, b) => area(b) - area(a));
}

interface ShapeProps {
  readonly i: number;
  readonly now: DrawingImport;
  readonly stand: Stand;
  onToggle(loop: number): void;
}

function LoopShape({ i, now, stand, onToggle }: ShapeProps) {
  const loop = now.drawing.loops[i];
  const { ticked, kind } = now.choices[i];
  const sound = isSound(loop);
  const mark = loop.fault?.at && pixelOf(loop, loop.fault.at, stand);
  return (
    <g data-ticked={ticked && sound} data-bad={!sound} data-kind={kind} data-pointed={i === now.pointed}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the list beside it has the keys for it */}
      <path className={styles.loop} d={loopPath(loop)} transform={matrixOf(loop, stand)} onClick={() => onToggle(i)} />
      {loop.gaps.length > 0 && <circle className={styles.gap} r={9} {...circleAt(gapPlace(loop, stand))} />}
      {mark && <path className={styles.cross} d="M-9-9L9 9M-9 9L9-9" transform={`translate(${mark.x} ${mark.y})`} />}
    </g>
  );
}

interface NumberProps {
  readonly i: number;
  readonly loop: DrawnLoop;
  readonly pointed: boolean;
  readonly stand: Stand;
}

/** The number that the list gives a loop, above its upper left corner. */
function LoopNumber({ i, loop, pointed, stand }: NumberProps) {
  const box = boxSeen(loop, stand.see);
  const { x, y } = stand.toPixel({ x: box.minX, y: box.maxY });
  return (
    <text className={styles.number} x={x} y={y - 6} data-pointed={pointed}>
      {i + 1}
    </text>
  );
}

const paths = new WeakMap<DrawnLoop, string>();

/** The SVG path of a loop in millimetres, y up, its box on 0, 0. */
export function loopPath(loop: DrawnLoop): string {
  const known = paths.get(loop);
  if (known !== undefined) return known;
  const { vertices } = loop;
  const points = vertices.flatMap((vertex, i) => edgePoints(vertex, vertices[(i + 1) % vertices.length]));
  const path = `M${points.map(({ x, y }) => `${x / NM_PER_MM} ${y / NM_PER_MM}`).join('L')}Z`;
  paths.set(loop, path);
  return path;
}

/** How the loops are seen, and the largest scale at which all of `shown` have room. */
function standOf(
  shown: readonly DrawnLoop[],
  { seenFrom, quarters }: DrawingImport['placing'],
  width: number,
  height: number,
): Stand {
  const see = ({ x, y }: Point) => turned({ x: seenFrom === 'tip' ? -x : x, y }, quarters);
  const box = shown.map((loop) => boxSeen(loop, see)).reduce(boxOfBoth);
  const [w, h] = [Math.max(1, box.maxX - box.minX), Math.max(1, box.maxY - box.minY)];
  const scale = Math.min((width - 2 * MARGIN) / w, (height - MARGIN - FOOT) / h);
  const toPixel = ({ x, y }: Point) => ({
    x: width / 2 + (x - (box.minX + box.maxX) / 2) * scale,
    y: (height + MARGIN - FOOT) / 2 - (y - (box.minY + box.maxY) / 2) * scale,
  });
  return { see, toPixel, scale };
}

function turned({ x, y }: Point, quarters: number): Point {
  if (quarters === 1) return { x: -y, y: x };
  if (quarters === 2) return { x: -x, y: -y };
  return quarters === 3 ? { x: y, y: -x } : { x, y };
}

function boxSeen({ corner, width, height }: DrawnLoop, see: Stand['see']): Box {
  const [a, b] = [see(corner), see({ x: corner.x + width, y: corner.y + height })];
  return {
    minX: Math.min(a.x, b.x),
    minY: Math.min(a.y, b.y),
    maxX: Math.max(a.x, b.x),
    maxY: Math.max(a.y, b.y),
  };
}

function boxOfBoth(a: Box, b: Box): Box {
  return {
    minX: Math.min(a.minX, b.minX),
    minY: Math.min(a.minY, b.minY),
    maxX: Math.max(a.maxX, b.maxX),
    maxY: Math.max(a.maxY, b.maxY),
  };
}

/** The matrix that brings a loop's own millimetres to its place on the picture. */
function matrixOf({ corner }: DrawnLoop, { see, toPixel, scale }: Stand): string {
  const [right, up] = [see({ x: 1, y: 0 }), see({ x: 0, y: 1 })];
  const k = scale * NM_PER_MM;
  const at = toPixel(see(corner));
  return `matrix(${k * right.x} ${-k * right.y} ${k * up.x} ${-k * up.y} ${at.x} ${at.y})`;
}

function pixelOf({ corner }: DrawnLoop, at: Point, { see, toPixel }: Stand): Point {
  return toPixel(see({ x: corner.x + at.x, y: corner.y + at.y }));
}

/** The middle of the line that closes a loop. */
function gapPlace(loop: DrawnLoop, stand: Stand): Point {
  const { vertices } = loop;
  const [a, b] = widestEdgeEnds(vertices, loop.gaps[0]);
  return pixelOf(loop, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, stand);
}

/** The ends of the straight edge whose length is nearest to that of the gap. */
function widestEdgeEnds(vertices: readonly Point[], gap: number): [Point, Point] {
  const edges = vertices.map((a, i): [Point, Point] => [a, vertices[(i + 1) % vertices.length]]);
  const off = ([a, b]: [Point, Point]) => Math.abs(Math.hypot(a.x - b.x, a.y - b.y) - gap);
  return edges.reduce((best, edge) => (off(edge) < off(best) ? edge : best));
}

function circleAt({ x, y }: Point): { cx: number; cy: number } {
  return { cx: x, cy: y };
}
