import { passageFindingOf } from '../../../state/tiers/passage-finding.ts';
import { JobProgress } from '../../job-progress.tsx';
import { useSession, useStore } from '../../use-store.ts';
import styles from './passage-progress.module.css';

/** How far the search has come, with a way to stop it; and what to do when it stopped or failed. */
export function PassageProgress({ what }: { what: string }) {
  const finding = passageFindingOf(useSession());
  const job = useStore(finding.store, (s) => s);
  return (
    <JobProgress
      id="passage-progress"
      label={`Looking for the best alignment of ${what}`}
      job={job}
      keys={finding}
      again="Look again"
      stopped="The search was stopped; what is drawn is the answer before it."
      failed="The search failed"
      className={styles.over}
    />
  );
}
