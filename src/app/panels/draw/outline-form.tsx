import { type FormEvent, type ReactNode, useEffect, useRef, useState } from 'react';
import type { Vertex } from '../../../geom/vertex.ts';
import type { ChangeFault, OutlineChange } from '../../../profile/outline-change.ts';
import { endNudges } from '../../state/draw/draw-editing.ts';
import { dropPreview, showPreview, takePreview } from '../../state/draw/outline-preview.ts';
import type { Session } from '../../state/session.ts';
import { useSession, useStore } from '../use-store.ts';
import { FormKeys } from './form-keys.tsx';
import styles from './outline-actions.module.css';

/** What a form comes to: an outline and what is said of it, or why there is none; null where a field is still empty. */
export type Wanted =
  | { readonly vertices: readonly Vertex[]; readonly words: string; readonly info?: string }
  | { readonly fault: string }
  | null;

/** The outcome of an operation as a form shows it. */
export function wantedOf(change: OutlineChange, words: string): Wanted {
  return change.ok ? { vertices: change.vertices, words } : { fault: faultSentence(change.fault) };
}

/** A fault of an operation as a sentence or two. */
export function faultSentence({ what, cure }: ChangeFault): string {
  return `${what}. ${cure}`;
}

interface OutlineFormProps {
  readonly title: string;
  readonly wanted: Wanted;
  readonly doIt: string;
  readonly children: ReactNode;
  onDone(words: string): void;
  onClose(): void;
}

/**
 * The fields of one operation. What they come to is seen on the sheet at once and taken with Enter or its key, as one
 * step of undo; Escape and Cancel leave the outline as it was.
 */
export function OutlineForm({ title, wanted, doIt, children, onDone, onClose }: OutlineFormProps) {
  const session = useSession();
  const refused = useStore(session.draw, (s) => s.refused !== null);
  const [isSame, setSame] = useState<Wanted>(null);
  const form = useRef<HTMLFormElement>(null);
  usePreview(session, wanted);
  useEffect(() => form.current?.querySelector<HTMLElement>('input, select')?.focus(), []);
  const ready = wanted !== null && 'vertices' in wanted && !refused;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!ready) return;
    const taken = takePreview(session, wanted.vertices);
    if (taken === 'step') onDone(wanted.words);
    else setSame(taken === 'same' ? wanted : null);
  };
  useEscape(session, onClose);
  return (
    <form ref={form} className={styles.form} aria-label={title} onSubmit={submit} noValidate>
      {children}
      {wanted && 'info' in wanted && wanted.info && (
        <p role="status" className={styles.info}>
          {wanted.info}
        </p>
      )}
      {wanted && 'fault' in wanted && (
        <p role="alert" className={styles.fault}>
          {wanted.fault}
        </p>
      )}
      {wanted && isSame === wanted && (
        <p role="status" className={styles.info}>
          Nothing to change: the outline is so already.
        </p>
      )}
      <FormKeys doIt={doIt} ready={ready} onClose={onClose} />
    </form>
  );
}

/**
 * Shows on the sheet what is wanted, as an edit under way; it is given up when the form goes away. While something else
 * has hold of the outline it waits, and is shown anew after it.
 */
function usePreview(session: Session, wanted: Wanted): void {
  const vertices = wanted && 'vertices' in wanted ? wanted.vertices : null;
  const held = useStore(session.draw, (s) => s.edit?.kind ?? null);
  const shown = useRef<readonly Vertex[] | null>(null);
  useEffect(() => {
    const isNew = shown.current !== vertices;
    if (held === 'hand' || (!isNew && held !== null)) return;
    shown.current = vertices;
    endNudges(session);
    if (vertices) showPreview(session, vertices);
    else dropPreview(session);
  }, [session, vertices, held]);
  useEffect(() => () => dropPreview(session), [session]);
}

/** Escape closes the form wherever the focus is, unless something hangs over the window. */
function useEscape(session: Session, onClose: () => void): void {
  const latest = useRef(onClose);
  useEffect(() => {
    latest.current = onClose;
  });
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || document.querySelector(':popover-open, dialog[open]')) return;
      // A drag on the sheet is given up first.
      if (session.draw.getState().edit?.kind === 'hand') return;
      event.preventDefault();
      latest.current();
    };
    // Before the sheet hears it, which would leave the view.
    addEventListener('keydown', onKeyDown, true);
    return () => removeEventListener('keydown', onKeyDown, true);
  }, [session]);
}
