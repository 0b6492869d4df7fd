import { useEffect, useMemo, useState } from 'react';
import { countUnjudged, entryTable } from '../../../../family/entry-table.ts';
import type { Family } from '../../../../family/family.ts';
import type { KnownFits } from '../../../../family/known-fits.ts';
import type { PlacedTiers, placeTiers as PlaceTiers } from '../../../../teach/place-tiers.ts';
import { tierRows } from '../../../../teach/tier-rows.ts';
import type { WallRoom } from '../../../../teach/wall-grid.ts';
import { trayReach } from '../../../state/tray-reach.ts';
import { SectionThumb } from '../../section-thumb.tsx';
import { useSession, useStore } from '../../use-store.ts';
import styles from './slide.module.css';
import { LEAST_TYPE, type SlideProps } from './slide-text.tsx';

/** Space for the lines between two rows, and the greatest height of a row, in pixels. */
const LINES = 36;
const HIGHEST = 220;

/** Mean width of a bold letter, in heights of type. */
const LETTER = 0.56;

/** The tiers row by row, from the bottom up; lines lead from a blank to those it stands on. */
export function TiersPicture({ family, step, frame, room, unit }: SlideProps & { room: WallRoom }) {
  const { results } = useSession();
  const fits = useStore(results, (s) => s.fits);
  const tiers = useMemo(() => tierRows(family, fits, step.blank), [family, fits, step.blank]);
  const type = Math.max(LEAST_TYPE, 26 * unit);
  const place = usePlacing();
  const side = type * 6.4;
  const { width, height } = room;
  const layout = useMemo(
    () =>
      place?.(tiers, {
        width: width - side,
        height,
        type,
        widthOf: (text) => lettersWide(text, type),
        between: LINES,
        highest: HIGHEST,
      }),
    [place, tiers, width, side, height, type],
  );
  if (tiers.rows.length === 0) return <p className={styles.rest}>{emptyWords(fits)}</p>;
  const shown = Math.min(frame.build + 1, tiers.rows.length);
  return (
    <div className={styles.tiers} style={{ width, height, fontSize: type }}>
      {layout && (
        <>
          <svg className={styles.lines} width={width} height={height} aria-hidden="true">
            {layout.lines.map(({ from, to, row, points }) => (
              <path
                key={`${from.id} ${to.id}`}
                data-shown={row < shown}
                d={`M${points.map(([x, y]) => `${side + x} ${y}`).join('L')}`}
              />
            ))}
          </svg>
          {tiers.rows.map(({ plates, words }, row) => (
            <section key={plates[0].id} className={styles.tier} data-shown={row < shown} aria-hidden={row >= shown}>
              <p className={styles.tierWords} style={{ top: layout.tops[row] + layout.high / 2, width: side - 16 }}>
                {words}
              </p>
              <Plates {...{ family, layout, row, type, side }} />
            </section>
          ))}
        </>
      )}
    </div>
  );
}

/** The layout's code comes when the first picture of tiers is shown: a page that shows none goes without. */
function usePlacing(): typeof PlaceTiers | null {
  const [place, setPlace] = useState<typeof PlaceTiers | null>(null);
  useEffect(() => {
    let wanted = true;
    void import('../../../../teach/place-tiers.ts').then(({ placeTiers }) => {
      if (wanted) setPlace(() => placeTiers);
    });
    return () => {
      wanted = false;
    };
  }, []);
  return place;
}

function emptyWords(fits: KnownFits | null): string {
  if (!fits || countUnjudged(entryTable(fits)) > 0) return 'The tiers come when all pairs are judged …';
  return 'No blank of this family goes into any keyway.';
}

interface PlatesProps {
  readonly family: Family;
  readonly layout: PlacedTiers;
  readonly row: number;
  readonly type: number;
  /** WallRoom at the left for the words of a row. */
  readonly side: number;
}

function Plates({ family, layout, row, type, side }: PlatesProps) {
  const reach = useMemo(() => trayReach(family), [family]);
  const thumb = Math.max(20, layout.high - namesHigh(layout, type));
  return (
    <ul>
      {layout.plates
        .filter((placed) => placed.row === row)
        .map(({ plate, x, top, wide }) => (
          <li key={plate.id} className={styles.tierPlate} style={{ left: side + x - wide / 2, top, width: wide }}>
            <SectionThumb
              profile={plate.profile}
              reachX={reach.x}
              reachY={reach.y}
              width={Math.min(wide, Math.ceil((thumb * reach.x) / reach.y) + 6)}
              height={thumb}
            />
            <b>{plate.name}</b>
          </li>
        ))}
      {layout.more[row] > 0 && (
        <li className={styles.tierPlate} style={{ right: 0, top: layout.tops[row] + thumb, width: type * 5 }}>
          and {layout.more[row]} more
        </li>
      )}
    </ul>
  );
}

/** Height of the names under the sections: of two lines where one of them is wider than its plate. */
function namesHigh({ plates }: PlacedTiers, type: number): number {
  return type * (plates.some(({ plate, wide }) => lettersWide(plate.name, type) > wide) ? 2.4 : 1.25);
}

function lettersWide(text: string, type: number): number {
  return text.length * LETTER * type;
}
