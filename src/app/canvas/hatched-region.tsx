import type { Region } from '../../geom/region.ts';
import { type DrawingSheet, pixelsOf } from './drawing-sheet.ts';
import { type DrawingContext, Shape } from './konva-parts.ts';

/** Pixels from stripe to stripe, across. */
const PITCH = 11;
const STRIPE = 5.5;

/** A region where blank and plug would share the same space: striped, with a strong outline. */
export function HatchedRegion({ region, sheet }: { region: Region; sheet: DrawingSheet }) {
  const { palette, view } = sheet;
  const loops = region.flatMap((patch) => [patch.outer, ...patch.holes]).map((loop) => pixelsOf(loop, view));
  const draw = (context: DrawingContext) => {
    context.save();
    traceLoops(context, loops);
    context.clip();
    paintStripes(context, boundsOf(loops, sheet), palette.clashGround, palette.clash);
    context.restore();
    traceLoops(context, loops);
    context.setAttr('strokeStyle', palette.clashEdge);
    context.setAttr('lineWidth', 3);
    context.setAttr('lineJoin', 'round');
    context.stroke();
  };
  return <Shape sceneFunc={draw} listening={false} />;
}

function traceLoops(context: DrawingContext, loops: readonly number[][]): void {
  context.beginPath();
  for (const loop of loops) {
    for (let i = 0; i < loop.length; i += 2) {
      if (i === 0) context.moveTo(loop[0], loop[1]);
      else context.lineTo(loop[i], loop[i + 1]);
    }
    context.closePath();
  }
}

interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The part of the canvas that the loops cover, so that a close view paints no stripes outside of it. */
function boundsOf(loops: readonly number[][], { size }: DrawingSheet): Bounds {
  const xs = loops.flatMap((loop) => loop.filter((_, i) => i % 2 === 0));
  const ys = loops.flatMap((loop) => loop.filter((_, i) => i % 2 === 1));
  return {
    left: Math.max(0, Math.min(...xs)),
    top: Math.max(0, Math.min(...ys)),
    right: Math.min(size.width, Math.max(...xs)),
    bottom: Math.min(size.height, Math.max(...ys)),
  };
}

/** Stripes at 45 degrees on a fixed grid, so that they stay put while the region changes. */
function paintStripes(context: DrawingContext, b: Bounds, ground: string, stripe: string): void {
  context.setAttr('fillStyle', ground);
  context.fillRect(b.left, b.top, b.right - b.left, b.bottom - b.top);
  context.setAttr('strokeStyle', stripe);
  context.setAttr('lineWidth', STRIPE);
  const pitch = PITCH * Math.SQRT2;
  context.beginPath();
  for (let sum = Math.ceil((b.left + b.top) / pitch) * pitch; sum < b.right + b.bottom + pitch; sum += pitch) {
    context.moveTo(sum - b.top + STRIPE, b.top - STRIPE);
    context.lineTo(sum - b.bottom - STRIPE, b.bottom + STRIPE);
  }
  context.stroke();
}
