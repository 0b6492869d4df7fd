import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readPoints } from '../../../src/interchange/csv/read.ts';
import { readDxf } from '../../../src/interchange/dxf/read.ts';
import { takeOutlines } from '../../../src/interchange/take-outline.ts';

const FOLDER = 'profiles-demo/imports';

/** The drawings and tables that come with the program: what each loop is called, its width and height in millimetres. */
const DEMOS: Readonly<Record<string, readonly (readonly [string, number, number])[]>> = {
  'whimbrel-blank-polyline.dxf': [['Whimbrel blank', 2, 8.4]],
  'redshank-keyway-lines-inches.dxf': [['Redshank keyway', 0.084 * 25.4, 0.336 * 25.4]],
  'lapwing-blank-mirrored-block.dxf': [['Lapwing blank', 2, 8.2]],
  'garganey-sheet-of-two.dxf': [
    ['Garganey keyway', 2.1, 8.5],
    ['Garganey blank', 2, 8.4],
  ],
  'phalarope-keyway-points.csv': [['Phalarope keyway', 2.1, 8.5]],
  'two-blanks-decimal-comma.csv': [
    ['Sandpiper blank', 2, 8.4],
    ['Greenshank blank', 1.9, 8.1],
  ],
};

describe('demonstration drawings', () => {
  it.each(Object.entries(DEMOS))('%s can be taken as it is', (file, expected) => {
    const text = readFileSync(`${FOLDER}/${file}`, 'utf8');
    const read = file.endsWith('.dxf') ? readDxf(text) : readPoints(text);
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    expect(read.drawing.unitsStated).toBe(true);
    const { loops } = takeOutlines(read.drawing);
    expect(loops.map(({ fault, gaps }) => [fault, gaps])).toEqual(expected.map(() => [null, []]));
    for (const [i, { label, width, height }] of loops.entries()) {
      expect(label).toBe(expected[i][0]);
      expect(width / 1e6).toBeCloseTo(expected[i][1], 5);
      expect(height / 1e6).toBeCloseTo(expected[i][2], 5);
    }
  });

  it('are all here, and say that they are invented', () => {
    const files = readdirSync(FOLDER).filter((file) => /\.(dxf|csv)$/.test(file) && !file.startsWith('claims-'));
    expect(files.sort()).toEqual(Object.keys(DEMOS).sort());
    for (const file of files.filter((name) => !name.startsWith('two-blanks')))
      expect(readFileSync(`${FOLDER}/${file}`, 'utf8')).toContain('Invented for a demonstration');
  });
});
