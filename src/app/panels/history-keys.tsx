import { discardedOf } from '../state/draw/pen-editing.ts';
import { stepBack, stepOn } from '../state/step-history.ts';
import { useSession, useStore } from './use-store.ts';

const ARROW = 'M4 8.5h8.5a5 5 0 0 1 0 10H8M8.2 3.8L3.5 8.5l4.7 4.7';

/** Takes back the last edit and does it again. */
export function HistoryKeys() {
  const session = useSession();
  const { documents, draw } = session;
  const discarded = useStore(draw, (s) => s.discarded);
  const canUndo = useStore(
    documents,
    (s) =>
      s.past.length > 0 || (s.editedFrom !== null && s.editedFrom !== s.document) || !!discardedOf({ discarded }, s),
  );
  const canRedo = useStore(documents, (s) => s.future.length > 0);
  return (
    <span className="key-row">
      <HistoryKey
        name="Undo"
        hint="Take back the last edit (Ctrl+Z)"
        enabled={canUndo}
        press={() => stepBack(session)}
      />
      <HistoryKey
        name="Redo"
        hint="Do again what was taken back (Ctrl+Y)"
        enabled={canRedo}
        press={() => stepOn(session)}
        mirrored
      />
    </span>
  );
}

interface HistoryKeyProps {
  readonly name: string;
  readonly hint: string;
  readonly enabled: boolean;
  readonly mirrored?: boolean;
  press(): void;
}

function HistoryKey({ name, hint, enabled, mirrored = false, press }: HistoryKeyProps) {
  return (
    <button type="button" className="key" title={hint} aria-label={name} disabled={!enabled} onClick={press}>
      <svg width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
        <path
          d={ARROW}
          transform={mirrored ? 'translate(20 0) scale(-1 1)' : undefined}
          fill="none"
          stroke="currentColor"
          strokeWidth="2.2"
        />
      </svg>
    </button>
  );
}
