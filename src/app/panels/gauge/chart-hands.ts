import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { heightUnder } from '../../state/gauge/chart-scale.ts';
import { type Plot, placeOf } from '../../state/gauge/curve-path.ts';
import type { TypedMeasure } from '../../state/gauge/gauge-lengths.ts';

/** What can be picked in the chart, by the place of each thing. */
export interface ChartTargets {
  /** The nearest curve's keyway at a height, and how far its line lies from a thickness, pixels; null where there is none. */
  nearestCurve(height: number, y: number): { readonly id: string; readonly apart: number } | null;
  /** Keyways at a height from thick to thin. */
  stackAt(height: number): readonly string[];
}

interface ChartHandsAsked {
  readonly plot: Plot;
  readonly height: number;
  readonly measure: TypedMeasure;
  readonly targets: ChartTargets;
  readonly pickedId: string | null;
  onHeight(nm: number): void;
  onPickOpening(id: string): void;
  onPickTool(id: string): void;
  onPoint(id: string | null): void;
}

/** Pixels within which a press is meant for a curve, and beyond which a press is a drag. */
const NEAR = 9;
const MOVED = 4;

/** What pointer and keys do to the chart: the hair line is dragged and stepped, curves and dots are picked. */
export function useChartHands(asked: ChartHandsAsked) {
  const press = useRef<{ readonly x: number; dragging: boolean } | null>(null);
  const at = (event: PointerEvent<HTMLElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const under = (event: PointerEvent<HTMLElement>) => {
    const { frame, heights } = asked.plot;
    const { x, y } = at(event);
    const height = heightUnder(frame, heights, x);
    const found = asked.targets.nearestCurve(height, y);
    return { x, height, curve: found && found.apart <= NEAR ? found.id : null };
  };
  return {
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      if (event.button !== 0) return;
      const thing =
        event.target instanceof Element ? event.target.closest<SVGElement>('[data-tool], [data-sets]') : null;
      if (thing?.dataset.tool) asked.onPickTool(thing.dataset.tool);
      if (thing?.dataset.sets) asked.onPickOpening(thing.dataset.sets);
      if (thing) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      const { x } = at(event);
      const hair = placeOf(asked.plot, asked.height, 0).x;
      press.current = { x, dragging: Math.abs(x - hair) <= MOVED };
    },
    onPointerMove: (event: PointerEvent<HTMLElement>) => {
      const { x, height, curve } = under(event);
      const { current } = press;
      if (!current) {
        asked.onPoint(curve);
        return;
      }
      if (Math.abs(x - current.x) > MOVED) current.dragging = true;
      if (current.dragging) asked.onHeight(rounded(height, asked.measure));
    },
    onPointerUp: (event: PointerEvent<HTMLElement>) => {
      const { current } = press;
      press.current = null;
      if (!current || current.dragging) return;
      const { height, curve } = under(event);
      if (curve) asked.onPickOpening(curve);
      else asked.onHeight(rounded(height, asked.measure));
    },
    onPointerCancel: () => {
      press.current = null;
    },
    onPointerLeave: () => asked.onPoint(null),
    onKeyDown: (event: KeyboardEvent<HTMLElement>) => {
      if (event.ctrlKey || event.metaKey || event.altKey || !pressed(asked, event.key, event.shiftKey)) return;
      event.preventDefault();
      event.stopPropagation();
    },
  };
}

/** Whether a key was for the chart. */
function pressed(asked: ChartHandsAsked, key: string, far: boolean): boolean {
  const { plot, height, measure, targets, pickedId } = asked;
  const { step, leap } = measure;
  const by = far ? leap : step;
  const steps: Readonly<Record<string, number>> = {
    ArrowRight: height + by,
    ArrowLeft: height - by,
    PageUp: height + leap,
    PageDown: height - leap,
    Home: step,
    End: plot.heights.end,
  };
  if (Object.hasOwn(steps, key)) {
    asked.onHeight(within(steps[key], step, plot.heights.end, measure));
    return true;
  }
  if (key !== 'ArrowUp' && key !== 'ArrowDown') return false;
  const stack = targets.stackAt(height);
  const place = pickedId === null ? -1 : stack.indexOf(pickedId);
  const next = stack[Math.min(stack.length - 1, Math.max(0, key === 'ArrowUp' ? place - 1 : place + 1))];
  if (next !== undefined) asked.onPickOpening(next);
  return true;
}

function within(nm: number, least: number, most: number, measure: TypedMeasure): number {
  return Math.min(most, Math.max(least, rounded(nm, measure)));
}

/** A height to half a step of the arrow keys, so that a drag comes to rest on round numbers. */
function rounded(nm: number, { step }: TypedMeasure): number {
  const grain = step / 2;
  return Math.max(grain, Math.round(nm / grain) * grain);
}
