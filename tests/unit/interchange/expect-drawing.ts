import { expect } from 'vitest';
import type { Drawing, DrawnPath } from '../../../src/interchange/drawing.ts';
import { drawnArea, drawnBox } from '../../cases/drawn-shape.ts';
import type { DrawingCase, ExpectedLoop } from '../../cases/dxf-drawings.ts';

/** Chords within 0.5 um lie inside a convex curve: the area is smaller by less than that times the length. */
function expectLoop(path: DrawnPath, expected: ExpectedLoop): void {
  const { x, y, width, height } = drawnBox(path.vertices);
  const slack = expected.flattened ? 5e-4 * 2 * (width + height) : 1e-8 * Math.max(1, Math.abs(x) + Math.abs(y));
  const near = expected.flattened ? 1.1e-3 : 1e-5;
  expect(Math.abs(drawnArea(path.vertices) - expected.area)).toBeLessThan(slack);
  if (expected.label !== undefined) expect(path.label).toBe(expected.label);
  for (const [key, value] of Object.entries({ x, y, width, height })) {
    const wanted = expected[key as 'x'];
    if (wanted !== undefined) expect(Math.abs(value - wanted), key).toBeLessThan(near);
  }
  const arcs = path.vertices.filter(({ bulge = 0 }) => bulge !== 0).length;
  if (expected.flattened) expect(arcs).toBe(0);
  if (expected.arcs !== undefined) expect(arcs).toBe(expected.arcs);
}

/** Holds what was read to what its case says. */
export function expectDrawing(drawing: Drawing, expected: DrawingCase): void {
  const { loops, open = 0, nmPerUnit = 1e6, stated = true, notes = [] } = expected;
  const closed = drawing.paths.filter((path) => path.closed);
  expect(drawing.notes.map(({ what }) => what)).toHaveLength(notes.length);
  for (const note of notes)
    expect(
      drawing.notes.some(({ what }) => note.test(what)),
      String(note),
    ).toBe(true);
  expect(closed).toHaveLength(loops.length);
  expect(drawing.paths.length - closed.length).toBe(open);
  expect(drawing.nmPerUnit).toBeCloseTo(nmPerUnit, 3);
  expect(drawing.unitsStated).toBe(stated);
  for (const [i, path] of closed.entries()) expectLoop(path, loops[i]);
}
