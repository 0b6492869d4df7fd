/** Codes over some sites: at each a ward of one of so many depths, or none. A code's number counts the sites as digits. */
export interface CodeSpace {
  /** Greatest depth number at each site, 1 or more: digits run from 0 (no ward) to it. */
  readonly levels: readonly number[];
}

/** How many codes there are. */
export function codeCount({ levels }: CodeSpace): number {
  return levels.reduce((product, level) => product * (level + 1), 1);
}

/** The digits of a code, one a site. */
export function codeAt({ levels }: CodeSpace, number: number): number[] {
  let rest = number;
  return levels.map((level) => {
    const digit = rest % (level + 1);
    rest = Math.floor(rest / (level + 1));
    return digit;
  });
}

/**
 * The most codes of which none is below another one at every site, whatever is allowed: the greatest number of codes with
 * one sum of digits.
 *
 * @source E. Sperner, Math. Z. 27 (1928) 544-548; N. de Bruijn, C. Tengbergen & D. Kruyswijk, Nieuw Arch. Wiskd. 23 (1951)
 *   191-193, for several depths (both from memory).
 * @check tests/unit/plan/widest-antichain.test.ts
 */
export function largestRank({ levels }: CodeSpace): number {
  let ranks = [1];
  for (const level of levels) {
    const next = new Array<number>(ranks.length + level).fill(0);
    for (const [sum, count] of ranks.entries()) for (let digit = 0; digit <= level; digit++) next[sum + digit] += count;
    ranks = next;
  }
  return Math.max(...ranks);
}

/**
 * The largest set of allowed codes of which none is below another one at every site. What is allowed has to be convex: with
 * two codes, one below the other, all between them.
 *
 * Every set of chains that cover the codes has at least as many chains, and the fewest have exactly as many (Dilworth). The
 * fewest are found as a maximum flow over the steps by one depth at one site (Dinic); the cut that stops it tells the set.
 *
 * @param allowed by the number of the code, 1 where it is allowed.
 * @returns numbers of codes, ascending; exact.
 * @source R. Dilworth, Ann. of Math. 51 (1950) 161-166; D. Fulkerson, Proc. AMS 7 (1956) 701-702 (both from memory).
 * @check tests/unit/plan/widest-antichain.test.ts: Sperner's numbers (OEIS A001405), brute force
 */
export function widestAntichain(space: CodeSpace, allowed: Uint8Array): number[] {
  const codes: number[] = [];
  const place = new Int32Array(allowed.length).fill(-1);
  for (let number = 0; number < allowed.length; number++) if (allowed[number]) place[number] = codes.push(number) - 1;
  const net = new UnitNet(codes.length, lowerSteps(space, codes, place));
  net.run();
  return codes.filter((_, i) => net.isBetween(i));
}

/** For each code the places of those one step below it. */
function lowerSteps({ levels }: CodeSpace, codes: readonly number[], place: Int32Array): number[][] {
  const units: number[] = [];
  levels.reduce((unit, level) => {
    units.push(unit);
    return unit * (level + 1);
  }, 1);
  return codes.map((number) => {
    const below: number[] = [];
    for (const [site, unit] of units.entries()) {
      if (Math.floor(number / unit) % (levels[site] + 1) === 0) continue;
      const step = place[number - unit];
      if (step >= 0) below.push(step);
    }
    return below;
  });
}

const MANY = 1 << 29;

/**
 * A net in which every element sends at most one unit down to another one and takes at most one from above; what passes
 * through an element is free. Node 0 is the source, 1 the sink, 2 + 2i the upper and 3 + 2i the lower side of element i.
 */
class UnitNet {
  private readonly first: Int32Array;
  private readonly next: number[] = [];
  private readonly to: number[] = [];
  private readonly room: number[] = [];
  private readonly level: Int32Array;

  constructor(count: number, below: readonly (readonly number[])[]) {
    this.first = new Int32Array(2 + 2 * count).fill(-1);
    this.level = new Int32Array(2 + 2 * count);
    for (let i = 0; i < count; i++) {
      this.join(0, 2 + 2 * i, 1);
      this.join(3 + 2 * i, 1, 1);
      this.join(3 + 2 * i, 2 + 2 * i, MANY);
      for (const lower of below[i]) this.join(2 + 2 * i, 3 + 2 * lower, MANY);
    }
  }

  /** Sends as much as can be sent. */
  run(): void {
    while (this.rank()) {
      const at = this.first.slice();
      while (this.push(at));
    }
  }

  /** Whether an element lies on the cut: its upper side is still reached, its lower side is not. */
  isBetween(i: number): boolean {
    return this.level[2 + 2 * i] >= 0 && this.level[3 + 2 * i] < 0;
  }

  private join(from: number, to: number, room: number): void {
    for (const [a, b, free] of [
      [from, to, room],
      [to, from, 0],
    ]) {
      this.to.push(b);
      this.room.push(free);
      this.next.push(this.first[a]);
      this.first[a] = this.to.length - 1;
    }
  }

  /** How many edges with room lie between the source and each node; false where the sink is not reached. */
  private rank(): boolean {
    const { level, first, next, to, room } = this;
    level.fill(-1);
    level[0] = 0;
    const queue = [0];
    for (let head = 0; head < queue.length; head++)
      for (let e = first[queue[head]]; e >= 0; e = next[e])
        if (room[e] > 0 && level[to[e]] < 0) {
          level[to[e]] = level[queue[head]] + 1;
          queue.push(to[e]);
        }
    return level[1] >= 0;
  }

  /** Sends one unit along edges that lead one level on; false where none is left. */
  private push(at: Int32Array): boolean {
    const { level, next, to, room } = this;
    const path: number[] = [];
    let node = 0;
    while (node !== 1) {
      let e = at[node];
      while (e >= 0 && !(room[e] > 0 && level[to[e]] === level[node] + 1)) e = next[e];
      at[node] = e;
      if (e >= 0) {
        path.push(e);
        node = to[e];
        continue;
      }
      const back = path.pop();
      if (back === undefined) return false;
      node = to[back ^ 1];
      at[node] = next[back];
    }
    for (const e of path) {
      room[e] -= 1;
      room[e ^ 1] += 1;
    }
    return true;
  }
}
