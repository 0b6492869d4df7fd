import { describe, expect, test } from 'vitest';
import { fitTable } from '../../../src/cli/fit-table.ts';
import type { EntryMatrix } from '../../../src/family/entry-matrix.ts';
import type { Family } from '../../../src/family/family.ts';
import type { Fit, Verdict } from '../../../src/fit/fit.ts';
import { asTrustedRing } from '../../../src/geom/ring.ts';

const fitOf = (verdict: Verdict, clearance: number): Fit => ({
  verdict,
  clearance,
  accuracy: 0,
  placement: { x: 0, y: 0, tilt: 0 },
  seated: { x: 0, y: 0, tilt: 0 },
  play: { lateral: 0, vertical: 0 },
});

/** A family of profiles with these names and no geometry, since a table needs none. */
function familyOf(openings: string[], blanks: string[]): Family {
  const ring = asTrustedRing([]);
  return {
    name: 'Polderwick',
    units: 'mm',
    runningClearance: 40_000,
    tolerance: 0,
    tiltLimit: 0,
    profiles: [
      ...openings.map((name, i) => ({ id: `o${i}`, kind: 'opening' as const, name, ring })),
      ...blanks.map((name, i) => ({ id: `b${i}`, kind: 'blank' as const, name, ring })),
    ],
  };
}

const matrixOf = (fits: Fit[][]): EntryMatrix => ({
  openings: fits[0].map((_, i) => `o${i}`),
  profiles: fits.map((_, i) => `b${i}`),
  fits,
});

describe('the table of a matrix', () => {
  test('openings stand across, blanks down, with mark and margin, aligned', () => {
    const family = familyOf(['Heron keyway', 'Ruff'], ['Heron blank', 'Group']);
    const fits = [
      [fitOf('enters', 54_800), fitOf('blocked', -251_840)],
      [fitOf('tight', 0), fitOf('tight', 39_960)],
    ];
    expect(
      fitTable(family, matrixOf(fits), 100),
    ).toBe(`Polderwick: 2 blanks and tools in 2 openings, running clearance 40 um

                 Heron
                keyway       Ruff
Heron blank  +    54.8  x  -251.8
Group        ~     0.0  ~    40.0

+ enters   the margin, in um, is the gap all round in the best placement
~ tight    goes in with less than the running clearance; 0 where it touches on both sides
x blocked  the margin is minus the depth by which it still collides in the best placement
`);
  });

  test('conditions stand in the title, and the answer for all parts in tolerance has a mark of its own', () => {
    const family = familyOf(['Heron keyway', 'Ruff'], ['Heron blank', 'Group']);
    const fits = [
      [fitOf('enters', 54_800), fitOf('blocked', -251_840)],
      [fitOf('tight', 0), fitOf('tight', 39_960)],
    ];
    const text = fitTable(
      family,
      matrixOf(fits),
      100,
      ['tilt up to 2 degrees', 'tolerance 20 um a part'],
      [
        ['always', 'never'],
        ['depends', 'depends'],
      ],
    );
    expect(
      text,
    ).toBe(`Polderwick: 2 blanks and tools in 2 openings, running clearance 40 um, tilt up to 2 degrees, tolerance 20 um a part

                   Heron
                  keyway         Ruff
Heron blank  +    54.8 A  x  -251.8 N
Group        ~     0.0 D  ~    40.0 D

+ enters   the margin, in um, is the gap all round in the best placement
~ tight    goes in with less than the running clearance; 0 where it touches on both sides
x blocked  the margin is minus the depth by which it still collides in the best placement
A always   all parts within their tolerance go together
D depends  some parts within their tolerance go together, some do not
N never    no parts within their tolerance go together
`);
  });

  test('long names are broken into lines and never push a column out of line', () => {
    const family = familyOf(
      ['Heron keyway of the eastern gatehouse', 'Unbreakablylongkeywayname'],
      ['Blank for the head of buildings, grounds and waterways', 'B'],
    );
    const fits = [
      [fitOf('enters', 54_800), fitOf('enters', 54_800)],
      [fitOf('enters', 54_800), fitOf('blocked', -2_251_840)],
    ];
    const lines = fitTable(family, matrixOf(fits), 100).split('\n');
    const cells = lines.filter((line) => /[+x] +-?[\d.]+ +[+x] +-?[\d.]+$/.test(line));
    expect(cells).toHaveLength(2);
    expect(new Set(cells.map((line) => line.length)).size).toBe(1);
    expect(lines.join(' ').replace(/ +/g, ' ')).toContain('grounds and waterways');
    expect(Math.max(...lines.slice(2, 9).map((line) => line.length))).toBeLessThan(60);
    for (const piece of ['Unbreakabl', 'ylongkeywa', 'yname'])
      expect(lines.some((line) => line.endsWith(piece))).toBe(true);
  });

  test('openings that do not fit side by side go into tables below, each with its labels', () => {
    const names = Array.from({ length: 9 }, (_, i) => `Keyway ${i}`);
    const family = familyOf(names, ['Heron blank']);
    const text = fitTable(family, matrixOf([names.map((_, i) => fitOf('enters', (50 + i) * 1000))]), 50);
    const table = text.split('\n').slice(2, -5);
    expect(Math.max(...table.map((line) => line.length))).toBeLessThanOrEqual(50);
    expect(table.filter((line) => line.startsWith('Heron blank'))).toHaveLength(3);
    for (const name of names) expect(text).toContain(name);
    for (let i = 0; i < 9; i++) expect(text).toContain(`+    ${50 + i}.0`);
  });

  test('control characters in a name do not reach the terminal', () => {
    const family = familyOf(['Heron\u001b[2J\nkeyway'], ['Blank\u202e\tone']);
    const text = fitTable(family, matrixOf([[fitOf('enters', 54_800)]]), 100);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: that they are absent is the point
    expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202e]/);
    expect(text).toContain('Blank one');
  });

  test('a family without openings or without anything to try says so', () => {
    const family = familyOf([], ['Heron blank']);
    expect(fitTable(family, { openings: [], profiles: ['b0'], fits: [[]] }, 100)).toContain('Nothing to judge');
    expect(fitTable(family, { openings: ['o0'], profiles: [], fits: [] }, 100)).toContain('Nothing to judge');
  });
});
