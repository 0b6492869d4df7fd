import { useCallback, useMemo } from 'react';
import { type Family, openingsOf } from '../../../family/family.ts';
import { type PlugFace, plugFace } from '../../../family/plug-face.ts';
import type { Profile } from '../../../profile/profile.ts';
import { EmptyNotice } from '../../panels/empty-notice.tsx';
import { useHalted, usePickedPair, usePickedRow, useWornAway } from '../../panels/use-family.ts';
import { useSize } from '../../panels/use-size.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { ClashHatch } from '../../panels/wall/plug-picture.tsx';
import { WallCell } from '../../panels/wall/wall-cell.tsx';
import { WallHead } from '../../panels/wall/wall-head.tsx';
import { useWallKeys } from './use-wall-keys.ts';
import styles from './wall.module.css';
import { type WallLayout, wallLayout } from './wall-layout.ts';

/** The display block: the picked blank tried in every keyway of the family at once. */
export function Wall({ family }: { family: Family }) {
  const { entrant } = usePickedPair();
  const openings = useMemo(() => openingsOf(family), [family]);
  useWallKeys(family);
  return (
    <div className={styles.wall}>
      <WallHead entrant={entrant} openingCount={openings.length} />
      {openings.length === 0 ? (
        <EmptyNotice
          title="This family has no keyways"
          what="Make one in Draw, import one, or plan the family: each becomes a keyway of the block."
        />
      ) : (
        <Block openings={openings} />
      )}
    </div>
  );
}

/** The machined face with a cell for each keyway, as large as the window lets them be. */
function Block({ openings }: { openings: readonly Profile[] }) {
  const [frame, size] = useSize<HTMLDivElement>();
  const face = useMemo(() => plugFace(openings), [openings]);
  const layout = useMemo(
    () => (size ? wallLayout(openings.length, size.width, size.height, face) : null),
    [size, openings.length, face],
  );
  return (
    <div ref={frame} className={styles.frame}>
      {layout && <Cells openings={openings} face={face} layout={layout} />}
    </div>
  );
}

interface CellsProps {
  readonly openings: readonly Profile[];
  readonly face: PlugFace;
  readonly layout: WallLayout;
}

function Cells({ openings, face, layout }: CellsProps) {
  const { selection, settings, conditions, details } = useSession();
  const units = useStore(settings, (s) => s.units);
  const { entrant, opening: picked } = usePickedPair();
  const row = usePickedRow();
  const wornAway = useWornAway(entrant);
  const halted = useHalted();
  const telling = useStore(conditions, (s) => s.telling);
  const { threeWay, wear } = useStore(details, (s) => s);
  const onPick = useCallback((openingId: string) => selection.setState({ openingId }), [selection]);
  const onCompare = useCallback((openingId: string) => selection.setState({ openingId, view: 'compare' }), [selection]);
  return (
    <ul className={styles.block} aria-label="Display block" style={blockStyle(layout)}>
      <ClashHatch pxPerMm={layout.pxPerMm} />
      {openings.map((opening) => (
        <WallCell
          key={opening.id}
          opening={opening}
          entrant={entrant}
          telling={telling}
          fit={row.get(opening.id)}
          wornAway={wornAway}
          threeWay={threeWay.get(opening.id)}
          wear={wear.get(opening.id)}
          halted={halted}
          face={face}
          measures={layout}
          units={units}
          picked={opening === picked}
          onPick={onPick}
          onCompare={onCompare}
        />
      ))}
    </ul>
  );
}

function blockStyle({ columns, cellHeight, type }: WallLayout): Record<string, string> {
  return {
    gridTemplateColumns: `repeat(${columns}, minmax(0, 1fr))`,
    gridAutoRows: `${cellHeight}px`,
    '--cell-name': `${type.name}px`,
    '--cell-word': `${type.word}px`,
    '--cell-margin': `${type.margin}px`,
  };
}
