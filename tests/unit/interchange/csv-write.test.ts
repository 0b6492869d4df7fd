import { describe, expect, it } from 'vitest';
import { makeDrawn } from '../../../src/geom/vertex.ts';
import { writePoints } from '../../../src/interchange/csv/write.ts';
import type { Profile } from '../../../src/profile/profile.ts';

function profile(name: string, id = name): Profile {
  const made = makeDrawn([
    { x: -1_000_001, y: 0 },
    { x: 1_000_000, y: 0, bulge: 0.5 },
    { x: 1_000_000, y: 8_400_000 },
  ]);
  if (!made.ok) throw new Error(made.fault.message);
  return { id, kind: 'blank', name, ring: made.ring, drawn: made.drawn };
}

describe('a table of points', () => {
  it('has a row for each vertex, each profile as it is drawn', () => {
    const lines = ['name,x (mm),y (mm),bulge', 'Ruff,-1.000001,0,0', 'Ruff,1,0,0.5', 'Ruff,1,8.4,0', ''];
    expect(writePoints([profile('Ruff')], { units: 'mm' })).toBe(lines.join('\r\n'));
  });

  it('is in inches where asked', () => {
    const rows = writePoints([profile('Ruff')], { units: 'in', separator: ';' }).split('\r\n');
    expect(rows[0]).toBe('name;x (in);y (in);bulge');
    expect(rows[3]).toBe('Ruff;0.03937007874;0.33070866142;0');
  });

  it.each(['=1+1', '+cmd|x', '-Ruff', '@SUM(A1)', ' =1+1', '\t=1', '＝1+1'])(
    'takes the sting out of the name %j',
    (name) => {
      const [, row] = writePoints([profile(name, 'id')], { units: 'mm' }).split('\r\n');
      expect(row).toMatch(/^"'/);
    },
  );

  it('keeps two profiles of one name apart', () => {
    const rows = writePoints([profile('Ruff', 'a'), profile('Ruff', 'b')], { units: 'mm' }).split('\r\n');
    expect(rows[4].startsWith('Ruff (b),')).toBe(true);
  });

  it('keeps rows whole where a name has line ends, commas or quotes', () => {
    const rows = writePoints([profile('a\n=1,"b"', 'x')], { units: 'mm' }).split('\r\n');
    expect(rows).toHaveLength(5);
    expect(rows[1].startsWith('"a =1,""b""",')).toBe(true);
  });
});
