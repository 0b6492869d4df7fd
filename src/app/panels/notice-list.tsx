import { noticesOf } from '../state/notices-state.ts';
import styles from './notice-list.module.css';
import { useSession, useStore } from './use-store.ts';

/** What the user has to know for longer, over what is in the middle: each with the keys that help. */
export function NoticeList() {
  const session = useSession();
  const notices = useStore(noticesOf(session), (all) => all);
  return notices.map(({ id, tone, title, words, keys }) => (
    <section key={id} className={styles.notice} data-tone={tone} role="alert" aria-label={title}>
      <div className={styles.words}>
        <h2>{title}</h2>
        <p>{words}</p>
      </div>
      <div className={styles.keys}>
        {keys.map(({ label, press }) => (
          <button key={label} type="button" className="key" onClick={press}>
            {label}
          </button>
        ))}
      </div>
    </section>
  ));
}
