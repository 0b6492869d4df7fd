import { expect, test } from 'vitest';
import {
  bandText,
  decimalsApart,
  flooredText,
  gapText,
  heightText,
  readingText,
  shiftText,
  sizeText,
  wearLengthText,
} from '../../../src/family/length-text.ts';

test('gaps have three decimals of a millimetre, two from a tenth up', () => {
  expect(gapText(52_100, 'mm')).toBe('0.052 mm');
  expect(gapText(-214_900, 'mm')).toBe('0.21 mm');
  expect(gapText(99_499, 'mm')).toBe('0.099 mm');
  expect(gapText(99_500, 'mm')).toBe('0.10 mm');
});

test('a gap above zero never reads as zero', () => {
  expect(gapText(0, 'mm')).toBe('0.000 mm');
  expect(gapText(300, 'mm')).toBe('under 0.001 mm');
  expect(gapText(600, 'mm')).toBe('0.001 mm');
  expect(gapText(-1, 'in')).toBe('under 0.1 thou');
});

test('readings keep three decimals', () => {
  expect(readingText(-214_900, 'mm')).toBe('0.215 mm');
  expect(readingText(1_250_000, 'mm')).toBe('1.250 mm');
  expect(readingText(25_400, 'in')).toBe('1.0 thou');
  expect(readingText(300, 'mm')).toBe('under 0.001 mm');
});

test('a wear that lets in is never rounded up', () => {
  expect(wearLengthText(107_500, 'mm')).toBe('0.107 mm');
  expect(wearLengthText(107_999, 'mm')).toBe('0.107 mm');
  expect(wearLengthText(110_000, 'mm')).toBe('0.110 mm');
  expect(wearLengthText(700, 'mm')).toBe('under 0.001 mm');
  expect(wearLengthText(0, 'mm')).toBe('0.000 mm');
  // 2.54 um are a tenth of a thou.
  expect(wearLengthText(27_900, 'in')).toBe('1.0 thou');
  expect(wearLengthText(27_940, 'in')).toBe('1.1 thou');
});

test('in inch units gaps are thousandths of exactly 25.4 um', () => {
  expect(gapText(25_400, 'in')).toBe('1.0 thou');
  expect(gapText(52_100, 'in')).toBe('2.1 thou');
});

test('heights, bands and sizes carry their unit once', () => {
  expect(heightText(3_140_000, 'mm')).toBe('3.1 mm');
  expect(heightText(25_400_000, 'in')).toBe('1.000 in');
  expect(bandText(3_100_000, 4_000_000, 'mm')).toBe('3.1–4.0 mm');
  expect(bandText(-20_000, 1_900_000, 'mm')).toBe('0.0–1.9 mm');
  expect(sizeText(2_000_000, 8_400_000, 'mm')).toBe('2.00 × 8.40 mm');
  expect(sizeText(2_000_000, 8_400_000, 'in')).toBe('0.079 × 0.331 in');
});

test('a movement shows its direction, and none where it is nothing', () => {
  expect(shiftText(50_000, 'mm')).toBe('+0.050 mm');
  expect(shiftText(-12_000, 'mm')).toBe('−0.012 mm');
  expect(shiftText(-200, 'mm')).toBe('0.000 mm');
  expect(shiftText(127_000, 'in')).toBe('+5.0 thou');
});

test('the most that goes in is never told as more, and never as nothing', () => {
  expect(flooredText(0.5509, 3, 'mm')).toBe('0.550 mm');
  expect(flooredText(0.5509, 3, 'mm', 0)).toBe('0.55 mm');
  expect(flooredText(6, 3, 'mm', 0)).toBe('6 mm');
  expect(flooredText(20, 1, 'thou')).toBe('20.0 thou');
  // 0.3 of a hundredth is a hair under three thousandths in doubles.
  expect(flooredText(0.1 * 0.03, 3, 'mm')).toBe('0.003 mm');
  expect(flooredText(0.0009, 3, 'mm')).toBe('less than 0.001 mm');
  expect(flooredText(0, 3, 'mm')).toBe('0.000 mm');
});

test('different values that stand beside each other do not read alike, as far as a few more decimals tell', () => {
  expect(decimalsApart(0.3, 0.4, 2)).toBe(2);
  expect(decimalsApart(0.148, 0.15, 2)).toBe(3);
  expect(decimalsApart(0.14998, 0.15, 2)).toBe(5);
  expect(decimalsApart(0.15, 0.15, 2)).toBe(2);
  // The doubles' own rounding is no difference.
  expect(decimalsApart(0.1 + 0.2, 0.3, 2)).toBe(2);
});
