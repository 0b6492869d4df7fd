import type { StepShow } from '../../../family/lesson.ts';
import { addStepAfter, deleteStep, doubleStep, shiftStep } from '../../state/teach/lesson-editing.ts';
import { HangingPanel } from '../hanging-panel.tsx';
import menu from '../menu-row.module.css';
import { useSession } from '../use-store.ts';
import { SHOW_WORDS, SHOWS } from './show-words.ts';
import styles from './step-keys.module.css';

interface StepKeysProps {
  /** Number of the picked step, from 0; -1 where there is none. */
  readonly picked: number;
  readonly count: number;
  /** Says what was done. */
  tell(words: string): void;
}

/** The keys under the list of steps: add, move, copy, delete. */
export function StepKeys({ picked, count, tell }: StepKeysProps) {
  const session = useSession();
  const number = picked + 1;
  const add = (show: StepShow) => {
    addStepAfter(session, show);
    tell(`Step ${number + 1} added: ${SHOW_WORDS[show].label}.`);
  };
  const move = (by: -1 | 1) => {
    shiftStep(session, picked, picked + by);
    tell(`Step ${number} is now step ${number + by}.`);
  };
  return (
    <div className={styles.keys}>
      <AddKey add={add} />
      <span className="key-row">
        <Key name="Move step up" title="Move up (Alt ↑)" off={picked < 1} press={() => move(-1)}>
          ↑
        </Key>
        <Key
          name="Move step down"
          title="Move down (Alt ↓)"
          off={picked < 0 || picked >= count - 1}
          press={() => move(1)}
        >
          ↓
        </Key>
      </span>
      <Key
        title="The step once more (D)"
        off={picked < 0}
        press={() => {
          doubleStep(session, picked);
          tell(`Step ${number} is there twice; the copy is picked.`);
        }}
      >
        Duplicate
      </Key>
      <Key
        title="Take the step out (Delete); undo brings it back"
        off={picked < 0}
        press={() => {
          deleteStep(session, picked);
          tell(`Step ${number} deleted. Undo brings it back.`);
        }}
      >
        Delete
      </Key>
    </div>
  );
}

/** The kinds of steps to choose from. */
function AddKey({ add }: { add(show: StepShow): void }) {
  return (
    <HangingPanel label="Add step ▾" title="Add a step after the picked one">
      {(close) => (
        <ul className={menu.menu}>
          {SHOWS.map((show) => (
            <li key={show}>
              <button
                type="button"
                className={menu.row}
                onClick={() => {
                  close();
                  add(show);
                }}
              >
                <b>{SHOW_WORDS[show].label}</b>
                <span>{SHOW_WORDS[show].hint}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </HangingPanel>
  );
}

interface KeyProps {
  readonly name?: string;
  readonly title: string;
  readonly off: boolean;
  readonly children: string;
  press(): void;
}

/** A key that keeps the focus where there is nothing more to do. */
function Key({ name, title, off, children, press }: KeyProps) {
  return (
    <button
      type="button"
      className="key"
      title={title}
      aria-label={name}
      aria-disabled={off}
      onClick={off ? undefined : press}
    >
      {children}
    </button>
  );
}
