import { type FormEvent, type RefObject, useEffect, useId, useLayoutEffect, useRef, useState } from 'react';
import { marginText } from '../../../family/margin-text.ts';
import { AnswerMark } from '../../panels/answer-mark.tsx';
import { useSession, useStore } from '../../panels/use-store.ts';
import { newHeadOf, type PenTarget } from '../../state/draw/draw-state.ts';
import { closePen, discardPen, putPenAway, setPenVertex, takeBackPenVertex } from '../../state/draw/pen-editing.ts';
import { judgePen, type PenFits } from '../../state/pen-fits.ts';
import type { Session } from '../../state/session.ts';
import { readPlace } from '../../tools/draw/typed-place.ts';
import styles from './draw.module.css';
import { penText } from './draw-hand.ts';

/** The bar over the sheet while the pen is in hand: what it draws, a field for typed places, and a key for each of its acts. */
export function DrawPenBar({ tell }: { tell(words: string): void }) {
  const session = useSession();
  const pen = useStore(session.draw, (s) => s.pen);
  const penFor = useStore(session.draw, (s) => s.penFor);
  const [fault, setFault] = useState('');
  const bar = useRef<HTMLElement>(null);
  usePenFocus(session, bar);
  const count = pen?.length ?? 0;
  return (
    <section ref={bar} className={styles.penBar} aria-label="Pen">
      <div className={styles.penTitle}>
        <h1>{titleOf(session, penFor)}</h1>
        {fault === '' ? (
          <span>{count === 1 ? '1 vertex' : `${count} vertices`}</span>
        ) : (
          <span role="alert" className={styles.fault}>
            {fault}
          </span>
        )}
        {fault === '' && <PenFitLine />}
      </div>
      <PlaceField fault={fault} setFault={setFault} tell={tell} />
      <PenKeys count={count} tell={tell} />
    </section>
  );
}

/** A key for each act of the pen but setting a vertex. */
function PenKeys({ count, tell }: { count: number; tell(words: string): void }) {
  const session = useSession();
  return (
    <span className="key-row">
      <button
        type="button"
        className="key"
        disabled={count === 0}
        title="Take the last vertex back (Backspace)"
        onClick={() => takeBackPenVertex(session) && tell(`Taken back. ${penText(session)}`)}
      >
        Take back
      </button>
      <button
        type="button"
        className="key"
        disabled={count < 3}
        title="Close the outline (Enter, or a press on the first vertex)"
        onClick={() => closePen(session) && tell('The outline is closed.')}
      >
        Close outline
      </button>
      <button
        type="button"
        className="key"
        title="Throw away what the pen has begun"
        onClick={() => discardPen(session)}
      >
        Discard
      </button>
      <button
        type="button"
        className="key"
        title="Put the pen away; what it has begun is kept (Escape)"
        onClick={() => putPenAway(session)}
      >
        Put away
      </button>
    </span>
  );
}

/** A new section begins in the field of typed places; the focus that the bar had goes to the sheet when the bar goes. */
function usePenFocus(session: Session, bar: RefObject<HTMLElement | null>): void {
  useLayoutEffect(() => {
    const element = bar.current;
    const state = session.draw.getState();
    // At once, for what is typed next; the form that asked for its name has given the focus back as it went.
    if (newHeadOf(state) !== null && state.pen === null) element?.querySelector('input')?.focus();
    return () => {
      if (!element?.contains(document.activeElement)) return;
      requestAnimationFrame(() => {
        // Not from where the focus stands by then: in the bar itself, if only its effect was run anew.
        if (document.activeElement === document.body) document.querySelector<HTMLElement>('[data-drawing]')?.focus();
      });
    };
  }, [session, bar]);
}

/** What the outline would go into if it were closed as it stands; nothing where it would not be sound. */
function PenFitLine() {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const pen = useStore(session.draw, (s) => s.pen);
  const penFor = useStore(session.draw, (s) => s.penFor);
  const [fits, setFits] = useState<PenFits | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another vertex is what it waits for
  useEffect(() => judgePen(session, setFits), [session, pen, penFor]);
  if (!fits || fits.of === 0) return null;
  const { picked, goesIn, of, kind } = fits;
  const whole =
    kind === 'opening' ? `Closed now it takes ${goesIn} of ${of}` : `Closed now it goes into ${goesIn} of ${of}`;
  return (
    <span className={styles.penFit}>
      <span>{whole}</span>
      {picked && (
        <span
          className={styles.penPicked}
          title={`${picked.name}: ${picked.fit.verdict} ${marginText(picked.fit, units)}`}
        >
          <AnswerMark mark={picked.fit.verdict} size={18} />
          <span className={styles.pairName}>{picked.name}</span>
        </span>
      )}
    </span>
  );
}

function titleOf({ documents }: Session, target: PenTarget | null): string {
  if (!target) return 'New outline';
  if ('head' in target)
    return `New ${target.head.kind === 'opening' ? 'keyway' : target.head.kind}: ${target.head.name}`;
  const profile = documents.getState().document?.family.profiles.find(({ id }) => id === target.id);
  return `New outline for ${profile?.name ?? 'a section'}`;
}

interface PlaceFieldProps {
  readonly fault: string;
  setFault(words: string): void;
  tell(words: string): void;
}

/** A place typed in the units in force; Enter sets the vertex there. */
function PlaceField({ fault, setFault, tell }: PlaceFieldProps) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const [text, setText] = useState('');
  const id = useId();
  const set = (event: FormEvent) => {
    event.preventDefault();
    const typed = readPlace(text, units, session.draw.getState().pen?.at(-1) ?? null);
    if (!typed.ok) return setFault(typed.words);
    if (!setPenVertex(session, typed.at)) return setFault('That is where the last vertex stands.');
    setText('');
    setFault('');
    tell(penText(session));
  };
  return (
    <form className={styles.place} onSubmit={set}>
      <label htmlFor={id}>Next, in {units === 'mm' ? 'mm' : 'inches'}</label>
      <input
        id={id}
        value={text}
        size={16}
        autoComplete="off"
        spellCheck={false}
        placeholder="x, y or @dx, dy"
        aria-describedby={`${id}-how`}
        aria-invalid={fault !== ''}
        onChange={(event) => {
          setText(event.target.value);
          setFault('');
        }}
        onKeyDown={(event) => {
          if (event.key === 'Escape') document.querySelector<HTMLElement>('[data-drawing]')?.focus();
          else if (event.key === 'Enter' && text.trim() === '' && closePen(session)) tell('The outline is closed.');
        }}
      />
      <button type="submit" className="key" title="Set a vertex at the typed place (Enter)">
        Set
      </button>
      <span id={`${id}-how`} className="unseen">
        x, y from the origin; @dx, dy from the last vertex; length&lt;angle from the last vertex, in degrees
        counter-clockwise from the right. Enter in the empty field closes the outline.
      </span>
    </form>
  );
}
