// Outside truth: what other programs see in our drawings, and in the drawings that we read.
// - ezdxf (Manfred Moitzi, MIT; 0.18.1 in Debian 12): audits what we write and flattens every curve by itself.
// - dxf-parser 1.1.2 (GDS Storefront Estimating, MIT), as a second reader of what we write.

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import DxfParser from 'dxf-parser';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Point } from '../../src/geom/point.ts';
import { edgePoints, type Vertex } from '../../src/geom/vertex.ts';
import type { Drawing, DrawnPath } from '../../src/interchange/drawing.ts';
import { layerName } from '../../src/interchange/dxf/layer-name.ts';
import { readDxf } from '../../src/interchange/dxf/read.ts';
import { writeDxf } from '../../src/interchange/dxf/write.ts';
import { readFamily } from '../../src/interchange/json/read.ts';
import { uniqueNames } from '../../src/interchange/unique-names.ts';
import type { Profile } from '../../src/profile/profile.ts';
import { DXF_DRAWINGS, dxfDrawingFile } from '../cases/dxf-drawings.ts';
import { type EzdxfDrawing, readWithEzdxf } from '../kit/read-with-ezdxf.ts';
import { drawnProfiles, fromFirst } from '../laws/drawn-profiles.ts';

/** One micrometre. */
const NEAR = 1_000;

/** Drawings that ezdxf cannot be asked about. */
const NOT_ASKED: Readonly<Record<string, string>> = {
  'unclosed-sections': 'ezdxf refuses it',
  'text-and-hatch': 'ezdxf fails on its hatch without pattern',
  'spline-sound-and-broken': 'ezdxf draws a curve with a weight below 0',
  'layers-frozen-and-off': 'ezdxf lists what is hidden too',
  'names-escaped': 'ezdxf reads the letters of such a name only where it mends a file',
  'old-polyline-smoothed': 'ezdxf draws through the frame too, whose points the DXF reference sets apart (flag 16)',
  'polyline-tilted': 'ezdxf lists what is tilted too',
  'gap-six-micrometres': 'we move its ends together, which is what it is there to show',
  'insert-of-itself': 'ezdxf takes a block apart that holds itself until its stack overflows',
  'insert-in-a-circle': 'ezdxf takes a block apart that holds itself until its stack overflows',
};

const folder = mkdtempSync(join(tmpdir(), 'dxf-readers-'));

/** Puts a drawing into a file and names it. */
function fileWith(text: string, name: string): string {
  const file = join(folder, `${name}.dxf`);
  writeFileSync(file, text);
  return file;
}

/** Points along a path, as near to each other as its arcs need at 20 nm. */
function alongPath({ vertices, closed }: DrawnPath): Point[] {
  const ends = closed ? vertices : vertices.slice(0, -1);
  const points = ends.flatMap((vertex, i) => edgePoints(vertex, vertices[(i + 1) % vertices.length], 20));
  return [...points, closed ? points[0] : vertices[vertices.length - 1]];
}

function distanceTo(lines: readonly (readonly Point[])[], p: Point): number {
  let least = Infinity;
  for (const line of lines) {
    for (let i = 1; i < line.length; i += 1) {
      const [a, b] = [line[i - 1], line[i]];
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const t = Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1)));
      least = Math.min(least, Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy));
    }
  }
  return least;
}

function greatestDistance(from: readonly (readonly Point[])[], to: readonly (readonly Point[])[]): number {
  return from.flat().reduce((most, p) => Math.max(most, distanceTo(to, p)), 0);
}

/** ezdxf's lines in nanometres; our unit is used where the drawing states none (ezdxf then takes metres) or an odd one. */
function linesOf({ lines, mm }: EzdxfDrawing, { nmPerUnit, unitsStated }: Drawing): Point[][] {
  const nm = mm === null || !unitsStated ? nmPerUnit : mm * 1e6;
  return lines.map((line) => line.map(([x, y]) => ({ x: x * nm, y: y * nm })));
}

describe('the corpus of drawings, beside ezdxf', () => {
  const asked = DXF_DRAWINGS.filter(({ file }) => !Object.hasOwn(NOT_ASKED, file));
  let seen: EzdxfDrawing[] = [];

  beforeAll(() => {
    seen = readWithEzdxf(asked.map(({ file }) => dxfDrawingFile(file)));
  }, 120_000);

  test.each(asked.map(({ file }, i) => [file, i] as const))('%s lies within 1 um, both ways', (file, i) => {
    const read = readDxf(readFileSync(dxfDrawingFile(file), 'utf8'));
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    const ours = read.drawing.paths.map(alongPath);
    const lines = linesOf(seen[i], read.drawing);
    expect(lines.length).toBeGreaterThan(0);
    expect(greatestDistance(ours, lines)).toBeLessThan(NEAR);
    expect(greatestDistance(lines, ours)).toBeLessThan(NEAR);
  });

  test('leaves out only drawings of the corpus', () => {
    const files = DXF_DRAWINGS.map(({ file }) => file);
    for (const file of Object.keys(NOT_ASKED)) expect(files).toContain(file);
  });
});

/** The profiles of the demonstration family. */
function demoProfiles(): readonly Profile[] {
  const read = readFamily(readFileSync('profiles-demo/polderwick.json', 'utf8'));
  if (!read.ok) throw new Error('the demonstration family is not sound');
  return read.document.family.profiles;
}

const drawnOf = ({ drawn, ring }: Profile): readonly Vertex[] => drawn ?? ring;

describe('what we write', () => {
  const samples = [demoProfiles(), ...fc.sample(drawnProfiles, { numRuns: 25, seed: 7 })];
  const written = samples.flatMap((profiles, i) =>
    (['mm', 'in'] as const).map((units) => {
      const text = writeDxf(profiles, { units });
      return { profiles, units, text, file: fileWith(text, `${i}-${units}`) };
    }),
  );

  test('passes the audit of ezdxf without an error or a repair, and is the same outline to it', () => {
    const seen = readWithEzdxf(written.map(({ file }) => file));
    for (const [i, { errors, fixes, units, polylines }] of seen.entries()) {
      const { profiles, units: wanted } = written[i];
      const nm = wanted === 'mm' ? 1e6 : 25.4e6;
      expect({ errors, fixes, units }).toEqual({ errors: [], fixes: [], units: wanted === 'mm' ? 4 : 1 });
      expect(polylines.map(({ closed }) => closed)).toEqual(profiles.map(() => true));
      expect(polylines.map(({ layer }) => layer)).toEqual(uniqueNames(profiles, layerName));
      for (const [k, { points }] of polylines.entries()) {
        const vertices = points.map(([x, y, bulge]) => ({ x: x * nm, y: y * nm, bulge }));
        expect(fromFirst(vertices)).toEqual(fromFirst(drawnOf(profiles[k])));
      }
    }
  });

  test('is the same outline to dxf-parser', () => {
    for (const { profiles, units, text } of written) {
      const parsed = new DxfParser().parseSync(text);
      const nm = units === 'mm' ? 1e6 : 25.4e6;
      expect(parsed?.header.$INSUNITS).toBe(units === 'mm' ? 4 : 1);
      const outlines = (parsed?.entities ?? []) as unknown as { type: string; shape: boolean; vertices: Vertex[] }[];
      expect(outlines.map(({ type, shape }) => [type, shape])).toEqual(profiles.map(() => ['LWPOLYLINE', true]));
      for (const [k, { vertices }] of outlines.entries()) {
        const scaled = vertices.map(({ x, y, bulge }) => ({ x: x * nm, y: y * nm, bulge }));
        expect(fromFirst(scaled)).toEqual(fromFirst(drawnOf(profiles[k])));
      }
    }
  });

  afterAll(() => rmSync(folder, { recursive: true, force: true }));
});
