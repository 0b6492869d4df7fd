import { describe, expect, it } from 'vitest';
import { makeDrawn } from '../../../src/geom/vertex.ts';
import { EXPORT_FORMATS, exportProfiles } from '../../../src/interchange/export-profiles.ts';
import { sniffText } from '../../../src/interchange/sniff-format.ts';

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
});
