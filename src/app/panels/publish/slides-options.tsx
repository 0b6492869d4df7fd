import { slidesLookOf } from '../../state/publish/sheets-look.ts';
import { TickField } from '../form-fields.tsx';
import { useSession, useStore } from '../use-store.ts';
import { InksChoice, LengthsChoice } from './choice-line.tsx';
import styles from './slides-options.module.css';

/** How the slides are made, and the way to their words. */
export function SlidesOptions() {
  const { sheetChoice } = useSession();
  const dated = useStore(sheetChoice, (s) => s.dated);
  return (
    <form className={styles.options} aria-label="How slides are made" onSubmit={(event) => event.preventDefault()}>
      <InksChoice />
      <LengthsChoice />
      <TickField label="With the date" value={dated} onChange={(next) => sheetChoice.setState({ dated: next })} />
      <TeachKey label="Edit the lesson" />
    </form>
  );
}

/** Leads to the step of the lesson that is shown. */
export function TeachKey({ label }: { label: string }) {
  const session = useSession();
  const { selection, teach } = session;
  const go = () => {
    teach.setState({ sheet: 'lesson', step: slidesLookOf(session).getState().page });
    selection.setState({ view: 'teach' });
  };
  return (
    <button type="button" className="key" title="In the Teach view, at this step" onClick={go}>
      {label}
    </button>
  );
}
