import { type CodeSpace, codeAt, codeCount, largestRank, widestAntichain } from './widest-antichain.ts';

/** What keeps parts apart, by site and depth number. */
export interface CodeRules {
  readonly space: CodeSpace;
  /** For each blank that must stay out of new keyways: the least ward at each site that stops it; above all levels: none. */
  readonly stoppedFrom: readonly (readonly number[])[];
  /** For each existing keyway: the deepest groove at each site that it still stops; -1: none. */
  readonly stopsUpTo: readonly (readonly number[])[];
  /** By how many wards, each enough by itself, a part is kept out. */
  readonly stops: number;
}

/** Most codes that are looked at one by one. */
export const MOST_CODES = 65_536;

/** Most codes of which pairs are searched where a part is kept out by more than one ward. */
const MOST_SEARCHED = 60;

/** A set of codes that exclude each other, and how many there can be. */
export interface FreeCodes {
  /** Codes, each with a digit for every site. */
  readonly codes: readonly (readonly number[])[];
  readonly atMost: number;
  /** How many codes could be added one at a time. */
  readonly single: number;
  /** By the number of each code whether a new section may have it, 1 or 0; null where there are too many to look at. */
  readonly allowed: Uint8Array | null;
}

/** Whether a new section may have a code, whatever other new sections there are. */
export function isFree({ stoppedFrom, stopsUpTo, stops }: CodeRules, code: readonly number[]): boolean {
  return (
    stoppedFrom.every((from) => countOf(code, (digit, site) => digit >= from[site] && digit > 0) >= stops) &&
    stopsUpTo.every((upTo) => countOf(code, (digit, site) => digit <= upTo[site]) >= stops)
  );
}

/** Whether two new sections keep each other's blanks out. */
export function areApart(a: readonly number[], b: readonly number[], stops: number): boolean {
  return countOf(a, (digit, site) => digit > b[site]) >= stops && countOf(b, (digit, site) => digit > a[site]) >= stops;
}

function countOf(code: readonly number[], holds: (digit: number, site: number) => boolean): number {
  return code.reduce((sum, digit, site) => sum + (holds(digit, site) ? 1 : 0), 0);
}

/** Every code that a new section may have, see {@link FreeCodes.allowed}. */
function allowedCodes(rules: CodeRules): Uint8Array | null {
  const count = codeCount(rules.space);
  if (count > MOST_CODES) return null;
  const free = new Uint8Array(count);
  for (let number = 0; number < count; number++) if (isFree(rules, codeAt(rules.space, number))) free[number] = 1;
  return free;
}

/**
 * As many codes as can be that new sections may have together. With one ward to stop a part this is exact (see
 * widestAntichain); with more it is searched, and the bound is that for one ward.
 *
 * @param beside codes that are taken as new sections already: what is found goes together with them.
 * @param allowed what was found allowed by these rules before, where it was.
 * @check tests/unit/plan/free-codes.test.ts: brute force
 */
export function mostFreeCodes(
  rules: CodeRules,
  beside: readonly (readonly number[])[] = [],
  allowed: Uint8Array | null = allowedCodes(rules),
): FreeCodes {
  const { space, stops } = rules;
  if (allowed === null) return mostOfMany(rules, beside);
  const apart = withoutClashes(rules, allowed, beside);
  const single = apart.reduce((sum, one) => sum + one, 0);
  // Without the codes above and below a given one the rest is convex still: what lies between two others is beside it too.
  const widest = widestAntichain(space, apart).map((number) => codeAt(space, number));
  if (stops === 1) return { codes: widest, atMost: widest.length, single, allowed };
  const all = Array.from(apart.keys()).filter((number) => apart[number] === 1);
  const found = searchApart(
    all.map((number) => codeAt(space, number)),
    stops,
  );
  return { codes: found.codes, atMost: found.proved ? found.codes.length : widest.length, single, allowed };
}

/** What is free beside given codes: those that keep apart from each of them. */
function withoutClashes(
  { space, stops }: CodeRules,
  free: Uint8Array,
  beside: readonly (readonly number[])[],
): Uint8Array {
  if (beside.length === 0) return free;
  return free.map((is, number) => {
    if (is === 0) return 0;
    const code = codeAt(space, number);
    return beside.every((other) => areApart(code, other, stops)) ? 1 : 0;
  });
}

/** Too many sites to look at every code: the first sites are used, the others stay without wards. */
function mostOfMany(rules: CodeRules, beside: readonly (readonly number[])[]): FreeCodes {
  const levels = [...rules.space.levels];
  let last = levels.length;
  for (let count = codeCount(rules.space); count > MOST_CODES; last--) count /= levels[last - 1] + 1;
  const few: CodeRules = {
    ...rules,
    space: { levels: levels.slice(0, last) },
    stoppedFrom: rules.stoppedFrom.map((row) => row.slice(0, last)),
    stopsUpTo: rules.stopsUpTo.map((row) => row.slice(0, last)),
  };
  const found = mostFreeCodes(
    few,
    beside.map((code) => code.slice(0, last)),
  );
  const codes = found.codes.map((code) => [...code, ...levels.slice(last).map(() => 0)]);
  return { codes, atMost: largestRank(rules.space), single: found.single, allowed: null };
}

/** Codes that keep apart pair by pair: all ways are tried where there are few codes, else taken one after the other. */
function searchApart(codes: readonly (readonly number[])[], stops: number): { codes: number[][]; proved: boolean } {
  const taken: number[] = [];
  for (const [i, code] of codes.entries())
    if (taken.every((other) => areApart(code, codes[other], stops))) taken.push(i);
  if (codes.length > MOST_SEARCHED) return { codes: taken.map((i) => [...codes[i]]), proved: false };
  const clear = codes.map((a) => codes.map((b) => areApart(a, b, stops)));
  let best = taken;
  let looks = 200_000;
  const grow = (chosen: number[], rest: number[]) => {
    if (chosen.length > best.length) best = chosen;
    for (const [n, i] of rest.entries()) {
      if (chosen.length + rest.length - n <= best.length || looks-- <= 0) return;
      grow(
        [...chosen, i],
        rest.slice(n + 1).filter((other) => clear[i][other]),
      );
    }
  };
  grow([], [...codes.keys()]);
  return { codes: best.map((i) => [...codes[i]]), proved: looks > 0 };
}
