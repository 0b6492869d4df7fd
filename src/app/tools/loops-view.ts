import { type Box, NM_PER_MM, type Point } from '../../geom/point.ts';
import { quarterTurn } from '../../geom/quarter-turn.ts';
import { edgePoints } from '../../geom/vertex.ts';
import type { Placing } from '../../interchange/place-loop.ts';
import type { DrawnLoop } from '../../interchange/take-outline.ts';

/** Pixels left free round the drawing, and below it for the keys. */
const MARGIN = 28;
const FOOT = 56;

/** Where the loops stand on the picture: nanometres of the drawing, seen and turned as chosen, to pixels. */
export interface LoopStand {
  see(point: Point): Point;
  toPixel(seen: Point): Point;
  /** Pixels in a nanometre. */
  readonly scale: number;
}

/** Large loops first, so that those inside lie on top and can be pressed. */
export function drawingOrder(loops: readonly DrawnLoop[]): number[] {
  const area = (i: number) => loops[i].width * loops[i].height;
  return loops.map((_, i) => i).sort((a, b) => area(b) - area(a));
}

/** Loops that stand in frames of their own laid out in a row, for a picture of all of them. */
export function laidInRow(loops: readonly DrawnLoop[]): DrawnLoop[] {
  let x = 0;
  return loops.map((loop) => {
    const corner = { x, y: 0 };
    x += loop.width + Math.max(loop.width, loop.height) / 3;
    return { ...loop, corner };
  });
}

const paths = new WeakMap<DrawnLoop, string>();

/** The SVG path of a loop in millimetres, y up, its box on 0, 0. */
export function loopPath(loop: DrawnLoop): string {
  const known = paths.get(loop);
  if (known !== undefined) return known;
  const { vertices } = loop;
  const points = vertices.flatMap((vertex, i) => edgePoints(vertex, vertices[(i + 1) % vertices.length]));
  const path = `M${points.map(({ x, y }) => `${x / NM_PER_MM} ${y / NM_PER_MM}`).join('L')}Z`;
  paths.set(loop, path);
  return path;
}

/** How the loops are seen, and the largest scale at which all of `shown` have room. */
export function standOf(
  shown: readonly DrawnLoop[],
  { seenFrom, quarters }: Pick<Placing, 'seenFrom' | 'quarters'>,
  width: number,
  height: number,
): LoopStand {
  const see = seenAs({ seenFrom, quarters });
  const box = shown.map((loop) => boxSeen(loop, see)).reduce(boxOfBoth);
  const [w, h] = [Math.max(1, box.maxX - box.minX), Math.max(1, box.maxY - box.minY)];
  const scale = Math.min((width - 2 * MARGIN) / w, (height - MARGIN - FOOT) / h);
  const toPixel = ({ x, y }: Point) => ({
    x: width / 2 + (x - (box.minX + box.maxX) / 2) * scale,
    y: (height + MARGIN - FOOT) / 2 - (y - (box.minY + box.maxY) / 2) * scale,
  });
  return { see, toPixel, scale };
}

/** How a place is seen: from the tip left and right change places, then the quarter turns. */
export function seenAs({ seenFrom, quarters }: Pick<Placing, 'seenFrom' | 'quarters'>): LoopStand['see'] {
  return ({ x, y }) => quarterTurn({ x: seenFrom === 'tip' ? -x : x, y }, quarters);
}

/** The matrix that brings a loop's own millimetres into a small picture of so many pixels, as it is seen. */
export function thumbMatrix(
  { width, height }: Pick<DrawnLoop, 'width' | 'height'>,
  see: LoopStand['see'],
  [wide, tall]: readonly [number, number],
  most: number,
): string {
  const [right, up] = [see({ x: 1, y: 0 }), see({ x: 0, y: 1 })];
  const [w, h] = [width / NM_PER_MM, height / NM_PER_MM];
  const across = Math.abs(right.x) * w + Math.abs(up.x) * h;
  const upright = Math.abs(right.y) * w + Math.abs(up.y) * h;
  const k = Math.min((wide - 6) / Math.max(1, across), (tall - 6) / Math.max(1, upright), most);
  const x = wide / 2 - (k * (right.x * w + up.x * h)) / 2;
  const y = tall / 2 + (k * (right.y * w + up.y * h)) / 2;
  return `matrix(${[k * right.x, -k * right.y, k * up.x, -k * up.y, x, y].map((v) => v + 0).join(' ')})`;
}

/** The box of a loop as it is seen. */
export function boxSeen({ corner, width, height }: DrawnLoop, see: LoopStand['see']): Box {
  const [a, b] = [see(corner), see({ x: corner.x + width, y: corner.y + height })];
  return {
    minX: Math.min(a.x, b.x),
    minY: Math.min(a.y, b.y),
    maxX: Math.max(a.x, b.x),
    maxY: Math.max(a.y, b.y),
  };
}

function boxOfBoth(a: Box, b: Box): Box {
  return {
    minX: Math.min(a.minX, b.minX),
    minY: Math.min(a.minY, b.minY),
    maxX: Math.max(a.maxX, b.maxX),
    maxY: Math.max(a.maxY, b.maxY),
  };
}

/** The matrix that brings a loop's own millimetres to its place on the picture. */
export function matrixOf({ corner }: DrawnLoop, { see, toPixel, scale }: LoopStand): string {
  const [right, up] = [see({ x: 1, y: 0 }), see({ x: 0, y: 1 })];
  const k = scale * NM_PER_MM;
  const at = toPixel(see(corner));
  return `matrix(${k * right.x} ${-k * right.y} ${k * up.x} ${-k * up.y} ${at.x} ${at.y})`;
}

/** Where a place of a loop, measured from the corner of its box, is on the picture. */
export function pixelOf({ corner }: DrawnLoop, at: Point, { see, toPixel }: LoopStand): Point {
  return toPixel(see({ x: corner.x + at.x, y: corner.y + at.y }));
}

/** The middle of the line that closes a loop. */
export function gapPlace(loop: DrawnLoop, stand: LoopStand): Point {
  const { vertices } = loop;
  const [a, b] = widestEdgeEnds(vertices, loop.gaps[0]);
  return pixelOf(loop, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, stand);
}

/** The ends of the straight edge whose length is nearest to that of the gap. */
function widestEdgeEnds(vertices: readonly Point[], gap: number): [Point, Point] {
  const edges = vertices.map((a, i): [Point, Point] => [a, vertices[(i + 1) % vertices.length]]);
  const off = ([a, b]: [Point, Point]) => Math.abs(Math.hypot(a.x - b.x, a.y - b.y) - gap);
  return edges.reduce((best, edge) => (off(edge) < off(best) ? edge : best));
}
