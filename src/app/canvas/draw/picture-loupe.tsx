import type { UnderlayImage } from '../../state/draw/underlay-state.ts';
import type { PlacedMark } from '../../tools/draw/placing-marks.ts';
import type { DrawingSheet } from '../drawing-sheet.ts';
import { type DrawingContext, Shape } from '../konva-parts.ts';

/** Radius of the loupe, and canvas pixels to a pixel of the picture in it. */
const RADIUS = 84;
const ENLARGED = 8;

/** Free space between the loupe and the edges of the sheet; at the upper edge stand the keys for zooming. */
const MARGIN = 16;
const UPPER_MARGIN = 60;

/** A loupe in a corner of the sheet: the picture's own pixels round a mark that is in hand, with a cross on the mark. */
export function Loupe({ image, mark, sheet }: { image: UnderlayImage; mark: PlacedMark; sheet: DrawingSheet }) {
  const { size, palette } = sheet;
  // In the corner that is furthest from the hand.
  const x = mark.pixel.px > size.width / 2 ? MARGIN + RADIUS : size.width - MARGIN - RADIUS;
  const y = mark.pixel.py > size.height / 2 ? UPPER_MARGIN + RADIUS : size.height - MARGIN - RADIUS;
  const draw = (context: DrawingContext) => {
    // One that was put away in the meantime has no pixels left.
    if (image.bitmap.width === 0) return;
    context.save();
    circle(context, x, y);
    context.setAttr('fillStyle', palette.paperLit);
    context.fill();
    context.clip();
    context.setAttr('imageSmoothingEnabled', false);
    const wide = image.size.width * ENLARGED;
    const tall = image.size.height * ENLARGED;
    const bitmap = image.bitmap as unknown as HTMLCanvasElement;
    context.drawImage(bitmap, x - mark.at.x * ENLARGED, y - mark.at.y * ENLARGED, wide, tall);
    cross(context, x, y, palette.paperLit, 4);
    cross(context, x, y, palette.ink, 1.5);
    context.restore();
    circle(context, x, y);
    context.setAttr('strokeStyle', palette.ink);
    context.setAttr('lineWidth', 3);
    context.stroke();
  };
  return <Shape sceneFunc={draw} listening={false} />;
}

function circle(context: DrawingContext, x: number, y: number): void {
  context.beginPath();
  context.arc(x, y, RADIUS, 0, 2 * Math.PI, false);
  context.closePath();
}

/** A cross whose middle stays free. */
function cross(context: DrawingContext, x: number, y: number, colour: string, width: number): void {
  context.setAttr('strokeStyle', colour);
  context.setAttr('lineWidth', width);
  context.beginPath();
  for (const [dx, dy] of [
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1],
  ]) {
    context.moveTo(x + 7 * dx, y + 7 * dy);
    context.lineTo(x + RADIUS * dx, y + RADIUS * dy);
  }
  context.stroke();
}
