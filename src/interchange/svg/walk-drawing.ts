import { type Affine, compose, translation } from '../../geom/affine.ts';
import type { DrawnPath } from '../drawing.ts';
import type { FileFault } from '../json/file-fault.ts';
import { addBadShape, type BadShapes, noteBadShapes } from './bad-shapes.ts';
import { drawParts } from './draw-parts.ts';
import { addNote, type DrawingNotes } from './drawing-notes.ts';
import { ownLabel, type SvgElement, sayPlace } from './element.ts';
import { noteLeftOut } from './left-out.ts';
import { readViewBox, type Viewport, viewBoxMap } from './measures.ts';
import { readTransform } from './read-transform.ts';
import { badTransform, type RootFrame } from './root-frame.ts';
import { isShape, lengthOf, type ShapeRead, shapeParts } from './shape-parts.ts';
import { firstFitting, isForUs, isHidden, isTakenOut, movedBy, property } from './shown-element.ts';

/** Most points of all paths together; an outline of a family may have 10,000. */
const MAX_POINTS = 200_000;

/** Most steps of the walk: elements seen, repeats by `use` included, and parts of paths. */
const MAX_STEPS = 300_000;

/** Deepest nesting in all, that of what `use` brings in included. */
const MAX_NESTING = 400;

/** What the walk has found, and what it may still spend. */
interface Walk {
  readonly paths: DrawnPath[];
  /** Why the drawing cannot be had at all: it is too much. */
  fault: FileFault | null;
  readonly bad: BadShapes;
  readonly notes: DrawingNotes;
  readonly byId: ReadonlyMap<string, SvgElement>;
  /** Outlines by element, so that what is repeated is parsed once; kept for elements whose size hangs on nothing. */
  readonly outlines: Map<SvgElement, ShapeRead>;
  points: number;
  steps: number;
}

/** What an element inherits from those around it. */
interface Place {
  readonly map: Affine;
  readonly viewport: Viewport;
  readonly label: string;
  readonly hidden: boolean;
  readonly depth: number;
  /** The elements that `use` is bringing in just now. */
  readonly using: readonly SvgElement[];
  /** Set on what a `use` brings in: its width and height hold for a symbol or an svg. */
  readonly use?: SvgElement;
  /** The name of that `use`, which goes before the name of what it brings in. */
  readonly given?: string;
}

/** The lines of a drawing, or why there are none. */
export type Walked =
  | { readonly ok: true; readonly paths: readonly DrawnPath[] }
  | { readonly ok: false; readonly faults: readonly FileFault[] };

/**
 * The lines of all shapes that are drawn, in document order: nested groups, viewports and uses with their transforms,
 * without what is hidden or only defined. A shape or group that makes no sense is left out with a note; where no shape is
 * good, what is wrong with them is the answer.
 *
 * @param root the outermost svg.
 * @param notes what is left out is added here.
 * @check tests/unit/interchange/svg-corpus.test.ts, tests/browser/svg-against-browser.test.ts
 */
export function walkDrawing(root: SvgElement, frame: RootFrame, notes: DrawingNotes): Walked {
  const walk: Walk = {
    ...{
      paths: [],
      fault: null,
      bad: { faults: [], more: 0, firstOfMore: '' },
      notes,
      byId: indexIds(root),
      outlines: new Map(),
    },
    ...{ points: MAX_POINTS, steps: MAX_STEPS },
  };
  const place = { map: frame.map, viewport: frame.viewport, label: ownLabel(root), depth: 0, using: [] };
  const hidden = isHidden(root, false);
  noteMovedSheet(notes, root);
  if (!isTakenOut(root)) visitAll(walk, root.children, { ...place, hidden });
  if (walk.fault) return { ok: false, faults: [walk.fault] };
  if (walk.paths.length === 0 && walk.bad.faults.length > 0) return { ok: false, faults: walk.bad.faults };
  noteBadShapes(walk.bad, notes);
  return { ok: true, paths: walk.paths };
}

/** Width and height in the style of the outermost svg are followed; a place or an origin moves all alike. */
function noteMovedSheet(notes: DrawingNotes, root: SvgElement): void {
  const moving = movedBy(root);
  if (moving === undefined || ['width', 'height', 'x', 'y', 'transform-origin'].includes(moving)) return;
  const what = () => `the whole drawing is moved by the style ${moving}, which is not followed`;
  addNote(notes, 'moved sheet', sayPlace(root), what, 'Check its size and which way it is turned.');
}

/** The first element of each id. */
function indexIds(root: SvgElement): Map<string, SvgElement> {
  const byId = new Map<string, SvgElement>();
  const stack = [root];
  for (let element = stack.pop(); element; element = stack.pop()) {
    const id = element.attributes.get('id');
    if (id && !byId.has(id)) byId.set(id, element);
    for (let i = element.children.length - 1; i >= 0; i--) stack.push(element.children[i]);
  }
  return byId;
}

function visitAll(walk: Walk, elements: readonly SvgElement[], place: Place): void {
  for (const element of elements) visit(walk, element, place);
}

function visit(walk: Walk, element: SvgElement, around: Place): void {
  if (!spend(walk, element, 1)) return;
  if (around.depth > MAX_NESTING) {
    walk.fault = tooDeep(element);
    return;
  }
  const { name } = element;
  const shape = isShape(name);
  if (!shape && !isContainer(element, around)) {
    if (!isTakenOut(element)) noteLeftOut(walk.notes, element);
    return;
  }
  if (isTakenOut(element) || !isForUs(element) || isMoved(walk, element)) return;
  const transform = readTransform(element.attributes.get('transform') ?? '');
  if (typeof transform === 'string') {
    addBadShape(walk.bad, badTransform(element, transform));
    return;
  }
  noteClipped(walk, element);
  const place = enter(element, around, transform);
  if (shape) drawShape(walk, element, place);
  else if (name === 'use') expandUse(walk, element, place, around.given || ownLabel(element));
  else if (name === 'switch') visitAll(walk, firstFitting(element), place);
  else if (name === 'svg' || name === 'symbol') enterViewport(walk, element, place, around.use);
  else visitAll(walk, element.children, place);
}

/** A symbol is drawn where a `use` brings it in, and nowhere else. */
function isContainer({ name }: SvgElement, { use }: Place): boolean {
  return ['g', 'a', 'svg', 'use', 'switch'].includes(name) || (name === 'symbol' && use !== undefined);
}

function enter(element: SvgElement, around: Place, transform: Affine): Place {
  return {
    map: compose(around.map, transform),
    viewport: around.viewport,
    label: around.given || ownLabel(element) || around.label,
    hidden: isHidden(element, around.hidden),
    depth: around.depth + 1,
    using: around.using,
  };
}

function spend(walk: Walk, element: SvgElement, steps: number): boolean {
  if (walk.fault) return false;
  walk.steps -= steps;
  if (walk.steps >= 0) return true;
  const what = `the drawing has more than ${MAX_STEPS} pieces, counting what <use> repeats`;
  walk.fault = { path: sayPlace(element), what, cure: 'Draw the sections alone and import that.' };
  return false;
}

function isMoved(walk: Walk, element: SvgElement): boolean {
  const moving = movedBy(element);
  if (moving === undefined) return false;
  const what = (count: number) =>
    `${count === 1 ? 'an element is' : `${count} elements are`} moved or shaped by ${moving}, and left out`;
  const cure = 'Apply the move in the drawing program, so that it stands in the coordinates or in a transform.';
  addNote(walk.notes, `moved ${moving}`, sayPlace(element), what, cure);
  return true;
}

function noteClipped(walk: Walk, element: SvgElement): void {
  const cut = ['clip-path', 'mask'].find((name) => !['', 'none'].includes(property(element, name)));
  if (cut === undefined) return;
  const what = (count: number) =>
    `${count === 1 ? 'an element is' : `${count} elements are`} shown in part only (${cut}); all of it is taken`;
  addNote(walk.notes, cut, sayPlace(element), what, 'Cut the shape itself in the drawing program where that matters.');
}

function drawShape(walk: Walk, element: SvgElement, place: Place): void {
  if (place.hidden) return;
  const outline = outlineOf(walk, element, place.viewport);
  if (!outline.ok) {
    addBadShape(walk.bad, outline.fault);
    return;
  }
  if (outline.remark) noteShape(walk, element, outline.remark, 'Check the shape in the drawing program.');
  if (!spend(walk, element, outline.parts.length)) return;
  const drawn = drawParts(outline.parts, place.map, walk.points);
  if (drawn.kind === 'too many') {
    walk.fault = tooManyPoints(element);
    return;
  }
  if (drawn.kind === 'too far') {
    noteShape(walk, element, 'lies more than 1 km away and is left out', 'Check the scale.');
    return;
  }
  for (const { vertices, closed } of drawn.chains) {
    walk.points -= vertices.length;
    walk.paths.push({ vertices, closed, label: place.label });
  }
  for (let i = 0; i < drawn.pointless; i++)
    noteShape(walk, element, 'has fewer than two different points and is left out', 'Nothing needs to be done.');
}

function outlineOf(walk: Walk, element: SvgElement, viewport: Viewport): ShapeRead {
  const known = walk.outlines.get(element);
  if (known) return known;
  const outline = shapeParts(element, viewport);
  if (element.name === 'path') walk.outlines.set(element, outline);
  return outline;
}

function noteShape(walk: Walk, element: SvgElement, what: string, cure: string): void {
  const say = (count: number) => (count === 1 ? what : `${what}; so it is with ${count} shapes`);
  addNote(walk.notes, what, sayPlace(element), say, cure);
}

function tooDeep(element: SvgElement): FileFault {
  return {
    path: sayPlace(element),
    what: `elements are nested more than ${MAX_NESTING} deep, counting what <use> brings in`,
    cure: 'Draw the sections alone and import that.',
  };
}

function tooManyPoints(element: SvgElement): FileFault {
  return {
    path: sayPlace(element),
    what: `the drawing needs more than ${MAX_POINTS} points`,
    cure: 'Check the scale; else simplify its paths, or import the sections one at a time.',
  };
}

/** Draws what a `use` points to, as if it stood here. */
function expandUse(walk: Walk, element: SvgElement, place: Place, given: string): void {
  const href = (element.attributes.get('href') ?? element.attributes.get('xlink:href') ?? '').trim();
  if (!href.startsWith('#')) {
    noteUse(walk, element, href ? 'points out of the drawing' : 'points to nothing');
    return;
  }
  const target = walk.byId.get(href.slice(1)) ?? walk.byId.get(decode(href.slice(1)));
  if (!target) {
    noteUse(walk, element, 'points to an id that is not there');
    return;
  }
  if (place.using.includes(target)) {
    noteUse(walk, element, 'comes back to itself');
    return;
  }
  const x = lengthOf(element, 'x', 'width', place.viewport, 0);
  const y = lengthOf(element, 'y', 'height', place.viewport, 0);
  if (typeof x !== 'number') {
    addBadShape(walk.bad, x);
    return;
  }
  if (typeof y !== 'number') {
    addBadShape(walk.bad, y);
    return;
  }
  const map = compose(place.map, translation(x, y));
  visit(walk, target, { ...place, map, using: [...place.using, target], use: element, given });
}

function noteUse(walk: Walk, element: SvgElement, why: string): void {
  const what = (count: number) =>
    count === 1 ? `a <use> ${why} and is left out` : `${count} times <use> ${why} and is left out`;
  addNote(walk.notes, `use ${why}`, sayPlace(element), what, 'Put what it stands for into the drawing itself.');
}

function decode(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/** Goes into an svg or a symbol: a viewport with user units of its own. */
function enterViewport(walk: Walk, element: SvgElement, place: Place, use: SvgElement | undefined): void {
  const nested = element.name === 'svg';
  const x = nested ? lengthOf(element, 'x', 'width', place.viewport, 0) : 0;
  const y = nested ? lengthOf(element, 'y', 'height', place.viewport, 0) : 0;
  const width = sideOf(element, 'width', place.viewport, use);
  const height = sideOf(element, 'height', place.viewport, use);
  for (const side of [x, y, width, height])
    if (typeof side === 'object' && side) {
      addBadShape(walk.bad, side);
      return;
    }
  if (typeof x !== 'number' || typeof y !== 'number' || width === 0 || height === 0) return;
  const size = { width: width as number | null, height: height as number | null };
  const moved = compose(place.map, translation(x, y));
  const box = readViewBox(element.attributes.get('viewBox') ?? '');
  if (!box) {
    visitAll(walk, element.children, { ...place, map: moved, viewport: size });
    return;
  }
  if (size.width === null || size.height === null) {
    addBadShape(walk.bad, noViewport(element));
    return;
  }
  if (box.width === 0 || box.height === 0) return;
  const aspect = element.attributes.get('preserveAspectRatio') ?? '';
  const map = compose(moved, viewBoxMap(box, size.width, size.height, aspect));
  visitAll(walk, element.children, { ...place, map, viewport: box });
}

/** Width or height of a nested viewport; those of a `use` go before its own; all of the viewport around where open. */
function sideOf(
  element: SvgElement,
  name: 'width' | 'height',
  viewport: Viewport,
  use: SvgElement | undefined,
): number | null | FileFault {
  const owner = use?.attributes.has(name) ? use : element;
  const side = lengthOf(owner, name, name, viewport, -1);
  return side === -1 ? viewport[name] : side;
}

function noViewport(element: SvgElement): FileFault {
  return {
    path: sayPlace(element),
    what: 'is as large as the drawing, and the drawing does not say how large it is',
    cure: 'Give the outermost svg element a width and a height.',
  };
}
