import { coveringOf } from '../../state/gauge/tabling-tools.ts';
import { JobProgress } from '../job-progress.tsx';
import { useOverdue } from '../use-overdue.ts';
import { useSession, useStore } from '../use-store.ts';

/** That the fewest tools are looked for, where it takes longer than a glance, with a way to stop it. */
export function CoverProgress() {
  const covering = coveringOf(useSession());
  const state = useStore(covering.store, (s) => s);
  const late = useOverdue(state.phase === 'finding');
  if (state.phase === 'finding' && !late) return null;
  return (
    <JobProgress
      id="cover-progress"
      label="Looking for the fewest tools"
      job={state}
      keys={covering}
      again="Look for them"
      stopped="Stopped: the fewest tools are not known."
      failed="The fewest tools could not be found"
    />
  );
}
