import { type Affine, compose, IDENTITY, scaling } from '../../geom/affine.ts';
import { NM_PER_INCH } from '../../geom/point.ts';
import type { DrawingOptions } from '../drawing.ts';
import type { FileFault } from '../json/file-fault.ts';
import { addNote, type DrawingNotes } from './drawing-notes.ts';
import { ownStyle, type SvgElement, sayPlace } from './element.ts';
import { isPhysical, type Length, readLength, readViewBox, toPixels, type Viewport, viewBoxMap } from './measures.ts';
import { readTransform } from './read-transform.ts';

/** Nanometres in a pixel of CSS: 1/96 inch. */
const NM_PER_PIXEL = NM_PER_INCH / 96;

/** How the user units of the outermost svg become nanometres. */
export interface RootFrame {
  readonly map: Affine;
  /** What percentages are parts of, in user units. */
  readonly viewport: Viewport;
  readonly nmPerUnit: number;
  readonly unitsStated: boolean;
}

/** The viewport of the outermost svg, in pixels; null where the drawing does not say. */
interface Stated extends Viewport {
  readonly physical: boolean;
}

/**
 * The frame of a whole drawing: true size where the drawing states one, y turned to point up, the origin in the upper
 * left corner of its viewport. Width and height in pixels, or none, are no statement: programs write them for units of
 * their own, so a pixel of 1/96 inch is then a guess.
 *
 * @returns the frame, or a fault where the drawing is zero wide or high.
 * @source CSS Values and Units Module Level 3, W3C 2024, section 6.2; SVG 2, sections 8.2 and 8.6 (sizes left open).
 * @check tests/unit/interchange/svg-corpus.test.ts
 */
export function rootFrame(
  root: SvgElement,
  options: DrawingOptions,
  notes: DrawingNotes,
): RootFrame | { readonly fault: FileFault } {
  const transform = readTransform(root.attributes.get('transform') ?? '');
  if (typeof transform === 'string') return { fault: badTransform(root, transform) };
  const text = root.attributes.get('viewBox');
  const box = text === undefined ? null : readViewBox(text);
  if (text !== undefined && !box) noteBadBox(notes, root);
  const stated = statedSize(root, notes);
  if (box?.width === 0 || box?.height === 0 || stated.width === 0 || stated.height === 0)
    return { fault: noSize(root) };
  const size = fillIn(stated, box);
  const seen =
    box && size ? viewBoxMap(box, size.width, size.height, root.attributes.get('preserveAspectRatio') ?? '') : IDENTITY;
  const ownScale = Math.sqrt(seen[0] * seen[3]) * NM_PER_PIXEL;
  const factor = options.nmPerUnit === undefined ? 1 : options.nmPerUnit / ownScale;
  const scale = NM_PER_PIXEL * factor;
  return {
    map: compose(scaling(scale, -scale), compose(transform, seen)),
    viewport: box ?? stated,
    nmPerUnit: options.nmPerUnit ?? ownScale,
    unitsStated: stated.physical && box !== null,
  };
}

/** A fault that tells of a transform which is not understood. */
export function badTransform(element: SvgElement, what: string): FileFault {
  const cure = 'Apply the transforms in the drawing program and save it again, or delete the element.';
  return { path: sayPlace(element, 'transform'), what, cure };
}

function statedSize(root: SvgElement, notes: DrawingNotes): Stated {
  const width = sideOf(root, 'width', notes);
  const height = sideOf(root, 'height', notes);
  return {
    width: width && toPixels(width, null),
    height: height && toPixels(height, null),
    physical: [width, height].some((length) => length !== null && isPhysical(length)),
  };
}

/** Width or height of the outermost svg; a percentage is one of the window and states nothing. */
function sideOf(root: SvgElement, name: 'width' | 'height', notes: DrawingNotes): Length | null {
  const text = ownStyle(root).get(name) ?? root.attributes.get(name) ?? 'auto';
  if (/^\s*(auto)?\s*$/.test(text)) return null;
  const length = readLength(text);
  if (length && length.number >= 0) return length.unit === '%' ? null : length;
  const cure = 'The size is taken from the other side, or a unit counts as 1/96 inch.';
  addNote(notes, `size ${name}`, sayPlace(root, name), () => 'is no size that can be read', cure);
  return null;
}

/** The viewport in pixels: a side that is not stated follows the view box. */
function fillIn(
  { width, height }: Viewport,
  box: { width: number; height: number } | null,
): { width: number; height: number } | null {
  if (!box) return null;
  if (width !== null && height !== null) return { width, height };
  if (width !== null) return { width, height: (width * box.height) / box.width };
  if (height !== null) return { width: (height * box.width) / box.height, height };
  return box;
}

function noteBadBox(notes: DrawingNotes, root: SvgElement): void {
  const cure = 'Write four numbers: left, top, width, height. Check the size of what was read.';
  addNote(notes, 'view box', sayPlace(root, 'viewBox'), () => 'is not understood and left out', cure);
}

function noSize(root: SvgElement): FileFault {
  return {
    path: sayPlace(root),
    what: 'the drawing has no width or no height',
    cure: 'Give the svg element a width, a height and a viewBox above zero.',
  };
}
