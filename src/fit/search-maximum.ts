/** The greatest value found of a function, where, and how much greater it could be elsewhere. */
export interface Maximum<Detail> {
  readonly at: number;
  readonly value: number;
  readonly detail: Detail;
  /** No place of the range has a greater value than this. */
  readonly bound: number;
  readonly evaluations: number;
}

/** One evaluation: the value itself, a number that it certainly does not exceed, and what comes with it. */
export interface Sample<Detail> {
  readonly value: number;
  readonly atMost: number;
  readonly detail: Detail;
}

interface Probe<Detail> extends Sample<Detail> {
  readonly at: number;
}

/** Most evaluations before the search gives back what it has with its honest bound. */
const MOST_EVALUATIONS = 200;

/**
 * The greatest value of a function over a range, where neighbouring values differ by at most `slope` times the
 * distance: the search always looks where such a function could still be greatest.
 *
 * @param evaluate the function; may err as long as `atMost` is right.
 * @param slope Lipschitz constant.
 * @param accuracy the search ends when nothing can be greater than the best value by more.
 * @param enough the search also ends when a value is at least this.
 * @source Piyavskii 1972; Shubert, SIAM J. Numer. Anal. 9 (1972) 379-388 (from memory).
 * @check tests/unit/fit/search-maximum.test.ts
 */
export function searchMaximum<Detail>(
  evaluate: (at: number) => Sample<Detail>,
  [from, to]: readonly [number, number],
  slope: number,
  accuracy: number,
  enough = Infinity,
): Maximum<Detail> {
  const probe = (at: number): Probe<Detail> => ({ at, ...evaluate(at) });
  const probes = from < 0 && to > 0 ? [probe(from), probe(0), probe(to)] : [probe(from), probe(to)];
  for (;;) {
    const best = probes.reduce((a, b) => (b.value > a.value ? b : a));
    const peaks = probes.slice(1).map((right, i) => peakBetween(probes[i], right, slope));
    const highest = peaks.reduce((a, b) => (b.height > a.height ? b : a));
    const bound = Math.max(highest.height, ...probes.map((p) => p.atMost));
    const done = highest.height <= best.value + accuracy || best.value >= enough;
    if (done || probes.length >= MOST_EVALUATIONS)
      return { at: best.at, value: best.value, detail: best.detail, bound, evaluations: probes.length };
    probes.splice(peaks.indexOf(highest) + 1, 0, probe(highest.at));
  }
}

/** The highest point that the function can reach between two probes, and where. */
function peakBetween<Detail>(left: Probe<Detail>, right: Probe<Detail>, slope: number) {
  const width = right.at - left.at;
  const shift = Math.max(-width / 2, Math.min(width / 2, (right.atMost - left.atMost) / (2 * slope)));
  return { at: left.at + width / 2 + shift, height: (left.atMost + right.atMost) / 2 + (slope * width) / 2 };
}

/**
 * The greatest value near a place, by golden-section search: polishes what {@link searchMaximum} found to within its
 * accuracy, so that a wider range never gives a lower value.
 *
 * @param reach how far from `at` to look.
 */
export function polishMaximum<Detail>(
  evaluate: (at: number) => Sample<Detail>,
  start: Pick<Maximum<Detail>, 'at' | 'value' | 'detail'>,
  reach: number,
  [least, most]: readonly [number, number],
): Pick<Maximum<Detail>, 'at' | 'value' | 'detail'> {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [from, to] = [Math.max(least, start.at - reach), Math.min(most, start.at + reach)];
  let best = start;
  const look = (at: number) => {
    const { value, detail } = evaluate(at);
    if (value > best.value) best = { at, value, detail };
    return value;
  };
  for (let i = 0; i < 18; i++) {
    const [left, right] = [to - golden * (to - from), from + golden * (to - from)];
    if (look(left) < look(right)) from = left;
    else to = right;
  }
  return best;
}
