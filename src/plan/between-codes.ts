/** How a code lies between two others. */
export interface Between {
  /** Wards that it has in common with the first and not with the second. */
  readonly first: number;
  /** Wards in common with the second and not with the first. */
  readonly second: number;
  /** Wards that neither has. */
  readonly neither: number;
  /** Wards of both that it does without. */
  readonly dropped: number;
}

/** Which wards of a code come from which of two neighbours; wards of both count for none. */
export function betweenOf(code: readonly number[], first: readonly number[], second: readonly number[]): Between {
  const count = (holds: (site: number) => boolean) => code.filter((digit, site) => digit > 0 && holds(site)).length;
  return {
    first: count((s) => first[s] > 0 && first[s] !== second[s] && code[s] === first[s]),
    second: count((s) => second[s] > 0 && first[s] !== second[s] && code[s] === second[s]),
    neither: count((s) => first[s] === 0 && second[s] === 0),
    dropped: first.filter((digit, s) => digit > 0 && second[s] > 0 && code[s] === 0).length,
  };
}

/**
 * Codes in the order in which they suit a place between two neighbours: those that take a ward of each first, with as few
 * strange wards as can be, then those that take from both alike, then those with a usual number of wards.
 *
 * @check tests/unit/plan/between-codes.test.ts
 */
export function orderBetween(
  codes: readonly (readonly number[])[],
  first: readonly number[],
  second: readonly number[],
): { readonly code: readonly number[]; readonly between: Between }[] {
  const usual = (wardsIn(first) + wardsIn(second)) / 2;
  const rank = (code: readonly number[], { first: a, second: b, neither, dropped }: Between) => [
    a > 0 && b > 0 ? 0 : 1,
    neither + dropped,
    Math.abs(a - b),
    Math.abs(wardsIn(code) - usual),
  ];
  return codes
    .map((code) => ({ code, between: betweenOf(code, first, second) }))
    .map((one) => ({ ...one, rank: rank(one.code, one.between) }))
    .sort((x, y) => byParts(x.rank, y.rank))
    .map(({ code, between }) => ({ code, between }));
}

/** How many wards a code has. */
export function wardsIn(code: readonly number[]): number {
  return code.filter((digit) => digit > 0).length;
}

function byParts(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((part, i) => part !== b[i]);
  return at < 0 ? 0 : a[at] - b[at];
}
