import { useEffect, useMemo, useState } from 'react';
import { type Family, openingsOf } from '../../family/family.ts';
import { CompareStage } from '../canvas/compare-stage.tsx';
import { type Palette, readPalette } from '../canvas/palette.ts';
import type { ShownPair } from '../panels/use-pair.ts';
import { useSize } from '../panels/use-size.ts';
import { useSession, useStore } from '../panels/use-store.ts';
import { snapToBest } from '../state/hand-state.ts';
import { plugBox, plugFace } from '../state/plug-face.ts';
import { type CanvasSize, type DrawingView, fitBox, zoomAbout } from '../tools/drawing-view.ts';
import styles from './compare.module.css';
import { useCompareGestures } from './use-compare-gestures.ts';
import { useCompareKeys } from './use-compare-keys.ts';

const ZOOM_STEP = 1.5;
const MARGIN = 14;

/** The drawing of Compare with its keys: the canvas, the pointer on it, and buttons for all that the pointer does. */
export function CompareDrawing({ family, pair }: { family: Family; pair: ShownPair }) {
  const { hand } = useSession();
  const [frame, size] = useSize<HTMLDivElement>();
  const { opening } = pair;
  const face = useMemo(() => plugFace(openingsOf(family)), [family]);
  const fitted = useMemo(() => (size ? fitBox(plugBox(opening, face), size, MARGIN) : null), [opening, face, size]);
  // Null while the drawing is fitted to its frame, so that it stays fitted when the window changes.
  const [ownView, setOwnView] = useState<DrawingView | null>(null);
  const view = ownView ?? fitted;
  const gesture = useCompareGestures({ frame, pair, view, setView: setOwnView });
  const zoom = (factor: number) => {
    if (view && size) setOwnView(zoomAbout(view, { px: size.width / 2, py: size.height / 2 }, factor));
  };
  useCompareKeys({ family, pair, zoom, fit: () => setOwnView(null) });
  return (
    <>
      <div
        ref={frame}
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the drawing takes the arrow keys, as its label says
        tabIndex={0}
        data-drawing="compare"
        data-gesture={gesture}
        className={styles.drawing}
        aria-label={drawingLabel(pair)}
      >
        {size && view && <Drawing pair={pair} family={family} view={view} size={size} />}
      </div>
      <div className={styles.foot}>
        <button
          type="button"
          className="key"
          title="Lay the blank where it fits best (Home)"
          onClick={() => snapToBest(hand)}
        >
          Snap to best placement
        </button>
        <span className="key-row">
          <button
            type="button"
            className="key"
            title="Smaller (−)"
            aria-label="Zoom out"
            onClick={() => zoom(1 / ZOOM_STEP)}
          >
            −
          </button>
          <button type="button" className="key" title="Larger (+)" aria-label="Zoom in" onClick={() => zoom(ZOOM_STEP)}>
            +
          </button>
          <button type="button" className="key" title="The whole plug (0)" onClick={() => setOwnView(null)}>
            Whole plug
          </button>
        </span>
        <p className={styles.hint}>Drag the blank or use the arrow keys. Drag beside it to move the sheet.</p>
      </div>
    </>
  );
}

function Drawing({
  pair,
  family,
  view,
  size,
}: {
  pair: ShownPair;
  family: Family;
  view: DrawingView;
  size: CanvasSize;
}) {
  const { doors, settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const palette = usePalette();
  const face = useMemo(() => plugFace(openingsOf(family)), [family]);
  const sheet = useMemo(() => (palette ? { size, view, palette } : null), [size, view, palette]);
  if (!sheet) return null;
  return (
    <CompareStage
      opening={pair.opening}
      entrant={pair.entrant}
      face={face}
      placement={pair.placement}
      explanation={pair.explanation}
      units={units}
      sheet={sheet}
      partName={doors.partName}
    />
  );
}

/** The palette in force, read again when the sheet turns or the typeface has arrived. */
function usePalette(): Palette | null {
  const [palette, setPalette] = useState<Palette | null>(null);
  useEffect(() => {
    const read = () => setPalette(readPalette());
    read();
    document.fonts.ready.then(read);
    const observer = new MutationObserver(read);
    observer.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
    return () => observer.disconnect();
  }, []);
  return palette;
}

function drawingLabel({ entrant, opening }: ShownPair): string {
  return `Drawing of ${entrant.name} in ${opening.name}. The arrow keys move the blank by a hundredth of a millimetre, with shift by a tenth; plus and minus zoom.`;
}
