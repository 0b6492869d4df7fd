import { type KeyboardEvent, useId, useLayoutEffect, useRef, useState } from 'react';
import type { Family } from '../../../../family/family.ts';
import { LONGEST_QUESTION } from '../../../../names/ask.ts';
import { registerOf } from '../../../../names/register.ts';
import { askQuestion } from '../../../state/names/asking.ts';
import { type Suggested, suggestNames, takeName } from '../../../state/names/suggest-names.ts';
import { walk } from '../../../state/walk.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './ask-line.module.css';

/** What is offered under the line, and which of it is active; -1 is none. */
interface Offer extends Suggested {
  readonly active: number;
}

/** The question line: Enter asks, names are offered while one is typed, Up and Down bring back what was asked before. */
export function AskLine({ family }: { family: Family }) {
  const id = useId();
  const hand = useAskLine(family);
  const { line, question, offer } = hand;
  return (
    <search>
      <form
        className={styles.form}
        onSubmit={(event) => {
          event.preventDefault();
          hand.submit();
        }}
      >
        <label htmlFor={id} className="unseen">
          Your question
        </label>
        <div className={styles.field}>
          <input
            ref={line}
            id={id}
            data-question=""
            className={styles.line}
            type="text"
            maxLength={LONGEST_QUESTION}
            autoComplete="off"
            spellCheck={false}
            placeholder="Ask: does … go into …?"
            role="combobox"
            aria-autocomplete="list"
            aria-expanded={offer !== null}
            aria-controls={`${id}-names`}
            aria-activedescendant={offer && offer.active >= 0 ? `${id}-name-${offer.active}` : undefined}
            aria-describedby={`${id}-hint`}
            value={question}
            onChange={({ target }) => hand.type(target.value, target.selectionStart ?? target.value.length)}
            onBlur={hand.close}
            onKeyDown={hand.press}
          />
          <NameOffer id={id} offer={offer} onTake={hand.take} />
        </div>
        <button type="submit" className={`key ${styles.ask}`} aria-pressed="true">
          Ask
        </button>
      </form>
      <p id={`${id}-hint`} className={styles.hint}>
        Enter asks. Up and Down bring back what you asked before, or go through the names offered.
      </p>
    </search>
  );
}

/** What is done to the line: typing, its keys, a name taken, the question asked. */
function useAskLine(family: Family) {
  const session = useSession();
  const { names } = session;
  const question = useStore(names, (s) => s.question);
  const [offer, setOffer] = useState<Offer | null>(null);
  const line = useRef<HTMLInputElement>(null);
  const placeCaret = useCaret(line);
  const stepThroughRecent = useRecent(placeCaret);
  const close = () => setOffer(null);
  const type = (text: string, caret: number) => {
    names.setState({ question: text });
    const suggested = suggestNames(registerOf(family), text, caret);
    setOffer(suggested && { ...suggested, active: -1 });
  };
  const take = (name: string) => {
    if (!offer) return;
    const taken = takeName(question, offer, name);
    names.setState({ question: taken.text });
    close();
    placeCaret(taken.caret);
  };
  const submit = () => {
    const chosen = offer?.names[offer.active];
    close();
    if (chosen !== undefined) take(chosen);
    else askQuestion(session, question);
  };
  const press = (event: KeyboardEvent) => {
    const steps = { ArrowDown: 1, ArrowUp: -1 }[event.key] ?? 0;
    if (event.key === 'Escape' && offer) close();
    else if (steps !== 0 && offer) setOffer({ ...offer, active: nextActive(offer, steps) });
    else if (steps === 0 || !stepThroughRecent(steps)) return;
    event.preventDefault();
  };
  return { line, question, offer, type, take, submit, press, close };
}

/** Round through the names and the line itself, which is -1. */
function nextActive({ names, active }: Offer, steps: number): number {
  const places = [-1, ...names.keys()];
  return walk(places, active, steps) ?? -1;
}

interface NameOfferProps {
  readonly id: string;
  readonly offer: Offer | null;
  onTake(name: string): void;
}

function NameOffer({ id, offer, onTake }: NameOfferProps) {
  return (
    <div role="listbox" id={`${id}-names`} aria-label="Names" className={styles.offer} hidden={!offer}>
      {offer?.names.map((name, i) => (
        // biome-ignore lint/a11y/useKeyWithClickEvents: the line has the focus and its keys choose
        // biome-ignore lint/a11y/useFocusableInteractive: the line names the active one
        <div
          key={name}
          id={`${id}-name-${i}`}
          role="option"
          aria-selected={i === offer.active}
          className={styles.option}
          // The line keeps the focus.
          onMouseDown={(event) => event.preventDefault()}
          onClick={() => onTake(name)}
        >
          {name}
        </div>
      ))}
    </div>
  );
}

/** Puts the caret somewhere once what was set is in the line. */
function useCaret(line: React.RefObject<HTMLInputElement | null>): (at: number) => void {
  const [wanted, setWanted] = useState<{ at: number } | null>(null);
  useLayoutEffect(() => {
    if (!wanted) return;
    line.current?.focus();
    line.current?.setSelectionRange(wanted.at, wanted.at);
  }, [wanted, line]);
  return (at) => setWanted({ at });
}

/** Steps through the questions asked before; what was being typed comes after the latest of them. */
function useRecent(placeCaret: (at: number) => void): (steps: number) => boolean {
  const { names } = useSession();
  const draft = useRef('');
  return (steps) => {
    const { recent, question } = names.getState();
    const at = recent.indexOf(question);
    const next = at - steps;
    if (at < 0) draft.current = question;
    if (next >= recent.length || next < -1 || recent.length === 0) return false;
    const text = next === -1 ? draft.current : recent[next];
    names.setState({ question: text });
    placeCaret(text.length);
    return true;
  };
}
