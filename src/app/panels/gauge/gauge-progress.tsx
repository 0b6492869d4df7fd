import { type Family, openingsOf } from '../../../family/family.ts';
import { gaugingOf } from '../../state/gauge/gauging.ts';
import { JobProgress } from '../job-progress.tsx';
import { useSession, useStore } from '../use-store.ts';

/** How far the gauging has come, with a way to stop it; and what to do when it stopped or failed. */
export function GaugeProgress({ family }: { family: Family }) {
  const gauging = gaugingOf(useSession());
  const state = useStore(gauging.store, (s) => s);
  const all = openingsOf(family).length;
  const known = state.curves.length;
  const tilted = (state.asked?.tiltLimit ?? 0) > 0 ? ', tilted either way' : '';
  return (
    <JobProgress
      id="gauge-progress"
      label={`Gauging the keyways${tilted}: ${known} of ${all}`}
      job={state}
      keys={gauging}
      again="Go on"
      stopped={`Stopped: ${known} of ${all} keyways are known.`}
      failed="The keyways could not be gauged"
    />
  );
}
