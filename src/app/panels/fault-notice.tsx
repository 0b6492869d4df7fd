import { useEffect } from 'react';
import styles from './notices.module.css';
import { useSession, useStore } from './use-store.ts';

const MOST_SHOWN = 100;

/** Why a file was not opened: every fault with its place and its cure. The family on the wall is untouched. */
export function FaultNotice() {
  const { documents } = useSession();
  const refusal = useStore(documents, (s) => s.refusal);
  const familyName = useStore(documents, (s) => s.document?.family.name ?? null);
  useEffect(() => {
    if (!refusal) return;
    // Heard before the views, for which Escape is a way back.
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || isTaken(event.target)) return;
      event.preventDefault();
      documents.setState({ refusal: null });
    };
    addEventListener('keydown', onKeyDown, { capture: true });
    return () => removeEventListener('keydown', onKeyDown, { capture: true });
  }, [refusal, documents]);
  if (!refusal) return null;
  const { fileName, faults } = refusal;
  return (
    <section className={styles.faults} role="alert" aria-label="File not opened">
      <div className={styles.faultHead}>
        <h2>
          {fileName} was not opened: {faults.length === 1 ? 'one fault' : `${faults.length} faults`}
        </h2>
        <button
          type="button"
          className="key"
          title="Put this notice away (Escape)"
          onClick={() => documents.setState({ refusal: null })}
        >
          Put away
        </button>
      </div>
      {familyName !== null && <p>Nothing was lost: {familyName} is still open.</p>}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a list that scrolls must take the keyboard */}
      <ol className={styles.faultList} tabIndex={0} aria-label="Faults">
        {faults.slice(0, MOST_SHOWN).map((fault) => (
          <li key={`${fault.path} ${fault.what}`}>
            <code>{fault.path}</code>
            <span>{fault.what}</span>
            <span className={styles.cure}>{fault.cure}</span>
          </li>
        ))}
      </ol>
      {faults.length > MOST_SHOWN && <p>and {faults.length - MOST_SHOWN} more</p>}
    </section>
  );
}

/** Whether a field or a hanging panel has a use for Escape itself. */
function isTaken(target: EventTarget | null): boolean {
  const inField = target instanceof Element && target.closest('input, select, textarea') !== null;
  return inField || document.querySelector(':popover-open') !== null;
}
