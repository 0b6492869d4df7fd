import { describe, expect, it } from 'vitest';
import { type EntryMatrix, entryMatrix } from '../../../src/family/entry-matrix.ts';
import type { Family } from '../../../src/family/family.ts';
import { writeMatrix } from '../../../src/interchange/csv/write-matrix.ts';
import { slotFamily } from '../../cases/slot-family.ts';

function judged(family: Family): EntryMatrix {
  const judging = entryMatrix(family);
  for (;;) {
    const step = judging.next();
    if (step.done) return step.value;
  }
}

const family = slotFamily(
  [
    { id: 'wide', name: 'Wide', width: 2.2 },
    { id: 'narrow', name: '=1+1', width: 2.02 },
  ],
  [
    { id: 'a', name: 'Tongue', width: 2, chambers: 5, section: 'Rail' },
    { id: 'b', name: 'tongue', width: 2.6 },
  ],
);
const matrix = judged(family);
const rowsOf = (text: string) => text.trimEnd().split('\r\n');

describe('the matrix as a table', () => {
  it('has two columns for each keyway, the unit in the head', () => {
    const [head, tongue, thick] = rowsOf(writeMatrix(family, matrix, { units: 'mm', separator: ';' }));
    expect(head).toBe(
      'name;kind;section;chambers;Wide: verdict;Wide: margin (mm);"\'=1+1: verdict";"\'=1+1: margin (mm)"',
    );
    // Half of what the slot is wider.
    expect(tongue).toBe('Tongue;blank;Rail;5;enters;0.1;tight;0.01');
    // 0.2 mm too thick on each side, as nearly as a depth is measured.
    expect(thick).toMatch(/^tongue \(b\);blank;;;blocked;-0\.2\d*;blocked;-0\.29\d*$/);
    for (const [k, depth] of [
      [5, 0.2],
      [7, 0.29],
    ])
      expect(Math.abs(Number(thick.split(';')[k]) + depth)).toBeLessThan(0.0006);
  });

  it('tells inches as inches', () => {
    const [head, tongue] = rowsOf(writeMatrix(family, matrix, { units: 'in', separator: '\t' }));
    expect(head).toContain('Wide: margin (in)');
    expect(tongue.split('\t').slice(4, 6)).toEqual(['enters', '0.003937']);
  });

  it('has a row for each pair where asked', () => {
    const rows = rowsOf(writeMatrix(family, matrix, { units: 'mm', form: 'pairs' }));
    expect(rows[0]).toBe('blank or tool,keyway,verdict,margin (mm)');
    expect(rows).toHaveLength(5);
    expect(rows[2]).toBe('Tongue,"\'=1+1",tight,0.01');
  });

  it('leaves a margin that was not measured empty', () => {
    const unmeasured = { ...matrix.fits[1][0], clearance: Number.NEGATIVE_INFINITY };
    const half = { ...matrix, fits: [matrix.fits[0], [unmeasured, matrix.fits[1][1]]] };
    expect(rowsOf(writeMatrix(family, half, { units: 'mm' }))[2]).toMatch(/^tongue \(b\),blank,,,blocked,,blocked,-0/);
  });

  it('is a head alone for a family of keyways alone', () => {
    const bare = slotFamily([{ id: 'wide', width: 2 }], []);
    expect(rowsOf(writeMatrix(bare, judged(bare), { units: 'mm' }))).toHaveLength(1);
  });
});
