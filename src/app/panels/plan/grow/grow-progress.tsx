import { JobProgress } from '../../job-progress.tsx';
import { useGrowth } from './use-growth.ts';

/** How far the search has come, with a way to stop it; and what to do when it stopped or failed. */
export function GrowProgress() {
  const growth = useGrowth();
  return (
    <JobProgress
      id="grow-progress"
      label="Trying wards, drawing and judging sections"
      job={growth}
      keys={growth.finding}
      again="Look again"
      stopped="The search was stopped."
      failed="The search failed"
    />
  );
}
