import { describe, expect, it } from 'vitest';
import { makeDrawn, type Vertex } from '../../../src/geom/vertex.ts';
import { layerName } from '../../../src/interchange/dxf/layer-name.ts';
import { writeDxf } from '../../../src/interchange/dxf/write.ts';
import { uniqueNames } from '../../../src/interchange/unique-names.ts';
import type { Profile } from '../../../src/profile/profile.ts';

function profile(name: string, vertices: readonly Vertex[], id = name): Profile {
  const made = makeDrawn(vertices);
  if (!made.ok) throw new Error(made.fault.message);
  return { id, kind: 'blank', name, ring: made.ring, drawn: made.drawn };
}

const SLOT = profile('Dunlin', [
  { x: -1_000_000, y: 3_000_001 },
  { x: 1_000_000, y: 3_000_001 },
  { x: 1_000_000, y: 11_400_001, bulge: 1 },
  { x: -1_000_000, y: 11_400_001 },
]);

/** Pairs of a group code and its value. */
function pairsOf(text: string): string[] {
  const lines = text.trimEnd().split('\n');
  return lines.flatMap((line, i) => (i % 2 === 0 ? [`${line.trim()} ${lines[i + 1]?.trim()}`] : []));
}

describe('a DXF drawing', () => {
  const pairs = pairsOf(writeDxf([SLOT, { ...SLOT, id: 'two', name: 'Ruff' }], { units: 'mm' }));

  it('states its unit', () => {
    expect(pairs[pairs.indexOf('9 $INSUNITS') + 1]).toBe('70 4');
    const inches = pairsOf(writeDxf([SLOT], { units: 'in' }));
    expect(inches[inches.indexOf('9 $INSUNITS') + 1]).toBe('70 1');
  });

  it('has a closed polyline with bulges for each profile, in millimetres, from the left edge and the lowest point on', () => {
    const start = pairs.indexOf('0 LWPOLYLINE');
    const groups = pairs.slice(start, pairs.indexOf('0 LWPOLYLINE', start + 1));
    expect(groups).toContain('8 Dunlin');
    expect(groups).toContain('90 4');
    expect(groups).toContain('70 1');
    const points = groups.filter((pair) => /^(10|20|42) /.test(pair));
    expect(points).toEqual(['10 0', '20 0', '10 2', '20 0', '10 2', '20 8.4', '42 1', '10 0', '20 8.4']);
  });

  it('sets the next profile off by the gap', () => {
    const second = pairs.slice(pairs.lastIndexOf('0 LWPOLYLINE'));
    expect(second).toContain('8 Ruff');
    expect(second.filter((pair) => pair.startsWith('10 '))[0]).toBe('10 7');
    const near = pairsOf(writeDxf([SLOT, SLOT], { units: 'mm', gap: 500_000 }));
    expect(near.filter((pair) => pair.startsWith('10 2.5'))).toHaveLength(2);
  });

  it('is the same each time', () => {
    expect(writeDxf([SLOT], { units: 'mm' })).toBe(writeDxf([SLOT], { units: 'mm' }));
  });

  it('without profiles is a drawing all the same', () => {
    expect(pairsOf(writeDxf([], { units: 'mm' })).at(-1)).toBe('0 EOF');
  });
});

describe('names of layers', () => {
  it.each([
    ['Dunlin blank', 'Dunlin blank'],
    ['a<b>c/d\\e"f:g;h?i*j|k=l,m`n', 'a-b-c-d-e-f-g-h-i-j-k-l-m-n'],
    ['two\nlines\tand\u0007bell', 'two lines and bell'],
    ['0', 'Layer 0'],
    ['   ', ''],
    ['Blässhuhn', 'Blässhuhn'],
  ])('%j becomes %j', (name, expected) => {
    expect(layerName(name)).toBe(expected);
  });

  it('are at most 255 letters', () => {
    expect(layerName('x'.repeat(400))).toHaveLength(255);
  });

  it('stay different', () => {
    const named = (name: string, id: string) => ({ name, id });
    const same = [named('Ruff', 'a'), named('RUFF', 'b'), named('Ruff (b)', 'c'), named('', 'd'), named('', 'd')];
    expect(uniqueNames(same, layerName)).toEqual(['Ruff', 'RUFF (b)', 'Ruff (b) (c)', 'd', 'd (d)']);
    expect(uniqueNames([named('*', '*'), named('*', '*'), named('*', '*')], layerName)).toEqual(['-', '- (-)', '- 2']);
  });
});
