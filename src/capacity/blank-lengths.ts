/** A blank by its number in the table, and whether it is too short for the key. */
export interface SizedBlank {
  readonly blank: number;
  readonly tooShort: boolean;
}

/**
 * Of the blanks that enter the same keyways as one of them, the one for a key of so many chambers: one of that length,
 * else the shortest longer one, else one whose length nobody states, else the longest, which is then too short.
 *
 * @param goesIn `goesIn[blank][keyway]`.
 * @param lengths chambers of each blank; undefined where not stated.
 * @check tests/unit/capacity/blank-lengths.test.ts
 */
export function blankForLength(
  goesIn: readonly (readonly boolean[])[],
  blank: number,
  lengths: readonly (number | undefined)[],
  chambers: number,
): SizedBlank {
  const own = goesIn[blank].join();
  const alike = goesIn.flatMap((row, other) => (row.join() === own ? [other] : []));
  const ranked = alike.map((other) => ({ other, rank: rankOf(lengths[other], chambers) }));
  const best = ranked.reduce((a, b) => (b.rank < a.rank ? b : a));
  const length = lengths[best.other];
  return { blank: best.other, tooShort: length !== undefined && length < chambers };
}

/** The lower, the better: longer ones by what is left over, then those not stated, then shorter ones by what is missing. */
function rankOf(length: number | undefined, chambers: number): number {
  if (length === undefined) return 1_000;
  return length >= chambers ? length - chambers : 1_000 + chambers - length;
}
