import { useCallback, useMemo, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import type { Point } from '../../../geom/point.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { PenScene } from '../../canvas/draw/draw-pen.tsx';
import { DrawStage } from '../../canvas/draw/draw-stage.tsx';
import { GrooveHandles } from '../../canvas/draw/groove-handles.tsx';
import { UnderlayLayer, UnderlayMarks } from '../../canvas/draw/underlay-layer.tsx';
import { useMillMarks } from '../../panels/mill/use-mill-marks.ts';
import { pictureBox, useShownPicture } from '../../panels/trace/use-picture.ts';
import { useSize } from '../../panels/use-size.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { chosenIn, type DrawState, editedVertices, headInHand } from '../../state/draw/draw-state.ts';
import { discardedOf, hasBegun } from '../../state/draw/pen-editing.ts';
import { flatLine } from '../../tools/draw/flat-line.ts';
import { penCrossings } from '../../tools/draw/pen.ts';
import { penLines } from '../../tools/draw/read-out.ts';
import { gridStep } from '../../tools/draw/snap-targets.ts';
import { type DrawingView, panBy, toDrawing, toPixels } from '../../tools/drawing-view.ts';
import { usePalette } from '../use-palette.ts';
import styles from './draw.module.css';
import { DrawFoot, ZoomKeys } from './draw-foot.tsx';
import type { HandShown } from './draw-hand.ts';
import { PenNotice } from './pen-notice.tsx';
import { useDrawGestures } from './use-draw-gestures.ts';
import { type UnderOutline, useUnderSheet } from './use-draw-ghosts.ts';
import { useDrawKeys } from './use-draw-keys.ts';
import { useDrawView } from './use-draw-view.ts';

interface DrawDrawingProps {
  readonly family: Family;
  readonly profile: Profile;
  /** What the last act did, in words. */
  readonly told: string;
  tell(words: string): void;
}

/** The sheet of the Draw view with its keys: the canvas, the pointer on it, and buttons for all that the pointer does. */
export function DrawDrawing({ family, profile, told, tell }: DrawDrawingProps) {
  const { draw, settings } = useSession();
  const state = useStore(draw, (s) => s);
  const units = useStore(settings, (s) => s.units);
  const palette = usePalette();
  const marks = useMillMarks(state.form === 'mill' && state.tool === 'choose' ? profile : null);
  const [frame, size] = useSize<HTMLDivElement>();
  const [cross, setCross] = useState<Point | null>(null);
  const under = useUnderSheet(family, profile, headInHand(state) !== null);
  const picture = useShownPicture(profile.id);
  const face = under.face?.face ?? null;
  const shown = { profile, ghosts: under.ghosts, face, box: pictureBox(picture), opened: picture?.opened ?? 0 };
  const { view, setView, zoom, fit } = useDrawView(shown, size);
  const handSheet = useMemo(() => (view ? { view, ghosts: under.ghosts } : null), [view, under.ghosts]);
  const onPointer = useCallback(() => setCross(null), []);
  const hand = useDrawGestures({ frame, profile, sheet: handSheet, setView, tell, onPointer });
  const middle = () => middleOf(view, size);
  const leadCross = (to: Point | null) => {
    setCross(to);
    if (to && view && size) setView(keepInSight(view, size, to));
  };
  useDrawKeys({ family, cross, setCross: leadCross, middle, zoom, fit, giveUp: hand.giveUp, tell });
  const sheet = useMemo(() => (size && view && palette ? { size, view, palette } : null), [size, view, palette]);
  return (
    <>
      <div className={styles.sheet}>
        <div
          ref={frame}
          role="application"
          // biome-ignore lint/a11y/noNoninteractiveTabindex: the sheet takes the arrow keys, as its label says
          tabIndex={0}
          data-drawing="draw"
          data-gesture={hand.gesture.kind}
          data-tool={state.tool}
          data-under={hand.under.kind}
          data-sheet={view ? `${view.scale} ${view.x} ${view.y}` : undefined}
          className={styles.drawing}
          aria-label={sheetLabel(profile, state, units)}
        >
          {sheet && (
            <DrawStage
              scene={sceneOf(profile, state, under, hand, cross, units)}
              units={units}
              step={gridStep(state.snap, units)}
              sheet={sheet}
              underlay={picture && <UnderlayLayer picture={picture} sheet={sheet} />}
            >
              {marks && <GrooveHandles marks={marks} sheet={sheet} />}
              <UnderlayMarks picture={picture} sheet={sheet} />
            </DrawStage>
          )}
          <Told words={told} />
        </div>
        <PenNotice />
        <ZoomKeys zoom={zoom} fit={fit} />
      </div>
      <DrawFoot family={family} profile={profile} />
    </>
  );
}

/** What was refused, over the sheet until the next action, and for those who listen what was done last. */
function Told({ words }: { words: string }) {
  const session = useSession();
  const state = useStore(session.draw, (s) => s);
  const document = useStore(session.documents, (s) => s.document);
  const { refused, chosen, pen } = state;
  const isNoticed = discardedOf(state, { document }) !== null || (state.tool === 'choose' && hasBegun(state));
  const hint = isNoticed ? '' : hintOf(state, chosen.length + (pen?.length ?? 0));
  return (
    <>
      {refused && (
        <p className={styles.refusal} role="alert">
          {refused.words}
        </p>
      )}
      {hint && !refused && <p className={styles.hint}>{hint}</p>}
      <p className="unseen" role="status">
        {words}
      </p>
    </>
  );
}

/** What the hand can do, while it has done nothing yet. */
function hintOf({ tool, form, edit }: DrawState, begun: number): string {
  if (edit?.kind === 'preview') return 'As it would be: take it or cancel it at the right';
  if (begun > 0 || (form === 'mill' && tool === 'choose')) return '';
  if (tool === 'pen')
    return 'Click to set vertices; press and drag to bow the edge; Shift keeps straight, Ctrl places freely';
  return 'Drag a vertex or an edge; the diamond bows it, a double click adds a vertex; drag beside it to choose several';
}

/** What is in the middle of the canvas. */
function middleOf(view: DrawingView | null, size: { width: number; height: number } | null): Point {
  return view && size ? toDrawing(view, { px: size.width / 2, py: size.height / 2 }) : { x: 0, y: 0 };
}

/** The view, moved so far that a place is well on the canvas. */
function keepInSight(view: DrawingView, size: { width: number; height: number }, place: Point): DrawingView {
  const { px, py } = toPixels(view, place);
  const over = (at: number, low: number, high: number) => Math.min(0, high - at) + Math.max(0, low - at);
  return panBy(view, over(px, 90, size.width - 40), over(py, 40, size.height - 70));
}

function sceneOf(
  profile: Profile,
  state: DrawState,
  { ghosts, face }: UnderOutline,
  hand: HandShown,
  cross: Point | null,
  units: 'mm' | 'in',
) {
  const vertices = editedVertices(profile);
  const { refused, tool, form, pen } = state;
  const next = cross ?? hand.next;
  const last = pen?.at(-1) ?? null;
  return {
    profile,
    vertices,
    outlined: headInHand(state) === null,
    handles: tool === 'choose' && form === 'outline' && state.edit?.kind !== 'preview',
    chosen: chosenIn(state, vertices.length),
    under: hand.under,
    ghosts,
    face,
    refused:
      refused && refused.vertices.length > 0 ? { outline: flatLine(refused.vertices, true), at: refused.at } : null,
    box: hand.gesture.kind === 'picking-box' && hand.gesture.moved ? hand.gesture : null,
    snapped: cross ? null : hand.snapped,
    readOut: cross ? { at: cross, lines: penLines(last, cross, units) } : hand.readOut,
    pen: tool === 'pen' ? penScene(state, next, hand.closing && !cross) : null,
  };
}

function penScene({ pen }: DrawState, next: Point | null, closing: boolean): PenScene {
  const vertices = pen ?? [];
  return {
    vertices,
    line: flatLine(vertices, false),
    next,
    closing,
    crossings: penCrossings(vertices, next, closing),
  };
}

/** One press of an arrow key in words: plain, with shift, with alt. */
const NUDGES = {
  mm: 'by a hundredth of a millimetre, with shift by a tenth, with alt by a thousandth',
  in: 'by half a thousandth of an inch, with shift by five, with alt by a twentieth',
} as const;

function sheetLabel({ name }: Profile, state: DrawState, units: 'mm' | 'in'): string {
  const { tool, form } = state;
  if (tool === 'pen')
    return `Sheet of ${headInHand(state)?.name ?? name}, with the pen. The arrow keys move its cross by a step of the grid, with shift by ten; Space sets a vertex, Enter closes the outline, Backspace takes the last vertex back, Escape puts the pen away.`;
  if (form === 'mill')
    return `Sheet of ${name}. [ and ] choose a groove; the arrow keys move it by a hundredth of a millimetre and make it deeper or shallower, with shift by a tenth, with alt by a thousandth; Delete removes it; plus and minus zoom, 0 fits.`;
  return `Sheet of ${name}. [ and ] choose a vertex; the arrow keys move the chosen ones ${NUDGES[units]}; Delete removes them, Insert adds one; P takes the pen; plus and minus zoom, 0 fits.`;
}
