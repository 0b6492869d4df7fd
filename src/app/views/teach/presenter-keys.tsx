import type { ReactNode } from 'react';
import type { ShowPlace } from '../../state/teach/show-place.ts';
import styles from './presenter.module.css';
import type { PointerDot } from './use-pointer-dot.ts';
import type { PresenterActs } from './use-presenter-keys.ts';

interface PresenterKeysProps {
  readonly acts: PresenterActs;
  readonly pointer: PointerDot;
  readonly dark: boolean;
  readonly place: ShowPlace;
  readonly builds: readonly number[];
  /** Whether there is a push that can be shown again. */
  readonly again: boolean;
}

/** The keys along the foot of a lesson that is shown; they fade while the mouse rests. */
export function PresenterKeys({ acts, pointer, dark, place, builds, again }: PresenterKeysProps) {
  const atStart = place.step === 0 && place.build === 0;
  const atEnd = place.step === builds.length - 1 && place.build === (builds[place.step] ?? 1) - 1;
  const point = () => {
    pointer.press(0);
    pointer.release(0);
  };
  return (
    <div className={styles.keys} role="toolbar" aria-label="Lesson">
      <Key title="Back (Left, Page Up)" press={acts.previous} off={atStart}>
        ◀ Back
      </Key>
      <Key title="On (Right, Space, Page Down)" press={acts.next} off={atEnd}>
        On ▶
      </Key>
      {again && (
        <Key title="Push the blank in once more (I)" press={acts.again}>
          Push again
        </Key>
      )}
      <Key title="A dot that follows the mouse (L, or hold the mouse button)" press={point} pressed={pointer.seen}>
        Pointer
      </Key>
      <Key title="Darken the screen (B)" press={acts.dark} pressed={dark}>
        Dark
      </Key>
      <Key title="Fill the screen, or the window only (F)" press={acts.screen}>
        Full screen
      </Key>
      <Key title="End the lesson (Escape)" press={acts.end}>
        End
      </Key>
    </div>
  );
}

interface KeyProps {
  readonly title: string;
  readonly off?: boolean;
  readonly pressed?: boolean;
  readonly children: ReactNode;
  press(): void;
}

/** A key that leaves the focus where it is when the mouse presses it, so that Space still goes on. */
function Key({ title, off = false, pressed, children, press }: KeyProps) {
  return (
    <button
      type="button"
      className="key"
      title={title}
      aria-disabled={off}
      aria-pressed={pressed}
      onPointerDown={(event) => event.preventDefault()}
      onMouseDown={(event) => event.preventDefault()}
      onClick={press}
    >
      {children}
    </button>
  );
}
