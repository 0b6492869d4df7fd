import { type ReactNode, useLayoutEffect, useRef } from 'react';
import styles from './slide.module.css';

/** By how much type shrinks from one try to the next, and the share below which it does not go. */
const STEP = 0.94;
const LEAST = 0.3;

interface FittedTextProps {
  /** What the fit depends on; another one is fitted anew. */
  readonly fitKey: string;
  readonly className: string;
  readonly children: ReactNode;
}

/**
 * A box of text that is set as large as the box lets it be: type shrinks until nothing is cut, and where even the
 * smallest type is too large the box can be scrolled. Sizes in it are a multiple of `--fit`.
 */
export function FittedText({ fitKey, className, children }: FittedTextProps) {
  const box = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another text or size is what it fits again
  useLayoutEffect(() => {
    const shown = box.current;
    if (!shown) return;
    shrink(shown);
    let gone = false;
    // The typeface may come after the text.
    document.fonts?.ready.then(() => !gone && shrink(shown));
    return () => {
      gone = true;
    };
  }, [fitKey]);
  return (
    <div ref={box} className={`${styles.fitted} ${className}`}>
      {children}
    </div>
  );
}

function shrink(box: HTMLElement): void {
  for (let share = 1; share >= LEAST; share *= STEP) {
    box.style.setProperty('--fit', String(share));
    if (box.scrollHeight <= box.clientHeight && box.scrollWidth <= box.clientWidth) return;
  }
}
