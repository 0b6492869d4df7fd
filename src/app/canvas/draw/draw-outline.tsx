import type { Point } from '../../../geom/point.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import type { ProfileKind } from '../../../profile/profile.ts';
import { HANDLE_ROOM_PX, handleOf, type UnderPointer } from '../../tools/draw/under-pointer.ts';
import { type PixelPoint, toPixels } from '../../tools/drawing-view.ts';
import { type DrawingSheet, pixelsOf } from '../drawing-sheet.ts';
import { Circle, type DrawingContext, Group, Line, Shape } from '../konva-parts.ts';

/** Vertices nearer to each other than this get dots in place of handles, in pixels. */
const CROWDED = 12;

/** How much of what lies under the fill shows. */
const OPACITY = { opening: 0.42, blank: 0.5, tool: 0.5 } as const;

interface DrawOutlineProps {
  readonly kind: ProfileKind;
  readonly ring: readonly Point[];
  /** Whether something under it, or a new outline over it, matters more. */
  readonly faint: boolean;
  readonly sheet: DrawingSheet;
}

/** The edited outline, filled lightly so that what lies under it shows. */
export function DrawOutline({ kind, ring, faint, sheet }: DrawOutlineProps) {
  const { palette, view } = sheet;
  const pixels = pixelsOf(ring, view);
  const fill = { opening: palette.voidFill, blank: palette.brass, tool: palette.steel }[kind];
  return (
    <Group>
      <Line points={pixels} closed fill={fill} opacity={faint ? 0.16 : OPACITY[kind]} />
      <Line points={pixels} closed stroke={palette.paperLit} strokeWidth={4.5} lineJoin="round" />
      <Line points={pixels} closed stroke={palette.ink} strokeWidth={2.25} lineJoin="round" />
    </Group>
  );
}

interface DrawHandlesProps {
  readonly vertices: readonly Vertex[];
  readonly chosen: readonly number[];
  readonly under: UnderPointer;
  readonly sheet: DrawingSheet;
}

/**
 * Handles: a square on a corner, a disk where an arc ends, larger with a strong rim and a dot inside where it is chosen. The edge under the
 * pointer and those between chosen vertices show the diamond in their middle that bows them; beside it a cross tells
 * where a double click adds a vertex.
 */
export function DrawHandles({ vertices, chosen, under, sheet }: DrawHandlesProps) {
  const { palette, view } = sheet;
  const picked = new Set(chosen);
  const edge = under.kind === 'edge' || under.kind === 'bulge' ? under.edge : null;
  const paint = (context: DrawingContext) => {
    const pixels = vertices.map((vertex) => toPixels(view, vertex));
    vertices.forEach((vertex, i) => {
      const onArc = Boolean(vertex.bulge) || Boolean(vertices.at(i - 1)?.bulge);
      const near = i === (under.kind === 'vertex' ? under.index : -1);
      const half = halfOf(pixels, i, picked.has(i), near);
      paintHandle(context, pixels[i], half, onArc);
      context.setAttr('fillStyle', picked.has(i) ? palette.brass : palette.paperLit);
      context.fill();
      context.setAttr('strokeStyle', palette.ink);
      context.setAttr('lineWidth', picked.has(i) || near ? 3 : 1.5);
      context.stroke();
      if (picked.has(i)) paintDot(context, pixels[i], palette.ink);
    });
  };
  const bows = vertices.flatMap((_, i) => {
    const shown = i === edge || (picked.has(i) && picked.has((i + 1) % vertices.length));
    const handle = shown ? handleOf(vertices, i, view) : null;
    return handle ? [{ i, handle }] : [];
  });
  return (
    <Group>
      {edge !== null && <HoveredEdge vertices={vertices} edge={edge} sheet={sheet} />}
      {bows.map(({ i, handle }) => (
        <Diamond key={i} at={handle} strong={under.kind === 'bulge' && under.edge === i} sheet={sheet} />
      ))}
      {under.kind === 'edge' && <Plus at={toPixels(view, under.at)} sheet={sheet} />}
      <Shape sceneFunc={paint} listening={false} />
    </Group>
  );
}

function halfOf(pixels: readonly PixelPoint[], i: number, chosen: boolean, near: boolean): number {
  if (chosen) return 8;
  if (near) return 7;
  const at = pixels[i];
  const far = (other: PixelPoint) => Math.hypot(other.px - at.px, other.py - at.py);
  const least = Math.min(far(pixels[(i + 1) % pixels.length]), far(pixels.at(i - 1) ?? at));
  return least < CROWDED ? 2.5 : 5;
}

function paintHandle(context: DrawingContext, { px, py }: PixelPoint, half: number, round: boolean): void {
  context.beginPath();
  if (round) context.arc(px, py, half, 0, 2 * Math.PI, false);
  else context.rect(px - half, py - half, 2 * half, 2 * half);
  context.closePath();
}

function paintDot(context: DrawingContext, { px, py }: PixelPoint, ink: string): void {
  context.beginPath();
  context.arc(px, py, 2.5, 0, 2 * Math.PI, false);
  context.closePath();
  context.setAttr('fillStyle', ink);
  context.fill();
}

function HoveredEdge({ vertices, edge, sheet }: { vertices: readonly Vertex[]; edge: number; sheet: DrawingSheet }) {
  const { view, palette } = sheet;
  const [from, to] = [vertices[edge], vertices[(edge + 1) % vertices.length]];
  const short = Math.hypot(to.x - from.x, to.y - from.y) * view.scale < HANDLE_ROOM_PX;
  if (from.bulge || short) return null;
  return <Line points={pixelsOf([from, to], view)} stroke={palette.brass} strokeWidth={5} opacity={0.8} />;
}

function Diamond({ at: { px, py }, strong, sheet }: { at: PixelPoint; strong: boolean; sheet: DrawingSheet }) {
  const { palette } = sheet;
  const r = strong ? 9 : 7;
  return (
    <Line
      points={[px, py - r, px + r, py, px, py + r, px - r, py]}
      closed
      fill={strong ? palette.brass : palette.paperLit}
      stroke={palette.ink}
      strokeWidth={strong ? 3 : 1.75}
    />
  );
}

function Plus({ at: { px, py }, sheet }: { at: PixelPoint; sheet: DrawingSheet }) {
  const { palette } = sheet;
  return (
    <Group>
      <Circle x={px} y={py} radius={7} fill={palette.paperLit} stroke={palette.ink} strokeWidth={1.5} />
      <Line points={[px - 4, py, px + 4, py]} stroke={palette.ink} strokeWidth={1.75} />
      <Line points={[px, py - 4, px, py + 4]} stroke={palette.ink} strokeWidth={1.75} />
    </Group>
  );
}
