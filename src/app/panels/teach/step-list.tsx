import { type DragEvent, type KeyboardEvent, useMemo, useRef, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import type { Lesson } from '../../../family/lesson.ts';
import { checkLesson } from '../../../teach/check-lesson.ts';
import { partsOf } from '../../../teach/lesson-words.ts';
import { deleteStep, doubleStep, pickStep, shiftStep } from '../../state/teach/lesson-editing.ts';
import { trayReach } from '../../state/tray-reach.ts';
import { useKeptFocus } from '../use-kept-focus.ts';
import { useSession } from '../use-store.ts';
import { SHOW_WORDS } from './show-words.ts';
import styles from './step-list.module.css';
import { StepThumb } from './step-thumb.tsx';

interface StepListProps {
  readonly family: Family;
  readonly lesson: Lesson;
  readonly picked: number;
}

/**
 * The steps of the script. Arrow keys walk them, with Alt they move the picked one; Delete takes it out, D makes it twice. A
 * step can be dragged to another place.
 */
export function StepList({ family, lesson, picked }: StepListProps) {
  const session = useSession();
  const reach = useMemo(() => trayReach(family), [family]);
  const faults = useMemo(() => new Set(checkLesson(family, lesson).map(({ step }) => step)), [family, lesson]);
  const list = useRef<HTMLOListElement>(null);
  // An undo may take the step with the focus away.
  useKeptFocus(list, PICKED);
  const drag = useDrag((from, to) => shiftStep(session, from, to));
  const onKeyDown = (event: KeyboardEvent) => {
    const act = listActOf(event, picked, lesson.steps.length);
    if (!act) return;
    event.preventDefault();
    if (act.act === 'pick') pickStep(session, act.to);
    else if (act.act === 'move') shiftStep(session, picked, act.to);
    else if (act.act === 'delete') deleteStep(session, picked);
    else doubleStep(session, picked);
    if (act.act === 'pick' || act.act === 'move') focusStep(list.current, act.to);
    else focusPicked(list.current);
  };
  return (
    <ol ref={list} className={styles.list} aria-label="Steps of the lesson">
      {lesson.steps.map((step, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: steps have no identity but their number
        <li key={i} data-over={drag.over === i}>
          <button
            type="button"
            className={styles.step}
            data-step={i + 1}
            data-first={i === picked || undefined}
            aria-current={i === picked ? 'step' : undefined}
            tabIndex={i === picked ? 0 : -1}
            onClick={() => pickStep(session, i)}
            onKeyDown={onKeyDown}
            {...drag.handlers(i)}
          >
            <span className={styles.number}>{i + 1}</span>
            <StepThumb step={step} {...partsOf(family, step)} reach={reach} />
            <span className={styles.words}>
              <b>{step.title}</b>
              <span>{SHOW_WORDS[step.show].label}</span>
              {faults.has(i) && <span className={styles.gone}>! something is missing</span>}
            </span>
          </button>
        </li>
      ))}
    </ol>
  );
}

const PICKED = ['[aria-current="step"]'];

/** Dragging an item of a list to the place of another. */
function useDrag(onDrop: (from: number, to: number) => void) {
  const [over, setOver] = useState(-1);
  const from = useRef(-1);
  const end = () => {
    from.current = -1;
    setOver(-1);
  };
  const handlers = (i: number) => ({
    draggable: true,
    onDragStart: ({ dataTransfer }: DragEvent) => {
      from.current = i;
      dataTransfer.effectAllowed = 'move';
      dataTransfer.setData('text/plain', String(i + 1));
    },
    onDragOver: (event: DragEvent) => {
      // A file from outside is not for this list.
      if (from.current < 0) return;
      event.preventDefault();
      setOver(i);
    },
    onDragLeave: () => setOver(-1),
    onDragEnd: end,
    onDrop: (event: DragEvent) => {
      if (from.current < 0) return;
      event.preventDefault();
      if (from.current !== i) onDrop(from.current, i);
      end();
    },
  });
  return { over, handlers };
}

type ListAct = { readonly act: 'pick' | 'move'; readonly to: number } | { readonly act: 'delete' | 'double' };

/** What a key asks of the list; null where it asks nothing. */
function listActOf({ key, altKey, ctrlKey, metaKey }: KeyboardEvent, picked: number, count: number): ListAct | null {
  if (ctrlKey || metaKey) return null;
  const to = { ArrowUp: picked - 1, ArrowDown: picked + 1, Home: 0, End: count - 1 }[key];
  if (to !== undefined) return altKey ? { act: 'move', to } : { act: 'pick', to: Math.max(0, Math.min(count - 1, to)) };
  if (altKey) return null;
  if (key === 'Delete') return { act: 'delete' };
  return key.toLowerCase() === 'd' ? { act: 'double' } : null;
}

/** Takes the focus along with the press, to a place that is there already; past the ends there is none. */
function focusStep(list: HTMLElement | null, at: number): void {
  list?.querySelector<HTMLElement>(`[data-step="${at + 1}"]`)?.focus();
}

/** Takes the focus along to the step that is picked once it is drawn. */
function focusPicked(list: HTMLElement | null): void {
  requestAnimationFrame(() => list?.querySelector<HTMLElement>('[aria-current="step"]')?.focus());
}
