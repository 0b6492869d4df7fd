import { type Family, openingsOf } from '../../../family/family.ts';
import { EmptyNotice } from '../../panels/empty-notice.tsx';
import { ChartPanel } from '../../panels/gauge/chart-panel.tsx';
import { GaugeAnswerLine } from '../../panels/gauge/gauge-answer-line.tsx';
import { GaugeBar } from '../../panels/gauge/gauge-bar.tsx';
import { GaugeProgress } from '../../panels/gauge/gauge-progress.tsx';
import { PinchPanel } from '../../panels/gauge/pinch-panel.tsx';
import { useAskedCurves, useGauge } from '../../panels/gauge/use-gauge.ts';
import { useAskedTools } from '../../panels/gauge/use-tools.ts';
import { useStore } from '../../panels/use-store.ts';
import styles from './curves-sheet.module.css';

/** Thickness against height. */
export function CurvesSheet({ family }: { family: Family }) {
  if (openingsOf(family).length === 0)
    return (
      <EmptyNotice
        title="This family has no keyways"
        what="A tool is gauged by the keyways it must enter. Draw a keyway, import one, or plan the family from its areas."
      />
    );
  return <Curves family={family} />;
}

function Curves({ family }: { family: Family }) {
  const gauging = useAskedCurves(family);
  const phase = useStore(gauging.store, (s) => s.phase);
  const gauge = useGauge(family);
  useAskedTools(family, gauge, false);
  return (
    <div className={styles.sheet} data-gauge={phase}>
      <GaugeAnswerLine family={family} gauge={gauge} />
      <GaugeBar family={family} withThickness />
      <GaugeProgress family={family} />
      <div className={styles.both}>
        <ChartPanel family={family} gauge={gauge} />
        <PinchPanel gauge={gauge} />
      </div>
    </div>
  );
}
