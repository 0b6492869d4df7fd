import { useEffect, useRef } from 'react';
import type { Family } from '../../family/family.ts';
import { CompareReadings } from '../panels/compare/compare-readings.tsx';
import { DrawReadings } from '../panels/draw/draw-readings.tsx';
import { EmptyNotice } from '../panels/empty-notice.tsx';
import { DropZone } from '../panels/exchange/drop-zone.tsx';
import { ExportDialog } from '../panels/exchange/export-dialog.tsx';
import { ImportDialog } from '../panels/exchange/import-dialog.tsx';
import { FaultNotice } from '../panels/fault-notice.tsx';
import { GaugeViewReadings } from '../panels/gauge/gauge-view-readings.tsx';
import { HintStrip } from '../panels/help/hint-strip.tsx';
import { JudgingNotice } from '../panels/judging-notice.tsx';
import { NamesViewReadings } from '../panels/names/names-view-readings.tsx';
import { NoticeList } from '../panels/notice-list.tsx';
import { PlanViewReadings } from '../panels/plan/plan-view-readings.tsx';
import { PublishViewReadings } from '../panels/publish/publish-view-readings.tsx';
import { TeachViewReadings } from '../panels/teach/teach-view-readings.tsx';
import { TiersViewReadings } from '../panels/tiers/tiers-view-readings.tsx';
import { TopBar } from '../panels/top-bar.tsx';
import { Tray } from '../panels/tray.tsx';
import { TroubleBoundary } from '../panels/trouble-boundary.tsx';
import { useDark } from '../panels/use-dark.ts';
import { useFamily } from '../panels/use-family.ts';
import { useSession, useStore } from '../panels/use-store.ts';
import { WallReadings } from '../panels/wall/wall-readings.tsx';
import { editedProfile } from '../state/selection-state.ts';
import styles from './app-frame.module.css';
import { Compare } from './compare/compare.tsx';
import { Draw } from './draw/draw.tsx';
import { Gauge } from './gauge/gauge.tsx';
import { Names } from './names/names.tsx';
import { Plan } from './plan/plan.tsx';
import { Publish } from './publish/publish.tsx';
import { Presenter } from './teach/presenter.tsx';
import { Teach } from './teach/teach.tsx';
import { Tiers } from './tiers/tiers.tsx';
import { useEditKeys, useHeldKeys } from './use-edit-keys.ts';
import { useSaveKeys } from './use-save-keys.ts';
import { useUnsaved } from './use-unsaved.ts';
import { useViewFocus } from './use-view-focus.ts';
import { useViewHash } from './use-view-hash.ts';
import { Wall } from './wall/wall.tsx';

/** The one window: the strip on top, the tray at the left, the view in the middle, the readings at the right. */
export function AppFrame() {
  const dark = useDark();
  const family = useFamily();
  useEditKeys();
  useHeldKeys();
  useSaveKeys();
  useUnsaved();
  return (
    <div className={styles.sheet}>
      <TopBar dark={dark} />
      <TroubleBoundary>{family ? <Bench family={family} /> : <NoFamily />}</TroubleBoundary>
      <DropZone />
      <ImportDialog />
      <ExportDialog />
      <Presenter />
    </div>
  );
}

function Bench({ family }: { family: Family }) {
  const { selection } = useSession();
  const view = useStore(selection, (s) => s.view);
  useViewHash();
  useViewFocus(view);
  const inHand = useStore(selection, (s) => (s.view === 'draw' ? editedProfile(family, s)?.id : ''));
  const readings = useRef<HTMLDivElement>(null);
  // Another subject is read from its beginning.
  // biome-ignore lint/correctness/useExhaustiveDependencies: another view or section is what brings it up
  useEffect(() => {
    if (readings.current) readings.current.scrollTop = 0;
  }, [view, inHand]);
  return (
    <div className={styles.bench} data-view={view}>
      <Tray family={family} />
      <main className={styles.middle}>
        <NoticeList />
        <FaultNotice />
        <HintStrip />
        {view === 'compare' && <Compare family={family} />}
        {view === 'draw' && <Draw family={family} />}
        {view === 'wall' && <Wall family={family} />}
        {view === 'tiers' && <Tiers family={family} />}
        {view === 'plan' && <Plan family={family} />}
        {view === 'gauge' && <Gauge family={family} />}
        {view === 'publish' && <Publish family={family} />}
        {view === 'names' && <Names family={family} />}
        {view === 'teach' && <Teach family={family} />}
      </main>
      <aside className={styles.right} aria-label="Readings">
        <div ref={readings} className={styles.readings}>
          {view === 'compare' && <CompareReadings />}
          {view === 'draw' && <DrawReadings family={family} />}
          {view === 'wall' && <WallReadings family={family} />}
          {view === 'tiers' && <TiersViewReadings family={family} />}
          {view === 'plan' && <PlanViewReadings family={family} />}
          {view === 'gauge' && <GaugeViewReadings family={family} />}
          {view === 'publish' && <PublishViewReadings family={family} />}
          {view === 'names' && <NamesViewReadings family={family} />}
          {view === 'teach' && <TeachViewReadings family={family} />}
        </div>
        <JudgingNotice />
      </aside>
    </div>
  );
}

function NoFamily() {
  const { documents } = useSession();
  const reading = useStore(documents, (s) => s.reading);
  return (
    <main className={styles.alone}>
      <NoticeList />
      <FaultNotice />
      {reading ? (
        <p className={styles.waiting}>Reading the family …</p>
      ) : (
        <EmptyNotice
          title="No family is open"
          what="Open a family file from the Family menu, or drop one on this window."
        />
      )}
    </main>
  );
}
