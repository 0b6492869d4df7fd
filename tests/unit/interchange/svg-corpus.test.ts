// Every expectation stands in tests/cases/drawings/svg-cases.ts, worked out by hand or by a closed form.
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { CURVE_CHORD_ERROR, type Drawing, type DrawnPath } from '../../../src/interchange/drawing.ts';
import { readSvg } from '../../../src/interchange/svg/read.ts';
import { type ExpectedPath, SVG_CASES, svgText } from '../../cases/drawings/svg-cases.ts';
import { drawnArea, drawnBox } from '../../kit/measure-drawn.ts';

/** One nanometre and one thousandth of a square micrometre: rounding of the decimals in the files. */
const EXACT_MM = 1e-6;
const EXACT_MM2 = 1e-7;

function drawingOf(file: string): Drawing {
  const read = readSvg(svgText(file));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.drawing;
}

function checkPath(path: DrawnPath, expected: ExpectedPath): void {
  const box = drawnBox(path);
  const found = [box.minX, box.minY, box.maxX - box.minX, box.maxY - box.minY].map((nm) => nm / 1e6);
  const chord = expected.chords ? CURVE_CHORD_ERROR / 1e6 : 0;
  for (const [i, wanted] of expected.box.entries())
    if (wanted !== null)
      expect(Math.abs(found[i] - wanted), `box[${i}] of ${path.label}`).toBeLessThan(EXACT_MM + 2 * chord);
  expect(path.closed, path.label).toBe(expected.area !== undefined);
  if (expected.area !== undefined) {
    const around = 4 * (found[2] + found[3]);
    const area = Math.abs(drawnArea(path)) / 1e12;
    expect(Math.abs(area - expected.area), `area of ${path.label}`).toBeLessThan(EXACT_MM2 + chord * around);
  }
  if (expected.label !== undefined) expect(path.label).toBe(expected.label);
  if (expected.vertices !== undefined) expect(path.vertices, path.label).toHaveLength(expected.vertices);
  const arcs = path.vertices.filter(({ bulge }) => bulge !== undefined).length;
  if (expected.arcs !== undefined || expected.chords) expect(arcs, path.label).toBe(expected.arcs ?? 0);
}

describe('the corpus of odd drawings', () => {
  test('every file of the folder has its expectation', () => {
    const folder = new URL('../../cases/drawings/svg/', import.meta.url);
    const files = readdirSync(folder).map((name) => name.replace(/\.svg$/, ''));
    expect(SVG_CASES.map(({ file }) => file).sort()).toEqual(files.sort());
    expect(files.length).toBeGreaterThan(30);
  });

  test.each(SVG_CASES.map((example) => [example.file, example] as const))('%s', (file, example) => {
    const drawing = drawingOf(file);
    expect(drawing.paths.map(({ label }) => label)).toHaveLength(example.paths.length);
    for (const [i, expected] of example.paths.entries()) checkPath(drawing.paths[i], expected);
    expect(drawing.nmPerUnit / (example.nmPerUnit ?? 1e6)).toBeCloseTo(1, 12);
    expect(drawing.unitsStated).toBe(example.unitsStated ?? true);
    const notes = example.notes ?? [];
    expect(drawing.notes.map(({ what }) => what)).toHaveLength(notes.length);
    for (const [i, note] of notes.entries()) expect(drawing.notes[i].what).toMatch(note);
    for (const { path, cure } of drawing.notes) expect(path && cure).not.toBe('');
  });
});
