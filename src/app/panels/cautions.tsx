import { type CautionSubject, cautionsAbout } from '../../family/cautions.ts';
import styles from './cautions.module.css';

/** What must be said beside figures that people could be hurt or misled by. */
export function Cautions({ about }: { about: CautionSubject }) {
  return (
    <aside className={styles.cautions} aria-label="Cautions" data-cautions={about}>
      <svg className={styles.sign} viewBox="0 0 24 24" aria-hidden="true">
        <path d="M12 3 22 21H2Z M12 10v5 M12 17.4v1.2" />
      </svg>
      <ul className={styles.list}>
        {cautionsAbout(about).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </aside>
  );
}
