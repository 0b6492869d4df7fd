import { useEffect, useRef } from 'react';
import { sizeText } from '../../../family/length-text.ts';
import { outlineBox } from '../../../profile/outline-box.ts';
import type { NewHead } from '../../state/draw/draw-state.ts';
import styles from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import own from './draw-readings.module.css';
import { COLUMNS, lengthOf, shownLength } from './vertex-entry.ts';
import { VertexHead } from './vertex-row.tsx';
import table from './vertex-table.module.css';

const SEEN = {
  opening: 'new keyway, seen from the front of the plug',
  blank: 'new blank, seen from the bow',
  tool: 'new tool, seen from the bow',
} as const;

/** The section that the pen is making: what it will be called, and the vertices set so far. They are only read here. */
export function PenReadings({ head }: { head: NewHead }) {
  const { draw, settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const pen = useStore(draw, (s) => s.pen) ?? [];
  const box = pen.length > 1 ? outlineBox(pen) : null;
  const size = box ? `; ${sizeText(box.maxX - box.minX, box.maxY - box.minY, units).replaceAll(' ', '\u00a0')}` : '';
  return (
    <section className={styles.part} aria-labelledby="pen-title">
      <h2 id="pen-title" className={own.name}>
        {head.name}
      </h2>
      <p className={own.said}>
        {SEEN[head.kind]}
        {size}
      </p>
      {head.section && <p className={own.said}>Section: {head.section}</p>}
      <h3 id="pen-vertices" className={table.title}>
        {pen.length === 1 ? '1 vertex' : `${pen.length} vertices`} so far, {units === 'mm' ? 'mm' : 'inches'}
      </h3>
      {pen.length > 0 && <PenTable />}
      <p className={table.note}>
        {pen.length < 3
          ? 'Click on the sheet, or type places above it. Three vertices make an outline.'
          : 'Close the outline to add it to the family: then its vertices can be typed and changed here.'}
      </p>
    </section>
  );
}

/** The pen's vertices, the last one in sight. */
function PenTable() {
  const { draw, settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const pen = useStore(draw, (s) => s.pen) ?? [];
  const frame = useRef<HTMLElement>(null);
  const count = pen.length;
  useEffect(() => {
    if (frame.current && count > 0) frame.current.scrollTop = frame.current.scrollHeight;
  }, [count]);
  return (
    <section
      ref={frame}
      className={`${table.frame} ${own.penFrame}`}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard
      tabIndex={0}
      aria-labelledby="pen-vertices"
    >
      <table className={table.grid} aria-labelledby="pen-vertices">
        <VertexHead />
        <tbody>
          {pen.map((vertex, row) => (
            <tr key={`${vertex.x} ${vertex.y}`}>
              <th scope="row">{row + 1}</th>
              {COLUMNS.map((column) => {
                const nm = lengthOf(pen, row, column);
                return <td key={column}>{nm === null ? '–' : shownLength(nm, units)}</td>;
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
