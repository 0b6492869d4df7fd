import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { DrawnPath } from '../../../src/interchange/drawing.ts';
import { readDxf } from '../../../src/interchange/dxf/read.ts';
import { drawnArea, drawnBox } from '../../cases/drawn-shape.ts';
import { type DrawingCase, DXF_DRAWINGS, dxfDrawing, type ExpectedLoop } from '../../cases/dxf-drawings.ts';

function read(text: string, options = {}) {
  const result = readDxf(text, options);
  if (!result.ok) throw new Error(result.faults.map(({ path, what }) => `${path}: ${what}`).join('\n'));
  return result.drawing;
}

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

function expectDrawing({ file, loops, open = 0, nmPerUnit = 1e6, stated = true, notes = [] }: DrawingCase): void {
  const drawing = read(dxfDrawing(file));
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

describe('the corpus of drawings', () => {
  it.each(DXF_DRAWINGS.map((drawing) => [drawing.file, drawing] as const))('%s', (_, drawing) => {
    expectDrawing(drawing);
  });

  it('leaves no drawing out', () => {
    const files = readdirSync(new URL('../../cases/drawings/dxf/', import.meta.url).pathname);
    expect(DXF_DRAWINGS.map(({ file }) => `${file}.dxf`).sort()).toEqual(files.sort());
  });
});

describe('units', () => {
  const text = dxfDrawing('polyline-mm');
  const withCode = (code: number) => text.replace(/\$INSUNITS\n {1}70\n4\n/, `$INSUNITS\n 70\n${code}\n`);

  // By the codes' own names, in metres.
  it.each([
    [1, 0.0254],
    [2, 0.3048],
    [3, 1609.344],
    [4, 1e-3],
    [5, 1e-2],
    [6, 1],
    [7, 1e3],
    [8, 0.0254e-6],
    [9, 0.0254e-3],
    [10, 0.9144],
    [11, 1e-10],
    [12, 1e-9],
    [13, 1e-6],
    [14, 0.1],
    [21, 1200 / 3937],
    [22, 1200 / 3937 / 12],
    [23, 3600 / 3937],
  ])('reads code %i as %f m', (code, metres) => {
    const drawing = read(withCode(code));
    expect(drawing.unitsStated).toBe(true);
    expect(drawing.nmPerUnit / 1e9 / metres).toBeCloseTo(1, 12);
    const { vertices } = drawing.paths[0];
    expect(Math.max(...vertices.map(({ y }) => y)) / 1e9 / (8.4 * metres)).toBeCloseTo(1, 12);
  });

  it('lets the caller choose another unit, and still tells that the drawing states its own', () => {
    const drawing = read(text, { nmPerUnit: 25.4e6 });
    expect(drawing.nmPerUnit).toBe(25.4e6);
    expect(drawing.unitsStated).toBe(true);
    expect(drawing.paths[0].vertices[2]).toEqual({ x: 50.8e6, y: 213.36e6 });
  });

  it('says that lengths larger than the world are too large', () => {
    const result = readDxf(withCode(19));
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.faults.map(({ what }) => what).join()).toContain('thousand kilometres');
  });
});
