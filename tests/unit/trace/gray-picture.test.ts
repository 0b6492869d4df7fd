import { describe, expect, test } from 'vitest';
import { blurPicture } from '../../../src/trace/blur-picture.ts';
import { dropSpecks } from '../../../src/trace/drop-specks.ts';
import { greyOfLight, lightOfGrey, lightOfPixels, WHITE } from '../../../src/trace/gray-picture.ts';
import { suggestThreshold } from '../../../src/trace/suggest-threshold.ts';
import { finish } from '../../kit/traced.ts';

const picture = (rows: readonly (readonly number[])[]) => ({
  width: rows[0].length,
  height: rows.length,
  light: Uint16Array.from(rows.flat()),
});

describe('the light of pixels', () => {
  test('black, white, and half the light, which is stored as 188', () => {
    const { light } = lightOfPixels(
      new Uint8ClampedArray([0, 0, 0, 255, 255, 255, 255, 255, 188, 188, 188, 255]),
      3,
      1,
    );
    expect([light[0], light[1]]).toEqual([0, WHITE]);
    // IEC 61966-2-1: 0.5 is stored as 1.055 * 0.5^(1/2.4) - 0.055 = 0.7354, 187.5 of 255.
    expect(light[2] / WHITE).toBeCloseTo(0.5029, 3);
  });

  test('red, green and blue by their luminance (ITU-R BT.709)', () => {
    const pure = [255, 0, 0, 255, 0, 255, 0, 255, 0, 0, 255, 255];
    const { light } = lightOfPixels(new Uint8ClampedArray(pure), 3, 1);
    expect([...light].map((value) => Number((value / WHITE).toFixed(4)))).toEqual([0.2126, 0.7152, 0.0722]);
  });

  test('what is transparent shows white paper', () => {
    expect([...lightOfPixels(new Uint8ClampedArray([0, 0, 0, 0, 0, 0, 0, 128]), 2, 1).light]).toEqual([
      WHITE,
      Math.round(WHITE * (1 - 128 / 255)),
    ]);
  });

  test('grey and light go both ways', () => {
    for (const grey of [0, 0.02, 0.2, 0.5, 0.99, 1]) expect(greyOfLight(lightOfGrey(grey))).toBeCloseTo(grey, 9);
    expect(lightOfGrey(2)).toBe(WHITE);
    expect(greyOfLight(-1)).toBe(0);
  });
});

describe('the suggested threshold', () => {
  test('lies half way between two even lights, however unequal their areas', () => {
    const light = new Uint16Array(1000).fill(50_000);
    light.fill(10_000, 0, 100);
    expect(suggestThreshold({ width: 100, height: 10, light })).toBeCloseTo(30_000, -2);
  });

  test("Otsu's own condition holds: it is half way between the means of its two classes", () => {
    const light = Uint16Array.from({ length: 4000 }, (_, i) => (i % 4 === 0 ? 5_000 + 3 * i : 30_000 + 7 * i));
    const cut = suggestThreshold({ width: 4000, height: 1, light });
    const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
    const middle = (mean([...light].filter((v) => v < cut)) + mean([...light].filter((v) => v >= cut))) / 2;
    expect(Math.abs(cut - middle)).toBeLessThan(300);
  });

  test('an even picture gets half of white', () => {
    expect(suggestThreshold({ width: 2, height: 2, light: new Uint16Array(4).fill(77) })).toBe(WHITE / 2);
  });
});

describe('blur', () => {
  test('keeps an even picture, and the light of a dot', () => {
    const even = picture(Array.from({ length: 9 }, () => new Array<number>(9).fill(1234)));
    expect([...finish(blurPicture(even, 1.5)).light]).toEqual([...even.light]);
    const dot = picture(
      Array.from({ length: 21 }, (_, y) => Array.from({ length: 21 }, (_, x) => (x === 10 && y === 10 ? 60_000 : 0))),
    );
    const blurred = finish(blurPicture(dot, 2)).light;
    expect(Math.abs(blurred.reduce((sum, value) => sum + value, 0) - 60_000)).toBeLessThan(200);
    // The peak of a bell of deviation 2: 1 / (2 pi 4).
    expect(blurred[10 * 21 + 10] / 60_000).toBeCloseTo(1 / (8 * Math.PI), 3);
  });

  test('none is none', () => {
    const any = picture([[1, 2, 3]]);
    expect(finish(blurPicture(any, 0))).toBe(any);
  });
});

describe('specks', () => {
  const rows = [
    [9, 9, 9, 9, 9, 9],
    [9, 0, 9, 0, 0, 0],
    [9, 9, 9, 0, 9, 0],
    [9, 9, 9, 0, 0, 0],
    [9, 9, 9, 9, 9, 9],
  ];

  test('dark ones and light ones below the size are wiped, larger patches stay', () => {
    const { picture: clean, dropped } = finish(dropSpecks(picture(rows), 5, 3));
    expect(dropped).toBe(2);
    expect(clean.light[7]).toBe(5);
    expect(clean.light[16]).toBe(4);
    expect(clean.light[9]).toBe(0);
  });

  test('a speck in a speck goes too, and the given picture stays as it was', () => {
    const given = picture(rows);
    const { picture: clean } = finish(dropSpecks(given, 5, 10));
    expect([...clean.light].every((value) => value >= 5)).toBe(true);
    expect(given.light[16]).toBe(9);
  });
});
