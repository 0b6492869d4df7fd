import { useEffect } from 'react';
import { useSession, useStore } from '../panels/use-store.ts';
import { VIEW_NAMES, type ViewName } from '../state/selection-state.ts';

/** The view that the page's address asks for; an unknown one is the wall. */
function viewInAddress(): ViewName {
  return VIEW_NAMES.find((name) => location.hash === `#${name}`) ?? 'wall';
}

/** Keeps the view and the page's address in step, so that the browser's Back leads from Compare to the wall. */
export function useViewHash(): void {
  const { selection } = useSession();
  const view = useStore(selection, (s) => s.view);
  useEffect(() => {
    const follow = () => selection.setState({ view: viewInAddress() });
    follow();
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, [selection]);
  useEffect(() => {
    // Not before the address has had its say: what was drawn may still be the view from before it was read.
    if (view === selection.getState().view && viewInAddress() !== view) location.hash = view;
  }, [selection, view]);
}
