import { type KeyboardEvent, type ReactNode, useId, useLayoutEffect, useRef } from 'react';
import styles from './modal-sheet.module.css';

interface ModalSheetProps {
  readonly title: ReactNode;
  /** A word beside the title. */
  readonly aside?: ReactNode;
  /** Small sheets hug what they hold, large ones fill the window. */
  readonly large?: boolean;
  readonly children: ReactNode;
  /** The row of keys along the lower edge; one to be done with it where absent. */
  readonly foot?: ReactNode;
  /** Escape, or the key in the corner. */
  onClose(): void;
}

/**
 * A sheet over the window that keeps the focus until it is answered; what lies under it hears no keys meanwhile. The
 * focus begins at what is marked `data-first`, else at its first key.
 */
export function ModalSheet({ title, aside, large = false, children, foot, onClose }: ModalSheetProps) {
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  useLayoutEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    shown?.querySelector<HTMLElement>('[data-first]')?.focus();
    return () => shown?.close();
  }, []);
  const keepKeys = (event: KeyboardEvent) => event.stopPropagation();
  return (
    <dialog
      ref={dialog}
      className={large ? `${styles.sheet} ${styles.large}` : styles.sheet}
      aria-labelledby={id}
      onKeyDown={keepKeys}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
    >
      <header className={styles.head}>
        <h2 id={id}>{title}</h2>
        {aside}
        <button
          type="button"
          className="key"
          title="Close without a change (Escape)"
          aria-label="Close"
          onClick={onClose}
        >
          ✕
        </button>
      </header>
      <div className={styles.body}>{children}</div>
      <footer className={styles.foot}>{foot ?? <DoneKey onClose={onClose} />}</footer>
    </dialog>
  );
}

function DoneKey({ onClose }: Pick<ModalSheetProps, 'onClose'>) {
  return (
    <>
      <span />
      <button type="button" className="key" onClick={onClose}>
        Done
      </button>
    </>
  );
}
