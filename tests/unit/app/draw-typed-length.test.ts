import { describe, expect, test } from 'vitest';
import { copyText, readPasted } from '../../../src/app/tools/draw/pasted-vertices.ts';
import { readLength } from '../../../src/app/tools/draw/typed-length.ts';

const MM = 1e6;

describe('a typed length', () => {
  const read = (text: string, before: number | null = 2 * MM, units: 'mm' | 'in' = 'mm') => {
    const typed = readLength(text, units, before);
    return typed.ok ? typed.nm / MM : typed.words;
  };

  test.each([
    ['2.5', 2.5],
    [' 2,5 ', 2.5],
    ['.5', 0.5],
    ['+0.1', 2.1],
    ['-0.05', 1.95],
    ['−0.05', 1.95],
    ['=-0.05', -0.05],
    ['= 3', 3],
    ['2.1-2*0.05', 2],
    ['(2+0.1)/2', 1.05],
    ['2*(1+1)', 4],
    ['-(1+0.5)', 0.5],
    ['+2*0.1', 2.2],
    ['0.1in', 2.54],
    ['1 mm + 50 um', 1.05],
    ['10 thou', 0.254],
    ['2*10thou', 0.508],
    ['1"/10', 2.54],
  ])('%s', (text, millimetres) => {
    expect(read(text)).toBeCloseTo(millimetres, 6);
  });

  test('a sign is no step where there is nothing to step from', () => {
    expect(read('-0.05', null)).toBe(-0.05);
  });

  test('numbers count in the units in force', () => {
    expect(read('0.1', null, 'in')).toBeCloseTo(2.54, 9);
    expect(read('1mm', null, 'in')).toBe(1);
  });

  test.each(['', ' ', 'abc', '2..5', '1 2', '2*', '(2', '2)', '--', '=', '1mm*1mm', '2/1mm', '1e9', 'Infinity', '*2'])(
    '%j is told and is no length',
    (text) => {
      expect(read(text)).toMatch(/^Not a length/);
    },
  );

  test('a length beyond all sections and a division by nothing are told', () => {
    expect(read('48')).toMatch(/^Too large/);
    expect(read('1/0')).toBe('That cannot be divided.');
  });
});

describe('a pasted block', () => {
  const points = (text: string, units: 'mm' | 'in' = 'mm') => {
    const pasted = readPasted(text, units);
    return pasted.ok
      ? pasted.vertices.map(({ x, y, bulge }) => [x / MM, y / MM, ...(bulge ? [bulge] : [])])
      : pasted.words;
  };

  test.each([
    ['tabs', '0\t0\n2.1\t0\r\n2.1\t8'],
    ['commas', '0,0\n2.1,0\n2.1,8'],
    ['commas and spaces', '0, 0\n2.1, 0\n2.1, 8\n'],
    ['spaces', '0 0\n2.1   0\n\n2.1 8'],
    ['decimal commas', '0;0\n2,1;0\n2,1;8'],
    ['a head of words', 'x\ty\n0\t0\n2.1\t0\n2.1\t8'],
    ['brackets', '(0) (0)\n2.1 0\n2.1 8'],
  ])('%s', (_, text) => {
    expect(points(text)).toEqual([
      [0, 0],
      [2.1, 0],
      [2.1, 8],
    ]);
  });

  test('a third number is the bulge, minus signs of print count', () => {
    expect(points('−1\t0\t0.5')).toEqual([[-1, 0, 0.5]]);
    expect(points('0.1 0.2', 'in')).toEqual([[2.54, 5.08]]);
  });

  test.each([
    ['', /^Nothing/],
    ['x y', /^Nothing/],
    ['1\n2', /line 1 has fewer/],
    ['1 2\n3 4 5 6', /line 2 has more/],
    ['1 2\n3 b', /line 2 has something/],
    ['1 2\n\n3 99', /line 3 lies further/],
    ['1 2 101', /bulge beyond 100/],
    ['1 NaN', /no number/],
    ['=cmd|x 1', /no number/],
  ])('%j is refused whole', (text, words) => {
    expect(points(text)).toMatch(words);
  });

  test('what is copied is pasted back to the nanometre, arcs too', () => {
    const vertices = [
      { x: -1_234_567, y: 7 },
      { x: 2_100_000, y: 0, bulge: Math.tan(Math.PI / 8) },
    ];
    for (const units of ['mm', 'in'] as const)
      expect(readPasted(copyText(vertices, units), units)).toEqual({ ok: true, vertices });
  });
});
