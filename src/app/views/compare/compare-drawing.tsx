import { useEffect, useMemo, useRef, useState } from 'react';
import { type Family, openingsOf } from '../../../family/family.ts';
import { plugBox, plugFace } from '../../../family/plug-face.ts';
import { CompareStage } from '../../canvas/compare/compare-stage.tsx';
import { chooseCorner } from '../../panels/compare/corner-editing.ts';
import { shownCorners } from '../../panels/compare/corner-places.ts';
import { cornersOf } from '../../panels/compare/corner-state.ts';
import { shownWards, wardsOf } from '../../panels/compare/ward-state.ts';
import type { ShownPair } from '../../panels/use-pair.ts';
import { useSize } from '../../panels/use-size.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import type { Doors } from '../../state/doors.ts';
import { type CanvasSize, type DrawingView, fitBox, zoomAbout } from '../../tools/drawing-view.ts';
import { usePalette } from '../use-palette.ts';
import styles from './compare.module.css';
import { CompareFoot } from './compare-foot.tsx';
import { useCompareGestures } from './use-compare-gestures.ts';
import { useCompareKeys } from './use-compare-keys.ts';
import { type Push, pushWords, useComparePush } from './use-compare-push.ts';

const MARGIN = 14;

/** The drawing of Compare with its keys: the canvas, the pointer on it, and buttons for all that the pointer does. */
export function CompareDrawing({ family, pair }: { family: Family; pair: ShownPair }) {
  const { doors } = useSession();
  const [frame, size] = useSize<HTMLDivElement>();
  const fitted = useFittedView(family, pair, size);
  // Null while the drawing is fitted to its frame, so that it stays fitted when the window changes.
  const [ownView, setOwnView] = useState<DrawingView | null>(null);
  const view = ownView ?? fitted;
  const push = useComparePush(pair);
  useFreshCorner(pair);
  const cornersOn = useStore(cornersOf(useSession()), (s) => s.on);
  const gesture = useCompareGestures({ frame, pair, view, setView: setOwnView, onPress: push.end });
  const zoom = (factor: number) => {
    if (view && size) setOwnView(zoomAbout(view, { px: size.width / 2, py: size.height / 2 }, factor));
  };
  useCompareKeys({ family, pair, push, zoom, fit: () => setOwnView(null) });
  return (
    <>
      <div
        ref={frame}
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the drawing takes the arrow keys, as its label says
        tabIndex={0}
        data-drawing="compare"
        data-gesture={gesture}
        data-sheet={view ? `${view.scale} ${view.x} ${view.y}` : undefined}
        className={styles.drawing}
        aria-label={drawingLabel(pair, cornersOn)}
      >
        {size && view && <Drawing pair={pair} family={family} view={view} size={size} push={push} />}
        {push.pushed && (
          <p className={styles.caption} aria-live="polite">
            {pushWords(push.pushed, pair, inTheWay(pair, doors.partName))}
          </p>
        )}
      </div>
      <CompareFoot pair={pair} push={push} zoom={zoom} fit={() => setOwnView(null)} />
    </>
  );
}

/** The part of the plug that the blank meets first of all, in words. */
function inTheWay({ explanation }: ShownPair, partName: Doors['partName']): string {
  return explanation.collisions.length > 0 ? partName(explanation.collisions[0]) : 'plug';
}

/** Another pair begins at its first corner, without what was said of the one before. */
function useFreshCorner({ entrant, opening }: ShownPair): void {
  const session = useSession();
  // biome-ignore lint/correctness/useExhaustiveDependencies: another pair is what it waits for
  useEffect(() => chooseCorner(session, 0), [session, entrant.id, opening.id]);
}

/** The plug's outline and the keyway that it stands round: while a corner is moved, as they were before. */
function useStillFace(family: Family, { opening }: ShownPair) {
  const edit = useStore(cornersOf(useSession()), (s) => s.edit);
  const now = useMemo(() => ({ opening, face: plugFace(openingsOf(family)) }), [family, opening]);
  const still = useRef(now);
  useEffect(() => {
    if (!edit) still.current = now;
  });
  return edit && still.current.opening.id === opening.id ? still.current : now;
}

/** The view that shows the whole plug. While corners are moved it stands still, also between the moves. */
function useFittedView(family: Family, pair: ShownPair, size: CanvasSize | null): DrawingView | null {
  const on = useStore(cornersOf(useSession()), (s) => s.on);
  const now = useMemo(
    () => (size ? fitBox(plugBox(pair.opening, plugFace(openingsOf(family))), size, MARGIN) : null),
    [family, pair.opening, size],
  );
  const kept = useRef<{ id: string; size: CanvasSize | null; view: DrawingView | null } | null>(null);
  const holds = on && kept.current?.id === pair.opening.id && kept.current.size === size;
  const view = holds && kept.current ? kept.current.view : now;
  useEffect(() => {
    kept.current = { id: pair.opening.id, size, view };
  });
  return view;
}

interface DrawingProps {
  readonly pair: ShownPair;
  readonly family: Family;
  readonly view: DrawingView;
  readonly size: CanvasSize;
  readonly push: Push;
}

function Drawing({ pair, family, view, size, push }: DrawingProps) {
  const session = useSession();
  const { doors, settings } = session;
  const units = useStore(settings, (s) => s.units);
  const corners = useStore(cornersOf(session), (s) => s);
  const palette = usePalette();
  const { opening, face } = useStillFace(family, pair);
  const sheet = useMemo(() => (palette ? { size, view, palette } : null), [size, view, palette]);
  const bands = useBands(pair, view.scale);
  const litWard = useLitWard(pair);
  if (!sheet) return null;
  return (
    <CompareStage
      opening={opening}
      face={face}
      scene={{
        kind: pair.entrant.kind,
        shapes: pair.shapes,
        placement: pair.placement,
        explanation: pair.explanation,
        bands,
        corners: push.pushed ? null : shownCorners(pair, corners),
        push: push.pushed && { pushed: push.pushed, seat: pair.fit.seated },
      }}
      litWard={push.pushed ? null : litWard}
      units={units}
      sheet={sheet}
      partName={doors.partName}
    />
  );
}

/** The shapes of the ward that the readings point at, where the blank lies now. */
function useLitWard(pair: ShownPair) {
  const lit = useStore(wardsOf(useSession()), (s) => s.lit);
  return useMemo(() => {
    const answer = lit === null ? undefined : shownWards(pair)[lit];
    if (!answer) return null;
    const { line, passing } = answer;
    return { ward: line, groove: 'groove' in passing ? passing.groove.line : null };
  }, [lit, pair]);
}

/** Bands narrower than this, in pixels, would only thicken the outlines: they show in a close view. */
const LEAST_BAND_PX = 2;

/** The outlines at the ends of the pair's tolerance bands; null where they would not show. */
function useBands({ opening, entrant, bands, conditions }: ShownPair, scale: number) {
  const { doors } = useSession();
  const shown = Math.max(bands.blank, bands.opening) * scale >= LEAST_BAND_PX;
  return useMemo(() => {
    if (!shown) return null;
    return { ...bands, shapes: doors.bandShapes(opening.ring, entrant.ring, bands, conditions) };
  }, [doors, shown, opening, entrant, bands, conditions]);
}

function drawingLabel({ entrant, opening }: ShownPair, corners: boolean): string {
  const what = corners ? 'the chosen corner' : 'the blank';
  const choose = corners ? '[ and ] choose a corner; ' : '';
  return `Drawing of ${entrant.name} in ${opening.name}. The arrow keys move ${what} by a hundredth of a millimetre, with shift by a tenth; ${choose}plus and minus zoom.`;
}
