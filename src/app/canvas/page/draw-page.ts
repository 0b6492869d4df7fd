import { type Ink, inkColour, type Palette } from '../../../publish/inks.ts';
import type { GroupMark, Mark, Page, PathMark, Stroke, TextMark } from '../../../publish/page.ts';
import { TYPE } from '../palette.ts';

/** What a drawing needs of a 2D canvas. */
export type Canvas2d = CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D;

/** Most picture points along one side; more do not make a canvas in every browser. */
const MOST_POINTS = 8192;

/** Width and height in picture points of a page at so many points a millimetre, fewer where there would be too many. */
export function pagePoints(page: Page, perMm: number): { width: number; height: number; perMm: number } {
  const most = MOST_POINTS / Math.max(page.width, page.height);
  const shown = Math.min(perMm, most);
  return { width: Math.round(page.width * shown), height: Math.round(page.height * shown), perMm: shown };
}

/**
 * A page as a PNG picture.
 *
 * @param perMm picture points a millimetre: 300 dots an inch are 11.8.
 * @returns null where the browser cannot make a canvas of that size.
 * @check tests/browser/page-drawing.test.ts
 */
export async function pagePng(page: Page, palette: Palette, perMm: number): Promise<Blob | null> {
  // The typeface is on the page already, or on its way.
  await Promise.all([400, 700].map((weight) => document.fonts.load(`${weight} 16px ${TYPE}`, 'Aż')));
  const size = pagePoints(page, perMm);
  const canvas = document.createElement('canvas');
  canvas.width = size.width;
  canvas.height = size.height;
  const pen = canvas.getContext('2d');
  if (!pen) return null;
  drawPage(page, palette, pen, size.perMm);
  return new Promise((resolve) => canvas.toBlob(resolve, 'image/png'));
}

/** Draws a page on a canvas, its upper left corner in the canvas's, over a sheet of its paper. */
export function drawPage(page: Page, palette: Palette, pen: Canvas2d, perMm: number): void {
  pen.save();
  pen.scale(perMm, perMm);
  pen.lineJoin = 'round';
  pen.lineCap = 'butt';
  pen.textBaseline = 'alphabetic';
  pen.fontKerning = 'normal';
  // Else the width of each letter is rounded to whole points of the screen.
  pen.textRendering = 'geometricPrecision';
  pen.fillStyle = inkColour('paper', palette);
  pen.fillRect(0, 0, page.width, page.height);
  drawMarks(page.marks, palette, pen);
  pen.restore();
}

function drawMarks(marks: readonly Mark[], palette: Palette, pen: Canvas2d): void {
  for (const mark of marks) {
    if (mark.kind === 'path') drawPath(mark, palette, pen);
    else if (mark.kind === 'text') drawText(mark, palette, pen);
    else drawGroup(mark, palette, pen);
  }
}

function drawGroup({ clip, marks }: GroupMark, palette: Palette, pen: Canvas2d): void {
  if (!clip) {
    drawMarks(marks, palette, pen);
    return;
  }
  pen.save();
  pen.clip(pathOf(clip), 'evenodd');
  drawMarks(marks, palette, pen);
  pen.restore();
}

function drawPath({ strokes, fill, line }: PathMark, palette: Palette, pen: Canvas2d): void {
  const colour = (ink: Ink) => inkColour(ink, palette);
  const path = pathOf(strokes);
  if (fill) {
    pen.fillStyle = colour(fill);
    pen.fill(path, 'evenodd');
  }
  if (!line) return;
  pen.lineWidth = line.width;
  pen.setLineDash([...(line.dashes ?? [])]);
  pen.strokeStyle = colour(line.ink);
  pen.stroke(path);
}

function pathOf(strokes: readonly Stroke[]): Path2D {
  const path = new Path2D();
  for (const { spots, closed } of strokes) {
    if (spots.length < 2) continue;
    for (const [i, [x, y]] of spots.entries()) {
      if (i === 0) path.moveTo(x, y);
      else path.lineTo(x, y);
    }
    if (closed) path.closePath();
  }
  return path;
}

const ALIGNS = { start: 'left', middle: 'center', end: 'right' } as const;

/** Letters are set at this size and made smaller, as browsers do not set type below some sizes. */
const SET_SIZE = 100;

function drawText(mark: TextMark, palette: Palette, pen: Canvas2d): void {
  const { spot, text, size, bold, align = 'start', ink = 'ink', turned = 0 } = mark;
  pen.save();
  pen.translate(...spot);
  pen.rotate((turned * Math.PI) / 180);
  pen.scale(size / SET_SIZE, size / SET_SIZE);
  pen.font = `${bold ? 700 : 400} ${SET_SIZE}px ${TYPE}`;
  pen.textAlign = ALIGNS[align];
  pen.fillStyle = inkColour(ink, palette);
  pen.fillText(text, 0, 0);
  pen.restore();
}
