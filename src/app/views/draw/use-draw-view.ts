import { useMemo, useState } from 'react';
import { type PlugFace, plugBox } from '../../../family/plug-face.ts';
import type { Profile } from '../../../profile/profile.ts';
import { RULER } from '../../canvas/draw/draw-grid.tsx';
import type { Ghost } from '../../tools/draw/ghosts.ts';
import { boxRound, type SheetBox } from '../../tools/draw/sheet-box.ts';
import { type CanvasSize, type DrawingView, fitBox, panBy, zoomAbout } from '../../tools/drawing-view.ts';

const MARGIN = 26;

/** The view of the sheet and the ways to change it. */
export interface DrawSheetView {
  /** Null until the frame has been laid out. */
  readonly view: DrawingView | null;
  setView(view: DrawingView): void;
  zoom(factor: number): void;
  fit(): void;
}

interface Shown {
  readonly profile: Profile;
  readonly ghosts: readonly Ghost[];
  readonly face: PlugFace | null;
  /** Further boxes to be seen, and a number that changes when the sheet is to be fitted to them anew. */
  readonly box: SheetBox | null;
  readonly opened: number;
}

/**
 * The view that shows the edited outline with what lies under it. It is fitted when another profile is picked, when the
 * frame changes its size and when it is asked for, never by an edit: the sheet stands still under the hand.
 */
export function useDrawView({ profile, ghosts, face, box, opened }: Shown, size: CanvasSize | null): DrawSheetView {
  const [fits, setFits] = useState(0);
  const [own, setOwn] = useState<{ key: string; view: DrawingView } | null>(null);
  const key = `${profile.id} ${fits} ${opened}`;
  // biome-ignore lint/correctness/useExhaustiveDependencies: an edit must not move the sheet
  const fitted = useMemo(() => {
    if (!size) return null;
    const counterpart = ghosts.filter((ghost) => ghost.counterpart).map(({ ring }) => ring);
    const boxes = [face ? plugBox(profile, face) : null, box].filter((b) => b !== null);
    const free = { width: size.width - RULER.left, height: size.height - RULER.foot };
    return panBy(fitBox(boxRound([profile.ring, ...counterpart], boxes), free, MARGIN), RULER.left, 0);
  }, [key, size]);
  const view = own?.key === key ? own.view : fitted;
  const setView = (next: DrawingView) => setOwn({ key, view: next });
  return {
    view,
    setView,
    zoom: (factor) => {
      if (view && size) setView(zoomAbout(view, { px: size.width / 2, py: size.height / 2 }, factor));
    },
    fit: () => {
      setOwn(null);
      setFits((n) => n + 1);
    },
  };
}
