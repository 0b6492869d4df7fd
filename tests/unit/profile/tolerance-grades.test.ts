import { describe, expect, test } from 'vitest';
import { presetTolerance, TOLERANCE_PRESETS } from '../../../src/profile/tolerance-grades.ts';

const MM = 1e6;

describe('tolerances by the name of a published grade', () => {
  test('the grades of both standards can be chosen, the finest first, each with its source', () => {
    expect(TOLERANCE_PRESETS.map(({ name }) => name)).toEqual([
      ...Array.from({ length: 10 }, (_, i) => `ISO 286 IT${i + 5}`),
      ...['f', 'm', 'c', 'v'].map((grade) => `ISO 2768 ${grade}`),
    ]);
    for (const { source, title } of TOLERANCE_PRESETS) {
      expect(source).toMatch(/^ISO (286|2768)-1:\d{4}, /);
      expect(title.length).toBeGreaterThan(20);
    }
  });

  test('a grade is halved, a general tolerance is not', () => {
    expect(presetTolerance('ISO 286 IT7', 8.4 * MM)).toEqual({ ok: true, tolerance: 7_500 });
    expect(presetTolerance('ISO 2768 f', 8.4 * MM)).toEqual({ ok: true, tolerance: 100_000 });
  });

  test('a coarser grade, and a larger size, never has less tolerance', () => {
    const sizes = [0.4, 0.5, 0.9, 1.5, 3, 3.000001, 6, 8.4, 10, 12, 18, 30, 47].map((size) => size * MM);
    const toleranceAt = (name: string, size: number) => {
      const read = presetTolerance(name, size);
      return read.ok ? read.tolerance : null;
    };
    let compared = 0;
    for (const [i, { name }] of TOLERANCE_PRESETS.entries())
      for (const [k, size] of sizes.entries()) {
        const here = toleranceAt(name, size);
        const coarser = i === 9 || i === 13 ? null : toleranceAt(TOLERANCE_PRESETS[i + 1].name, size);
        const larger = k + 1 < sizes.length ? toleranceAt(name, sizes[k + 1]) : null;
        if (here === null) continue;
        for (const other of [coarser, larger]) {
          if (other === null) continue;
          compared++;
          expect(other, `${name} at ${size}`).toBeGreaterThanOrEqual(here);
        }
      }
    expect(compared).toBeGreaterThan(200);
  });

  test('a range ends with its upper size; the next one starts a nanometre later', () => {
    expect(presetTolerance('ISO 286 IT7', 6 * MM)).toEqual({ ok: true, tolerance: 6_000 });
    expect(presetTolerance('ISO 286 IT7', 6 * MM + 1)).toEqual({ ok: true, tolerance: 7_500 });
  });

  test.each([
    ['ISO 286 IT7', 0, /no tolerance for a size of 0 mm/, /above 0 up to 18 mm/],
    ['ISO 286 IT7', -1 * MM, /size of -1 mm/, /above 0 up to 18 mm/],
    ['ISO 286 IT7', 18 * MM + 1, /18\.000001 mm/, /above 0 up to 18 mm/],
    ['ISO 286 IT14', 1 * MM, /IT14 gives no tolerance for a size of 1 mm/, /above 1 up to 18 mm/],
    ['ISO 2768 m', 0.49 * MM, /0\.49 mm/, /from 0\.5 up to 400 mm/],
    ['ISO 2768 v', 2 * MM, /size of 2 mm/, /above 3 up to 400 mm/],
    ['ISO 286 IT7', Number.NaN, /NaN mm/, /above 0 up to 18 mm/],
    ['IT7', 8 * MM, /no tolerance named "IT7"/, /ISO 286 IT5, .*ISO 2768 v/],
    ['constructor', 8 * MM, /no tolerance named "constructor"/, /ISO 286 IT5/],
  ])('%s at %d nm is a fault with its cure', (name, size, what, cure) => {
    const read = presetTolerance(name, size);
    if (read.ok) throw new Error('was given');
    expect(read.what).toMatch(what);
    expect(read.cure).toMatch(cure);
  });

  test('the smallest sizes given are given', () => {
    expect(presetTolerance('ISO 2768 m', 0.5 * MM)).toEqual({ ok: true, tolerance: 100_000 });
    expect(presetTolerance('ISO 286 IT14', 1 * MM + 1)).toEqual({ ok: true, tolerance: 125_000 });
    expect(presetTolerance('ISO 286 IT5', 1)).toEqual({ ok: true, tolerance: 2_000 });
  });
});
