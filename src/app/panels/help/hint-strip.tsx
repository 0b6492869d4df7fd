import { useEffect } from 'react';
import { FIRST_STEPS } from '../../state/help/first-steps.ts';
import { putHintAway, wantHints } from '../../state/help/help-state.ts';
import { HINTS } from '../../state/help/hint-words.ts';
import type { Session } from '../../state/session.ts';
import { useSession, useStore } from '../use-store.ts';
import { beginFirstSteps } from './begin-first-steps.ts';
import styles from './hint-strip.module.css';

/** A line over the view: the step of the first five minutes, else what to do first here until it is put away. */
export function HintStrip() {
  const { help } = useSession();
  const step = useStore(help, (s) => s.step);
  return step === null ? <ViewHint /> : <FirstStepStrip step={step} />;
}

function ViewHint() {
  const session = useSession();
  const { help, selection } = session;
  const view = useStore(selection, (s) => s.view);
  const shown = useStore(help, ({ hints, hintsSeen }) => hints && !hintsSeen.includes(view));
  if (!shown) return null;
  return (
    <aside className={styles.strip} aria-label="Hint">
      <p>{HINTS[view]}</p>
      <div className={styles.keys}>
        {view === 'wall' && (
          <button type="button" className="key" onClick={() => beginFirstSteps(session)}>
            First five minutes
          </button>
        )}
        <button type="button" className="key" onClick={() => putHintAway(help, view)}>
          Got it
        </button>
        <button
          type="button"
          className="key"
          title="Help > Hints brings them back"
          onClick={() => wantHints(help, false)}
        >
          No hints
        </button>
      </div>
    </aside>
  );
}

function FirstStepStrip({ step }: { step: number }) {
  const session = useSession();
  useEffect(() => {
    standAt(session, step);
  }, [session, step]);
  const go = (to: number | null) => session.help.setState({ step: to });
  const last = step === FIRST_STEPS.length - 1;
  return (
    <aside className={styles.strip} data-first-steps={step} aria-label="First five minutes">
      <p role="status">
        <b>
          {step + 1} of {FIRST_STEPS.length}
        </b>{' '}
        {FIRST_STEPS[step].what}
      </p>
      <div className={styles.keys}>
        <button type="button" className="key" disabled={step === 0} onClick={() => go(step - 1)}>
          Back
        </button>
        <button type="button" className="key" onClick={() => go(last ? null : step + 1)}>
          {last ? 'Done' : 'Next'}
        </button>
        {!last && (
          <button type="button" className="key" aria-label="End the first five minutes" onClick={() => go(null)}>
            End
          </button>
        )}
      </div>
    </aside>
  );
}

/** Shows the view of a step with what it is about; an id that the open family has not is left as it is. */
function standAt(session: Session, step: number): void {
  const { selection, documents } = session;
  const { view, entrantId, openingId, sheet } = FIRST_STEPS[step];
  sheet?.(session);
  const has = (id: string | undefined) => documents.getState().document?.family.profiles.some((p) => p.id === id);
  selection.setState({
    view,
    ...(entrantId && has(entrantId) && { entrantId, part: 'entrant' as const }),
    ...(openingId && has(openingId) && { openingId }),
  });
}
