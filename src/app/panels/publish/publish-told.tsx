import { makingFileOf } from '../../state/publish/making-file.ts';
import { useSession, useStore } from '../use-store.ts';
import styles from './publish-keys.module.css';

/** What came of the last file. */
export function PublishTold() {
  const said = useStore(makingFileOf(useSession()).store, (s) => s.said);
  return (
    <p role="status" className={styles.told}>
      {said}
    </p>
  );
}
