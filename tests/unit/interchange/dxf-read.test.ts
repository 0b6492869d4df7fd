import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readDxf } from '../../../src/interchange/dxf/read.ts';
import { DXF_DRAWINGS, dxfDrawing } from '../../cases/dxf-drawings.ts';
import { expectDrawing } from './expect-drawing.ts';

function read(text: string, options = {}) {
  const result = readDxf(text, options);
  if (!result.ok) throw new Error(result.faults.map(({ path, what }) => `${path}: ${what}`).join('\n'));
  return result.drawing;
}

describe('the corpus of drawings', () => {
  it.each(DXF_DRAWINGS.map((drawing) => [drawing.file, drawing] as const))('%s', (_, drawing) => {
    expectDrawing(read(dxfDrawing(drawing.file)), drawing);
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
