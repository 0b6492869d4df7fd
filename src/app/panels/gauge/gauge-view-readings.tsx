import type { Family } from '../../../family/family.ts';
import { useSession, useStore } from '../use-store.ts';
import { CurvesReadings } from './curves-readings.tsx';
import { TightnessReadings } from './tightness-readings.tsx';
import { ToolsReadings } from './tools-readings.tsx';

/** The right side of the Gauge view. */
export function GaugeViewReadings({ family }: { family: Family }) {
  const { gauge } = useSession();
  const sheet = useStore(gauge, (s) => s.sheet);
  return (
    <>
      {sheet === 'curves' && <CurvesReadings family={family} />}
      {sheet === 'tools' && <ToolsReadings family={family} />}
      {sheet === 'tightness' && <TightnessReadings family={family} />}
    </>
  );
}
