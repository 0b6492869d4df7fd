import type { Family } from '../../../family/family.ts';
import { CompareHead } from '../../panels/compare/compare-head.tsx';
import { EmptyNotice } from '../../panels/empty-notice.tsx';
import { useShownPair } from '../../panels/use-pair.ts';
import styles from './compare.module.css';
import { CompareDrawing } from './compare-drawing.tsx';

/** One blank in one keyway, large: dragged by hand or laid in its best placement. */
export function Compare({ family }: { family: Family }) {
  const pair = useShownPair();
  if (!pair) {
    return (
      <EmptyNotice
        title="Nothing to compare"
        what="Compare needs a blank or a tool and a keyway; this family lacks one of them."
      />
    );
  }
  return (
    <div className={styles.compare}>
      <CompareHead family={family} pair={pair} />
      <CompareDrawing family={family} pair={pair} />
    </div>
  );
}
