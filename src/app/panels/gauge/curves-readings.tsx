import type { Family } from '../../../family/family.ts';
import { AtHeightList } from './at-height-list.tsx';
import { LimitTable } from './limit-table.tsx';
import { PinchReading } from './pinch-reading.tsx';
import { useGauge } from './use-gauge.ts';

/** What belongs beside the Thickness sheet: the keyways at the height in hand, who sets the limit, the tools. */
export function CurvesReadings({ family }: { family: Family }) {
  const gauge = useGauge(family);
  if (gauge.openings.length === 0) return null;
  return (
    <>
      {gauge.picked && <PinchReading gauge={gauge} opening={gauge.picked} />}
      <AtHeightList gauge={gauge} runningClearance={family.runningClearance} />
      <LimitTable gauge={gauge} />
    </>
  );
}
