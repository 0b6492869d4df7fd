import { tablingOf } from '../../state/gauge/tabling-tools.ts';
import { JobProgress } from '../job-progress.tsx';
import { useSession, useStore } from '../use-store.ts';

/** How far the judging of tools has come, with a way to stop it. */
export function ToolsProgress() {
  const tabling = tablingOf(useSession());
  const state = useStore(tabling.store, (s) => s);
  return (
    <JobProgress
      id="tools-progress"
      label={`Trying tools: ${state.done} of ${state.total} pairs`}
      job={state}
      keys={tabling}
      again="Try them"
      stopped="Stopped: the tools are not all tried."
      failed="The tools could not be tried"
    />
  );
}
