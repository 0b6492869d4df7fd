/** Numbers that branching may look at. */
const CLIQUE_LOOKS = 600_000;

/** Starts from which a clique is grown greedily. */
const CLIQUE_STARTS = 12;

/**
 * Numbers below `count` that are all joined with each other, as many as a search finds: greedily from several starts,
 * then by branching while steps are left.
 *
 * @check tests/unit/plan/large-clique.test.ts
 */
export function largeClique(count: number, joined: (a: number, b: number) => boolean): number[] {
  const beside = new Uint8Array(count * count);
  for (let a = 0; a < count; a++)
    for (let b = 0; b < a; b++) if (joined(a, b)) beside[a * count + b] = beside[b * count + a] = 1;
  let best: number[] = [];
  for (let start = 0; start < Math.min(count, CLIQUE_STARTS) && best.length < count; start++) {
    const clique = greedyClique(Math.floor((start * count) / CLIQUE_STARTS) % count, count, beside);
    if (clique.length > best.length) best = clique;
  }
  let left = CLIQUE_LOOKS;
  const grow = (clique: number[], candidates: number[]) => {
    if (clique.length > best.length) best = [...clique];
    for (let at = 0; at < candidates.length; at++) {
      if (clique.length + candidates.length - at <= best.length || left <= 0) return;
      left -= candidates.length - at;
      const next = candidates[at];
      const further = candidates.slice(at + 1).filter((other) => beside[next * count + other] === 1);
      grow([...clique, next], further);
    }
  };
  const all = Array.from({ length: count }, (_, i) => i);
  if (best.length < count) grow([], all);
  return best.sort((a, b) => a - b);
}

/** A clique grown from one number: each time by the candidate that is joined with most of the others. */
function greedyClique(first: number, count: number, beside: Uint8Array): number[] {
  const clique = [first];
  const among = (list: readonly number[], a: number) => {
    let sum = 0;
    for (const b of list) sum += beside[a * count + b];
    return sum;
  };
  let candidates: number[] = [];
  for (let i = 0; i < count; i++) if (beside[first * count + i] === 1) candidates.push(i);
  const degree = new Map(candidates.map((a) => [a, among(candidates, a)]));
  while (candidates.length > 0) {
    let next = candidates[0];
    for (const a of candidates) if ((degree.get(a) ?? 0) > (degree.get(next) ?? 0)) next = a;
    clique.push(next);
    const gone = candidates.filter((a) => beside[next * count + a] === 0);
    candidates = candidates.filter((a) => beside[next * count + a] === 1);
    for (const a of candidates) degree.set(a, (degree.get(a) ?? 0) - among(gone, a));
  }
  return clique;
}
