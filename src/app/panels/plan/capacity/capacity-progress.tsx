import { countingOf } from '../../../state/plan/capacity/counting-capacity.ts';
import line from '../../job-progress.module.css';
import { JobProgress } from '../../job-progress.tsx';
import { useSession, useStore } from '../../use-store.ts';

/** How far the count has come, with a way to stop it; and what to do when it stopped or failed. */
export function CapacityProgress({ waiting }: { waiting: boolean }) {
  const counting = countingOf(useSession());
  const state = useStore(counting.store, (s) => s);
  if (waiting)
    return (
      <p className={line.line} data-phase="waiting">
        Sections are counted once every pair of blank and keyway is judged …
      </p>
    );
  return (
    <JobProgress
      id="capacity-progress"
      label="Counting"
      job={state}
      keys={counting}
      again="Count again"
      stopped="The count was stopped; what is shown is the answer before it."
      failed="The count failed"
    />
  );
}
