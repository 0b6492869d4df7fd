import { useMemo, useState } from 'react';
import type { Point } from '../../../geom/point.ts';
import type { DrawnLoop } from '../../../interchange/take-outline.ts';
import { type DrawingImport, isSound } from '../../state/exchange/import-state.ts';
import {
  boxSeen,
  drawingOrder,
  gapPlace,
  type LoopStand,
  laidInRow,
  loopPath,
  matrixOf,
  pixelOf,
  standOf,
} from '../../tools/loops-view.ts';
import { useSize } from '../use-size.ts';
import styles from './import-picture.module.css';

interface ImportPictureProps {
  readonly now: DrawingImport;
  onToggle(loop: number): void;
}

/** All loops of a drawing, as they will be seen; a press on one ticks it. The list beside it is its accessible twin. */
export function ImportPicture({ now, onToggle }: ImportPictureProps) {
  const [frame, size] = useSize<HTMLDivElement>();
  const [near, setNear] = useState(false);
  const { drawing } = now;
  const loops = useMemo(() => (drawing.apart ? laidInRow(drawing.loops) : drawing.loops), [drawing]);
  const shown = near ? [loops[now.pointed]] : loops;
  const stand = size && size.width > 0 && size.height > 0 && standOf(shown, now.placing, size.width, size.height);
  return (
    <div className={styles.frame}>
      <div ref={frame} className={styles.paper} aria-hidden="true">
        {stand && (
          <svg className={styles.picture} aria-hidden="true">
            {drawingOrder(loops).map((i) => (
              <LoopShape key={i} i={i} loop={loops[i]} now={now} stand={stand} onToggle={onToggle} />
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

interface ShapeProps {
  readonly i: number;
  readonly loop: DrawnLoop;
  readonly now: DrawingImport;
  readonly stand: LoopStand;
  onToggle(loop: number): void;
}

function LoopShape({ i, loop, now, stand, onToggle }: ShapeProps) {
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
  readonly stand: LoopStand;
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

function circleAt({ x, y }: Point): { cx: number; cy: number } {
  return { cx: x, cy: y };
}
