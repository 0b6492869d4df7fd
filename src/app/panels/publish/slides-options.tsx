import { TickField } from '../form-fields.tsx';
import { useSession, useStore } from '../use-store.ts';
import { InksChoice, LengthsChoice } from './choice-line.tsx';
import styles from './slides-options.module.css';

/** How the slides are made, and the way to their words. */
export function SlidesOptions({ stepNow }: { stepNow(): number }) {
  const { sheetChoice } = useSession();
  const dated = useStore(sheetChoice, (s) => s.dated);
  return (
    <form className={styles.options} aria-label="How slides are made" onSubmit={(event) => event.preventDefault()}>
      <InksChoice />
      <LengthsChoice />
      <TickField label="With the date" value={dated} onChange={(next) => sheetChoice.setState({ dated: next })} />
      <TeachKey label="Edit the lesson" stepNow={stepNow} />
    </form>
  );
}

interface TeachKeyProps {
  readonly label: string;
  /** Number of the step that it leads to, from 0. */
  stepNow(): number;
}

/** Leads to the lesson in Teach. */
export function TeachKey({ label, stepNow }: TeachKeyProps) {
  const { selection, teach } = useSession();
  const go = () => {
    teach.setState({ sheet: 'lesson', step: stepNow() });
    selection.setState({ view: 'teach' });
  };
  return (
    <button type="button" className="key" data-teach-key="" title="In the Teach view" onClick={go}>
      {label}
    </button>
  );
}
