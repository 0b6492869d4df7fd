import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { boxOf, type Point, translatePoints } from '../../../src/geom/point.ts';
import { squaredDistance } from '../../../src/geom/segment-distance.ts';
import { makeDrawn } from '../../../src/geom/vertex.ts';
import { readPoints } from '../../../src/interchange/csv/read.ts';
import { readDxf } from '../../../src/interchange/dxf/read.ts';
import { EXPORT_FORMATS, exportProfiles } from '../../../src/interchange/export-profiles.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { sniffText } from '../../../src/interchange/sniff-format.ts';
import { readSvg } from '../../../src/interchange/svg/read.ts';

const READERS = { svg: readSvg, dxf: readDxf, csv: readPoints };

/** Distance of a point from the nearest edge, nanometres. */
function distanceTo(outline: readonly Point[], { x, y }: Point): number {
  const squares = outline.map((a, i) => {
    const b = outline[(i + 1) % outline.length];
    return squaredDistance(x, y, a.x, a.y, b.x, b.y);
  });
  return Math.sqrt(Math.min(...squares));
}

const made = makeDrawn([
  { x: 0, y: 0 },
  { x: 2_000_000, y: 0 },
  { x: 2_000_000, y: 8_400_000, bulge: 1 },
  { x: 0, y: 8_400_000 },
]);

describe('exporting', () => {
  it.each(EXPORT_FORMATS)('writes %s that is known for what it is', (format) => {
    if (!made.ok) throw new Error(made.fault.message);
    const profile = { id: 'd', kind: 'blank', name: 'Dunlin', ring: made.ring, drawn: made.drawn } as const;
    const { text, mime, extension } = exportProfiles([profile], format, 'mm');
    expect(extension).toBe(format);
    expect(mime).toMatch(/^(image\/svg\+xml|image\/vnd\.dxf|text\/csv;charset=utf-8)$/);
    expect(sniffText(`a.${extension}`, text)).toMatchObject({ ok: true, format: format === 'csv' ? 'points' : format });
  });
  it.each(EXPORT_FORMATS)(
    'keeps the roundings of milled profiles as arcs in %s, their outline within 1 um',
    (format) => {
      const read = readFamily(readFileSync('profiles-demo/polderwick.json', 'utf8'));
      if (!read.ok) throw new Error('the demo family does not open');
      const milled = read.document.family.profiles.filter((profile) => profile.milled);
      const back = READERS[format](exportProfiles(milled, format, 'mm').text);
      if (!back.ok) throw new Error(JSON.stringify(back.faults));
      expect(back.drawing.paths).toHaveLength(milled.length);
      for (const [i, { vertices }] of back.drawing.paths.entries()) {
        const { ring } = milled[i];
        expect(vertices.length).toBeLessThan(ring.length);
        const { minX, minY } = boxOf(vertices);
        const again = makeDrawn(vertices.map((v) => ({ ...v, x: v.x - minX, y: v.y - minY })));
        if (!again.ok) throw new Error(again.fault.message);
        const [box, own] = [boxOf(again.ring), boxOf(ring)];
        const moved = translatePoints(again.ring, { x: own.minX - box.minX, y: own.minY - box.minY });
        const off = [...moved.map((p) => distanceTo(ring, p)), ...ring.map((p) => distanceTo(moved, p))];
        expect(Math.max(...off)).toBeLessThan(1_002);
      }
    },
  );
});
