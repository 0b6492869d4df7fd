import type { DrawnPlan } from '../../../../plan/drawn-plan.ts';
import type { SectionsPlanning } from '../../../state/plan/sections/sections-planning.ts';
import { sectionsLookOf } from '../../../state/plan/sections/sections-state.ts';
import { workWords } from '../../../state/plan/sections/sections-words.ts';
import { useSession, useStore } from '../../use-store.ts';
import { IMPROVE_KEY } from './sections-head.tsx';
import styles from './sections-progress.module.css';
import { useSectionsPlanning } from './use-sections.ts';

/** The search that begins by itself, at the foot of the sheet, where it moves nothing that is being read. */
export function SearchProgress() {
  const planning = useSectionsPlanning();
  const state = useStore(planning.store, (s) => s);
  if (state.phase !== 'searching') return null;
  return (
    <div className={`${styles.line} ${styles.foot}`} data-working="" data-search-by-itself="">
      <label htmlFor="search-progress">{workWords(state)} …</label>
      <progress id="search-progress" max={Math.max(1, state.total)} value={state.done} />
      <button type="button" className="key" onClick={() => stopAndLeave(planning)}>
        Stop
      </button>
    </div>
  );
}

/** Stops what is on its way; the key that was pressed goes with it, so the focus goes to the one that begins anew. */
function stopAndLeave(planning: SectionsPlanning): void {
  planning.stop();
  document.getElementById(IMPROVE_KEY)?.focus();
}

/** What is on its way, how far it has come, and a key that stops it; what stopped or failed can be taken up again. */
export function SectionsProgress() {
  const planning = useSectionsPlanning();
  const state = useStore(planning.store, (s) => s);
  const words = workWords(state);
  const { drawing, phase } = state;
  if (phase === 'searching') return null;
  if (words !== '') {
    const { done, total } = drawing.phase === 'drawing' && phase !== 'improving' ? drawing : state;
    return (
      <div className={styles.line} data-working={phase === 'improving' || undefined}>
        <label htmlFor="sections-progress">{words} …</label>
        <progress id="sections-progress" max={Math.max(1, total)} value={total > 0 ? done : undefined} />
        <button type="button" className="key" onClick={() => stopAndLeave(planning)}>
          {phase === 'improving' ? 'Stop' : 'Cancel'}
        </button>
      </div>
    );
  }
  if (drawing.phase === 'done' && !drawing.answer.ok) return <NotOffered refused={drawing.answer} />;
  const what = restWords(state);
  if (!what) return null;
  return (
    <div className={styles.line} data-working="" role={what.failed ? 'alert' : undefined}>
      <p>{what.words}</p>
      <button type="button" className="key" onClick={() => planning.again()}>
        {what.again}
      </button>
    </div>
  );
}

/** That what was drawn is not offered, and the way to the reasons. */
function NotOffered({ refused: { pairs } }: { refused: Extract<DrawnPlan, { ok: false }> }) {
  const look = sectionsLookOf(useSession());
  const why = pairs.length > 0 ? 'drawn and judged, they do not do what the plan says' : 'they could not be drawn';
  return (
    <div className={styles.line} data-working="" data-not-offered="" role="alert">
      <p>These sections are not offered: {why}.</p>
      <button type="button" className="key" onClick={() => look.setState({ table: 'report' })}>
        Why
      </button>
    </div>
  );
}

type State = ReturnType<ReturnType<typeof useSectionsPlanning>['store']['getState']>;

function restWords({ phase, trouble, drawing, found }: State) {
  if (phase === 'failed')
    return { words: `The wards could not be found: ${trouble}.`, again: 'Try again', failed: true };
  if (drawing.phase === 'failed')
    return { words: `The sections could not be drawn: ${drawing.trouble}.`, again: 'Try again', failed: true };
  if (drawing.phase === 'stopped')
    return { words: 'The drawing was stopped, so nothing is judged.', again: 'Draw the sections', failed: false };
  if (phase === 'stopped' && !found)
    return { words: 'The search was stopped before it found anything.', again: 'Search again', failed: false };
  return null;
}
