import type { Box } from '../../../geom/point.ts';
import { type PictureFrame, type PictureSize, toProfilePlane } from '../../../trace/picture-scale.ts';
import { depthAt, magnificationAt, mapPoint, type PlaneMap } from '../../../trace/plane-map.ts';

/** A picture without its perspective: an upright raster that covers `box`, in nanometres. */
export interface StraightPicture {
  readonly canvas: OffscreenCanvas;
  readonly box: Box;
}

/** Most pixels of a straightened picture: it is for the eye, the outline is found in the picture itself. */
const MOST_PIXELS = 3e6;

/** Parts that the perspective makes this much larger than the middle are left out. */
const MOST_STRETCH = 3;

/** Places along each side of the picture that are looked at to find the box. */
const STEPS = 24;

/** Draws a picture as its frame has it, upright; bilinear, pixels outside of the picture stay clear. */
export function straightenPicture(bitmap: ImageBitmap, frame: PictureFrame): StraightPicture | null {
  const size = { width: bitmap.width, height: bitmap.height };
  const box = boxOfPicture(frame, size);
  if (!box) return null;
  const [wide, tall] = [box.maxX - box.minX, box.maxY - box.minY];
  const pixel = Math.max(frame.nmPerPixel, Math.sqrt((wide * tall) / MOST_PIXELS));
  const [width, height] = [Math.max(1, Math.ceil(wide / pixel)), Math.max(1, Math.ceil(tall / pixel))];
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d');
  const source = pixelsOf(bitmap);
  if (!context || !source) return null;
  const out = context.createImageData(width, height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const place = { x: box.minX + (x + 0.5) * pixel, y: box.maxY - (y + 0.5) * pixel };
      paint(out.data, 4 * (y * width + x), source, size, frame.toPicture, place);
    }
  }
  context.putImageData(out, 0, 0);
  return { canvas, box: { ...box, maxX: box.minX + width * pixel, minY: box.maxY - height * pixel } };
}

/** The part of the sheet that the picture covers, without what the perspective stretches too far. */
function boxOfPicture(frame: PictureFrame, { width, height }: PictureSize): Box | null {
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (let i = 0; i <= STEPS; i++) {
    for (let k = 0; k <= STEPS; k++) {
      const at = { x: (i / STEPS) * width, y: (k / STEPS) * height };
      const place = toProfilePlane(frame, at);
      if (!place || magnificationAt(frame.toProfile, at) > MOST_STRETCH * frame.nmPerPixel) continue;
      box.minX = Math.min(box.minX, place.x);
      box.maxX = Math.max(box.maxX, place.x);
      box.minY = Math.min(box.minY, place.y);
      box.maxY = Math.max(box.maxY, place.y);
    }
  }
  return box.maxX > box.minX && box.maxY > box.minY ? box : null;
}

function paint(
  out: Uint8ClampedArray,
  at: number,
  source: Uint8ClampedArray,
  { width, height }: PictureSize,
  toPicture: PlaneMap,
  place: { readonly x: number; readonly y: number },
): void {
  if (!(depthAt(toPicture, place) > 0)) return;
  const from = mapPoint(toPicture, place);
  if (!(from.x >= 0 && from.y >= 0 && from.x <= width && from.y <= height)) return;
  const x = Math.min(width - 1, Math.max(0, from.x - 0.5));
  const y = Math.min(height - 1, Math.max(0, from.y - 0.5));
  const [left, top] = [Math.floor(x), Math.floor(y)];
  const [u, v] = [x - left, y - top];
  const right = Math.min(width - 1, left + 1);
  const bottom = Math.min(height - 1, top + 1);
  for (let c = 0; c < 4; c++) {
    const above = (1 - u) * source[4 * (top * width + left) + c] + u * source[4 * (top * width + right) + c];
    const below = (1 - u) * source[4 * (bottom * width + left) + c] + u * source[4 * (bottom * width + right) + c];
    out[at + c] = (1 - v) * above + v * below;
  }
}

const known = new WeakMap<ImageBitmap, Uint8ClampedArray>();

/** The pixels of a picture, read once. */
function pixelsOf(bitmap: ImageBitmap): Uint8ClampedArray | null {
  const read = known.get(bitmap);
  if (read) return read;
  const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d', { willReadFrequently: true });
  if (!context || bitmap.width === 0) return null;
  context.drawImage(bitmap, 0, 0);
  const { data } = context.getImageData(0, 0, bitmap.width, bitmap.height);
  known.set(bitmap, data);
  return data;
}
