import type { Point } from '../../src/geom/point.ts';

/**
 * A notch in a section's face: a groove where the section is a blank, a ward where it is an opening.
 * Measured at the root, where the notch ends inside the section. Nanometres.
 */
export interface Notch {
  readonly side: 'left' | 'right';
  readonly bottom: number;
  readonly width: number;
  readonly depth: number;
  /** How much further each flank stands out at the mouth than at the root; negative is undercut, a dovetail. */
  readonly lean: number;
}

/** A blade or keyway as a rectangle with notches in its two faces. Nanometres. */
export interface Section {
  readonly thickness: number;
  readonly height: number;
  readonly notches: readonly Notch[];
}

/** Lowest and highest point of the notch anywhere between mouth and root. */
export function bandOf(notch: Notch): { readonly low: number; readonly high: number } {
  const lean = Math.max(0, notch.lean);
  return { low: notch.bottom - lean, high: notch.bottom + notch.width + lean };
}

/**
 * The outline with sharp corners, counter-clockwise from (0, 0): 4 vertices, and 4 for every notch.
 * Notches of one face must not overlap.
 */
export function sectionOutline(section: Section): Point[] {
  const { thickness, height } = section;
  const up = notchesOf(section, 'right').flatMap((n) => notchVertices(n, thickness, -1));
  const down = notchesOf(section, 'left')
    .flatMap((n) => notchVertices(n, 0, 1))
    .reverse();
  return [{ x: 0, y: 0 }, { x: thickness, y: 0 }, ...up, { x: thickness, y: height }, { x: 0, y: height }, ...down];
}

function notchesOf(section: Section, side: Notch['side']): Notch[] {
  return section.notches.filter((n) => n.side === side).sort((a, b) => a.bottom - b.bottom);
}

/** From the lower to the upper end of the mouth; `inwards` is the sign of x into the section. */
function notchVertices(notch: Notch, face: number, inwards: 1 | -1): Point[] {
  const { bottom, width, depth, lean } = notch;
  const root = face + inwards * depth;
  return [
    { x: face, y: bottom - lean },
    { x: root, y: bottom },
    { x: root, y: bottom + width },
    { x: face, y: bottom + width + lean },
  ];
}

/**
 * The outline with every corner replaced by `pointsPerCorner` points on a fillet, rounded to whole nanometres.
 * The fillet's radius is at most `radius` and takes at most a third of either neighbouring edge.
 */
export function roundCorners(outline: readonly Point[], radius: number, pointsPerCorner: number): Point[] {
  if (pointsPerCorner < 2) return [...outline];
  return outline.flatMap((corner, i) => {
    const before = outline[(i + outline.length - 1) % outline.length];
    const after = outline[(i + 1) % outline.length];
    return fillet(before, corner, after, radius, pointsPerCorner);
  });
}

function fillet(before: Point, corner: Point, after: Point, radius: number, count: number): Point[] {
  const a = unit(corner, before);
  const b = unit(corner, after);
  const half = Math.acos(Math.max(-1, Math.min(1, a.x * b.x + a.y * b.y))) / 2;
  const reach = Math.min(radius / Math.tan(half), a.length / 3, b.length / 3);
  const bisector = { x: (a.x + b.x) / (2 * Math.cos(half)), y: (a.y + b.y) / (2 * Math.cos(half)) };
  const toCentre = reach / Math.cos(half);
  const centre = { x: corner.x + bisector.x * toCentre, y: corner.y + bisector.y * toCentre };
  const first = { x: corner.x + a.x * reach - centre.x, y: corner.y + a.y * reach - centre.y };
  const last = { x: corner.x + b.x * reach - centre.x, y: corner.y + b.y * reach - centre.y };
  const sweep = Math.atan2(first.x * last.y - first.y * last.x, first.x * last.x + first.y * last.y);
  return Array.from({ length: count }, (_, k) => {
    const angle = (sweep * k) / (count - 1);
    return {
      x: Math.round(centre.x + first.x * Math.cos(angle) - first.y * Math.sin(angle)),
      y: Math.round(centre.y + first.x * Math.sin(angle) + first.y * Math.cos(angle)),
    };
  });
}

function unit(from: Point, to: Point): { readonly x: number; readonly y: number; readonly length: number } {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length, length };
}

/**
 * Every edge moved outwards by `by` and prolonged to meet its neighbours (a mitre offset), rounded to whole
 * nanometres; negative `by` moves inwards. Exact where all edges are upright or level. Only for moves small
 * beside the edges: no edge may vanish.
 */
export function growByMitre(outline: readonly Point[], by: number): Point[] {
  const lines = outline.map((p, i) => movedLine(p, outline[(i + 1) % outline.length], by));
  return lines.map((line, i) => meet(lines[(i + lines.length - 1) % lines.length], line));
}

interface Line {
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
}

function movedLine(from: Point, to: Point, by: number): Line {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const length = Math.hypot(dx, dy);
  return { x: from.x + (dy / length) * by, y: from.y - (dx / length) * by, dx, dy };
}

function meet(a: Line, b: Line): Point {
  const cross = a.dx * b.dy - a.dy * b.dx;
  if (Math.abs(cross) < 1e-9 * Math.hypot(a.dx, a.dy) * Math.hypot(b.dx, b.dy))
    return { x: Math.round(b.x), y: Math.round(b.y) };
  const along = ((b.x - a.x) * b.dy - (b.y - a.y) * b.dx) / cross;
  return { x: Math.round(a.x + a.dx * along), y: Math.round(a.y + a.dy * along) };
}
