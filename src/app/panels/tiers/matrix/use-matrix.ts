import { type RefObject, useMemo, useState } from 'react';
import { entrantsOf, type Family, openingsOf } from '../../../../family/family.ts';
import type { KnownFits } from '../../../../family/known-fits.ts';
import type { Profile } from '../../../../profile/profile.ts';
import type { MatrixPlace } from '../../../state/tiers/matrix-keys.ts';
import { type MatrixMeasures, matrixMeasures, matrixWidths } from '../../../state/tiers/matrix-measures.ts';
import { columnNames, inOrder } from '../../../state/tiers/matrix-order.ts';
import { useWindowOfRows, type WindowOfRows } from '../../rows/use-window-of-rows.ts';
import { useSession, useStore } from '../../use-store.ts';
import { useLastTiers } from '../use-tiers.ts';

/** What the matrix lays out. */
export interface MatrixLayout {
  readonly fits: KnownFits | null;
  readonly rows: readonly Profile[];
  readonly columns: readonly MatrixColumn[];
  readonly measures: MatrixMeasures;
  /** The cell that the keys start from: what is picked, or the head of its row or column. */
  readonly place: MatrixPlace;
  readonly rowWindow: WindowOfRows;
  readonly columnWindow: WindowOfRows;
  setHead(head: { row: boolean; column: boolean }): void;
}

/** A keyway as a column: its short name, and where its fits stand in a row. */
export interface MatrixColumn {
  readonly profile: Profile;
  readonly label: string;
  readonly at: number;
}

/** Rows, columns and sizes of the matrix of a family in a frame of a given width. */
export function useMatrix(family: Family, width: number, frame: RefObject<HTMLElement | null>): MatrixLayout {
  const { results, selection, tiers: store } = useSession();
  const fits = useStore(results, (s) => s.fits);
  const cellSize = useStore(store, (s) => s.cellSize);
  const { rows, columns } = useRowsAndColumns(family, fits?.openings);
  const widths = useMemo(
    () => matrixWidths({ rows: rows.map(({ name }) => name), columns: columns.map(({ label }) => label) }),
    [rows, columns],
  );
  const measures = useMemo(
    () => matrixMeasures(cellSize, columns.length, widths, width),
    [cellSize, columns.length, widths, width],
  );
  const entrantId = useStore(selection, (s) => s.entrantId);
  const openingId = useStore(selection, (s) => s.openingId);
  const [head, setHead] = useState({ row: false, column: false });
  const place: MatrixPlace = {
    row: head.row
      ? -1
      : Math.max(
          0,
          rows.findIndex((p) => p.id === entrantId),
        ),
    column: head.column
      ? -1
      : Math.max(
          0,
          columns.findIndex((c) => c.profile.id === openingId),
        ),
  };
  const { cellHeight, cellWidth, headHeight, nameWidth, overhang } = measures;
  const across = {
    frame,
    horizontal: true,
    count: columns.length,
    size: cellWidth,
    before: nameWidth,
    after: overhang,
  };
  const down = { frame, count: rows.length, size: cellHeight, before: headHeight, after: 0 };
  const rowWindow = useWindowOfRows({ ...down, kept: place.row });
  const columnWindow = useWindowOfRows({ ...across, kept: place.column });
  return { fits, rows, columns, measures, place, rowWindow, columnWindow, setHead };
}

function useRowsAndColumns(family: Family, openingIds: readonly string[] | undefined) {
  const { tiers: store } = useSession();
  const rowOrder = useStore(store, (s) => s.rowOrder);
  const columnOrder = useStore(store, (s) => s.columnOrder);
  const tiers = useLastTiers()?.tiers ?? null;
  const rows = useMemo(() => inOrder(entrantsOf(family), rowOrder, tiers), [family, rowOrder, tiers]);
  const columns = useMemo(() => {
    const openings = openingsOf(family);
    const labels = columnNames(openings);
    const places = new Map(openingIds?.map((id, at) => [id, at]));
    return inOrder(openings, columnOrder, tiers).map((profile): MatrixColumn => {
      const { id, name } = profile;
      return { profile, label: labels.get(id) ?? name, at: places.get(id) ?? -1 };
    });
  }, [family, columnOrder, tiers, openingIds]);
  return { rows, columns };
}
