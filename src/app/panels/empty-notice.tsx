import { openText } from '../state/document-state.ts';
import { SAMPLE_FAMILIES } from '../state/sample-families.ts';
import styles from './notices.module.css';
import { useSession } from './use-store.ts';

/** What stands in the middle when there is nothing to lay out, and the way on from there. */
export function EmptyNotice({ title, what }: { title: string; what: string }) {
  const { documents, doors } = useSession();
  const [demo] = SAMPLE_FAMILIES;
  return (
    <section className={styles.empty}>
      <h2>{title}</h2>
      <p>{what}</p>
      <button type="button" className="key" onClick={() => openText(documents, doors, demo.text, demo.fileName)}>
        Open the demo family
      </button>
    </section>
  );
}
