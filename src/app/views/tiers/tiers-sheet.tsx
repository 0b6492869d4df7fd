import { type PointerEvent, useMemo, useRef } from 'react';
import { entrantsOf, type Family, openingsOf } from '../../../family/family.ts';
import { EmptyNotice } from '../../panels/empty-notice.tsx';
import { Diagram } from '../../panels/tiers/diagram/diagram.tsx';
import { Matrix } from '../../panels/tiers/matrix/matrix.tsx';
import { MatrixBar } from '../../panels/tiers/matrix/matrix-bar.tsx';
import { TierHeadline } from '../../panels/tiers/tier-headline.tsx';
import { useSize } from '../../panels/use-size.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { matrixWidths, wantedWidth } from '../../state/tiers/matrix-measures.ts';
import { columnNames } from '../../state/tiers/matrix-order.ts';
import styles from './tiers-sheet.module.css';

/** Who enters what: matrix and diagram side by side, with one selection. */
export function TiersSheet({ family }: { family: Family }) {
  if (openingsOf(family).length === 0)
    return (
      <EmptyNotice
        title="This family has no keyways"
        what="The matrix shows which blank enters which keyway. Make a keyway in Draw, or import one, and it becomes a column here."
      />
    );
  if (entrantsOf(family).length === 0)
    return (
      <EmptyNotice
        title="This family has no blanks or tools"
        what="The matrix has a row for everything that may go into a keyway. Make a blank in Draw, or import one."
      />
    );
  return (
    <div className={styles.sheet} data-tiers-sheet>
      <TierHeadline family={family} />
      <Pictures family={family} />
    </div>
  );
}

/** Least share of the width that either picture keeps. */
const LEAST_SHARE = 0.25;

/** The matrix has what it needs up to this share, until the bar between the two is moved. */
const MOST_OWN = 0.6;

/** Room for the keys over the matrix in one line, pixels. */
const BAR_WIDTH = 464;

function Pictures({ family }: { family: Family }) {
  const { tiers } = useSession();
  const shown = useStore(tiers, (s) => s.shown);
  const own = useStore(tiers, (s) => s.matrixShare);
  const [frame, size] = useSize<HTMLDivElement>();
  const wanted = useMemo(() => {
    const openings = openingsOf(family);
    const names = columnNames(openings);
    const columns = openings.map(({ id, name }) => names.get(id) ?? name);
    return wantedWidth(matrixWidths({ rows: entrantsOf(family).map(({ name }) => name), columns }));
  }, [family]);
  const share = own ?? Math.min(MOST_OWN, Math.max(BAR_WIDTH, wanted) / (size?.width || 1000));
  const columns = shown === 'both' ? `minmax(0, ${share}fr) 9px minmax(0, ${1 - share}fr)` : 'minmax(0, 1fr)';
  return (
    <div ref={frame} className={styles.pictures} style={{ gridTemplateColumns: columns }}>
      {shown !== 'diagram' && (
        <section className={styles.picture} aria-label="Matrix">
          <MatrixBar />
          <Matrix family={family} />
        </section>
      )}
      {shown === 'both' && (
        <Splitter
          share={share}
          onShare={(next) =>
            tiers.setState({ matrixShare: next && Math.min(1 - LEAST_SHARE, Math.max(LEAST_SHARE, next)) })
          }
          shareAt={(x) => {
            const box = frame.current?.getBoundingClientRect();
            return box ? (x - box.left) / box.width : share;
          }}
        />
      )}
      {shown !== 'matrix' && (
        <section className={styles.picture} aria-label="Tier diagram">
          <Diagram family={family} />
        </section>
      )}
    </div>
  );
}

interface SplitterProps {
  readonly share: number;
  /** null: as it was at first. */
  onShare(share: number | null): void;
  /** The share that a place of the pointer stands for. */
  shareAt(clientX: number): number;
}

const STEPS: Readonly<Record<string, number>> = { ArrowLeft: -0.05, ArrowRight: 0.05 };

/** The bar between the two, which is dragged, or moved by the arrow keys. */
function Splitter({ share, onShare, shareAt }: SplitterProps) {
  const held = useRef(false);
  const hold = (event: PointerEvent<HTMLDivElement>) => {
    held.current = true;
    event.currentTarget.setPointerCapture(event.pointerId);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a rule that is moved is no thematic break
    <div
      role="separator"
      aria-orientation="vertical"
      aria-label="Width of matrix and diagram"
      aria-valuenow={Math.round(share * 100)}
      aria-valuemin={LEAST_SHARE * 100}
      aria-valuemax={(1 - LEAST_SHARE) * 100}
      tabIndex={0}
      className={styles.splitter}
      title="Drag to share the room, or use the arrow keys; double click puts it back"
      onPointerDown={hold}
      onPointerMove={(event) => held.current && onShare(shareAt(event.clientX))}
      onPointerUp={() => {
        held.current = false;
      }}
      onLostPointerCapture={() => {
        held.current = false;
      }}
      onDoubleClick={() => onShare(null)}
      onKeyDown={(event) => {
        const to =
          event.key in STEPS ? share + STEPS[event.key] : { Home: LEAST_SHARE, End: 1 - LEAST_SHARE }[event.key];
        if (to === undefined) return;
        event.preventDefault();
        onShare(to);
      }}
    />
  );
}
