import { useMemo } from 'react';
import { type Family, openingsOf } from '../../../family/family.ts';
import { EmptyNotice } from '../../panels/empty-notice.tsx';
import answer from '../../panels/gauge/gauge-answer.module.css';
import { GaugeAnswer } from '../../panels/gauge/gauge-answer.tsx';
import { GaugeBar } from '../../panels/gauge/gauge-bar.tsx';
import { GaugeProgress } from '../../panels/gauge/gauge-progress.tsx';
import { MeasureChoice } from '../../panels/gauge/measure-choice.tsx';
import { TightnessTable } from '../../panels/gauge/tightness-table.tsx';
import { useAskedCurves, useGauge, useTightRows } from '../../panels/gauge/use-gauge.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { askedHeightText } from '../../state/gauge/gauge-lengths.ts';
import type { TightBy } from '../../state/gauge/gauge-state.ts';
import { tiltLimitText, waitingWords } from '../../state/gauge/gauge-words.ts';
import { tightHeadline, tightWords } from '../../state/gauge/tight-rows.ts';
import { trayReach } from '../../state/tray-reach.ts';
import styles from './tightness-sheet.module.css';

/** Keyways from tight to wide. */
export function TightnessSheet({ family }: { family: Family }) {
  if (openingsOf(family).length === 0)
    return (
      <EmptyNotice
        title="This family has no keyways"
        what="Keyways are put in order from tight to wide. Draw one, import one, or plan the family from its areas."
      />
    );
  return <Tightness family={family} />;
}

/** What stands over the bars. */
const HEADS: Readonly<Record<TightBy, string>> = {
  height: 'Thickest strip of that height',
  mean: 'Mean thickness over all heights',
  sight: 'Line of sight',
};

function Tightness({ family }: { family: Family }) {
  const session = useSession();
  useAskedCurves(family);
  const gauge = useGauge(family);
  const units = useStore(session.settings, (s) => s.units);
  const tiltLimit = useStore(session.gauge, (s) => s.tiltLimit);
  const by = useStore(session.gauge, (s) => s.measure);
  const rows = useTightRows(gauge);
  const reach = useMemo(() => trayReach(family), [family]);
  const height = askedHeightText(gauge.height, units);
  const words = gauge.complete
    ? tightHeadline(rows, by, height, tiltLimitText(tiltLimit))
    : waitingWords(gauge.curves.size, gauge.openings.length);
  return (
    <div className={styles.sheet} data-tightness={by}>
      <header className={answer.head}>
        <GaugeAnswer words={words} />
        <p data-measure-words>{tightWords(by, height)}</p>
      </header>
      <GaugeBar family={family} withThickness={false}>
        <MeasureChoice />
      </GaugeBar>
      <GaugeProgress family={family} />
      <TightnessTable
        rows={rows}
        by={by}
        heightText={height}
        measureHead={HEADS[by]}
        reach={reach}
        pickedId={gauge.picked?.id ?? null}
      />
    </div>
  );
}
