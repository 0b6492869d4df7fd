import { expect, test } from 'vitest';
import { loadTypeface } from '../../../src/lettering/typeface.ts';
import { commonSize, fitLetters } from '../../../src/print3d/raise-letters.ts';

const face = await loadTypeface();

function boxOf(loops: readonly (readonly (readonly [number, number])[])[]) {
  const xs = loops.flat().map(([x]) => x);
  const ys = loops.flat().map(([, y]) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) };
}

test('capitals stand in the middle, at the size asked for where there is room', () => {
  const line = fitLetters(face, 'HEH', { width: 100, size: 10 }, [50, 20]);
  const { left, right, low, high } = boxOf(line.outlines);
  expect(line.size).toBe(10);
  expect((left + right) / 2).toBeCloseTo(50, 1);
  expect((low + high) / 2).toBeCloseTo(20, 0);
  expect(high - low).toBeGreaterThan(5);
});

test('a long line is made smaller until it is no wider than its room', () => {
  const line = fitLetters(face, 'Polder all-section blank', { width: 30, size: 10 }, [0, 0]);
  const { left, right } = boxOf(line.outlines);
  expect(right - left).toBeLessThanOrEqual(30);
  expect(right - left).toBeGreaterThan(28);
});

test('several lines have one size, which a single long one does not make tiny', () => {
  const lines = [
    { text: 'Knot', width: 20 },
    { text: 'Bittern', width: 20 },
  ];
  const common = commonSize(face, lines, 8);
  expect(common).toBeCloseTo((8 * 20) / face.width('Bittern', 8, true), 9);
  expect(commonSize(face, [...lines, { text: 'A very long name indeed, and longer', width: 20 }], 8)).toBeCloseTo(
    4.8,
    9,
  );
  expect(commonSize(face, [], 8)).toBe(8);
});

test('letters that no printer shows are left out', () => {
  const line = fitLetters(face, 'x'.repeat(300), { width: 30, size: 10 }, [0, 0]);
  expect(line.size).toBeLessThan(1);
  expect(line.outlines).toEqual([]);
});
