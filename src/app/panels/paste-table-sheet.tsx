import { type ReactNode, useId } from 'react';
import { FaultList } from './fault-list.tsx';
import { ModalSheet } from './modal-sheet.tsx';
import styles from './paste-table-sheet.module.css';

/** A longer text is not shown in a field. */
const MOST_SHOWN_TEXT = 60_000;

interface Fault {
  readonly path: string;
  readonly what: string;
  readonly cure: string;
}

interface PasteTableSheetProps {
  readonly title: string;
  readonly text: string;
  onText(text: string): void;
  /** What may be pasted, shown while nothing is. */
  readonly how: string;
  /** What the marks of a table may be. */
  readonly notes: string;
  /** What it comes to, along the lower edge. */
  readonly foot: string;
  /** The key that takes it. */
  readonly main: { readonly label: string; readonly disabled: boolean; press(): void };
  /** Why it was not taken. */
  readonly refusal: readonly Fault[] | null;
  /** What was understood; null while nothing is pasted. */
  readonly children: ReactNode;
  onClose(): void;
}

/** A table before it is taken: its text on the left, what was understood of it on the right. */
export function PasteTableSheet(props: PasteTableSheetProps) {
  const { title, foot, main, refusal, children, onClose } = props;
  return (
    <ModalSheet
      large
      title={title}
      onClose={onClose}
      foot={
        <>
          <p role="status" className={styles.count}>
            {foot}
          </p>
          <button type="button" className="key" onClick={onClose}>
            Cancel
          </button>
          <button type="button" className={`key ${styles.main}`} disabled={main.disabled} onClick={() => main.press()}>
            {main.label}
          </button>
        </>
      }
    >
      <div className={styles.sheet}>
        <div className={styles.left}>
          <TableText {...props} />
        </div>
        <section className={styles.right} aria-label="What was understood">
          {children ?? <p className={styles.note}>What is understood of it is shown here, before anything is added.</p>}
        </section>
      </div>
      <FaultList faults={refusal ?? []} />
    </ModalSheet>
  );
}

function TableText({ text, onText, how, notes }: Pick<PasteTableSheetProps, 'text' | 'onText' | 'how' | 'notes'>) {
  const id = useId();
  if (text.length > MOST_SHOWN_TEXT)
    return (
      <>
        <p className={styles.note}>
          {text.length.toLocaleString('en')} letters, too many to change here. It begins with
        </p>
        <pre className={styles.text}>{beginningOf(text)}</pre>
      </>
    );
  return (
    <>
      <label htmlFor={id} className={styles.label}>
        The table: from a spreadsheet, or CSV with commas, semicolons or tabs
      </label>
      <textarea
        id={id}
        data-first
        className={styles.text}
        spellCheck={false}
        value={text}
        placeholder={how}
        onChange={(event) => onText(event.target.value)}
      />
      <p className={styles.note}>{notes}</p>
    </>
  );
}

/** The first lines of a long text, each cut off where it is long. */
function beginningOf(text: string): string {
  const lines = text.slice(0, 20_000).split(/\r\n|\r|\n/, 24);
  return `${lines.map((line) => (line.length > 100 ? `${line.slice(0, 100)} …` : line)).join('\n')}\n…`;
}

interface RowFaultsProps {
  readonly title: string;
  readonly faults: readonly Fault[];
  /** How many there are, where not all of them are told. */
  readonly count?: number;
  /** Heard at once: nothing can be taken. */
  readonly alert?: boolean;
}

/** What is wrong with rows of a table, or with all of it. */
export function RowFaults({ title, faults, count = faults.length, alert = false }: RowFaultsProps) {
  return (
    <section className={styles.part} role={alert ? 'alert' : undefined}>
      <h3>{title}</h3>
      <ul className={styles.faults}>
        {faults.map(({ path, what, cure }) => (
          <li key={`${path} ${what}`}>
            <b>{path}</b>: {what}. {cure}
          </li>
        ))}
      </ul>
      {count > faults.length && <p className={styles.note}>and {count - faults.length} more</p>}
    </section>
  );
}
