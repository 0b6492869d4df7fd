import { useSession, useStore } from '../../panels/use-store.ts';
import type { DrawState, PenTarget } from '../../state/draw/draw-state.ts';
import { bringBackPen, discardedOf, hasBegun, takePen } from '../../state/draw/pen-editing.ts';
import styles from './draw.module.css';

/**
 * Over the sheet: what the pen had begun and was thrown away or put away, with a key that goes on with it. What was put
 * away is told until something else is in hand.
 */
export function PenNotice() {
  const session = useSession();
  const state = useStore(session.draw, (s) => s);
  const document = useStore(session.documents, (s) => s.document);
  const discarded = discardedOf(state, { document });
  const isAway = state.tool === 'choose' && hasBegun(state) && state.chosen.length === 0;
  if (state.refused) return null;
  if (discarded)
    return (
      <p className={styles.penNotice}>
        <span role="status">{wordsOf(discarded)} discarded.</span>
        <button type="button" className="key" title="Undo does it too (Ctrl+Z)" onClick={() => bringBackPen(session)}>
          Bring {discarded.pen?.length === 1 || !discarded.pen ? 'it' : 'them'} back
        </button>
      </p>
    );
  if (!isAway) return null;
  return (
    <p className={styles.penNotice}>
      <span role="status">{wordsOf(state)} kept for the pen.</span>
      <button type="button" className="key" title="Take the pen again (P)" onClick={() => takePen(session)}>
        Go on
      </button>
    </p>
  );
}

/** What the pen had begun: "12 vertices of Sedge keyway". */
function wordsOf({ pen, penFor }: Pick<DrawState, 'pen'> & { readonly penFor: PenTarget | null }): string {
  const name = penFor && 'head' in penFor ? penFor.head.name : '';
  if (!pen) return name;
  const count = pen.length === 1 ? '1 vertex' : `${pen.length} vertices`;
  return name === '' ? count : `${count} of ${name}`;
}
