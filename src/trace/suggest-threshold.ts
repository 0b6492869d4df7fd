import { type GrayPicture, WHITE } from './gray-picture.ts';

/** Steps of light that are told apart. */
const BINS = 1024;

/**
 * The light that best parts a picture into dark and light: the one with the greatest variance between the two classes.
 * It lies half way between their means, which is also where an evenly blurred edge between them stands.
 *
 * @returns a light, 0 to 65,535; half of white for a picture of one even light.
 * @source N. Otsu, "A threshold selection method from gray-level histograms", IEEE Trans. SMC 9 (1979) 62-66 (from memory).
 * @check tests/unit/trace/gray-picture.test.ts
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
  if (first < 0) return WHITE / 2;
  // Where no pixel lies between the classes every cut parts them alike; the one nearest to half way is taken.
  const cut = Math.min(last, Math.max(first, halfWay(counts, first) - 1));
  return ((cut + 1) * (WHITE + 1)) / BINS;
}

/** Half way between the means of the bins up to one and of those above it, in bins. */
function halfWay(counts: Float64Array, last: number): number {
  let [below, sumBelow, above, sumAbove] = [0, 0, 0, 0];
  for (const [bin, count] of counts.entries()) {
    if (bin <= last) [below, sumBelow] = [below + count, sumBelow + count * (bin + 0.5)];
    else [above, sumAbove] = [above + count, sumAbove + count * (bin + 0.5)];
  }
  return (sumBelow / below + sumAbove / above) / 2;
}
