import { JobProgress } from '../../job-progress.tsx';
import styles from './passage-progress.module.css';
import { useFoundPassage } from './use-passage.ts';

/** How far the search has come, with a way to stop it; and what to do when it stopped or failed. */
export function PassageProgress({ what }: { what: string }) {
  const passage = useFoundPassage();
  return (
    <JobProgress
      id="passage-progress"
      label={`Looking for the best alignment of ${what}`}
      job={passage}
      keys={passage.finding}
      again="Look again"
      stopped="The search was stopped; what is drawn is the answer before it."
      failed="The search failed"
      className={styles.over}
    />
  );
}
