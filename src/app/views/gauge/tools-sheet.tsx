import { type Family, openingsOf } from '../../../family/family.ts';
import { EmptyNotice } from '../../panels/empty-notice.tsx';
import { CoverLine } from '../../panels/gauge/cover-line.tsx';
import { CoverProgress } from '../../panels/gauge/cover-progress.tsx';
import { GaugeProgress } from '../../panels/gauge/gauge-progress.tsx';
import { KeepStripInHand } from '../../panels/gauge/keep-strip-key.tsx';
import { ToolsBar } from '../../panels/gauge/tools-bar.tsx';
import { ToolsProgress } from '../../panels/gauge/tools-progress.tsx';
import { ToolsTable } from '../../panels/gauge/tools-table.tsx';
import { useAskedCurves, useGauge } from '../../panels/gauge/use-gauge.ts';
import { useAskedCover, useAskedTools, useOrderedTools, useTicked, useTools } from '../../panels/gauge/use-tools.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { tablingOf } from '../../state/gauge/tabling-tools.ts';
import { tickOpening } from '../../state/gauge/tick-openings.ts';
import styles from './tools-sheet.module.css';

/** Tools x openings, and the fewest that do. */
export function ToolsSheet({ family }: { family: Family }) {
  const all = useTools(family, true);
  if (openingsOf(family).length === 0)
    return (
      <EmptyNotice
        title="This family has no keyways"
        what="Tools are tried in keyways. Draw a keyway, import one, or plan the family from its areas."
      />
    );
  if (all.length === 0)
    return (
      <EmptyNotice
        title="This family has no tools"
        what="Keep a strip as a tool, draw one, or import one. What strip would do is told on the sheet Thickness."
      >
        <KeepFirstStrip family={family} />
      </EmptyNotice>
    );
  return <Tools family={family} />;
}

/** The strip in hand becomes the family's first tool; its thickness is proposed once all curves are known. */
function KeepFirstStrip({ family }: { family: Family }) {
  useAskedCurves(family);
  return <KeepStripInHand family={family} />;
}

function Tools({ family }: { family: Family }) {
  const session = useSession();
  useAskedCurves(family);
  const gauge = useGauge(family);
  const withBlanks = useStore(session.gauge, (s) => s.withBlanks);
  const order = useStore(session.gauge, (s) => s.order);
  useAskedTools(family, gauge, withBlanks);
  const ticked = useTicked(gauge.openings);
  useAskedCover(family, ticked);
  const phase = useStore(tablingOf(session).store, (s) => s.phase);
  const rows = useOrderedTools(family, withBlanks);
  return (
    <div className={styles.sheet} data-tools={phase}>
      <CoverLine gauge={gauge} family={family} />
      <ToolsBar family={family} />
      <GaugeProgress family={family} />
      <ToolsProgress />
      <CoverProgress />
      {rows.length === 0 ? (
        <EmptyNotice
          title="This family has blanks, but no tools"
          what="Tick “Blanks too” to try its blanks, keep a strip as a tool, draw one, or import one."
        >
          <KeepStripInHand family={family} />
        </EmptyNotice>
      ) : (
        <ToolsTable
          rows={rows}
          openings={gauge.openings}
          ticked={new Set(ticked)}
          order={order}
          onTick={(id) => tickOpening(session, gauge.openings, id)}
        />
      )}
    </div>
  );
}
