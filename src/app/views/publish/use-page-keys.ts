import { useEffect } from 'react';
import { isFreeKey } from '../../panels/is-free-key.ts';
import { pageKey } from '../../state/publish/page-keys.ts';
import type { SheetsLook } from '../../state/publish/sheets-look.ts';
import type { Store } from '../../state/store.ts';

/** Page Up and Page Down turn the pages, F and 1 set their size, wherever the focus is but in a field. */
export function usePageKeys(look: Store<SheetsLook>, count: number): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (!isFreeKey(event, true) || count === 0) return;
      const change = pageKey(event.key, look.getState(), count);
      if (!change) return;
      event.preventDefault();
      look.setState(change);
    };
    addEventListener('keydown', onKeyDown);
    return () => removeEventListener('keydown', onKeyDown);
  }, [look, count]);
}
