import { type FormEvent, type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { readingText, type Units } from '../../../family/length-text.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import { roundVertex } from '../../../profile/round-vertex.ts';
import { chosenNow, putOutline, verticesInHand } from '../../state/draw/draw-editing.ts';
import { chosenIn } from '../../state/draw/draw-state.ts';
import { LengthField, useTypedLength } from '../form-fields.tsx';
import { useSession, useStore } from '../use-store.ts';
import { FormKeys } from './form-keys.tsx';
import styles from './outline-actions.module.css';
import { faultSentence } from './outline-form.tsx';
import { toldLength } from './vertex-entry.ts';

interface RoundFormProps {
  readonly units: Units;
  readonly count: number;
  onDone(words: string): void;
  onClose(): void;
}

/** Rounds the chosen vertices by a radius. Vertices may be chosen while the form is open. */
export function RoundForm({ units, count, onDone, onClose }: RoundFormProps) {
  const session = useSession();
  const chosen = chosenIn({ chosen: useStore(session.draw, (s) => s.chosen) }, count).length;
  const radius = useTypedLength(200_000, units);
  const [fault, setFault] = useState('');
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => form.current?.querySelector<HTMLElement>('input')?.focus(), []);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (chosen === 0 || radius.nm === null) return;
    const round = rounded(verticesInHand(session), chosenNow(session), radius.nm, (nm) => toldLength(nm, units));
    if (typeof round === 'string') setFault(round);
    else if (putOutline(session, round, []))
      onDone(`${chosen === 1 ? 'Vertex' : `${chosen} vertices`} rounded by ${readingText(radius.nm, units)}.`);
    else setFault('');
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Escape') return;
    event.preventDefault();
    onClose();
  };
  return (
    <form ref={form} className={styles.form} aria-label="Round" onSubmit={submit} onKeyDown={onKeyDown} noValidate>
      <LengthField label="Radius" text={radius.text} units={units} fault={radius.fault} onChange={radius.set} />
      <p role="status" className={styles.info}>
        {chosen === 0 ? 'Choose vertices in the table or on the sheet.' : `${chosen} chosen.`}
      </p>
      {fault !== '' && (
        <p role="alert" className={styles.fault}>
          {fault}
        </p>
      )}
      <FormKeys doIt="Round" ready={chosen > 0 && radius.nm !== null} onClose={onClose} />
    </form>
  );
}

/** The outline with all of some corners rounded, or why one of them cannot be. The last is done first: numbers stay. */
function rounded(
  vertices: readonly Vertex[],
  corners: readonly number[],
  radius: number,
  say: (nm: number) => string,
): readonly Vertex[] | string {
  let now = vertices;
  for (const corner of corners.toReversed()) {
    const round = roundVertex(now, corner, radius, say);
    if (!round.ok) return `Vertex ${corner + 1}: ${faultSentence(round.fault)}`;
    now = round.vertices;
  }
  return now;
}
