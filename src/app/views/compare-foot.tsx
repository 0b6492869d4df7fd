import { toggleCorners } from '../panels/corner-editing.ts';
import { cornersOf } from '../panels/corner-state.ts';
import { useSession, useStore } from '../panels/use-store.ts';
import { snapToBest } from '../state/hand-state.ts';
import styles from './compare.module.css';
import type { Push } from './use-compare-push.ts';

const ZOOM_STEP = 1.5;

interface CompareFootProps {
  readonly push: Push;
  zoom(factor: number): void;
  fit(): void;
}

/** The keys under Compare's drawing: whatever the pointer or a key of the keyboard does there. */
export function CompareFoot({ push, zoom, fit }: CompareFootProps) {
  const session = useSession();
  const on = useStore(cornersOf(session), (s) => s.on);
  return (
    <div className={styles.foot}>
      <button
        type="button"
        className="key"
        title="Lay the blank where it fits best (Home)"
        onClick={() => snapToBest(session.hand)}
      >
        Best placement
      </button>
      <button
        type="button"
        className="key"
        title="Push the blank in endwise, as it lies (I)"
        onClick={() => push.end() || push.begin()}
      >
        {push.pushed ? 'Take it out' : 'Push it in'}
      </button>
      <button
        type="button"
        className="key"
        aria-pressed={on}
        title="Move the corners of the outlines (C)"
        onClick={() => toggleCorners(session)}
      >
        Move corners
      </button>
      <span className="key-row">
        <button
          type="button"
          className="key"
          title="Smaller (−)"
          aria-label="Zoom out"
          onClick={() => zoom(1 / ZOOM_STEP)}
        >
          −
        </button>
        <button
          type="button"
          className="key"
          title="Larger (+); a close view shows the tolerance bands"
          aria-label="Zoom in"
          onClick={() => zoom(ZOOM_STEP)}
        >
          +
        </button>
        <button type="button" className="key" title="The whole plug (0)" onClick={fit}>
          Whole plug
        </button>
      </span>
      <p className={styles.hint}>Drag the blank, or beside it the sheet.</p>
    </div>
  );
}
