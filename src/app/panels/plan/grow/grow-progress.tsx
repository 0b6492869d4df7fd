import { growFindingOf } from '../../../state/plan/grow/grow-finding.ts';
import { JobProgress } from '../../job-progress.tsx';
import { useSession, useStore } from '../../use-store.ts';

/** How far the search has come, with a way to stop it; and what to do when it stopped or failed. */
export function GrowProgress() {
  const finding = growFindingOf(useSession());
  const job = useStore(finding.store, (s) => s);
  return (
    <JobProgress
      id="grow-progress"
      label="Trying wards, drawing and judging sections"
      job={job}
      keys={finding}
      again="Look again"
      stopped="The search was stopped."
      failed="The search failed"
    />
  );
}
