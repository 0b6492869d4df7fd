import { memo, useMemo } from 'react';
import type { Point } from '../../../geom/point.ts';
import type { TracedLoop } from '../../../trace/trace-picture.ts';
import type { Underlay } from '../../state/draw/underlay-state.ts';
import { type PlacedMark, placedMarks } from '../../tools/draw/placing-marks.ts';
import { toPixels } from '../../tools/drawing-view.ts';
import { type DrawingSheet, pixelsOf } from '../drawing-sheet.ts';
import { type DrawingContext, Group, Line, Shape } from '../konva-parts.ts';
import { Loupe } from './picture-loupe.tsx';
import { PictureMark } from './picture-mark.tsx';
import { type StraightPicture, straightenPicture } from './straighten-picture.ts';

/** A picture to be drawn under an outline. */
export type ShownPicture = Underlay;

interface PictureProps {
  /** Null where there is none: then nothing is drawn. */
  readonly picture: ShownPicture | null;
  readonly sheet: DrawingSheet;
}

/** The picture itself, turned, scaled and without its perspective: the lowest part of the sheet. */
export const UnderlayLayer = memo(function UnderlayLayer({ picture, sheet }: PictureProps) {
  const straight = useStraight(picture);
  if (!picture) return null;
  const draw = (context: DrawingContext) => {
    context.save();
    if (straight) drawStraight(context, straight, sheet);
    else drawAsItIs(context, picture, sheet);
    context.restore();
  };
  return (
    <Group>
      <Shape sceneFunc={draw} opacity={picture.opacity} listening={false} />
    </Group>
  );
});

/** The marks of the open step, the found outlines, and a loupe while a mark is in hand: above everything else. */
export function UnderlayMarks({ picture, sheet }: PictureProps) {
  if (!picture?.step) return null;
  const { told, held, step, frame, tracing, placing } = picture;
  const marks = placedMarks(told, held, step, frame, sheet.view);
  const inHand = held ? marks.find((mark) => mark.name === held.name) : undefined;
  return (
    <Group>
      {step === 'outline' &&
        tracing.found?.loops.map((loop, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a found outline is its number
          <FoundOutline key={i} loop={loop} picked={i === tracing.picked} sheet={sheet} />
        ))}
      <MarkLines marks={marks} closed={step === 'perspective' && marks.length === 4} sheet={sheet} />
      {marks.map((mark) => (
        <PictureMark
          key={mark.name}
          mark={mark}
          held={mark === inHand || mark.name === placing}
          palette={sheet.palette}
        />
      ))}
      {inHand && <Loupe image={picture.image} mark={inHand} sheet={sheet} />}
    </Group>
  );
}

/** The picture without its perspective, made anew only when its frame or the picture changes. */
function useStraight(picture: ShownPicture | null): StraightPicture | null {
  const frame = picture?.frame.perspective ? picture.frame : null;
  const bitmap = picture?.image.bitmap ?? null;
  return useMemo(() => (frame && bitmap ? straightenPicture(bitmap, frame) : null), [frame, bitmap]);
}

function drawStraight(context: DrawingContext, { canvas, box }: StraightPicture, { view }: DrawingSheet): void {
  const { px, py } = toPixels(view, { x: box.minX, y: box.maxY });
  const wide = (box.maxX - box.minX) * view.scale;
  const tall = (box.maxY - box.minY) * view.scale;
  // The library's own type names the usual images only; every canvas draws this one too.
  context.drawImage(canvas as unknown as HTMLCanvasElement, px, py, wide, tall);
}

/** Draws the bitmap through its frame, which is a turn, a scale and a move. */
function drawAsItIs(context: DrawingContext, { image, frame }: ShownPicture, { view }: DrawingSheet): void {
  // One that was put away in the meantime has no pixels left.
  if (image.bitmap.width === 0) return;
  const [a, b, c, d, e, f, , , w] = frame.toProfile;
  const k = view.scale / w;
  context.transform(a * k, -d * k, b * k, -e * k, view.x + c * k, view.y - f * k);
  context.drawImage(image.bitmap as unknown as HTMLCanvasElement, 0, 0);
}

/** A found outline: dashed, the picked one broad and whole. */
function FoundOutline({ loop, picked, sheet }: { loop: TracedLoop; picked: boolean; sheet: DrawingSheet }) {
  const { palette, view } = sheet;
  const points = useMemo(
    () => loop.vertices.map(({ x, y }): Point => ({ x: x + loop.at.x, y: y + loop.at.y })),
    [loop],
  );
  const pixels = pixelsOf(points, view);
  return (
    <Group>
      <Line
        points={pixels}
        closed
        stroke={picked ? palette.brassEdge : palette.paperLit}
        strokeWidth={picked ? 6 : 4}
      />
      <Line
        points={pixels}
        closed
        stroke={picked ? palette.brass : palette.ink}
        strokeWidth={picked ? 3 : 1.5}
        dash={picked ? undefined : [6, 5]}
      />
    </Group>
  );
}

/** What the marks of a step make together: the measured stretch, the line, the rectangle. */
function MarkLines({ marks, closed, sheet }: { marks: readonly PlacedMark[]; closed: boolean; sheet: DrawingSheet }) {
  if (marks.length < 2) return null;
  const points = marks.flatMap(({ pixel }) => [pixel.px, pixel.py]);
  return (
    <Group>
      <Line points={points} closed={closed} stroke={sheet.palette.paperLit} strokeWidth={4} />
      <Line points={points} closed={closed} stroke={sheet.palette.ink} strokeWidth={1.5} dash={[9, 4]} />
    </Group>
  );
}
