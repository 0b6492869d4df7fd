import { type KeyboardEvent, type ReactNode, type ToggleEvent, useId, useRef } from 'react';
import { walk } from '../state/walk.ts';
import styles from './hanging-panel.module.css';

interface HangingPanelProps {
  /** What the key says that opens the panel. */
  readonly label: ReactNode;
  readonly title: string;
  readonly children: (close: () => void) => ReactNode;
}

/**
 * A key with a panel that hangs below it, or stands above it where it is low in the window, and takes the focus; the arrow keys go along its rows. Escape or a press
 * elsewhere puts it away, and the key has the focus again.
 */
export function HangingPanel({ label, title, children }: HangingPanelProps) {
  const id = useId();
  const key = useRef<HTMLButtonElement>(null);
  const panel = useRef<HTMLDivElement>(null);
  const prepare = (event: ToggleEvent<HTMLDivElement>) => {
    const at = key.current?.getBoundingClientRect();
    if (event.newState !== 'open' || !at || !panel.current) return;
    // The browser gives the focus as it opens the panel. After `toggle`, which comes later, keys struck at once were lost.
    (rowsOf(panel.current)[0] ?? panel.current).setAttribute('autofocus', '');
    // From a key low in the window it stands above it.
    const above = at.top > window.innerHeight / 2;
    panel.current.style.top = above ? 'auto' : `${at.bottom + 14}px`;
    panel.current.style.bottom = above ? `${window.innerHeight - at.top + 14}px` : 'auto';
    panel.current.style.right = `${Math.max(8, document.documentElement.clientWidth - at.right)}px`;
  };
  const giveBackFocus = ({ newState }: ToggleEvent<HTMLDivElement>) => {
    const inside = panel.current?.contains(document.activeElement) || document.activeElement === document.body;
    if (newState === 'closed' && inside) key.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>) => {
    const rows = rowsOf(panel.current);
    const next = rowAfter(event.key, rows, document.activeElement);
    if (!next) return;
    event.preventDefault();
    next.focus();
  };
  return (
    <>
      <button ref={key} type="button" className="key" popoverTarget={id} title={title}>
        {label}
      </button>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the rows in it have the focus, their arrow keys are heard here */}
      <div
        ref={panel}
        id={id}
        popover="auto"
        tabIndex={-1}
        className={styles.panel}
        onBeforeToggle={prepare}
        onToggle={giveBackFocus}
        onKeyDown={onKeyDown}
      >
        {children(() => panel.current?.hidePopover())}
      </div>
    </>
  );
}

function rowsOf(panel: HTMLElement | null): HTMLElement[] {
  return [...(panel?.querySelectorAll('button') ?? [])];
}

/** The row that a key leads to from the one in focus, going round at the ends; undefined for any other key. */
function rowAfter(pressed: string, rows: readonly HTMLElement[], focused: Element | null): HTMLElement | undefined {
  if (pressed === 'Home') return rows[0];
  if (pressed === 'End') return rows.at(-1);
  const steps = { ArrowDown: 1, ArrowUp: -1 }[pressed] ?? 0;
  return steps === 0 ? undefined : (walk(rows, rows.find((row) => row === focused) ?? null, steps) ?? undefined);
}
