import type { Plan } from '../../../../family/plan.ts';
import { shiftArea, shiftHolder, typeName } from '../../../state/plan/access/access-editing.ts';
import { treeOf } from '../../../state/plan/access/access-rows.ts';
import { accessLookOf } from '../../../state/plan/access/access-state.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './access-bar.module.css';

/** What adds areas and holders, moves what is picked, and folds the groups; the word of what was done last. */
export function AccessBar({ plan }: { plan: Plan }) {
  const session = useSession();
  const look = accessLookOf(session);
  const { areaId, holderId, said } = useStore(look, (s) => s);
  const { holders } = plan;
  const lastHolder = holders.some(({ id }) => id === holderId) ? holderId : holders.at(-1)?.id;
  const after = areaId ?? treeOf(plan).rows.findLast(({ depth }) => depth === 0)?.area.id;
  const addHolder = () => typeName(session, { what: 'new holder', ...(lastHolder != null && { after: lastHolder }) });
  return (
    <div className={styles.bar}>
      <span className="key-row">
        <button
          type="button"
          className="key"
          title="An area below the picked one (Enter on its name)"
          onClick={() => typeName(session, { what: 'new area', place: after == null ? {} : { after } })}
        >
          Add area
        </button>
        <button
          type="button"
          className="key"
          disabled={areaId === null}
          title="An area inside the picked one, which becomes a group (Shift+Enter on its name)"
          onClick={() => areaId !== null && typeName(session, { what: 'new area', place: { inside: areaId } })}
        >
          Inside
        </button>
      </span>
      <button type="button" className="key" title="A person or a role (Enter on a holder's name)" onClick={addHolder}>
        Add holder
      </button>
      <button
        type="button"
        className="key"
        title="A list of holders and areas, or a matrix with ticks, from a spreadsheet"
        onClick={() => look.setState({ pasting: true })}
      >
        Paste a table
      </button>
      <MoveKeys />
      <FoldAllKey plan={plan} />
      <p role="status" className={styles.said}>
        {said}
      </p>
    </div>
  );
}

const WAYS = [
  { way: 'up', sign: 'M0-4.5L5 3.5H-5z', label: 'Up', area: 'Up (Alt+↑)' },
  { way: 'down', sign: 'M0 4.5L5-3.5H-5z', label: 'Down', area: 'Down (Alt+↓)' },
  { way: 'out', sign: 'M-4.5 0L3.5-5V5z', label: 'Out', area: 'Out of its group (Alt+←)' },
  { way: 'in', sign: 'M4.5 0L-3.5-5V5z', label: 'In', area: 'Into the area before it (Alt+→)' },
] as const;

/** Moves the picked area; of holders the one whose name is picked, to either side. */
function MoveKeys() {
  const session = useSession();
  const { areaId, holderId } = useStore(accessLookOf(session), (s) => s);
  const press = (way: 'up' | 'down' | 'in' | 'out') => {
    if (areaId !== null) shiftArea(session, areaId, way);
    else if (holderId !== null) shiftHolder(session, holderId, way === 'out' ? -1 : 1);
  };
  return (
    <fieldset className={`key-row bare ${styles.moves}`} aria-label="Move what is picked">
      {WAYS.map(({ way, sign, label, area }) => (
        <button
          key={way}
          type="button"
          className="key"
          aria-label={label}
          title={areaId === null && holderId !== null ? 'Move the holder (Alt with an arrow)' : area}
          disabled={areaId === null && (holderId === null || way === 'up' || way === 'down')}
          onClick={() => press(way)}
        >
          <svg viewBox="-6 -6 12 12" width="12" height="12" aria-hidden="true" focusable="false">
            <path d={sign} fill="currentColor" />
          </svg>
        </button>
      ))}
    </fieldset>
  );
}

function FoldAllKey({ plan }: { plan: Plan }) {
  const look = accessLookOf(useSession());
  const folded = useStore(look, (s) => s.folded);
  const groups = treeOf(plan).rows.filter(({ isGroup }) => isGroup);
  if (groups.length === 0) return null;
  const isAnyOpen = groups.some(({ area }) => !folded.has(area.id));
  return (
    <button
      type="button"
      className="key"
      title={isAnyOpen ? 'Show the groups only' : 'Show all areas'}
      onClick={() => look.setState({ folded: new Set(isAnyOpen ? groups.map(({ area }) => area.id) : []) })}
    >
      {isAnyOpen ? 'Fold all' : 'Unfold all'}
    </button>
  );
}
