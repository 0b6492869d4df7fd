import type { GrayPicture } from './gray-picture.ts';

/** Greatest blur, in pixels (standard deviation). */
const MOST_BLUR = 6;

/** Rows that are done between two looks at the clock. */
const ROWS = 32;

/**
 * A picture blurred evenly to all sides, which takes grain away; the edge of the picture is continued outwards.
 *
 * @param sigma standard deviation in pixels; 0 gives the picture as it is.
 * @yields after each few rows.
 * @source a sampled Gaussian bell, cut at three standard deviations, along rows and then columns (textbook practice).
 * @check tests/unit/trace/gray-picture.test.ts
 */
export function* blurPicture(picture: GrayPicture, sigma: number): Generator<void, GrayPicture, void> {
  if (!(sigma > 0.05)) return picture;
  const { width, height, light } = picture;
  const weights = bell(Math.min(sigma, MOST_BLUR));
  const along = new Float32Array(light.length);
  const out = new Uint16Array(light.length);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) along[y * width + x] = weighed(light, y * width, 1, x, width, weights);
    if (y % ROWS === 0) yield;
  }
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) out[y * width + x] = Math.round(weighed(along, x, width, y, height, weights));
    if (y % ROWS === 0) yield;
  }
  return { width, height, light: out };
}

/** Weights of the middle and of each pixel further out, both sides together making 1. */
function bell(sigma: number): Float64Array {
  const reach = Math.max(1, Math.ceil(3 * sigma));
  const raw = Float64Array.from({ length: reach + 1 }, (_, k) => Math.exp((-k * k) / (2 * sigma * sigma)));
  const whole = raw.reduce((sum, weight, k) => sum + (k === 0 ? weight : 2 * weight), 0);
  return raw.map((weight) => weight / whole);
}

/** The weighed mean round place `at` of a line of `length` values that starts at `start` and goes in steps of `step`. */
function weighed(
  values: Uint16Array | Float32Array,
  start: number,
  step: number,
  at: number,
  length: number,
  weights: Float64Array,
): number {
  let sum = weights[0] * values[start + at * step];
  for (let k = 1; k < weights.length; k++) {
    const before = Math.max(0, at - k);
    const after = Math.min(length - 1, at + k);
    sum += weights[k] * (values[start + before * step] + values[start + after * step]);
  }
  return sum;
}
