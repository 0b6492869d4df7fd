import line from '../../job-progress.module.css';
import { JobProgress } from '../../job-progress.tsx';
import styles from './passage-progress.module.css';
import type { MadePassage } from './use-milled-passage.ts';

/** How far the search for a milled blank has come, and what there is to say where it ended without one. */
export function MillingProgress({ made }: { made: MadePassage }) {
  if (made.phase === 'none')
    return (
      <div className={`${line.line} ${styles.over}`} data-phase="none">
        <p role="alert">
          This cutter can mill no blank that enters them all. Give a narrower groove, a smaller root radius, or a
          thinner or lower plain blade.
        </p>
      </div>
    );
  return (
    <JobProgress
      id="milling-progress"
      label="Looking for what the cutter can mill"
      job={made}
      keys={made.milling}
      again="Look again"
      stopped="The search was stopped."
      failed="The search failed"
      className={styles.over}
    />
  );
}
