import { expect, test } from 'vitest';
import { readPlace } from '../../../src/app/tools/draw/typed-place.ts';

const MM = 1e6;
const FROM = { x: 1 * MM, y: 2 * MM };
const placed = (text: string, units: 'mm' | 'in' = 'mm', from: typeof FROM | null = FROM) => {
  const typed = readPlace(text, units, from);
  return typed.ok ? typed.at : typed.words;
};

test('x, y is from the origin; comma, semicolon or space between', () => {
  for (const text of ['1.5, -2.25', '1.5;-2.25', ' 1.5   -2.25 ', '+1.5,−2.25', '1,5; -2,25', '1,5 -2,25'])
    expect(placed(text)).toEqual({ x: 1.5 * MM, y: -2.25 * MM });
  expect(placed('.5,1.')).toEqual({ x: 0.5 * MM, y: 1 * MM });
  expect(placed('0.1, 0.2', 'in')).toEqual({ x: 2.54 * MM, y: 5.08 * MM });
});

test('@dx, dy and length<angle are from the vertex before, from the origin where there is none', () => {
  expect(placed('@0.5, -1')).toEqual({ x: 1.5 * MM, y: 1 * MM });
  expect(placed('@0.5, -1', 'mm', null)).toEqual({ x: 0.5 * MM, y: -1 * MM });
  expect(placed('2<90')).toEqual({ x: 1 * MM, y: 4 * MM });
  expect(placed('@2 < 180°')).toEqual({ x: -1 * MM, y: 2 * MM });
  // From (1, 2) by a length of 1 at 30 degrees: cos 30 = 0.866025 (handbook), sin 30 = 0.5.
  expect(placed('1<30')).toEqual({ x: 1_866_025, y: 2_500_000 });
});

test('what is no place is told, and so is one too far out', () => {
  for (const text of ['', 'abc', '1', '1,2,3', '1<', '1e3, 2', '@', 'NaN, NaN'])
    expect(placed(text)).toMatch(/^Not a place/);
  expect(placed('48, 0')).toMatch(/^Too far out/);
  expect(placed('2, 0', 'in')).toMatch(/^Too far out/);
});
