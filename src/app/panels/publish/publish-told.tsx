import { useEffect } from 'react';
import type { Family } from '../../../family/family.ts';
import type { SheetOrder } from '../../../publish/sheet-order.ts';
import { makingFileOf } from '../../state/publish/making-file.ts';
import { useSession, useStore } from '../use-store.ts';
import styles from './publish-keys.module.css';

/** What came of the last file, until another sheet is ordered. */
export function PublishTold({ family, order }: { family: Family; order: SheetOrder }) {
  const making = makingFileOf(useSession());
  const said = useStore(making.store, (s) => s.said);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another family or order is what takes the words away
  useEffect(() => () => making.forget(), [making, family, order]);
  return (
    <p role="status" className={styles.told}>
      {said}
    </p>
  );
}
