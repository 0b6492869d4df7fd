/** A keyway with the blank that its own keys are cut on, as numbers in the table. */
export interface OwnBlank {
  readonly keyway: number;
  readonly blank: number;
}

/** How many sections of a family may repeat one bitting without a key that goes into two of them. */
export interface ExclusiveSections {
  /** Keyways that keep each other's blanks out, each with the blank for its keys, in the order of the table. */
  readonly pairs: readonly OwnBlank[];
  /** No set of such pairs can be larger than this; the size of `pairs` where that is proved. */
  readonly atMost: number;
}

/** How far a search has come. */
export interface SearchProgress {
  readonly done: number;
  readonly total: number;
}

/** Looks at a line between two nodes after which the search ends with a bound: about a second. */
const MOST_LOOKS = 10_000_000;
/** Looks between two looks of whoever runs the search. */
const STRIDE = 200_000;

/**
 * The largest set of keyways that really exclude each other: each has a blank that enters it, and none of these blanks
 * enters another keyway of the set.
 *
 * A pair of keyway and blank is a node; two of them are joined where they cannot both be chosen. What is asked for is a
 * largest set of nodes without a line between them (in the table: a largest induced matching). Branch and bound, with
 * nodes of at most one line taken at once, and the number of keyways and of blanks that are left as the bound.
 *
 * @param goesIn `goesIn[blank][keyway]`, blanks only; a pair that is not judged counts as going in.
 * @yields how many lines were looked at; a small family needs few.
 * @check tests/unit/capacity/exclusive-sections.test.ts, tests/laws/exclusive-sections.test.ts
 */
export function* findingExclusiveSections(
  goesIn: readonly (readonly boolean[])[],
): Generator<SearchProgress, ExclusiveSections, void> {
  const pairs = candidates(goesIn);
  const lines = linesBetween(pairs, goesIn);
  let best: readonly number[] = [];
  const atMost = bound(pairs, Array.from(pairs.keys()));
  const open: { chosen: readonly number[]; left: readonly number[] }[] = [
    { chosen: [], left: Array.from(pairs.keys()) },
  ];
  let looks = 0;
  let told = 0;
  for (let here = open.pop(); here; here = open.pop()) {
    if (looks >= MOST_LOOKS) return answer(pairs, best, atMost);
    if (looks >= told + STRIDE) {
      told = looks;
      yield { done: looks, total: MOST_LOOKS };
    }
    const { chosen, left, most, looked } = takeSafe(here.chosen, here.left, lines);
    looks += looked;
    if (left.length === 0) {
      if (chosen.length > best.length) best = chosen;
      continue;
    }
    if (chosen.length + bound(pairs, left) <= best.length) continue;
    // Without the busiest node first, so that with it is looked at first.
    open.push({ chosen, left: left.filter((node) => node !== most) });
    open.push({ chosen: [...chosen, most], left: left.filter((node) => node !== most && !lines[most].has(node)) });
  }
  return answer(pairs, best, best.length);
}

function answer(pairs: readonly OwnBlank[], nodes: readonly number[], atMost: number): ExclusiveSections {
  const chosen = nodes.map((node) => pairs[node]).sort((a, b) => a.keyway - b.keyway);
  return { pairs: chosen, atMost };
}

/** Each keyway with the blanks that may serve it best: none that enters all that another one enters, and more. */
function candidates(goesIn: readonly (readonly boolean[])[]): OwnBlank[] {
  const keyways = goesIn[0]?.length ?? 0;
  const holds = (large: number, small: number) => goesIn[small].every((enters, k) => !enters || goesIn[large][k]);
  return Array.from({ length: keyways }, (_, keyway) => {
    const entering = Array.from(goesIn.keys()).filter((blank) => goesIn[blank][keyway]);
    const best = entering.filter(
      (blank) =>
        !entering.some((other) => other !== blank && holds(blank, other) && (!holds(other, blank) || other < blank)),
    );
    return best.map((blank) => ({ keyway, blank }));
  }).flat();
}

function linesBetween(pairs: readonly OwnBlank[], goesIn: readonly (readonly boolean[])[]): Set<number>[] {
  const clash = (a: OwnBlank, b: OwnBlank) => goesIn[a.blank][b.keyway] || goesIn[b.blank][a.keyway];
  return pairs.map((a, i) => new Set(pairs.flatMap((b, k) => (k !== i && clash(a, b) ? [k] : []))));
}

/** Takes every node with at most one line left, which costs nothing; what stays, and the node with most lines. */
function takeSafe(chosen: readonly number[], left: readonly number[], lines: readonly ReadonlySet<number>[]) {
  let taken = chosen;
  let nodes = left;
  let looked = 0;
  for (;;) {
    const within = new Set(nodes);
    let most = -1;
    let mostLines = -1;
    let safe = -1;
    for (const node of nodes) {
      let count = 0;
      for (const other of lines[node]) if (within.has(other)) count++;
      looked += lines[node].size + 1;
      if (count <= 1) {
        safe = node;
        break;
      }
      if (count > mostLines) [most, mostLines] = [node, count];
    }
    if (safe < 0) return { chosen: taken, left: nodes, most, looked };
    taken = [...taken, safe];
    nodes = nodes.filter((node) => node !== safe && !lines[safe].has(node));
  }
}

/** Each keyway and each blank is chosen once at most. */
function bound(pairs: readonly OwnBlank[], nodes: readonly number[]): number {
  const keyways = new Set(nodes.map((node) => pairs[node].keyway));
  const blanks = new Set(nodes.map((node) => pairs[node].blank));
  return Math.min(keyways.size, blanks.size);
}
