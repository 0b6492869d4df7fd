import { makeStore, type Store } from '../store.ts';

/** The sheets of the Tiers view: matrix and diagram, what keyways have in common, what is claimed. */
export const TIERS_SHEETS = ['tiers', 'passage', 'claims'] as const;

/** See {@link TIERS_SHEETS}. */
export type TiersSheet = (typeof TIERS_SHEETS)[number];

/** Which of the two pictures of who enters what are seen. */
export const TIERS_SHOWN = ['matrix', 'both', 'diagram'] as const;

/** See {@link TIERS_SHOWN}. */
export type TiersShown = (typeof TIERS_SHOWN)[number];

/** In what order the rows or columns of the matrix stand. */
export const MATRIX_ORDERS = ['chart', 'tier', 'name'] as const;

/** See {@link MATRIX_ORDERS}. */
export type MatrixOrder = (typeof MATRIX_ORDERS)[number];

/** How large the cells of the matrix are; large ones have room for the margin. */
export const CELL_SIZES = ['small', 'middle', 'large'] as const;

/** See {@link CELL_SIZES}. */
export type CellSize = (typeof CELL_SIZES)[number];

/** What the pointer or the focus is on: a pair, a whole row, a whole column. */
export interface Pointed {
  readonly entrantId: string | null;
  readonly openingId: string | null;
}

/** What the Tiers view shows. */
export interface TiersState {
  readonly sheet: TiersSheet;
  /** Ids of the keyways whose common passage is looked at; null for all of them. */
  readonly chosenOpenings: readonly string[] | null;
  readonly shown: TiersShown;
  /** Share of the width that the matrix has where both are seen, 0 to 1; null: what it needs, up to about half. */
  readonly matrixShare: number | null;
  readonly rowOrder: MatrixOrder;
  readonly columnOrder: MatrixOrder;
  /** null: as large as lets all columns be seen. */
  readonly cellSize: CellSize | null;
  /** What is told of beside what is picked; null where the pointer rests elsewhere. */
  readonly pointed: Pointed | null;
  /** Whether the diagram shows only what stands above and below the picked blank; null: where it is a large one. */
  readonly neighboursOnly: boolean | null;
  /** Whether tools stand in the diagram beside the blanks. */
  readonly withTools: boolean;
  /** Whether the matrix marks pairs of which a claim says otherwise. */
  readonly claimMarks: boolean;
}

/** A store that shows matrix and diagram. */
export function makeTiersStore(): Store<TiersState> {
  return makeStore<TiersState>({
    sheet: 'tiers',
    chosenOpenings: null,
    shown: 'both',
    matrixShare: null,
    rowOrder: 'chart',
    columnOrder: 'chart',
    cellSize: null,
    pointed: null,
    neighboursOnly: null,
    withTools: false,
    claimMarks: true,
  });
}

/** Tells of another pair, row or column, or of none; the same one again changes nothing. */
export function pointAt(store: Store<TiersState>, pointed: Pointed | null): void {
  const now = store.getState().pointed;
  if (now?.entrantId === pointed?.entrantId && now?.openingId === pointed?.openingId && !now === !pointed) return;
  store.setState({ pointed });
}
