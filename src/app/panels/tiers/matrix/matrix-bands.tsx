import { useSession, useStore } from '../../use-store.ts';
import styles from './matrix.module.css';
import type { MatrixLayout } from './use-matrix.ts';

/** The bands behind the matrix that light the picked row and column, and frame those that the pointer is on. */
export function MatrixBands({ matrix }: { matrix: MatrixLayout }) {
  const { selection, tiers } = useSession();
  const entrantId = useStore(selection, (s) => s.entrantId);
  const openingId = useStore(selection, (s) => s.openingId);
  const pointed = useStore(tiers, (s) => s.pointed);
  const { columns, measures } = matrix;
  const { cellWidth } = measures;
  return (
    <div className={styles.bands} aria-hidden="true">
      <Band matrix={matrix} kind="pointed" entrantId={pointed?.entrantId} openingId={pointed?.openingId} />
      <Band matrix={matrix} kind="picked" entrantId={entrantId} openingId={openingId} />
      <div className={styles.rules} style={{ width: columns.length * cellWidth }} />
    </div>
  );
}

interface BandProps {
  readonly matrix: MatrixLayout;
  readonly kind: 'picked' | 'pointed';
  readonly entrantId: string | null | undefined;
  readonly openingId: string | null | undefined;
}

function Band({ matrix, kind, entrantId, openingId }: BandProps) {
  const { rows, columns, measures } = matrix;
  const { cellHeight, cellWidth, headHeight, nameWidth } = measures;
  const row = rows.findIndex((p) => p.id === entrantId);
  const column = columns.findIndex((c) => c.profile.id === openingId);
  return (
    <>
      {row >= 0 && (
        <div
          className={styles.rowBand}
          data-band={kind}
          style={{ top: headHeight + row * cellHeight, height: cellHeight }}
        />
      )}
      {column >= 0 && (
        <div
          className={styles.columnBand}
          data-band={kind}
          style={{ left: nameWidth + column * cellWidth, width: cellWidth }}
        />
      )}
      {kind === 'picked' && row >= 0 && column >= 0 && (
        <div
          className={styles.pickedCell}
          style={{
            top: headHeight + row * cellHeight,
            left: nameWidth + column * cellWidth,
            width: cellWidth,
            height: cellHeight,
          }}
        />
      )}
    </>
  );
}
