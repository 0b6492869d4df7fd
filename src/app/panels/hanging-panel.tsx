import { type ReactNode, type ToggleEvent, useId, useRef } from 'react';
import styles from './hanging-panel.module.css';

interface HangingPanelProps {
  /** What the key says that opens the panel. */
  readonly label: ReactNode;
  readonly title: string;
  readonly children: (close: () => void) => ReactNode;
}

/** A key with a panel that hangs below it; Escape or a press elsewhere puts it away. */
export function HangingPanel({ label, title, children }: HangingPanelProps) {
  const id = useId();
  const key = useRef<HTMLButtonElement>(null);
  const panel = useRef<HTMLDivElement>(null);
  const place = (event: ToggleEvent<HTMLDivElement>) => {
    const at = key.current?.getBoundingClientRect();
    if (event.newState !== 'open' || !at || !panel.current) return;
    panel.current.style.top = `${at.bottom + 14}px`;
    panel.current.style.right = `${Math.max(8, document.documentElement.clientWidth - at.right)}px`;
  };
  return (
    <>
      <button ref={key} type="button" className="key" popoverTarget={id} title={title}>
        {label}
      </button>
      <div ref={panel} id={id} popover="auto" className={styles.panel} onBeforeToggle={place}>
        {children(() => panel.current?.hidePopover())}
      </div>
    </>
  );
}
