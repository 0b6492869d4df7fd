import type { MouseEvent } from 'react';
import type { Units } from '../../../family/length-text.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import type { Entry } from './use-vertex-table.ts';
import { CellEntry, type EntryEnd } from './vertex-cell.tsx';
import { COLUMNS, exactLength, lengthOf, shownLength, type VertexColumn } from './vertex-entry.ts';
import styles from './vertex-table.module.css';

const HEADS: Readonly<Record<VertexColumn, { label: string; title: string }>> = {
  x: { label: 'x', title: 'To the right' },
  y: { label: 'y', title: 'Upwards' },
  radius: { label: 'radius', title: 'Radius of the edge that follows; negative bows into the outline, 0 is straight' },
  bow: { label: 'bow', title: 'How far the edge that follows stands off a straight line; negative into the outline' },
};

/** The head of the table of vertices. */
export function VertexHead() {
  return (
    <thead className={styles.head}>
      <tr aria-rowindex={1}>
        <th scope="col" title="Number of the vertex">
          <span aria-hidden="true">no.</span>
          <span className="unseen">Vertex</span>
        </th>
        {COLUMNS.map((column) => (
          <th key={column} scope="col" title={HEADS[column].title}>
            {HEADS[column].label}
          </th>
        ))}
      </tr>
    </thead>
  );
}

interface RowProps {
  readonly row: number;
  readonly vertices: readonly Vertex[];
  readonly units: Units;
  readonly chosen: boolean;
  /** The column in focus, where the row has it. */
  readonly active: number | null;
  readonly entry: Entry | null;
  readonly fault: string | null;
  readonly faultId: string;
  onPress(event: MouseEvent, column: number): void;
  onEdit(column: number): void;
  onTake(text: string, end: EntryEnd): boolean;
  onGiveUp(): void;
}

/** One vertex: its number, its place, and the edge that runs on from it. */
export function VertexRow(props: RowProps) {
  const { row, vertices, units, chosen, active, entry, fault, faultId, onPress, onEdit, onTake, onGiveUp } = props;
  const cell = (column: number) => ({
    tabIndex: active === column ? 0 : -1,
    'data-cell': active === column ? 'active' : undefined,
    onMouseDown: (event: MouseEvent) => {
      if (entry?.place.column === column) return;
      event.preventDefault();
      onPress(event, column);
    },
    onDoubleClick: () => column >= 0 && onEdit(column),
  });
  return (
    <tr aria-rowindex={row + 2} aria-selected={chosen} data-fault={fault !== null}>
      <th scope="row" {...cell(-1)}>
        {row + 1}
      </th>
      {COLUMNS.map((column, i) => {
        const nm = lengthOf(vertices, row, column);
        const edited = entry?.place.column === i;
        return (
          <td key={column} {...cell(i)}>
            {edited ? (
              <CellEntry
                label={`Vertex ${row + 1}, ${HEADS[column].label}, ${units}`}
                text={entry.text ?? (nm === null ? '' : exactLength(nm, units))}
                replaced={entry.text !== null}
                fault={fault === null ? false : fault || true}
                faultId={faultId}
                onTake={onTake}
                onGiveUp={onGiveUp}
              />
            ) : (
              <CellText nm={nm} units={units} />
            )}
          </td>
        );
      })}
    </tr>
  );
}

function CellText({ nm, units }: { nm: number | null; units: Units }) {
  if (nm !== null) return <>{shownLength(nm, units)}</>;
  return (
    <>
      <span aria-hidden="true">–</span>
      <span className="unseen">straight</span>
    </>
  );
}
