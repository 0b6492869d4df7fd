import { Fragment, useId } from 'react';
import type { Profile } from '../../../profile/profile.ts';
import { chosenNow, deleteVertices, insertVertex } from '../../state/draw/draw-editing.ts';
import { chosenIn, editedVertices } from '../../state/draw/draw-state.ts';
import { describedBy } from '../../state/draw/mill-words.ts';
import { useSession, useStore } from '../use-store.ts';
import { ROW, SEEN, spacedRows, type TableHand, useVertexTable } from './use-vertex-table.ts';
import { VertexHead, VertexRow } from './vertex-row.tsx';
import styles from './vertex-table.module.css';
import { copyFrom, pasteInto, pressKey, pressRow, takeInto } from './vertex-table-acts.ts';

const WORDS = { mm: 'mm', in: 'inches' } as const;

const EXAMPLES = {
  mm: 'Type 2.5, a step +0.1 or −0.05, =−0.05 for minus, a sum, or both at once: 2.1 0.5.',
  in: 'Type 0.0985, a step +0.004 or −0.002, =−0.002 for minus, a sum, or both at once: 0.083 0.02.',
} as const;

/**
 * The vertices of the edited outline as a table: all that can be done to them on the sheet can be done here with keys.
 * Chosen rows are chosen vertices. Only the rows in sight are drawn, so that an outline may have thousands.
 */
export function VertexTable({ profile }: { profile: Profile }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const previewed = useStore(session.draw, (s) => s.edit?.kind === 'preview');
  const count = editedVertices(profile).length;
  const chosen = chosenIn({ chosen: useStore(session.draw, (s) => s.chosen) }, count);
  const hand = useVertexTable(session, count, chosen);
  const id = useId();
  const { fault, told } = hand;
  return (
    // The numbers of what is only shown cannot be edited.
    <section className={styles.part} aria-labelledby={`${id}-title`} inert={previewed}>
      <h3 id={`${id}-title`} className={styles.title}>
        {count} vertices, {WORDS[units]}
        {previewed && ', as it would be'}
      </h3>
      {fault && fault.words !== '' && (
        <p id={`${id}-fault`} role="alert" className={styles.fault}>
          Row {fault.row + 1}: {fault.words}
        </p>
      )}
      <p role="status" className={styles.told}>
        {told}
      </p>
      <VertexGrid profile={profile} chosen={chosen} hand={hand} id={id} />
      {profile.milled && (
        <p className={styles.note}>
          It is described by {describedBy(profile)}. A change here makes it a drawn outline; undo brings them back.
        </p>
      )}
      <RowKeys hand={hand} chosen={chosen.length} />
      <p id={`${id}-keys`} className={styles.note}>
        Arrows walk, Shift+arrows choose several, Enter edits, Insert adds, Delete removes. {EXAMPLES[units]}
      </p>
    </section>
  );
}

interface VertexGridProps {
  readonly profile: Profile;
  readonly chosen: readonly number[];
  readonly hand: TableHand;
  readonly id: string;
}

function VertexGrid({ profile, chosen, hand, id }: VertexGridProps) {
  const units = useStore(hand.session.settings, (s) => s.units);
  const vertices = editedVertices(profile);
  const { cell, count, entry, fault, set } = hand;
  const height = ROW * (Math.min(count, SEEN) + 1) + 4;
  return (
    <div ref={hand.frame} className={styles.frame} style={{ height }} onScroll={hand.onScroll}>
      <table
        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table whose cells are walked and edited is a grid
        role="grid"
        aria-labelledby={`${id}-title`}
        aria-describedby={`${id}-keys`}
        aria-rowcount={count + 1}
        aria-multiselectable="true"
        className={styles.grid}
        onKeyDown={(event) => pressKey(hand, event)}
        onCopy={(event) => copyFrom(hand, event)}
        onPaste={(event) => pasteInto(hand, event)}
      >
        <VertexHead />
        <tbody>
          {spacedRows(hand.top, count, cell.row).map(({ row, before }) => (
            <Fragment key={row}>
              {before > 0 && <tr style={{ height: ROW * before }} />}
              {row < count && (
                <VertexRow
                  row={row}
                  vertices={vertices}
                  units={units}
                  chosen={chosen.includes(row)}
                  active={row === cell.row ? cell.column : null}
                  entry={entry?.place.row === row ? entry : null}
                  fault={fault?.row === row ? fault.words : null}
                  faultId={`${id}-fault`}
                  onPress={(event, column) => pressRow(hand, event, { row, column })}
                  onEdit={(column) => set({ entry: { place: { row, column }, text: null } })}
                  onTake={(text, end) => takeInto(hand, text, end)}
                  onGiveUp={() => {
                    set({ entry: null, fault: null });
                    hand.focusNext();
                  }}
                />
              )}
            </Fragment>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function RowKeys({ hand, chosen }: { hand: TableHand; chosen: number }) {
  const { session, cell } = hand;
  const act = (run: () => unknown) => {
    run();
    hand.focusNext();
  };
  const gone = () => (chosen > 0 ? chosenNow(session) : [cell.row]);
  return (
    <div className={styles.keys}>
      <span className="key-row">
        <button
          type="button"
          className="key"
          title="Add a vertex in the middle of the edge after this row (Insert)"
          onClick={() => act(() => insertVertex(session, cell.row))}
        >
          Insert
        </button>
        <button
          type="button"
          className="key"
          title="Take the chosen vertices out (Delete)"
          onClick={() => act(() => deleteVertices(session, gone()))}
        >
          Delete
        </button>
      </span>
      <span className={styles.count}>{chosen === 0 ? 'none chosen' : `${chosen} chosen`}</span>
    </div>
  );
}
