import { useMemo } from 'react';
import { countUnjudged, entryTable } from '../../../../family/entry-table.ts';
import type { Family } from '../../../../family/family.ts';
import type { KnownFits } from '../../../../family/known-fits.ts';
import { keepApart } from '../../../../teach/keep-apart.ts';
import { type TierPlate, type TierRows, tierRows } from '../../../../teach/tier-rows.ts';
import { trayReach } from '../../../state/tray-reach.ts';
import { SectionThumb } from '../../section-thumb.tsx';
import { useSession, useStore } from '../../use-store.ts';
import styles from './slide.module.css';
import { LEAST_TYPE, type SlideProps } from './slide-text.tsx';
import type { Room } from './wall-grid.ts';

interface Placed {
  readonly plate: TierPlate;
  readonly row: number;
  /** How wide its place is, and its middle, in pixels. */
  readonly wide: number;
  readonly x: number;
  readonly y: number;
}

/** The tiers row by row, from the bottom up; lines lead from a blank to those it stands on. */
export function TiersPicture({ family, step, frame, room, unit }: SlideProps & { room: Room }) {
  const { results } = useSession();
  const fits = useStore(results, (s) => s.fits);
  const tiers = useMemo(() => tierRows(family, fits, step.blank), [family, fits, step.blank]);
  const type = Math.max(LEAST_TYPE, 26 * unit);
  if (tiers.rows.length === 0) return <p className={styles.rest}>{emptyWords(fits)}</p>;
  const side = type * 6.4;
  const layout = layRows(tiers, room, side, type);
  const shown = Math.min(frame.build + 1, tiers.rows.length);
  return (
    <div className={styles.tiers} style={{ width: room.width, height: room.height, fontSize: type }}>
      <svg className={styles.lines} width={room.width} height={room.height} aria-hidden="true">
        {linesOf(layout).map(({ from, to }) => (
          <path
            key={`${from.plate.id} ${to.plate.id}`}
            data-shown={to.row < shown}
            d={`M${from.x} ${from.y - layout.rowHeight / 2 + 4}L${to.x} ${to.y - layout.rowHeight / 2 + layout.plateHeight}`}
          />
        ))}
      </svg>
      {tiers.rows.map(({ plates, words }, row) => (
        <section key={plates[0].id} className={styles.tier} data-shown={row < shown} aria-hidden={row >= shown}>
          <p className={styles.tierWords} style={{ top: layout.top(row) + layout.rowHeight / 2, width: side - 16 }}>
            {words}
          </p>
          <Plates {...{ family, layout, row, type }} />
        </section>
      ))}
    </div>
  );
}

function emptyWords(fits: KnownFits | null): string {
  if (!fits || countUnjudged(entryTable(fits)) > 0) return 'The tiers come when all pairs are judged …';
  return 'No blank of this family goes into any keyway.';
}

type Layout = ReturnType<typeof layRows>;

function Plates({ family, layout, row, type }: { family: Family; layout: Layout; row: number; type: number }) {
  const reach = useMemo(() => trayReach(family), [family]);
  return (
    <ul>
      {layout.placed
        .filter((placed) => placed.row === row)
        .map(({ plate, wide, x, y }) => (
          <li
            key={plate.id}
            className={styles.tierPlate}
            style={{ left: x - wide / 2, top: y - layout.rowHeight / 2 + 6, width: wide }}
          >
            <SectionThumb
              profile={plate.profile}
              reachX={reach.x}
              reachY={reach.y}
              width={Math.min(wide, Math.ceil((layout.thumb * reach.x) / reach.y) + 6)}
              height={layout.thumb}
            />
            <b>{plate.name}</b>
          </li>
        ))}
      {layout.more(row) > 0 && (
        <li
          className={styles.tierPlate}
          style={{ right: 0, top: layout.top(row) + layout.rowHeight / 2 - type, width: type * 5 }}
        >
          and {layout.more(row)} more
        </li>
      )}
    </ul>
  );
}

/** Space for the lines between two rows, in pixels. */
const LINES = 44;

/** Rows of equal height, the lowest at the bottom; the lowest evenly spread, the others over what they stand on. */
function layRows({ rows }: TierRows, room: Room, side: number, type: number) {
  const rowHeight = Math.min(room.height / rows.length, 220);
  const thumb = Math.max(20, rowHeight - type * 1.5 - LINES);
  const base = (room.height + rowHeight * rows.length) / 2;
  const top = (row: number) => base - rowHeight * (row + 1);
  const width = room.width - side;
  const capacity = Math.max(1, Math.floor(width / (type * 3.8)));
  const centre = new Map<string, number>();
  const placed: Placed[] = rows.flatMap(({ plates }, row) => {
    const crowded = plates.length > capacity;
    const kept = crowded ? plates.slice(0, Math.max(1, capacity - 2)) : plates;
    const within = crowded ? width - type * 5.5 : width;
    const wanted = kept.map(({ onto }, i) => {
      const under = onto.flatMap((id) => centre.get(id) ?? []);
      const even = ((i + 0.5) * within) / kept.length;
      return under.length === 0 ? even : under.reduce((sum, x) => sum + x, 0) / under.length;
    });
    const wide = Math.min(within / kept.length, type * 8);
    const xs = keepApart(wanted, wide, within);
    return kept.map((plate, i) => {
      centre.set(plate.id, xs[i]);
      return { plate, row, wide, x: side + xs[i], y: top(row) + rowHeight / 2 };
    });
  });
  const more = (row: number) => rows[row].plates.length - placed.filter((p) => p.row === row).length;
  return { placed, rowHeight, plateHeight: thumb + type * 1.25 + 10, thumb, top, more };
}

function linesOf({ placed }: Layout): { from: Placed; to: Placed }[] {
  const byId = new Map(placed.map((p) => [p.plate.id, p]));
  return placed.flatMap((to) =>
    to.plate.onto.flatMap((id) => {
      const from = byId.get(id);
      return from ? [{ from, to }] : [];
    }),
  );
}
