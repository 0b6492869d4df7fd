import { type MouseEvent, type PointerEvent, type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import { nodeOf } from '../../../../family/tier-reach.ts';
import {
  type DiagramView,
  firstView,
  fitDiagram,
  type PixelBox,
  type PixelSize,
  revealBox,
  zoomDiagram,
} from '../../../state/tiers/diagram-view.ts';
import type { LaidOut } from '../../../state/tiers/laying-out.ts';
import { wheelFactor } from '../../../tools/drawing-view.ts';

/** How the diagram lies in its frame, and the ways to move it. */
export interface DiagramSheet {
  readonly view: DiagramView | null;
  zoom(factor: number): void;
  fit(): void;
  /** Brings a node into sight, by its number. */
  reveal(node: number): void;
  /** What the frame hears of a pointer that holds the sheet. */
  readonly hold: {
    onPointerDown(event: PointerEvent): void;
    onPointerMove(event: PointerEvent<HTMLElement>): void;
    onPointerUp(): void;
    onPointerCancel(): void;
    onClickCapture(event: MouseEvent): void;
  };
}

/** A press that goes less far is a click, pixels. */
const CLICK_REACH = 4;

/** A view that is not the one a diagram begins with. */
interface OwnView {
  readonly layout: object;
  /** The frame that it is for: another one is begun anew. null where the hand has put it so. */
  readonly size: PixelSize | null;
  readonly view: DiagramView;
}

/** The view of the laid out diagram: fitted anew with each layout, then where the hand puts it. */
export function useDiagramView(
  frame: RefObject<HTMLElement | null>,
  size: PixelSize | null,
  drawn: LaidOut | null,
  entrantId: string | null,
): DiagramSheet {
  const layout = drawn?.layout ?? null;
  const [own, setOwn] = useState<OwnView | null>(null);
  const picked = drawn ? nodeOf(drawn.tiers, entrantId) : -1;
  // biome-ignore lint/correctness/useExhaustiveDependencies: another pick moves the sheet only as far as needed, below
  const first = useMemo(
    () => (layout && size ? firstView(layout, size, drawn && boxOf(drawn, picked)) : null),
    [layout, size],
  );
  const isOwn = own && own.layout === layout && (own.size === null || own.size === size);
  const view = isOwn ? own.view : first;
  const now = useRef(view);
  useEffect(() => {
    now.current = view;
  });
  const set = (next: DiagramView, forSize: PixelSize | null = null) => {
    now.current = next;
    if (layout && next !== view) setOwn({ layout, size: forSize, view: next });
  };
  const reveal = (node: number) => {
    const box = drawn && boxOf(drawn, node);
    if (box && size && now.current) set(revealBox(now.current, box, size), isOwn ? own.size : size);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: picked elsewhere, in the tray or the matrix, it is brought into sight once
  useEffect(() => reveal(picked), [picked, layout]);
  const zoomAt = (px: number, py: number, factor: number) => {
    if (now.current) set(zoomDiagram(now.current, px, py, factor));
  };
  useWheel(frame, zoomAt);
  return {
    view,
    zoom: (factor) => size && zoomAt(size.width / 2, size.height / 2, factor),
    fit: () => {
      if (layout && size) set(fitDiagram(layout, size), size);
    },
    reveal,
    hold: useHold(now, set),
  };
}

/** The wheel zooms about the pointer; the page must not scroll meanwhile, which only a listener of one's own can stop. */
function useWheel(
  frame: RefObject<HTMLElement | null>,
  zoomAt: (px: number, py: number, factor: number) => void,
): void {
  const turn = useRef(zoomAt);
  useEffect(() => {
    turn.current = zoomAt;
  });
  useEffect(() => {
    const element = frame.current;
    if (!element) return;
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      const box = element.getBoundingClientRect();
      turn.current(event.clientX - box.left, event.clientY - box.top, wheelFactor(event.deltaY, event.deltaMode));
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, [frame]);
}

/** A pointer that is pressed and moved takes the sheet along; what it lets go of is then no click. */
function useHold(now: RefObject<DiagramView | null>, set: (view: DiagramView) => void): DiagramSheet['hold'] {
  const held = useRef<{ x: number; y: number; view: DiagramView; moved: boolean } | null>(null);
  const wasMoved = useRef(false);
  const letGo = () => {
    wasMoved.current = held.current?.moved ?? false;
    held.current = null;
  };
  return {
    onPointerDown: (event) => {
      wasMoved.current = false;
      if (event.button === 0 && now.current)
        held.current = { x: event.clientX, y: event.clientY, view: now.current, moved: false };
    },
    onPointerMove: (event) => {
      const from = held.current;
      if (!from) return;
      const dx = event.clientX - from.x;
      const dy = event.clientY - from.y;
      if (!from.moved && Math.hypot(dx, dy) < CLICK_REACH) return;
      if (!from.moved) event.currentTarget.setPointerCapture(event.pointerId);
      from.moved = true;
      set({ scale: from.view.scale, x: from.view.x + dx, y: from.view.y + dy });
    },
    onPointerUp: letGo,
    onPointerCancel: letGo,
    onClickCapture: (event) => {
      if (wasMoved.current) event.stopPropagation();
      wasMoved.current = false;
    },
  };
}

/** The rectangle of a node in the diagram's own pixels; null for none. */
function boxOf({ nodes, layout }: LaidOut, node: number): PixelBox | null {
  const at = layout.at[node];
  if (!at) return null;
  const { width, height } = nodes[node];
  return { x: at.x - width / 2, y: at.y - height / 2, width, height };
}
