import { type GrayPicture, WHITE } from './gray-picture.ts';

/** Steps of light that are told apart. */
const BINS = 1024;

/**
 * The light that best parts a picture into dark and light: the one with the greatest variance between the two classes.
 * It lies half way between their means, which is also where an evenly blurred edge between them stands.
 *
 * @returns a light, 0 to 65,535; half of white for a picture of one even light.
 * @source N. Otsu, "A threshold selection method from gray-level histograms", IEEE Trans. SMC 9 (1979) 62-66 (from memory).
 * @check tests/unit/trace/suggest-threshold.test.ts
 */
export function suggestThreshold({ light }: GrayPicture): number {
  const counts = new Float64Array(BINS);
  for (const value of light) counts[(value * BINS) >> 16]++;
  const total = light.length;
  const sum = counts.reduce((all, count, bin) => all + count * bin, 0);
  let [most, first, last] = [0, -1, -1];
  let [below, sumBelow] = [0, 0];
  for (let bin = 0; bin + 1 < BINS; bin++) {
    below += counts[bin];
    sumBelow += counts[bin] * bin;
    if (below === 0 || below === total) continue;
    const between = (sum * (below / total) - sumBelow) ** 2 / (below * (total - below));
    if (between > most * (1 + 1e-12)) [most, first, last] = [between, bin, bin];
    else if (between > most * (1 - 1e-12)) last = bin;
  }
  // Where no pixel lies between the classes every cut parts them alike; the middle of those is taken.
  return first < 0 ? WHITE / 2 : (((first + last) / 2 + 1) * (WHITE + 1)) / BINS;
}
